package command

import (
	"context"
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/calibrate"
	"slingloft/export/format"
	"slingloft/export/whole"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// calibrateOptions are the flags of calibrate.
type calibrateOptions struct {
	out   string
	as    string
	force bool
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
			f.BoolVar(&o.force, "force", false, "")
			o.shop.flags(f, false)
			return o.reporting.flags(f, calibrationSchema, func(_ context.Context, s Streams, args []string) error {
				return writeCalibration(s, args, o)
			})
		},
	}
}

// usualThickness is that of a board for which the design says none, mm.
const usualThickness = 3.0

func writeCalibration(s Streams, args []string, o calibrateOptions) error {
	formats, err := formatsNamed(o.as, "calibrate")
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
	d, digest := p.Design, p.Digest
	d.Machine.Kerf, d.Machine.Measured, d.Machine.Thin, d.Sheet.Kerf, d.Output.Scale = 0, [2]float64{}, 0, 0, 1
	d.Machine.For = design.ForBoth // a cloth machine too is measured on a sheet
	out, err := outputOf(d, o.shop, "", "calibrate", &p.Words.Sheets)
	if err != nil {
		return err
	}
	sheet, bars, err := calibrationSheet(d, digest, p.Words.Sheets)
	var bed *export.BedError
	if errors.As(err, &bed) {
		return p.SmallSheet(bed, design.NoRoomForComb)
	} else if err != nil {
		return err
	}
	comb := combFor(d)
	combSheet, err := kerfComb(comb, d, digest, p.Words.Sheets)
	if err != nil {
		return p.Fault(design.KeySheetThickness, design.Told(err.Error()), design.Say(design.ThickerBoard))
	}
	out.folder, out.formats, out.mark, out.force = o.out, formats, whole.Mark{Tag: digest}, o.force
	out.say = s.words()
	drawings := []export.Drawing{sheet, combSheet}
	if !o.json {
		tell := named{Streams: s}
		if err := out.write(drawings, tell.done); err != nil {
			return atMachine(&p, err)
		}
		tell.tell()
		calibrationHints(s, bars)
		return nil
	}
	doc := document.Calibration{Head: document.Head{Version: document.CalibrateVersion, Name: d.Name, Digest: digest},
		Bars: [2]float64{bars.X, bars.Y}, Comb: combDocument(comb), Files: []document.Sheet{}}
	err = atMachine(&p, out.write(drawings, collect(&doc.Files)))
	if _, faulty := err.(design.Faults); faulty {
		return err
	}
	doc.Status = statusOf(err)
	return errors.Join(err, document.Write(s.Out, doc))
}

// calibrationHints says what to do with the sheets.
func calibrationHints(s Streams, bars calibrate.Bars) {
	s.say(MeasureBars)
	say(s.Err, fmt.Sprintf(`calibration_x = { drawn = "%g mm", measured = "%g mm" }`, bars.X, bars.X))
	say(s.Err, fmt.Sprintf(`calibration_y = { drawn = "%g mm", measured = "%g mm" }`, bars.Y, bars.Y))
	s.say(CutComb)
}

func combDocument(c calibrate.Comb) document.Comb {
	out := document.Comb{Thickness: c.Thickness}
	for i := range c.Slots {
		out.Kerfs = append(out.Kerfs, c.First+c.Step*float64(i))
	}
	return out
}

func calibrationSchema() map[string]any {
	return document.Schema[document.Calibration]("slingloft calibrate", document.CalibrateVersion,
		"What was written to try a machine with. Lengths mm. With exit status 2 there is a list of "+
			"faults in its place where the design is at fault.")
}

func calibrationSheet(d design.Design, digest string, say words.Sheets) (export.Drawing, calibrate.Bars, error) {
	frame, err := export.Within(d.Sheet.Width, d.Sheet.Height)
	if err != nil {
		return export.Drawing{}, calibrate.Bars{}, err
	}
	return calibrate.Sheet(frame, export.Block{Design: d.Name, Sheet: 1, Sheets: 2, Material: d.Sheet.Name, Marks: fmt.Sprintf(say.Design, digest)}, say)
}

// combFor returns a comb for kerfs up to what the board allows.
func combFor(d design.Design) calibrate.Comb {
	c := calibrate.Comb{Thickness: d.Sheet.Thickness, First: 0.05, Step: 0.05, Slots: 12}
	if c.Thickness == 0 {
		c.Thickness = usualThickness
	}
	if d.Machine.Tool == design.Router {
		c.First, c.Step = 0.2*c.Thickness, 0.05*c.Thickness
	}
	for c.Slots > 1 && c.First+c.Step*float64(c.Slots-1) >= c.Thickness-0.1 {
		c.Slots--
	}
	return c
}

// kerfComb draws the comb.
func kerfComb(c calibrate.Comb, d design.Design, digest string, say words.Sheets) (export.Drawing, error) {
	p, err := c.Piece()
	if err != nil {
		return export.Drawing{}, err
	}
	box := p.Cut.Bounds()
	const room = 10.0
	var labels []piece.Label
	for i, text := range say.CombNotes {
		labels = append(labels, piece.Label{Text: text, At: geom.Pt(room, box.Height()+4*room-7*float64(i)), Height: 4})
	}
	return export.Compose(export.Sheet{
		Labels: labels,
		Name:   "kerf-comb", Title: fmt.Sprintf(say.Comb, c.Thickness), Words: &say,
		Frame: export.Around(box.Width()+2*room, box.Height()+2*room, 1),
		Items: []export.Item{{Piece: p, Copy: 1, Motion: geom.Motion{Shift: geom.Pt(room, room)}}},
		Block: export.Block{Design: d.Name, Sheet: 2, Sheets: 2, Material: d.Sheet.Name, Marks: fmt.Sprintf(say.Design, digest)},
	})
}
