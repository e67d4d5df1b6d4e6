package chapter

import (
	"fmt"

	"slingloft/export/sheet"
	"slingloft/export/sheet/scene"
	"slingloft/outline/room"
)

// room tells what the sleeper feels of the bed.
func (b build) room() (sheet.Section, error) {
	say := b.Say.Room
	s := sheet.Section{ID: "room", Title: say.Title}
	if b.Room == nil {
		return sheet.Section{}, nil
	}
	var figs sheet.Figures
	for _, part := range [...]room.Part{room.Shoulders, room.Hips} {
		f, _ := b.Room.Find(part, b.Design.Sleeper.Lies)
		if p, ok := scene.Inside(b.Data, f); ok {
			caption := fmt.Sprintf(say.Picture.Caption, b.Say.Names.Room.Parts[part], b.Say.Names.Room.Lies[f.Lies])
			figs = append(figs, sheet.Figure{Picture: p, Caption: caption})
		}
	}
	if len(figs) > 0 {
		s.Add(figs)
	}
	s.Add(b.roomTable(), b.roomList(), sheet.Para(say.How))
	return s, nil
}

// roomTable tables each part in either posture.
func (b build) roomTable() sheet.Table {
	say, names := b.Say.Room, b.Say.Names.Room
	t := sheet.Table{ID: "room-fits", Caption: fmt.Sprintf(say.Caption, b.UnitWord()),
		Words: []bool{true, true, false, false, false, false, false, false}}
	t.Head = say.Columns[:]
	for _, f := range b.Room.Fits {
		row := []string{names.Parts[f.Part], names.Lies[f.Lies], b.Figure(f.Opening), b.Figure(f.Body.Breadth),
			b.SignedFigure(f.Spare), "", "", ""}
		switch {
		case f.Err != nil:
			row[5] = say.Out
		case f.Squeeze != 0:
			row[5], row[6], row[7] = b.Force(f.Squeeze), b.Style.Pressure(f.Pressure)+" "+b.Style.PressureUnit(), b.SignedFigure(f.Floor)
		}
		t.AddStrong(f.Lies == b.Design.Sleeper.Lies, row...)
	}
	return t
}

// roomList tells what the head comes near to.
func (b build) roomList() sheet.List {
	say, r := b.Say.Room, b.Room
	out := sheet.List{fmt.Sprintf(say.Rise, b.Round(r.Head), b.Round(r.Feet))}
	if r.OverFace != 0 {
		out = append(out, fmt.Sprintf(say.OverFace, b.Round(r.OverFace)))
	}
	if r.Upright > 0 {
		out = append(out, fmt.Sprintf(say.Upright, b.Round(r.Upright)))
		text, by := say.Under, r.Ridge
		if by < 0 {
			text, by = say.Over, -by
		}
		out = append(out, fmt.Sprintf(text, b.Round(by)))
	}
	return out
}
