package insectnet

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/room"
)

// Place is a part of the body that the net is not to touch.
type Place int

// The places.
const (
	Face Place = iota
	Shoulders
	Elbows // on the back alone
	Feet
	PlaceCount // how many there are
)

// String returns the place as documents name it.
func (p Place) String() string { return [PlaceCount]string{"face", "shoulders", "elbows", "feet"}[p] }

// Free is how far the net keeps off a sleeper.
type Free struct {
	// From are the least distances from the net, by posture and place; infinite where there
	// is no such place.
	From [2][PlaceCount]float64
	Bar  [2]float64 // from the face to the head bar, by posture
}

// FaceRoom is how far net and head bar should keep off a face, mm: own choice.
const FaceRoom = 200.0

// foot is the length of the mean foot, mm, from heel to toes: ANSUR II, men and women.
const foot = (271.2 + 246.3) / 2

// FreeOf returns how far a cover keeps off the sleeper of a design, on the back and on the
// side: the body as ellipses over the bed's bottom line, the face on top of the head, on the
// back feet that stand up.
func FreeOf(d design.Design, s *hung.Shape, c Space) Free {
	var out Free
	for _, lies := range []design.Posture{design.OnBack, design.OnSide} {
		for p := range PlaceCount {
			out.From[lies][p] = math.Inf(1)
		}
		who := d.Sleeper
		who.Lies = lies
		profile := room.ProfileOf(who)
		flat := d.Bed.Lift.Cos()
		at := func(place float64) float64 {
			return -d.Bed.Span/2 + float64(who.Crown*flat) + float64(place*who.Stature*flat)
		}
		top := func(place float64) geom.Point3 {
			_, high := profile.Round(place)
			return geom.Pt3(at(place), 0, s.Problem.Bottom(at(place))+high)
		}
		face := top(profile.Joints()[1] / 2) // midway between crown and neck
		out.From[lies][Face] = c.distance(face)
		bar := s.At(-d.Bed.Span / 2)
		out.Bar[lies] = math.Hypot(face.X-bar.X, face.Z-bar.Z) - d.Bar.Outer/2
		for place, part := range map[Place]room.Part{Shoulders: room.Shoulders, Elbows: room.Elbows} {
			if place == Elbows && lies == design.OnSide {
				continue
			}
			x, body := room.Place(part, lies, who, d.Bed)
			low, _ := Lies(s, x, body)
			out.From[lies][place] = c.around(x, low, body)
		}
		soles := top(1)
		if lies == design.OnBack {
			soles.Z = s.Problem.Bottom(soles.X) + foot
		}
		out.From[lies][Feet] = c.distance(soles)
	}
	return out
}

// Lies returns how high the lowest point of a body lies in the bed's section at a station,
// and the cloth around it, x across, y up: as its own girth wraps it, between the cords where
// they hang. A body that the cloth does not wrap lies on the bottom line.
func Lies(s *hung.Shape, x float64, body room.Body) (low float64, cloth geom.Polyline) {
	low = s.Problem.Bottom(x)
	q, err := s.SectionAt(x)
	if err != nil {
		return low, nil
	}
	w, err := body.Wrap(q.Half, q.Girth()/2)
	if err != nil {
		return low, nil
	}
	low += q.Height - w.Height
	for _, p := range w.Cloth() {
		cloth = append(cloth, geom.Pt(p.X, low+p.Y))
	}
	return low, cloth
}

// Unfree returns the least of what has to keep off a face, and whether it does.
func (f Free) Unfree() (least float64, ok bool) {
	least = math.Inf(1)
	for lies := range f.Bar {
		least = min(least, f.Bar[lies], f.From[lies][Face])
	}
	return least, least < FaceRoom
}

// around returns the least distance of the net from a body in a section.
func (c *Space) around(x, bottom float64, body room.Body) float64 {
	least := math.Inf(1)
	for _, p := range body.Outline() {
		if p.X >= 0 {
			least = min(least, c.distance(geom.Pt3(x, p.X, bottom+p.Y)))
		}
	}
	return least
}

// distance returns how far the net is from a point under it: from the nearest ruling of
// either side, or the nearest line from the edge of an end to its top. They lie so close that between two of them the net is
// nowhere nearer by more than a hundredth of a millimetre at a hand's breadth.
func (c *Space) distance(p geom.Point3) float64 {
	least := math.Inf(1)
	for i, near := range c.Side.Near {
		for _, side := range []bed.Side{bed.Left, bed.Right} {
			least = min(least, fromLine(geom.Pt3(p.X, side.Sign()*p.Y, p.Z), near, c.Side.Far[i]))
		}
	}
	for _, e := range c.Ends {
		top := e.Ending.Point(e.Top)
		edge := geom.NewArc(e.Edge)
		const n = 60
		for i := range n + 1 {
			q, _ := edge.At(edge.Length() * float64(i) / n)
			least = min(least, fromLine(p, e.Ending.Point(q), top))
		}
	}
	return least
}

// fromLine returns how far a point lies from a straight line between two others.
func fromLine(p, from, to geom.Point3) float64 {
	way := to.Minus(from)
	t := min(max(p.Minus(from).Dot(way)/way.Dot(way), 0), 1)
	return p.Minus(from.PlusTimes(way, t)).Len()
}
