package figures

// The columns of the room's table.
const (
	roomPart = iota
	roomLies
	roomOpening
	roomBreadth
	roomSpare
	roomSqueeze
	roomPressure
	roomFloor
	roomColumns
)

// RoomWords says what belongs to the room in the bed.
type RoomWords struct {
	Title       string              // unit
	Columns     [roomColumns]string // what presses: unit of forces; its pressure: unit
	Out         string              // the body does not lie in the cloth
	Cannot      string              // why the bed does not rest
	Rise        string              // under the crown, under the soles
	OverFace    string              // length
	Upright     string              // length
	Under, Over string              // length
	How         string              // what the figures mean
}

func englishRoom() RoomWords {
	return RoomWords{
		Title: "Room for the sleeper (%s)",
		Columns: [roomColumns]string{roomPart: "part", roomLies: "lying", roomOpening: "between the cords", roomBreadth: "breadth",
			roomSpare: "to spare", roomSqueeze: "pressed from each side, %s", roomPressure: "there, %s", roomFloor: "floor higher"},
		Out:      "not in the cloth",
		Cannot:   "the bed is not found at rest: %s",
		Rise:     "the bed bottom lies %s higher under the crown and %s under the soles than under the hips",
		OverFace: "the head bar stands %s above the face under it",
		Upright:  "sitting up at mid-bay the crown stays %s off the nearer bar",
		Under:    "and %s under the line from apex to apex",
		Over:     "and stands %s over the line from apex to apex",
		How: "floor higher is how far the cloth under the part lies above where the bed's round section has it; minus: it gives way. " +
			"Breadths and depths that are not given are estimated from the survey's mean body; bodies differ. " +
			"Knees are drawn up at a right angle: where they lack room they are drawn up less",
	}
}
