package design

import "slingloft/outline/quantity"

// schema returns every key of a design file, in the order of a starter file.
// Defaults are our own choice unless the row says where they come from.
func schema() []row {
	rows := []row{
		text("name", 60, func(d *Design) *string { return &d.Name }).
			says("What the design is called; lettered on every sheet.", "First bed", "First bed").needed().known("title"),
		shelfRow(),
	}
	for _, part := range [][]row{
		sleeperRows(), loadRows(), bedRows(), tailRows(), radiusRows(),
		cordRows(KeyCordSide, "braid in the side channels", func(d *Design) *Cord { return &d.Side }),
		cordRows(KeyCordLeg, "legs, from the bar tips to the apexes", func(d *Design) *Cord { return &d.Leg }),
		hangRows(),
		cordRows(KeyHangLine, "line from an apex to its anchor", func(d *Design) *Cord { return &d.Hang.Line }),
		spliceRows(), barRows(), clothRows(), channelRows(), seamRows(),
		sheetRows(), templateRows(), marginRows(), accuracyRows(), hungRows(), guestRows(), outputRows(),
		machineRows(), extraRows(), sackRows(), tarpRows(), liningRows(), coverRows(),
	} {
		rows = append(rows, part...)
	}
	return rows
}

// tableDocs returns what each table is about, in the order of the schema.
func tableDocs() map[Key]string {
	return map[Key]string{
		"":          "",
		"sleeper":   "The person the bed is shaped for.",
		"load":      "How the weight is spread along the bed.",
		"bed":       "The shape. x runs from the head bar to the foot bar.",
		"cord":      "The cords; strengths come from their data sheets.",
		KeyCordSide: "Side cords, in the channels along the bay.",
		KeyCordLeg:  "Legs, from the bar tips to the apexes.",
		"hang":      "Where it hangs.",
		KeyHangLine: "The lines from the apexes to the anchors.",
		"splice":    "Splices, as the maker makes them.",
		"bar":       "The spreader bars; both have the same section.",
		"cloth":     "The cloth on the roll.",
		"channel":   "The channels that the side cords run in.",
		"cap":       "The end caps.",
		"seam":      "Allowances, stitches and tolerances.",
		"sheet":     "Stiff sheets for the templates, and the bed of the machine that cuts them.",
		"template":  "How the templates are drawn.",
		"margin":    "Margins that are required: capacity over load.",
		"accuracy":  "Working errors.",
		KeyHung: "What was measured of the bed once it hung, if it was: heights of the bar tips above the ground or any one " +
			"level. Figures and build sheet then say what levels it.",
		KeySack:      "Stow sacks, for the bed and for its bars. The table turns them on, even empty; without it there are none.",
		KeySackCloth: "Cloth of their own for the sacks; without it they are cut from the bed's.",
		KeyTarp: "A tarp over the bed, with its ridge along it. The table turns it on, even empty: it is then as large as the bed needs; " +
			"without the table there is none.",
		KeyTarpCloth: "Cloth of its own for the tarp; without it the tarp is cut from the bed's.",
		KeyCover: "An insect net over the bed, from end to end of its cloth. The table turns it on, even empty: it then hangs from apex to apex " +
			"and is sewn to the bed; without the table there is none.",
		KeyCoverCloth: "Net of its own for the cover; without it the cover is cut from the bed's cloth.",
		KeyLining: "A second layer of the bed that holds a pad. The table turns it on, even empty: the pad is then 25 mm thick and lies under " +
			"the body nearly from bar to bar; without the table there is none.",
		KeyLiningCloth: "Cloth of its own for the lining; without it the lining is cut from the bed's.",
		"output":       "How figures and files are written.",

		"machine":              "The machine that the files are for; may stand in a file of its own, see cut --machine.",
		KeyMachineCalibrationX: "A check bar along x, drawn and measured.",
		KeyMachineCalibrationY: "A check bar along y, drawn and measured.",
	}
}

