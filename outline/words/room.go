package words

import (
	"slingloft/outline/design"
	"slingloft/outline/room"
)

// Room says what belongs to the room in the bed.
type Room struct {
	Parts map[room.Part]string
	Lies  map[design.Posture]string
}

func englishRoom() Room {
	return Room{
		Parts: identified(room.PartCount),
		Lies:  map[design.Posture]string{design.OnBack: "on the back", design.OnSide: "on the side"},
	}
}
