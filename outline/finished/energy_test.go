package finished_test

import (
	"testing"

	"slingloft/outline/finished"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// made, change and weight are a sketch as the package under test takes it.
func (m sketch) made() finished.Made {
	return finished.Made{Shape: m.shape, Lines: lines, SideEA: m.sideEA, LegEA: m.legEA, LineEA: m.lineEA, Weft: m.weft}
}

func (m sketch) change() finished.Change {
	return finished.Change{Leg: m.leg, Side: m.side, Line: m.line, Bar: m.bar, Girth: m.girth, Anchor: m.anchor}
}

func (m sketch) weight() finished.Weight {
	return finished.Weight{Load: m.load, Centre: m.centre, Aside: m.aside}
}

// The states of a made bed are those of least energy: within 0.5 mm and 1 % of a net
// of springs brought to rest.
func TestLeastEnergy(t *testing.T) {
	q := problem()
	q.ClothWeight = 70e-9 * hung.Gravity
	_, s := made(t, q)
	rigid := sketch{shape: &s, load: q.Load, centre: centre}
	springy := rigid
	springy.sideEA, springy.legEA, springy.lineEA, springy.weft = 200e3, 150e3, 100e3, 60
	// As low as one who lies: higher up the level bed is no rest of least energy, and one
	// who sits keeps it by balancing.
	seat := func(x float64) hung.Load { return hung.EvenLoad(70*hung.Gravity, x-180, x+180) }
	guest := func(mass quantity.Kilograms, stature float64) hung.Load { return sleeper(stature, mass, -700) }
	for name, row := range map[string]struct {
		of     sketch
		change func(*sketch)
	}{
		"lying":            {rigid, func(*sketch) {}},
		"sitting":          {rigid, func(m *sketch) { m.load = seat(0) }},
		"sitting, springy": {springy, func(m *sketch) { m.load = seat(0) }},
		"head quarter":     {springy, func(m *sketch) { m.load = seat(-360) }},
		"leg":              {rigid, func(m *sketch) { m.leg[0][0] = 12 }},
		"leg, springy":     {springy, func(m *sketch) { m.leg[0][0] = 12 }},
		"side cord":        {rigid, func(m *sketch) { m.side[1] = 6 }},
		"bar":              {rigid, func(m *sketch) { m.bar[1] = 8 }},
		"hang line":        {springy, func(m *sketch) { m.line[0] = 15 }},
		"small guest":      {springy, func(m *sketch) { m.load = guest(45, 1500) }},
		"large guest":      {springy, func(m *sketch) { m.load = guest(120, 1900) }},
		"large, rigid":     {rigid, func(m *sketch) { m.load = guest(120, 1900) }},
		"hook lowered":     {rigid, func(m *sketch) { m.anchor[0] = geom.Point3{Z: -60} }},
		"girth":            {springy, func(m *sketch) { m.girth = 10 }},
		"aside":            {springy, func(m *sketch) { m.aside = 100 }},
		"edge":             {rigid, func(m *sketch) { m.centre, m.aside = 240, 100 }},
	} {
		t.Run(name, func(t *testing.T) {
			m := row.of
			row.change(&m)
			p := mustHang(t, finished.Make(m.made()), m.change(), m.weight())
			j := newJudge(m)
			j.rest(t)
			j.agrees(t, p)
		})
	}
}

func (j *judge) agrees(t *testing.T, p finished.Pose) {
	const mm, part = 0.5, 0.01
	near(t, "middle", p.Level.Height, j.bottom(), mm)
	for e := range 2 {
		near(t, "apex", p.Apex[e].Z, j.at[j.apex[e]].Z, mm)
		near(t, "line", p.Line[e], j.pull(j.lines[e]), part*p.Line[e])
		near(t, "bar", p.Bar[e], -j.pull(j.bars[e]), part*p.Bar[e])
		for s := range 2 {
			near(t, "tip", p.Tips[e][s].Minus(j.at[j.tips[e][s]]).Len(), 0, mm)
			near(t, "leg", p.Leg[e][s], j.pull(j.legs[e][s]), part*p.Leg[e][s])
		}
	}
	for s := range 2 {
		greatest := 0.0
		for _, k := range j.cords[s] {
			greatest = max(greatest, j.pull(k))
		}
		near(t, "cord", p.Cord[s], greatest, part*greatest)
	}
}
