package form

import "slingloft/outline/design"

// englishLabels returns what each field is called: in one word or a few, as who sews would ask
// for it. A key keeps its name in the file; a row of the design needs a word here.
func englishLabels() map[design.Key]string {
	out := map[design.Key]string{
		"name": "Name of the design", "shelf": "File of your shelf",
		"sleeper.stature": "Height of the sleeper", "sleeper.mass": "Weight of the sleeper", "sleeper.crown": "Top of the head, from the head bar",
		"sleeper.shoulders": "Shoulder breadth", "sleeper.lies": "Lies on the", "load.model": "Weight spread as", "load.from": "Even weight from", "load.to": "Even weight to",
		"guest.name": "Who it is", "guest.stature": "Height", "guest.mass": "Weight", "guest.crown": "Top of the head, from the head bar",
		"guest.shoulders": "Shoulder breadth", "guest.lies": "Lies on the",
	}
	for _, more := range []map[design.Key]string{englishBedLabels(), englishSewnLabels(), englishHungLabels(), englishBoardLabels(), englishMachineLabels()} {
		for key, text := range more {
			out[key] = text
		}
	}
	for table, text := range map[design.Key]string{design.KeyCordSide: "Side cord", design.KeyCordLeg: "Leg cord", design.KeyHangLine: "Hang line"} {
		for name, of := range map[string]string{"use": "from the shelf", "name": "name", "diameter": "diameter", "strength": "breaking strength",
			"stiffness": "stiffness", "linear_density": "mass per length", "price": "price per metre"} {
			out[table.In(name)] = text + ": " + of
		}
	}
	return out
}

func englishBedLabels() map[design.Key]string {
	return map[design.Key]string{
		"bed.span": "Length from bar to bar", "bed.head_bar": "Head bar", "bed.foot_bar": "Foot bar",
		"bed.head_drop": "Depth at the head bar", "bed.head_girth": "Cloth across at the head bar",
		"bed.side_depth": "Side depth", "bed.hang_angle": "Hang angle at the head", "bed.foot_hang_angle": "Hang angle at the foot", "bed.thrust": "Pull of one side",
		"bed.foot_drop": "Depth at the foot bar", "bed.foot_girth": "Cloth across at the foot bar",
		"bed.level_apexes": "Apexes at one height", "bed.level_anchors": "Anchors at one height", "bed.same_wall_angle": "Same wall angle at both bars",
		"bed.head_tail": "Tail past the head bar", "bed.foot_tail": "Tail past the foot bar", "bed.head_leg": "Leg at the head", "bed.foot_leg": "Leg at the foot",
		"bed.lift": "Slope of the bed", "bed.side_curve": "Curve of the sides", "bed.cut": "Cut of the tails", "bed.end_girth": "Cloth across at a straight tail's end",
		"bed.compensate": "Cut shorter by the stretch", "bed.underbody_radius": "Round under the sleeper",
		"bed.head_radius": "Round at the head bar", "bed.seat_radius": "Round at mid-bay", "bed.foot_radius": "Round at the foot bar",
		"splice.bury": "Bury", "splice.taper": "Taper", "splice.tip_gap": "Tip gap", "splice.contraction": "Contraction", "splice.eye": "Loop of an eye",
		"splice.eye_loss": "Cord lost in an eye", "splice.eye_bury": "Bury of an eye", "splice.efficiency": "Strength a splice keeps", "splice.waste": "Cord for trials and ends",
		"splice.whole_loop": "One loop of cord for all", "splice.trial.before": "Length before", "splice.trial.after": "Length after",
		"splice.trial.buried": "Length buried", "splice.trial.crossing": "With an eye's crossing",
		"bar.use": "Bar from the shelf", "bar.name": "Name of the bars", "bar.material": "Material", "bar.outer_diameter": "Outer diameter", "bar.wall": "Wall of the tube",
		"bar.modulus": "Modulus of elasticity", "bar.yield": "Yield strength", "bar.density": "Density", "bar.tip_reach": "Reach of a tip", "bar.tip_diameter": "Thickness of a tip",
		"bar.eccentricity": "Cord off the bar's axis", "bar.joint": "Overlap of a joint", "bar.joint_play": "Play in the joint", "bar.hole": "Hole across the bar",
		"bar.stock": "Length as sold", "bar.price": "Price of that length",
	}
}

func englishSewnLabels() map[design.Key]string {
	return map[design.Key]string{
		"cloth.use": "Cloth from the shelf", "cloth.name": "Name of the cloth", "cloth.width": "Usable width", "cloth.areal_density": "Mass per area",
		"cloth.one_way": "Has a direction", "cloth.warp_stiffness": "Stiffness along the roll", "cloth.weft_stiffness": "Stiffness across the roll",
		"cloth.strip_strength": "Strength of a strip", "cloth.locking_angle": "Largest shear", "cloth.gap": "Gap between pieces",
		"cloth.selvedge_strip": "Selvedge strip", "cloth.joins": "Lengthwise joins", "cloth.price": "Price per metre",
		"cloth.flaw.from": "From, along the roll", "cloth.flaw.to": "To, along the roll", "cloth.flaw.low": "From, across the roll", "cloth.flaw.high": "To, across the roll",
		"channel.kind": "Kind of channel", "channel.depth": "Depth of the channel", "channel.turn_under": "Turned under", "channel.opening": "Opening at a tip gap",
		"channel.presser_foot": "Stitch line from the edge", "cap.kind": "Kind of end cap", "cap.hollow": "Dip of a cap's top edge", "cap.hem": "Hem of a cap",
		"seam.side_allowance": "Allowance at the sides", "seam.end_allowance": "Allowance at the ends", "seam.cap_allowance": "Allowance of the caps",
		"seam.join_allowance": "Allowance at joins", "seam.tolerance": "Difference that may remain", "seam.tolerance_ratio": "Or as part of the seam",
		"seam.stitch_length": "Stitch length", "seam.rows": "Rows of stitches", "seam.row_spacing": "Between the rows", "seam.needle": "Needle",
		"seam.use_thread": "Thread from the shelf", "seam.thread": "Thread", "seam.thread_strength": "Strength of the thread", "seam.factor": "Part that a seam holds",
		"seam.perforation": "Strength kept along needle holes",
	}
}

