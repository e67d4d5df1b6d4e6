package design

import (
	"slices"

	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// last returns the element of an array of tables that is being read.
func last[T any](list []T) *T { return &list[len(list)-1] }

func machineRows() []row {
	m := func(d *Design) *Machine { return &d.Machine }
	length := func(key string, lo, hi float64, at func(*Machine) *float64) row {
		return length(KeyMachine.In(key), lo, hi, func(d *Design) *float64 { return at(m(d)) })
	}
	read := func(axis string, i int) []row {
		table := "calibration_" + axis + "."
		return []row{
			length(table+"drawn", 20, 20000, func(m *Machine) *float64 { return &m.Drawn[i] }).
				says("Length of a check bar along "+axis+" as it is drawn.", "100 mm", "4 in").or("100 mm").known("nominal"),
			length(table+"measured", 18, 22000, func(m *Machine) *float64 { return &m.Measured[i] }).
				says("The same bar as the machine made it; every file is then corrected along "+axis+".", "99.6 mm",
					"3.985 in").known("read", "plotted"),
		}
	}
	rows := []row{
		named(KeyMachineTool, func(d *Design) *Tool { return &d.Machine.Tool }, Tools()).
			says("Kind of machine that programs and plots are for; left out, a laser for programs and a pen for plots.", "laser",
				"laser").known("type", "kind"),
		option(KeyMachineFor, func(d *Design) *For { return &d.Machine.For }, "both", "cloth", "board").
			says("What the machine cuts; of the other stock there are no programs and plots.", "both", "both").or("both").known("cuts", "stock"),
		length("width", 100, 20000, func(m *Machine) *float64 { return &m.Width }).
			says("Reach of the bed along the sheet's width; templates are divided to fit, and what does not fit is not written.",
				"600 mm", "24 in").known("bed", "bed_width", "x"),
		length("height", 100, 20000, func(m *Machine) *float64 { return &m.Height }).
			says("Reach of the bed along the sheet's height.", "400 mm", "16 in").known("depth", "bed_height", "y"),
		toggle(KeyMachineFields, func(d *Design) *bool { return &d.Machine.Fields }).
			says("Cloth that is longer than the bed is cut in fields, a program or plot for each, lined up by crosses in the waste; "+
				"else it is not written.", "true", "true").or("false").known("tiles", "sections"),
		named(KeyMachineOrigin, func(d *Design) *Origin { return &d.Machine.Origin }, origins()).
			says("Where on the stock the machine's zero lies, the cloth or the sheet; sheet: the corner in sheet.origin. This and "+
				"the axes hold for programs and plots.", "lower-left", "lower-left").or("sheet").known("corner", "zero"),
		toggle(KeyMachineXLeft, func(d *Design) *bool { return &d.Machine.XLeft }).
			says("The machine's x counts to the left.", "true", "true").or("false").known("mirror_x", "mirror"),
		toggle(KeyMachineYDown, func(d *Design) *bool { return &d.Machine.YDown }).
			says("The machine's y counts downwards.", "true", "true").or("false").known("mirror_y"),
		toggle(KeyMachineSwapAxes, func(d *Design) *bool { return &d.Machine.Swap }).
			says("What is y on the sheet is called x on the machine, and the other way round.", "true", "true").or("false").known("swap", "axes"),
		length("kerf", 0.01, 10, func(m *Machine) *float64 { return &m.Kerf }).
			says("Width of this machine's cut; left out, sheet.kerf, or a router's cutter.", "0.2 mm", "0.008 in").known("cut_width"),
		length("cutter", 0.1, 10, func(m *Machine) *float64 { return &m.Cutter }).
			says("Diameter of a router's cutter; programs for a router need it.", "3 mm", "1/8 in").known("bit", "end_mill", "tool_diameter"),
		length("through", 0.01, 20, func(m *Machine) *float64 { return &m.Through }).
			says("How far cuts of a router or knife go below the sheet; together with sheet.thickness the depth of what is cut through.",
				"0.5 mm", "0.02 in").known("below", "spoil_board"),
		length("lead", 0.1, 50, func(m *Machine) *float64 { return &m.Lead }).
			says("Length of the way in to closed cuts, through the waste; left out, none.", "2 mm", "0.08 in").known("lead_in"),
		count(KeyMachineTabs, 0, 100, func(d *Design) *int { return &d.Machine.Tabs }).
			says("Holding tabs left on each outline.", "0", "0").or("0").known("bridges"),
		length("tab_width", 0.1, 100, func(m *Machine) *float64 { return &m.TabWidth }).
			says("Width of a holding tab; programs with tabs need it.", "2 mm", "0.08 in"),
		length("tab_height", 0.1, 100, func(m *Machine) *float64 { return &m.TabHeight }).
			says("Height of a router's tabs above the deepest pass; programs with tabs need it.", "1 mm", "0.04 in"),
		length("trail", 0.01, 10, func(m *Machine) *float64 { return &m.Trail }).
			says("How far a drag knife's tip trails behind its holder; programs for a knife need it.", "0.25 mm",
				"0.01 in").known("offset", "knife_offset"),
		measure(KeyMachineSwivel, quantity.Degrees(1), quantity.Degrees(180), func(d *Design) *quantity.Radians { return &d.Machine.Swivel }).
			says("Least turn at a corner for which a knife is turned first; left out, what keeps its tip within 0.05 mm of the line.",
				"10 deg", "10 deg"),
		length("safe_height", 0.1, 200, func(m *Machine) *float64 { return &m.Safe }).
			says("Height of travel of a router, knife or pen, above the stock and all that holds it; programs for them need it.", "5 mm",
				"0.2 in").known("safe", "travel_height"),
		measure(KeyMachinePlunge, 1, 100000, func(d *Design) *quantity.MillimetresPerMinute { return &d.Machine.Plunge }).
			says("Speed downwards of a router, knife or pen; programs for them need it.", "300 mm/min", "12 in/min").known("plunge_feed"),
		number(KeyMachineSpinUp, amount, 0.1, 60, func(d *Design) *float64 { return &d.Machine.SpinUp }).
			says("Seconds that a router's spindle takes to its speed, waited before it goes down; programs for a router need it.", "3",
				"3").known("dwell", "spindle_delay"),
		toggle(KeyMachineFrame, func(d *Design) *bool { return &d.Machine.NoFrame }).negated().
			says("Programs go round all work first with the tool off, then pause.", "true", "true").or("true"),
		option(KeyMachinePause, func(d *Design) *Pause { return &d.Machine.Pause }, "M0", "M1", "none").
			says("How programs pause after the frame. M0 waits on all controllers that we know; M1 waits only where optional stops "+
				"are on, and lean controllers pass over it.", "M0", "M0").or("M0").known("stop"),
		toggle(KeyMachineDynamicPower, func(d *Design) *bool { return &d.Machine.Dynamic }).
			says("A laser's power follows its speed (M4), on controllers that have that; else it is constant (M3).", "true",
				"true").or("false").known("dynamic", "m4"),
		option(KeyMachineAir, func(d *Design) *Air { return &d.Machine.Air }, "none", "M7", "M8").
			says("Code that turns the air assist on while there is work; M9 turns it off.", "M8", "M8").or("none").known("air_assist", "coolant"),
		option(KeyMachineController, func(d *Design) *Dialect { return &d.Machine.Controller }, "full", "lean").
			says("Words that programs have: all of RS-274, or without those that lean hobby controllers reject or pass over.", "full",
				"full").or("full").known("dialect", "firmware"),
		list(KeyMachineHeader, 20, func(d *Design) *[]string { return &d.Machine.Header }).
			says("Lines of your own at the beginning of programs, before those that set units and absolute places.", "[]",
				"[]").known("prologue", "preamble"),
		list(KeyMachineFooter, 20, func(d *Design) *[]string { return &d.Machine.Footer }).
			says("Lines of your own at the end of programs, when the tool is off and back at zero.", "[]", "[]").known("epilogue"),
		toggle(KeyMachinePenChange, func(d *Design) *bool { return &d.Machine.NoPens }).negated().
			says("The plotter changes its pens by itself; else there is a plot for each kind of work.", "true",
				"true").or("true").known("pen_changer"),
		toggle(KeyMachineInWaste, func(d *Design) *bool { return &d.Machine.InWaste }).
			says("SVG, DXF and PDF of the cloth are as large as the cloth, with crosses, check bars and title in its waste, as "+
				"programs and plots are; else these stand around it.", "true", "true").or("false").known("band"),
		toggle(KeyMachineExample, func(d *Design) *bool { return &d.Machine.Example }).
			says("The machine is invented: programs say that its values are to be tried on scrap first.", "true", "true").or("false"),
		{key: KeyMachinePaper, form: choice, choices: Papers(),
			put: func(d *Design, v any) { d.Machine.Paper = v.(string) },
			get: func(d *Design) any { return d.Machine.Paper }},
		length("overlap", 6, 50, func(m *Machine) *float64 { return &m.Overlap }).
			says("Width that neighbouring pages of a PDF have in common.", "12 mm", "1/2 in").or("12 mm"),
		length("arcs", 0.001, 1, func(m *Machine) *float64 { return &m.Arcs }).
			says("DXF has arcs, within this of the lines; left out, chords only.", "0.02 mm", "0.001 in").known("bulges"),
		length("thin", 0.001, 1, func(m *Machine) *float64 { return &m.Thin }).
			says("How far a line may be off when points of it are left out; left out, every point is kept.", "0.02 mm",
				"0.001 in").known("tolerance", "simplify"),
	}
	rows[slices.IndexFunc(rows, func(r row) bool { return r.key == KeyMachinePaper })].
		set("Paper that a PDF is divided onto; sheet: one page as large as the sheet.", WholeSheet)
	rows = append(rows, read("x", 0)...)
	rows = append(rows, read("y", 1)...)
	return append(append(rows, strokeRows()...), jobRows()...)
}

// set documents a row that was made without its constructor.
func (r *row) set(doc, usual string) { *r = r.says(doc, usual, usual).or(usual) }

func strokeRows() []row {
	s := func(d *Design) *Stroke { return last(d.Machine.Strokes) }
	return []row{
		named(KeyMachineStrokeWork, func(d *Design) *piece.Work { return &s(d).Work }, piece.Works()).
			says("Kind of work that is drawn so.", "cut-outline", "cut-outline").needed(),
		text(KeyMachineStrokeColour, 7, func(d *Design) *string { return &s(d).Colour }).
			says("Colour, as # and six hexadecimal digits; left out, our own.", "#d55e00", "#d55e00").known("color"),
		length(KeyMachineStrokeWidth, 0.01, 10, func(d *Design) *float64 { return &s(d).Width }).
			says("Width of the line; left out, our own.", "0.1 mm", "0.004 in"),
		text(KeyMachineStrokeDash, 60, func(d *Design) *string { return &s(d).Dash }).
			says("Lengths of line and gap in turn, with commas between; left out, our own.", "3 mm, 1 mm",
				"1/8 in, 1/16 in").known("dashes", "line_type"),
		toggle(KeyMachineStrokeSolid, func(d *Design) *bool { return &s(d).Solid }).
			says("Draw without dashes.", "true", "true").known("continuous"),
	}
}

func jobRows() []row {
	j := func(d *Design) *Job { return last(d.Machine.Jobs) }
	return []row{
		named(KeyMachineJobWork, func(d *Design) *piece.Work { return &j(d).Work }, piece.Works()).
			says("Kind of work that is done so.", "cut-outline", "cut-outline").needed(),
		text(KeyMachineJobMaterial, 60, func(d *Design) *string { return &j(d).Material }).
			says("Name of the cloth or sheet that this holds for; left out, for any.", "poplar plywood 3 mm", "poplar plywood 1/8 in"),
		toggle(KeyMachineJobSkip, func(d *Design) *bool { return &j(d).Skip }).
			says("Leave this work out of programs, whatever other jobs say.", "true", "true"),
		measure(KeyMachineJobFeed, 1, 100000, func(d *Design) *quantity.MillimetresPerMinute { return &j(d).Feed }).
			says("Speed along the path.", "600 mm/min", "24 in/min").known("speed"),
		number(KeyMachineJobPower, amount, 0.001, 100000, func(d *Design) *float64 { return &j(d).Power }).
			says("The S word of programs: power of a laser, speed of a spindle, in the machine's own measure.", "800", "800").known("s",
			"rpm", "spindle"),
		optional(count(KeyMachineJobPasses, 1, 100, func(d *Design) *int { return &j(d).Passes })).
			says("How often each path is followed.", "2", "2"),
		length(KeyMachineJobDepth, 0.001, 100, func(d *Design) *float64 { return &j(d).Depth }).
			says("Depth of the last pass, of a router or knife.", "3 mm", "1/8 in"),
		optional(count(KeyMachineJobPen, 1, 255, func(d *Design) *int { return &j(d).Pen })).
			says("Pen of a plotter.", "1", "1").known("tool"),
	}
}

// optional leaves a whole number that was not given, 0, unwritten.
func optional(r row) row {
	get := r.get
	r.get = func(d *Design) any {
		if v := get(d); v != 0 {
			return v
		}
		return nil
	}
	return r
}

// machineLists returns the arrays of tables in [machine].
func machineLists() []repeated {
	return []repeated{
		{key: KeyMachineStroke, limit: 7, doc: "How a kind of work is drawn, where a machine tells jobs apart by colour or line.",
			grow:  func(d *Design) { d.Machine.Strokes = append(slices.Clip(d.Machine.Strokes), Stroke{}) },
			count: func(d *Design) int { return len(d.Machine.Strokes) },
			pick: func(d Design, i int) Design {
				d.Machine.Strokes = d.Machine.Strokes[i : i+1]
				return d
			}},
		{key: KeyMachineJob, limit: 100, doc: "How a kind of work is done, in any material or in one. Programs do nothing that no " +
			"job gives feed and power (laser, router) and depth (router, knife, pen) for.",
			grow:  func(d *Design) { d.Machine.Jobs = append(slices.Clip(d.Machine.Jobs), Job{}) },
			count: func(d *Design) int { return len(d.Machine.Jobs) },
			pick: func(d Design, i int) Design {
				d.Machine.Jobs = d.Machine.Jobs[i : i+1]
				return d
			}},
	}
}
