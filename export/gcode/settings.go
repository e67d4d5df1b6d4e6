// Package gcode writes drawings as programs in RS-274 for lasers, routers and
// drag-knife cutters, and reads such programs back. Words and their meaning are
// those of the NIST RS274/NGC interpreter, version 3 (Kramer, Proctor and Messina,
// NISTIR 6556, 2000).
//
// Work is done kind by kind in the order of [piece.Works]: registration,
// lettering, marks, folds, then what is cut inside, then outlines, so that nothing
// is cut loose before all else on it is done. Within a kind the paths are ordered
// for short travel. Cuts are made beside the line, by half the kerf into the
// waste: outside of outlines, inside of holes. They begin in the waste as well,
// at the end of a short lead-in. Coordinates are in mm with four decimals, or
// in inches with six where the options say so; the
// zero is where [export.Axes] says and, in height, the stock's upper face.
package gcode

import (
	"math"
	"strconv"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// Job is how one kind of work is done.
type Job struct {
	Skip   bool    // leave this kind of work out
	Named  bool    // asked for by its own name and that of the material
	Feed   float64 // speed along the path, mm/min; 0: not given
	Power  float64 // the S word: power of a laser, speed of a spindle; no matter for a knife; 0: not given
	Passes int     // how often each path is followed
	Depth  float64 // of the last pass below the upper face, mm; no matter for a laser; 0: not given
}

// Settings is how a machine works, for one material. [Defaults] is the place to
// begin.
type Settings struct {
	Tool    design.Tool
	Of      export.Material // what is worked
	Jobs    []Job           // by kind of work, in the order of [piece.Works]
	Example bool            // an invented machine: its values are to be tried first

	Bed  export.Bed
	Kerf float64 // width of the cut, mm; 0: not given, cuts on the line
	Lead float64 // length of the lead-in to closed cuts, mm; 0 for none

	Tabs      int     // holding tabs on each outline
	TabWidth  float64 // of a tab that is left, mm
	TabHeight float64 // above the deepest pass, mm; no matter for a laser, which leaves all

	Cutter  float64 // diameter of a router's cutter, mm; 0: not given
	Through float64 // how far cuts go below the sheet, mm; 0: not given
	SpinUp  float64 // what a router's spindle takes to its speed, s; 0: not given
	Trail   float64 // how far a knife's tip trails behind its holder, mm; 0: not given
	Swivel  float64 // least turn at a corner for which the knife is turned first, rad

	Safe   float64 // height of travel, mm; no matter for a laser; 0: not given
	Plunge float64 // speed downwards, mm/min; no matter for a laser; 0: not given
	Frame  bool    // go round all work once with the tool off, then pause

	Pause      design.Pause
	Dynamic    bool // a laser's power follows its speed
	Air        design.Air
	Controller design.Dialect
	Header     []string // lines of the owner's own, as a design has them
	Footer     []string

	inches bool // lengths in messages are in inches, as those of the program
}

// said returns a length, mm, as messages have it.
func (s Settings) said(mm float64) string {
	if s.inches {
		mm /= mmPerInch
	}
	return strconv.FormatFloat(math.Round(mm*1000)/1000, 'f', -1, 64) + " " + s.unit()
}

// unit names the unit of lengths in messages and in the program.
func (s Settings) unit() string {
	if s.inches {
		return "in"
	}
	return "mm"
}

// Defaults returns a tool's settings where nothing is given. No value of the machine is
// among them: what burns or cuts, and how, is for the machine's owner to say.
func Defaults(t design.Tool) Settings {
	s := Settings{Tool: t, Frame: true, Jobs: make([]Job, len(piece.Works()))}
	for i := range s.Jobs {
		s.Jobs[i].Passes = 1
	}
	return s
}

// job returns how a kind of work is done.
func (s Settings) job(w piece.Work) Job { return s.Jobs[w] }

// Validate reports the first setting that no machine could work with.
func (s Settings) Validate() error {
	if s.Tool < design.Laser || s.Tool > design.Pen {
		return export.Refuse(export.ToolUnknown, s.Tool)
	}
	if len(s.Jobs) != len(piece.Works()) {
		return export.Refuse(export.JobsOff, len(s.Jobs), len(piece.Works()))
	}
	for _, w := range piece.Works() {
		j := s.job(w)
		if err := firstOutside(
			bound{design.KeyMachineJobFeed, j.Feed, 0, 100_000, "mm/min"}, bound{design.KeyMachineJobPower, j.Power, 0, 100_000, ""},
			bound{design.KeyMachineJobPasses, float64(j.Passes), 1, 100, ""}, bound{design.KeyMachineJobDepth, j.Depth, 0, 100, "mm"},
		); err != nil {
			return export.Refuse(export.AtKey, w, err)
		}
	}
	if err := firstOutside(
		bound{design.KeyMachine.In("kerf"), s.Kerf, 0, 20, "mm"}, bound{design.KeyMachine.In("lead"), s.Lead, 0, 50, "mm"},
		bound{design.KeyMachineTabs, float64(s.Tabs), 0, 100, ""}, bound{design.KeyMachineTabWidth, s.TabWidth, 0, 100, "mm"},
		bound{design.KeyMachineTabHeight, s.TabHeight, 0, 100, "mm"}, bound{design.KeyMachineTrail, s.Trail, 0, 10, "mm"},
		bound{design.KeyMachineSwivel, s.Swivel, 0, math.Pi, "rad"}, bound{design.KeyMachineSafeHeight, s.Safe, 0, 200, "mm"},
		bound{design.KeyMachinePlunge, s.Plunge, 0, 100_000, "mm/min"}, bound{design.KeyMachineCutter, s.Cutter, 0, 20, "mm"},
		bound{design.KeyMachineThrough, s.Through, 0, 20, "mm"}, bound{design.KeyMachineSpinUp, s.SpinUp, 0, 60, "s"},
	); err != nil {
		return err
	}
	if s.Tool == design.Knife && s.Tabs > 0 {
		return export.Refuse(export.TabsByKnife)
	}
	return nil
}

type bound struct {
	key             design.Key
	value, low, top float64
	unit            string
}

func firstOutside(bounds ...bound) error {
	for _, b := range bounds {
		if !export.Inside(b.value, b.low, b.top) {
			return export.Refuse(export.SettingOff, b.key, b.value, b.low, b.top, b.unit)
		}
	}
	return nil
}
