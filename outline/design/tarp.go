package design

import "slingloft/outline/quantity"

// Tarp is a sheet that hangs over the bed on a ridge.
type Tarp struct {
	On    bool
	Shape TarpShape
	Ridge float64 // finished, from end to end, mm; 0: as long as the bed needs
	Width float64 // finished, corner to corner over the ridge, as it lies flat, mm; 0: as wide as the bed needs
	// Side is the straight distance between the corners of a side edge of a hexagon, mm;
	// 0: three quarters of the ridge.
	Side        float64
	Curve       TarpCurve // of hollow edges
	Hollow      float64   // of every edge, part of its chord; 0: straight
	RidgeHollow float64   // of the ridge, likewise
	Join        TarpJoin
	Pitch       quantity.Radians // of each half below the level, as it hangs
	Rise        float64          // of the ridge above the higher apex, mm; 0: what keeps the sheet off the bed
	Rain        quantity.Radians // of driven rain from the plumb line that it has to keep off
	Hem         float64          // finished width, folded two times, mm
	Allowance   float64          // at joins and patches, mm
	Patch       float64          // of the reinforcement along each edge of a corner, mm
	Loop        float64          // of tape, at each corner and ridge end, mm
	Own         Own
}

// TarpShape is the outline of a sheet.
type TarpShape int

// The shapes.
const (
	RectangleTarp TarpShape = iota
	HexagonTarp             // its side edges are shorter than its ridge
)

// String returns the shape's name, as designs and documents have it.
func (s TarpShape) String() string { return [...]string{"rectangle", "hexagon"}[s] }

// TarpCurve is the curve of a sheet's hollow edges.
type TarpCurve int

// The curves.
const (
	CatenaryEdge TarpCurve = iota
	ParabolaEdge
	ArcEdge
)

// String returns the curve's name, as designs and documents have it.
func (c TarpCurve) String() string { return [...]string{"catenary", "parabola", "arc"}[c] }

// TarpJoin is where a sheet is joined from panels.
type TarpJoin int

// The joins.
const (
	RidgeJoin  TarpJoin = iota // two halves on the ridge, each joined along it again where it is wider than the roll
	AcrossJoin                 // panels that run across the ridge, as wide as the roll allows
	WholeTarp                  // in one piece
)

// String returns the join's name, as designs and documents have it.
func (j TarpJoin) String() string { return [...]string{"ridge", "across", "none"}[j] }

// SideOf returns the straight distance between the corners of a side edge of a sheet with
// a ridge, mm.
func (t Tarp) SideOf(ridge float64) float64 {
	switch {
	case t.Shape == RectangleTarp:
		return ridge
	case t.Side > 0:
		return t.Side
	}
	return hexagonSide * ridge
}

// hexagonSide is how long the side edge of a hexagon is made, as part of its ridge, where
// nothing else is asked: own choice.
const hexagonSide = 0.75

// LoopOut returns how far the fold of a loop stands out past its corner, mm: three tenths of
// the folded tape, more where its ends are longer than the patch; own choice.
func (t Tarp) LoopOut() float64 { return max(0.3*t.Loop/2, t.Loop/2-0.8*t.Patch) }

func tarpRows() []row {
	of := func(d *Design) *Tarp { return &d.Tarp }
	return append(append(tarpSize(of), []row{
		named(KeyTarpJoin, func(d *Design) *TarpJoin { return &of(d).Join }, []TarpJoin{RidgeJoin, AcrossJoin, WholeTarp}).
			says("ridge: two halves are sewn together on the ridge, and each half along it once more where it is wider than the roll; "+
				"across: panels as wide as the roll run across the ridge; none: in one piece.", "ridge", "ridge").or("ridge").known("joins", "seam"),
		measure(KeyTarpPitch, quantity.Degrees(15), quantity.Degrees(70), func(d *Design) *quantity.Radians { return &of(d).Pitch }).
			says("Angle of each half below the level, as it hangs; own choice.", "40 deg", "40 deg").or("40 deg").known("slope", "angle"),
		length(KeyTarpRise, 20, 3000, func(d *Design) *float64 { return &of(d).Rise }).
			says("Height of the ridge above the higher apex, with the sleeper in the bed; left out, what keeps the tarp 100 mm off "+
				"bars, cords and hang lines.", "350 mm", "14 in").known("height", "above"),
		measure(KeyTarpRain, 0, quantity.Degrees(60), func(d *Design) *quantity.Radians { return &of(d).Rain }).
			says("Angle from the plumb line up to which driven rain, from any direction, is to miss the bed; own choice.", "35 deg",
				"35 deg").or("45 deg").known("weather", "driven_rain"),
		length(KeyTarpHem, 5, 60, func(d *Design) *float64 { return &of(d).Hem }).
			says("Finished width of the hem round the tarp, a double-fold hem.", "15 mm", "5/8 in").or("12 mm").orIn("1/2 in"),
		length(KeyTarpAllowance, 6, 60, func(d *Design) *float64 { return &of(d).Allowance }).
			says("Allowance at joins, on both panels: a flat-felled seam half as wide; and turned under at patches.", "16 mm",
				"5/8 in").or("16 mm").orIn("5/8 in").known("fell"),
		length(KeyTarpPatch, 40, 600, func(d *Design) *float64 { return &of(d).Patch }).
			says("How far the patch of a corner or a ridge end reaches along its edges.", "150 mm",
				"6 in").or("150 mm").orIn("6 in").known("reinforcement"),
		length(KeyTarpLoop, 60, 600, func(d *Design) *float64 { return &of(d).Loop }).
			says("Tape for the loop of each corner and ridge end, what is sewn down of it counted in.", "200 mm",
				"8 in").or("200 mm").orIn("8 in").known("tape", "webbing"),
	}...), ownRows(KeyTarpCloth, func(d *Design) *Own { return &of(d).Own })...)
}

