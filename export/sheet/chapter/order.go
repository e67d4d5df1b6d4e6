package chapter

import (
	"fmt"
	"slices"

	"slingloft/export/sheet"
	"slingloft/export/sheet/wording"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// task is a row of the order of work: a kind of step, which has its words in the table,
// when there is one, the templates and gauges that have to be at hand, the figures that it
// needs and pictures of it.
type task struct {
	kind  wording.Task
	when  func(build) bool // nil: always
	needs []piece.BoardUse
	facts func(build, *sheet.Step)
	shows func(build) sheet.Figures
}

// stage is a section of the order of work.
type stage struct {
	id    string
	title func(wording.Words) string
	tasks []task
}

// stages are the order of work.
func stages() []stage {
	return []stage{
		{"cloth", func(w wording.Words) string { return w.Order.Cloth }, cuttingTasks()},
		{"sewing", func(w wording.Words) string { return w.Order.Sewing }, sewingTasks()},
		{"rope", func(w wording.Words) string { return w.Order.Rope }, ropeTasks()},
		{"fitting", func(w wording.Words) string { return w.Order.Fitting }, fittingTasks()},
		{"sacks", func(w wording.Words) string { return w.Sacks.Title }, sackTasks()},
		{"hanging", func(w wording.Words) string { return w.FirstNight.Title }, hangingTasks()},
	}
}

func cuttingTasks() []task {
	all := []piece.BoardUse{piece.SideBoard, piece.TailBoard, piece.CapBoard, piece.FacingBoard, piece.RoundBoard, piece.AllowBoard}
	return []task{
		{kind: wording.MakeBoards, when: build.hasBoards, facts: build.boardFacts},
		{kind: wording.MarkPlotted, facts: build.allowanceFacts},
		{kind: wording.DrawLines, when: build.hasBoards, facts: build.lineFacts},
		{kind: wording.MarkByHand, when: build.hasBoards, needs: all, facts: build.markFacts},
		{kind: wording.ProveSquare, facts: build.proveFacts},
		{kind: wording.CutCloth, facts: build.cutFacts},
	}
}

func sewingTasks() []task {
	press, notches := []piece.BoardUse{piece.PressBoard}, []piece.BoardUse{piece.NotchBoard}
	return []task{
		{kind: wording.TellFaces},
		{kind: wording.TestSeam, facts: build.testFacts},
		{kind: wording.PressStrips, when: build.strips, needs: press, facts: build.pressFacts},
		{kind: wording.PressFacings, when: build.facings, needs: press, facts: build.pressFacts},
		{kind: wording.PressHems, when: build.capped, needs: press, facts: build.hemFacts, shows: build.showHem},
		{kind: wording.JoinPanels, when: build.joined, facts: build.joinFacts, shows: build.showJoin},
		{kind: wording.FinishEdges, when: build.frays, facts: build.edgeFacts},
		{kind: wording.WorkOpenings, when: build.strips, facts: build.openingFacts},
		{kind: wording.TurnEnds, when: build.gathered, needs: press, facts: build.endFacts, shows: build.showHem},
		{kind: wording.SewCaps, when: build.capped, facts: build.capFacts, shows: build.showCapSeam},
		{kind: wording.PinStrips, when: build.strips, needs: notches, facts: build.pinFacts, shows: build.showChannel},
		{kind: wording.PinFacings, when: build.facings, needs: notches, facts: build.pinFacts},
		{kind: wording.StitchStrips, when: build.strips, facts: build.stitchFacts, shows: build.showSides},
		{kind: wording.StitchFacings, when: build.facings, facts: build.stitchFacts, shows: build.showSides},
	}
}

func ropeTasks() []task {
	marks := []piece.BoardUse{piece.CordBoard}
	return []task{
		{kind: wording.TrialSplice, facts: build.trialFacts, shows: build.showTrial},
		{kind: wording.PullCords, when: build.pulledFirst, facts: build.pullFacts},
		{kind: wording.CutCords, needs: marks, facts: build.cordFacts},
		{kind: wording.SpliceEyes, when: build.eyesFirst, facts: build.eyeFacts, shows: build.showEyes},
		{kind: wording.HeadEyes, when: build.eyesLast, facts: build.eyeFacts, shows: build.showEyes},
		{kind: wording.FixedLines, when: fastened(cord.FixedEye), facts: build.hangLineFacts},
		{kind: wording.StrapLines, when: fastened(cord.Strapped), facts: build.hangLineFacts},
		{kind: wording.SlidingLines, when: fastened(cord.SlidingEye), facts: build.hangLineFacts, shows: build.showLine},
		{kind: wording.HitchedLines, when: fastened(cord.Hitched), facts: build.hangLineFacts, shows: build.showLine},
		{kind: wording.RidgeLines, when: build.ridged, facts: build.ridgeFacts},
		{kind: wording.FirstCorner, when: build.corded, facts: build.spliceFacts, shows: build.showCorner},
		{kind: wording.OtherCorner, when: build.corded},
		{kind: wording.ThreadLoops, when: build.looped, facts: build.threadFacts},
		{kind: wording.JoinLoops, when: build.looped, shows: build.showJoinedLoop},
		{kind: wording.SetLoops, when: build.loopsPulled, facts: build.pullFacts},
		{kind: wording.ReadLoops, when: build.looped, facts: build.nodeFacts, shows: build.showChain},
		{kind: wording.SetChains, when: build.readPulled, facts: build.pullFacts},
		{kind: wording.ReadNodes, when: build.nodesRead, facts: build.nodeFacts, shows: build.showChain},
		{kind: wording.CheckNodes, when: build.nodesMarked, facts: build.nodeFacts, shows: build.showChain},
		{kind: wording.LockBuries, facts: build.lockFacts, shows: build.showLock},
		{kind: wording.SeizeLoops, when: build.looped, facts: build.gapFacts, shows: build.showSeized},
		{kind: wording.ThreadChains, when: build.eyesFirst, facts: build.gapFacts, shows: build.showThreading},
		{kind: wording.ThreadBare, when: build.eyesLast, facts: build.gapFacts, shows: build.showThreading},
		{kind: wording.LastEyes, when: build.eyesLast, facts: build.lastEyeFacts, shows: build.showLastEyes},
	}
}

func fittingTasks() []task {
	return []task{
		{kind: wording.CutBars, facts: build.barFacts, shows: build.showTip},
		{kind: wording.TackTails, facts: build.tackFacts},
	}
}

// When there is a step.

func (b build) hasBoards() bool { return len(b.Templates) > 0 }
func (b build) strips() bool    { return b.Design.Channel.Kind == design.Strip }
func (b build) facings() bool   { return b.Design.Channel.Kind == design.Facing }
func (b build) gathered() bool  { return b.Design.Cap.Kind == design.Gathered }
func (b build) capped() bool    { return !b.gathered() }
func (b build) joined() bool    { return len(b.Sewn.Joins) > 0 }
func (b build) looped() bool    { return b.Design.Splice.Whole }
func (b build) corded() bool    { return !b.looped() }

// stage returns what makes the section of a stage, its steps numbered through all stages.
func (b build) stage(id string) func() (sheet.Section, error) {
	return func() (sheet.Section, error) {
		s := sheet.Section{ID: id}
		for _, of := range stages() {
			if of.id == id {
				s.Title = of.title(b.Say)
			}
		}
		var steps sheet.Steps
		for _, q := range b.steps() {
			if q.stage == id {
				steps = append(steps, q.Step)
			}
		}
		s.Add(steps)
		return s, nil
	}
}

// staged is a step with the stage that it belongs to and what it was made from.
type staged struct {
	sheet.Step
	task
	stage string
}

// steps returns all steps of the work, in order.
func (b build) steps() []staged {
	var out []staged
	for _, st := range stages() {
		for _, t := range st.tasks {
			if t.when == nil || t.when(b) {
				out = append(out, staged{b.step(t, len(out)+1), t, st.id})
			}
		}
	}
	return out
}

// step sets a step out.
func (b build) step(t task, no int) sheet.Step {
	say := b.Say.Order.Steps[t.kind]
	s := sheet.Step{ID: "step-" + t.kind.String(), No: no, Title: say.Title, Do: slices.Clone(say.Do), Done: say.Done,
		Needs: b.boardsFor(t.needs)}
	if t.facts != nil {
		t.facts(b, &s)
	}
	if t.shows != nil {
		s.Figures = t.shows(b)
	}
	return s
}

// boardsFor returns what the templates and gauges of some uses are called, of those that
// there are.
func (b build) boardsFor(uses []piece.BoardUse) []string {
	var out []string
	for _, use := range uses {
		if slices.ContainsFunc(b.Boards, func(q piece.Piece) bool { return q.Lie.For == use }) {
			out = append(out, b.Say.Shop.Kinds[use])
		}
	}
	return out
}

// bodies returns the panels of the body: one, unless it is joined.
func (b build) bodies() []piece.Piece {
	var out []piece.Piece
	for _, p := range b.Sewn.Pieces {
		if p.Kind.Body() {
			out = append(out, p)
		}
	}
	return out
}

// strip returns the first channel strip.
func (b build) strip() (piece.Piece, bool) {
	for _, p := range b.Sewn.Pieces {
		if p.Kind == piece.Strip {
			return p, true
		}
	}
	return piece.Piece{}, false
}

// insert puts a line of a step before its last n.
func insert(s *sheet.Step, n int, line string) { s.Do = slices.Insert(s.Do, len(s.Do)-n, line) }

// of names a thing of a panel, where there are several.
func (b build) of(panels int, q piece.Piece, name string) string {
	if panels < 2 {
		return name
	}
	return fmt.Sprintf(b.Say.Order.OfPanel, q.Title, name)
}
