package export

import (
	"strconv"
	"strings"

	"slingloft/export/style"
	"slingloft/outline/design"
)

// OptionsFor returns the options for a machine, as a design or a file of its own gives
// its settings, at scale 1. What is not set is our own default; no shop's or program's
// scheme is kept here.
func OptionsFor(m design.Machine) (Options, error) {
	o := Options{Thin: m.Thin, Axes: axes(m)}
	for i := range o.Correct {
		if m.Measured[i] == 0 {
			continue
		}
		var err error
		if o.Correct[i], err = Correction(m.Drawn[i], m.Measured[i]); err != nil {
			return o, err
		}
	}
	var err error
	if o.Scheme, err = scheme(m.Strokes); err != nil {
		return o, err
	}
	return o, o.Validate()
}

// axes returns how the machine counts. The sheet's own corner is not known here
// and stands for the lower left; see [design.Design.OnMachine].
func axes(m design.Machine) Axes {
	return Axes{Origin: m.Origin.Corner, XLeft: m.XLeft, YDown: m.YDown, Swap: m.Swap}
}

// scheme returns our own strokes with those that are set in their place.
func scheme(strokes []design.Stroke) (style.Scheme, error) {
	s := style.Default()
	for _, set := range strokes {
		stroke := s.Of(set.Work)
		if set.Colour != "" {
			c, ok := style.ParseColour(set.Colour)
			if !ok {
				return s, Refuse(AtStroke, set.Work, Refuse(ColourUnread, set.Colour))
			}
			stroke.Colour = c
		}
		if set.Width > 0 {
			stroke.Width = set.Width
		}
		if set.Solid {
			stroke.Dash = nil
		} else if set.Dash != "" {
			stroke.Dash = set.Dashes()
		}
		s = s.With(set.Work, stroke)
	}
	return s, nil
}

// ParseMeasured reads what the check bars measured on a plot, along x and y, as it is
// written on the command line: "99.6x100.2" for the bars of 100 mm, or "3.98x4.01" for
// those of 4 in, with or without "in". It returns what was drawn and measured, mm.
func ParseMeasured(text string) (drawn, measured [2]float64, err error) {
	const inch = 25.4
	bad := Refuse(BarsUnread, text)
	x, y, ok := strings.Cut(strings.ReplaceAll(text, "×", "x"), "x")
	if !ok {
		return drawn, measured, bad
	}
	for i, part := range []string{x, y} {
		bare, inches := strings.CutSuffix(strings.TrimSpace(part), "in")
		v, err := strconv.ParseFloat(strings.TrimSpace(bare), 64)
		if err != nil {
			return drawn, measured, bad
		}
		// No bar of 100 mm measures 4, nor one of 4 in 100: a bar far off is refused.
		drawn[i], measured[i] = 100, v
		unit, name := 1.0, "mm"
		if inches || v > 3 && v < 5 {
			drawn[i], measured[i] = 4*inch, v*inch
			unit, name = inch, "in"
		}
		if _, err := correction(drawn[i], measured[i], unit, name); err != nil {
			return drawn, measured, err
		}
	}
	return drawn, measured, nil
}
