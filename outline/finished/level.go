package finished

import (
	"math"
	"slingloft/outline/bed"
)

// Level is how the bed lies. In the design all but Sag's own shape are what the
// lift asks for.
type Level struct {
	Along  float64    `json:"along"`  // bottom line at the head bar above that at the foot bar, mm
	Across [2]float64 `json:"across"` // left tip above right tip, by [hung.End], mm
	Sag    float64    `json:"sag"`    // bottom line at mid-bay below the straight line between the bars, mm
	Height float64    `json:"height"` // of the bottom line at mid-bay, mm
}

// Minus returns by how much a differs from b.
func (a Level) Minus(b Level) Level {
	return Level{a.Along - b.Along, [2]float64{a.Across[0] - b.Across[0], a.Across[1] - b.Across[1]}, a.Sag - b.Sag, a.Height - b.Height}
}

// Worst returns the largest magnitude among what lies off level: along, across and
// sag.
func (a Level) Worst() float64 {
	return max(math.Abs(a.Along), math.Abs(a.Across[0]), math.Abs(a.Across[1]), math.Abs(a.Sag))
}

// BottomAt returns the height of the bottom line at a station of the design,
// between the recorded ones in a straight line, mm.
func (p Pose) BottomAt(x float64) float64 {
	for i := 1; i < len(p.Bed); i++ {
		a, b := p.Bed[i-1], p.Bed[i]
		if x <= b.X || i == len(p.Bed)-1 {
			t := (x - a.X) / (b.X - a.X)
			return a.Bottom.Z + float64(t*(b.Bottom.Z-a.Bottom.Z))
		}
	}
	return math.NaN()
}

// Heights are what a maker measures over one level, mm.
type Heights struct {
	Tips   [2][2]float64 // bar tips, by [hung.End] and [bed.Side]
	Middle float64       // bottom of the bed at mid-bay
	Apex   [2]float64    // by [hung.End]
}

// Heights returns the heights of a pose, over the bottom line at mid-bay as designed.
func (p Pose) Heights() Heights {
	out := Heights{Middle: p.Level.Height}
	for e := range out.Tips {
		out.Apex[e] = p.Apex[e].Z
		for s := range out.Tips[e] {
			out.Tips[e][s] = p.Tips[e][s].Z
		}
	}
	return out
}

func (p Pose) level(half float64) Level {
	if len(p.Bed) == 0 {
		return Level{}
	}
	head, foot, mid := p.BottomAt(-half), p.BottomAt(half), p.BottomAt(0)
	l := Level{Along: head - foot, Sag: (head+foot)/2 - mid, Height: mid}
	for e := range l.Across {
		l.Across[e] = p.Tips[e][bed.Left].Z - p.Tips[e][bed.Right].Z
	}
	return l
}

// Times returns the level with every part times k.
func (a Level) Times(k float64) Level {
	return Level{k * a.Along, [2]float64{k * a.Across[0], k * a.Across[1]}, k * a.Sag, k * a.Height}
}
