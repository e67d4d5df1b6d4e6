package export

import (
	"fmt"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// ByNameOnly reports whether a tool does a line only where a job asks for it by its work
// and its material: marks on cloth, which would be burnt or cut into it, slits there,
// which are slit when their edges are bound, and a knife's marks anywhere. A pen may
// mark all.
func ByNameOnly(t design.Tool, stock piece.Stock, l piece.Line) bool {
	switch {
	case t == design.Pen:
		return false
	case Through(l.Work):
		return stock == piece.Cloth && Slit(l)
	}
	return stock == piece.Cloth || t == design.Knife
}

// Through reports whether work is cut through the material.
func Through(w piece.Work) bool { return w == piece.CutInside || w == piece.CutOut }

// Slit reports whether a line is a cut inside of a piece that takes nothing out.
func Slit(l piece.Line) bool { return l.Work == piece.CutInside && !l.Closed }

// LeftOut says of kinds of work and of slits that they wait for a job which asks for them.
func LeftOut(t design.Tool, material string, works []piece.Work, slits bool) []Note {
	var out []Note
	if len(works) > 0 {
		out = append(out, Tell(OnlyCuts, works, t, material))
	}
	if slits {
		out = append(out, Tell(SlitsWait, material))
	}
	return out
}

// Bed is the reach of a machine along the sheet's width and height, mm; 0: not given.
type Bed struct{ Width, Height float64 }

// ReachError says that a drawing needs more than a machine reaches from its zero.
type ReachError struct {
	Stock piece.Stock // that the drawing is cut from
	Name  string      // of the drawing
	Need  geom.Point  // along the sheet's width and height, mm
	Bed   Bed
}

func (e *ReachError) Error() string {
	return fmt.Sprintf("%s takes %.1f × %.1f mm, the machine reaches %g × %g mm", e.Name, e.Need.X, e.Need.Y, e.Bed.Width, e.Bed.Height)
}

// Wide reports whether the drawing needs more than there is along the sheet's width.
func (e *ReachError) Wide() bool { return e.Bed.Width > 0 && e.Need.X > e.Bed.Width+noise }

// High reports the same of its height.
func (e *ReachError) High() bool { return e.Bed.Height > 0 && e.Need.Y > e.Bed.Height+noise }

// Reach returns a [ReachError] where the way of a tool, in mm on a plain drawing, and
// the zero of its numbers do not lie on the bed together.
func (b Bed) Reach(d Drawing, a Axes, way geom.Box) error {
	if way.Empty() {
		return nil
	}
	zero := a.Zero(d.Width, d.Height)
	box := way.With(zero)
	e := &ReachError{Name: d.Name, Stock: d.Stock, Need: geom.Pt(box.Width(), box.Height()), Bed: b}
	if e.Wide() || e.High() {
		return e
	}
	return nil
}

// Room says what had no room in the drawing's waste, nothing where all had.
func (d Drawing) Room() []Note {
	if len(d.NoRoom) == 0 {
		return nil
	}
	return []Note{Tell(NoRoomInWaste, d.NoRoom)}
}
