package template

import (
	"cmp"
	"fmt"
	"slices"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
)

// Measures of step gauges, own choice.
const (
	pressStep     = 90.0 // length of a press gauge's step: half the sole of an iron
	allowanceStep = 30.0 // least length of an allowance gauge's step
)

// PressGauge returns a card to press folds over. The cloth's edge is folded over
// a step until it meets the scored line, so each step lies at its fold's distance
// from that line. Card that stands an iron's heat is needed.
func PressGauge(id, title string, folds []GaugeMark, opts Options) (piece.Piece, error) {
	return stepGauge(id, title, folds, pressStep, opts)
}

// AllowanceGauge returns a card to mark allowances by. With its scored line on the
// net line each step's edge lies on the cut line.
func AllowanceGauge(id, title string, allowances []GaugeMark, opts Options) (piece.Piece, error) {
	return stepGauge(id, title, allowances, allowanceStep, opts)
}

// step is a step of a gauge: its names and where it lies.
type step struct {
	names    []string
	depth    float64
	from, to float64
}

// stepGauge returns a card whose lower edge steps away from a scored line by each
// distance, the smallest to the left. Equal distances share a step.
//
//	+----------------------------+
//	| SIDE 10   END 15   HEM 25  |   lettering
//	|----------------------------|   scored line, y = 0
//	+--------+         |         |
//	         +---------+         |
//	                   +---------+
func stepGauge(id, title string, marks []GaugeMark, least float64, opts Options) (piece.Piece, error) {
	steps, err := gaugeSteps(marks, least, opts)
	if err != nil {
		return piece.Piece{}, design.Of(id, err)
	}
	h := opts.Letter
	lines := 0
	for _, s := range steps {
		lines = max(lines, len(s.names))
	}
	const lead = 1.8 // from line to line, in heights
	width := max(steps[len(steps)-1].to, label.Width(title, 1.4*h)+4*h)
	steps[len(steps)-1].to = width
	tall := (lead*float64(lines) + 5.5) * h
	p := piece.Piece{ID: id, Kind: piece.Gauge, Title: title, Stock: piece.Board, Count: 1, FreeGrain: true}
	p.Cut = stairs(steps, tall)
	p.Lines = []piece.Line{{Name: "edge line", Work: piece.Score, Points: geom.Polyline{{X: 0, Y: 0}, {X: width, Y: 0}}}}
	for i, s := range steps {
		for k, name := range s.names {
			y := (0.9 + lead*float64(len(s.names)-1-k)) * h
			p.Labels = append(p.Labels, piece.Label{Text: name, At: geom.Pt(s.from+h, y), Height: h})
		}
		if i > 0 {
			tick := geom.Polyline{{X: s.from, Y: 0}, {X: s.from, Y: lead * float64(lines) * h}}
			p.Lines = append(p.Lines, piece.Line{Name: fmt.Sprintf("step %d", i+1), Work: piece.Mark, Points: tick})
		}
	}
	p.Labels = append(p.Labels, piece.Label{Text: title, Role: piece.TitleLabel, At: geom.Pt(h, tall-2.3*h), Height: 1.4 * h})
	label.NewRoom(&p).LetterBlock(label.Rows(opts.Notes...), geom.Pt(width/2, tall/2), h, label.Smallest, &p.Labels)
	return p, nil
}

// gaugeSteps sorts the marks into steps and gives each the length for its names.
func gaugeSteps(marks []GaugeMark, least float64, opts Options) ([]step, error) {
	if err := cmp.Or(checkMarks(marks), label.Check(opts.Letter)); err != nil {
		return nil, err
	}
	const same = 0.05 // mm: steps that no one could tell apart
	sorted := slices.Clone(marks)
	slices.SortStableFunc(sorted, func(a, b GaugeMark) int { return cmp.Compare(a.At, b.At) })
	var steps []step
	for _, m := range sorted {
		if m.At < 1 {
			return nil, &design.Breach{Found: design.Found(design.StepTooSmall, m.Name, m.At)}
		}
		text := opts.figure()(m.At)
		if m.Name != "" {
			text = m.Name + " " + text
		}
		if n := len(steps); n > 0 && m.At-steps[n-1].depth < same {
			steps[n-1].names = append(steps[n-1].names, text)
			continue
		}
		steps = append(steps, step{names: []string{text}, depth: m.At})
	}
	at := 0.0
	for i := range steps {
		s := &steps[i]
		s.from, s.to = at, at+least
		for _, n := range s.names {
			s.to = max(s.to, at+label.Width(n, opts.Letter)+2*opts.Letter)
		}
		at = s.to
	}
	return steps, nil
}

// stairs returns the outline of a step gauge.
func stairs(steps []step, tall float64) geom.Ring {
	var r geom.Ring
	for _, s := range steps {
		r = append(r, geom.Pt(s.from, -s.depth), geom.Pt(s.to, -s.depth))
	}
	last := steps[len(steps)-1]
	return append(r, geom.Pt(last.to, tall), geom.Pt(0, tall))
}