func sleeperRows() []row {
	return []row{
		length(KeySleeperStature, 500, 2500, func(d *Design) *float64 { return &d.Sleeper.Stature }).
			says("Standing height.", "1740 mm", "5 ft 8 1/2 in").needed().known("height", "length", "size"),
		measure(KeySleeperMass, 1, 300, func(d *Design) *quantity.Kilograms { return &d.Sleeper.Mass }).
			says("Mass of the sleeper, as they lie in the bed.", "78 kg", "172 lb").needed().known("weight"),
		length(KeySleeperCrown, -1500, 3000, func(d *Design) *float64 { return &d.Sleeper.Crown }).
			says("Where the top of the head lies, from the head bar towards the foot; negative over the tail. Needed for the sleeper "+
				"load.", "-100 mm", "-4 in").shown().known("head"),
		length(KeySleeperShoulders, 100, 1000, func(d *Design) *float64 { return &d.Sleeper.Shoulders }).
			says("Breadth over the shoulders.", "480 mm", "19 in").known("shoulder", "shoulder_breadth"),
		option(KeySleeperLies, func(d *Design) *Posture { return &d.Sleeper.Lies }, "back", "side").
			says("How the sleeper lies. The load is spread as on the back either way; on the side the centre of mass lies higher.",
				"back", "back").or("back").known("sleeps", "posture", "position"),
	}
}

func loadRows() []row {
	even := func(d *Design) bool { return d.Load.Model == Even && (d.Load.From != 0 || d.Load.To != 0) }
	stay := func(*Design) {}
	return []row{
		option(KeyLoadModel, func(d *Design) *Model { return &d.Load.Model }, "sleeper", "even").
			says("sleeper: body segments where they lie; even: the weight spread evenly.", "sleeper", "sleeper").or("sleeper").known("type", "kind"),
		length(KeyLoadFrom, -1500, 5500, func(d *Design) *float64 { return &d.Load.From }).
			when(stay, even).says("Start of the even load, from the head bar; with neither end given it covers the bay.", "0 mm", "0 in"),
		length(KeyLoadTo, -1500, 5500, func(d *Design) *float64 { return &d.Load.To }).
			when(stay, even).says("End of the even load, from the head bar.", "1400 mm", "55 in"),
	}
}

