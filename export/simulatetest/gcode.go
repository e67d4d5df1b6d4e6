package simulatetest

import (
	"math"
	"strconv"
	"strings"

	"slingloft/outline/design"
	"slingloft/outline/geom"
)

// GCode follows a program.
func GCode(program string, s Setup) Run {
	m := mill{Setup: s, run: Run{Way: geom.EmptyBox()}, tip: tip{trail: s.Trail}, motion: -1, height: math.NaN()}
	m.at = s.place(0, 0)
	m.tip.at = m.at.Plus(geom.Pt(-s.Trail, 0)) // wherever it points at first
	m.run.Way = m.run.Way.With(m.at)
	for n, line := range strings.Split(program, "\n") {
		m.number = n + 1
		m.line(line)
	}
	m.end()
	return m.run
}

// mill is a machine that runs a program.
type mill struct {
	Setup
	run    Run
	number int // of the line

	x, y     float64 // the machine's numbers, in mm
	at       geom.Point
	height   float64 // NaN: not known
	tip      tip
	motion   int // −1: none yet
	scale    float64
	absolute bool
	on       bool    // beam or spindle
	power    float64 // the S word
	feed     float64
	waited   bool // since the spindle was turned on or its speed changed
	done     bool
}

// words splits a line into its words, comments left out.
func (m *mill) words(line string) map[byte][]float64 {
	out := map[byte][]float64{}
	for {
		open := strings.IndexByte(line, '(')
		if open < 0 {
			break
		}
		length := strings.IndexByte(line[open:], ')')
		if length < 0 {
			m.run.fault(m.number, "a comment without an end")
			return nil
		}
		line = line[:open] + line[open+length+1:]
	}
	for _, w := range strings.Fields(line) {
		v, err := strconv.ParseFloat(w[1:], 64)
		if err != nil || !strings.Contains("GMXYZIJFSP", w[:1]) {
			m.run.fault(m.number, "%q is no word", w)
			continue
		}
		out[w[0]] = append(out[w[0]], v)
	}
	return out
}

func (m *mill) line(text string) {
	words := m.words(text)
	if len(words) == 0 {
		return
	}
	if m.done {
		m.run.fault(m.number, "%q after the program's end", text)
	}
	for _, f := range words['F'] {
		m.feed = f * m.scale
	}
	for _, s := range words['S'] {
		m.waited = m.waited && s == m.power
		m.power = s
	}
	dwell := false
	for _, g := range words['G'] {
		switch g {
		case 0, 1, 2, 3:
			m.motion = int(g)
		case 4:
			dwell = true
			m.rest(words['P'])
		case 20:
			m.scale = 25.4
		case 21:
			m.scale = 1
		case 90:
			m.absolute = true
		case 17, 40, 49, 54, 61, 80, 94:
		default:
			m.run.fault(m.number, "G%g", g)
		}
	}
	for _, c := range words['M'] {
		m.code(c)
	}
	if !dwell && len(words['X'])+len(words['Y'])+len(words['Z']) > 0 {
		m.move(words)
	}
}

// rest waits.
func (m *mill) rest(p []float64) {
	if m.Tool == design.Laser && m.on {
		m.run.fault(m.number, "the beam burns while the machine waits")
	}
	m.waited = len(p) == 1 && p[0] > 0
}

func (m *mill) code(c float64) {
	switch c {
	case 3, 4:
		if m.power == 0 {
			m.run.fault(m.number, "on without power")
		}
		m.waited = m.waited && m.on
		m.on = true
	case 5:
		m.on = false
	case 0, 1:
		if m.on || m.below() {
			m.run.fault(m.number, "pauses with the tool on")
		}
	case 2, 30:
		m.done = true
		if m.on || m.below() {
			m.run.fault(m.number, "ends with the tool on")
		}
	case 7, 8, 9:
	default:
		m.run.fault(m.number, "M%g", c)
	}
}

// below reports whether the tool is in the stock, or may be.
func (m *mill) below() bool { return m.Tool != design.Laser && !(m.height > 0) }

// move goes where the words say.
func (m *mill) move(words map[byte][]float64) {
	if m.scale == 0 || !m.absolute || m.motion < 0 {
		m.run.fault(m.number, "moves before units, places or motion are set")
		return
	}
	first := func(letter byte, old float64) float64 {
		if v := words[letter]; len(v) > 0 {
			return v[0] * m.scale
		}
		return old
	}
	from, x, y := m.at, first('X', m.x), first('Y', m.y)
	to, centre := m.place(x, y), m.place(m.x+first('I', 0), m.y+first('J', 0))
	if len(words['Z']) > 0 {
		m.plunge(first('Z', 0), to != from)
	}
	m.x, m.y, m.at = x, y, to
	if to == from {
		return
	}
	m.run.Way = m.run.Way.With(to)
	way := geom.Polyline{from, to}
	if m.motion > 1 {
		way = m.arc(from, to, centre)
	}
	working := m.on && m.Tool == design.Laser || m.below()
	if !working {
		m.tip.carry(from, to)
		return
	}
	m.check()
	for i := 1; i < len(way); i++ {
		tips := m.tip.follow(way[i-1], way[i])
		for k := 1; k < len(tips); k++ {
			m.run.Tracks = append(m.run.Tracks, Track{From: tips[k-1], To: tips[k], Depth: math.Max(0, -m.height), Power: m.power, Feed: m.feed})
		}
	}
}

// check finds what no cut may be like.
func (m *mill) check() {
	switch {
	case m.motion == 0:
		m.run.fault(m.number, "works at the speed of travel")
	case m.feed <= 0:
		m.run.fault(m.number, "works without a feed")
	case m.Tool == design.Router && !m.on:
		m.run.fault(m.number, "a spindle that stands")
	case math.IsNaN(m.height) && m.Tool != design.Laser:
		m.run.fault(m.number, "works at a height that nobody set")
	}
}

// plunge goes up or down; aside says that it goes along as well.
func (m *mill) plunge(z float64, aside bool) {
	if z < 0 {
		switch {
		case m.motion == 0:
			m.run.fault(m.number, "goes down at the speed of travel")
		case aside:
			m.run.fault(m.number, "goes down aslant")
		case m.Tool == design.Router && (!m.on || !m.waited):
			m.run.fault(m.number, "goes down before the spindle turns")
		}
	}
	m.height = z
}

// arc returns an arc in small chords, on the stock.
func (m *mill) arc(from, to, centre geom.Point) geom.Polyline {
	left := m.motion == 3
	if m.Axes.XLeft != m.Axes.YDown != m.Axes.Swap {
		left = !left
	}
	a, b := from.Minus(centre), to.Minus(centre)
	if math.Abs(a.Len()-b.Len()) > 0.005 {
		m.run.fault(m.number, "an arc of radius %g mm at one end and %g at the other", a.Len(), b.Len())
	}
	turn := math.Mod(b.Angle()-a.Angle()+4*math.Pi, 2*math.Pi)
	if !left {
		turn -= 2 * math.Pi
	}
	const chords = 32
	out := geom.Polyline{from}
	for i := 1; i < chords; i++ {
		out = append(out, centre.Plus(a.Turned(turn*float64(i)/chords)))
	}
	return append(out, to)
}

// end looks at what is left when the lines are over.
func (m *mill) end() {
	if !m.done {
		m.run.fault(m.number, "the program does not end")
	}
}
