package splice

import (
	"fmt"
	"math"

	"slingloft/export/sheet/given"
	"slingloft/export/sheet/picture"
	"slingloft/outline/cord"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Kind is the kind of a splice.
type Kind int

// The kinds.
const (
	OfEye   Kind = iota // a leg's own end, for its eye
	SideEnd             // the side cord's end, into a leg
	LegEnd              // a leg's end, into the side cord
	LoopEnd             // a loop's end, into its other end
)

// String returns the kind's identifier, which is safe in an id.
func (k Kind) String() string { return [...]string{"eye", "side", "leg", "join"}[k] }

// Splice is a working end drawn into a host: which cord it is the end of, which host it
// goes into and where.
type Splice struct {
	Kind      Kind
	Own, Host cord.Cord
	On        cord.Branch // of the working end
	Entry     cord.Spot   // on the host
	End       cord.Spot   // where the working end stops inside the host
}

// Splices returns one splice of each kind that a set has: of a leg's eye, and of either
// cord at a corner, or of a loop's join.
func Splices(s cord.Set) []Splice {
	if loop, ok := s.Find(cord.SideLoop); ok {
		return []Splice{{LoopEnd, loop, loop, cord.AtEnd, cord.Spot{Kind: cord.Shoulder, On: cord.AtStart},
			cord.Spot{Kind: cord.BuryEnd, On: cord.AtStart}}}
	}
	leg, ok := s.Find(cord.HeadLeg)
	side, and := s.Find(cord.SideCord)
	if !ok || !and {
		return nil
	}
	return []Splice{
		{OfEye, leg, leg, cord.OfEye, cord.Spot{Kind: cord.Throat, On: cord.OfEye}, cord.Spot{Kind: cord.BuryEnd, On: cord.OfEye}},
		{SideEnd, side, leg, cord.AtHead, cord.Spot{Kind: cord.Entry}, cord.Spot{Kind: cord.BuryEnd}},
		{LegEnd, leg, side, cord.InSide, cord.Spot{Kind: cord.Entry, On: cord.AtHead}, cord.Spot{Kind: cord.BuryEnd, On: cord.AtHead}},
	}
}

// looks returns how working end and host are told apart.
func (s Splice) looks() (own, host look) {
	of := func(c cord.Cord) look {
		if c.Part == cord.SideCord || c.Part == cord.SideLoop {
			return sideLook()
		}
		return legLook()
	}
	return of(s.Own), of(s.Host)
}

// empty and full return how long the host is from its entry mark to where the working end
// stops, before the splice and after it, mm.
func (s Splice) empty() float64 {
	a, _ := find(s.Host, s.Entry)
	b, _ := find(s.Host, s.End)
	return math.Abs(b.FromStart - a.FromStart)
}

func (s Splice) full() float64 {
	a, _ := find(s.Host, s.Entry)
	b, _ := find(s.Host, s.End)
	return math.Abs(b.Spliced - a.Spliced)
}

// tail returns the working end from its shoulder mark and how much of it is tapered, mm.
func (s Splice) tail() (long, taper float64) {
	a, _ := find(s.Own, cord.Spot{Kind: cord.Shoulder, On: s.On})
	b, _ := find(s.Own, cord.Spot{Kind: cord.Taper, On: s.On})
	if a.FromStart < s.Own.Cut/2 {
		return a.FromStart, b.FromStart
	}
	return a.FromEnd, b.FromEnd
}

// drops is how many pairs of strands are dropped along a taper as drawn.
const drops = 5

// Taper draws a working end with its taper, to scale along it.
func Taper(d *given.Data, s Splice) picture.Picture {
	say := d.Say.Splicing.Taper
	const x0, y, room = 7.0, 16.0, 74.0
	long, taper := s.tail()
	k := room / long
	from, end := x0+k*(long-taper), x0+room
	p := picture.Picture{ID: "splice-taper-" + s.Kind.String(), Title: say.Title, Desc: fmt.Sprintf(say.Desc, d.Rope(long), d.Rope(taper)),
		Width: picture.Half, Height: 33}
	own, _ := s.looks()
	wide := func(x float64) float64 { // in steps, a pair of strands each
		n := math.Floor(math.Max(x+4-from, 0) / (end - from) * (drops + 1))
		if x+4 < from {
			n = 0
		}
		return bare + 1 - (bare+1-0.8)*math.Min(n, drops)/drops
	}
	rope(&p, own, stepped(4, end, y, from), wide)
	for i := 1; i <= drops; i++ { // ends of the strands that are cut off
		x := from + (end-from)*float64(i)/(drops+1)
		w := wide(x-4-0.01) / 2
		for _, side := range []float64{-1, 1} {
			p.Line(own.edge, picture.Thin, geom.Pt(x, y+side*w), geom.Pt(x+1.1, y+side*(w+0.9)))
		}
	}
	stroke(&p, geom.Pt(x0, y), bare+1)
	stroke(&p, geom.Pt(from, y), bare+1)
	onwards(&p, y+4.5, above, flag{geom.Pt(x0, y+2.8), d.Say.Splicing.ShoulderMark}, flag{geom.Pt(from, y+2.8), d.Say.Splicing.TaperMark})
	p.Level(geom.Pt(x0, y-3), geom.Pt(from, y-3), 9, d.Rope(long-taper))
	p.Level(geom.Pt(from, y-3), geom.Pt(end, y-3), 9, d.Rope(taper))
	p.Level(geom.Pt(x0, y-3), geom.Pt(end, y-3), 3.6, d.Rope(long))
	return p
}

// stepped is a level path with a point at either side of each step of a taper.
func stepped(x0, end, y, from float64) geom.Polyline {
	out := geom.Polyline{{X: x0, Y: y}}
	for i := range drops + 1 {
		x := from + (end-from)*float64(i)/(drops+1)
		out = append(out, geom.Pt(x-0.005, y), geom.Pt(x+0.005, y))
	}
	return append(out, geom.Pt(end, y))
}

// host is where a host's entry mark and the end of a bury stand as drawn, mm on paper.
const hostAt, hostRoom = 18.0, 54.0

// Entering draws the fid in its host: in at the entry mark, out where the working end is to
// stop; to scale along the host.
func Entering(d *given.Data, s Splice) picture.Picture {
	all := d.Say.Splicing
	say := all.Entering[s.Kind]
	const y, out = 20.0, hostAt + hostRoom
	p := picture.Picture{ID: "splice-fid-" + s.Kind.String(), Title: say.Title, Desc: fmt.Sprintf(say.Desc, d.Rope(s.empty())),
		Width: picture.Half, Height: 35}
	own, host := s.looks()
	rope(&p, own, curve(geom.Pt(4, y+11), geom.Pt(9, y+8), geom.Pt(hostAt, y)), even(inner+0.6))
	rope(&p, host, straight(4, 84, y), even(filled))
	fid := min(cord.FidDiameters*s.Own.Kind.Diameter*hostRoom/s.empty(), hostRoom-6)
	way := curve(geom.Pt(hostAt, y), geom.Pt(hostAt+8, y), geom.Pt(out-12, y), geom.Pt(out-5, y), geom.Pt(out, y+2.2), geom.Pt(out+4, y+7))
	arc := geom.NewArc(way)
	needle := arc.Between(arc.Length()-fid, arc.Length())
	ghost(&p, own, arc.Between(0, arc.Length()-fid), even(inner))
	ghost(&p, look{picture.Cloth, picture.Main}, needle, even(inner))
	open := geom.NewArc(needle)
	rope(&p, look{picture.Cloth, picture.Main}, open.Between(fid-5.6, fid), tapering(inner, 0, 5.6))
	for _, x := range []float64{hostAt, out} {
		stroke(&p, geom.Pt(x, y), filled)
	}
	onwards(&p, y-5, below, flag{geom.Pt(hostAt, y-3.2), all.Entries[s.Kind]})
	backwards(&p, y-5-row, below, flag{geom.Pt(out, y-3.2), all.Stops})
	text(&p, 11, y+10.2, all.WorkingEnd)
	text(&p, out+5.2, y+5.6, all.Fid)
	p.Level(geom.Pt(hostAt, y-3.2), geom.Pt(out, y-3.2), 3.4, d.Rope(s.empty()))
	return p
}

// Milked draws a bury with its bunch, and milked out: what a tape shows over it before and
// after, to scale along the host.
func Milked(d *given.Data, s Splice) picture.Picture {
	say := d.Say.Splicing
	const top, low = 32.0, 15.0
	before, after := s.empty(), s.full()
	long, taper := s.tail()
	k := hostRoom / before
	p := picture.Picture{ID: "splice-milk-" + s.Kind.String(), Title: say.Milked.Title,
		Desc:  fmt.Sprintf(say.Milked.Desc, d.Rope(before), d.Rope(after)),
		Width: picture.Half, Height: 46}
	own, host := s.looks()
	for _, y := range []float64{top, low} {
		in := curve(geom.Pt(4, y+6), geom.Pt(9, y+4.4), geom.Pt(hostAt, y))
		rope(&p, own, in, even(inner+0.6))
	}
	// The whole working end is in; the host stands in folds next to the throat, so that the
	// tip still sticks out past where it is to stop.
	tip, stop := hostAt+k*after, hostAt+k*after*bunched
	bunch := func(x float64) float64 {
		if x < hostAt-4 || x > stop-4 {
			return bare
		}
		t := (x - hostAt + 4) / (stop - hostAt)
		return filled + 1.5*(1-t)*math.Abs(math.Sin(2.2*x))
	}
	rope(&p, host, finely(4, 84, top), bunch)
	rope(&p, host, finely(4, 84, low), func(x float64) float64 {
		if x < hostAt-4 || x > hostAt-4+k*after {
			return bare
		}
		return filled - (filled-bare)*math.Max(0, x-(hostAt-4+k*(long-taper)))/(k*taper)
	})
	ghost(&p, own, straight(hostAt, hostAt+k*after, low), tapering(inner, k*(long-taper), k*long))
	ghost(&p, own, straight(hostAt, stop-2, top), tapering(inner, k*(long-taper), k*long))
	rope(&p, own, curve(geom.Pt(stop-2, top), geom.Pt((stop+tip)/2, top+2.6), geom.Pt(tip, top+3)), tapering(inner*0.8, 0, tip-stop+2))
	for _, y := range []float64{top, low} {
		stroke(&p, geom.Pt(hostAt, y), filled)
	}
	stroke(&p, geom.Pt(stop, top), bare)
	flagged(&p, geom.Pt(tip-1, top+3), geom.Pt(46, top+8), say.TipOut)
	stroke(&p, geom.Pt(hostAt+k*after, low), bare)
	p.Arrow(picture.Main, picture.Medium, geom.Pt(hostAt+6, low+7), geom.Pt(hostAt+28, low+7))
	text(&p, hostAt+30, low+6, say.Stroke)
	p.Level(geom.Pt(hostAt, low-4), geom.Pt(hostAt+k*after, low-4), low-7.4, d.Rope(after))
	text(&p, hostAt, low-13.4, fmt.Sprintf(say.BeforeIt, d.Rope(before)))
	return p
}

// bunched is how long a bunched host is as drawn, as part of its length when it is milked
// out.
const bunched = 0.8

// finely is a level path with points close enough for a cord that changes in thickness.
func finely(x0, x1, y float64) geom.Polyline {
	const steps = 320
	out := make(geom.Polyline, steps+1)
	for i := range out {
		out[i] = geom.Pt(x0+(x1-x0)*float64(i)/steps, y)
	}
	return out
}

// What a lock stitching is made of: how many stitches one way, as many going back, and how
// many cord diameters each is long; common practice, no source.
const (
	lockStitches = 3
	lockStitch   = 3
)

// LockStitch returns the length of one stitch of a bury's lock stitching, mm.
func LockStitch(s Splice) float64 { return lockStitch * s.Own.Kind.Diameter }

// LockRun returns how far from the entry a bury is stitched, mm: all of it next to the
// entry, where the working end is whole.
func LockRun(s Splice) float64 {
	long, taper := s.tail()
	return min(lockStitches*LockStitch(s), long-taper)
}

// Locked draws the lock stitching of a bury: where along it, to scale, and larger how the
// thread goes, from the side and from the end.
func Locked(d *given.Data, s Splice) picture.Picture {
	say := d.Say.Splicing
	const top, low, end = 47.0, 20.0, 74.0
	long, taper := s.tail()
	run := LockRun(s)
	k := hostRoom / long
	p := picture.Picture{ID: "splice-lock-" + s.Kind.String(), Title: say.Locked.Title,
		Desc:  fmt.Sprintf(say.Locked.Desc, d.Rope(run), d.Rope(taper)),
		Width: picture.Half, Height: 59}
	own, host := s.looks()
	rope(&p, own, curve(geom.Pt(4, top+5.6), geom.Pt(9, top+4.2), geom.Pt(hostAt, top)), even(inner+0.6))
	rope(&p, host, straight(4, 84, top), even(filled))
	ghost(&p, own, straight(hostAt, hostAt+hostRoom, top), tapering(inner, k*(long-taper), k*long))
	stroke(&p, geom.Pt(hostAt, top), filled)
	for i := range lockStitches { // every other one is on the far side
		from := hostAt + k*run*float64(i)/lockStitches
		p.Items = append(p.Items, lockThread(i%2 == 1, picture.Stitch, straight(from+0.2, from+k*run/lockStitches-0.2, top)))
	}
	p.Level(geom.Pt(hostAt, top+4), geom.Pt(hostAt+k*run, top+4), top+7, fmt.Sprintf(say.Stitched, d.Rope(run)))
	p.Level(geom.Pt(hostAt+k*(long-taper), top-3), geom.Pt(hostAt+k*long, top-3), top-6.6, fmt.Sprintf(say.Unstitched, d.Rope(taper)))
	lockedSide(d, &p, s, low+4)
	lockedEnd(&p, own, host, geom.Pt(end, low+4))
	text(&p, 6, 2.6, say.FromSide)
	p.Write(picture.Text{Text: say.FromEnd, At: geom.Pt(end+11, 2.6), Size: picture.Letter, Anchor: piece.End, Ink: picture.Main})
	return p
}

// lockThread is a stretch of thread, dashed where cord hides it.
func lockThread(hidden bool, ink picture.Ink, l geom.Polyline) picture.Path {
	p := picture.Path{Stroke: ink, Width: picture.Medium, Lines: []geom.Polyline{l}}
	if hidden {
		p.Dash = []float64{0.8, 0.6}
	}
	return p
}

// lockedSide draws how a thread goes through host and bury, from the side: so many stitches
// away from the entry, and as many back at right angles to them.
func lockedSide(d *given.Data, p *picture.Picture, s Splice, y float64) {
	const x0, x1, big, first, step = 4.0, 54.0, 10.0, 12.0, 11.0
	own, host := s.looks()
	left, right := edges(straight(x0, x1, y), even(big))
	p.Area(host.fill, append(append(geom.Polyline{}, left...), right.Reversed()...)...)
	p.Line(host.edge, picture.Medium, left...)
	p.Line(host.edge, picture.Medium, right...)
	ghost(p, own, straight(x0, x1, y), even(big*0.55))
	const last = first + lockStitches*step
	// The first way, up and down through both: outside as a full line, inside dashed.
	for i := range lockStitches + 1 {
		x := first + float64(i)*step
		p.Items = append(p.Items, lockThread(true, picture.Stitch, geom.Polyline{{X: x, Y: y - big/2}, {X: x, Y: y + big/2}}))
		if i == lockStitches {
			break
		}
		side := 1.0
		if i%2 == 1 {
			side = -1
		}
		edge, out := y+side*big/2, y+side*(big/2+0.8)
		p.Line(picture.Stitch, picture.Medium, geom.Pt(x, edge), geom.Pt(x+0.5, out), geom.Pt(x+step-0.5, out), geom.Pt(x+step, edge))
	}
	// The second, at right angles: seen from its side as stitches on the middle, every other
	// one on the far side.
	for i := range lockStitches {
		x := last - float64(i)*step
		p.Items = append(p.Items, lockThread(i%2 == 1, picture.Second, straight(x-0.6, x-step+0.6, y)))
	}
	p.Level(geom.Pt(first, y-big/2-1), geom.Pt(first+step, y-big/2-1), y-big/2-4.4, d.Rope(LockStitch(s)))
}

// lockedEnd draws the same from the end.
func lockedEnd(p *picture.Picture, own, host look, at geom.Point) {
	disc := func(r float64) geom.Polyline { return geom.Polyline(geom.CirclePoints(at, r, 0.02)) }
	p.Area(host.fill, disc(5)...)
	p.Area(own.fill, disc(2.75)...)
	p.Outline(host.edge, picture.Medium, disc(5))
	p.Outline(own.edge, picture.Thin, disc(2.75))
	p.Line(picture.Stitch, picture.Medium, at.Plus(geom.Pt(0, 6.2)), at.Minus(geom.Pt(0, 6.2)))
	p.Line(picture.Second, picture.Medium, at.Plus(geom.Pt(6.2, 0)), at.Minus(geom.Pt(6.2, 0)))
}