// tarpSize are the rows that give a sheet its outline.
func tarpSize(of func(*Design) *Tarp) []row {
	return []row{
		named(KeyTarpShape, func(d *Design) *TarpShape { return &of(d).Shape }, []TarpShape{RectangleTarp, HexagonTarp}).
			says("rectangle, or hexagon: its side edges are shorter than its ridge.", "rectangle",
				"rectangle").or("rectangle").known("kind", "outline"),
		length(KeyTarpRidge, 500, 20000, func(d *Design) *float64 { return &of(d).Ridge }).
			says("Finished length of the ridge; left out, what reaches 200 mm past each apex and keeps the rain off the bed.", "3800 mm",
				"12 ft 6 in").known("length"),
		length(KeyTarpWidth, 300, 20000, func(d *Design) *float64 { return &of(d).Width }).
			says("Finished width as the tarp lies flat, from corner to corner over the ridge; left out, what keeps the rain off the bed.",
				"2400 mm", "8 ft"),
		length(KeyTarpSide, 200, 20000, func(d *Design) *float64 { return &of(d).Side }).
			says("Straight distance between the corners of a hexagon's side edge; left out, three quarters of the ridge.", "2600 mm",
				"8 ft 6 in").known("side_edge"),
		named(KeyTarpCurve, func(d *Design) *TarpCurve { return &of(d).Curve }, []TarpCurve{CatenaryEdge, ParabolaEdge, ArcEdge}).
			says("Curve of hollow edges.", "catenary", "catenary").or("catenary"),
		number(KeyTarpHollow, ratio, 0, 0.15, func(d *Design) *float64 { return &of(d).Hollow }).
			says("How hollow every edge is, as part of the straight distance between its corners; 0 for straight edges. 5 to 15 % is "+
				"common practice, no source.", "8 %", "8 %").or("7 %").known("sag", "cat_cut"),
		number(KeyTarpRidgeHollow, ratio, 0, 0.08, func(d *Design) *float64 { return &of(d).RidgeHollow }).
			says("How hollow the ridge is, likewise, which takes two halves.", "2 %", "2 %").or("0 %"),
	}
}

// checkTarp wants what belongs to the sheet's own shape and joins.
func (r *reader) checkTarp() {
	t := r.design.Tarp
	if !t.On {
		return
	}
	if r.good(KeyTarpShape, KeyTarpSide) && t.Side > 0 {
		switch {
		case t.Shape == RectangleTarp:
			r.conflict(KeyTarpSide, Found(SideOfRectangle), Say(WriteOrLeave, `shape = "hexagon"`))
		case t.Ridge > 0 && r.good(KeyTarpRidge) && t.Side > t.Ridge:
			r.bounded(KeyTarpSide, Found(SideOverRidge, r.show(KeyTarpSide, t.Ridge)), r.atMost(KeyTarpSide, t.Ridge))
		}
	}
	if r.good(KeyTarpJoin, KeyTarpRidgeHollow) && t.RidgeHollow > 0 && t.Join != RidgeJoin {
		r.conflict(KeyTarpJoin, Found(HollowRidgeWhole), Say(WriteThis, `join = "ridge"`))
	}
}
