package state

import (
	"errors"
	"math"

	"slingloft/outline/finished"
)

// Steadiness is how a bed takes it when the sleeper moves aside.
type Steadiness int

// The degrees of steadiness: own choices.
const (
	Stable   Steadiness = iota // turns by less than 20°
	Rocks                      // by less than 30°: worth a note
	Unsteady                   // by 30° or more, or over: a warning
)

// The turns of the bed at which its steadiness changes, rad.
const (
	StableTurn = 20 * math.Pi / 180
	RocksTurn  = 30 * math.Pi / 180
)

// Roll is how far a bed turns when the sleeper, on the back, moves aside.
type Roll struct {
	Aside float64 // of the centre of mass, mm
	Turn  float64 // of the bed, rad; where it turns over, as far as it could be followed
	Share float64 // part of the weight that the lower cord carries; 0 where it turns over
	Over  bool    // it turns over before the weight is so far aside
	How   Steadiness
}

// RollOf returns how far the bed turns when the person's centre of mass, on the back,
// moves 100 mm aside. The error is that of [finished.Hammock.Hang] where the bed is
// not found at rest even before.
func RollOf(h finished.Hammock, p Person) (Roll, error) {
	out := Roll{Aside: AtEdge}
	pose, err := h.Hang(finished.Change{}, finished.Weight{Load: p.Load, Centre: p.Back, Aside: AtEdge})
	var lost *finished.LostError
	switch {
	case errors.As(err, &lost):
		out.Turn, out.Over, out.How = math.Abs(lost.Turn), true, Unsteady
		return out, nil
	case err != nil:
		return out, err
	}
	out.Turn, out.Share = math.Abs(pose.Turn), pose.Share
	switch {
	case out.Turn >= RocksTurn:
		out.How = Unsteady
	case out.Turn >= StableTurn:
		out.How = Rocks
	}
	return out, nil
}
