package command

import (
	"context"
	"errors"
	"strings"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/calibrate"
	"slingloft/export/format"
	"slingloft/export/whole"
	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// calibrateOptions are the flags of calibrate.
type calibrateOptions struct {
	out       string
	as        string
	thickness string // of the board that the comb is cut from, as it was measured
	force     bool
	shop
	reporting
}

func calibrateCommand() command {
	return command{
		name: "calibrate", args: " [DESIGN]", maxArgs: 1,
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o calibrateOptions
			f.StringVarP(&o.out, "out", "o", defaultFolder, "")
			f.StringVar(&o.as, "as", "svg,dxf", strings.Join(format.Names(), ", "))
			f.StringVar(&o.thickness, "thickness", "", "")
			f.BoolVar(&o.force, "force", false, "")
			o.shop.flags(f, false)
			return o.reporting.flags(f, calibrationSchema, func(_ context.Context, s Streams, args []string) error {
				return writeCalibration(s, args, o)
			})
		},
	}
}

func writeCalibration(s Streams, args []string, o calibrateOptions) error {
	formats, err := formatsNamed(o.as, "calibrate")
	if err != nil {
		return err
	}
	thickness, err := o.measuredBoard()
	if err != nil {
		return err
	}
	with, err := o.setting()
	if err != nil {
		return err
	}
	file, data, err := source(args)
	if err != nil {
		return err
	}
	p, err := work.Begin(file, data, with)
	if err != nil {
		return err
	}
	t, drawings, err := trialOf(&p, thickness)
	if err != nil {
		return err
	}
	d := p.Design
	d.Machine.Kerf, d.Machine.Measured, d.Machine.Thin, d.Sheet.Kerf, d.Output.Scale = 0, [2]float64{}, 0, 0, 1
	d.Machine.Tabs, d.Sheet.Thickness = 0, thickness // a tab would stand in a slot
	out, err := outputOf(d, o.shop, "", "calibrate", &p.Words.Sheets)
	if err != nil {
		return err
	}
	out.folder, out.formats, out.mark, out.force = o.out, formats, whole.Mark{Tag: p.Digest}, o.force
	out.speak(s.words())
	out.trial = true
	if o.json {
		return tellCalibration(s, &p, t, out, drawings)
	}
	tell := named{Streams: s}
	if err := out.write(drawings, tell.done); err != nil {
		return atMachine(&p, err)
	}
	tell.tell()
	for _, hint := range t.hints(p.Design) {
		say(s.Err, s.words().text(hint))
	}
	return nil
}

// measuredBoard returns what --thickness says, mm, 0 where it is not given: what a comb
// can be made for.
func (o calibrateOptions) measuredBoard() (float64, error) {
	if o.thickness == "" {
		return 0, nil
	}
	q, err := quantity.As(o.thickness, quantity.Length)
	if err != nil {
		return 0, misuse(BadThickness, err)
	}
	if !export.Inside(q.Value, 0.2, 50) {
		return 0, misuse(ThicknessRange, o.thickness)
	}
	return q.Value, nil
}

// tellCalibration writes the sheets and tells of them in a document.
func tellCalibration(s Streams, p *work.Plan, t trial, out output, drawings []export.Drawing) error {
	doc := document.Calibration{Head: document.Head{Version: document.CalibrateVersion, Name: p.Design.Name, Digest: p.Digest},
		Bars: [2]float64{t.bars.X, t.bars.Y}, Comb: combDocument(t.combs), NoComb: strings.Join(s.words().lines(t.noComb), "; "),
		Files: []document.Sheet{}}
	err := atMachine(p, out.write(drawings, collect(&doc.Files)))
	if _, faulty := err.(design.Faults); faulty {
		return err
	}
	doc.Status = statusOf(err)
	return errors.Join(err, document.Write(s.Out, doc))
}

func combDocument(rows []calibrate.Comb) document.Comb {
	out := document.Comb{Kerfs: []float64{}}
	for _, c := range rows {
		out.Thickness = c.Thickness
		for i := range c.Slots {
			out.Kerfs = append(out.Kerfs, c.First+float64(c.Step*float64(i)))
		}
	}
	return out
}

func calibrationSchema() map[string]any {
	return document.Schema[document.Calibration]("slingloft calibrate", document.CalibrateVersion,
		"What was written to try a machine with. Lengths mm. With exit status 2 there is a list of "+
			"faults in its place where the design is at fault.")
}
