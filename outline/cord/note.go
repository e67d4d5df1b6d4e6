package cord

import "slingloft/outline/design"

// Note is a remark on what the numbers of a set rest on.
type Note struct {
	Kind    NoteKind
	Shown   Shown    // what test splices show, for the remarks on these
	Line    HangLine // for [LineFixed] and [LineSet]
	Measure float64  // of the hook, mm, for [HookTaken]
}

// NoteKind is the kind of a remark.
type NoteKind int

// The kinds of remarks.
const (
	BuryByDiameter   NoteKind = iota // [BuryDiameters], common practice
	TaperByThird                     // [TaperShare], common practice
	TestedOften                      // contraction from several test splices
	TestedOnce                       // from a single one
	TestedTogether                   // from eyes that do not tell bury and crossing apart
	CrossingTested                   // loss in a crossing from test splices
	TestedOdd                        // some test splices lie far off
	NoContraction                    // taken as none
	UntestedGiven                    // as given, without a test splice
	HookTaken                        // eyes hang on a hook of the default size
	SpreadLeftOut                    // of the tip gap round the bar's tip
	NotShortened                     // compensation is off
	SideNotShortened                 // for want of the side cord's stiffness
	LegsNotShortened                 // for want of the legs' stiffness
	LineFixed                        // a hang line has one length alone
	LineSet                          // or can be set
)

// shownNotes says what contraction and loss rest on.
func (s Splicing) shownNotes(trials []design.Trial) []Note {
	buries, crossings := 0, 0
	for _, t := range trials {
		if t.Buried > 0 {
			buries++
		}
		if t.Crossing {
			crossings++
		}
	}
	kind := UntestedGiven
	switch {
	case s.Shown.Together:
		kind = TestedTogether
	case buries > 1:
		kind = TestedOften
	case buries == 1:
		kind = TestedOnce
	case s.Kappa == 0:
		kind = NoContraction
	}
	n := []Note{{Kind: kind, Shown: s.Shown}}
	if crossings > 0 && !s.Shown.Together {
		n = append(n, Note{Kind: CrossingTested, Shown: s.Shown})
	}
	if len(s.Shown.Odd) > 0 {
		n = append(n, Note{Kind: TestedOdd, Shown: s.Shown})
	}
	return n
}

// notes says what the numbers rest on.
func (s Splicing) notes(d design.Design) []Note {
	var n []Note
	add := func(k NoteKind) { n = append(n, Note{Kind: k}) }
	if s.bury == 0 {
		add(BuryByDiameter)
	}
	if s.taper == 0 {
		add(TaperByThird)
	}
	n = append(n, s.shownNotes(d.Splice.Trials)...)
	if s.unsized {
		n = append(n, Note{Kind: HookTaken, Measure: s.Hook})
	}
	if s.tip == 0 {
		add(SpreadLeftOut)
	}
	if d.Bed.Plain {
		add(NotShortened)
		return n
	}
	if d.Side.Stiffness == 0 {
		add(SideNotShortened)
	}
	if d.Leg.Stiffness == 0 && !d.Splice.Whole {
		add(LegsNotShortened)
	}
	return n
}
