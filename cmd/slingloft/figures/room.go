package figures

import (
	"fmt"

	"slingloft/outline/design"
	"slingloft/outline/room"
)

// Room is what the sleeper feels of the made bed.
type Room struct {
	Fits     []Fit   `json:"fits"`
	Head     float64 `json:"head"`      // bottom line under the crown above that under the hips
	Feet     float64 `json:"feet"`      // and under the soles
	OverFace float64 `json:"over_face"` // head bar above the face under it; 0: it stands over no part of the head
	Upright  float64 `json:"upright"`   // sitting up at mid-bay, crown from the nearer bar; 0: not known
	Ridge    float64 `json:"ridge"`     // and under the line from apex to apex; negative: above it
	Cannot   string  `json:"cannot,omitempty"`
}

// Fit is how one part of the body lies.
type Fit struct {
	Part     string  `json:"part"` // "shoulders", "elbows", "hips" or "knees", which only have to find room
	Lies     string  `json:"lies"` // "back" or "side"
	X        float64 `json:"x"`
	Breadth  float64 `json:"breadth"`
	Depth    float64 `json:"depth"`
	Opening  float64 `json:"opening"`           // from cord to cord
	Spare    float64 `json:"spare"`             // of it beyond the breadth
	Squeeze  float64 `json:"squeeze,omitempty"` // from each side on the whole part, N
	Pressure float64 `json:"pressure,omitempty"`
	Floor    float64 `json:"floor,omitempty"` // above the bottom of the made bed's round section
	Cannot   string  `json:"cannot,omitempty"`
}

func roomOf(r room.Room, err error) Room {
	out := Room{Fits: []Fit{}, Head: r.Head, Feet: r.Feet, OverFace: r.OverFace, Upright: r.Upright, Ridge: r.Ridge}
	if err != nil {
		out.Cannot = err.Error()
		return out
	}
	for _, f := range r.Fits {
		one := Fit{Part: f.Part.String(), Lies: f.Lies.String(), X: f.X, Breadth: f.Body.Breadth, Depth: f.Body.Depth,
			Opening: f.Opening, Spare: f.Spare, Squeeze: f.Squeeze, Pressure: f.Pressure, Floor: f.Floor}
		if f.Err != nil {
			one.Cannot = f.Err.Error()
		}
		out.Fits = append(out.Fits, one)
	}
	return out
}

// room prints what the sleeper feels of the bed.
func (b *report) room(d Document) {
	say := b.say.Room
	b.head(say.Title, b.unit())
	if d.Room.Cannot != "" {
		b.line(say.Cannot, d.Room.Cannot)
		return
	}
	columns := say.Columns
	columns[roomSqueeze] = fmt.Sprintf(columns[roomSqueeze], b.style.ForceUnit())
	columns[roomPressure] = fmt.Sprintf(columns[roomPressure], b.style.PressureUnit())
	b.row(columns[:]...)
	for _, f := range d.felt.Fits {
		row := []string{b.words.Room.Parts[f.Part], b.words.Room.Lies[f.Lies], b.figure(f.Opening), b.figure(f.Body.Breadth), b.figure(f.Spare)}
		switch {
		case f.Err != nil:
			row = append(row, say.Out, "", "")
		case f.Squeeze == 0:
			row = append(row, "", "", "")
		default:
			row = append(row, b.style.ForceFigure(f.Squeeze), b.style.Pressure(f.Pressure), b.figure(f.Floor))
		}
		b.row(row...)
	}
	b.line(say.Rise, b.mm(d.Room.Head), b.mm(d.Room.Feet))
	if d.Room.OverFace != 0 {
		b.line(say.OverFace, b.mm(d.Room.OverFace))
	}
	if d.Room.Upright > 0 {
		b.line(say.Upright, b.mm(d.Room.Upright))
		b.line(b.above(d.Room.Ridge), b.mm(max(d.Room.Ridge, -d.Room.Ridge)))
	}
	b.line("%s", say.How)
}

// above says on which side of the line between the apexes a crown is.
func (b *report) above(under float64) string {
	if under < 0 {
		return b.say.Room.Over
	}
	return b.say.Room.Under
}

// roomTrait returns what a part has to spare in a posture, 0 where it is not looked at.
func roomTrait(r room.Room, lies design.Posture, part room.Part) float64 {
	f, _ := r.Find(part, lies)
	return f.Spare
}

// mostSqueezed returns the largest push on a part from one side, N.
func mostSqueezed(r room.Room, lies design.Posture) float64 {
	most := 0.0
	for _, f := range r.Fits {
		if f.Lies == lies {
			most = max(most, f.Squeeze)
		}
	}
	return most
}
