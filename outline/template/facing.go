package template

import (
	"slingloft/outline/bed"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// FacingCurves are the finished edges of the left facing in the body's coordinates,
// both from the head end to the foot end.
type FacingCurves struct {
	Outer, Inner geom.Polyline
	Notches      []Notch // running lengths along Outer
}

// FacingTemplate returns the stiff template of a facing: its outer edge against a
// straight edge that lies along the warp, with the inner edge marked on it. It is laid
// with the lettered face up for the right facing and turned over for the left one,
// since facings are sewn on face to face.
func FacingTemplate(id, title string, f FacingCurves, opts Options) (piece.Piece, error) {
	opts.Whole = true
	s, err := newSideDraft(SideCurve{Line: f.Outer, Notches: f.Notches}, opts)
	if err == nil {
		err = checkCurve(f.Inner)
	}
	if err == nil {
		err = s.fit(min(s.low, f.Inner.Bounds().Min.Y))
	}
	if err != nil {
		return piece.Piece{}, design.Of(id, err)
	}
	r := s.parts(id, title)[0]
	r.ends, r.on = [2]words.BoardEdge{words.HeadEndEdge, words.FootEndEdge}, [2]piece.Seen{}
	r.from, r.notes = s.edge, []string{opts.Words.FromEdge, opts.Words.AlongSelvedge}
	shift := geom.Motion{Shift: geom.Pt(-s.zero, 0)}
	r.inner = append(geom.Polyline{f.Outer[0]}, append(f.Inner, f.Outer[len(f.Outer)-1])...).Moved(shift)
	r.lie = piece.Lie{For: piece.FacingBoard, Rests: []piece.Rest{{On: piece.AlongSelvedge}}}
	for _, side := range []bed.Side{bed.Right, bed.Left} {
		over := side == bed.Left
		r.lie.Places = append(r.lie.Places, piece.Place{Piece: "facing-" + side.String(), Side: side, Over: over,
			Motion: geom.Motion{Mirror: over, Shift: geom.Pt(s.zero, 0)}})
	}
	return s.draw(r)
}
