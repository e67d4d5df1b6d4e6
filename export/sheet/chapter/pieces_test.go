package chapter

import (
	"slices"
	"testing"

	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// ring returns an upright rectangle from the origin.
func ring(width, height float64) geom.Ring {
	return geom.BoxOf(geom.Pt(0, 0), geom.Pt(width, height)).Ring()
}

// pocket is a piece of the simplest kind.
func pocket() piece.Piece {
	return piece.Piece{ID: "pocket", Title: "pocket", Count: 2, Cut: ring(120, 80.04)}
}

func TestPieceTable(t *testing.T) {
	b := hangs(t)
	say := b.Say.Pieces
	with := func(change func(*piece.Piece)) piece.Piece {
		q := pocket()
		change(&q)
		return q
	}
	notch := func(of string) piece.Line { return piece.Line{Role: piece.NotchStroke, Of: of} }
	for _, row := range []struct {
		name  string
		piece piece.Piece
		row   string
		want  []string // nil: no such row
	}{
		{"plain", pocket(), say.HowMany, []string{"2"}},
		{"paired", with(func(q *piece.Piece) { q.Paired = true }), say.HowMany, []string{"2, every second one mirrored"}},
		{"as cut", pocket(), say.AsCut, []string{"120.0 mm × 80.0 mm"}},
		{"not sewn", pocket(), say.Finished, nil},
		{"sewn", with(func(q *piece.Piece) { q.Net = ring(100, 60) }), say.Finished, []string{"100.0 mm × 60.0 mm"}},
		{"no notch", pocket(), say.Notches, nil},
		{"notches once each", with(func(q *piece.Piece) {
			q.Lines = []piece.Line{notch("L1"), notch("L1"), {Role: piece.BarLine, Of: "X"}, notch("R2")}
		}), say.Notches, []string{"L1, R2"}},
		{"side", with(func(q *piece.Piece) { q.Margins = []piece.Margin{{At: piece.AtSide, Wide: 12}} }),
			"allowance at the side", []string{"12.0 mm"}},
		{"join", with(func(q *piece.Piece) { q.Margins = []piece.Margin{{At: piece.AtJoin, Wide: 16}} }),
			"allowance at the " + b.Say.Names.Pieces.Rims[0] + ", flat-felled", []string{"16.0 mm"}},
		{"grain", pocket(), say.Lies, []string{say.EitherWay}},
		{"one way", with(func(q *piece.Piece) { q.OneWay = true }), say.Lies, []string{say.SameWay}},
		{"any way", with(func(q *piece.Piece) { q.OneWay, q.FreeGrain = true, true }), say.Lies, []string{say.AnyWay}},
	} {
		if got := cells(b.pieceTable(row.piece), row.row); !slices.Equal(got, row.want) {
			t.Errorf("%s: %s: %q, want %q", row.name, row.row, got, row.want)
		}
	}
}

// Distances that prove a piece true are told for those that have any.
func TestPiecesSection(t *testing.T) {
	b := hangs(t)
	b.Sewn.Pieces = []piece.Piece{pocket(), pocket()}
	b.Sewn.Pieces[1].ID, b.Sewn.Pieces[1].Checks = "cap", []piece.Measure{{Kind: piece.CapTop, Length: 77.7}}
	s, err := b.pieces()
	if err != nil {
		t.Fatal(err)
	}
	if len(s.Blocks) != 1+2+2+1 {
		t.Errorf("%d blocks", len(s.Blocks))
	}
	if got := cells(b.squareTable(b.Sewn.Pieces[1]), b.Say.Names.Measure(b.Sewn.Pieces[1].Checks[0])); !slices.Equal(got, []string{"77.5"}) {
		t.Errorf("proved by %q", got)
	}
	b.Templates = []piece.Piece{{Kind: piece.Gauge, Title: "PRESS GAUGE", Count: 1, Cut: ring(200, 100)}}
	if got := b.templateTable(); !slices.Equal(got.Rows[0], []string{"Press gauge", "1", "200.0", "100.0"}) ||
		!slices.Equal(got.Head, []string{"template", "number", "along, mm", "across, mm"}) {
		t.Errorf("templates %q, %q", got.Head, got.Rows)
	}
}
