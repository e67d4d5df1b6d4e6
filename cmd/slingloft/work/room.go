package work

import (
	"slingloft/outline/finished"
	"slingloft/outline/room"
)

// Room returns what the sleeper feels of the made bed. The error is why the bed is not
// found at rest under the sleeper. It can be asked for once the plan is rigged.
func (p *Plan) Room() (room.Room, error) { return p.felt(p.Made(), true) }

// felt returns the room in the made bed, and what one who sits up comes near to only if
// asked.
func (p *Plan) felt(made finished.Hammock, sits bool) (room.Room, error) {
	w := p.lying()
	in := room.Input{Shape: &p.Shape, Sleeper: p.Design.Sleeper}
	var err error
	if in.Lying, err = made.Hang(finished.Change{}, w); err != nil {
		return room.Room{}, err
	}
	if !sits {
		return p.leveledRoom(room.Of(in)), nil
	}
	who := p.Person()
	seat := finished.Weight{Load: who.Seated(0), Centre: who.Back}
	if pose, err := made.Hang(finished.Change{}, seat); err == nil {
		in.Sitting = pose
	}
	return p.leveledRoom(room.Of(in)), nil
}

// leveledRoom returns the room with head and feet as high as the body lies in a bed that was
// cut again from the cloth as it hangs. The made bed knows nothing of the body: its round
// sections would lie uneven there by as much as the cut makes up for.
func (p *Plan) leveledRoom(r room.Room) room.Room {
	if p.Leveled == nil || p.Leveled.Round {
		return r
	}
	if hips, ok := r.Find(room.Hips, p.Design.Sleeper.Lies); ok {
		a := p.Leveled.After
		line := a.Body
		r.Head, r.Feet = line[0].Y-a.LiesAt(hips.X), line[len(line)-1].Y-a.LiesAt(hips.X)
	}
	return r
}
