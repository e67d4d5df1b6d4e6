package insectnet

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/rig"
	"slingloft/outline/ruled"
)

// Bed is what a cover takes from the cloth pieces of its bed.
type Bed struct {
	Reach   float64          // from the cord's centre to the side seam
	Long    float64          // of a channel, from end to end
	Notches [2][]piece.Notch // along it, by [bed.Side]
	CapTops [2]geom.Polyline // top edges of the caps, by [bed.End]: x across, y up from the end of the bottom line
}

// Space is a cover as it hangs over its bed: axes as in package hung. Both sides are
// alike, and that at y ≥ 0 stands for both.
type Space struct {
	// Side is the side: its near line the rim, along the channel's outer fold from the head
	// corner to the foot corner, its far line the ridge between the ends.
	Side ruled.Strip
	Tips [2]int    // of the rim's points those at the bars' tips, by [bed.End]
	Ends [2]EndNet // by [bed.End]
	Apex [2]geom.Point3
	// Between is how far it is from apex to apex, straight; 0 where the ridge has a line of
	// its own.
	Between float64
	Line    Line
	Free    Free
	girths  []float64 // of the bed, out to the rim, at its points
	out     float64   // of the rim past the cords, along the walls
}

// EndNet is an end of a cover, in the plane in which the cloth ends: x across the bed, y up
// from the end of its bottom line.
type EndNet struct {
	Ending hung.Ending
	Corner geom.Point    // at y ≥ 0, where it meets rim and side
	Top    geom.Point    // where it meets the ridge
	Edge   geom.Polyline // its lower edge, from the corner at x < 0 along the cap's top edge to the other
	Cap    [2]int        // of the edge's points those at the cap's corners
}

// cellLength is about how long the cells of the side are along its rim, mm: a chord of a
// metre's radius lies 0.008 mm off it there, under what any file keeps.
const cellLength = 8.0

// least is how far a ridge has to lie above all of the rim, mm: own choice, so that the
// side stands.
const least = 80.0

// SpaceOf returns the cover of a design over a hung bed. anchors is
// the distance between the anchors, for a ridge on a line of its own; 0: not known. The
// error is a [hung.Impossible].
func SpaceOf(d design.Design, s *hung.Shape, on Bed, anchors float64) (Space, error) {
	c := Space{out: d.Side.Diameter / 2}
	if d.Channel.Kind == design.Facing {
		c.out = on.Reach
	}
	for e := range c.Apex {
		c.Apex[e] = geom.Pt3(s.Ends[e].ApexX, 0, s.Ends[e].ApexZ)
	}
	line := c.Apex
	if h := d.Cover.Height; h > 0 {
		for e := range line {
			line[e].Z = rig.Lowest(s) + h
		}
	} else {
		c.Between = line[1].Minus(line[0]).Len()
	}
	c.Line = lineOf(d, c.Between, anchors)
	rim, err := c.rim(s, d.Cap.Kind == design.Leaning)
	if err != nil {
		return c, err
	}
	var ridge [2]geom.Point3
	for e := range ridge {
		n := s.Ending(bed.End(e), d.Cap.Kind == design.Leaning)
		way := line[1].Minus(line[0])
		ridge[e] = line[0].PlusTimes(way, n.At.Minus(line[0]).Dot(n.Out)/way.Dot(n.Out))
		c.Ends[e] = endNet(n, rim, bed.End(e), ridge[e], on.CapTops[e])
	}
	high := math.Inf(-1)
	first, last := rim[0].X, rim[len(rim)-1].X
	for _, p := range rim {
		at := ridge[0].PlusTimes(ridge[1].Minus(ridge[0]), (p.X-first)/(last-first))
		c.Side.Near, c.Side.Far = append(c.Side.Near, p), append(c.Side.Far, at)
		high = max(high, p.Z-at.Z)
	}
	if ridge[0].X >= ridge[1].X || high > -least {
		most := math.Inf(-1)
		for _, p := range rim {
			most = max(most, p.Z)
		}
		if d.Cover.Carries() { // between the apexes alone
			return c, &hung.Impossible{Key: design.KeyCoverRidge, Found: design.Found(design.CoverRidgeLow)}
		}
		return c, &hung.Impossible{Key: design.KeyCoverHeight, Found: design.Found(design.CoverRidgeLow), Bound: design.AtLeast,
			Limit: math.Ceil(most + least - rig.Lowest(s))}
	}
	c.Free = FreeOf(d, s, c)
	return c, nil
}

