package cord

// zone is a stretch of a cord that is treated alike.
type zone struct {
	raw    float64 // on the cut cord, mm
	lost   float64 // of it, given up when the splice is made, mm
	splice int     // which splice that is; 0: none
	tail   bool    // drawn into another cord by that splice
}

// chain is a cord from its start to its end as zones, with the marks on it.
// Splices are numbered from 1 in the order in which they are made.
type chain struct {
	zones []zone
	marks []marked
}

// marked is a mark at a distance from the start of the cut cord.
type marked struct {
	Spot
	at     float64
	buried bool
	made   int // the splice that makes the eye whose throat it marks; 0: none
}

// length returns the length of the cut cord, mm.
func (c *chain) length() float64 {
	sum := 0.0
	for _, z := range c.zones {
		sum += z.raw
	}
	return sum
}

// add puts a zone at the end.
func (c *chain) add(z zone) { c.zones = append(c.zones, z) }

// mark puts a mark at the present end, shifted by offset mm.
func (c *chain) mark(s Spot, offset float64) {
	c.marks = append(c.marks, marked{Spot: s, at: c.length() + offset})
}

// bury marks the last mark as one that is not seen after splicing.
func (c *chain) bury() { c.marks[len(c.marks)-1].buried = true }

// tail puts the tapered tail at the start of the cord, or at its end, with its
// marks; the shoulder is where it goes into its partner.
func (c *chain) tail(on Branch, long, taper float64, splice int, last bool) {
	if last {
		c.mark(Spot{Kind: Shoulder, On: on}, 0)
		c.mark(Spot{Kind: Taper, On: on}, long-taper)
		c.bury()
		c.add(zone{raw: long, splice: splice, tail: true})
		return
	}
	c.mark(Spot{Kind: Taper, On: on}, taper)
	c.bury()
	c.add(zone{raw: long, splice: splice, tail: true})
	c.mark(Spot{Kind: Shoulder, On: on}, 0)
}

// host puts a zone that takes a tail of the given length.
func (c *chain) host(long, kappa float64, splice int) {
	c.add(zone{raw: long * (1 + kappa), lost: long * kappa, splice: splice})
}

// spliced returns the distance along the cord from its start to the place that
// lay at on the cut cord, after the splices numbered up to done, mm. Tails keep
// their length.
func (c *chain) spliced(at float64, done int) float64 {
	run, out := 0.0, 0.0
	for _, z := range c.zones {
		part := min(max(at-run, 0), z.raw)
		run += z.raw
		if part == 0 {
			continue
		}
		if z.splice > 0 && z.splice <= done {
			part -= z.lost * part / z.raw
		}
		out += part
	}
	return out
}

// place returns where a point that lies at after every splice lay on the cut
// cord, mm.
func (c *chain) place(at float64) float64 {
	raw := 0.0
	for _, z := range c.zones {
		left := z.raw - z.lost
		if at <= left && left > 0 {
			return raw + z.raw*at/left
		}
		at -= left
		raw += z.raw
	}
	return raw + at
}

// all is more splices than any cord has.
const all = 99

// at returns the mark of a place; the builders ask only for their own.
func (c *chain) at(s Spot) marked {
	for _, m := range c.marks {
		if m.Spot == s {
			return m
		}
	}
	return marked{}
}

// reading returns what a tape shows between two marks before and after a splice.
func (c *chain) reading(from, to Spot, splice int) Reading {
	a, b := c.at(from).at, c.at(to).at
	gap := func(done int) float64 { return c.spliced(b, done) - c.spliced(a, done) }
	return Reading{From: from, To: to, Before: gap(splice - 1), After: gap(splice)}
}

// list returns the marks measured from both ends and from the datum.
func (c *chain) list(datum Spot) []Mark {
	long, zero := c.length(), c.spliced(c.at(datum).at, all)
	out := make([]Mark, len(c.marks))
	for i, m := range c.marks {
		out[i] = Mark{Spot: m.Spot, FromStart: m.at, FromEnd: long - m.at,
			Spliced: c.spliced(m.at, all) - zero, Buried: m.buried}
	}
	return out
}
