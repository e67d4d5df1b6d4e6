package command

import (
	"bytes"
	"context"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/figures"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet/paper"
	"slingloft/export/sheet/wording"
	"slingloft/export/whole"
	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// varyOptions are the flags of figure that compare variants of the design.
type varyOptions struct {
	vary  []string
	csv   bool
	chart string
	force bool
}

// mostAxes is how many keys are varied at once: a table has two sides.
const mostAxes = 2

// axes reads what is to be varied: keys with their values, commas between them.
func (o varyOptions) axes() ([]work.Axis, error) {
	if len(o.vary) > mostAxes {
		return nil, misuse(VaryTwo)
	}
	var names []string
	for _, f := range design.Fields(false) {
		names = append(names, string(f.Key))
	}
	var out []work.Axis
	variants := 1
	for _, text := range o.vary {
		name, list, ok := strings.Cut(text, "=")
		a := work.Axis{Key: design.Key(strings.TrimSpace(name))}
		for v := range strings.SplitSeq(list, ",") {
			if v = strings.Trim(strings.TrimSpace(v), `"'`); v != "" {
				a.Values = append(a.Values, v)
			}
		}
		switch {
		case !ok || len(a.Values) == 0:
			return nil, misuse(VaryHow, quantity.Quoted(text))
		case !slices.Contains(names, string(a.Key.Unnumbered())):
			return nil, misuse(VaryNoKey, quantity.Quoted(string(a.Key)), meant(string(a.Key), "", names))
		case len(out) == 1 && out[0].Key == a.Key:
			return nil, misuse(VaryTwice, a.Key)
		}
		out = append(out, a)
		variants *= len(a.Values)
	}
	if variants > work.MostVariants {
		return nil, misuse(VaryMany, variants, work.MostVariants)
	}
	return out, nil
}

// vary prints what a design buys with other values of a key or two.
func vary(ctx context.Context, s Streams, args []string, o figureOptions) error {
	axes, err := o.axes()
	if err != nil {
		return err
	}
	var form sheetForm
	if o.chart != "" {
		if form, err = sheetFormOf(o.chart, paper.A4); err != nil {
			return misuse(ChartEnding, o.chart)
		}
	}
	name, data, err := source(args)
	if err != nil {
		return err
	}
	with := work.Setting{Shelf: o.shelf}
	p, err := work.Begin(name, data, with)
	if err != nil {
		return err
	}
	all, err := work.Vary(ctx, name, data, with, axes)
	if err != nil {
		return err
	}
	if !slices.ContainsFunc(all, func(v work.Variant) bool { return v.Err == nil }) {
		return all[0].Err
	}
	say := figures.English()
	doc := figures.VariedOf(p.Design.Name, axes, all, say.Names)
	switch {
	case o.csv:
		err = doc.WriteCSV(s.Out, p.Style(), say)
	case o.json:
		err = document.Write(s.Out, doc)
	default:
		err = doc.Text(s.Out, p.Style(), say)
	}
	if err != nil || o.chart == "" {
		return err
	}
	return writeChart(s, &p, doc, o.varyOptions, form)
}

// writeChart writes the page with the curves.
func writeChart(s Streams, p *work.Plan, doc figures.Varied, o varyOptions, form sheetForm) error {
	page, err := doc.Sheet(p, wording.English().Frame, figures.English())
	if err != nil {
		return err
	}
	var b bytes.Buffer
	if err := form.write(&b, page); err != nil {
		return err
	}
	folder, name := filepath.Split(o.chart)
	err = whole.WriteAll(folder, whole.Mark{Tag: p.Digest}, o.force, []whole.File{{Name: name, Content: b.Bytes()}}, func(string) {
		fmt.Fprintln(s.Err, o.chart)
	})
	return orForce(err, "--chart", s.words())
}

// clash returns what is wrong with flags that do not go together.
func (o figureOptions) clash() error {
	several := 0
	for _, is := range []bool{o.json, o.csv, o.materials} {
		if is {
			several++
		}
	}
	switch {
	case o.json && o.materials:
		return misuse(JSONOrMaterials)
	case several > 1:
		return misuse(OneForm)
	case len(o.vary) > 0 && o.materials:
		return misuse(VaryOrMaterials)
	case len(o.vary) == 0 && (o.csv || o.chart != ""):
		return misuse(NothingVaried)
	}
	return nil
}
