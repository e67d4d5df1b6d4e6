package panel

import (
	"errors"
	"slices"

	"slingloft/outline/article"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/walk"
	"slingloft/outline/words"
)

// Lining is the second layer of a bed: its pieces, and the seams in which it lies on the
// body. Notches are the body's own, at the same hung lengths.
type Lining struct {
	Sewn
	Laid    flat.Lining
	Opening Opening
}

// Opening is where a lining is not sewn to the body.
type Opening struct {
	Edge     design.LiningOpening
	From, To piece.Notch   // on that edge
	Hem      float64       // finished width, folded two times out of the allowance, mm
	Line     geom.Polyline // of the net line, flat
}

// Length returns how long the opening is as it hangs, mm.
func (o Opening) Length() float64 { return o.To.At - o.From.At }

// Stations returns where the girth of a lining is told: at both ends of the pad and in its
// middle, mm.
func (l Lining) Stations() [3]float64 {
	return [3]float64{l.Laid.Head, (l.Laid.Head + l.Laid.Foot) / 2, l.Laid.Foot}
}

// joinsOfLining is how many joins a lining may have: it carries nothing, so that it is
// joined wherever its roll is too narrow.
const joinsOfLining = 2

// padBends is how long an opening is at least, as a part of the pad's width: bent or half
// blown up the pad goes through. Own choice.
const padBends = 0.75

// Lined builds the lining of a bed from its own flat outline and the bed's pieces. mark
// is lettered on each piece. The error is a [hung.Impossible] where there is none.
func Lined(d design.Design, s *hung.Shape, b *flat.Body, bed Sewn, mark string, w words.Lettering) (Lining, error) {
	width := d.WidthKey(article.Lining)
	d.Cloth = d.ClothFor(article.Lining)
	d.Cloth.Joins = joinsOfLining
	m := pattern{d: d, s: s, b: b, mark: mark, words: w, as: liningLayer(d, w)}
	m.as.joinsKey = width
	m.sideID = [2]string{m.as.id, m.as.id}
	m.out.Reach = bed.Reach
	m.seamLines()
	m.out.SideNotches, m.out.EndNotches = bed.SideNotches, bed.EndNotches
	m.opening = openingOf(d, m.out)
	e, _ := m.openingEdge()
	m.opening.Line = geom.NewArc(e.Flat).Between(e.FlatOf(m.opening.From.At), e.FlatOf(m.opening.To.At))
	if most := m.opening.Length() / padBends; d.Lining.Width > most {
		return Lining{}, &hung.Impossible{Key: design.KeyLiningPadWidth, Bound: design.AtMost, Limit: most,
			Found: design.Found(design.PadOverOpening, m.opening.Length())}
	}
	err := m.body()
	var wide *TooWide
	if errors.As(err, &wide) {
		no := &hung.Impossible{Key: width, Found: design.Found(design.LiningOverRoll, wide.Across)}
		for _, roll := range wide.Rolls {
			if roll > 0 && (no.Bound == design.NoLimit || roll < no.Limit) {
				no.Bound, no.Limit = design.AtLeast, roll
			}
		}
		err = no
	}
	if err != nil {
		return Lining{}, err
	}
	m.sewTo(bed)
	return Lining{Sewn: m.out, Opening: m.opening}, nil
}

// openingOf returns the opening of a lining: at an end between its outer quarters, at a
// side between the notches beside its middle.
func openingOf(d design.Design, s Sewn) Opening {
	o := Opening{Edge: d.Lining.Opening, Hem: d.Seam.End / 2}
	notches := s.EndNotches[hung.Head]
	switch o.Edge {
	case design.FootOpening:
		notches = s.EndNotches[hung.Foot]
	case design.LeftOpening, design.RightOpening:
		notches, o.Hem = s.SideNotches, d.Seam.Side/2
		if o.Edge == design.RightOpening {
			notches = sideNotches(bed.Right.Letter(), s.SideNet.HungLength(), barsOf(notches), true)
		}
		i := middleOf(notches, s.SideNet.HungLength()/2)
		notches = notches[i-1 : i+2]
	}
	o.From, o.To = notches[0], notches[len(notches)-1]
	return o
}

