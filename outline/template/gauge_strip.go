package template

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
)

// GaugeMark is one mark of a gauge: what it is for and how far it lies from the
// gauge's zero.
type GaugeMark struct {
	ID   string  // of its line, in every language
	Name string  // lettered beside it
	At   float64 // mm

	// Before is how far the gauge's zero lies from that which its figures count from,
	// mm, where it goes on from another gauge.
	Before float64
}

// Measures of strip gauges in heights of lettering, own choice.
const (
	stripTick   = 2.0 // a mark, from the straight edge inwards
	stripLeader = 2.0 // from the mark to its text, where texts are moved apart
	stripPitch  = 1.9 // between texts side by side
	stripEnd    = 3.0 // strip beyond the first and last mark
	stripLine   = 1.6 // from one line of the title to the next
)

// StripGauge returns a straight strip with a mark at every place, counted from
// the first: a cord gauge with the marks of a cord's end, or a strip with the
// spacing of notches or pins. The cord or the seam is laid along the upper edge.
// Each mark carries its name and its distance; texts that would touch are moved
// apart and led to their marks. The marks' places may be given in any order;
// none may be negative.
func StripGauge(id, title string, marks []GaugeMark, opts Options) (piece.Piece, error) {
	if err := cmp.Or(checkMarks(marks), label.Check(opts.Letter)); err != nil {
		return piece.Piece{}, design.Of(id, err)
	}
	sorted := slices.Clone(marks)
	slices.SortStableFunc(sorted, func(a, b GaugeMark) int { return cmp.Compare(a.At, b.At) })
	h := opts.Letter
	texts, widest := stripTexts(sorted, opts)
	places := spread(sorted, stripPitch*h)
	left := min(sorted[0].At, places[0]) - stripEnd*h
	right := max(sorted[len(sorted)-1].At, places[len(places)-1]) + stripEnd*h
	// The title runs along the lower edge in a band of its own.
	lines := label.Wrapped(title, h, right-left-2*h)
	band := (1.4 + stripLine*float64(len(lines))) * h
	deep := (stripTick+stripLeader+2*label.Gap)*h + widest + band
	for _, l := range lines { // a word may be longer than the strip
		right = max(right, left+label.Width(l, h)+2*h)
	}
	p := piece.Piece{ID: id, Kind: piece.Gauge, Title: title, Stock: piece.Board, Count: 1, FreeGrain: true}
	p.Cut = geom.Box{Min: geom.Pt(left, -deep), Max: geom.Pt(right, 0)}.Ring()
	for i, m := range sorted {
		tick := geom.Polyline{{X: m.At, Y: 0}, {X: m.At, Y: -stripTick * h}}
		if places[i] != m.At {
			tick = append(tick, geom.Pt(places[i], -(stripTick+stripLeader)*h))
		}
		p.Lines = append(p.Lines, piece.Line{Name: "mark " + m.ID, Work: piece.Mark, Points: tick})
		mid := -(stripTick+stripLeader+label.Gap)*h - label.Width(texts[i], h)/2
		p.Labels = append(p.Labels, piece.Label{Text: texts[i], At: geom.Pt(places[i], mid), Height: h, Turn: math.Pi / 2, Anchor: piece.Centre})
	}
	role := piece.TitleLabel
	if len(lines) > 1 { // stays whole where it stands if the gauge is divided
		role = piece.NoLabelRole
	}
	for i, l := range lines {
		up := 0.8 + stripLine*float64(len(lines)-1-i)
		p.Labels = append(p.Labels, piece.Label{Text: l, Role: role, At: geom.Pt(left+h, -deep+float64(up*h)), Height: h})
	}
	r := label.NewRoom(&p)
	r.LetterBlock(label.Rows(opts.Notes...), p.Cut.Bounds().Center(), h, label.Smallest, &p.Labels)
	return p, nil
}

// checkMarks refuses no marks, too many, and places that are no distances.
func checkMarks(marks []GaugeMark) error {
	if len(marks) == 0 {
		return fmt.Errorf("it has no marks")
	}
	if len(marks) > maxSteps {
		return fmt.Errorf("it has %d marks, at most %d", len(marks), maxSteps)
	}
	for i, m := range marks {
		if !(m.At >= 0) || math.IsInf(m.At, 0) {
			return fmt.Errorf("mark %d %q at %g mm is no distance", i+1, m.Name, m.At)
		}
	}
	return nil
}

// stripTexts returns name and distance of every mark and the longest's width.
func stripTexts(marks []GaugeMark, opts Options) (texts []string, widest float64) {
	for _, m := range marks {
		text := opts.figure()(m.Before + m.At)
		if m.Name != "" {
			text = m.Name + " " + text
		}
		texts = append(texts, text)
		widest = max(widest, label.Width(text, opts.Letter)+2*label.Gap*opts.Letter)
	}
	return texts, widest
}

// spread returns places for the sorted marks' texts, at least pitch apart, so
// that the squares of the moves sum to the least: neighbours that push each other
// move as a block about the mean of their wishes (pool adjacent violators).
func spread(marks []GaugeMark, pitch float64) []float64 {
	type block struct {
		sum   float64 // of the wishes, each less its place in the block
		count int
	}
	var blocks []block
	for _, m := range marks {
		b := block{m.At, 1}
		for len(blocks) > 0 {
			last := blocks[len(blocks)-1]
			if last.sum/float64(last.count)+pitch*float64(last.count) <= b.sum/float64(b.count)+1e-9 {
				break
			}
			// The wishes of b are seen from the first text of last.
			b = block{last.sum + b.sum - pitch*float64(last.count*b.count), last.count + b.count}
			blocks = blocks[:len(blocks)-1]
		}
		blocks = append(blocks, b)
	}
	var out []float64
	for _, b := range blocks {
		for k := range b.count {
			at := b.sum / float64(b.count)
			if b.count > 1 {
				at += pitch * float64(k)
			}
			out = append(out, at)
		}
	}
	return out
}
