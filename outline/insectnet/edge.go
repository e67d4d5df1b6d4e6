package insectnet

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// hemReach is the stretch over which a lower edge's curve is measured, mm: the spacing of
// pins.
const hemReach = 100.0

// hemLies refuses a hem that is too wide for the curve of the sides' lower edge between the
// bars.
func (m *maker) hemLies() error {
	line, _ := m.sides[bed.Left].at(atBay)
	arc := geom.NewArc(line)
	sharp := 0.0
	for from := 0.0; from+hemReach <= arc.Length(); from += hemReach / 4 {
		_, a := arc.At(from)
		_, b := arc.At(from + hemReach)
		sharp = max(sharp, math.Abs(a.AngleTo(b))/hemReach)
	}
	if hem := m.d.Cover.Hem; 2*hem*sharp > piece.HemGives {
		return &hung.Impossible{Key: design.KeyCoverHem, Found: design.Found(design.HemGives, 200*hem*sharp), Bound: design.AtMost,
			Limit: piece.HemGives / (2 * sharp)}
	}
	return nil
}

// ties ties a loose edge across under the bed at the notches of its sides: between them
// its elastic runs straight, and the bed's rim bows away from it.
func (m *maker) ties(at []piece.Notch) {
	m.out.Ties = nil // both sides have the same
	rim := m.out.Space.Side.Near
	run, last, next := 0.0, 0, 0
	for i := 1; i < len(rim); i++ {
		run += rim[i].Minus(rim[i-1]).Len()
		if i == len(rim)-1 || next < len(at) && run >= at[next].At {
			m.out.Gap = max(m.out.Gap, bow(rim[last:i+1]))
			if i < len(rim)-1 {
				m.out.Ties = append(m.out.Ties, m.out.Space.girths[i]-2*m.d.Cover.Lap+tieKnots)
			}
			last = i
			next++
		}
	}
}

// tieKnots is the cord that both ends of a tie take, mm; elasticPart how long an elastic is
// cut, as part of the hem that it runs in: own choices.
const (
	tieKnots    = 300.0
	elasticPart = 0.8
)

// bow returns how far points lie from the straight line from the first to the last.
func bow(all []geom.Point3) (most float64) {
	from := all[0]
	way := all[len(all)-1].Minus(from).Unit()
	for _, p := range all {
		d := p.Minus(from)
		most = max(most, d.PlusTimes(way, -d.Dot(way)).Len())
	}
	return most
}

// held reckons the elastic of a loose edge, once round the cover along its hem.
func (m *maker) held() {
	if !m.loose() {
		return
	}
	for _, p := range m.out.Pieces {
		m.out.Elastic += elasticPart * p.Hem
	}
}

// straight is how far an edge may bow to be drawn as a straight line, mm: what a hand sets.
const straight = 0.5

// curves lists the edges that are drawn by a curve, and where their templates lie.
func (m *maker) curves() {
	for _, c := range []struct {
		id   string
		kind piece.CurveKind
		of   bound
	}{
		{"cover-bay", piece.CoverBayCurve, atBay}, {"cover-head-tail", piece.CoverHeadCurve, atHeadTail},
		{"cover-foot-tail", piece.CoverFootCurve, atFootTail}, {"cover-ridge", piece.CoverRidgeCurve, atRidge},
	} {
		// On the right panel a lower edge runs from head to foot as it lies counter-clockwise.
		var places []piece.Place
		line, left := m.sides[bed.Right].at(c.of)
		if !left {
			line = line.Reversed()
		}
		board, on := laidFrom(line)
		places = append(places, piece.Place{Piece: m.sideOf(bed.Right).ID, Side: bed.Right, Motion: on})
		other, otherLeft := m.sides[bed.Left].at(c.of)
		if !otherLeft {
			other = other.Reversed()
		}
		// Turned over, the template begins where the other side's edge ends.
		last, first := other[len(other)-1], other[0]
		places = append(places, piece.Place{Piece: m.sideOf(bed.Left).ID, Side: bed.Left, Over: true,
			Motion: geom.Motion{Mirror: true, Turn: last.Minus(first).Angle(), Shift: first}})
		m.curve(c.id, c.kind, board, places)
	}
	for _, e := range hung.Ends() {
		n := m.out.Space.Ends[e]
		board, on := laidFrom(n.Edge[n.Cap[0] : n.Cap[1]+1])
		m.curve("cover-"+e.String()+"-end", [2]piece.CurveKind{piece.CoverHeadEnd, piece.CoverFootEnd}[e], board, []piece.Place{{Piece: m.endOf(e).ID, End: e, Motion: on}})
	}
}

// curve lists an edge that bows.
func (m *maker) curve(id string, kind piece.CurveKind, board geom.Polyline, places []piece.Place) {
	box := board.Bounds()
	if max(box.Max.Y, -box.Min.Y) < straight {
		return
	}
	m.out.Curves = append(m.out.Curves, Curved{ID: id, Kind: kind, Line: board, Places: places})
}

// laidFrom returns an edge as its template counts it, and the motion from there to the
// piece's coordinates. The edge runs counter-clockwise round its piece; the template counts
// from its last corner back, so that the piece lies below.
func laidFrom(edge geom.Polyline) (board geom.Polyline, on geom.Motion) {
	first, last := edge[0], edge[len(edge)-1]
	on = geom.Motion{Turn: first.Minus(last).Angle(), Shift: last}
	back := geom.Motion{Turn: -on.Turn}
	back.Shift = back.Apply(last).Times(-1)
	return edge.Reversed().Moved(back), on
}

// ByHand returns the edges by which the cover can be marked by hand.
func (s Sewn) ByHand() []piece.Curve {
	var out []piece.Curve
	for _, c := range s.Curves {
		out = append(out, piece.Curve{Kind: c.Kind, Line: c.Line})
	}
	return out
}
