package watch

import (
	"fmt"
	"math"
	"strings"

	"slingloft/cmd/slingloft/show"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet/page"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// field is a dimension that can be tried on the page without touching the file.
type field struct {
	key design.Key
	dim quantity.Dimension
	at  func(*design.Design) *float64
}

// value is a field with what the design has there.
type value struct {
	Key   string `json:"key"`
	Name  string `json:"name"`
	Value string `json:"value"`
}

// fieldsOf returns the fields that a design has: of several ways to give a measure
// the one that it uses.
func fieldsOf(d design.Design) []field {
	head := field{d.Bed.HeadKey(), quantity.Length, func(d *design.Design) *float64 { return &d.Bed.HeadValue }}
	control := field{d.Bed.ControlKey(), quantity.Length, func(d *design.Design) *float64 { return &d.Bed.ControlValue }}
	switch d.Bed.Control {
	case design.HeadAngle, design.FootAngle:
		control.dim = quantity.Angle
	case design.Thrust:
		control.dim = quantity.Force
	}
	long := func(key design.Key, at func(*design.Design) *float64) field { return field{key, quantity.Length, at} }
	return []field{
		long(design.KeySleeperStature, func(d *design.Design) *float64 { return &d.Sleeper.Stature }),
		{design.KeySleeperMass, quantity.Mass, func(d *design.Design) *float64 { return (*float64)(&d.Sleeper.Mass) }},
		long(design.KeyBedSpan, func(d *design.Design) *float64 { return &d.Bed.Span }),
		long(design.KeyBedHeadBar, func(d *design.Design) *float64 { return &d.Bed.HeadBar }),
		long(design.KeyBedFootBar, func(d *design.Design) *float64 { return &d.Bed.FootBar }),
		head, control,
		long(design.KeyBedHeadTail, func(d *design.Design) *float64 { return &d.Bed.HeadTail }),
		long(design.KeyBedFootTail, func(d *design.Design) *float64 { return &d.Bed.FootTail }),
		long(design.KeyBedHeadLeg, func(d *design.Design) *float64 { return &d.Bed.HeadLeg }),
		long(design.KeyBedFootLeg, func(d *design.Design) *float64 { return &d.Bed.FootLeg }),
	}
}

// valuesOf returns a design's fields with their values.
func valuesOf(d design.Design, say Words) []value {
	var out []value
	for _, f := range fieldsOf(d) {
		u := f.dim.Unit(d.Output.Inches)
		out = append(out, value{string(f.key), say.Fields[f.key], u.Format(*f.at(&d), quantity.Nearest)})
	}
	return out
}

// tried is the outcome of other values.
type tried struct {
	HTML   string   `json:"html,omitempty"` // the sheet, unless there are faults
	Faults []fault  `json:"faults"`
	Lines  []string `json:"lines"` // what to write into the file to keep the values
}

// try sets out the sheet of a design with other values for some of its fields.
func try(name string, d design.Design, other map[string]string) tried {
	var out tried
	say := English()
	for _, f := range fieldsOf(d) {
		text, ok := other[string(f.key)]
		if !ok {
			continue
		}
		q, err := quantity.As(strings.TrimSpace(text), f.dim)
		if err != nil || math.IsNaN(q.Value) || math.IsInf(q.Value, 0) {
			out.Faults = append(out.Faults, fault{Text: fmt.Sprintf(say.Wrong, say.Fields[f.key], err)})
			continue
		}
		*f.at(&d) = q.Value
		table, key, _ := strings.Cut(string(f.key), ".")
		out.Lines = append(out.Lines, fmt.Sprintf("[%s] %s = %q", table, key, strings.TrimSpace(text)))
	}
	if len(out.Faults) > 0 {
		return out
	}
	p, err := work.Read(name, design.Write(d))
	if err != nil {
		out.Faults = faultsOf(err, "", nil)
		for i := range out.Faults {
			out.Faults[i].Place = "" // the place is one in a text that nobody wrote
		}
		return out
	}
	s, err := show.Unlaid(&p, wording.English())
	if err != nil {
		out.Faults = faultsOf(err, "", nil)
		return out
	}
	out.HTML = page.Body(s)
	return out
}
