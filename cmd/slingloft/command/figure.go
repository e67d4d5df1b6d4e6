package command

import (
	"context"
	"encoding/json"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/figures"
	"slingloft/cmd/slingloft/work"
)

func figureCommand() command {
	return command{
		name: "figure", args: " [DESIGN]", most: 1,
		line: "print every figure: shape, forces, cords, pieces, seams, offsets",
		long: `Prints every figure of a design: the hung shape with its forces, the flat body,
cord cut lengths term by term with their marks, the seam walk, offsets tables, the
pieces and the lay. With --json the same as one document for other programs, in
mm, N and radians.`,
		example: "  slingloft figure\n  slingloft figure my.toml --json > my.json\n",
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			asJSON := f.Bool("json", false, "print one JSON document instead of text")
			csv := f.Bool("materials", false, "print the materials list alone, as CSV")
			schema := f.Bool("schema", false, "print the JSON Schema of that document")
			return func(ctx context.Context, s Streams, args []string) error {
				if *schema {
					return printJSON(s, figures.Schema())
				}
				if *asJSON && *csv {
					return usagef("figure: --json and --materials print different things; give one of them")
				}
				return figure(ctx, s, args, figureOptions{*asJSON, *csv})
			}
		},
	}
}

// figureOptions say what figure prints.
type figureOptions struct{ json, materials bool }

func figure(ctx context.Context, s Streams, args []string, o figureOptions) error {
	p, err := load(args)
	if err != nil {
		return err
	}
	l, err := p.Lay(ctx, work.Budget{})
	if err != nil {
		return err
	}
	doc, err := figures.Of(&p, l)
	if err != nil {
		return err
	}
	switch {
	case o.materials:
		err = doc.Materials.WriteCSV(s.Out)
	case o.json:
		err = doc.WriteJSON(s.Out)
	default:
		err = figures.Text(s.Out, &p, doc)
	}
	if err != nil {
		return err
	}
	return verdict(&p)
}

// printJSON prints a document as JSON.
func printJSON(s Streams, doc any) error {
	enc := json.NewEncoder(s.Out)
	enc.SetIndent("", " ")
	return enc.Encode(doc)
}
