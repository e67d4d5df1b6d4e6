package chapter

import (
	"fmt"
	"math"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
)

// order is the work step by step with this design's figures.
func (b build) order() (sheet.Section, error) {
	s := sheet.Section{ID: "order", Title: "Order of work"}
	steps := sheet.Steps{b.stepMark(), b.stepCut(), b.stepPress()}
	if len(b.Sewn.Joins) > 0 {
		steps = append(steps, b.stepJoin())
	}
	if b.Design.Channel.Kind == design.Strip {
		steps = append(steps, b.stepOpenings())
	}
	steps = append(steps, b.stepEnds(), b.stepPin(), b.stepStitch(), b.stepCords())
	if !b.Design.Splice.Whole {
		steps = append(steps, b.stepEyes())
	}
	steps = append(steps, b.stepThread(), b.stepSplice(), b.stepBars(), b.stepTack(), b.stepHang(), b.stepCorrect())
	s.Blocks = append(s.Blocks, steps)
	if b.Accuracy != nil {
		s.Blocks = append(s.Blocks, b.effectsTable())
	}
	return s, nil
}

// piece returns the first cloth piece of a kind.
func (b build) piece(k piece.Kind) (piece.Piece, bool) {
	for _, p := range b.Sewn.Pieces {
		if p.Kind == k {
			return p, true
		}
	}
	return piece.Piece{}, false
}

// endAllowance adds what the body has at its ends.
func (b build) endAllowance(s *sheet.Step) {
	for _, q := range b.bodies() {
		for _, m := range q.Margins {
			if m.At == piece.AtEnds || m.At == piece.TurnedEnds {
				s.Add(b.marginWords(m), b.Long(m.Wide))
				return
			}
		}
	}
}

func (b build) stepMark() sheet.Step {
	s := sheet.Step{Title: "Mark and square", Text: "Press the cloth, cut its end square to the selvedge and lay it flat " +
		"without pull. Mark the pieces where the lay has them, finished lines and notches too. Then prove the body square: "}
	const shown = 4 // the diagonals and both ends; the rest stands with the piece
	bodies := b.bodies()
	if len(bodies) > 1 {
		s.Text += "each panel has to read as follows from corner to corner."
	} else {
		s.Text += "both diagonals have to read the same."
	}
	for _, q := range bodies {
		for _, c := range q.Checks[:min(shown, len(q.Checks))] {
			name := b.Names.Measure(c)
			if len(bodies) > 1 {
				name = q.Title + ", " + name
			}
			s.Add(name, b.Long(c.Length))
		}
	}
	return s
}

func (b build) stepCut() sheet.Step {
	d := b.Design
	s := sheet.Step{Title: "Cut", Text: "Cut on the outer lines only. Snip notches no deeper than half the allowance, one " +
		"stroke on the left and two on the right. " +
		"If the edge is melted, test a scrap first, draw the air off and keep the edge soft: a hard edge cuts skin and thread.",
	}
	s.Add("pieces of cloth", fmt.Sprint(b.clothCount()))
	s.Add("allowance at the body's sides", b.Long(d.Seam.Side))
	b.endAllowance(&s)
	if len(b.Sewn.Joins) > 0 {
		s.Add("allowance at the joins", b.Long(d.Seam.Join))
	}
	if d.Cap.Kind != design.Gathered {
		s.Add("allowance of the caps", b.Long(d.Seam.Cap))
	}
	return s
}

func (b build) clothCount() int {
	n := 0
	for _, p := range b.Sewn.Pieces {
		n += p.Count
	}
	return n
}

func (b build) stepPress() sheet.Step {
	d := b.Design
	s := sheet.Step{Title: "Press", Text: "Press each channel strip: ends in first, then both long edges under, then the " +
		"whole strip in half along the middle line. Try the iron on a scrap."}
	if d.Channel.Kind == design.Facing {
		s.Text = "Press the facings: ends in, then the inner edge under. Try the iron on a scrap."
	}
	s.Add("ends in", b.Long(d.Seam.End))
	s.Add("long edges under", b.Long(d.Channel.TurnUnder))
	if p, ok := b.piece(piece.Strip); ok {
		s.Add("middle line from each long edge", b.Long(p.Cut.Bounds().Height()/2))
	}
	if d.Cap.Kind != design.Gathered {
		s.Text += " Fold the caps' top edges two times for the hem."
		s.Add("cap hem, each fold", b.Long(d.Cap.Hem))
	}
	return s
}

// stepOpenings works the openings for the bars' tips.
func (b build) stepOpenings() sheet.Step {
	s := sheet.Step{Title: "Work the openings", Text: "Each strip has an opening in its fold for either bar's tip: bind or " +
		"buttonhole its edges before the slit is cut. Measured along the fold from the strip's folded head end:"}
	if p, ok := b.piece(piece.Strip); ok {
		for _, l := range p.Lines {
			if l.Role == piece.TipOpening {
				s.Add(b.Names.OfEnd(b.Names.Pieces.Opening, l.Index), b.Long(l.Points[0].X)+" to "+b.Long(l.Points[1].X))
			}
		}
	}
	return s
}

