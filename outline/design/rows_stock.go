package design

import (
	"slices"

	"slingloft/outline/quantity"
)

func cordRows(table Key, what string, at func(*Design) *Cord) []row {
	side := table == KeyCordSide
	name := measureText(table, what, at)
	diameter := length(table+".diameter", 0.5, 20, func(d *Design) *float64 { return &at(d).Diameter }).
		says("Diameter.", "3 mm", "1/8 in").known("thickness", "size")
	if table != KeyHangLine {
		name, diameter = name.needed(), diameter.needed()
	}
	pick := func(forSide, other string) string {
		if side {
			return forSide
		}
		return other
	}
	return []row{useRow(table.In("use"), "cord"), name, diameter,
		measure(table+".strength", 10, 1e6, func(d *Design) *quantity.Newtons { return &at(d).Strength }).
			says("Breaking strength from the data sheet; left out, its margins are not known.", pick("10 kN", "11 kN"),
				pick("2250 lbf", "2500 lbf")).known("breaking_strength", "breaking_load", "mbs").lookedUp(),
		measure(table+".stiffness", 100, 1e8, func(d *Design) *quantity.Newtons { return &at(d).Stiffness }).
			says("Force over strain (EA) at the working load; left out, cords are not shortened for their stretch.", "220 kN",
				"50000 lbf").known("ea", "modulus"),
		measure(table+".linear_density", 0.05, 1000, func(d *Design) *quantity.GramsPerMetre { return &at(d).LinearDensity }).
			says("Mass per length.", "5 g/m", "0.16 oz/yd").known("mass", "weight", "density"),
		number(table+".price", amount, 0, 1e6, func(d *Design) *float64 { return (*float64)(&at(d).Price) }).
			says("Price per metre, in your own currency; one per yard times 1.094.", "1.90", "1.90").known("cost"),
	}
}

// measureText makes the row that names a cord.
func measureText(table Key, what string, at func(*Design) *Cord) row {
	return text(table+".name", 60, func(d *Design) *string { return &at(d).Name }).
		says("What the cord is: "+what+".", "HMPE hollow braid 3 mm", "HMPE hollow braid 1/8 in").known("material")
}

func hangRows() []row {
	return []row{
		length(KeyHangDistance, 500, 30000, func(d *Design) *float64 { return &d.Hang.Distance }).
			says("Distance between the anchors: trees, posts or a stand.", "4200 mm", "14 ft").shown().known("length", "supports"),
		length(KeyHangHeight, 100, 10000, func(d *Design) *float64 { return &d.Hang.Height }).
			says("Height above ground up to which the anchors can be reached.", "1900 mm", "6 ft 3 in"),
		length(KeyHangBed, 50, 3000, func(d *Design) *float64 { return &d.Hang.Bed }).
			says("Height of the bed's lowest point above ground, loaded.", "450 mm", "18 in").or("450 mm").orIn("18 in").known("bed_height"),
		length(KeyHangShelter, 500, 20000, func(d *Design) *float64 { return &d.Hang.Shelter }).
			says("Ridge length of a shelter that has to cover it; with [tarp] it is the tarp's own.", "3300 mm", "11 ft").known("tarp", "ridge"),
		option(KeyHangFastening, func(d *Design) *Fastening { return &d.Hang.Fastening }, "fixed", "sliding", "strap", "hitch").
			says("How a hang line is made fast at its anchor. fixed: an eye at each end, as long as planned and no other; sliding: "+
				"the anchor's eye slides on its own working end; strap: in a strap that is adjusted; hitch: tied with a round turn and two "+
				"half hitches, which keeps a third of the strength in HMPE.", "sliding", "sliding").or("fixed").known("knot", "adjustable"),
		length(KeyHangTravel, 10, 2000, func(d *Design) *float64 { return &d.Hang.Travel }).
			says("By how much a line that is not fixed can be set longer and shorter than planned.", "120 mm",
				"5 in").or("100 mm").orIn("4 in").known("spare", "adjusting", "adjustment"),
		length(KeyHangStrap, 50, 5000, func(d *Design) *float64 { return &d.Hang.Strap }).
			says("How much of a hang line is the strap at its anchor, at the middle of its adjustment. Needed with a strap.", "400 mm", "16 in"),
		useRow(KeyHangUseHook, "hook"),
		length(KeyHangHookDiameter, 2, 60, func(d *Design) *float64 { return &d.Hang.HookDiameter }).
			says("Thickness of the hook, ring or shackle that an eye hangs on; left out, 10 mm is taken.", "10 mm",
				"3/8 in").known("hook", "hook_size"),
		measure(KeyHangHookStrength, 10, 1e6, func(d *Design) *quantity.Newtons { return &d.Hang.HookStrength }).
			says("Breaking strength of hook and anchor, the weaker of the two, from their data sheets; left out, their margin is not "+
				"known.", "12 kN", "2700 lbf").known("strength", "support_strength"),
	}
}

