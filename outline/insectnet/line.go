package insectnet

import "slingloft/outline/design"

// Line is the cord that a cover's ridge hangs on.
type Line struct {
	// Between is how long it is under the sleeper, from hook to hook: from apex to apex, or
	// between its own anchors; 0: not known.
	Between    float64
	Elastic    float64 // of it, as it is cut between its knots; 0: none
	Stretch    float64 // of it, as it hangs under the sleeper
	Cord       float64 // finished, from eye to the elastic's eye; 0: not known
	Cut        float64 // with what both knots take; 0: not known
	ElasticCut float64 // likewise of the elastic

}

// knotEnd is the cord for the eye and knot at one end of a ridge, mm: own choice.
const knotEnd = 150.0

// lineOf returns the ridge's cord: between the apexes, or where it has a line of its own, 0
// from apex to apex, between the anchors; 0: not known.
//
// An elastic cut two travels long hangs at three, stretched by half: it grows slack one
// travel shorter, and is twice as long as it was one travel longer.
func lineOf(d design.Design, apexes, anchors float64) Line {
	l := Line{Between: apexes}
	if apexes == 0 {
		l.Between = anchors
	}
	if d.Cover.Ridge == design.ElasticRidge {
		l.Elastic, l.Stretch = 2*d.Cover.Travel, 3*d.Cover.Travel
		l.ElasticCut = l.Elastic + 2*knotEnd
	}
	if l.Between > 0 {
		l.Cord = l.Between - l.Stretch
		l.Cut = l.Cord + 2*knotEnd
	}
	return l
}
