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
		return room.Of(in), nil
	}
	who := p.Person()
	seat := finished.Weight{Load: who.Seated(0), Centre: who.Back}
	if pose, err := made.Hang(finished.Change{}, seat); err == nil {
		in.Sitting = pose
	}
	return room.Of(in), nil
}
