package insectnet

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// Zip is the opening of a cover.
type Zip struct {
	Piece string  // its ID
	Long  float64 // from stop to stop, along its middle
	Room  float64 // most that there is room for
	// Stops are the distances of its stops from the head's end of the line that it lies on,
	// along it; at an end from the cap's top edge upwards.
	Stops [2]float64
	// Rows are the lengths of the rows that hold it, less Long: what the net is eased by on
	// each; the lower first, at an end the left.
	Rows  [2]float64
	Line  geom.Polyline // its middle, on the piece
	Hangs float64       // net below an open zip, from the cord or cap to its edge
	Opens float64       // net above it that is rolled up to the ridge, in the middle
}

// zipEnd is how far a stop keeps off the ends of what a zip lies on, mm; zipTop how far off
// the ridge: own choices, so that the net there holds together.
const (
	zipEnd = 50.0
	zipTop = 80.0
)

// zipLeast is the shortest zip that somebody gets in by, mm: own choice.
const zipLeast = 200.0

// zip puts the zip into its piece.
func (m *maker) zip() error {
	c := m.d.Cover
	switch c.Zip {
	case design.ZipHead:
		return m.zipInEnd(bed.Head)
	case design.ZipFoot:
		return m.zipInEnd(bed.Foot)
	case design.ZipRight:
		return m.zipInSide(bed.Right)
	}
	return m.zipInSide(bed.Left)
}

// zipInSide puts the zip along the lower edge between the bars.
func (m *maker) zipInSide(s bed.Side) error {
	c := m.d.Cover
	bay, left := m.sides[s].at(atBay)
	ridge, _ := m.sides[s].at(atRidge)
	in := 1.0
	if left {
		in = -1
	}
	along := bay.Offset(in * c.ZipUp)
	arc := geom.NewArc(along)
	// The ridge is nearly straight: what matters is how near it comes.
	top := geom.NewArc(ridge)
	least := math.Inf(1)
	for _, p := range bay {
		_, d := top.Nearest(p)
		least = min(least, d)
	}
	if most := least - zipTop; c.ZipUp+c.ZipWidth/2 > most {
		return &hung.Impossible{Key: design.KeyCoverZipUp, Found: design.Found(design.ZipAtRidge), Bound: design.AtMost,
			Limit: most - c.ZipWidth/2}
	}
	z, err := m.zipped(arc.Length(), 2*zipEnd)
	if err != nil {
		return err
	}
	z.Stops = [2]float64{(arc.Length() - z.Long) / 2, (arc.Length() + z.Long) / 2}
	z.Line = arc.Between(z.Stops[0], z.Stops[1])
	low, high := z.Line.Offset(-in*c.ZipWidth/2), z.Line.Offset(in*c.ZipWidth/2)
	z.Rows = [2]float64{low.Length() - z.Long, high.Length() - z.Long}
	z.Hangs = c.ZipUp - c.ZipWidth/2
	mid := bay[len(bay)/2]
	_, opens := top.Nearest(mid)
	z.Opens = opens - c.ZipUp - c.ZipWidth/2
	m.setIn(m.sideOf(s), z, low, high)
	return nil
}

// zipInEnd puts the zip up the middle of an end.
func (m *maker) zipInEnd(e bed.End) error {
	c, n := m.d.Cover, m.out.Space.Ends[e]
	low := n.Edge[len(n.Edge)/2].Y
	for _, p := range n.Edge {
		low = min(low, p.Y)
	}
	from := low + c.ZipUp
	z, err := m.zipped(n.Top.Y-zipTop-from, 0)
	if err != nil {
		return err
	}
	z.Stops = [2]float64{c.ZipUp, c.ZipUp + z.Long}
	z.Line = geom.Polyline{geom.Pt(0, from), geom.Pt(0, from+z.Long)}
	z.Hangs = c.ZipUp
	m.setIn(m.endOf(e), z, z.Line.Offset(-c.ZipWidth/2), z.Line.Offset(c.ZipWidth/2))
	return nil
}

// zipped returns the zip for what is so long, less what its stops keep off.
func (m *maker) zipped(long, off float64) (Zip, error) {
	z := Zip{Room: long - off}
	step := 50.0
	if m.d.Output.Inches {
		step = 2 * quantity.Inch
	}
	switch c := m.d.Cover; {
	case z.Room < zipLeast:
		return z, &design.Advised{Found: design.Found(design.ZipNoRoom), Hint: design.Say(design.WriteThis, `zip = "left"`)}
	case c.ZipLength > z.Room:
		return z, &hung.Impossible{Key: design.KeyCoverZipLength, Found: design.Found(design.ZipTooLong), Bound: design.AtMost, Limit: z.Room}
	case c.ZipLength > 0:
		z.Long = c.ZipLength
	default:
		z.Long = math.Floor(z.Room/step) * step
	}
	return z, nil
}

// setIn draws a zip: its middle, to be slit once it is sewn on, the rows that hold it, and
// a stop at each end.
func (m *maker) setIn(p *piece.Piece, z Zip, a, b geom.Polyline) {
	z.Piece = p.ID
	m.out.Zip = z
	round := append(append(geom.Polyline{}, a...), b.Reversed()...)
	p.Lines = append(p.Lines,
		piece.Line{Name: "zip line", Work: piece.Mark, Points: z.Line},
		piece.Line{Name: "zip stitch line", Work: piece.Stitch, Points: round, Closed: true})
	mid, dir := geom.NewArc(z.Line).At(z.Long / 2)
	off := dir.Left()
	if off.Y < 0 {
		off = off.Times(-1)
	}
	p.Labels = append(p.Labels, piece.Label{Text: m.words.Cloth.Zip, At: mid.Plus(off.Times(m.d.Cover.ZipWidth/2 + clothLetter)),
		Height: clothLetter / 2, Turn: piece.Readable(dir.Angle()), Anchor: piece.Centre})
}