func spliceRows() []row {
	trial := func(key Key, least float64, doc, mm, inch string, at func(*Trial) *float64) row {
		return length(key, least, 10000, func(d *Design) *float64 {
			return at(&d.Splice.Trials[len(d.Splice.Trials)-1])
		}).says(doc, mm, inch).needed()
	}
	return []row{
		length(KeySpliceBury, 10, 3000, func(d *Design) *float64 { return &d.Splice.Bury }).
			says("Length of a bury; left out, 63 cord diameters (three fids; common practice, no source).", "190 mm", "7 1/2 in"),
		length(KeySpliceTaper, 5, 3000, func(d *Design) *float64 { return &d.Splice.Taper }).
			says("Length of the taper at the end of a bury; left out, a third of the bury (common practice, no source).", "63 mm", "2 1/2 in"),
		length(KeySpliceTipGap, 2, 300, func(d *Design) *float64 { return &d.Splice.TipGap }).
			says("Opening at a corner, between two splices, that takes a bar's tip; left out, more than below where bar.tip_diameter "+
				"asks for it: 3.9 times tip and cord together.", "44 mm", "1 3/4 in").or("25 mm").orIn("1 in").known("gap"),
		number(KeySpliceContraction, ratio, 0, 0.6, func(d *Design) *float64 { return &d.Splice.Contraction }).
			when(func(*Design) {}, func(d *Design) bool { return !d.Splice.hasTrials(true) }).
			says("Length that the host loses per length buried in it. Make a trial splice and give its lengths in [[splice.trial]] "+
				"instead.", "0.16", "0.16").or("0.15").known("shrink", "kappa"),
		length(KeySpliceEye, 10, 2000, func(d *Design) *float64 { return &d.Splice.Eye }).
			says("Cord in the loop of an eye.", "110 mm", "4 1/4 in").or("100 mm").orIn("4 in").known("loop"),
		length(KeySpliceEyeLoss, 0, 200, func(d *Design) *float64 { return &d.Splice.EyeLoss }).
			when(func(*Design) {}, func(d *Design) bool { return !d.Splice.hasTrials(false) }).
			says("Cord lost in the crossing of an eye; trial splices that show it take precedence.", "6 mm",
				"1/4 in").or("5 mm").orIn("3/16 in").known("crossing"),
		length(KeySpliceEyeBury, 10, 3000, func(d *Design) *float64 { return &d.Splice.EyeBury }).
			says("Length of an eye's own bury; left out, as bury.", "190 mm", "7 1/2 in"),
		number(KeySpliceEfficiency, ratio, 0.1, 1, func(d *Design) *float64 { return &d.Splice.Efficiency }).
			says("Part of the cord's strength that a splice keeps, as you tested it or were told; left out, margins are given for "+
				"the bare cord and say so, and what to buy for splices that keep 0.9.", "0.9", "0.9").known("strength"),
		number(KeySpliceWaste, ratio, 0, 1, func(d *Design) *float64 { return &d.Splice.Waste }).
			says("Cord to buy beyond the sum, for ends and mistakes; trial splices are counted by themselves.", "8 %", "8 %").or("5 %"),
		toggle(KeySpliceWholeLoop, func(d *Design) *bool { return &d.Splice.Whole }).
			says("One loop of cord forms a side cord and its legs.", "true", "true").or("false").known("whole", "loop", "continuous"),
		trial(KeySpliceTrialBefore, 10, "Length between two marks of the host before its bury.", "400 mm", "15 3/4 in",
			func(t *Trial) *float64 { return &t.Before }),
		trial(KeySpliceTrialAfter, 10, "Length between the same marks afterwards.", "370 mm", "14 5/8 in",
			func(t *Trial) *float64 { return &t.After }),
		trial(KeySpliceTrialBuried, 0, "Length buried between the marks; 0 for a trial of an eye's crossing alone.", "190 mm",
			"7 1/2 in", func(t *Trial) *float64 { return &t.Buried }),
		crossingRow(),
	}
}

