package design

import (
	"fmt"
	"slices"

	"slingloft/outline/geom"
	"slingloft/outline/quantity"
)

// flaw makes a row of the flaws in the cloth.
func flaw(key Key, doc, mm, inch string, at func(*Design) *float64) row {
	return length("cloth.flaw."+key, 0, 100000, at).says(doc, mm, inch).needed()
}

// lastFlaw returns the flaw that is being read.
func lastFlaw(d *Design) *geom.Box { return &d.Cloth.Flaws[len(d.Cloth.Flaws)-1] }

// lists returns the arrays of tables.
func lists() []repeated {
	return append([]repeated{
		{key: KeySpliceTrial, limit: 100, doc: "Trial splices: a length of the host measured before and after it takes a bury, a " +
			"whole eye, or an eye's crossing alone. Five are much better than one; eyes of two different buries tell bury and crossing apart.",
			grow:  func(d *Design) { d.Splice.Trials = append(slices.Clip(d.Splice.Trials), Trial{}) },
			count: func(d *Design) int { return len(d.Splice.Trials) },
			pick: func(d Design, i int) Design {
				d.Splice.Trials = d.Splice.Trials[i : i+1]
				return d
			}},
		{key: KeyClothFlaw, limit: 300, doc: "Flaws in the cloth: rectangles on the roll that no piece may touch.",
			grow:  func(d *Design) { d.Cloth.Flaws = append(slices.Clip(d.Cloth.Flaws), geom.Box{}) },
			count: func(d *Design) int { return len(d.Cloth.Flaws) },
			pick: func(d Design, i int) Design {
				d.Cloth.Flaws = d.Cloth.Flaws[i : i+1]
				return d
			}},
	}, append(machineLists(), extraList(), guestList())...)
}

// exclusive returns the sets of keys that exclude each other.
func exclusive() []ways {
	return []ways{
		{HeadSection, [][]Key{{KeyBedHeadDrop}, {KeyBedHeadGirth}}, true},
		{BedControl, [][]Key{{KeyBedSideDepth}, {KeyBedHangAngle}, {KeyBedFootHangAngle}, {KeyBedThrust}}, true},
		{FootCondition, [][]Key{{KeyBedFootDrop}, {KeyBedFootGirth}, {KeyBedLevelApexes}, {KeyBedLevelAnchors}, {KeyBedSameWallAngle}}, false},
		{BodyRadius, [][]Key{{KeyBedUnderbodyRadius}, {KeyBedHeadRadius, KeyBedSeatRadius, KeyBedFootRadius}}, true},
	}
}

func channelRows() []row {
	return []row{
		option(KeyChannelKind, func(d *Design) *ChannelKind { return &d.Channel.Kind }, "strip", "facing").
			says("A straight strip eased on, or a facing cut to the curve.", "strip", "strip").or("strip").known("type"),
		length(KeyChannelDepth, 4, 300, func(d *Design) *float64 { return &d.Channel.Depth }).
			says("Finished depth, from seam to fold; left out, more than below where cord, side allowance, rows and what is spliced "+
				"ask for it.", "20 mm", "3/4 in").or("20 mm").orIn("3/4 in").known("width"),
		length(KeyChannelTurnUnder, 0, 100, func(d *Design) *float64 { return &d.Channel.TurnUnder }).
			says("Turned under at each long edge.", "10 mm", "3/8 in").or("10 mm").orIn("3/8 in").known("turn"),
		length(KeyChannelOpening, 2, 600, func(d *Design) *float64 { return &d.Channel.Opening }).
			says("Length of the worked opening at a tip gap, through which the gap is drawn out; left out, the tip gap and 12 mm, or "+
				"twice what the gap may lie off its place where that is more.", "60 mm", "2 3/8 in"),
		length(KeyChannelPresserFoot, 0.5, 100, func(d *Design) *float64 { return &d.Channel.Foot }).
			says("Distance of the stitch line from the folded edge, as the presser foot guides it.", "2 mm",
				"1/16 in").or("3 mm").orIn("1/8 in").known("foot", "stitch_line"),
		option(KeyCapKind, func(d *Design) *CapKind { return &d.Cap.Kind }, "upright", "leaning", "gathered").
			says("End cap square to the bed bottom, or to the rising cords, or none: gathered by a drawstring.", "upright",
				"upright").or("upright").known("type"),
		length(KeyCapHollow, 0, 1500, func(d *Design) *float64 { return &d.Cap.Hollow }).
			says("How far the top edge dips in the middle.", "40 mm", "1 1/2 in").or("0 mm").known("dip"),
		length(KeyCapHem, 0, 200, func(d *Design) *float64 { return &d.Cap.Hem }).
			says("Hem at the top edge of a cap, or the channel of a gathered end's drawstring.", "18 mm",
				"3/4 in").or("15 mm").orIn("5/8 in").known("drawstring"),
	}
}

