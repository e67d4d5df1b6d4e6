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
// when there is one, the templates, gauges and tools that have to be at hand, the figures that it
// needs and pictures of it.
type task struct {
	kind  wording.Task
	when  func(build) bool // nil: always
	needs []piece.BoardUse
	tools []wording.Tool
	bare  []wording.Tool // besides, where a leg has an end without an eye
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
		{"cover", func(w wording.Words) string { return w.Cover.Title }, coverTasks()},
		{"sewing", func(w wording.Words) string { return w.Order.Sewing }, sewingTasks()},
		{"rope", func(w wording.Words) string { return w.Order.Rope }, ropeTasks()},
		{"fitting", func(w wording.Words) string { return w.Order.Fitting }, fittingTasks()},
		{"sacks", func(w wording.Words) string { return w.Sacks.Title }, sackTasks()},
		{"lining", func(w wording.Words) string { return w.Lining.Title }, liningTasks()},
		{"tarp", func(w wording.Words) string { return w.Tarp.Title }, tarpTasks()},
		{"hanging", func(w wording.Words) string { return w.FirstNight.Title }, hangingTasks()},
	}
}

func cuttingTasks() []task {
	all := []piece.BoardUse{piece.SideBoard, piece.TailBoard, piece.CapBoard, piece.FacingBoard, piece.RoundBoard, piece.AllowBoard}
	ruled := []wording.Tool{wording.TapeMeasure, wording.LongRule, wording.SetSquare, wording.Chalk}
	return []task{
		{kind: wording.CompareBought, tools: []wording.Tool{wording.MeasuringTools, wording.TapeMeasure}, facts: build.boughtFacts},
		{
			kind:  wording.MakeBoards,
			when:  build.hasBoards,
			tools: []wording.Tool{wording.MeasuringTools, wording.CardTools},
			facts: build.boardFacts,
		},
		{kind: wording.LayOut, tools: append(slices.Clip(ruled), wording.Shears, wording.Iron), facts: build.layFacts},
		{kind: wording.MarkPlotted, tools: []wording.Tool{wording.TracingTools, wording.Chalk}, facts: build.allowanceFacts},
		{kind: wording.DrawLines, when: build.hasBoards, tools: ruled, facts: build.lineFacts},
		{kind: wording.MarkByHand, when: build.hasBoards, needs: all, tools: append(slices.Clip(ruled), wording.Awl), facts: build.markFacts},
		{kind: wording.MarkLining, when: build.linedByHand, needs: []piece.BoardUse{piece.LiningSideBoard, piece.LiningTailBoard, piece.AllowBoard},
			tools: append(slices.Clip(ruled), wording.Awl), facts: build.markLiningFacts},
		markSacks(),
		markTarp(),
		{kind: wording.ProveSquare, tools: []wording.Tool{wording.TapeMeasure}, facts: build.proveFacts},
		{kind: wording.CutCloth, tools: []wording.Tool{wording.Chalk, wording.Shears}, facts: build.cutFacts},
	}
}

func sewingTasks() []task {
	press, notches := []piece.BoardUse{piece.PressBoard}, []piece.BoardUse{piece.NotchBoard}
	pin := []wording.Tool{wording.TapeMeasure, wording.Clips, wording.Chalk}
	sew := []wording.Tool{wording.SewingMachine, wording.SeamThread}
	both := append(slices.Clip(sew), wording.Iron)
	fold := []wording.Tool{wording.MeasuringTools, wording.Iron}
	stitch := append(slices.Clip(sew), wording.TapeMeasure, wording.MeasuringTools, wording.Ripper)
	testTools := []wording.Tool{wording.SewingMachine, wording.Needles, wording.MeasuringTools, wording.Shears, wording.Clamps,
		wording.TestWeight}
	return slices.Concat([]task{
		{kind: wording.TellFaces},
		{kind: wording.TestSeam, tools: testTools, facts: build.testFacts},
		{kind: wording.PressStrips, when: build.strips, needs: press, tools: fold, facts: build.pressFacts},
		{kind: wording.PressFacings, when: build.facings, needs: press, tools: fold, facts: build.pressFacts},
		{
			kind:  wording.PressHems,
			when:  build.capped,
			needs: press,
			tools: append(slices.Clip(both), wording.MeasuringTools, wording.Shears),
			facts: build.hemFacts,
			shows: build.showHem,
		},
		{
			kind:  wording.JoinPanels,
			when:  build.joined,
			tools: append(slices.Clip(both), wording.Clips),
			facts: build.joinFacts,
			shows: build.showJoin,
		},
	}, sewnInTasks(sew, both), []task{
		{kind: wording.FinishEdges, when: build.frays, tools: sew, facts: build.edgeFacts},
		{
			kind:  wording.WorkOpenings,
			when:  build.strips,
			tools: append(slices.Clip(sew), wording.TapeMeasure, wording.Chalk, wording.Ripper),
			facts: build.openingFacts,
		},
		{kind: wording.TurnEnds, when: build.gathered, needs: press, tools: both, facts: build.endFacts, shows: build.showHem},
		{kind: wording.SewCaps, when: build.capped, tools: append(slices.Clip(both), wording.Clips, wording.Shears), facts: build.capFacts,
			shows: build.showCapSeam},
		{kind: wording.PinStrips, when: build.strips, needs: notches, tools: pin, facts: build.pinFacts, shows: build.showChannel},
		{kind: wording.PinFacings, when: build.facings, needs: notches, tools: pin, facts: build.pinFacts},
		{kind: wording.StitchStrips, when: build.strips, tools: stitch, facts: build.stitchFacts, shows: build.showSides},
		{
			kind:  wording.StitchFacings,
			when:  build.facings,
			tools: append(slices.Clip(stitch), wording.Iron),
			facts: build.stitchFacts,
			shows: build.showSides,
		},
	})
}

