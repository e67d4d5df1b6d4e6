package words

import (
	"fmt"

	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// Cloth is what stands on cloth pieces. A piece's title stands in other outputs too.
type Cloth struct {
	Body                     string // title of the whole body
	Panels                   map[piece.Panel]string
	Strip                    string // title of a channel strip: side
	Facing                   string // title of a facing: side
	Cap                      string // title of a cap: end
	Sack, SackBase, BarsSack string // titles
	Tarp                     string // title of a whole one
	TarpPart                 string // of a panel across the ridge: number
	TarpHalf                 string // side
	TarpHalfPart             string // of a panel of a half: side, number
	TarpCorner, TarpEnd      string // of patches
	CoverSide                string // title: side
	CoverEnd                 string // title: end
	Lining                   string // title of a whole one
	LiningPanels             map[piece.Panel]string
	LiningFaces              [2]string // mark, and which face is lettered, by where it lies
	Outside                  string    // which face of a cover is lettered
	Zip                      string    // beside its line
	LiningHem                string    // beside the hem of its opening

	Cut       string    // title
	CutMany   string    // title, how many
	Shape     string    // mark
	FaceUp    string    // which face is lettered
	Inside    string    // which face of a sack is lettered
	Under     string    // which face of a tarp is lettered
	Against   string    // of its patches
	ShapeFace string    // mark, and which face is lettered
	OnStrip   string    // name of the design, title, mark
	FaceIn    string    // which face of a strip is lettered
	OnFacing  string    // name of the design, title, mark, and which face is lettered
	Grain     string    // beside the grain arrow
	Bars      [2]string // beside a bar line, by its end
	Centre    string    // beside the centre line
	Sides     [2]string // inside a side of the whole body, by the side
	Edges     [2]string // of a panel with that side
	NoEdge    string    // of a panel between two joins
	Join      string    // join, its notches
	// FirstDouble and FirstSingle tell the notches of a join by the first of them.
	FirstDouble, FirstSingle string
}

// StripTitle is the title of a side's channel strip.
func (l Lettering) StripTitle(s bed.Side) string {
	return fmt.Sprintf(l.Cloth.Strip, l.Pieces.Rims[piece.RimOf(s)])
}

// FacingTitle is the title of a side's facing.
func (l Lettering) FacingTitle(s bed.Side) string {
	return fmt.Sprintf(l.Cloth.Facing, l.Pieces.Rims[piece.RimOf(s)])
}

// CapTitle is the title of an end's cap.
func (l Lettering) CapTitle(e hung.End) string { return fmt.Sprintf(l.Cloth.Cap, l.Ends[e]) }

// Join letters a join, whose first notch is double or not.
func (l Lettering) Join(r piece.Rim, double bool) string {
	notches := l.Cloth.FirstSingle
	if double {
		notches = l.Cloth.FirstDouble
	}
	return fmt.Sprintf(l.Cloth.Join, l.Pieces.Rims[r], notches)
}

func englishCloth() Cloth {
	return Cloth{
		Body: "body",
		Panels: map[piece.Panel]string{
			piece.WidePanel: "body wide", piece.NarrowPanel: "body narrow",
			piece.CentrePanel: "body centre", piece.LeftPanel: "body left", piece.RightPanel: "body right",
		},
		Strip: "channel %s", Facing: "facing %s", Cap: "cap %s",
		Sack: "stow sack", SackBase: "stow sack base", BarsSack: "bars' sack",
		Tarp: "tarp", TarpPart: "tarp panel %d", TarpHalf: "tarp %s half", TarpHalfPart: "tarp %s panel %d",
		TarpCorner: "tarp corner patch", TarpEnd: "tarp ridge patch",
		CoverSide: "cover %s side", CoverEnd: "cover %s end", Outside: "this face outside", Zip: "zip",
		Lining: "lining",
		LiningPanels: map[piece.Panel]string{
			piece.WidePanel: "lining wide", piece.NarrowPanel: "lining narrow",
			piece.CentrePanel: "lining centre", piece.LeftPanel: "lining left", piece.RightPanel: "lining right",
		},
		LiningFaces: [2]string{design.BelowBody: "shape %s · this face towards the pad", design.AboveBody: "shape %s · this face towards the sleeper"},
		LiningHem:   "opening: hem this edge",

		Cut:       "%s · cut 1",
		CutMany:   "%s · cut %d",
		Shape:     "shape %s",
		FaceUp:    "this face inside the bed",
		Inside:    "this face inside the sack",
		Under:     "this face under the tarp",
		Against:   "this face against the tarp",
		ShapeFace: "shape %s · this face inside the bed",
		OnStrip:   "%s · %s · cut 1 · head this end · %s",
		FaceIn:    "this face inside the channel",
		OnFacing:  "%s · %s · cut 1 · %s · this face inside the channel",
		Grain:     "grain (warp)",
		Bars:      [2]string{hung.Head: "head bar", hung.Foot: "foot bar"},
		Centre:    "centre line",
		Sides:     [2]string{bed.Left: "left side (single notches)", bed.Right: "right side (double notches)"},
		Edges:     [2]string{bed.Left: "left side: single notches", bed.Right: "right side: double notches"},
		NoEdge:    "between the joins",
		Join:      "%s (%s)", FirstDouble: "single notches, the first double", FirstSingle: "double notches, the first single",
	}
}