func seamRows() []row {
	allowance := func(key Key, where string, at func(*Design) *float64) row {
		return length(key, 0, 200, at).
			says("Allowance "+where+".", "12 mm", "1/2 in").or("12 mm").orIn("1/2 in").known("allowance")
	}
	return []row{
		allowance(KeySeamSideAllowance, "along the sides", func(d *Design) *float64 { return &d.Seam.Side }),
		allowance(KeySeamEndAllowance, "at the ends of the body", func(d *Design) *float64 { return &d.Seam.End }),
		allowance(KeySeamCapAllowance, "of the caps", func(d *Design) *float64 { return &d.Seam.Cap }),
		allowance(KeySeamJoinAllowance, "at lengthwise joins of the body, on both panels: a flat-felled seam half as wide",
			func(d *Design) *float64 { return &d.Seam.Join }),
		length(KeySeamTolerance, 0.1, 50, func(d *Design) *float64 { return &d.Seam.Tolerance }).
			says("What may remain of the difference of two edges that are sewn together.", "2 mm", "1/16 in").or("2 mm").orIn("1/16 in"),
		number(KeySeamToleranceRatio, ratio, 0, 0.1, func(d *Design) *float64 { return &d.Seam.ToleranceRatio }).
			says("Or as part of the seam's length; the larger of the two holds.", "0.5 %", "0.5 %").or("0.5 %"),
		length(KeySeamStitchLength, 0.5, 20, func(d *Design) *float64 { return &d.Seam.StitchLength }).
			says("Stitch length.", "3 mm", "1/8 in").or("3 mm").orIn("1/8 in").known("stitch"),
		count(KeySeamRows, 1, 8, func(d *Design) *int { return &d.Seam.Rows }).
			says("Rows of stitches in the side seams.", "2", "2").or("2").known("stitch_rows"),
		length(KeySeamRowSpacing, 1, 50, func(d *Design) *float64 { return &d.Seam.RowSpacing }).
			says("From one row of stitches of a side seam to the next; further rows lie towards the fold of the channel.", "6 mm",
				"1/4 in").or("6 mm").orIn("1/4 in").known("spacing"),
		text(KeySeamNeedle, 30, func(d *Design) *string { return &d.Seam.Needle }).
			says("What the needle of the machine is. Its size is its blade in hundredths of a mm: 60 to 70 for very light cloth, 80 "+
				"for light cloth, 90 for pack cloth; common practice.", "80/12", "80/12").known("needle_size"),
		useRow(KeySeamUseThread, "thread"),
		text(KeySeamThread, 60, func(d *Design) *string { return &d.Seam.ThreadName }).
			says("What the thread is.", "polyester 70", "polyester 70").known("thread_name"),
		measure(KeySeamThreadStrength, 0.5, 2000, func(d *Design) *quantity.Newtons { return &d.Seam.ThreadStrength }).
			says("Breaking strength of the thread from its data sheet; left out, the margins of seams are not known.", "38 N",
				"8.5 lbf").known("strength"),
		number(KeySeamFactor, ratio, 0.05, 2, func(d *Design) *float64 { return &d.Seam.SeamFactor }).
			says("Part of stitches times thread strength that a seam holds, from your own test; left out, the margins of seams are "+
				"not known. By loop strength a straight stitch (301) holds 1.2 to 1.3 in polyester, 1.4 to 1.6 in nylon, and no 1.5 in "+
				"polyester.", "0.7", "0.7").known("seam_factor"),
		number(KeySeamPerforation, ratio, 0.2, 1, func(d *Design) *float64 { return &d.Seam.Perforation }).
			says("Part of its strength that cloth keeps along the needle holes of a seam, which holds no more than that; own choice "+
				"unless you tested it.", "0.85", "0.85").or("0.8").known("holes"),
	}
}

