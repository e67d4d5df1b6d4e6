package design

import "slingloft/outline/quantity"

// Cover is an insect net over the bed.
type Cover struct {
	On     bool
	Height float64   // of its ridge above the bed's lowest point, mm; 0: it runs from apex to apex
	Edge   CoverEdge // its lower edge
	Hem    float64   // finished width, mm
	Lap    float64   // how far a loose edge hangs below the cords, mm
	// Allowance is that at the ridge and at the corners, mm.
	Allowance float64
	Zip       CoverZip // where it opens
	ZipLength float64  // from stop to stop, mm; 0: what there is room for
	ZipUp     float64  // of the zip's middle above the cord, or a cap's top edge, mm
	ZipWidth  float64  // between its two seams, mm
	Ridge     CoverRidge
	Travel    float64          // of the ridge's elastic either way, mm
	Flattest  quantity.Radians // angle of the hang lines up to which a ridge that carries keeps the apexes apart
	Strength  quantity.Newtons // of the ridge's cord; 0: not given
	Loop      float64          // of tape for each loop on the ridge, mm
	Mesh      float64          // from hole to hole of the net, mm; 0: not known
	Own       Own
}

// CoverEdge is how the lower edge of a cover is held.
type CoverEdge int

// The edges.
const (
	SewnEdge  CoverEdge = iota // sewn to the channels' outer folds and the caps
	LooseEdge                  // hangs over them with an elastic in its hem
)

// String returns the edge's name, as designs and documents have it.
func (e CoverEdge) String() string { return [...]string{"sewn", "elastic"}[e] }

// CoverZip is where a cover opens.
type CoverZip int

// The places.
const (
	ZipLeft CoverZip = iota // along the left side
	ZipRight
	ZipHead // up the middle of the head's end
	ZipFoot
)

// String returns the place's name, as designs and documents have it.
func (z CoverZip) String() string { return [...]string{"left", "right", "head", "foot"}[z] }

// CoverRidge is what holds a cover up.
type CoverRidge int

// The ridges.
const (
	ElasticRidge  CoverRidge = iota // a cord with an elastic at one end
	CarryingRidge                   // a cord of a fixed length, which keeps the apexes from going further apart
)

// String returns the ridge's name, as designs and documents have it.
func (c CoverRidge) String() string { return [...]string{"elastic", "carrying"}[c] }

// Carries reports whether there is a cover whose ridge counts as a line that carries.
func (c Cover) Carries() bool { return c.On && c.Ridge == CarryingRidge }

func coverRows() []row {
	of := func(d *Design) *Cover { return &d.Cover }
	return append(append(append([]row{
		length(KeyCoverHeight, 200, 3000, func(d *Design) *float64 { return &of(d).Height }).
			says("Height of a level ridge above the bed's lowest point, on a line of its own; left out, the ridge runs straight from apex to apex.",
				"700 mm", "28 in").known("rise"),
		named(KeyCoverEdge, func(d *Design) *CoverEdge { return &of(d).Edge }, []CoverEdge{SewnEdge, LooseEdge}).
			says("sewn: the lower edge is sewn to the channels' outer folds and to the caps, with no gap; elastic: it hangs over them with an "+
				"elastic in its hem, tied across under the bed, and comes off.", "sewn", "sewn").or("sewn").known("bottom"),
		length(KeyCoverHem, 5, 40, func(d *Design) *float64 { return &of(d).Hem }).
			says("Finished width of the hem at the lower edge.", "12 mm", "1/2 in").or("10 mm").orIn("3/8 in"),
		length(KeyCoverLap, 20, 200, func(d *Design) *float64 { return &of(d).Lap }).
			says("How far a lower edge with elastic hangs below the cords and the caps' top edges.", "60 mm",
				"2 1/2 in").or("60 mm").orIn("2 1/2 in").known("overlap", "skirt"),
		length(KeyCoverAllowance, 5, 40, func(d *Design) *float64 { return &of(d).Allowance }).
			says("Allowance at the ridge and the corners.", "12 mm", "1/2 in").or("12 mm").orIn("1/2 in").known("seam"),
	}, coverZipRows(of)...), coverLineRows(of)...), ownRows(KeyCoverCloth, func(d *Design) *Own { return &of(d).Own })...)
}

