// Package room says what a sleeper feels of a bed: whether shoulders, elbows, hips and
// knees have room between the cords, how the cloth presses them, how far the floor under
// them lies off where it was designed, and what the head comes near to.
//
// Against the round part of the design's sections nothing can be said of it: over the bay
// that is the same everywhere. So a section is the cloth's girth round an elliptic part of
// a body, between the cords where the made bed has them. That the cords come a little
// nearer or further for it is left out.
//
// Axes as in package hung. Lengths mm, forces N, angles rad.
package room

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/hung"
)

// Input is a made bed with its sleeper in it.
type Input struct {
	Shape   *hung.Shape
	Sleeper design.Sleeper
	Lying   finished.Pose // under the sleeper
	Sitting finished.Pose // with the sleeper sitting at mid-bay; zero: not known
}

// Fit is how one part of the body lies in the bed.
type Fit struct {
	Part    Part
	Lies    design.Posture
	X       float64 // station, mm
	Long    float64 // of the bed under the part, mm
	Body    Body
	Opening float64 // from cord to cord, mm
	Spare   float64 // of it beyond the body's breadth, mm
	// What follows is 0 of what only has to find room, and where Err says why the body
	// does not lie in the cloth.
	Squeeze  float64 // from each side on the whole part, N
	Pressure float64 // of it on the part's side, N/mm²
	Floor    float64 // under the part above where the made bed's round section has it, mm
	Wrapped  Wrapped
	Tube     hung.Section // that round section
	Err      error
}

// Room is what a sleeper feels of the bed.
type Room struct {
	Fits []Fit // on the back, then on the side
	// Head and Feet are by how much the bed's bottom line lies higher under crown and soles
	// than under the hips, mm.
	Head, Feet float64
	// OverFace is how far the head bar stands above a face that lies under it, mm; 0 where
	// the bar stands over no part of the head.
	OverFace float64
	// Upright is how far the crown of one who sits up at mid-bay stays off the nearer bar,
	// and Ridge how far under the line from apex to apex, mm. 0: not known.
	Upright, Ridge float64
}

// Of returns the room that a sleeper has.
func Of(in Input) Room {
	p := measure(in.Sleeper)
	var out Room
	flat := in.Shape.Problem.Bed.Lift.Cos()
	crown := -in.Shape.Problem.Bed.Span/2 + float64(in.Sleeper.Crown*flat)
	at := func(part float64) float64 { return crown + float64(part*in.Sleeper.Stature*flat) }
	for _, lies := range [2]design.Posture{design.OnBack, design.OnSide} {
		for part := range PartCount {
			body, ok := p.body(part, lies)
			if !ok {
				continue
			}
			from, to := part.reach()
			f := Fit{Part: part, Lies: lies, X: at(part.place()), Long: at(to) - at(from), Body: body}
			f.lay(in)
			out.Fits = append(out.Fits, f)
		}
	}
	hips := in.Lying.BottomAt(at(Hips.place()))
	out.Head, out.Feet = in.Lying.BottomAt(crown)-hips, in.Lying.BottomAt(at(1))-hips
	out.heights(in, p, crown)
	return out
}

// lay lays the part into the bed.
func (f *Fit) lay(in Input) {
	half, girth := section(in, f.X)
	f.Opening = 2 * half
	f.Spare = f.Opening - f.Body.Breadth
	if f.Part == Knees {
		return
	}
	if f.Wrapped, f.Err = f.Body.Wrap(half, girth); f.Err != nil {
		return
	}
	load := in.Shape.Problem.Load.At(f.X)
	f.Squeeze = f.Wrapped.Squeeze(load) * f.Long
	if side := f.Wrapped.Side(); side > 0 {
		f.Pressure = f.Wrapped.Squeeze(load) / side
	}
	f.Tube, f.Err = tube(half, girth, in.Shape.Problem.Radius(f.X))
	f.Floor = f.Tube.Height - f.Wrapped.Height
}

// section returns half the opening and half the girth, stretched, of the made bed at a
// station of the design.
func section(in Input, x float64) (half, girth float64) {
	all := in.Lying.Bed
	i := 1
	for i < len(all)-1 && !(x <= all[i].X && all[i].X > all[i-1].X) {
		i++
	}
	a, b := all[i-1], all[i]
	t := (x - a.X) / (b.X - a.X)
	of := func(s finished.Station) (half, girth float64) {
		l, r := s.Cords[bed.Left], s.Cords[bed.Right]
		half = math.Hypot(l.Y-r.Y, l.Z-r.Z) / 2
		sin, cos := math.Sincos(s.Wall)
		radius := in.Shape.Problem.Radius(s.X)
		return half, (half-float64(radius*sin))/cos + float64(radius*s.Wall)
	}
	ha, ga := of(a)
	hb, gb := of(b)
	return ha + float64(t*(hb-ha)), ga + float64(t*(gb-ga))
}

// tube returns the made bed's own section, with a round part of the design's radius.
func tube(half, girth, radius float64) (hung.Section, error) {
	w, err := Body{2 * radius, 2 * radius}.Wrap(half, girth)
	if err != nil {
		return hung.Section{}, err
	}
	return hung.NewSection(half, w.Height, radius)
}

// heights finds what the head comes near to.
func (r *Room) heights(in Input, p person, crown float64) {
	bar := -in.Shape.Problem.Bed.Span / 2
	tip := (in.Lying.Tips[hung.Head][bed.Left].Z + in.Lying.Tips[hung.Head][bed.Right].Z) / 2
	if bar >= crown && bar <= crown+p.headDepth {
		r.OverFace = tip - in.Lying.BottomAt(bar) - p.headDepth
	}
	s := in.Sitting
	if len(s.Bed) == 0 {
		return
	}
	top := s.BottomAt(0) + p.sitting
	r.Upright = math.Inf(1)
	for e := range s.Tips {
		l, rt := s.Tips[e][bed.Left], s.Tips[e][bed.Right]
		at := l.Plus(rt).Times(0.5)
		// The head is as long front to back as it is deep: half of it to either side.
		run := max(0, math.Abs(at.X)-p.headDepth/2)
		r.Upright = min(r.Upright, math.Hypot(run, max(0, at.Z-top)))
	}
	a, b := s.Apex[hung.Head], s.Apex[hung.Foot]
	r.Ridge = a.Z + float64((0-a.X)/(b.X-a.X)*(b.Z-a.Z)) - top
}

// Tightest returns the part that has least to spare in a posture.
func (r Room) Tightest(lies design.Posture) Fit {
	out := Fit{Spare: math.Inf(1)}
	for _, f := range r.Fits {
		if f.Lies == lies && f.Spare < out.Spare {
			out = f
		}
	}
	return out
}

// Find returns how a part fits in a posture, and whether it is looked at there.
func (r Room) Find(part Part, lies design.Posture) (Fit, bool) {
	for _, f := range r.Fits {
		if f.Part == part && f.Lies == lies {
			return f, true
		}
	}
	return Fit{}, false
}