func sheetRows() []row {
	return []row{
		text(KeySheetName, 60, func(d *Design) *string { return &d.Sheet.Name }).
			says("What the sheets are.", "poplar plywood 3 mm", "poplar plywood 1/8 in").needed().known("material"),
		length(KeySheetWidth, 100, 10000, func(d *Design) *float64 { return &d.Sheet.Width }).
			says("Width of the sheet or of the machine's bed, whichever is less.", "900 mm", "36 in").needed(),
		length(KeySheetHeight, 100, 10000, func(d *Design) *float64 { return &d.Sheet.Height }).
			says("Height of the sheet or of the machine's bed.", "600 mm", "24 in").needed().known("length", "depth"),
		named(KeySheetOrigin, func(d *Design) *Corner { return &d.Sheet.Origin }, Corners()).
			says("Corner of the machine's bed where its origin lies.", "lower-left", "lower-left").or("lower-left").known("corner"),
		length(KeySheetKerf, 0, 10, func(d *Design) *float64 { return &d.Sheet.Kerf }).
			says("Width of the cut.", "0.2 mm", "0.008 in").or("0 mm"),
		length(KeySheetGap, 0, 200, func(d *Design) *float64 { return &d.Sheet.Gap }).
			says("Gap between parts.", "4 mm", "1/8 in").or("3 mm").orIn("1/8 in").known("spacing"),
		length(KeySheetEdgeStrip, 0, 500, func(d *Design) *float64 { return &d.Sheet.Margin }).
			says("Strip kept free along the edges of a sheet.", "6 mm", "1/4 in").or("5 mm").orIn("1/4 in").formerly("margin"),
		length(KeySheetThickness, 0.05, 100, func(d *Design) *float64 { return &d.Sheet.Thickness }).
			says("Thickness.", "3 mm", "1/8 in"),
		number(KeySheetPrice, amount, 0, 1e6, func(d *Design) *float64 { return (*float64)(&d.Sheet.Price) }).
			says("Price per sheet.", "8", "8").known("cost"),
	}
}

func templateRows() []row {
	return []row{
		length(KeyTemplateTick, 5, 500, func(d *Design) *float64 { return &d.Template.Tick }).
			says("Step of ticks and offsets; left out, 25 mm, or 1 in where output.units is in.", "25 mm", "1 in").known("step", "ticks"),
		toggle(KeyTemplateWhole, func(d *Design) *bool { return &d.Template.Whole }).
			says("The whole side curve rather than half of it.", "true", "true").or("false").known("half"),
		toggle(KeyTemplateGauges, func(d *Design) *bool { return &d.Template.NoGauges }).negated().
			says("Press, allowance, cord and notch gauges beside the templates.", "true", "true").or("true").known("gauge"),
		length(KeyTemplateBacking, 15, 600, func(d *Design) *float64 { return &d.Template.Backing }).
			says("Least width of a template beside its curve.", "45 mm", "1 3/4 in").or("40 mm").orIn("1 1/2 in").known("width"),
		length(KeyTemplateLetter, 1.8, 20, func(d *Design) *float64 { return &d.Template.Letter }).
			says("Height of lettering.", "5 mm", "3/16 in").or("5 mm").orIn("3/16 in").known("lettering", "text"),
	}
}

func marginRows() []row {
	margin := func(key Key, usual, doc string, at func(*Design) *float64) row {
		return number(key, ratio, 1, 50, at).says(doc, usual, usual).or(usual)
	}
	return []row{
		margin(KeyMarginCord, "5", "Breaking strength of spliced cord over its static pull (Cordage Institute CI 1401 gives 5 to 12).",
			func(d *Design) *float64 { return &d.Margins.Cord }),
		margin(KeyMarginBar, "1.5", "Of a bar, on the load times dynamic.", func(d *Design) *float64 { return &d.Margins.Bar }),
		margin(KeyMarginCloth, "2", "Of the cloth, on the load times dynamic.", func(d *Design) *float64 { return &d.Margins.Cloth }),
		margin(KeyMarginSeam, "2", "Of the seams, on the load times dynamic.", func(d *Design) *float64 { return &d.Margins.Seam }),
		margin(KeyMarginDynamic, "2", "Factor on the static load for bars, cloth and seams: sitting down, getting in, rolling "+
			"over. Cords and hooks have it in margin.cord.", func(d *Design) *float64 { return &d.Margins.Dynamic }),
		list(KeyMarginAccepted, 32, func(d *Design) *[]string { return &d.Margins.Waived }).
			says("Checks that may fail, by the names that the report gives them.", "[]", "[]").known("waive", "ignore").formerly("waived"),
	}
}

