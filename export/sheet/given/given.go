// Package given holds what a build sheet is made from, as plain data, and writes its
// figures in the sheet's units.
//
// All lengths are mm, forces N, angles rad.
package given

import (
	"fmt"

	"slingloft/export"
	"slingloft/export/sheet/wording"
	"slingloft/outline"
	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
	"slingloft/outline/room"
	"slingloft/outline/state"
	"slingloft/outline/stock"
	"slingloft/outline/words"
)

// Data is all that a build sheet is made from. What is left at its zero value is
// left out of the sheet.
type Data struct {
	Design design.Design
	File   string // name of the design's file; empty for the one that is built in
	Digest string // of the design
	Mark   string // of the shapes
	Style  quantity.Style
	Say    wording.Words // in the language of the sheet

	Shape     *hung.Shape
	Body      *flat.Body
	Sewn      panel.Sewn
	Further   outline.Further // beside the bed; its pieces are among those of Sewn
	Boards    []piece.Piece   // templates and gauges at full size
	Templates []piece.Piece   // the same, divided for their sheets
	Cords     cord.Set
	Lays      []Lay
	Beds      []int // its numbers, from 1, among Together beds that are laid together; none: it is laid alone
	Together  int
	Unlaid    bool // the pieces are not laid yet: the sheet says so where it would tell of the lay
	Curves    []piece.Curve

	Margins  *margin.Report
	Place    *rig.Place
	Roll     *rig.Roll
	Room     *room.Room
	Leveled  *Leveled // what was cut again from the cloth as it hangs; nil: nothing
	Draped   *Draped  // the cut hung as cloth, where that was asked for
	Shelter  *rig.Shelter
	Bill     *stock.Bill
	Accuracy *accuracy.Report
	// Corrected is what to set on the bed, where it was measured as it hung.
	Corrected *accuracy.Corrected
	Guests    []Guest
	Cautions  [words.HazardCount]words.Caution // by [words.Hazard]
	Proof     words.CautionFigures
	Warnings  []string // what a maker would not expect, one line each
}

// Guest is what another sleeper finds in the bed.
type Guest struct {
	Name   string
	Lying  state.State
	Ground float64 // of the bottom line at mid-bay above ground, mm; 0: not known
	Cannot error   // why the bed does not rest under the guest
	// Least is the check that is nearest to what it requires; with a capacity of 0 none is
	// known.
	Least margin.Check
}

// Lay is one roll or sheet with the pieces on it.
type Lay struct {
	Material      string
	Width, Height float64 // of the stock shown, mm: along x and y
	Use           float64 // part of the stock that is used
	Items         []export.Item
	Kept          []Kept
	Roll          bool // an open length: Width is what is cut off the roll
}

// Kept is an area of the stock that no piece may touch.
type Kept struct {
	Flaw    bool // of the cloth; else a keep-out of the maker's own
	Outline geom.Ring
}

// CordName names a cord.
func (d *Data) CordName(c cord.Cord) string { return d.Say.Names.Cords.Parts[c.Part] }

// LayName names the lay number i.
func (d *Data) LayName(i int) string {
	no, of := 0, 0
	for k, l := range d.Lays {
		if l.Roll == d.Lays[i].Roll {
			of++
		}
		if k == i {
			no = of
		}
	}
	switch {
	case !d.Lays[i].Roll:
		return fmt.Sprintf(d.Say.Lay.Sheet, no, of)
	case of > 1:
		return fmt.Sprintf(d.Say.Lay.RollOf, no, of)
	}
	return d.Say.Lay.Roll
}