func ropeTasks() []task {
	marks := []piece.BoardUse{piece.CordBoard}
	pull, fids := []wording.Tool{wording.Tackle, wording.CordPins}, []wording.Tool{wording.Fid, wording.CordPen}
	line := append(slices.Clip(fids), wording.Tackle, wording.CordPins, wording.CordTape)
	clamps := []wording.Tool{wording.Clamps}
	loose := append(slices.Clip(line), clamps...) // cords with an end that has no eye
	read := []wording.Tool{wording.Tackle, wording.CordPins, wording.CordTape}
	thread, trial := []wording.Tool{wording.StrongThread}, []wording.Tool{wording.Tackle, wording.Posts, wording.CordTape}
	return []task{
		{kind: wording.PullTrial, tools: trial, facts: build.hostFacts, shows: build.showHost},
		{kind: wording.TrialSplice, tools: append(slices.Clip(fids), trial...), facts: build.trialFacts, shows: build.showTrial},
		{kind: wording.ReadTrial, tools: trial, facts: build.trialReads},
		{kind: wording.PullCords, when: build.pulledFirst, tools: []wording.Tool{wording.Tackle, wording.Posts}, facts: build.pullFacts},
		{
			kind:  wording.CutCords,
			needs: marks,
			tools: []wording.Tool{wording.Tackle, wording.Posts, wording.CordPen, wording.CordTape},
			facts: build.cordFacts,
		},
		{kind: wording.SpliceEyes, when: build.eyesFirst, tools: loose, facts: build.eyeFacts, shows: build.showEyes},
		{kind: wording.HeadEyes, when: build.eyesLast, tools: loose, facts: build.eyeFacts, shows: build.showEyes},
		{kind: wording.FixedLines, when: fastened(cord.FixedEye), tools: line, facts: build.hangLineFacts},
		{kind: wording.StrapLines, when: fastened(cord.Strapped), tools: line, facts: build.hangLineFacts},
		{
			kind:  wording.SlidingLines,
			when:  fastened(cord.SlidingEye),
			tools: append(slices.Clip(line), wording.StrongThread),
			facts: build.hangLineFacts,
			shows: build.showLine,
		},
		{kind: wording.HitchedLines, when: fastened(cord.Hitched), tools: line, facts: build.hangLineFacts, shows: build.showLine},
		{kind: wording.RidgeLines, when: build.ridged, tools: line, facts: build.ridgeFacts},
		{kind: wording.FirstCorner, when: build.corded, tools: fids, facts: build.spliceFacts, shows: build.showCorner},
		{kind: wording.OtherCorner, when: build.corded, tools: fids},
		{kind: wording.ThreadLoops, when: build.looped, tools: thread, facts: build.threadFacts},
		{kind: wording.JoinLoops, when: build.looped, tools: fids, shows: build.showJoinedLoop},
		{kind: wording.SetLoops, when: build.loopsPulled, tools: pull, facts: build.pullFacts},
		{kind: wording.ReadLoops, when: build.looped, tools: read, facts: build.contractionFacts, shows: build.showChain},
		{kind: wording.SetChains, when: build.readPulled, tools: pull, bare: clamps, facts: build.setFacts},
		{kind: wording.ReadNodes, when: build.nodesRead, tools: read, bare: clamps, facts: build.chainFacts, shows: build.showChain},
		{
			kind:  wording.CheckNodes,
			when:  build.nodesMarked,
			tools: read,
			bare:  clamps,
			facts: build.contractionFacts,
			shows: build.showChain,
		},
		{kind: wording.LockBuries, tools: thread, facts: build.lockFacts, shows: build.showLock},
		{kind: wording.SeizeLoops, when: build.looped, tools: thread, facts: build.gapFacts, shows: build.showSeized},
		{kind: wording.ThreadChains, when: build.eyesFirst, tools: thread, facts: build.gapFacts, shows: build.showThreading},
		{kind: wording.ThreadBare, when: build.eyesLast, tools: thread, facts: build.gapFacts, shows: build.showThreading},
		{kind: wording.LastEyes, when: build.eyesLast, tools: fids, shows: build.showLastEyes},
		{kind: wording.ReadLastEyes, when: build.eyesLast, tools: append(slices.Clip(read), wording.StrongThread), facts: build.lastEyeFacts},
	}
}

func fittingTasks() []task {
	return []task{
		{kind: wording.CutBars, tools: []wording.Tool{wording.MeasuringTools, wording.TapeMeasure, wording.BarTools}, facts: build.barFacts,
			shows: build.showTip},
		{kind: wording.TackTails, tools: []wording.Tool{wording.TapeMeasure, wording.StrongThread}, facts: build.tackFacts},
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
		Needs: append(b.boardsFor(t.needs), b.toolNames(b.atHand(t))...)}
	if t.facts != nil {
		t.facts(b, &s)
	}
	if t.shows != nil {
		s.Figures = t.shows(b)
	}
	return s
}

// atHand returns the tools of a task.
func (b build) atHand(t task) []wording.Tool {
	if b.corded() && b.eyesLast() {
		return append(slices.Clip(t.tools), t.bare...)
	}
	return t.tools
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
