package work

import (
	"fmt"
	"math"

	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// usualLocking is the shear at which light woven cloth begins to wrinkle, rad,
// taken where the design names none: 30 degrees, from memory.
const usualLocking = 30 * math.Pi / 180

// longTail is the tail up to which a net cut hangs within 5 mm of level in the
// simulation of package drape: 3.7 mm off at 220 mm, 6.6 mm at 280 mm on a bed of
// 1440 mm span.
const longTail = 240.0

// Warnings returns what a maker should know before cutting, one line each: no
// fault, but not what one might expect.
func (p *Plan) Warnings() []string {
	var out []string
	warn := func(format string, a ...any) { out = append(out, fmt.Sprintf(format, a...)) }
	st, d := p.Style(), p.Design
	deg := func(rad float64) string { return quantity.Decimal(rad*180/math.Pi, 1) + "°" }

	limit, whose := float64(d.Cloth.LockingAngle), "the cloth's locking angle"
	if limit == 0 {
		limit, whose = usualLocking, "30°, from memory, where cloth.locking_angle is not given"
	}
	if s := p.Body.Shear; s.Angle > limit {
		warn("the cloth shears by %s at %s from mid-bay, more than %s: it will wrinkle there; longer legs or shorter tails shear it less",
			deg(s.Angle), st.Length(s.At.X), whose)
	}
	for _, r := range []float64{d.Bed.HeadTail, d.Bed.FootTail} {
		if d.Bed.Cut == design.Net && r > longTail {
			warn("a tail of %s is long: without friction its cloth slides inwards and its end hangs some 5 mm low or "+
				"more; up to %s it stays within that",
				st.Length(r), st.Length(longTail))
			break
		}
	}
	if d.Bed.Cut == design.Straight {
		greatest := 0.0
		for _, q := range p.Body.Departures {
			greatest = max(greatest, math.Abs(q.Cut-q.True))
		}
		warn("the straight cut departs from the level girth by up to %s in the tails; cut = \"net\" hangs level", st.Length(greatest))
	}
	if l := p.Body.Level; l.Curve != design.Balanced {
		warn("the side curve is drawn: the bed stands up to %s high and %s low of level; side_curve = \"sleeper\" "+
			"hangs level", st.Length(l.High), st.Length(-l.Low))
	}
	if !p.Roll.Stable {
		warn("the line through the hooks lies below the sleeper's centre of mass: the bed can roll over; a larger " +
			"bed.head_drop or longer legs would help")
	}
	if p.Place.Beyond > 0 {
		warn("the higher hook has to stand %s higher than hang.height; bring the supports closer or hang the bed lower",
			st.Length(p.Place.Beyond))
	}
	if s := p.Shelter; s.Ridge > 0 && s.Spare < 0 {
		warn("the shelter's ridge is %s too short to cover the hammock", st.Length(-s.Spare))
	}
	for _, c := range p.Margins.Waived() {
		warn("waived in the design: %s has margin %s, required %s", c.Name(), quantity.Decimal(c.Ratio, 2), quantity.Decimal(c.Required, 2))
	}
	if p.machine.File() != "" { // a shop's file may have jobs for other designs
		for _, s := range d.Misspelt(d.Machine, p.machine) {
			warn("%s", s)
		}
	}
	if n := len(p.Margins.Unknown()); n > 0 {
		warn("%d strength checks cannot be made, since data-sheet values are missing; slingloft figure names them", n)
	}
	return out
}
