package command

import (
	"context"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/figures"
	"slingloft/cmd/slingloft/work"
)

func figureCommand() command {
	return command{
		name: "figure", args: " [DESIGN]", maxArgs: 1,
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o figureOptions
			f.BoolVar(&o.materials, "materials", false, "")
			shelfFlag(f, &o.shelf)
			return o.flags(f, figures.Schema, func(ctx context.Context, s Streams, args []string) error {
				if o.json && o.materials {
					return misuse(JSONOrMaterials)
				}
				return figure(ctx, s, args, o)
			})
		},
	}
}

// figureOptions say what figure prints.
type figureOptions struct {
	reporting
	materials bool
	shelf     string
}

func figure(ctx context.Context, s Streams, args []string, o figureOptions) error {
	p, err := load(args, o.shelf)
	if err != nil {
		return err
	}
	sayRenamed(s, &p)
	l, err := p.Lay(ctx, work.Budget{})
	if err != nil {
		return err
	}
	say := figures.English()
	doc, err := figures.Of(&p, l, say)
	if err != nil {
		return err
	}
	switch {
	case o.materials:
		err = doc.WriteCSV(s.Out, p.Style(), say)
	case o.json:
		err = document.Write(s.Out, doc)
	default:
		err = figures.Text(s.Out, &p, doc, say)
	}
	if err != nil {
		return err
	}
	return verdict(&p)
}
