package finished

import (
	"math"

	"slingloft/outline/bed"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
)

// Station is the bed at one station of the design.
type Station struct {
	X      float64        // station of the design, mm
	Bottom geom.Point3    // the bottom line there; X as it hangs
	Cords  [2]geom.Point3 // by [bed.Side]
	Pull   [2]float64     // in them, N
	Tilt   float64        // across the bed, left side up, rad
	Wall   float64        // θ, rad
	Cloth  float64        // pull of the cloth on the cord that it pulls harder, N/mm of the design's x
}

// Pose is how a made hammock hangs.
type Pose struct {
	Tips  [2][2]geom.Point3 // bar tips, by [hung.End] and [bed.Side]
	Apex  [2]geom.Point3    // by [hung.End]
	Bed   []Station         // from the head tail's end to the foot tail's end
	Line  [2]float64        // pull in the hang lines and on their anchors, N
	Pull  [2]geom.Point3    // of the anchors on the hang lines, N
	Bar   [2]float64        // thrust along the bars, N
	Leg   [2][2]float64     // pull in the legs at the apex, N
	Most  [2][2]float64     // largest pull in a leg between tip and apex, N
	Cord  [2]float64        // largest pull in a side cord, N
	Cloth float64           // largest pull of the cloth on a cord, N/mm
	Turn  float64           // of the bed, left side up: mean of the tilt by the load, rad
	Share float64           // part of the load that the cord with more of it carries
	Level Level

	aim
	unknowns []float64
}

// Hang returns the angle of an end's hang line above the level, rad.
func (p Pose) Hang(e hung.End) float64 {
	return math.Atan2(p.Pull[e].Z, math.Hypot(p.Pull[e].X, p.Pull[e].Y))
}

// record adds the station at a step's start, node 0, or end, node 2. A bar's stands
// there twice, with the pulls to either side.
func (w *walker) record(st *step, k int) error {
	p := w.pose
	if p == nil {
		return nil
	}
	f, err := w.frame(st, w.now.at, k, 0)
	if err != nil {
		return err
	}
	x := st.from
	if k > 0 {
		x = st.to
	}
	out := Station{X: x, Cords: w.now.at, Bottom: f.mid.PlusTimes(f.upwards, -f.height), Tilt: math.Atan2(f.sin, f.cos), Wall: f.theta}
	for s, force := range w.pull(st, &f, k) {
		out.Pull[s] = w.now.pull[s].Len()
		out.Cloth = max(out.Cloth, force.Len())
		if st.bay {
			p.Cord[s] = max(p.Cord[s], out.Pull[s])
		} else {
			e := hung.Head
			if x > 0 {
				e = hung.Foot
			}
			p.Most[e][s] = max(p.Most[e][s], out.Pull[s])
		}
	}
	p.Cloth = max(p.Cloth, out.Cloth)
	p.Bed = append(p.Bed, out)
	return nil
}

// finish fills in what follows from the stations.
func (p *Pose) finish(r *run) {
	p.Level = p.level(r.Shape.Problem.Bed.Span / 2)
	for e := range p.Most {
		for s := range p.Most[e] {
			p.Most[e][s] = max(p.Most[e][s], p.Leg[e][s])
		}
	}
	p.rolled(r)
}

// rolled finds the turn of the bed and what either cord carries, by Simpson's rule
// with the middle of each step between the recorded stations.
func (p *Pose) rolled(r *run) {
	all, turn := 0.0, 0.0
	var held [2]float64
	i := 0
	for k := range r.steps {
		st := &r.steps[k]
		// The stations of a step follow each other; a bar's first one is passed over.
		for !(p.Bed[i].X == st.from && p.Bed[i+1].X == st.to) {
			i++
		}
		ends := [3]Station{p.Bed[i], {}, p.Bed[i+1]}
		for s := range 2 {
			ends[1].Cords[s] = ends[0].Cords[s].Plus(ends[2].Cords[s]).Times(0.5)
		}
		for n, share := range [3]float64{1.0 / 6, 4.0 / 6, 1.0 / 6} {
			f, err := r.frame(st, ends[n].Cords, n, 0)
			if err != nil {
				continue
			}
			dx := share * (st.to - st.from)
			all += float64(dx * st.body[n])
			turn += float64(dx * st.body[n] * math.Atan2(f.sin, f.cos))
			for s, force := range r.pull(st, &f, n) {
				held[s] -= float64(dx * force.Z)
			}
		}
	}
	if all > 0 {
		p.Turn = turn / all
	}
	if both := held[bed.Left] + held[bed.Right]; both > 0 {
		p.Share = max(held[bed.Left], held[bed.Right]) / both
	}
}

// Loads returns the largest pulls and thrusts of the pose.
func (p Pose) Loads() Loads {
	return Loads{Line: p.Line, Leg: p.Most, Side: p.Cord, Bar: p.Bar, Cloth: p.Cloth}
}
