package desk

import (
	"math"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/hung"
)

// Model is the hammock in space, mm: x towards the foot, y across, z up.
type Model struct {
	Cloth  [][]Point `json:"cloth"` // rows across, from the head tail's end to the foot's
	Lines  []Line    `json:"lines"`
	Middle Point     `json:"middle"`
	Reach  float64   `json:"reach"` // from there to what lies farthest off
}

// Point is x, y and z, to a hundredth of a millimetre.
type Point [3]float64

// Line is a bar, a cord or an edge of the cloth.
type Line struct {
	Points []Point `json:"points"`
	Wide   float64 `json:"wide"` // on the screen, pixels
}

// How fine the model is: rows along and points across. While a value moves a coarser one
// follows it; its points lie where those of the finer one do.
const (
	modelRows   = 40
	coarseRows  = 24
	modelAcross = 16
)

// modelOf returns a hung shape as a model of some rows.
func modelOf(s *hung.Shape, rows int) Model {
	var m Model
	at := func(x, y, z float64) Point {
		p := Point{}
		for i, v := range [...]float64{x, y, z} {
			p[i] = math.Round(v*100) / 100
		}
		return p
	}
	var sides [2]Line
	for _, x := range s.Stations(rows) {
		st := s.At(x)
		half := st.Section.Girth() / 2
		row := make([]Point, modelAcross+1)
		for j := range row {
			along := float64(2*j)/modelAcross - 1
			y, z := st.Section.Point(half * math.Abs(along))
			row[j] = at(x, math.Copysign(y, along), st.Bottom+z)
		}
		m.Cloth = append(m.Cloth, row)
		for k, j := range []int{0, modelAcross} {
			sides[k].Points = append(sides[k].Points, row[j])
		}
	}
	const cordWide, barWide = 1.6, 4
	for k, sign := range []float64{-1, 1} {
		for _, e := range []bed.End{bed.Head, bed.Foot} {
			end := s.Ends[e]
			apex := at(end.ApexX, 0, end.ApexZ)
			y, z := s.Cord(end.TailX)
			m.Lines = append(m.Lines, Line{[]Point{at(end.TailX, sign*y, z), apex}, cordWide})
		}
		sides[k].Wide = cordWide
		m.Lines = append(m.Lines, sides[k])
	}
	for _, e := range []bed.End{bed.Head, bed.Foot} {
		x := e.Sign() * s.Problem.Bed.Span / 2
		y, z := s.Cord(x)
		m.Lines = append(m.Lines, Line{[]Point{at(x, -y, z), at(x, y, z)}, barWide})
	}
	head, foot := s.Ends[bed.Head], s.Ends[bed.Foot]
	m.Middle = at((head.ApexX+foot.ApexX)/2, 0, max(head.ApexZ, foot.ApexZ)/2)
	m.Reach = math.Ceil((foot.ApexX - head.ApexX) / 2)
	return m
}

// Try returns the model of what stands with other values, which are not kept, and no
// more than that: not even whether the cloth would do.
func (d *Desk) Try(changes []design.Change) (Model, error) {
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
	return modelOf(&s, coarseRows), nil
}

// Model returns the model of the last sound design.
func (d *Desk) Model() *Model {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.drawn.number == 0 {
		return nil
	}
	m := modelOf(&d.drawn.plan.Shape, modelRows)
	return &m
}