// coverZipRows are the rows of a cover's opening.
func coverZipRows(of func(*Design) *Cover) []row {
	return []row{
		named(KeyCoverZip, func(d *Design) *CoverZip { return &of(d).Zip }, []CoverZip{ZipLeft, ZipRight, ZipHead, ZipFoot}).
			says("Where the net opens by a zip: along its left or right side, as one who lies on the back has them, or up the middle of an end.",
				"left", "left").or("left").known("opening", "side"),
		length(KeyCoverZipLength, 200, 5000, func(d *Design) *float64 { return &of(d).ZipLength }).
			says("Length of the zip from stop to stop; left out, what there is room for.", "1200 mm", "48 in").known("zipper"),
		length(KeyCoverZipUp, 25, 600, func(d *Design) *float64 { return &of(d).ZipUp }).
			says("Height of the zip's middle above the cord along the net; at an end of its lower stop above the cap.", "60 mm",
				"2 1/2 in").or("60 mm").orIn("2 1/2 in"),
		length(KeyCoverZipWidth, 5, 60, func(d *Design) *float64 { return &of(d).ZipWidth }).
			says("Width of the closed zip between the two rows that hold it.", "22 mm", "7/8 in").or("22 mm").orIn("7/8 in").known("tape"),
	}
}

// coverLineRows are the rows of a cover's ridge and of its net.
func coverLineRows(of func(*Design) *Cover) []row {
	return []row{
		named(KeyCoverRidge, func(d *Design) *CoverRidge { return &of(d).Ridge }, []CoverRidge{ElasticRidge, CarryingRidge}).
			says("elastic: the ridge is a thin cord with an elastic at its foot end, and carries the net alone; carrying: it has a fixed length, "+
				"keeps the apexes from going further apart, and counts as a line that carries.", "elastic", "elastic").or("elastic").known("line"),
		length(KeyCoverTravel, 10, 200, func(d *Design) *float64 { return &of(d).Travel }).
			says("By how much the elastic gives either way, while the apexes move.", "30 mm", "1 1/4 in").or("30 mm").orIn("1 1/4 in"),
		measure(KeyCoverFlattest, quantity.Degrees(5), quantity.Degrees(45), func(d *Design) *quantity.Radians { return &of(d).Flattest }).
			says("Angle of the hang lines above the level at which a ridge that carries is reckoned, as somebody may hang the bed too tight; "+
				"own choice.", "15 deg", "15 deg").or("15 deg").known("tight"),
		measure(KeyCoverStrength, 10, 1e6, func(d *Design) *quantity.Newtons { return &of(d).Strength }).
			says("Breaking strength of the ridge's cord from its data sheet; left out, its margin is not known.", "5 kN",
				"1100 lbf").known("breaking_strength"),
		length(KeyCoverLoop, 40, 300, func(d *Design) *float64 { return &of(d).Loop }).
			says("Tape for each loop by which the net hangs on its ridge.", "80 mm", "3 in").or("80 mm").orIn("3 in").known("tape"),
		length(KeyCoverMesh, 0.2, 10, func(d *Design) *float64 { return &of(d).Mesh }).
			says("From hole to hole of the net, by its maker: an inch over the root of the holes per square inch; left out, it is not known.",
				"1.8 mm", "0.07 in").known("holes", "aperture"),
	}
}

// checkCover wants what the cover is sewn to, and what belongs to its own edge and ridge.
func (r *reader) checkCover() {
	c := r.design.Cover
	if !c.On {
		return
	}
	if r.good(KeyCapKind) && r.design.Cap.Kind == Gathered {
		r.conflict(KeyCapKind, Found(CoverWithoutCaps), Say(WriteThis, `kind = "upright"`))
	}
	if r.good(KeyCoverHeight, KeyCoverRidge) && c.Height > 0 && c.Ridge == CarryingRidge {
		r.conflict(KeyCoverRidge, Found(CarriesBesideApexes), Say(WriteThis, `ridge = "elastic"`))
	}
	if r.good(KeyCoverStrength, KeyCoverRidge) && c.Strength > 0 && c.Ridge != CarryingRidge {
		r.conflict(KeyCoverStrength, Found(StrengthOfElastic), Say(WriteOrLeave, `ridge = "carrying"`))
	}
	if r.good(KeyCoverZipUp, KeyCoverZipWidth) && c.ZipUp < c.ZipWidth/2+zipRoom {
		r.bounded(KeyCoverZipUp, Found(ZipAtEdge, r.show(KeyCoverZipWidth, c.ZipWidth)), r.atLeast(KeyCoverZipUp, c.ZipWidth/2+zipRoom))
	}
}

// zipRoom is the least of a cover that is left between a zip and its edge, mm: what the
// foot of a machine takes, own choice.
const zipRoom = 10.0