func accuracyRows() []row {
	return []row{
		length(KeyAccuracyMarking, 0, 20, func(d *Design) *float64 { return &d.Accuracy.Marking }).
			says("How far off a mark may lie, either way.", "1 mm", "1/32 in").or("1 mm").orIn("1/32 in").known("mark"),
		length(KeyAccuracyReading, 0, 20, func(d *Design) *float64 { return &d.Accuracy.Reading }).
			says("How far off one reading of a tape may be, either way.", "0.5 mm", "1/64 in").or("0.5 mm").orIn("1/64 in").known("tape"),
		number(KeyAccuracyScatter, ratio, 0, 0.2, func(d *Design) *float64 { return &d.Accuracy.Scatter }).
			says("Scatter of the contraction from splice to splice, either way; trial splices change it, the more the more there are.",
				"0.02", "0.02").or("0.02"),
		number(KeyAccuracySet, ratio, 0, 0.1, func(d *Design) *float64 { return &d.Accuracy.Set }).
			says("Part by which a spliced cord grows longer under its first load.", "0.5 %", "0.5 %").or("0.5 %"),
		option(KeyAccuracyFirstLoad, func(d *Design) *FirstLoad { return &d.Accuracy.FirstLoad }, "left", "cut", "pull").
			says("What is done about it. left: nothing; cut: cords are cut shorter by it; pull: cords are pulled to their load, "+
				"released and pulled again before their nodes are marked.", "pull", "pull").or("pull").known("preload", "pre_load", "stretch"),
		{key: KeyAccuracyNodes, form: choice, choices: []string{"marked", "read"},
			put: func(d *Design, v any) { d.Accuracy.NodesRead = v == "read" },
			get: func(d *Design) any { return map[bool]string{false: "marked", true: "read"}[d.Accuracy.NodesRead] },
			doc: "Whether a node is marked before it is spliced, or read off a tape under load; read, it is set right before its buries are locked.",
			// Marked, splices that are not tested leave the bed further off level than most accept.
			mm: "read", inch: "read", usual: "marked", active: true},
		length(KeyAccuracyBar, 0, 20, func(d *Design) *float64 { return &d.Accuracy.Bar }).
			says("How far off a bar's length may be, either way.", "1 mm", "1/32 in").or("1 mm").orIn("1/32 in").known("bars"),
		length(KeyAccuracySewing, 0, 20, func(d *Design) *float64 { return &d.Accuracy.Sewing }).
			says("How far off its line a side seam may be sewn, either way.", "1.5 mm", "1/16 in").or("1.5 mm").orIn("1/16 in").known("seam"),
		length(KeyAccuracyRigging, 0, 200, func(d *Design) *float64 { return &d.Accuracy.Rigging }).
			says("How far off a hang line and the height of its anchor may be set, either way.", "5 mm",
				"1/4 in").or("5 mm").orIn("1/4 in").known("line", "anchor"),
		length(KeyAccuracyHeight, 0.2, 50, func(d *Design) *float64 { return &d.Accuracy.Height }).
			says("How far off one reading of a height above the ground or a level may be, either way.", "3 mm",
				"1/8 in").or("3 mm").orIn("1/8 in").known("level_reading"),
		length(KeyAccuracyLevel, 0.5, 200, func(d *Design) *float64 { return &d.Accuracy.Level }).
			says("How far the bed may lie off level.", "10 mm", "3/8 in").or("10 mm").orIn("3/8 in"),
	}
}

// scales returns the reductions of ISO 5455 that drawings may have.
func scales() []int { return []int{1, 2, 5, 10, 20, 50, 100} }

func outputRows() []row {
	scale := row{key: KeyOutputScale, form: choice,
		put: func(d *Design, v any) {
			var n int
			fmt.Sscanf(v.(string), "1:%d", &n)
			d.Output.Scale = 1 / float64(n)
		},
		get: func(d *Design) any { return fmt.Sprintf("1:%.0f", 1/d.Output.Scale) }}
	for _, n := range scales() {
		scale.choices = append(scale.choices, fmt.Sprintf("1:%d", n))
	}
	units := row{key: KeyOutputUnits, form: choice, choices: []string{"mm", "in"},
		put: func(d *Design, v any) { d.Output.Inches = v == "in" },
		get: func(d *Design) any {
			if d.Output.Inches {
				return "in"
			}
			return "mm"
		}}
	fraction := row{key: KeyOutputFraction, form: choice,
		put: func(d *Design, v any) { fmt.Sscanf(v.(string), "1/%d", &d.Output.Fraction) },
		get: func(d *Design) any { return fmt.Sprintf("1/%d", d.Output.Fraction) }}
	for _, n := range []int{2, 4, 8, 16, 32, 64} {
		fraction.choices = append(fraction.choices, fmt.Sprintf("1/%d", n))
	}
	return []row{
		units.says("Units of figures for people; with in, values that are left out are round in inches.", "mm",
			"in").shown().or("mm").known("unit"),
		fraction.says("Finest fraction of an inch.", "1/16", "1/16").or("1/16"),
		scale.says("Scale of the drawings; templates and pieces to cut from need 1:1.", "1:1", "1:1").or("1:1"),
	}
}