func bedRows() []row {
	value := func(d *Design) *float64 { return (*float64)(&d.Bed.ControlValue) }
	second := func(d *Design) *float64 { return &d.Bed.SecondValue }
	flattest, steepest := float64(quantity.Degrees(1)), float64(quantity.Degrees(85)) // of hang lines
	rows := []row{
		length(KeyBedSpan, 300, 4000, func(d *Design) *float64 { return &d.Bed.Span }).
			says("Length of the bay, from bar to bar.", "1480 mm", "58 1/4 in").needed().known("length", "bay"),
		length(KeyBedHeadBar, 150, 2500, func(d *Design) *float64 { return &d.Bed.HeadBar }).
			says("Length of the head bar between the cords' centres.", "880 mm", "34 1/2 in").needed().known("width", "bar", "breadth"),
		length(KeyBedFootBar, 150, 2500, func(d *Design) *float64 { return &d.Bed.FootBar }).
			says("Length of the foot bar between the cords' centres.", "800 mm", "31 1/2 in").needed().known("bar"),
	}
	for _, c := range []struct {
		section  Section
		doc      string
		mm, inch string
		also     string
	}{
		{Drop, "Height of the cords at the head bar above the bed bottom. One of head_drop, head_girth.", "400 mm", "15 3/4 in", "drop"},
		{Girth, "Cloth across the bed at the head bar, cord to cord.", "1210 mm", "47 5/8 in", "girth"},
	} {
		name := []Key{KeyBedHeadDrop, KeyBedHeadGirth}[c.section]
		r := length(name, []float64{20, 150}[c.section], 5000, func(d *Design) *float64 { return &d.Bed.HeadValue }).
			when(func(d *Design) { d.Bed.Head = c.section }, func(d *Design) bool { return d.Bed.Head == c.section }).
			says(c.doc, c.mm, c.inch).known(c.also)
		r.active = c.section == Drop
		rows = append(rows, r)
	}
	control := func(r row, c Control) row {
		return r.when(func(d *Design) { d.Bed.Control = c }, func(d *Design) bool { return d.Bed.Control == c })
	}
	follow := func(r row, s Second) row {
		return r.when(func(d *Design) { d.Bed.Second = s }, func(d *Design) bool { return d.Bed.Second == s })
	}
	return append(rows,
		control(length(KeyBedSideDepth, 5, 2000, value), SideDepth).
			says("How far the side bows in at its deepest, flat, at the line of the cord; the seam lies further in by the reach of "+
				"its channel and bows a little less. One of side_depth, hang_angle, foot_hang_angle, thrust.",
				"195 mm", "7 3/4 in").shown().known("sag", "side_sag"),
		control(number(KeyBedHangAngle, measured, flattest, steepest, value).of(quantity.Angle), HeadAngle).
			says("Angle of the hang line at the head end above the horizontal.", "22 deg", "22 deg").known("angle", "head_hang_angle"),
		control(number(KeyBedFootHangAngle, measured, flattest, steepest, value).of(quantity.Angle), FootAngle).
			says("Angle of the hang line at the foot end.", "20 deg", "20 deg"),
		control(number(KeyBedThrust, measured, 1, 50000, value).of(quantity.Force), Thrust).
			says("Horizontal pull in the cords of one side.", "450 N", "100 lbf").known("tension", "pull"),
		follow(length(KeyBedFootDrop, 20, 5000, second), FootDrop).
			says("Height of the cords at the foot bar. With none of foot_drop, foot_girth, level_apexes, level_anchors the walls "+
				"stand at the same angle at both bars.", "360 mm", "14 1/4 in"),
		follow(length(KeyBedFootGirth, 150, 5000, second), FootGirth).
			says("Cloth across the bed at the foot bar.", "1120 mm", "44 in"),
		only(KeyBedLevelApexes, LevelHooks, "Both apexes, where the legs meet, hang at the same height. Their anchors "+
			"then differ a little, as the slopes of the hang lines do.").formerly("level_hooks"),
		only(KeyBedLevelAnchors, LevelAnchors, "Both anchors, on trees or posts, stand at the same height; needs hang.distance, "+
			"in the middle of which the hammock hangs."),
		only(KeyBedSameWallAngle, SameWall, "The walls stand at the same angle at both bars: what holds where nothing else is asked."),
	)
}

// only makes a row for a second condition that has no value.
func only(key Key, s Second, doc string) row {
	r := row{key: key, form: flag, only: true,
		put: func(d *Design, _ any) { d.Bed.Second = s },
		get: func(d *Design) any {
			if d.Bed.Second != s || s == SameWall {
				return nil
			}
			return true
		}}
	return r.says(doc, "true", "true")
}

