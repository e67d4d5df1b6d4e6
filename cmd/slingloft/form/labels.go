package form

import "slingloft/outline/design"

// worded are the words of a table's fields, by the names of its keys.
type worded map[design.Key]map[string]string

// englishLabels returns what each field is called: in one word or a few, as who sews would ask
// for it. A key keeps its name in the file; a row of the design needs a word here.
func englishLabels() map[design.Key]string {
	out := map[design.Key]string{}
	for _, some := range []worded{
		englishSleeper(), englishBed(), englishSewn(), englishHung(), englishBoard(), englishMachine(), englishCords(),
		englishBeside(),
	} {
		for table, words := range some {
			for name, text := range words {
				out[table.In(name)] = text
			}
		}
	}
	return out
}

// englishCords are the words of the cords, which have the same keys.
func englishCords() worded {
	out := worded{}
	for table, cord := range map[design.Key]string{
		design.KeyCordSide: "Side cord", design.KeyCordLeg: "Leg cord", design.KeyHangLine: "Hang line",
	} {
		out[table] = map[string]string{}
		for name, of := range map[string]string{"use": "from the shelf", "name": "name", "diameter": "diameter", "strength": "breaking strength",
			"stiffness": "stiffness", "linear_density": "mass per length", "price": "price per metre"} {
			out[table][name] = cord + ": " + of
		}
	}
	return out
}

func englishBeside() worded {
	return worded{
		design.KeySack: {
			"base": "Bottom of the sack", "volume": "Volume of the packed bed", "density": "Mass per volume, packed", "width": "Diameter or width",
			"hem": "Hem of the drawcord", "allowance": "Allowance at the sacks' seams", "bars": "A sack for the bars",
			"slack": "Room around the bars",
		},
		design.KeySackCloth: ownCloth("Sacks' cloth"),
		design.KeyTarp: {
			"shape": "Shape of the tarp", "ridge": "Length of its ridge", "width": "Width as it lies flat", "side": "Side edge of a hexagon",
			"curve": "Curve of hollow edges", "hollow": "Hollow of every edge", "ridge_hollow": "Hollow of the ridge", "join": "Where it is joined",
			"pitch": "Slope of its halves", "rise": "Ridge above the higher apex", "rain": "Driven rain to keep off", "hem": "Hem round the tarp",
			"allowance": "Allowance at the tarp's joins", "patch": "Patches at its corners", "loop": "Tape of each loop",
		},
		design.KeyTarpCloth: ownCloth("Tarp's cloth"),
		design.KeyLining: {
			"place": "Where the lining lies", "pad_thickness": "Thickness of the pad", "pad_width": "Width of the pad",
			"pad_length": "Length of the pad",
			"pad_shift":  "Pad towards the foot, from mid-bay", "play": "Room beyond the pad", "opening": "Where the pad goes in",
		},
		design.KeyCover: {
			"height": "Cover's ridge above the bed", "edge": "Lower edge of the cover", "hem": "Hem at its lower edge", "lap": "Loose edge below the cords",
			"allowance": "Allowance at the cover's seams", "zip": "Where it opens", "zip_length": "Length of the zip", "zip_up": "Zip above the cord",
			"zip_width": "Width of the zip", "ridge": "What holds the ridge", "travel": "Give of the ridge's elastic", "flattest": "Flattest hang lines",
			"strength": "Strength of the ridge's cord",
			"loop":     "Tape of each ridge loop", "mesh": "From hole to hole",
		},
		design.KeyCoverCloth:  ownCloth("Cover's net"),
		design.KeyLiningCloth: ownCloth("Lining's cloth"),
	}
}

// ownCloth returns what the fields of a cloth beside the bed's are called.
func ownCloth(what string) map[string]string {
	out := map[string]string{}
	for name, of := range map[string]string{"use": "from the shelf", "name": "name", "width": "usable width", "areal_density": "mass per area",
		"one_way": "has a direction", "gap": "gap between pieces", "selvedge_strip": "selvedge strip", "price": "price per metre"} {
		out[name] = what + ": " + of
	}
	return out
}

