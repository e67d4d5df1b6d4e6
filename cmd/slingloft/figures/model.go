// Package figures gathers every figure of a plan: as a versioned document for
// other programs and as text for people.
package figures

import (
	"slingloft/cmd/slingloft/document"
	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/margin"
	"slingloft/outline/rig"
	"slingloft/outline/room"
	"slingloft/outline/stock"
)

// Version of the document. It rises when a name changes its meaning; names are
// added without it.
const Version = 1

// Pair is a point or a pair of values, in mm where they are lengths.
type Pair [2]float64

// Document holds every figure of a design. Lengths are mm, forces N, angles rad,
// line loads and cloth tensions N/mm.
type Document struct {
	Version  int      `json:"version"`
	Name     string   `json:"name"`
	Digest   string   `json:"digest"`
	Mark     string   `json:"mark"`
	Cautions []string `json:"cautions"`
	Hazards  []Hazard `json:"hazards"` // the cautions part by part
	Warnings []string `json:"warnings"`

	Given   Given       `json:"given"`
	Shape   Shape       `json:"shape"`
	Ends    Ends        `json:"ends"`
	Room    Room        `json:"room"`
	Body    Body        `json:"body"`
	Cords   []cord.Cord `json:"cords"`
	Rigging Rigging     `json:"rigging"`
	Splices cord.Shown  `json:"splices"`
	Seams   []Seam      `json:"seams"`
	Offsets []Offsets   `json:"offsets"`
	Pieces  []Piece     `json:"pieces"`
	Lay     Lay         `json:"lay"`
	Margins []Check     `json:"margins"`
	Cases   []Case      `json:"cases"`
	States  []State     `json:"states"`
	Governs []Check     `json:"governing"`       // of each part the check of the state that loads it most
	Leasts  []Least     `json:"least_strengths"` // that have to be bought
	Proof   Proof       `json:"proof"`
	Sudden  Sudden      `json:"sudden"`
	Notes   []string    `json:"margin_notes"`

	Hanging   Hanging   `json:"hanging"`
	Accuracy  Accuracy  `json:"accuracy"`
	Materials Materials `json:"materials"`
	Sacks     *Sacks    `json:"sacks,omitempty"`   // absent where there are none
	Tarp      *Tarp     `json:"tarp,omitempty"`    // absent where there is none
	Cover     *Cover    `json:"cover,omitempty"`   // absent where there is none
	Lining    *Lining   `json:"lining,omitempty"`  // likewise
	Leveled   *Leveled  `json:"leveled,omitempty"` // absent where it was not cut again

	Guests      []Guest      `json:"guests"`
	Corrections []Correction `json:"corrections"`
	After       *Tips        `json:"after,omitempty"` // the tips' heights to expect, over the level that was measured over
	Hung        *Hung        `json:"hung,omitempty"`  // absent where nothing was measured

	corrected *accuracy.Corrected
	least     []margin.Check // of each guest, nearest to what is required; a capacity of 0: none is known
	felt      room.Room      // what Room tells
	bill      stock.Bill     // what Materials tells
	strengths []margin.Least // what Leasts tells
}

// Hazard is a caution: what the danger is, what comes of it, what to do about it.
type Hazard struct {
	Signal      string `json:"signal"` // "DANGER", "WARNING", "CAUTION" or "NOTICE"
	Hazard      string `json:"hazard"`
	Consequence string `json:"consequence"`
	Avoidance   string `json:"avoidance"`
}

// Schema returns the JSON Schema of a [Document].
func Schema() map[string]any {
	return document.Schema[Document]("slingloft figures", Version,
		"Lengths mm, forces N, angles rad, line loads and cloth tensions N/mm, areas mm², masses as named. "+
			"x along the hammock from mid-bay, head end negative; y across; z up; u and v likewise in the flat cloth.")
}

// Given is what the shape hangs under and what it is made of, for other programs
// that want to hang the pattern themselves. A stiffness of 0 is not given.
type Given struct {
	// Load is the sleeper's line load as stretches that change linearly: from, to
	// (stations), load at from, load at to. They may lie over each other.
	Load          [][4]float64 `json:"load"`
	ClothWeight   float64      `json:"cloth_weight"`   // N/mm²
	BarWeight     Pair         `json:"bar_weight"`     // N, head and foot
	SideStiffness float64      `json:"side_stiffness"` // EA of a side cord, N
	LegStiffness  float64      `json:"leg_stiffness"`  // EA of a leg, N
	WarpStiffness float64      `json:"warp_stiffness"` // N/mm per unit strain
	WeftStiffness float64      `json:"weft_stiffness"`
	Compensated   bool         `json:"compensated"` // pattern and cords are shortened for these
}

