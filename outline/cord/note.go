package cord

import "slingloft/outline/design"

// Note is a remark on what the numbers of a set rest on.
type Note struct {
	Kind    NoteKind
	Shown   Sample  // what test splices show, for [TestedOften] and [TestedOnce]
	Measure float64 // of the hook, mm, for [HookTaken]
}

// NoteKind is the kind of a remark.
type NoteKind int

// The kinds of remarks.
const (
	BuryByDiameter   NoteKind = iota // [BuryDiameters], common practice
	TaperByThird                     // [TaperShare], common practice
	TestedOften                      // contraction from several test splices
	TestedOnce                       // from a single one
	NoContraction                    // taken as none
	UntestedGiven                    // as given, without a test splice
	HookTaken                        // eyes hang on a hook of the default size
	SpreadLeftOut                    // of the tip gap round the bar's tip
	NotShortened                     // compensation is off
	SideNotShortened                 // for want of the side cord's stiffness
	LegsNotShortened                 // for want of the legs' stiffness
)

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
	switch t := s.Trials.Kappa; {
	case t.N > 1:
		n = append(n, Note{Kind: TestedOften, Shown: t})
	case t.N == 1:
		n = append(n, Note{Kind: TestedOnce, Shown: t})
	case s.Kappa == 0:
		add(NoContraction)
	default:
		add(UntestedGiven)
	}
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
