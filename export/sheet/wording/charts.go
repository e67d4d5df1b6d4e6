package wording

import "slingloft/outline/design"

// Charts says what belongs to the charts.
type Charts struct {
	Title   string
	How     string
	Station string // axis: unit

	Side          Curve  // desc: depth, by how much the side departs
	SideChord     string // axis: unit
	SideArc       string
	Girth         Picture // desc: at head bar, mid-bay and foot bar
	GirthName     string
	Opening       string
	Cord          Curve // desc: largest, where, least
	Cloth         Curve // desc: largest, unit
	StraightTails Curve // desc: largest
	Level         Curve // desc: how high, how low

	Controls map[design.Control]string
	Control  string  // with its unit
	Angles   Picture // title: control; desc: control, from and to at the head and at the foot, in degrees
	Angle    string  // axis
	Forces   Curve   // title: control; desc: control, cord from and to, unit, bar from and to
	Thrust   string

	Departures string // unit
	Columns    [4]string
}

// Curve says what belongs to a chart of a curve.
type Curve struct {
	Picture
	Y    string // the upright axis: unit
	Name string
}

func englishCharts() Charts {
	c := Charts{
		Title:   "Charts",
		How:     "Stations run along the bed from mid-bay, the head end negative; upright lines stand at the bars.",
		Station: "station, %s",
		Side: Curve{Picture{
			Caption: "The side curve of the bay against the parabola of the same depth, which lies at zero, and against an arc.",
			Title:   "Side curve less the parabola of its depth",
			Desc: "Along the chord from the head bar to the foot bar, by how much the flat side edge and a circular arc lie deeper than " +
				"a parabola of the same greatest depth, %s. The side departs by at most %s.",
		}, "deeper, %s", "this side"},
		SideChord: "along the chord from the head bar, %s", SideArc: "circular arc",
		Girth: Picture{
			Caption: "Girth: cloth across the bed, cord to cord; opening: between the cords.",
			Title:   "Girth and opening along the bed",
			Desc: "Length of cloth across the bed from cord to cord, and the opening between the cords. Girth %s at the head bar, " +
				"%s at mid-bay, %s at the foot bar.",
		},
		GirthName: "girth", Opening: "opening",
		Cord: Curve{Picture{
			Caption: "Tension along one side's cord, over tails and bay.",
			Title:   "Tension along the cord",
			Desc:    "Tension of one side's cord over the bed. Largest %s, at %s from mid-bay; least near the middle, %s.",
		}, "tension, %s", "one side's cord"},
		Cloth: Curve{Picture{
			Caption: "Tension of the cloth across the bed, from the sleeper's load and the walls' angle.",
			Title:   "Tension of the cloth across the bed",
			Desc:    "Tension of the cloth across the bed per length along it; largest %s %s.",
		}, "tension, %s", "across, per length of bed"},
		StraightTails: Curve{Picture{
			Caption: "Straight tails against the true cut: girth too long, or too short, at each station.",
			Title:   "Girth of straight tails less the true girth",
			Desc: "By how much the cloth across the bed would be too long, or where negative too short, if the tails were cut straight: " +
				"nothing in the bay, up to %s in the tails.",
		}, "too long, %s", "straight cut less true cut"},
		Level: Curve{Picture{
			Caption: "How far the bed hangs off level with the side curve that was asked for.",
			Title:   "Bed bottom above level, with the side curve as drawn",
			Desc:    "The side curve is drawn and not in balance: the bed's bottom stands up to %s high and %s low of level.",
		}, "above level, %s", "bed bottom"},
		Departures: "Girth of the straight tails, in %s: what would hang level, and what the cut has",
		Columns:    [4]string{"station", "level", "cut", "departs"},
	}
	englishSweep(&c)
	return c
}

// englishSweep says what belongs to the charts against the control of the shape.
func englishSweep(c *Charts) {
	c.Controls = map[design.Control]string{
		design.SideDepth: "side depth", design.HeadAngle: "head hang angle", design.FootAngle: "foot hang angle",
		design.Thrust: "thrust of one side",
	}
	c.Control = "%s, %s"
	c.Angles = Picture{
		Caption: "Sensitivity: the hang angles if the control of the shape were a fifth less or more. The upright line is this design.",
		Title:   "Hang angles against the %s",
		Desc:    "Hang angles if the %s were up to a fifth less or more: head from %s° to %s°, foot from %s° to %s°.",
	}
	c.Angle = "hang angle, °"
	c.Forces = Curve{Picture{
		Caption: "Sensitivity: forces if the control of the shape were a fifth less or more. The upright line is this design.",
		Title:   "Forces against the %s",
		Desc: "Largest cord tension and larger bar thrust if the %s were up to a fifth less or more: cord from %s to %s %s, " +
			"bar from %s to %s.",
	}, "force, %s", "largest cord tension"}
	c.Thrust = "bar thrust"
}