// stepEnds closes the tails.
func (b build) stepEnds() sheet.Step {
	d := b.Design
	if d.Cap.Kind == design.Gathered {
		s := sheet.Step{Title: "Turn the ends", Text: "Turn each end in two times and stitch beside the inner fold; the tunnel takes the drawstring."}
		s.Add("each fold", b.Long(d.Cap.Hem))
		return s
	}
	s := sheet.Step{Title: "Sew on the caps", Text: "Hem the caps' top edges. Pin each cap to its end of the body, right " +
		"sides together, notch on notch and corner on corner, and stitch on the finished line. " +
		"The body's edge is the longer one where ease is given: spread it between the notches, without a pleat."}
	for _, q := range b.Sewn.Seams {
		if q.Kind == piece.EndToCap {
			s.Add(b.Names.Seam(q), fmt.Sprintf("%s, ease %s %s", b.Long(q.Hung[1]), b.SignedFigure(q.Ease), b.Unit()))
		}
	}
	return s
}

// stepPin pins the channels to the body's sides.
func (b build) stepPin() sheet.Step {
	s := sheet.Step{Title: "Pin the channels", Text: "Slip the body's side into the folded strip, raw edge against nothing " +
		"but the fold's inside, finished line on stitch line. Pin at both ends, at the middle, at the quarters and at both bars, then between. " +
		"Distances along the strip's stitch line from its folded head end:"}
	if b.Design.Channel.Kind == design.Facing {
		s.Text = "Lay each facing on its side of the body, right sides together, and pin notch on notch, then between. " +
			"Distances along the seam from the head corner:"
	}
	for _, n := range b.Sewn.SideNotches {
		name := n.Name
		if n.Bar {
			name += ", at the bar"
		}
		s.Add(name, b.Long(n.At))
	}
	s.Add("foot end", b.Long(b.Sewn.SideNet.HungLength()))
	return s
}

// stepStitch sews the channels.
func (b build) stepStitch() sheet.Step {
	d := b.Design
	s := sheet.Step{Title: "Stitch the channels", Text: "Stitch through all layers along the inner folded edges. Lock each " +
		"end of the seam with a short row backwards; between the notches let the longer edge in evenly."}
	if d.Channel.Kind == design.Facing {
		s.Text = "Stitch the outer seam but for the openings at the bars, turn the facing over and stitch its inner fold down."
	}
	s.Add("stitch line from the folded edge", b.Long(d.Channel.Foot))
	s.Add("finished depth of the channel", b.Long(d.Channel.Depth))
	s.Add("rows", fmt.Sprint(d.Seam.Rows))
	s.Add("stitch length", b.Long(d.Seam.StitchLength))
	if d.Seam.ThreadName != "" {
		s.Add("thread", d.Seam.ThreadName)
	}
	return s
}

func (b build) stepCords() sheet.Step {
	s := sheet.Step{Title: "Cut and mark the cords", Text: "Draw the cord straight with the pull of a hand. Cut, then set " +
		"every mark from the same end, as the cord set shows. Mark right round the cord."}
	for _, c := range b.Cords.Cords {
		s.Add(b.CordName(c), fmt.Sprintf("%d × %s", c.Count, b.Long(c.Cut)))
	}
	return s
}

func (b build) stepEyes() sheet.Step {
	s := sheet.Step{Title: "Splice the eyes of the legs", Text: "Taper the tail from its taper mark to its end, cross it " +
		"through at the throat, bury it to the shoulder and milk the cover smooth. Stitch through the bury so that it cannot creep when slack."}
	thick := b.Design.Leg.Diameter
	if loop, _, err := b.Cords.Splicing.Eye(thick); err == nil {
		s.Add("cord in the loop", b.Long(loop))
	}
	s.Add("bury", b.Long(b.Cords.Splicing.EyeBury(thick)))
	for _, c := range b.Cords.Cords {
		for _, m := range c.Marks {
			if m.Spot == (cord.Spot{Kind: cord.Throat, On: cord.OfEye}) {
				s.Add(b.CordName(c)+", throat from the start", b.Long(m.FromStart))
			}
		}
	}
	return s
}

// stepThread draws the side cords into their channels.
func (b build) stepThread() sheet.Step {
	s := sheet.Step{Title: "Thread the side cords", Text: "Draw each side cord through its channel until its middle mark " +
		"stands at the middle notch and a tip mark stands in the middle of either opening. Bring both ends of the tip gap out at the openings."}
	part := cord.SideCord
	if b.Design.Splice.Whole {
		s.Text = "Lay each loop through its channel, two runs beside each other, join it and turn the join away from the " +
			"openings; the tip marks stand in the middle of the openings."
		part = cord.SideLoop
	}
	if c, ok := b.Cords.Find(part); ok {
		for _, m := range c.Marks {
			if at := m.Spot; !m.Buried && (at.Kind == cord.Tip || at == cord.Spot{Kind: cord.Middle}) {
				s.Add(b.Names.Cords.Spot(at)+", from the start", b.Long(m.FromStart))
			}
		}
	}
	return s
}