// rim returns the places along the channel's outer fold.
func (c *Space) rim(s *hung.Shape, leaning bool) ([]geom.Point3, error) {
	half := s.Problem.Bed.Span / 2
	var from, to float64
	for e, at := range [2]*float64{&from, &to} {
		n := s.Ending(bed.End(e), leaning)
		x, err := c.reaches(s, n, bed.End(e).Sign()*half)
		if err != nil {
			return nil, err
		}
		*at = x
	}
	var out []geom.Point3
	stretches := [3][2]float64{{from, -half}, {-half, half}, {half, to}}
	for i, st := range stretches {
		n := max(4, int(math.Ceil(math.Abs(st[1]-st[0])/cellLength)))
		for k := range n + 1 {
			if i > 0 && k == 0 {
				continue
			}
			p, err := c.rimAt(s, st[0]+(st[1]-st[0])*float64(k)/float64(n))
			if err != nil {
				return nil, err
			}
			out = append(out, p)
			if q, err := s.SectionAt(p.X); err == nil {
				c.girths = append(c.girths, q.Girth()+2*c.out)
			}
		}
		if i < 2 {
			c.Tips[i] = len(out) - 1
		}
	}
	return out, nil
}

// rimAt returns the outer fold at a station: past the cord, along the wall.
func (c *Space) rimAt(s *hung.Shape, x float64) (geom.Point3, error) {
	q, err := s.SectionAt(x)
	if err != nil {
		return geom.Point3{}, err
	}
	y, z := q.Point(q.Girth()/2 + c.out)
	return geom.Pt3(x, y, s.Problem.Bottom(x)+z), nil
}

// reaches returns the station at which the rim reaches the plane of an end, by halving
// between the bar and the end of the centre line.
func (c *Space) reaches(s *hung.Shape, n hung.Ending, bar float64) (float64, error) {
	in, out := bar, n.At.X
	if n.Up.X == 0 {
		return out, nil // upright
	}
	const halvings = 40 // a tail of a metre to a millionth of a millimetre
	for range halvings {
		x := (in + out) / 2
		p, err := c.rimAt(s, x)
		if err != nil {
			return 0, err
		}
		if p.Minus(n.At).Dot(n.Out) < 0 {
			in = x
		} else {
			out = x
		}
	}
	return out, nil
}

// endNet returns the net of an end between rim and ridge, over a cap's top edge.
func endNet(n hung.Ending, rim []geom.Point3, e bed.End, ridge geom.Point3, top geom.Polyline) EndNet {
	at := rim[0]
	if e == bed.Foot {
		at = rim[len(rim)-1]
	}
	in := func(p geom.Point3) geom.Point { return geom.Pt(p.Y, p.Minus(n.At).Dot(n.Up)) }
	out := EndNet{Ending: n, Corner: in(at), Top: in(ridge)}
	if top[0].X > top[len(top)-1].X {
		top = top.Reversed()
	}
	const same = 1e-6 // a facing's cap begins at the corner itself
	out.Edge = append(out.Edge, geom.Pt(-out.Corner.X, out.Corner.Y))
	for i, p := range top {
		if p.Dist(out.Edge[len(out.Edge)-1]) > same {
			out.Edge = append(out.Edge, p)
		}
		if i == 0 {
			out.Cap[0] = len(out.Edge) - 1
		}
	}
	out.Cap[1] = len(out.Edge) - 1
	if out.Corner.Dist(out.Edge[len(out.Edge)-1]) > same {
		out.Edge = append(out.Edge, out.Corner)
	}
	return out
}

// Outline returns the net of the end: the lower edge, up to the ridge, and down again.
func (e EndNet) Outline() []geom.Polyline {
	first, last := e.Edge[0], e.Edge[len(e.Edge)-1]
	return []geom.Polyline{e.Edge, {last, e.Top}, {e.Top, first}}
}