// crossingRow makes the row that says whether an eye's crossing lies between a trial's
// marks. It is written where it is not what a trial is taken for that does not say.
func crossingRow() row {
	one := func(d *Design) *Trial { return &d.Splice.Trials[len(d.Splice.Trials)-1] }
	return toggle(KeySpliceTrialCrossing, func(d *Design) *bool { return &one(d).Crossing }).
		when(func(*Design) {}, func(d *Design) bool { return one(d).Crossing != one(d).alone() }).
		says("An eye's crossing lies between the marks as well. Left out: only where nothing is buried.", "true", "true").known("eye",
		"brummel", "whole_eye")
}

func barRows() []row {
	return []row{
		useRow(KeyBarUse, "bar"),
		text(KeyBarName, 60, func(d *Design) *string { return &d.Bar.Name }).
			says("What the bars are.", "aluminium tube 25 x 1.5 mm", "aluminium tube 1 x 0.065 in").needed(),
		text(KeyBarMaterial, 30, func(d *Design) *string { return &d.Bar.Material }).
			says("Fills in modulus, yield and density from the table of materials; your own values take precedence.", "6061-T6",
				"6061-T6").shown().known("alloy"),
		length(KeyBarOuterDiameter, 4, 100, func(d *Design) *float64 { return &d.Bar.Outer }).
			says("Outer diameter.", "25 mm", "1 in").needed().known("diameter", "outer", "od"),
		length(KeyBarWall, 0.2, 49, func(d *Design) *float64 { return &d.Bar.Wall }).
			says("Wall of a tube; left out, the bar is solid.", "1.5 mm", "0.065 in").shown().known("thickness", "wall_thickness"),
		measure(KeyBarModulus, 100, 1e6, func(d *Design) *quantity.NewtonsPerSquareMillimetre { return &d.Bar.Modulus }).
			says("Modulus of elasticity.", "68.9 GPa", "10000 ksi").known("e", "stiffness"),
		measure(KeyBarYield, 1, 5000, func(d *Design) *quantity.NewtonsPerSquareMillimetre { return &d.Bar.Yield }).
			says("Yield strength, the least that the data sheet assures; left out, the bar's margins are not known.", "241 MPa",
				"35 ksi").known("strength", "yield_strength"),
		measure(KeyBarDensity, 50, 20000, func(d *Design) *quantity.KilogramsPerCubicMetre { return &d.Bar.Density }).
			says("Mass per volume.", "2710 kg/m³", "0.098 lb/in³").known("mass", "weight"),
		length(KeyBarTipReach, 0, 200, func(d *Design) *float64 { return &d.Bar.TipReach }).
			says("How far a tip holds the cord beyond the end of the bar.", "8 mm", "5/16 in").or("0 mm").known("tip"),
		length(KeyBarTipDiameter, 1, 60, func(d *Design) *float64 { return &d.Bar.TipDiameter }).
			says("Thickness of a tip, where the two cords part round it; left out, the gap is taken as straight.", "8 mm",
				"5/16 in").known("pin", "tip_thickness"),
		length(KeyBarEccentricity, 0, 100, func(d *Design) *float64 { return &d.Bar.Eccentricity }).
			says("How far off the bar's axis the cords push.", "3 mm", "1/8 in").or("0 mm"),
		length(KeyBarJoint, 5, 500, func(d *Design) *float64 { return &d.Bar.Joint }).
			says("How far the parts of a sectional bar reach into each other at their joint: two outer diameters or more, else "+
				"the bar's strength cannot be told; left out, the bar is in one piece.", "60 mm", "2 3/8 in").known("overlap", "sleeve"),
		length(KeyBarJointPlay, 0, 5, func(d *Design) *float64 { return &d.Bar.JointPlay }).
			says("Play in that joint: by how much the inner part is thinner than the outer one is wide. It lets the bar stand with a "+
				"kink; own choice unless you measured it.", "0.3 mm", "0.012 in").or("0.2 mm").orIn("0.008 in").known("play"),
		length(KeyBarHole, 0.5, 50, func(d *Design) *float64 { return &d.Bar.Hole }).
			says("Diameter of a hole drilled across the bar, for a pin or a cord; left out, there is none. It is taken to lie where "+
				"the bar bends most.", "4 mm", "5/32 in").known("drilled"),
		length(KeyBarStock, 100, 20000, func(d *Design) *float64 { return &d.Bar.Stock }).
			says("Length in which bars are sold.", "2000 mm", "8 ft").known("stock_length", "length"),
		number(KeyBarPrice, amount, 0, 1e6, func(d *Design) *float64 { return (*float64)(&d.Bar.Price) }).
			says("Price per stock length.", "16", "16").known("cost"),
	}
}

