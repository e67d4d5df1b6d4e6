package wording

import (
	"slingloft/outline/bed"
	"slingloft/outline/piece"
)

// Boards says how templates and gauges are used.
type Boards struct {
	Title   string
	How     string
	Offsets string  // templates and offsets tables count from other lines
	Lie     Picture // caption: template; title: template; desc: template, piece, how many places

	Gauge Picture // title, desc: gauge
	// Beside the lines of those pictures.
	RawEdge, Fold, NetLine, CutLine string
	CordOn, EdgeOn                  string // what lies on the marked edge
	JoinLine                        string // of a panel without the centre line
	UsedIn                          string // steps

	Seen                          map[piece.Seen]string
	On                            string    // the straight edge: what it lies on
	Beside                        string    // distance, what it lies beside
	Inside                        string    // distance, what it lies inside of
	End                           string    // what the end lies on
	EndTail                       string    // likewise of a tail, which draws the bar line
	EndsOn                        string    // what both ends lie on
	Edge                          string    // which of its edges are the net line
	EdgeRound, EdgeTail, EdgeCap  string    // likewise of a facing, a tail, a cap
	NoEdge, NoEdgeTail, NoEdgeCap string    // along which nothing is drawn
	Up, Over                      string    // what it gives: lettered face up, turned over
	SideOf                        string    // side, stretch
	HalfOf                        string    // side
	FacingOf                      string    // side
	HalfEdge                      [3]string // of a hollow edge: one half, the other, all of it
	Sides                         [2]string
	Parts                         map[piece.Stretch]string

	MeetsSide, MeetsHalf      string // how the halves meet
	MeetsEdge                 string // likewise of a hollow edge
	Numbered                  string // a notch's number
	AtEnds                    string // the names of the notches at its ends, that of each side
	OfHalves                  string // a notch's name, its number on the head half, on the foot half
	Halved                    string // a notch's name, its part with the lettered face up, its part turned over
	FaceUp, TurnedOver        string
	SideUp                    string   // side, that it lies face up or turned over
	Press, Allow, Cord, Notch []string // how gauges are used
}

func englishBoards() Boards {
	return Boards{
		Title: "Templates and gauges",
		How: "In each picture the heavy blue line lies on a line that you have drawn, and you draw along the heavy green one. Plain " +
			"shapes have their lettered face up. Dashed shapes are turned over. Figures along an edge count the way along it, to check it by; figures called widths count " +
			"from the line that is named beside them.",
		Offsets: "Templates count from the centre line of the bed. The offsets tables count from the straight line between the " +
			"ends of a curve.",
		Lie: Picture{
			Caption: "%s on the cloth.",
			Title:   "%s on the cloth",
			Desc:    "The %s lies on the %s in %d places, its edge on the net line.",
		},
		Gauge: Picture{
			Caption: "%s in use.", Title: "%s in use", Desc: "The %s, with what is laid or folded along its marked edge.",
		},
		JoinLine: "net line of the join",
		CordOn:   "marked edge, with the cord on it", EdgeOn: "marked edge, with the cloth on it",
		RawEdge: "raw edge", Fold: "fold", NetLine: "net line", CutLine: "cut line",
		UsedIn: "Used in step %s.",
		Seen: map[piece.Seen]string{
			piece.OnCentreLine: "the centre line", piece.OnBarLine: "the bar line", piece.OnHeadBarLine: "the head bar line",
			piece.OnFootBarLine: "the foot bar line", piece.OnMidBay: "the mid-bay line",
			piece.AlongSelvedge: "any line along the selvedge",
			piece.OnChord:       "the straight line between the two corners of the edge",
			piece.OnMidEdge:     "the line square to that line, through its middle",
		},
		On:         "Lay its straight edge on %s.",
		Beside:     "Lay its straight edge on the line %s beside %s.",
		Inside:     "Lay its straight edge on a line %s inside of %s, parallel to it.",
		End:        "Push it along until its end lies on %s.",
		EndTail:    "Push it along until its bar line begins at the mark on the centre line.",
		EndsOn:     "Push it along until its ends lie on %s.",
		Edge:       "Draw along its curve: that is the net line, and the allowance comes on outside it.",
		EdgeRound:  "Draw all round it: that is the net line, and the allowance comes on outside it.",
		EdgeTail:   "Draw along SIDE and END SEAM: they are the net line, and the allowance comes on outside them.",
		EdgeCap:    "Draw along SEAM and TOP: they are the net line; outside SEAM comes the allowance, outside TOP the hem.",
		NoEdge:     "Draw nothing along its straight edges: no cloth ends there.",
		NoEdgeTail: "BAR LINE is drawn as a mark; along CENTRE LINE draw nothing.",
		NoEdgeCap:  "Along CENTRE LINE draw nothing.",
		Up:         "With its lettered face up it gives %s.",
		Over:       "Turned over it gives %s.",
		SideOf:     "the %s side, %s",
		HalfOf:     "the %s half",
		FacingOf:   "the %s facing",
		HalfEdge:   [3]string{"one half of each such edge", "the other half of it", "each such edge"},
		Sides:      [2]string{bed.Left: "left", bed.Right: "right"},
		Parts: map[piece.Stretch]string{
			piece.AllOfIt: "from bar to bar", piece.HeadHalf: "from head bar to mid-bay", piece.FootHalf: "from foot bar to mid-bay",
		},
		Numbered:   "Its notch %[1]s is L%[1]s with the lettered face up, and R%[1]s turned over.",
		AtEnds:     "Notch %s is the short stroke in its corner, where the curve ends on the bar line.",
		OfHalves:   "Its notch %s is notch %s on the head half, and notch %s on the foot half.",
		MeetsSide:  "Head half and foot half meet at mid-bay, where their curves run into each other.",
		MeetsEdge:  "Both halves meet on the middle line of the edge: turn it over there.",
		MeetsHalf:  "Both halves meet on the centre line: turn it over along that edge.",
		Halved:     "The notch %s is %s with the lettered face up, and %s turned over.",
		FaceUp:     "face up",
		SideUp:     "%s, %s",
		TurnedOver: "turned over",
		Press: []string{
			"Where it is cut from board, draw round it on card that stands the heat of the iron.",
			"Lay the gauge on the lettered face of the cloth, the step lettered with the fold towards the raw edge.",
			"Fold the edge over the end of the step until it meets the scored line, and press.",
			"Of a strip press the channel's fold first, while its edges are still raw; then the turn-unders.",
		},
		Allow: []string{
			"Lay the scored line on the net line, the steps outside.",
			"Draw along the end of the step: that is the cut line.",
			"Slide it on and draw again; on a curve move it little by little.",
		},
		Cord: []string{
			"Lay the cord straight along the marked edge, its end at the mark for the end.",
			"Mark right round the cord at each line.",
			"Where a gauge goes on from another, begin at the mark that both have.",
		},
		Notch: []string{
			"Lay the marked edge along the folded edge of the strip, or along the seam.",
			"Begin at the head end, and mark each notch.",
			"Go on with the next part at the mark that both have.",
		},
	}
}
