package simulatetest

import (
	"fmt"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Part is a piece where it lies on the stock.
type Part struct {
	Name  string
	Cut   geom.Ring
	Holes []geom.Ring
	Marks []piece.Line // on it that were asked for
	Slits []piece.Line // cuts in it that were asked for
}

// Order is what was to be done to one stock.
type Order struct {
	Parts     []Part
	Kerf      float64 // width of the cut by which the tool goes beside the lines, mm
	Tolerance float64 // of the way, mm
	Thickness float64 // that a cut has to go through, mm; 0: no depth is looked at
	Tabs      int     // left on each outline
	TabWidth  float64 // mm
	Once      float64 // mm of an outline that may be cut twice; 0: nobody looks
	Uncut     bool    // cuts are not due, only forbidden elsewhere
}

// step is how far apart places are looked at, mm.
const step = 1.0

// Judge says what a run would have spoilt, or left undone.
func Judge(r Run, s Setup, o Order) []string {
	out := append([]string{}, r.Faults...)
	if b := s.Bed; b[0] > 0 && r.Way.Width() > b[0]+1e-3 || b[1] > 0 && r.Way.Height() > b[1]+1e-3 {
		out = append(out, fmt.Sprintf("goes over the bed: %.2f × %.2f mm", r.Way.Width(), r.Way.Height()))
	}
	if len(r.Tracks) == 0 {
		return append(out, "does nothing")
	}
	out = append(out, o.spoilt(r, s)...)
	if !o.Uncut {
		out = append(out, o.undone(r, s)...)
	}
	if o.Once > 0 {
		out = append(out, o.twice(r)...)
	}
	return out
}

// twice finds outlines of which more was cut twice than may be, beside the way in and
// what goes round corners.
func (o Order) twice(r Run) []string {
	var out []string
	const corners = 10.0 // mm
	for _, p := range o.Parts {
		near, cut := NewNear(o.Kerf/2+o.Tolerance+1), 0.0
		near.AddLine(geom.Polyline(p.Cut), true)
		for _, t := range r.Tracks {
			long := t.From.Dist(t.To)
			n := math.Max(1, math.Ceil(long/step))
			for i := 0.5; i < n; i++ {
				if near.Dist(t.From.Towards(t.To, i/n)) <= o.Kerf/2+o.Tolerance {
					cut += long / n
				}
			}
		}
		if whole := geom.Polyline(p.Cut.Closed()).Length(); cut > whole+o.Once+corners {
			out = append(out, fmt.Sprintf("%s: %.1f mm are cut, of an outline of %.1f mm", p.Name, cut, whole))
		}
	}
	return out
}

// edges takes up the lines that the tool goes beside, asked those that it goes along.
func (p Part) edges(n *Near) {
	n.AddLine(geom.Polyline(p.Cut), true)
	for _, h := range p.Holes {
		n.AddLine(geom.Polyline(h), true)
	}
}

func (p Part) asked(n *Near) {
	for _, l := range append(append([]piece.Line{}, p.Marks...), p.Slits...) {
		n.AddLine(l.Points, l.Closed)
	}
}

// holds reports whether a place is part of the piece, not waste in one of its holes.
func (p Part) holds(at geom.Point) bool {
	if !p.Cut.Bounds().Contains(at) || !p.Cut.Contains(at) {
		return false
	}
	for _, h := range p.Holes {
		if h.Contains(at) {
			return false
		}
	}
	return true
}

// spoilt finds tracks off the stock, and on a part where nobody asked for them.
func (o Order) spoilt(r Run, s Setup) []string {
	edges, asked := NewNear(o.Kerf/2+5), NewNear(5)
	for _, p := range o.Parts {
		p.edges(edges)
		p.asked(asked)
	}
	stock := geom.Box{Max: geom.Pt(s.Width, s.Height)}.Expanded(o.Tolerance)
	var off, on float64
	var offAt, onAt string
	for _, t := range r.Tracks {
		long := t.From.Dist(t.To)
		n := math.Max(1, math.Ceil(long/step))
		for i := 0.0; i <= n; i++ {
			at := t.From.Towards(t.To, i/n)
			if !stock.Contains(at) {
				off, offAt = off+long/n, fmt.Sprint(at)
			}
			if asked.Dist(at) <= o.Tolerance {
				continue
			}
			aside := edges.Dist(at)
			if name := o.struck(at, aside); name != "" {
				on, onAt = on+long/n, fmt.Sprintf("%v on %s", at, name)
			}
		}
	}
	var out []string
	if off > 0 {
		out = append(out, fmt.Sprintf("%.2f mm off the stock with the tool on, last at %s", off, offAt))
	}
	if on > 0 {
		out = append(out, fmt.Sprintf("%.2f mm on parts that nobody asked for, last at %s", on, onAt))
	}
	return out
}

// struck returns the part that a cut at a place takes something of, "" for none; aside
// is how far from any edge the place is.
func (o Order) struck(at geom.Point, aside float64) string {
	if aside < o.Kerf/2-o.Tolerance {
		return "an edge"
	}
	for _, p := range o.Parts {
		if aside > o.Tolerance && p.holds(at) {
			return p.Name
		}
	}
	return ""
}

// undone finds outlines and holes that are not cut through but for their tabs.
func (o Order) undone(r Run, s Setup) []string {
	reach := o.Kerf/2 + o.Tolerance
	near := NewNear(reach + 5)
	for _, t := range r.Tracks {
		if t.Depth >= o.Thickness || s.Tool == design.Laser {
			near.Add(t.From, t.To)
		}
	}
	var out []string
	lookIn := func(near *Near, name string, pts geom.Polyline, left float64) {
		arc, uncut, where := geom.NewArc(pts), 0.0, geom.Point{}
		n := math.Ceil(arc.Length() / (step / 2))
		for i := 0.0; i < n; i++ {
			if at, _ := arc.At(arc.Length() * i / n); near.Dist(at) > 1.5*o.Kerf/2+o.Tolerance {
				uncut, where = uncut+arc.Length()/n, at
			}
		}
		if uncut > left+step {
			out = append(out, fmt.Sprintf("%s: %.1f mm are not cut through, last at %v", name, uncut, where))
		}
	}
	drawn := NewNear(reach + 5)
	for _, t := range r.Tracks {
		drawn.Add(t.From, t.To)
	}
	look := func(name string, pts geom.Polyline, left float64) { lookIn(near, name, pts, left) }
	for _, p := range o.Parts {
		look(p.Name, p.Cut.Closed(), float64(o.Tabs)*o.TabWidth)
		for _, h := range p.Holes {
			look(p.Name+"/hole", h.Closed(), 0)
		}
		for _, l := range p.Marks {
			if line := l.Points; l.Closed {
				lookIn(drawn, p.Name+"/"+l.Name, geom.Ring(line).Closed(), 0)
			} else {
				lookIn(drawn, p.Name+"/"+l.Name, line, 0)
			}
		}
		for _, l := range p.Slits {
			look(p.Name+"/"+l.Name, l.Points, 0)
		}
	}
	return out
}