// rollRows are the keys of any cloth on a roll.
func rollRows(table Key, at func(*Design) *Cloth) []row {
	return []row{
		useRow(table.In("use"), "cloth"),
		text(table.In("name"), 60, func(d *Design) *string { return &at(d).Name }).
			says("What the cloth is.", "nylon ripstop", "nylon ripstop").needed().known("material"),
		length(table.In("width"), 200, 5000, func(d *Design) *float64 { return &at(d).Width }).
			says("Usable width of the roll, between the selvedges.", "1480 mm", "58 in").needed().known("roll_width", "roll"),
		measure(table.In("areal_density"), 5, 3000, func(d *Design) *quantity.GramsPerSquareMetre { return &at(d).ArealDensity }).
			says("Mass per area.", "66 g/m²", "1.9 oz/yd²").needed().known("mass", "weight", "density"),
		toggle(table.In("one_way"), func(d *Design) *bool { return &at(d).OneWay }).
			says("The cloth has a direction: pieces may not be turned end for end.", "true", "true").or("false").known("directional", "nap"),
		length(table.In("gap"), 0, 300, func(d *Design) *float64 { return &at(d).Gap }).
			says("Gap between pieces on the roll.", "5 mm", "1/4 in").or("5 mm").orIn("3/16 in").known("spacing"),
		length(table.In("selvedge_strip"), 0, 500, func(d *Design) *float64 { return &at(d).Margin }).
			says("Selvedge strip: what is kept free along both edges of the roll.", "10 mm", "3/8 in").or("0 mm"),
		number(table.In("price"), amount, 0, 1e6, func(d *Design) *float64 { return (*float64)(&at(d).Price) }).
			says("Price per metre of roll; one per yard times 1.094.", "7.50", "7.50").known("cost"),
	}
}

func clothRows() []row {
	width := func(key Key, at func(*Design) *quantity.NewtonsPerMillimetre) row {
		return measure(key, 0.01, 1e5, at)
	}
	roll := rollRows(KeyCloth, func(d *Design) *Cloth { return &d.Cloth })
	for i, r := range roll {
		if r.key == KeyClothSelvedgeStrip {
			roll[i] = r.formerly("margin")
		}
	}
	const plain, laid = 5, 7 // how many of them say what the cloth is, and how many how it is laid
	rows := append(slices.Clone(roll[:plain]),
		width(KeyClothWarpStiffness, func(d *Design) *quantity.NewtonsPerMillimetre { return &d.Cloth.WarpStiffness }).
			says("Force per width over strain, along the roll; left out, pieces are not shortened for their stretch.", "55 N/mm",
				"310 lbf/in").known("stiffness"),
		width(KeyClothWeftStiffness, func(d *Design) *quantity.NewtonsPerMillimetre { return &d.Cloth.WeftStiffness }).
			says("Force per width over strain, across the roll.", "50 N/mm", "280 lbf/in"),
		width(KeyClothStripStrength, func(d *Design) *quantity.NewtonsPerMillimetre { return &d.Cloth.StripStrength }).
			says("Strength of a strip from the data sheet; left out, the margins of cloth are not known.", "600 N/50 mm",
				"65 lbf/in").known("strength"),
		measure(KeyClothLockingAngle, quantity.Degrees(1), quantity.Degrees(80),
			func(d *Design) *quantity.Radians { return &d.Cloth.LockingAngle }).
			says("Largest shear without wrinkles.", "32 deg", "32 deg"))
	rows = append(rows, roll[plain:laid]...)
	rows = append(rows, count(KeyClothJoins, 0, 2, func(d *Design) *int { return &d.Cloth.Joins }).
		says("Lengthwise joins allowed in the body where it is wider than the roll; none is made where it is not.", "1", "1").or("0"))
	return append(append(rows, roll[laid:]...),
		flaw("from", "Start of a flaw along the roll, from its cut end.", "900 mm", "36 in",
			func(d *Design) *float64 { return &lastFlaw(d).Min.X }),
		flaw("to", "End of the flaw along the roll.", "950 mm", "38 in", func(d *Design) *float64 { return &lastFlaw(d).Max.X }),
		flaw("low", "Lower edge of the flaw across the roll, from the lower selvedge.", "200 mm", "8 in",
			func(d *Design) *float64 { return &lastFlaw(d).Min.Y }),
		flaw("high", "Upper edge of the flaw across the roll.", "260 mm", "10 in", func(d *Design) *float64 { return &lastFlaw(d).Max.Y }))
}