func englishSleeper() worded {
	return worded{
		"": {
			"name": "Name of the design", "shelf": "File of your shelf",
		},
		"sleeper": {
			"stature": "Height of the sleeper", "mass": "Weight of the sleeper", "crown": "Top of the head, from the head bar",
			"shoulders": "Shoulder breadth", "lies": "Lies on the",
		},
		"load": {
			"model": "Weight spread as", "from": "Even weight from", "to": "Even weight to",
		},
		"guest": {
			"name": "Who it is", "stature": "Height", "mass": "Weight", "crown": "Top of the head, from the head bar",
			"shoulders": "Shoulder breadth", "lies": "Lies on the",
		},
	}
}

func englishBed() worded {
	return worded{
		"bed": {
			"span": "Length from bar to bar", "head_bar": "Head bar", "foot_bar": "Foot bar", "head_drop": "Depth at the head bar",
			"head_girth": "Cloth across at the head bar", "side_depth": "Side depth", "hang_angle": "Hang angle at the head",
			"foot_hang_angle": "Hang angle at the foot", "thrust": "Pull of one side", "foot_drop": "Depth at the foot bar",
			"foot_girth": "Cloth across at the foot bar", "level_apexes": "Apexes at one height",
			"level_anchors": "Anchors at one height", "same_wall_angle": "Same wall angle at both bars",
			"head_tail": "Tail past the head bar", "foot_tail": "Tail past the foot bar", "head_leg": "Leg at the head",
			"foot_leg": "Leg at the foot", "lift": "Slope of the bed", "side_curve": "Curve of the sides", "cut": "Cut of the tails",
			"level": "Made level by", "end_girth": "Cloth across at a straight tail's end", "compensate": "Cut shorter by the stretch",
			"underbody_radius": "Round under the sleeper", "head_radius": "Round at the head bar", "seat_radius": "Round at mid-bay",
			"foot_radius": "Round at the foot bar",
		},
		"splice": {
			"bury": "Bury", "taper": "Taper", "tip_gap": "Tip gap", "contraction": "Contraction", "eye": "Loop of an eye",
			"eye_loss": "Cord lost in an eye", "eye_bury": "Bury of an eye", "efficiency": "Strength a splice keeps",
			"waste": "Cord for trials and ends", "whole_loop": "One loop of cord for all",
		},
		design.KeySpliceTrial: {
			"before": "Length before", "after": "Length after", "buried": "Length buried", "crossing": "With an eye's crossing",
		},
		"bar": {
			"use": "Bar from the shelf", "name": "Name of the bars", "material": "Material", "outer_diameter": "Outer diameter",
			"wall": "Wall of the tube", "modulus": "Modulus of elasticity", "yield": "Yield strength", "density": "Density",
			"tip_reach": "Reach of a tip", "tip_diameter": "Thickness of a tip", "eccentricity": "Cord off the bar's axis",
			"joint": "Overlap of a joint", "joint_play": "Play in the joint", "hole": "Hole across the bar", "stock": "Length as sold",
			"price": "Price of that length",
		},
	}
}

func englishSewn() worded {
	return worded{
		"cloth": {
			"use": "Cloth from the shelf", "name": "Name of the cloth", "width": "Usable width", "areal_density": "Mass per area",
			"one_way": "Has a direction", "warp_stiffness": "Stiffness along the roll", "weft_stiffness": "Stiffness across the roll",
			"strip_strength": "Strength of a strip", "locking_angle": "Largest shear", "gap": "Gap between pieces",
			"selvedge_strip": "Selvedge strip", "joins": "Lengthwise joins", "price": "Price per metre",
		},
		design.KeyClothFlaw: {
			"from": "From, along the roll", "to": "To, along the roll", "low": "From, across the roll", "high": "To, across the roll",
		},
		"channel": {
			"kind": "Kind of channel", "depth": "Depth of the channel", "turn_under": "Turned under", "opening": "Opening at a tip gap",
			"presser_foot": "Stitch line from the edge",
		},
		"cap": {
			"kind": "Kind of end cap", "hollow": "Dip of a cap's top edge", "hem": "Hem of a cap",
		},
		"seam": {
			"side_allowance": "Allowance at the sides", "end_allowance": "Allowance at the ends",
			"cap_allowance": "Allowance of the caps", "join_allowance": "Allowance at joins", "tolerance": "Difference that may remain",
			"tolerance_ratio": "Or as part of the seam", "stitch_length": "Stitch length", "rows": "Rows of stitches",
			"row_spacing": "Between the rows", "needle": "Needle", "use_thread": "Thread from the shelf", "thread": "Thread",
			"thread_strength": "Strength of the thread", "factor": "Part that a seam holds",
			"perforation": "Strength kept along needle holes",
		},
	}
}