func tailRows() []row {
	tail := func(key Key, at func(*Design) *float64, doc, mm, inch string) row {
		return length(key, 10, 1500, at).says(doc, mm, inch).needed().known("tail", "recess")
	}
	leg := func(key Key, at func(*Design) *float64, doc, mm, inch string) row {
		return length(key, 80, 5000, at).says(doc, mm, inch).needed().known("leg", "legs")
	}
	return []row{
		tail(KeyBedHeadTail, func(d *Design) *float64 { return &d.Bed.HeadTail },
			"Length of the tail past the head bar, along the centre line.", "165 mm", "6 1/2 in"),
		tail(KeyBedFootTail, func(d *Design) *float64 { return &d.Bed.FootTail },
			"Length of the tail past the foot bar.", "190 mm", "7 1/2 in"),
		leg(KeyBedHeadLeg, func(d *Design) *float64 { return &d.Bed.HeadLeg },
			"Length of a leg at the head, from bar tip to apex.", "840 mm", "33 in"),
		leg(KeyBedFootLeg, func(d *Design) *float64 { return &d.Bed.FootLeg },
			"Length of a leg at the foot.", "800 mm", "31 1/2 in"),
		measure(KeyBedLift, quantity.Degrees(-5), quantity.Degrees(5), func(d *Design) *quantity.Radians { return &d.Bed.Lift }).
			says("Slope of the bed bottom, positive where the head is higher.", "1 deg", "1 deg").or("0 deg").known("slope", "tilt"),
		{key: KeyBedSideCurve, form: choice, choices: []string{"sleeper", "even", "catenary", "arc"},
			put: func(d *Design, v any) {
				d.Bed.Curve = map[string]Curve{"catenary": Catenary, "arc": Arc}[v.(string)]
			},
			get: func(d *Design) any {
				if d.Bed.Curve == Balanced {
					return nil
				}
				return map[Curve]string{Catenary: "catenary", Arc: "arc"}[d.Bed.Curve]
			},
			doc: "Curve of the side: in balance under the sleeper or the even load; catenary and arc are drawn as asked, with " +
				"side_depth, and are not in balance. Left out, it follows the load model.",
			mm: "sleeper", inch: "sleeper", also: []string{"curve", "side"}},
		option(KeyBedCut, func(d *Design) *Cut { return &d.Bed.Cut }, "net", "straight").
			says("Tails cut on a net of threads (they lie level), or straight as by hand.", "net", "net").or("net"),
		option(KeyBedLevel, func(d *Design) *Leveling { return &d.Bed.Level }, "made", "hung").
			says("By what the bed's bottom is made level: made, by the made bed in the round sections of the design; hung, re-cut "+
				"from a simulation of the cloth until the sleeper's body lies level in it, as it lies. With hung the cut is net "+
				"and the side curve none that is drawn, and every run takes some seconds more.", "hung", "hung").or("made"),
		length(KeyBedEndGirth, 100, 5000, func(d *Design) *float64 { return &d.Bed.EndGirth }).
			says("Girth at the end of a straight cut tail; left out, the one that departs least from a level girth.", "1150 mm", "45 in"),
		toggle(KeyBedCompensate, func(d *Design) *bool { return &d.Bed.Plain }).negated().
			says("Pattern and cords are cut shorter by their stretch under the sleeper, where their stiffness is given.", "true",
				"true").or("true").known("compensation", "shorten"),
	}
}

func radiusRows() []row {
	one := func(key Key, where string, at func(*Design) *float64) row {
		differ := func(d *Design) bool { return !sameRadius(*d) }
		return length(key, 10, 1000, at).when(func(*Design) {}, differ).
			says("Radius of the round part of the section "+where+"; head_radius, seat_radius and foot_radius take the place of "+
				"underbody_radius.", "140 mm", "5 1/2 in")
	}
	all := row{key: KeyBedUnderbodyRadius, form: measured, dim: quantity.Length, lo: 10, hi: 1000,
		put: func(d *Design, v any) {
			r := v.(float64)
			d.Bed.HeadRadius, d.Bed.SeatRadius, d.Bed.FootRadius = r, r, r
		},
		get: func(d *Design) any {
			if !sameRadius(*d) {
				return nil
			}
			return d.Bed.HeadRadius
		}}
	return []row{
		all.says("Radius of the round part of the section under the sleeper, the same all along.", "135 mm", "5 1/4 in").shown().known("radius"),
		one(KeyBedHeadRadius, "at the head bar", func(d *Design) *float64 { return &d.Bed.HeadRadius }),
		one(KeyBedSeatRadius, "at mid-bay", func(d *Design) *float64 { return &d.Bed.SeatRadius }),
		one(KeyBedFootRadius, "at the foot bar", func(d *Design) *float64 { return &d.Bed.FootRadius }),
	}
}

// sameRadius reports whether the underbody radius is the same all along.
func sameRadius(d Design) bool {
	return d.Bed.HeadRadius == d.Bed.SeatRadius && d.Bed.SeatRadius == d.Bed.FootRadius
}
