package outline

import (
	"slices"
	"strconv"

	"slingloft/outline/design"
	"slingloft/outline/piece"
	"slingloft/outline/template"
)

// gauges builds the press, allowance, cord and notch gauges.
func (c Cutting) gauges(o template.Options) ([]piece.Piece, error) {
	d := c.Design
	var out []piece.Piece
	add := func(t piece.Piece, err error) error {
		out = append(out, t)
		return err
	}
	folds := []template.GaugeMark{{Name: "TURN-UNDER", At: d.Channel.TurnUnder}}
	if d.Channel.Kind == design.Strip {
		folds = append(folds, template.GaugeMark{Name: "CHANNEL FOLD", At: d.Channel.TurnUnder + d.Channel.Foot + d.Channel.Depth})
	}
	folds = append(folds, template.GaugeMark{Name: "HEM", At: d.Cap.Hem})
	allow := []template.GaugeMark{{Name: "SIDE", At: d.Seam.Side}, {Name: "END", At: d.Seam.End}}
	if d.Cap.Kind != design.Gathered {
		allow = append(allow, template.GaugeMark{Name: "CAP", At: d.Seam.Cap}, template.GaugeMark{Name: "TOP HEM", At: 2 * d.Cap.Hem})
	}
	if folds = wide(folds); len(folds) > 0 {
		if err := add(template.PressGauge("gauge-press", "PRESS GAUGE", folds, o)); err != nil {
			return nil, err
		}
	}
	if allow = wide(allow); len(allow) > 0 {
		if err := add(template.AllowanceGauge("gauge-allowance", "ALLOWANCE GAUGE", allow, o)); err != nil {
			return nil, err
		}
	}
	for i, g := range cordGauges(c.Cords) {
		id := "gauge-cord-" + strconv.Itoa(i+1)
		if err := add(template.StripGauge(id, g.title(i+1, c.Words), g.lettered(c.Words), o)); err != nil {
			return nil, err
		}
	}
	notches := []template.GaugeMark{{Name: "HEAD END"}}
	for _, n := range c.Sewn.SideNotches {
		notches = append(notches, template.GaugeMark{Name: "NOTCH " + n.Name[1:], At: n.At})
	}
	notches = append(notches, template.GaugeMark{Name: "FOOT END", At: c.Sewn.SideNet.HungLength()})
	err := add(template.StripGauge("gauge-notch", "NOTCHES OF THE SIDE SEAM", notches, o))
	return out, err
}

// wide returns the steps of a gauge that have a width: what is cut without an
// allowance or raw needs no step.
func wide(marks []template.GaugeMark) []template.GaugeMark {
	return slices.DeleteFunc(marks, func(m template.GaugeMark) bool { return m.At < 0.05 })
}