// Shape is the hung shape at stations from the head tail's end to the foot tail's
// end. The arrays are all of one length.
type Shape struct {
	Thrust       float64   `json:"thrust"` // of one side
	X            []float64 `json:"x"`
	Y            []float64 `json:"y"` // half opening between the cord centres
	Z            []float64 `json:"z"` // height of the cords
	Bottom       []float64 `json:"bottom"`
	Radius       []float64 `json:"radius"` // of the underbody
	WallAngle    []float64 `json:"wall_angle"`
	Girth        []float64 `json:"girth"`
	Load         []float64 `json:"load"` // both sides, cloth included
	CordTension  []float64 `json:"cord_tension"`
	ClothTension []float64 `json:"cloth_tension"`

	SideDepth    float64 `json:"side_depth"`    // at the cord line
	SideDepthAt  float64 `json:"side_depth_at"` // station
	SideArc      float64 `json:"side_arc"`      // side cord from tip to tip
	MaxTension   float64 `json:"max_tension"`
	MaxTensionAt float64 `json:"max_tension_at"`
	HeadHigher   float64 `json:"head_higher"` // by how much the head apex stands above the foot's
	Slide        float64 `json:"slide"`       // force along an inclined bed
	Weight       float64 `json:"weight"`      // of the sleeper
}

// Ends holds both ends.
type Ends struct {
	Head End `json:"head"`
	Foot End `json:"foot"`
}

// End is one end of the hung shape.
type End struct {
	Bar            float64 `json:"bar"`
	Drop           float64 `json:"drop"`
	Girth          float64 `json:"girth"`
	WallAngle      float64 `json:"wall_angle"`
	Leg            float64 `json:"leg"`
	Apex           Pair    `json:"apex"`  // x, z
	Slope          float64 `json:"slope"` // of the hang line, rise over run
	HangAngle      float64 `json:"hang_angle"`
	Horizontal     float64 `json:"horizontal"`
	Vertical       float64 `json:"vertical"`
	BarCompression float64 `json:"bar_compression"`
	LegTension     float64 `json:"leg_tension"`
	TipTension     float64 `json:"tip_tension"`
	TailArc        float64 `json:"tail_arc"`
	TailEnd        float64 `json:"tail_end"` // station
	EndGirth       float64 `json:"end_girth"`
}

// Body is the flat body. Its coordinates are u along the warp and v across.
type Body struct {
	Cut          string       `json:"cut"`
	Reach        float64      `json:"reach"`     // seam line inside the cord centres
	NetLine      []Pair       `json:"net_line"`  // closed, counter-clockwise, at the seams
	CordLine     []Pair       `json:"cord_line"` // closed, counter-clockwise, at the cord centres
	Bars         [2][]Pair    `json:"bars"`      // bar lines, head and foot, from side to side
	Corners      []Pair       `json:"corners"`   // of the net line: head right, foot right, foot left, head left
	MaxShear     MaxShear     `json:"max_shear"`
	Compensation Compensation `json:"compensation"`
	Departures   []Departure  `json:"departures,omitempty"`
	// OffLevel tells how a drawn side curve hangs: station and height of the bottom
	// line against the design. Absent for a balanced curve.
	OffLevel []Pair `json:"off_level,omitempty"`
}

// MaxShear is the largest shear inside the hung body.
type MaxShear struct {
	Angle float64 `json:"angle"`
	At    Pair    `json:"at"`
}

// Compensation is what the pattern was narrowed by for the stretch of its weft.
type Compensation struct {
	WeftStiffness float64 `json:"weft_stiffness"` // N/mm per unit strain; 0: off
	Strain        float64 `json:"strain"`         // largest
	At            float64 `json:"at"`             // station
	Narrower      float64 `json:"narrower"`       // most that a side was moved in
}

