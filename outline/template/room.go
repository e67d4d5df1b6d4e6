package template

import (
	"cmp"
	"slices"
	"strconv"

	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// Room is the part of a sheet that a template may take, mm. The zero value is room for
// any.
type Room struct{ Width, Height float64 }

// Fits reports whether a piece has room, as it is drawn or by a quarter turn.
func (r Room) Fits(p piece.Piece) bool {
	b := p.Cut.Bounds()
	return r == Room{} || b.Width() <= r.Width && b.Height() <= r.Height || b.Width() <= r.Height && b.Height() <= r.Width
}

// builder builds a gauge of some marks.
type builder func(id, title string, marks []GaugeMark, opts Options) (piece.Piece, error)

// maxGauges bounds into how many a gauge is shortened.
const maxGauges = 24

// Strips returns a strip gauge, see [StripGauge], as one, or where that is longer than
// the room as several short ones that need no joint: each goes on where the one before
// ends, at a mark that both have, and its figures count from the first strip's zero.
// Where two marks lie further apart than there is room a mark to go on from lies
// between them. What cannot be shortened comes whole.
func Strips(id, title string, marks []GaugeMark, opts Options) ([]piece.Piece, error) {
	whole, err := StripGauge(id, title, marks, opts)
	if err != nil || opts.Room.Fits(whole) {
		return []piece.Piece{whole}, err
	}
	var runs [][]GaugeMark
	for rest := sortedMarks(marks); len(rest) > 1; {
		n := opts.longest(StripGauge, based(rest), title)
		if n < 2 {
			between, ok := opts.goOn(rest[0], rest[1], title)
			if !ok {
				return []piece.Piece{whole}, nil
			}
			rest = slices.Insert(slices.Clone(rest), 1, between)
			n = 2
		}
		runs = append(runs, based(rest[:n]))
		if rest = rest[n-1:]; len(runs) > maxGauges {
			return []piece.Piece{whole}, nil
		}
	}
	return opts.build(StripGauge, id, title, runs)
}

// Steps returns a step gauge as one, or where that is longer than the room as several
// with fewer steps each. What cannot be shortened comes whole.
func Steps(step builder, id, title string, marks []GaugeMark, opts Options) ([]piece.Piece, error) {
	whole, err := step(id, title, marks, opts)
	if err != nil || opts.Room.Fits(whole) {
		return []piece.Piece{whole}, err
	}
	var runs [][]GaugeMark
	for rest := sortedMarks(marks); len(rest) > 0; {
		n := opts.longest(step, rest, title)
		if n == 0 {
			return []piece.Piece{whole}, nil
		}
		runs, rest = append(runs, rest[:n]), rest[n:]
	}
	return opts.build(step, id, title, runs)
}

// longest returns how many of the marks, from the first, make a gauge for which there
// is room.
func (o Options) longest(b builder, marks []GaugeMark, title string) int {
	for n := len(marks); n > 0; n-- {
		if p, err := b("", o.Words.PartTitle(title, maxGauges, maxGauges), marks[:n], o); err == nil && o.Room.Fits(p) {
			return n
		}
	}
	return 0
}

// build builds a gauge of each run of marks.
func (o Options) build(b builder, id, title string, runs [][]GaugeMark) ([]piece.Piece, error) {
	var out []piece.Piece
	for i, marks := range runs {
		name, number := id, title
		if len(runs) > 1 {
			name, number = partID(id, i), o.Words.PartTitle(title, i+1, len(runs))
		}
		p, err := b(name, number, marks, o)
		if err != nil {
			return nil, err
		}
		out = append(out, p)
	}
	return out, nil
}

func partID(id string, i int) string { return id + "-" + strconv.Itoa(i+1) }

// goOn returns a mark between two that lie too far apart for the room, as far from the
// first as there is room for, in equal parts of the way.
func (o Options) goOn(from, to GaugeMark, title string) (GaugeMark, bool) {
	for parts := 2; parts <= maxGauges; parts++ {
		m := GaugeMark{ID: words.GoOnMark.String(), Name: o.Words.Marks[words.GoOnMark], At: from.At + (to.At-from.At)/float64(parts)}
		if o.longest(StripGauge, based([]GaugeMark{from, m}), title) == 2 {
			return m, true
		}
	}
	return GaugeMark{}, false
}

// based returns marks whose places count from the first of them; their figures do not.
func based(marks []GaugeMark) []GaugeMark {
	out := slices.Clone(marks)
	for i := range out {
		out[i].Before, out[i].At = marks[0].At, marks[i].At-marks[0].At
	}
	return out
}

func sortedMarks(marks []GaugeMark) []GaugeMark {
	out := slices.Clone(marks)
	slices.SortStableFunc(out, func(a, b GaugeMark) int { return cmp.Compare(a.At, b.At) })
	return out
}
