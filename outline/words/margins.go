package words

import (
	"fmt"
	"math"

	"slingloft/outline/margin"
	"slingloft/outline/quantity"
)

// Margins says what belongs to the checks of strength.
type Margins struct {
	Parts map[margin.Part]string
	Cases map[margin.CaseKind]string
	Check string // a part under a case, in this order
	Bases map[margin.BasisKind]string
	// Obstacles may hold how far the apexes lie too low.
	Obstacles map[margin.ObstacleKind]string
	Sources   map[margin.SourceKind]string // a bar's holds where its values come from
	BarSheet  string                       // which is this, where they come from its data sheet
	Notes     map[margin.Note]string
}

// CheckName names a check.
func (m Margins) CheckName(c margin.Check) string {
	return fmt.Sprintf(m.Check, m.Parts[c.Part], m.Cases[c.Case])
}

// Basis says how the loads of a case are found, with lengths in a style.
func (m Margins) Basis(b margin.Basis, style quantity.Style) string {
	text := m.Bases[b.Kind]
	if b.Kind == margin.WeightShifted {
		return fmt.Sprintf(text, rounded(style).Length(b.Shift), b.Turn*180/math.Pi, b.Share)
	}
	return text
}

// Obstacle says why a case has no loads; nothing where it has them.
func (m Margins) Obstacle(o margin.Obstacle, style quantity.Style) string {
	text := m.Obstacles[o.Kind]
	if o.Kind == margin.ApexesLow {
		return fmt.Sprintf(text, rounded(style).Length(o.Below))
	}
	return text
}

// Source says where a capacity comes from.
func (m Margins) Source(s margin.Source) string {
	text := m.Sources[s.Kind]
	switch s.Kind {
	case margin.Column, margin.Secant, margin.EndFace:
		from := s.Bar
		if from == "" {
			from = m.BarSheet
		}
		return fmt.Sprintf(text, from)
	}
	return text
}

// NotesOf says remarks.
func (m Margins) NotesOf(notes []margin.Note) []string {
	var out []string
	for _, n := range notes {
		out = append(out, m.Notes[n])
	}
	return out
}

// rounded returns a style in whole millimetres, for what is told rather than marked.
func rounded(s quantity.Style) quantity.Style {
	s.Decimals = 0
	return s
}

func englishMargins() Margins {
	return Margins{
		Parts: identified(margin.PartCount),
		Cases: identified(margin.CaseKindCount),
		Check: "%s, %s",
		Bases: map[margin.BasisKind]string{
			margin.Equilibrium: "equilibrium of the hung shape under the sleeper in place",
			margin.OneCord: "whole weight on one side cord at mid-bay, feet off the ground: the bed rolls until that cord hangs " +
				"straight below the hooks; the less favourable of no hang lines and very long ones",
			margin.OneCordBraced: "whole weight on one side cord at mid-bay, feet off the ground: the bed rolls until that cord hangs " +
				"straight below the hooks; the less favourable of no hang lines and very long ones; " +
				"the other side's cord is taut and loads the bars",
			margin.WeightShifted: "weight %s off the middle: the bed turns by %.0f°, the lower side carries %.2f times its part lying; " +
				"cords and bars are taken to keep their shape",
			margin.TurnsOver: "the bed turns over with a sleeper on the side",
		},
		Obstacles: map[margin.ObstacleKind]string{
			margin.NoPosture: "no posture is found in which the other side's cord is taut",
			margin.ApexesLow: "the line through the apexes lies %s below the centre of mass of a sleeper on the side",
		},
		Sources: map[margin.SourceKind]string{
			margin.CordSheet: "breaking strength from the cord's data sheet × splice efficiency; " +
				"required ratio on the static pull, Cordage Institute CI 1401 (5 to 12)",
			margin.HookSheet:  "breaking strength of hook and support from their data sheet; required ratio as for cord",
			margin.Column:     "Euler or Johnson by slenderness, pinned ends; modulus and yield from %s; required ratio own choice",
			margin.Secant:     "secant formula for the tip's eccentricity; modulus and yield from %s; required ratio own choice",
			margin.EndFace:    "whole end face of the bar at yield; modulus and yield from %s; required ratio own choice",
			margin.ClothSheet: "strip strength from the cloth's data sheet; required ratio own choice",
			margin.SeamFormula: "stitches per length × rows × thread strength × seam factor, thread from its data sheet, " +
				"factor from a test seam; required ratio own choice",
		},
		BarSheet: "the bar's data sheet",
		Notes: map[margin.Note]string{
			margin.CordsRunFree:     "pulls hold for cords that run freely in their channels; friction changes the tension by some per cent",
			margin.BarsStraight:     "bars are checked as straight columns without their own weight and without what a knee or hand puts on them",
			margin.ThrustOnAxis:     "bars: the thrust is taken to act on the axis; give bar.eccentricity for tips that push off it",
			margin.ShouldersGuessed: "rolling: the sleeper's shoulder breadth is estimated",
		},
	}
}

func englishCautions() []string {
	return []string{
		"Hang it low at first, over soft ground, and load it little by little with a hand on something firm.",
		"Look over cords, splices, seams, bars and hooks before each use; a part that is cut, fuzzed, bent or stretched is done.",
		"It carries one resting person. It is no gear for lifting, climbing, rescue or swinging.",
		"Trees and posts must be sound. For anchors in a building ask a qualified person and keep to the local rules.",
		"Children stay out of it without an adult beside them; cords and loose cloth can go round a neck. Take it down when it is not in use.",
		"Laser and hot knife: cut only materials that are known to be safe for it, with air drawn off, " +
			"and never leave it alone; molten edges burn skin.",
		"The figures are computed from the design and from data sheets. They replace no test of your own splices and seams.",
	}
}
