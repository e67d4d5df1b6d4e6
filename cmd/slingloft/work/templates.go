package work

import (
	"slingloft/export"
	"slingloft/outline"
	"slingloft/outline/divide"
	"slingloft/outline/piece"
)

// templates builds every stiff template and gauge of a plan, those longer than
// the sheet divided.
func templates(p *Plan) ([]piece.Piece, error) {
	s := p.Design.Sheet
	frame, err := export.Within(s.Width, s.Height)
	if err != nil {
		return nil, err
	}
	whole, err := outline.Cutting{Design: p.Design, Digest: p.Digest, Sewn: p.Sewn, Cords: p.Cords.Cords, Words: p.Words.Lettering}.Templates()
	if err != nil {
		return nil, err
	}
	var out []piece.Piece
	w, h := frame.Lay.Width()-2*s.Margin, frame.Lay.Height()-2*s.Margin
	for _, t := range whole {
		parts, err := divide.Parts(t, w, h, divide.NewJoint(s.Kerf), p.Words.Boards)
		if err != nil {
			return nil, err
		}
		for _, q := range parts {
			out = append(out, q.Piece)
		}
	}
	return out, nil
}
