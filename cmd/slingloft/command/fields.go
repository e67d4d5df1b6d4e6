package command

import (
	"cmp"
	"errors"

	"slingloft/export"
	"slingloft/export/gcode"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// fields returns the cloth field by field where the machine cuts it so and it is longer
// than its bed, and else the drawing alone.
func (o output) fields(f export.Format, d export.Drawing) ([]export.Drawing, error) {
	m := o.machine
	if !f.Drives || !m.Fields || m.Width == 0 || d.Stock != piece.Cloth {
		return []export.Drawing{d}, nil
	}
	step := 1.0
	if o.style.Inches {
		step = quantity.Inch / 8
	}
	out, err := d.InFields(
		export.Fields{Reach: m.Width / o.options.Point(geom.Pt(1, 1)).X, Step: step, Work: o.crossWork(f, o.material(d.Stock, d.Roll).Name)},
	)
	var none *export.NoMatchError
	if errors.As(err, &none) {
		return nil, gcode.UnsetError{{Key: design.KeyClothSelvedgeStrip,
			Found: design.Found(design.NoRoomForCrosses, o.style.Length(none.From), o.style.Length(none.To)),
			Hint:  design.Say(design.StripWouldDo, o.style.Length(o.roundedUp(none.Strip)))}}
	}
	return out, err
}

// crossWork returns the kind of work as which match crosses are made: drawn where the
// machine draws such things on the cloth, and else cut.
func (o output) crossWork(f export.Format, cloth string) piece.Work {
	usual := design.Laser
	if f.Pens {
		usual = design.Pen
	}
	tool, job := cmp.Or(o.machine.Tool, usual), o.machine.JobFor(piece.Register, cloth)
	drawn := tool == design.Pen || o.machine.Asks(piece.Register, cloth)
	if !f.Pens {
		drawn = drawn && job.Feed > 0 && (tool == design.Laser && job.Power > 0 || job.Depth > 0)
	}
	if drawn && !job.Skip {
		return piece.Register
	}
	return piece.CutOut
}

// fieldNotes says what to do with the cloth before a field of it is cut.
func (o output) fieldNotes(d export.Drawing) ([]string, error) {
	plain, err := d.Plain(o.options)
	if err != nil {
		return nil, err
	}
	bed := plain.OnBed()
	f := bed.Field
	at := o.options.Axes.Origin.String()
	out := []notice{{FieldZero, []any{at, o.style.Length(bed.Width), o.style.Length(bed.Height)}}}
	if f.Number == 1 {
		out = append(out, notice{FieldFirst, []any{len(f.Spans), o.style.Length(export.SeamLap)}})
	}
	with := []any{f.Number, len(f.Spans), o.style.Length(f.Feed)}
	for _, m := range f.Match {
		p := o.options.Axes.Apply(m.At, bed.Width, bed.Height)
		with = append(with, m.Name, o.exact(p.X), o.exact(p.Y))
	}
	if len(f.Match) == 2 {
		out = append(out, notice{FieldMoved, with})
	}
	return o.say.lines(out), nil
}

// exact returns a place as a machine shows it.
func (o output) exact(mm float64) string {
	if o.style.Inches {
		return export.Fixed(mm/quantity.Inch, 3)
	}
	return export.Fixed(mm, 2)
}
