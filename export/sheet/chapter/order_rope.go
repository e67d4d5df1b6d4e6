package chapter

import (
	"fmt"
	"math"
	"slices"

	"slingloft/export/sheet"
	"slingloft/export/sheet/seam"
	"slingloft/export/sheet/splice"
	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// What first load does to the cords is pulled out of them before they are marked, or of
// the spliced chains; or it is cut off or left.

func (b build) pulledFirst() bool {
	a := b.Design.Accuracy
	return a.FirstLoad == design.PullSet && !a.NodesRead
}

func (b build) pulledLast() bool {
	a := b.Design.Accuracy
	return a.FirstLoad == design.PullSet && a.NodesRead
}

func (b build) readPulled() bool  { return b.corded() && b.pulledLast() }
func (b build) loopsPulled() bool { return b.looped() && b.pulledLast() }

func (b build) nodesRead() bool   { return b.corded() && b.Design.Accuracy.NodesRead }
func (b build) nodesMarked() bool { return b.corded() && !b.Design.Accuracy.NodesRead }

// An eye goes through the channel first, or has to be made when its leg is through.

func (b build) eyesFirst() bool { return b.Design.Passage().Threading == design.EyesFirst }
func (b build) eyesLast() bool  { return b.Design.Passage().Threading == design.LastEyeAfter }

// fastened reports whether there are hang lines of a kind.
func fastened(f cord.Fastening) func(build) bool {
	return func(b build) bool { return len(b.Cords.Lines) > 0 && b.Cords.Lines[0].Fastening == f }
}

func (b build) pullFacts(s *sheet.Step) {
	say := b.Say.Order
	s.Add(say.PullOf, b.weighed(accuracy.Pull(b.Shape), false))
	if b.pulledFirst() {
		s.Add(say.PostThick, b.posts())
		for _, q := range cord.Spools(b.Cords.Cords, b.Design.Splice.Waste) {
			fast := 2 * cord.Fast(q.Kind.Diameter, cord.Thickest(b.Cords.Cords))
			s.Add(fmt.Sprintf(say.BetweenPosts, q.Name), b.Round(q.Net+fast))
			s.Add(fmt.Sprintf(say.EachSplit, q.Name), b.Round(fast))
		}
		return
	}
	b.pins(s, b.corded())
}

// posts tells how thick posts are that cords are made fast to.
func (b build) posts() string {
	least, most := cord.Posts(cord.Thickest(b.Cords.Cords))
	return fmt.Sprintf(b.Say.Order.FromTo, b.Round(least), b.Round(most))
}

// read tells under what a single cord is read, on which pins, and how near is near enough.
func (b build) read(s *sheet.Step) {
	say := b.Say.Order
	s.Add(say.LightPull, b.weighed(cord.LightPull, false))
	b.pins(s, false)
	b.farOff(s)
}

// farOff tells how near a reading of the nodes has to be, where the design says.
func (b build) farOff(s *sheet.Step) {
	if off := b.nodesOff(); off > 0 {
		s.Add(b.Say.Order.FarOff, b.Rope(off))
	}
}

// pins tells how thick the pins are that eyes and gaps hang on.
func (b build) pins(s *sheet.Step, gaps bool) {
	say := b.Say.Order
	s.Add(say.PinInEye, b.Thick(b.Cords.Splicing.Hook))
	if gaps {
		s.Add(say.PinInGap, b.tipPin())
	}
}

// hostFacts tells which cords a trial splice is made of, and how its host is pulled.
func (b build) hostFacts(s *sheet.Step) {
	all := b.Cords.Trials(b.Style.Inches)
	if len(all) == 0 {
		return
	}
	say := b.Say.Order
	which := say.OneTrial
	if len(all) > 1 {
		which = say.EachTrial
	}
	s.Do = slices.Insert(s.Do, 1, which)
	if lines := b.Cords.Lines; len(lines) > 0 && lines[0].Fastening.Adjustable() && lines[0].Kind != b.Design.Side &&
		lines[0].Kind != b.Design.Leg {
		s.Do = slices.Insert(s.Do, 2, say.NoTrialOfLines)
	}
	for _, t := range all {
		add := b.ofTrial(s, t, len(all))
		if len(all) == 1 {
			s.Add(say.TrialOf, t.Kind.Name)
		}
		add(say.Host, b.Rope(t.Host))
		add(say.Own, b.Rope(t.Own))
	}
	s.Add(say.PostThick, b.posts())
	s.Add(say.PullOf, b.weighed(accuracy.Pull(b.Shape), false))
}

// trialFacts proposes a trial splice of each cord that needs one.
func (b build) trialFacts(s *sheet.Step) {
	say, all := b.Say.Order, b.Cords.Trials(b.Style.Inches)
	for _, t := range all {
		add := b.ofTrial(s, t, len(all))
		add(say.Apart, b.Rope(t.Apart))
		add(say.Buried, b.Rope(t.Bury))
		add(say.Tapered, b.Rope(t.Taper))
	}
	b.fidFact(s)
	s.Add(say.LightPull, b.weighed(cord.LightPull, false))
}

// ofTrial returns what adds a figure of one of several trials.
func (b build) ofTrial(s *sheet.Step, t cord.Trial, of int) func(name, value string) {
	return func(name, value string) {
		if of > 1 {
			name = fmt.Sprintf(b.Say.Order.Of, t.Kind.Name, name)
		}
		s.Add(name, value)
	}
}

// fidFact tells what fids have to be.
func (b build) fidFact(s *sheet.Step) {
	long := 0.0
	for _, d := range b.diameters() {
		long = max(long, cord.FidDiameters*d)
	}
	s.Add(b.Say.Order.FidSize, fmt.Sprintf(b.Say.Order.FidOf, b.spliced(), b.Rope(long)))
}

// trialReads tells what a trial splice should show, and what to write if it does not.
func (b build) trialReads(s *sheet.Step) {
	say, all := b.Say.Order, b.Cords.Trials(b.Style.Inches)
	s.Add(say.PullOf, b.weighed(accuracy.Pull(b.Shape), false))
	s.Add(say.LightPull, b.weighed(cord.LightPull, false))
	for _, t := range all {
		b.ofTrial(s, t, len(all))(say.Expected, fmt.Sprintf(say.Within, b.Rope(t.After), b.Rope(splice.Off(b.Data, t))))
	}
	for _, t := range all {
		add := b.ofTrial(s, t, len(all))
		b.trialLines(add, t.Apart, t.Bury)
		add(say.Another, b.Rope(t.Host+t.Own))
	}
	s.Add(say.PrintAnew, b.anew())
}

// trialLines tells what of a trial to write into the design: marks so far apart before,
// with so much buried between them.
func (b build) trialLines(add func(name, value string), apart, bury float64) {
	say := b.Say.Order
	add(say.Trial, "[["+string(design.KeySpliceTrial)+"]]")
	add(say.TrialBefore, b.line(design.KeySpliceTrialBefore, b.Rope(apart)))
	add(say.TrialBuried, b.line(design.KeySpliceTrialBuried, b.Rope(bury)))
	add(say.TrialAfter, b.line(design.KeySpliceTrialAfter, "… "+b.Unit()))
}

// contractionFacts tells which splice of the bed itself to write into the design as a trial,
// where all nodes are off alike: the first that a tape reads between two marks.
func (b build) contractionFacts(s *sheet.Step) {
	b.chainFacts(s)
	part, bury := cord.HeadLeg, b.Cords.Splicing.EyeBury(b.Design.Leg.Diameter)
	if b.looped() {
		part, bury = cord.SideLoop, b.Cords.Splicing.Bury(b.Design.Side.Diameter)
	}
	c, ok := b.Cords.Find(part)
	if !ok || len(c.Steps) == 0 || len(c.Steps[0].Reads) == 0 {
		return
	}
	say, names, r := b.Say.Order, b.Say.Names.Cords, c.Steps[0].Reads[0]
	s.Add(fmt.Sprintf(say.TrialOn, b.CordName(c)), fmt.Sprintf(say.FromTo, names.Spot(r.From), names.Spot(r.To)))
	b.trialLines(s.Add, r.Before, bury)
	s.Add(say.PrintAnew, b.anew())
}

// line is a line of the design: a key and its value.
func (b build) line(k design.Key, value string) string {
	return fmt.Sprintf(b.Say.FirstNight.Key, k.Name(), value)
}

// cordFacts tells what is cut from which cord.
func (b build) cordFacts(s *sheet.Step) {
	say := b.Say.Order
	if _, ok := b.board(piece.CordBoard); ok {
		s.Do = append(s.Do, say.Gauged)
	}
	s.Add(say.LightPull, b.weighed(cord.LightPull, false))
	s.Add(say.PostThick, b.posts())
	for _, c := range b.Cords.Cords {
		s.Add(fmt.Sprintf(say.CordOf, b.CordName(c), c.Kind.Name), fmt.Sprintf("%d × %s", c.Count, b.Rope(c.Cut)))
	}
}

func (b build) lockFacts(s *sheet.Step) {
	if b.looped() {
		s.Do = slices.Insert(s.Do, 0, b.Say.Order.JoinOut)
		s.Do = append(s.Do, b.Say.Order.JoinBack)
	}
	if all := splice.Splices(b.Cords); len(all) > 0 {
		s.Add(b.Say.Order.StitchEach, b.Rope(splice.LockStitch(all[0])))
	}
}

// ridged reports whether there is a ridge line for a shelter.
func (b build) ridged() bool { _, ok := b.Cords.Find(cord.RidgeLine); return ok }

// ridgeFacts tells what a tape shows on the ridge line.
func (b build) ridgeFacts(s *sheet.Step) {
	say := b.Say.Order
	if c, ok := b.Cords.Find(cord.RidgeLine); ok {
		ridge := b.Shelter.Ridge
		s.Add(say.RidgeLong, b.Round(ridge))
		if p := b.Place; p != nil {
			s.Add(say.RidgeTies, b.Round((p.Distance-ridge)/2))
			if b.tarped() {
				s.Add(say.RidgeOver, b.Round(b.ridgeUp()))
			} else {
				s.Add(say.RidgeOver, fmt.Sprintf(b.Say.FirstNight.AtLeast, b.Round(max(p.Ends[0].Hook, p.Ends[1].Hook))))
			}
		}
		b.read(s)
		b.hookReads(s, c)
	}
}

func (b build) eyeFacts(s *sheet.Step) {
	say := b.Say.Order
	thick := b.Design.Leg.Diameter
	if loop, _, err := b.Cords.Splicing.Eye(thick); err == nil {
		s.Add(say.EyeLoop, b.Rope(loop))
	}
	s.Add(say.Bury, b.diametersOf(b.Cords.Splicing.EyeBury(thick), thick))
	b.fidFact(s)
	for _, c := range b.Cords.Cords {
		for _, m := range c.Marks {
			if m.Spot == (cord.Spot{Kind: cord.Throat, On: cord.OfEye}) {
				s.Add(fmt.Sprintf(say.Throat, b.CordName(c)), b.Rope(m.FromStart))
			}
		}
	}
	b.read(s)
	for _, c := range b.Cords.Cords {
		if c.Part == cord.HeadLeg || c.Part == cord.FootLeg && b.eyesFirst() {
			r := c.Steps[0].Reads
			last := r[len(r)-1]
			s.Add(fmt.Sprintf(say.NodeOf, b.CordName(c), fmt.Sprintf(say.ToHook, b.Say.Names.Cords.Spot(last.From))), b.Rope(last.After))
		}
	}
}

// diametersOf tells a length of cord, and how many diameters that is.
func (b build) diametersOf(mm, diameter float64) string {
	return fmt.Sprintf(b.Say.Order.OfDiameters, b.Rope(mm), quantity.Decimal(mm/diameter, 0))
}

// hangLineFacts tells what a tape shows on each hang line from hook to hook.
func (b build) hangLineFacts(s *sheet.Step) {
	b.fidFact(s)
	b.read(s)
	for _, l := range b.Cords.Lines {
		b.hookReads(s, l.Cord)
	}
}

// hookReads tells what a tape shows on a line from one of its marks to a hanging point.
func (b build) hookReads(s *sheet.Step, c cord.Cord) {
	for _, st := range c.Steps {
		for _, r := range st.Reads {
			if r.To.Kind == cord.Hook {
				s.Check(fmt.Sprintf(b.Say.Order.NodeOf, b.CordName(c), fmt.Sprintf(b.Say.Order.ToHook, b.Say.Names.Cords.Spot(r.From))),
					b.Rope(r.After))
			}
		}
	}
}

// threadFacts tells the marks by which loops are threaded.
func (b build) threadFacts(s *sheet.Step) {
	if c, ok := b.Cords.Find(cord.SideLoop); ok {
		for _, m := range c.Marks {
			if at := m.Spot; !m.Buried && (at.Kind == cord.Tip || at.Kind == cord.Middle) {
				s.Add(fmt.Sprintf(b.Say.Order.FromStart, b.Say.Names.Cords.Spot(at)), b.Rope(m.FromStart))
			}
		}
	}
}

func (b build) spliceFacts(s *sheet.Step) {
	say := b.Say.Order
	s.Check(say.TipGap, b.Rope(b.Cords.Splicing.Gap))
	side, leg := b.Design.Side.Diameter, b.Design.Leg.Diameter
	s.Add(say.SideBury, b.diametersOf(b.Cords.Splicing.Bury(side), side))
	s.Add(say.LegBury, b.diametersOf(b.Cords.Splicing.Bury(leg), leg))
}

// gapFacts tells the opening and the gap that is drawn out of it.
func (b build) gapFacts(s *sheet.Step) {
	s.Check(b.Say.Order.TipGap, b.Rope(b.Cords.Splicing.Gap))
	s.Add(b.Say.Order.Opening, b.Cloth(b.Design.Channel.Opening))
}

// nodeFacts tells what a tape shows at every node; tips and the far hook are checked on
// the shop pages too.
func (b build) nodeFacts(s *sheet.Step) {
	say := b.Say.Order
	s.Add(say.LightPull, b.weighed(b.Cords.ReadPull(), false))
	b.pins(s, b.corded())
	b.farOff(s)
	for _, n := range splice.Readable(b.Data) {
		if n.At == 0 {
			continue
		}
		name := fmt.Sprintf(say.NodeOf, b.CordName(cord.Cord{Part: n.Part}), b.Say.Names.Cords.Spot(n.Spot))
		if n.Spot.Kind == cord.Tip || n.Spot.Kind == cord.Hook {
			s.Check(name, b.Rope(n.At))
			continue
		}
		s.Add(name, b.Rope(n.At))
	}
}

// chainFacts tells where a chain is pulled, behind what it hangs on at its head, and what a
// tape shows on it.
func (b build) chainFacts(s *sheet.Step) {
	if b.corded() {
		s.Do = slices.Insert(s.Do, 2, b.pulls())
	}
	b.nodeFacts(s)
}

// setFacts tells likewise how chains are set.
func (b build) setFacts(s *sheet.Step) {
	s.Do = slices.Insert(s.Do, 2, b.pulls())
	b.pullFacts(s)
}

func (b build) pulls() string {
	if b.eyesLast() {
		return b.Say.Order.PullsEnd
	}
	return b.Say.Order.PullsEye
}

// nodesOff is how far off a node may be, mm: by two readings of the tape where nodes are
// set by it, else by what the cords' marks and buries may be off together. 0: not known.
func (b build) nodesOff() float64 {
	if b.Design.Accuracy.NodesRead {
		return 2 * b.Design.Accuracy.Reading
	}
	if b.Accuracy == nil {
		return 0
	}
	off := 0.0
	for _, l := range b.Accuracy.Lengths {
		off = math.Hypot(off, l.RSS)
	}
	return off
}

func (b build) showHost() sheet.Figures {
	if len(b.Cords.Cords) == 0 {
		return nil
	}
	return figure(splice.Pulled(b.Data), b.Say.Splicing.Pulled.Caption)
}

func (b build) showTrial() sheet.Figures {
	all := splice.Splices(b.Cords)
	if len(all) == 0 {
		return nil
	}
	return figure(splice.Tried(b.Data, all[0]), b.Say.Splicing.Trial.Caption)
}

// lastEyeFacts tells where eyes that are made last have to lie, from the foot tip.
func (b build) lastEyeFacts(s *sheet.Step) {
	say, tip := b.Say.Order, 0.0
	s.Add(say.LightPull, b.weighed(cord.LightPull, false))
	b.pins(s, true)
	b.farOff(s)
	for _, n := range b.Cords.Nodes(b.Cords.ReadPull()) {
		switch {
		case n.Part == cord.SideCord && n.Spot.Kind == cord.Tip:
			tip = n.At
		case n.Part == cord.FootLeg && (n.Spot.Kind == cord.Throat || n.Spot.Kind == cord.Hook):
			s.Check(fmt.Sprintf(say.FromTip, b.Say.Names.Cords.Spot(n.Spot)), b.Rope(n.At-tip))
		}
	}
}

// bury shows the stages of a bury: its taper, the fid and how it is milked.
func (b build) bury(s splice.Splice) sheet.Figures {
	say := b.Say.Splicing
	out := figure(splice.Taper(b.Data, s), say.Taper.Caption)
	out = append(out, figure(splice.Entering(b.Data, s), say.Entering[s.Kind].Caption)...)
	return append(out, figure(splice.Milked(b.Data, s), say.Milked.Caption)...)
}

func (b build) showEyes() sheet.Figures {
	all := splice.Splices(b.Cords)
	if len(all) == 0 {
		return nil
	}
	return append(figure(splice.EyeFree(b.Data), b.Say.Splicing.EyeFree.Caption), b.bury(all[0])...)
}

func (b build) showLine() sheet.Figures {
	l := b.Cords.Lines[0]
	words := b.Say.Splicing.Hitch
	if l.Fastening == cord.SlidingEye {
		words = b.Say.Splicing.Sliding
	}
	return figure(splice.Fastened(b.Data, l), words.Caption)
}

func (b build) showCorner() sheet.Figures {
	say, d := b.Say.Splicing, b.Data
	var out sheet.Figures
	for _, s := range splice.Splices(b.Cords) {
		if s.Kind != splice.OfEye {
			out = append(out, figure(splice.Entering(d, s), say.Entering[s.Kind].Caption)...)
		}
	}
	out = append(out, figure(splice.Crossing(d), say.Crossing.Caption)...)
	out = append(out, figure(splice.Corner(d), say.Corner.Caption)...)
	return append(out, figure(splice.Parting(d), say.Parting.Caption)...)
}

func (b build) showJoinedLoop() sheet.Figures {
	all := splice.Splices(b.Cords)
	if len(all) == 0 {
		return nil
	}
	return append(b.bury(all[0]), figure(splice.Join(b.Data), b.Say.Splicing.Join.Caption)...)
}

func (b build) showChain() sheet.Figures {
	return append(figure(splice.Chain(b.Data), b.Say.Splicing.Chain.Caption), figure(splice.OnPin(b.Data), b.Say.Splicing.OnPin.Caption)...)
}

func (b build) showLock() sheet.Figures {
	all := splice.Splices(b.Cords)
	if len(all) == 0 {
		return nil
	}
	return figure(splice.Locked(b.Data, all[0]), b.Say.Splicing.Locked.Caption)
}

// showOpening shows the opening of a channel with its gap drawn out.
func (b build) showOpening() sheet.Figures {
	words := b.Say.Stitching.SlitOpening
	if b.facings() {
		words = b.Say.Stitching.SeamOpening
	}
	return figure(seam.Opening(b.Data), words.Caption)
}

func (b build) showSeized() sheet.Figures {
	out := figure(splice.Seized(b.Data), b.Say.Splicing.Seized.Caption)
	out = append(out, figure(splice.Parting(b.Data), b.Say.Splicing.Parting.Caption)...)
	return append(out, b.showOpening()...)
}

func (b build) showThreading() sheet.Figures {
	words := b.Say.Splicing.EyesFirst
	if b.eyesLast() {
		words = b.Say.Splicing.LastEye
	}
	return append(figure(splice.Threading(b.Data), words.Caption), b.showOpening()...)
}

func (b build) showLastEyes() sheet.Figures {
	return figure(splice.EyeTurned(b.Data), b.Say.Splicing.EyeTurned.Caption)
}