func englishHung() worded {
	return worded{
		"hang": {
			"distance": "Between the anchors", "height": "Height within reach", "bed": "Bed above the ground",
			"shelter": "Ridge of the shelter", "fastening": "Hang lines made fast", "travel": "Travel of a line",
			"strap": "Length of the strap", "use_hook": "Hook from the shelf", "hook_diameter": "Thickness of the hook",
			"hook_strength": "Strength of the hook",
		},
		"hung": {
			"head_left": "Head bar, left tip", "head_right": "Head bar, right tip", "foot_left": "Foot bar, left tip",
			"foot_right": "Foot bar, right tip", "middle": "Bottom at mid-bay", "head_apex": "Head apex", "foot_apex": "Foot apex",
			"under": "What lay in it", "mass": "Weight that lay in it", "from": "The weight from", "to": "The weight to",
			"aside": "Off the centre line",
		},
		"accuracy": {
			"marking": "A mark is off by", "reading": "A reading is off by", "scatter": "Scatter of the contraction",
			"set": "Growth under the first load", "first_load": "First load", "nodes": "Nodes are", "bar": "A bar is off by",
			"sewing": "A seam is off by", "rigging": "A hang line is off by", "height": "A height is off by",
			"level": "May lie off level by",
		},
		"margin": {
			"cord": "Cords", "bar": "Bars", "cloth": "Cloth", "seam": "Seams", "dynamic": "For sitting down and turning over",
			"accepted": "Accepted although not met",
		},
	}
}

func englishBoard() worded {
	return worded{
		"sheet": {
			"name": "Name of the sheets", "width": "Width of a sheet", "height": "Height of a sheet", "origin": "Origin of the machine",
			"kerf": "Width of the cut", "gap": "Gap between parts", "edge_strip": "Kept free along the edges", "thickness": "Thickness",
			"price": "Price of a sheet",
		},
		"template": {
			"tick": "Step of the ticks", "whole": "Whole side curve", "gauges": "Gauges too", "backing": "Width beside the curve",
			"letter": "Height of lettering",
		},
		"extra": {
			"file": "File of the outline", "name": "What it is", "count": "How many", "stock": "Cut from", "as": "Taken as",
			"free_grain": "May be turned", "unit": "Length of a unit", "x": "Keep-out lies at, along", "y": "Keep-out lies at, across",
		},
		"output": {
			"units": "Units", "fraction": "Finest fraction", "scale": "Scale of drawings",
		},
	}
}

func englishMachine() worded {
	return worded{
		"machine": {
			"tool": "Kind of machine", "for": "It cuts", "width": "Reach along x", "height": "Reach along y",
			"fields": "Long cloth in fields", "origin": "Zero lies at", "x_left": "x counts to the left",
			"y_down": "y counts downwards", "swap_axes": "x and y are swapped", "kerf": "Width of its cut",
			"cutter": "Diameter of the cutter", "through": "Cuts below the sheet", "lead": "Way in to cuts", "tabs": "Holding tabs",
			"tab_width": "Width of a tab", "tab_height": "Height of a tab", "trail": "Trail of the knife",
			"swivel": "Turn at corners from", "safe_height": "Height of travel", "plunge": "Speed downwards",
			"spin_up": "Seconds to spin up", "frame": "Frame first", "pause": "Pause by", "dynamic_power": "Power follows speed",
			"air": "Air assist", "controller": "Controller", "header": "Lines at the beginning", "footer": "Lines at the end",
			"pen_change": "Changes its pens", "in_waste": "Marks in the waste", "example": "Invented machine",
			"paper": "Paper of PDF files", "overlap": "Overlap of pages", "arcs": "Arcs within", "thin": "Points left out within",
		},
		design.KeyMachineCalibrationX: {
			"drawn": "Check bar along x, drawn", "measured": "Check bar along x, measured",
		},
		design.KeyMachineCalibrationY: {
			"drawn": "Check bar along y, drawn", "measured": "Check bar along y, measured",
		},
		design.KeyMachineStroke: {
			"work": "Work", "colour": "Colour", "width": "Width of the line", "dash": "Dashes", "solid": "Without dashes",
		},
		design.KeyMachineJob: {
			"work": "Work", "material": "Material", "skip": "Leave out", "feed": "Speed", "power": "Power or speed of the spindle",
			"passes": "Passes", "depth": "Depth", "pen": "Pen",
		},
	}
}
