package work

import (
	"slingloft/export"
	"slingloft/outline"
	"slingloft/outline/divide"
	"slingloft/outline/template"
)

// boarded builds every stiff template and gauge of a plan, and divides those longer
// than the sheet.
func (p *Plan) boarded() error {
	s := p.Design.Sheet
	frame, err := export.Within(s.Width, s.Height)
	if err != nil {
		return err
	}
	w, h := frame.Lay.Width()-2*s.Margin, frame.Lay.Height()-2*s.Margin
	p.Boards, err = outline.Cutting{
		Design:  p.Design,
		Mark:    p.Mark,
		Sewn:    p.Sewn,
		Cords:   p.Cords.Cords,
		Further: p.Further,
		Words:   p.Words.Lettering,
		Room:    template.Room{Width: w, Height: h},
	}.Templates()
	if err != nil {
		return err
	}
	for _, t := range p.Boards {
		parts, err := divide.Parts(t, w, h, divide.NewJoint(s.Kerf), p.Words.Boards)
		if err != nil {
			return err
		}
		for _, q := range parts {
			p.Templates = append(p.Templates, q.Piece)
		}
	}
	return nil
}