// barsOf returns where the bars' notches lie.
func barsOf(notches []piece.Notch) (at [2]float64) {
	e := 0
	for _, n := range notches {
		if n.Bar && e < len(at) {
			at[e] = n.At
			e++
		}
	}
	return at
}

// middleOf returns the notch of a side nearest to its middle that has one on either side.
func middleOf(notches []piece.Notch, middle float64) int {
	best := 1
	for i := 1; i+1 < len(notches); i++ {
		if abs(notches[i].At-middle) < abs(notches[best].At-middle) {
			best = i
		}
	}
	return best
}

func abs(v float64) float64 { return max(v, -v) }

// sewTo walks the seams in which a lining lies on the body.
func (m *pattern) sewTo(body Sewn) {
	ids := map[piece.Rim]string{}
	for _, q := range body.Seams {
		if q.Kind.Side() {
			ids[q.Rim] = q.IDs[0]
		}
	}
	for _, side := range []bed.Side{bed.Left, bed.Right} {
		rim := piece.RimOf(side)
		m.out.Seams = append(m.out.Seams, walk.Seam(walk.Pair{
			Seam:  piece.Seam{Kind: piece.SideToLining, Rim: rim, IDs: [2]string{ids[rim], m.sideID[side]}},
			Edges: [2]flat.Edge{body.SideNet, m.out.SideNet}, Notches: m.onSide(side),
		}, m.d.Seam))
	}
	for _, e := range hung.Ends() {
		m.out.Seams = append(m.out.Seams, walk.Seam(walk.Pair{
			Seam:  piece.Seam{Kind: piece.EndToLining, End: e, IDs: [2]string{"body", piece.LiningID}},
			Edges: [2]flat.Edge{body.EndNets[e], m.out.EndNets[e]}, Notches: m.out.EndNotches[e],
		}, m.d.Seam))
	}
}

// openingEdge returns the edge on which the lining's opening lies, and the side of it on
// which the lining does: +1 left of the way along it.
func (m *pattern) openingEdge() (e flat.Edge, inside float64) {
	switch m.opening.Edge {
	case design.HeadOpening:
		return m.out.EndNets[hung.Head], -1
	case design.FootOpening:
		return m.out.EndNets[hung.Foot], 1
	case design.LeftOpening:
		return m.out.SideNet, -1
	}
	return m.out.SideNet.Mirrored(), 1
}

// openingFolds draws the folds of the hem at a lining's opening: its edge is folded in at
// half the allowance and at the net line, which is its finished edge.
func (m *pattern) openingFolds(p *piece.Piece) {
	if m.as.article != article.Lining {
		return
	}
	_, inside := m.openingEdge()
	edge := m.opening.Line
	p.Lines = append(p.Lines,
		piece.Line{Name: "opening fold 1", Role: piece.HemFold, Index: 1, Work: piece.Score, Points: edge},
		piece.Line{Name: "opening fold 2", Role: piece.HemFold, Index: 2, Work: piece.Score, Points: edge.Offset(inside * m.opening.Hem)})
	p.Hem = edge.Length()
	at, dir := geom.NewArc(edge).At(edge.Length() / 4)
	p.Labels = append(p.Labels, piece.Label{Text: m.words.Cloth.LiningHem, Height: clothLetter / 2, Turn: piece.Readable(dir.Angle()),
		At: at.Plus(dir.Left().Times(inside * 2.2 * clothLetter / 2)), Anchor: piece.Centre})
}

// openingMargins is what a lining has at its opening.
func (m *pattern) openingMargins() []piece.Margin {
	if m.as.article != article.Lining {
		return nil
	}
	return []piece.Margin{{At: piece.AtLiningOpening, Wide: m.opening.Hem}}
}

// Curves returns the seam curves by which a lining can be marked, as [Sewn.Curves] does
// for the body.
func (l Lining) Curves() []piece.Curve {
	if len(l.Pieces) == 0 {
		return nil
	}
	out := slices.Clone(l.Sewn.Curves())
	for i := range out {
		out[i].Kind = out[i].Kind.OnLining()
	}
	return out
}
