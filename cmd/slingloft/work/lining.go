package work

import (
	"math"

	"slingloft/outline/piece"
	"slingloft/outline/rig"
	"slingloft/outline/state"
)

// Somebody who lies on a lining over a pad lies higher than the body by the pad.

// raised returns a person as far above the body as the bed has them lie.
func (p *Plan) raised(who state.Person) state.Person {
	up := p.Design.Lining.Raises()
	who.Back, who.Side = who.Back+up, who.Side+up
	return who
}

// steadiness returns the heights that the roll stability hangs on.
func (p *Plan) steadiness() rig.Roll {
	r, up := rig.Steadiness(&p.Shape, p.Design.Sleeper), p.Design.Lining.Raises()
	r.Back, r.Side = r.Back-up, r.Side-up
	return r
}

// warnOfLining warns of a stretch between notches of body and lining that one of them has to
// be eased over by more than a hem may be.
func (p *Plan) warnOfLining(warn func(Warning, ...any)) {
	var worst piece.SeamPart
	most, seam := piece.HemGives, -1
	for i, s := range p.Further.Lining.Seams {
		for _, q := range s.Parts {
			if s.Kind == piece.LiningJoin {
				continue
			}
			if part := math.Abs(q.Ease) / q.Flat[0]; part > most {
				worst, most, seam = q, part, i
			}
		}
	}
	if seam < 0 {
		return
	}
	names := p.Words.Names
	warn(LiningEased, names.Seam(p.Further.Lining.Seams[seam]), names.SeamMark(worst.From), names.SeamMark(worst.To), 100*most)
}
