package desk

import (
	"fmt"
	"math"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// Model is the hammock in space, mm: x towards the foot, y across, z up.
type Model struct {
	Cloth   [][]Point   `json:"cloth"`   // rows across, from the head tail's end to the foot's
	Caps    [][][]Point `json:"caps"`    // each end cap as rows, from the cloth's end to its top edge; none where ends are gathered
	Tension []float64   `json:"tension"` // of the cloth across at each row, N/mm
	Taut    string      `json:"taut"`    // the largest of them, as people read it
	Sleeper [][]Point   `json:"sleeper"` // rings round who lies in it, head first
	Lines   []Line      `json:"lines"`
	Middle  Point       `json:"middle"`
	Reach   float64     `json:"reach"` // from there to what lies farthest off
	Off     string      `json:"off"`   // how far the drawn cloth may lie off the bed, as people read it
	Section Section     `json:"section"`
	Ends    []float64   `json:"ends"` // stations of the cloth's ends, from the head bar
	Room    []Tight     `json:"room"` // none where it is not known
	Told    string      `json:"told"` // what the picture shows, in words and figures
}

// Point is x, y and z, to a hundredth of a millimetre.
type Point [3]float64

// Line is a bar, a cord or an edge of the cloth.
type Line struct {
	Points []Point `json:"points"`
	Wide   float64 `json:"wide"` // on the screen, pixels
}

// at returns a point.
func at(x, y, z float64) Point {
	p := Point{}
	for i, v := range [...]float64{x, y, z} {
		p[i] = math.Round(v*100) / 100
	}
	return p
}

// modelOf returns a design's hung shape as a net, with the section at a station.
func modelOf(d *design.Design, s *hung.Shape, n net, x float64, say Words) Model {
	var m Model
	stations, rows, off := n.cloth(s, d.Cap.Kind == design.Leaning)
	m.Cloth, m.Caps = rows, capsOf(d, s, rows)
	style := d.Output.Style(1)
	taut := 0.0
	for _, st := range stations {
		m.Tension = append(m.Tension, math.Round(st.Cloth*1e4)/1e4)
		taut = max(taut, st.Cloth)
	}
	m.Taut = style.PerWidth(taut)
	m.Off = quantity.Style{Decimals: 1}.Length(math.Ceil(off*10) / 10)
	m.Sleeper = lies(d, s).rings()
	m.Lines = linesOf(s, rows)
	head, foot := s.Ends[bed.Head], s.Ends[bed.Foot]
	m.Middle = at((head.ApexX+foot.ApexX)/2, 0, max(head.ApexZ, foot.ApexZ)/2)
	m.Reach = math.Ceil((foot.ApexX - head.ApexX) / 2)
	bar := d.Bed.Span / 2
	m.Ends = []float64{math.Ceil(head.TailX + bar), math.Floor(foot.TailX + bar)}
	m.Section = sectionOf(d, s, x, say)
	m.Told = told(d, s, say)
	return m
}

// told says what the picture shows to those who do not see it.
func told(d *design.Design, s *hung.Shape, say Words) string {
	round, bar := rounded(d), d.Bed.Span/2
	wide := func(x float64) string { return round(2 * s.At(x).Y) }
	deep := func(x float64) string { return round(s.At(x).Z - s.Problem.Bottom(x)) }
	return fmt.Sprintf(say.Shape, round(d.Bed.Span), wide(-bar), wide(bar), wide(0), deep(-bar), deep(bar), deep(0),
		round(s.Ends[bed.Foot].ApexX-s.Ends[bed.Head].ApexX))
}

// linesOf returns cords and bars; rows are those of the cloth, whose edges are cords.
func linesOf(s *hung.Shape, rows [][]Point) []Line {
	const cordWide, barWide = 1.6, 4
	var out []Line
	for _, sign := range []float64{-1, 1} {
		side := Line{Wide: cordWide}
		for _, row := range rows {
			side.Points = append(side.Points, row[0])
			if sign > 0 {
				side.Points[len(side.Points)-1] = row[len(row)-1]
			}
		}
		out = append(out, side)
		for _, e := range []bed.End{bed.Head, bed.Foot} {
			end, corner := s.Ends[e], side.Points[0]
			if e == bed.Foot {
				corner = side.Points[len(side.Points)-1]
			}
			y, z := s.Cord(end.TailX)
			out = append(out, Line{[]Point{corner, at(end.TailX, sign*y, z), at(end.ApexX, 0, end.ApexZ)}, cordWide})
		}
	}
	for _, e := range []bed.End{bed.Head, bed.Foot} {
		x := e.Sign() * s.Problem.Bed.Span / 2
		y, z := s.Cord(x)
		out = append(out, Line{[]Point{at(x, -y, z), at(x, y, z)}, barWide})
	}
	return out
}

// Try returns the model of what stands with other values, which are not kept, and no
// more than that: not even whether the cloth would do. While a value moves the net is the
// coarse one. station is that of the section, mm from the head bar.
func (d *Desk) Try(changes []design.Change, moving bool, station float64) (Model, error) {
	d.mu.Lock()
	name, data := d.name(), d.text()
	d.mu.Unlock()
	t, err := design.OpenText(name, data)
	if err != nil {
		return Model{}, err
	}
	if t, err = t.Apply(changes); err != nil {
		return Model{}, err
	}
	p, err := work.Begin(name, t.Bytes(), d.with)
	if err != nil {
		return Model{}, err
	}
	s, err := hung.Solve(hung.ProblemOf(p.Design))
	if err != nil {
		return Model{}, err
	}
	n := fine
	if moving {
		n = coarse
	}
	return modelOf(&p.Design, &s, n, station, d.words), nil
}

// Model returns the model of the last sound design.
func (d *Desk) Model(station float64) *Model {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.drawn.number == 0 {
		return nil
	}
	m := modelOf(&d.drawn.plan.Design, &d.drawn.plan.Shape, fine, station, d.words)
	m.Room = d.drawn.room
	return &m
}

// Section returns the section of the last sound design at a station, mm from the head
// bar.
func (d *Desk) Section(station float64) *Section {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.drawn.number == 0 {
		return nil
	}
	s := sectionOf(&d.drawn.plan.Design, &d.drawn.plan.Shape, station, d.words)
	return &s
}
