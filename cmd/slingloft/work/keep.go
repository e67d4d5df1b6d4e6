package work

import (
	"errors"
	"fmt"

	"slingloft/nest"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Kept is where the pieces of a plan lie, by names, so that a lay can be set again
// without the search that found it.
type Kept struct {
	Cloth  []Spot  `json:"cloth"`
	Length float64 `json:"length"` // of the roll, mm
	Boards []Spot  `json:"boards,omitempty"`
	Rolls  []Roll  `json:"rolls,omitempty"` // after the first
}

// Roll is where the pieces of one roll lie.
type Roll struct {
	Cloth  []Spot  `json:"cloth"`
	Length float64 `json:"length"` // mm
}

// Spot is the place of one piece: mirrored if so, then turned, then moved.
type Spot struct {
	Piece  string     `json:"piece"`
	Copy   int        `json:"copy,omitempty"` // from 0
	Bed    int        `json:"bed,omitempty"`  // from 0
	Mirror bool       `json:"mirror,omitempty"`
	Turn   float64    `json:"turn,omitempty"` // rad
	At     [2]float64 `json:"at"`             // mm
}

// Keep returns where the pieces of the plan lie.
func (p *Plan) Keep(l Lays) Kept {
	k := Kept{Boards: spots(p.boards(), l.Boards)}
	for roll, lay := range l.Rolls {
		r := Roll{spots(p.OnRoll(roll), lay), lay.Length}
		if roll == 0 {
			k.Cloth, k.Length = r.Cloth, r.Length
		} else {
			k.Rolls = append(k.Rolls, r)
		}
	}
	return k
}

func spots(pieces []piece.Piece, l nest.Lay) []Spot {
	var out []Spot
	for _, q := range l.Placements {
		m := q.Motion
		out = append(out, Spot{pieces[q.Item].ID, q.Copy, q.Bed, m.Mirror, m.Turn, [2]float64{m.Shift.X, m.Shift.Y}})
	}
	return out
}

// Restore returns the lays with all pieces where they were kept, after the exact check
// of every lay: a place that is missing, unknown, off the stock or over another is an
// error that names the pieces. The lays tell nothing of their densities.
func (p *Plan) Restore(k Kept) (Lays, error) {
	say := p.Words.Keeping
	var out Lays
	rolls := append([]Roll{{k.Cloth, k.Length}}, k.Rolls...)
	for roll := range p.Rolls() {
		var r Roll
		if roll < len(rolls) {
			r = rolls[roll]
		}
		lay, err := say.restored(p.OnRoll(roll), r.Cloth)
		if err == nil && lay.Beds > 1 {
			err = errors.New(say.OneRoll)
		}
		if err != nil {
			return Lays{}, fmt.Errorf(say.Cloth, err)
		}
		lay.Length = r.Length
		if on := p.verifyRoll(roll, lay); on != nil {
			return Lays{}, fmt.Errorf(say.Cloth, say.named(on, p.OnRoll(roll)))
		}
		out.Rolls = append(out.Rolls, lay)
	}
	boards, err := say.restored(p.boards(), k.Boards)
	if err != nil {
		return Lays{}, fmt.Errorf(say.Boards, err)
	}
	out.Boards = boards
	if len(p.boards()) == 0 {
		return out, nil
	}
	if on := p.verifyBoards(boards); on != nil {
		return out, fmt.Errorf(say.Boards, say.named(on, p.boards()))
	}
	return out, nil
}

// restored puts the pieces back in their places. Beds have to follow each other, with
// something on each.
func (w KeepingWords) restored(pieces []piece.Piece, spots []Spot) (nest.Lay, error) {
	item := map[string]int{}
	for i, p := range pieces {
		item[p.ID] = i
	}
	var out nest.Lay
	used := map[int]bool{}
	for _, s := range spots {
		i, ok := item[s.Piece]
		if !ok {
			return out, fmt.Errorf(w.Unknown, s.Piece)
		}
		m := geom.Motion{Mirror: s.Mirror, Turn: s.Turn, Shift: geom.Pt(s.At[0], s.At[1])}
		out.Placements = append(out.Placements, nest.Placement{Item: i, Copy: s.Copy, Bed: s.Bed, Motion: m})
		used[s.Bed] = true
	}
	for n := range len(used) {
		if !used[n] {
			return out, fmt.Errorf(w.EmptyBed, n+1, len(used))
		}
	}
	out.Beds = len(used)
	return out, nil
}

// named says of the pieces of a faulty lay what they are called.
func (w KeepingWords) named(err error, pieces []piece.Piece) error {
	var at *nest.LayError
	if !errors.As(err, &at) {
		return err
	}
	name := func(item, copy int) string {
		if item < 0 || item >= len(pieces) {
			return w.Some
		}
		if pieces[item].Count > 1 {
			return fmt.Sprintf(w.Copy, pieces[item].ID, copy+1)
		}
		return pieces[item].ID
	}
	if at.OtherItem < 0 {
		return fmt.Errorf(w.Breach, name(at.Item, at.Copy), w.Breaches[at.Breach])
	}
	return fmt.Errorf(w.Between, name(at.Item, at.Copy), name(at.OtherItem, at.OtherCopy), w.Breaches[at.Breach])
}
