package work

import (
	"math"

	"slingloft/outline/tarp"
)

// rainNoise is the angle up to which the rain that is kept off is taken for what is asked,
// rad: it is found to a twentieth of a degree.
const rainNoise = math.Pi / 3600

// nearly is the length up to which a distance is taken for another, mm: what a hand sets.
const nearly = 1.0

// warnOfTarp warns of a tarp that leaves the bed to the rain, touches it or the ground.
func (p *Plan) warnOfTarp(warn func(Warning, ...any)) {
	t, st := p.Design.Tarp, p.Style()
	if !t.On {
		return
	}
	s := p.Tarp
	if s.Keeps < float64(t.Rain)-rainNoise {
		if s.NeedRidge > 0 {
			warn(RainReaches, st.Angle(s.Keeps), st.Angle(float64(t.Rain)), st.Length(s.NeedRidge), st.Length(s.NeedWidth))
		} else {
			warn(RainReachesAll, st.Angle(s.Keeps), st.Angle(float64(t.Rain)))
		}
	}
	if s.Clear < tarp.Clearance-nearly {
		warn(TarpTouches, st.Length(max(s.Clear, 0)), st.Length(s.NeedRise))
	}
	if edge := s.EdgeUp + p.Design.Hang.Bed; edge < -nearly {
		warn(TarpInGround, st.Length(-edge), st.Length(s.Width+2*edge/math.Sin(float64(t.Pitch))))
	}
}
