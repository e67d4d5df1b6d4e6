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
			f.StringArrayVar(&o.vary, "vary", nil, "")
			f.BoolVar(&o.csv, "csv", false, "")
			f.StringVar(&o.chart, "chart", "", "")
			f.BoolVar(&o.force, "force", false, "")
			return o.flags(f, o.schema, func(ctx context.Context, s Streams, args []string) error {
				if err := o.clash(); err != nil {
					return err
				}
				if len(o.vary) > 0 {
					return vary(ctx, s, args, o)
				}
				return figure(ctx, s, args, o)
			})
		},
	}
}

// figureOptions say what figure prints.
type figureOptions struct {
	reporting
	varyOptions
	materials bool
	shelf     string
}

// schema returns that of the document that is asked for.
func (o *figureOptions) schema() map[string]any {
	if len(o.vary) > 0 {
		return figures.VariedSchema()
	}
	return figures.Schema()
}

func figure(ctx context.Context, s Streams, args []string, o figureOptions) error {
	p, err := load(ctx, s, args, o.shelf)
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