// stepSplice joins legs and side cords.
func (b build) stepSplice() sheet.Step {
	s := sheet.Step{Title: "Splice", Text: "Here each leg and its side cord take each other's tail, the tip gap open between " +
		"them. After each splice read the tape as the cord set says, before the next is made."}
	s.Add("tip gap", b.Long(b.Cords.Splicing.Gap))
	s.Add("bury of the side cord", b.Long(b.Cords.Splicing.Bury(b.Design.Side.Diameter)))
	s.Add("bury of the leg", b.Long(b.Cords.Splicing.Bury(b.Design.Leg.Diameter)))
	if b.Design.Splice.Whole {
		s.Text = "Splice each loop end to end and seize it at either side of both tip gaps, as the cord set says."
	}
	return s
}

// barCut is the length to cut a bar to: its cords stand beyond its ends by what
// the tips reach.
func (b build) barCut(e hung.End) float64 {
	return b.Shape.Ends[e].Bar - 2*b.Design.Bar.TipReach
}

func (b build) stepBars() sheet.Step {
	s := sheet.Step{Title: "Cut the bars", Text: "Cut both bars square, deburr them and fit the tips. Set each tip through " +
		"its opening into the tip gap."}
	for _, e := range hung.Ends() {
		s.Add(e.String()+" bar, cut length", b.Long(b.barCut(e)))
	}
	if b.Design.Bar.TipReach > 0 {
		s.Add("each tip holds its cord beyond the bar's end by", b.Long(b.Design.Bar.TipReach))
	}
	return s
}

func (b build) stepTack() sheet.Step {
	s := sheet.Step{Title: "Tack the tails' ends", Text: "With the bars in and the legs drawn straight, tack each corner of " +
		"the tails to its leg, so that the cloth cannot ride up. Distance along the leg from the bar's tip:"}
	for _, e := range hung.Ends() {
		s.Add(e.String()+" leg", b.Long(b.cornerRun(e)))
	}
	return s
}

// cornerRun returns the cord from a bar's tip to the cloth's corner when it hangs.
func (b build) cornerRun(e hung.End) float64 {
	side := b.Body.Side
	tip := b.Body.Tips[e]
	if e == hung.Head {
		return tip
	}
	return side.HungLength() - tip
}

func (b build) stepHang() sheet.Step {
	s := sheet.Step{Title: "Hang it low and test", Text: "Hang it so low that nobody can fall far, over soft ground. Load it " +
		"little by little: first with hands, then sitting, then lying, somebody beside it. Look over each splice, seam, " +
		"tip and hook after every step."}
	for _, e := range hung.Ends() {
		s.Add(e.String()+" hang line above the level", given.Degrees(math.Atan(b.Shape.Ends[e].Slope)))
	}
	higher, by := "head", b.Shape.Offset
	if by < 0 {
		higher, by = "foot", -by
	}
	s.Add(higher+" apex above the other", b.Round(by))
	if b.Place != nil {
		for _, e := range hung.Ends() {
			s.Add(e.String()+" support above ground", b.Round(b.Place.Ends[e].Hook))
		}
	}
	return s
}

func (b build) stepCorrect() sheet.Step {
	sh := b.Shape
	mid := sh.At(0)
	s := sheet.Step{Title: "Measure and correct", Text: "With the sleeper in it and everything settled, measure and compare. " +
		"A bar that stands askew has one leg too long: take that leg's eye in. An end that hangs low as a whole wants a " +
		"shorter hang line first. " +
		"Write down what a leg was changed by, so that the next one is cut right."}
	s.Add("hook to hook, level", b.Round(sh.Ends[hung.Foot].ApexX-sh.Ends[hung.Head].ApexX))
	s.Add("cords above the bed's bottom at the head bar", b.Round(sh.Ends[hung.Head].Section.Height))
	s.Add("at mid-bay", b.Round(mid.Z-mid.Bottom))
	s.Add("at the foot bar", b.Round(sh.Ends[hung.Foot].Section.Height))
	s.Add("cords apart at mid-bay", b.Round(2*mid.Y))
	s.Add("body, bar to bar along the bottom", b.Round(b.bottomSpan()))
	return s
}

// bottomSpan is the distance of the bars along the bottom line.
func (b build) bottomSpan() float64 {
	half := b.Design.Bed.Span / 2
	a := geom.Pt(-half, b.Shape.Problem.Bottom(-half))
	return a.Dist(geom.Pt(half, b.Shape.Problem.Bottom(half)))
}