func englishHungLabels() map[design.Key]string {
	return map[design.Key]string{
		"hang.distance": "Between the anchors", "hang.height": "Height within reach", "hang.bed": "Bed above the ground", "hang.shelter": "Ridge of the shelter",
		"hang.fastening": "Hang lines made fast", "hang.travel": "Travel of a line", "hang.strap": "Length of the strap", "hang.use_hook": "Hook from the shelf",
		"hang.hook_diameter": "Thickness of the hook", "hang.hook_strength": "Strength of the hook",
		"hung.head_left": "Head bar, left tip", "hung.head_right": "Head bar, right tip", "hung.foot_left": "Foot bar, left tip", "hung.foot_right": "Foot bar, right tip",
		"hung.middle": "Bottom at mid-bay", "hung.head_apex": "Head apex", "hung.foot_apex": "Foot apex", "hung.under": "What lay in it", "hung.mass": "Weight that lay in it",
		"hung.from": "The weight from", "hung.to": "The weight to", "hung.aside": "Off the middle line",
		"accuracy.marking": "A mark is off by", "accuracy.reading": "A reading is off by", "accuracy.scatter": "Scatter of the contraction", "accuracy.set": "Growth under the first load",
		"accuracy.first_load": "First load", "accuracy.nodes": "Nodes are", "accuracy.bar": "A bar is off by", "accuracy.sewing": "A seam is off by",
		"accuracy.rigging": "A hang line is off by", "accuracy.height": "A height is off by", "accuracy.level": "May lie off level by",
		"margin.cord": "Cords", "margin.bar": "Bars", "margin.cloth": "Cloth", "margin.seam": "Seams", "margin.dynamic": "For sitting down and turning over",
		"margin.accepted": "Accepted although not met",
	}
}

func englishBoardLabels() map[design.Key]string {
	return map[design.Key]string{
		"sheet.name": "Name of the sheets", "sheet.width": "Width of a sheet", "sheet.height": "Height of a sheet", "sheet.origin": "Origin of the machine", "sheet.kerf": "Width of the cut",
		"sheet.gap": "Gap between parts", "sheet.margin": "Kept free along the edges", "sheet.thickness": "Thickness", "sheet.price": "Price of a sheet",
		"template.tick": "Step of the ticks", "template.whole": "Whole side curve", "template.gauges": "Gauges too", "template.backing": "Width beside the curve",
		"template.letter": "Height of lettering",
		"extra.file":      "File of the outline", "extra.name": "What it is", "extra.count": "How many", "extra.stock": "Cut from", "extra.as": "Taken as", "extra.free_grain": "May be turned",
		"extra.unit": "Length of a unit", "extra.x": "Keep-out lies at, along", "extra.y": "Keep-out lies at, across",
		"output.units": "Units", "output.fraction": "Finest fraction", "output.scale": "Scale of drawings",
	}
}

func englishMachineLabels() map[design.Key]string {
	return map[design.Key]string{
		"machine.tool": "Kind of machine", "machine.for": "It cuts", "machine.width": "Reach along x", "machine.height": "Reach along y", "machine.fields": "Long cloth in fields",
		"machine.origin": "Zero lies at", "machine.x_left": "x counts to the left", "machine.y_down": "y counts downwards", "machine.swap_axes": "x and y are swapped",
		"machine.kerf": "Width of its cut", "machine.cutter": "Diameter of the cutter", "machine.through": "Cuts below the sheet", "machine.lead": "Way in to cuts",
		"machine.tabs": "Holding tabs", "machine.tab_width": "Width of a tab", "machine.tab_height": "Height of a tab", "machine.trail": "Trail of the knife",
		"machine.swivel": "Turn at corners from", "machine.safe_height": "Height of travel", "machine.plunge": "Speed downwards", "machine.spin_up": "Seconds to spin up",
		"machine.frame": "Frame first", "machine.pause": "Pause by", "machine.dynamic_power": "Power follows speed", "machine.air": "Air assist",
		"machine.controller": "Controller", "machine.header": "Lines at the beginning", "machine.footer": "Lines at the end", "machine.pen_change": "Changes its pens",
		"machine.in_waste": "Marks in the waste", "machine.example": "Invented machine", "machine.paper": "Paper of PDF files", "machine.overlap": "Overlap of pages",
		"machine.arcs": "Arcs within", "machine.thin": "Points left out within",
		"machine.calibration_x.drawn": "Check bar along x, drawn", "machine.calibration_x.measured": "Check bar along x, measured",
		"machine.calibration_y.drawn": "Check bar along y, drawn", "machine.calibration_y.measured": "Check bar along y, measured",
		"machine.stroke.work": "Work", "machine.stroke.colour": "Colour", "machine.stroke.width": "Width of the line", "machine.stroke.dash": "Dashes", "machine.stroke.solid": "Without dashes",
		"machine.job.work": "Work", "machine.job.material": "Material", "machine.job.skip": "Leave out", "machine.job.feed": "Speed", "machine.job.power": "Power or speed of the spindle",
		"machine.job.passes": "Passes", "machine.job.depth": "Depth", "machine.job.pen": "Pen",
	}
}
