package outline

import (
	"fmt"
	"slices"
	"strconv"

	"slingloft/outline/design"
	"slingloft/outline/piece"
	"slingloft/outline/template"
	"slingloft/outline/words"
)

// gauges builds the press, allowance, cord and notch gauges.
func (c Cutting) gauges(o template.Options) ([]piece.Piece, error) {
	d := c.Design
	var out []piece.Piece
	add := func(use piece.BoardUse) func([]piece.Piece, error) error {
		return func(t []piece.Piece, err error) error {
			for i := range t {
				t[i].Lie.For = use
			}
			out = append(out, t...)
			return err
		}
	}
	o.Figure = o.Style.ClothFigure // as the build sheet has it
	onCord := o
	onCord.Figure = o.Style.CordFigure
	mark := func(m words.GaugeMark, at float64) template.GaugeMark {
		return template.GaugeMark{ID: m.String(), Name: o.Words.Marks[m], At: at}
	}
	folds := []template.GaugeMark{mark(words.TurnUnderStep, d.Channel.TurnUnder)}
	if d.Channel.Kind == design.Strip {
		folds = append(folds, mark(words.ChannelStep, d.Channel.TurnUnder+d.Channel.Foot+d.Channel.Depth))
	}
	folds = append(folds, mark(words.HemStep, d.Cap.Hem))
	allow := []template.GaugeMark{mark(words.SideStep, d.Seam.Side), mark(words.EndStep, d.Seam.End)}
	if d.Cap.Kind != design.Gathered {
		allow = append(allow, mark(words.CapStep, d.Seam.Cap), mark(words.TopHemStep, 2*d.Cap.Hem))
	}
	if d.Sack.On {
		folds = append(folds, mark(words.SackHemStep, d.Sack.Hem))
		allow = append(allow, mark(words.SackSeamStep, d.Sack.Allowance))
	}
	if t := d.Tarp; t.On {
		folds = append(folds, mark(words.TarpHemStep, t.Hem), mark(words.TarpJoinStep, t.Allowance))
		allow = append(allow, mark(words.TarpEdgeStep, 2*t.Hem), mark(words.TarpJoinStep, t.Allowance))
	}
	if folds = wide(folds); len(folds) > 0 {
		if err := add(piece.PressBoard)(template.Steps(template.PressGauge, "gauge-press", o.Words.Press, folds, o)); err != nil {
			return nil, err
		}
	}
	if allow = wide(allow); len(allow) > 0 {
		if err := add(piece.AllowBoard)(template.Steps(template.AllowanceGauge, "gauge-allowance", o.Words.Allowance, allow, o)); err != nil {
			return nil, err
		}
	}
	for i, g := range cordGauges(c.Cords) {
		id := "gauge-cord-" + strconv.Itoa(i+1)
		if err := add(piece.CordBoard)(template.Strips(id, g.title(i+1, c.Words), g.lettered(c.Words), onCord)); err != nil {
			return nil, err
		}
	}
	notches := []template.GaugeMark{mark(words.HeadEndMark, 0)}
	for _, n := range c.Sewn.SideNotches {
		notches = append(notches, template.GaugeMark{ID: fmt.Sprintf("NOTCH %d", n.Number), Name: fmt.Sprintf(o.Words.Notch, n.Number), At: n.At})
	}
	notches = append(notches, mark(words.FootEndMark, c.Sewn.SideNet.HungLength()))
	err := add(piece.NotchBoard)(template.Strips("gauge-notch", o.Words.Notches, notches, o))
	return out, err
}

// wide returns the steps of a gauge that have a width: what is cut without an
// allowance or raw needs no step.
func wide(marks []template.GaugeMark) []template.GaugeMark {
	return slices.DeleteFunc(marks, func(m template.GaugeMark) bool { return m.At < 0.05 })
}
