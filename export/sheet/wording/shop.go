package wording

import "slingloft/outline/piece"

// Shop says what belongs to the pages for the table.
type Shop struct {
	Cut, Ticks string // titles

	Cloth        string // unit
	ClothColumns [4]string
	CordCaption  string // unit
	CordColumns  [4]string
	Mark         string // distance, mark
	Bars         string // from what
	Stocks       string // what, the cords that are cut from it
	BarColumns   [2]string
	Boards       string
	BoardColumns [4]string
	Kinds        map[piece.BoardUse]string // of templates and gauges
	Uses         map[piece.BoardUse]string // what they are for

	Tools       map[Tool]string
	ToolCaption string
	ToolColumns [2]string

	How, Rounded string // Rounded: cloth's and cord's step
	Checks       string
	CheckColumns [3]string
}

func englishShop() Shop {
	return Shop{
		Cut: "What to cut", Ticks: "Steps and checks",
		Cloth:        "Cloth, in %s",
		ClothColumns: [4]string{"piece", "number", "along the grain", "across it"},
		CordCaption:  "Cord, in %s; marks are measured from the start of the cut cord",
		CordColumns:  [4]string{"cord", "number", "cut length", "marks"},
		Mark:         "%s %s",
		Bars:         "Bars to saw, from %s",
		Stocks:       "From %s: %s.",
		BarColumns:   [2]string{"bar", "cut length"},
		Boards:       "Templates and gauges",
		BoardColumns: [4]string{"name", "number", "what for", "in step"},
		Kinds: map[piece.BoardUse]string{
			piece.SideBoard: "side curve template", piece.TailBoard: "tail template", piece.CapBoard: "cap template",
			piece.FacingBoard: "facing template", piece.PressBoard: "press gauge", piece.AllowBoard: "allowance gauge",
			piece.CordBoard: "cord gauge", piece.NotchBoard: "notch gauge", piece.RoundBoard: "template of the sack's base",
			piece.HollowBoard: "template of the tarp's edges", piece.LiningSideBoard: "side curve template of the lining",
			piece.CoverBoard:      "template of the cover's edges",
			piece.LiningTailBoard: "tail template of the lining",
		},
		Uses: map[piece.BoardUse]string{
			piece.SideBoard: "net line of the side, between the bars", piece.TailBoard: "net line of a tail, one half at a time",
			piece.CapBoard: "net line of an end cap, one half at a time", piece.FacingBoard: "net line of a facing",
			piece.PressBoard: "width of a fold, under the iron", piece.AllowBoard: "allowance, outside the net line",
			piece.RoundBoard:  "net line of the sack's base, one half at a time",
			piece.HollowBoard: "net line of the tarp's hollow edges",

			piece.CoverBoard:      "net line of the cover's curved edges",
			piece.LiningSideBoard: "net line of the lining's side, between the bars",
			piece.LiningTailBoard: "net line of a tail of the lining, one half at a time",
			piece.CordBoard:       "marks at the end of a cord", piece.NotchBoard: "notches along the side seam",
		},
		Tools:       englishTools(),
		ToolCaption: "Tools",
		ToolColumns: [2]string{"what lies at hand", "in step"},
		How:         "Tick a step off when it is done. Each is told in full, with its pictures, in the second part.",
		Rounded: "Lengths in tables and steps are rounded to what a hand can set: cloth to %s, cord to %s. Sums, seam walk and offsets " +
			"show finer figures of the same lengths.",
		Checks:       "Measure these before you go on: a mistake shows at once",
		CheckColumns: [3]string{"step", "after it measure", "reads"},
	}
}