// Departure is how a straight cut departs from the girth that hangs level.
type Departure struct {
	X     float64 `json:"x"`
	Girth float64 `json:"girth"`
	Cut   float64 `json:"cut"`
}

// Rigging says which way of rigging the cords are for, with the notes to them.
type Rigging struct {
	Variant cord.Rigging `json:"variant"`
	Notes   []string     `json:"notes"`
}

// Seam is a walked seam.
type Seam struct {
	Name       string     `json:"name"`
	Pieces     [2]string  `json:"pieces"`
	Flat       Pair       `json:"flat"`
	Hung       Pair       `json:"hung"`
	Difference float64    `json:"difference"`
	Ease       float64    `json:"ease"`
	EasePer100 float64    `json:"ease_per_100"`
	Remains    float64    `json:"remains"`
	Tolerance  float64    `json:"tolerance"`
	Within     bool       `json:"within"`
	Parts      []SeamPart `json:"parts"`
}

// SeamPart is a seam between two notches.
type SeamPart struct {
	From string  `json:"from"`
	To   string  `json:"to"`
	Flat Pair    `json:"flat"`
	Ease float64 `json:"ease"`
	Fold float64 `json:"fold"`
}

// Offsets is a curve by ordinates from its chord.
type Offsets struct {
	Name  string     `json:"name"`
	Chord float64    `json:"chord"`
	Arc   float64    `json:"arc"`
	Rows  []Ordinate `json:"rows"`
}

// Ordinate is one row of an offsets table.
type Ordinate struct {
	Station float64 `json:"station"`
	Depth   float64 `json:"depth"`
	Arc     float64 `json:"arc"`
	Deepest bool    `json:"deepest,omitempty"`
}

// Piece is one piece to cut.
type Piece struct {
	ID        string    `json:"id"`
	Stock     string    `json:"stock"`          // "cloth" or "board"
	Roll      int       `json:"roll,omitempty"` // of cloth: 0 the bed's own, from 1 those of lay.rolls
	Count     int       `json:"count"`
	Size      Pair      `json:"size"` // of the cut outline, along u and v
	Area      float64   `json:"area"` // mm²
	CutLength float64   `json:"cut_length"`
	NetLength float64   `json:"net_length"`
	CutLine   []Pair    `json:"cut_line"`
	Checks    []Measure `json:"checks"`
}

// Measure is a distance that proves a piece true.
type Measure struct {
	Name   string  `json:"name"`
	Length float64 `json:"length"`
}

// Lay tells how the pieces lie on their stock.
type Lay struct {
	Cloth  Stock  `json:"cloth"`
	Sheets Stock  `json:"sheets"`
	Rolls  []Roll `json:"rolls,omitempty"` // cloths after the bed's own
}

// Roll is a cloth beside the bed's own with what lies on it.
type Roll struct {
	Cloth string `json:"cloth"` // its name
	Stock
}

// Stock is one kind of stock with what lies on it.
type Stock struct {
	Count  int     `json:"count"`  // rolls or sheets
	Width  float64 `json:"width"`  // of a roll across, of a sheet along x
	Length float64 `json:"length"` // of roll used, of a sheet along y
	Use    float64 `json:"use"`    // part of the stock used
	Placed []Place `json:"placed"`
}

// Place is a laid copy of a piece: turned by Turn about its own origin, mirrored
// before that if so, then moved.
type Place struct {
	ID     string  `json:"id"`
	Copy   int     `json:"copy"`
	Sheet  int     `json:"sheet"`
	Turn   float64 `json:"turn"`
	Mirror bool    `json:"mirror,omitempty"`
	Shift  Pair    `json:"shift"`
}

// Hanging is the hammock between its supports.
type Hanging struct {
	Overall float64    `json:"overall"`         // from apex to apex
	Place   *rig.Place `json:"place,omitempty"` // absent where the design names no place
	// Anchors is by how much the head's anchor stands higher than the foot's, Apexes by
	// how much its apex does; with hang lines of 1000 mm where no place is named.
	Anchors float64     `json:"anchors"`
	Apexes  float64     `json:"apexes"`
	Roll    rig.Roll    `json:"roll"`
	Shelter rig.Shelter `json:"shelter"`
	Sweep   []rig.Place `json:"sweep"` // by the distance of the supports

	Reckoned rig.Place `json:"-"` // with hang lines of 1000 mm, where no place is named
}
