package figures

import "slingloft/outline/hung"

// ClothWords says what belongs to the cloth as it hangs.
type ClothWords struct {
	Title                        string
	About                        string // who, how, how finely
	Sleeper                      string
	AsBody, OnRound, Sitting     string
	Quick, Exact                 string
	Moves                        string // by how much
	Balance                      string // per cent
	Level                        string // unit
	Crown, Seat, Soles           string
	HeadBar, FootBar             string
	Under, Bay                   string
	Whole                        string // of the whole bed
	Loads                        string // unit
	Here, Made, Differs          string
	SideCord                     string
	Legs, Lines, Bars            [2]string // by [hung.End]
	Drawn                        string
	Weft, Warp                   string // tension, place along, across
	Shear                        string // angle, place along, across
	SlackPart                    string // per cent
	Slack                        string // from, to
	Station, AcrossBed, AlongBed string
	Sheared, IsSlack             string
	How                          string
	Stiff                        string
}

func englishCloth() ClothWords {
	return ClothWords{
		Title:   "The cloth as it hangs",
		About:   "%s, %s; %s",
		Sleeper: "the sleeper",
		AsBody:  "lying, as a chain of rounded bodies", OnRound: "lying, in the round section of the design", Sitting: "sitting up at mid-bay",
		Quick: "a quick look", Exact: "exact",
		Moves:   "it has not come to rest: a place of it still moves by %s in a step; take the figures for a guide",
		Balance: "the hang lines carry the weight of all that hangs to %s %%",
		Level:   "Level: bed bottom over where the design has it (%s)",
		Crown:   "under the crown", Seat: "under the middle of the weight", Soles: "under the soles",
		HeadBar: "at the head bar", FootBar: "at the foot bar",
		Under: "highest over lowest under the sleeper", Bay: "highest over lowest from bar to bar",
		Whole: "highest over lowest from end to end",
		Loads: "Loads (%s)",
		Here:  "cloth simulated", Made: "made bed, by figure", Differs: "differs by",
		SideCord:  "side cord, at most",
		Legs:      [2]string{hung.Head: "head leg", hung.Foot: "foot leg"},
		Lines:     [2]string{hung.Head: "head hang line", hung.Foot: "foot hang line"},
		Bars:      [2]string{hung.Head: "head bar, thrust", hung.Foot: "foot bar, thrust"},
		Drawn:     "Cloth",
		Weft:      "largest tension across the bed %s, at %s from mid-bay and %s off the centre line",
		Warp:      "largest tension along the bed %s, at %s from mid-bay and %s off the centre line",
		Shear:     "largest shear %s, at %s from mid-bay and %s off the centre line",
		SlackPart: "%s %% of the cloth pulls on nothing across the bed",
		Slack:     "most of the width is slack from %s to %s: a fold may stand there",
		Station:   "station", AcrossBed: "across, mean", AlongBed: "along, mean", Sheared: "shear, most", IsSlack: "slack",
		How: "The cut is hung as cloth that is stiff along its threads, slack where it is pushed, and limp in shear, " +
			"with its cords, bars and lines. " +
			"The body has its sections from the survey's mean body; its links are rigid, its undersides in line, nothing rubs. " +
			"The simulation shares no formula with figure. Where both differ, the simulation is right about what a body does to the cloth, " +
			"and figure about a bed that lies in the round section of the design. End caps, channels and a second layer are left out.",
		Stiff: "Cord, lines or cloth whose stiffness is not given count as a hundred times as stiff as usual ones: " +
			"the bed sinks lower than shown.",
	}
}
