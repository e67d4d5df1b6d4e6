package flat

import (
	"errors"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// A lining is a second layer between the same cords, with a pad between it and the body.
// Across, where the pad lies, it is the shortest line from cord to cord round the pad's
// outer face, whose round is concentric with the body's: an arc, and walls tangent to it.
// Past the edge of a narrow pad it runs straight to the cord. In the tails it comes nearer
// to the body in step with the way that is left from the pad's end to the end of the
// cloth, where both layers meet.
//
//	cord ·                      · cord
//	      \ `.  body        .' /
//	       \   `-.______.-'   /
//	lining  `.  //pad//pad/ .'
//	          `-.________.-'

// Lining is the lining of a hung bed.
type Lining struct {
	Head, Foot float64 // stations of the pad's ends, mm
	Out        float64 // how far the round part lies outside the body's, mm; negative: inside
	Play       float64 // of it, what is more than the pad is thick, mm
	Half       float64 // half the pad's width along the body, mm; 0: as wide as the lining is round
}

// LiningOf takes the lining of a hung bed out of a design. A pad that is left to the program
// is no longer than there is room for it.
func LiningOf(d design.Design, s *hung.Shape) Lining {
	l := Lining{Head: d.Lining.Shift, Foot: d.Lining.Shift, Out: d.Lining.Out(), Play: d.Lining.Play}
	half := d.Lining.Long(d.Bed.Span) / 2
	if d.Lining.Length == 0 {
		half = min(half, l.room(s, d.Cap.Kind == design.Leaning))
	}
	l.Head, l.Foot = l.Head-half, l.Foot+half
	if d.Lining.Place == design.BelowBody { // over the body the sleeper keeps it round
		l.Half = d.Lining.Width / 2
	}
	return l
}

// Lying returns the lining as it lies on the pad, without play.
func (l Lining) Lying() Lining {
	l.Out -= l.Play
	l.Play = 0
	return l
}

// tailRun is the least way from the end of a pad to where the end of the cloth meets the
// cords, as a part of how far the layers lie apart: the lining slopes by less than half a
// right angle there. Own choice.
const tailRun = 1.5

// LayLining returns the flat outline of a lining, at the line of the cord centres, as [Lay]
// does for the body. What stands in the way of it is a [hung.Impossible].
func LayLining(s *hung.Shape, leaning bool, l Lining) (Body, error) {
	if err := l.fits(s, leaning); err != nil {
		return Body{}, err
	}
	lay := func(l Lining) (Body, error) {
		if s.Problem.Bed.Cut == design.Straight {
			return l.straight(s)
		}
		b, err := layOver(s, cellAcross, leaning, func(e hung.End, p endPlane) Surface { return l.surface(s, e, p) })
		if err == nil && s.Problem.Bed.Curve != design.Balanced {
			return b.drawnBeside(s, leaning, s.Problem.Bed.Curve)
		}
		return b, err
	}
	b, err := lay(l)
	if err != nil {
		no := &hung.Impossible{Key: design.KeyLiningPadThickness, Found: design.Found(design.PadOverSection), Cause: err}
		if errors.Is(err, errNoCorner) {
			no.Cause = nil // it says the same
		}
		if thin := l; l.Out > 0 {
			for thin.Out = l.Out / 2; thin.Out > l.Play; thin.Out /= 2 {
				if _, err := lay(thin); err == nil {
					no.Bound, no.Limit = design.AtMost, thin.Out-l.Play
					break
				}
			}
		}
		return b, no
	}
	return b, nil
}

// fits wants the pad to end far enough from the ends of the cloth, and to be no wider than
// the bed over it.
func (l Lining) fits(s *hung.Shape, leaning bool) error {
	if room := l.room(s, leaning); l.Foot-l.Head > 2*room {
		return &hung.Impossible{Key: design.KeyLiningPadLength, Found: design.Found(design.PadPastTail), Bound: design.AtMost, Limit: 2 * room}
	}
	const clear = 40.0 // between the pad's edge and the cord, mm: own choice
	least := math.Inf(1)
	for _, x := range s.Stations(60) {
		if x >= l.Head && x <= l.Foot {
			least = min(least, s.At(x).Section.Girth()/2-clear)
		}
	}
	if l.Half > least {
		return &hung.Impossible{Key: design.KeyLiningPadWidth, Found: design.Found(design.PadOverBed), Bound: design.AtMost, Limit: 2 * least}
	}
	return nil
}

// room returns how far the pad may reach on either side of its middle, mm.
func (l Lining) room(s *hung.Shape, leaning bool) float64 {
	out := math.Inf(1)
	for _, e := range hung.Ends() {
		at := s.Ending(e, leaning).Station(1)
		if s.Problem.Bed.Cut == design.Straight {
			at = s.Ends[e].TailX
		}
		out = min(out, float64(e.Sign()*(at-(l.Head+l.Foot)/2))-float64(tailRun*math.Abs(l.Out)))
	}
	return out
}

// LiningSection is a lining's section at one station, over the bottom line of the body:
// round about the same centre as the body, then straight to the cord.
type LiningSection struct {
	Radius float64 // of the round part, mm
	Centre float64 // its height over the body's bottom line, mm
	Arc    float64 // half angle of the round part, rad
	Wall   float64 // direction of the straight part above the horizontal, rad; more than Arc past a pad's edge
	Length float64 // of the straight part, mm
}

// Over returns the lining's section over a section of the body. With a pad as wide as it
// is round, half its girth is √(d² − (R+t)²) + (R+t) θ with θ = atan2(y, R−h) − acos((R+t)/d)
// and d the distance of the cord from the round's centre: the body's own, with the radius
// and the height of the cords larger by t. The error is a [hung.SectionError] with X left 0.
func (l Lining) Over(s hung.Section) (LiningSection, error) {
	r := s.Radius + l.Out
	up := s.Height - s.Radius // of the cord over the centre
	d := math.Hypot(s.Half, up)
	if !(r > 0) || !(d > r) {
		return LiningSection{}, hung.SectionError{Half: s.Half, Height: s.Height, Radius: r, Why: design.CordsInside}
	}
	out := LiningSection{Radius: r, Centre: s.Radius}
	out.Length = math.Sqrt(float64(d*d) - float64(r*r))
	out.Arc = math.Atan2(s.Half, -up) - math.Atan2(out.Length, r)
	out.Wall = out.Arc
	if !(out.Arc > 0) {
		return LiningSection{}, hung.SectionError{Half: s.Half, Height: s.Height, Radius: r, Why: design.CordsBelow}
	}
	if edge := padEdge(s, l.Half); l.Half > 0 && edge < out.Arc {
		sin, cos := math.Sincos(edge)
		across, rise := s.Half-float64(r*sin), up+float64(r*cos)
		out.Arc, out.Wall, out.Length = edge, math.Atan2(rise, across), math.Hypot(across, rise)
	}
	return out, nil
}

// padEdge returns the angle about the centre of a body's round part at which something lies
// that is so far along the section from the bottom line, mm: up the wall it is seen from
// the centre ever less.
func padEdge(s hung.Section, along float64) float64 {
	arc := float64(s.Radius * s.Wall)
	if along <= arc {
		return along / s.Radius
	}
	return s.Wall + math.Atan2(along-arc, s.Radius)
}

// Girth returns the length of lining from cord centre to cord centre, mm.
func (s LiningSection) Girth() float64 { return 2 * (s.Length + float64(s.Radius*s.Arc)) }

// Point returns the point of the section at length q along the lining from its middle, mm
// across and mm above the body's bottom line. Past the cord it runs on straight.
func (s LiningSection) Point(q float64) (y, z float64) {
	arc := float64(s.Radius * s.Arc)
	sin, cos := math.Sincos(min(q, arc) / s.Radius)
	y, z = s.Radius*sin, s.Centre-float64(s.Radius*cos)
	if run := q - arc; run > 0 {
		up, across := math.Sincos(s.Wall)
		y, z = y+float64(run*across), z+float64(run*up)
	}
	return y, z
}

// surface is one half of the lining over the parameters of the body: the station outwards
// from mid-bay and the length along the body's section from the bottom line. It keeps the
// sections of the last station, which the weave often asks for twice.
func (l Lining) surface(s *hung.Shape, e hung.End, plane endPlane) Surface {
	end := e.Sign() * l.Foot
	if e == hung.Head {
		end = e.Sign() * l.Head
	}
	at := math.NaN()
	var body hung.Section
	var lining LiningSection
	var missing error // of the lining's section
	return func(a, b float64) (geom.Point3, error) {
		if x := e.Sign() * a; x != at {
			next, err := s.SectionBeyond(x)
			if err != nil {
				return geom.Point3{}, err
			}
			body, at = next, x
			lining, missing = l.Over(body)
		}
		bottom := s.Problem.Bottom(at)
		y, z := body.Point(b)
		p := geom.Pt3(a, y, z+bottom)
		part := l.part(a, end, -plane.past(p))
		if part == 0 {
			return p, nil
		}
		if missing != nil {
			return p, missing
		}
		y, z = lining.Point(b * lining.Girth() / body.Girth())
		return p.Plus(geom.Pt3(a, y, z+bottom).Minus(p).Times(part)), nil
	}
}

// part returns how much of its distance from the body the lining keeps at a station
// outwards: all of it where the pad lies, up to end, and then in the proportion in which
// the way from the pad's end to the plane of the cloth's end is parted.
func (l Lining) part(a, end, inside float64) float64 {
	past := a - end
	switch {
	case inside <= 0:
		return 0
	case past <= 0:
		return 1
	}
	return inside / (inside + past)
}
