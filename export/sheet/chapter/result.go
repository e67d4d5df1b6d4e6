package chapter

import (
	"fmt"
	"math"
	"strings"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/words"
)

// subtitle says for whom it is.
func (b build) subtitle() string {
	s := b.Design.Sleeper
	return fmt.Sprintf(b.Say.Subtitle, b.Round(s.Stature), b.Mass(s.Mass), b.Digest, b.Mark)
}

// verdict sums up the checks.
func (b build) verdict() sheet.Verdict {
	grade, text := b.outcome()
	return sheet.Verdict{Grade: grade, Title: b.Say.Verdict.Grades[grade], Text: text}
}

func (b build) outcome() (sheet.Grade, string) {
	say := b.Say.Verdict
	unmet, unknown, waived := b.checks()
	off := b.seamsOff()
	switch {
	case len(unmet) > 0:
		return sheet.Bad, say.Unmet.Of(len(unmet))
	case len(off) > 0:
		return sheet.Bad, say.Off.Of(len(off))
	case b.Margins == nil:
		return sheet.Careful, say.Unchecked
	case len(waived) > 0:
		return sheet.Careful, fmt.Sprintf(say.Waived, len(waived))
	case len(b.Warnings) > 0 && len(unknown) == 0:
		return sheet.Careful, say.Warned
	case len(unknown) > 0:
		return sheet.Careful, say.Unknown.Of(len(unknown))
	}
	return sheet.Good, say.Met
}

// checks returns the checks that fail, that lack a value and that are waived.
func (b build) checks() (unmet, unknown, waived []margin.Check) {
	if b.Margins == nil {
		return nil, nil, nil
	}
	return b.Margins.Unmet(), b.Margins.Unknown(), b.Margins.Waived()
}

// seamsOff tells of the seams out of tolerance.
func (b build) seamsOff() []string {
	var out []string
	for _, s := range b.Sewn.Seams {
		if !s.Within() {
			out = append(out, fmt.Sprintf(b.Say.Result.Seam, b.Say.Names.Seam(s), b.Long(s.Remains), b.Long(s.Tolerance)))
		}
	}
	return out
}

// checkLine writes a check in one line.
func (b build) checkLine(c margin.Check) string {
	holds := b.Load(c.Capacity, c.Unit)
	if c.Bound {
		holds = fmt.Sprintf(b.Say.Result.AtMost, holds)
	}
	return fmt.Sprintf(b.Say.Result.Check, b.Say.Names.Margins.CheckName(c), b.Load(c.Load, c.Unit), holds, given.Times(c.Ratio),
		given.Times(c.Required))
}

// result is the first section: failed margins and cautions before anything else.
func (b build) result() (sheet.Section, error) {
	say := b.Say.Result
	s := sheet.Section{ID: "result", Title: say.Title}
	unmet, unknown, waived := b.checks()
	note := func(g sheet.Grade, title string, lines []string) {
		if len(lines) > 0 {
			s.Add(sheet.Notice{Grade: g, Title: title, Lines: lines})
		}
	}
	note(sheet.Bad, say.Unmet, each(unmet, b.checkLine))
	note(sheet.Bad, say.Off, b.seamsOff())
	note(sheet.Careful, say.Waived, each(waived, b.checkLine))
	if len(unknown) > 0 {
		note(sheet.Careful, say.Unknown, b.Say.Names.Margins.UnknownOf(*b.Margins))
	}
	note(sheet.Careful, say.Warnings, each(b.Warnings, func(w string) string { return given.Capital(w) + "." }))
	note(sheet.Careful, say.Cautions, b.cautions())
	return s, nil
}

// each writes a line for each of several things.
func each[T any](things []T, line func(T) string) []string {
	var out []string
	for _, t := range things {
		out = append(out, line(t))
	}
	return out
}

// cautions are what goes with every load figure, once in full.
func (b build) cautions() []string {
	var out []string
	for h, c := range b.Cautions {
		out = append(out, b.Say.Names.CautionLine(words.Hazard(h), c))
	}
	if b.Margins == nil {
		return out
	}
	if weak := b.Margins.Unproven(); len(weak) > 0 {
		parts := each(weak, func(p margin.Part) string { return b.Say.Names.Margins.Parts[p] })
		out = append(out, fmt.Sprintf(b.Say.Result.Unproven, given.Times(margin.ProofLeast), strings.Join(parts, ", ")))
	}
	return out
}

// carefully stands beside the load figures and points to the cautions.
func (b build) carefully() sheet.Para {
	return sheet.Para(fmt.Sprintf(b.Say.Result.Careful, b.Say.Result.Cautions))
}

// summary tables the main measures.
func (b build) summary() sheet.Table {
	say, bed, sh := b.Say.Summary, b.Design.Bed, b.Shape
	h, f := sh.Ends[hung.Head], sh.Ends[hung.Foot]
	t := sheet.Table{ID: "summary", Caption: say.Caption, Head: say.Columns[:], Words: []bool{true, true}}
	t.Add(say.Span, b.Round(bed.Span))
	t.Add(say.Bars, b.Both(b.Round(bed.HeadBar), b.Round(bed.FootBar)))
	t.Add(say.Drops, b.Both(b.Round(h.Section.Height), b.Round(f.Section.Height)))
	t.Add(say.Depth, b.Round(sh.Depth))
	t.Add(say.Tails, b.Both(b.Round(bed.HeadTail), b.Round(bed.FootTail)))
	t.Add(say.Overall, b.Round(f.ApexX-h.ApexX))
	t.Add(say.Angles, b.Both(b.Style.Angle(math.Atan(h.Slope)), b.Style.Angle(math.Atan(f.Slope))))
	// What is set are the anchors; where they are not known, the apexes are told for what they are.
	text, by := say.HigherApex, sh.Offset
	if b.Place != nil {
		text, by = say.Higher, b.Place.HeadAbove
	}
	high, low := hung.Head, hung.Foot
	if by < 0 {
		high, low, by = low, high, -by
	}
	ends := b.Say.Names.Ends
	t.Add(fmt.Sprintf(text, ends[high], ends[low]), b.Round(by))
	pull, _ := sh.MaxTension()
	t.Add(say.Tension, b.Force(pull))
	t.Add(say.Ends, say.Caps[b.Design.Cap.Kind])
	t.Add(say.Cut, say.Cuts[bed.Cut])
	t.Add(say.Load, b.loadWords())
	return t
}

// loadWords says what load the bed hangs level under.
func (b build) loadWords() string {
	say, s := b.Say.Summary, b.Design.Sleeper
	switch {
	case b.Design.Load.Model == design.Even:
		return fmt.Sprintf(say.Even, b.Mass(s.Mass))
	case s.Crown >= 0:
		return fmt.Sprintf(say.Inside, b.Mass(s.Mass), b.Round(s.Crown))
	}
	return fmt.Sprintf(say.Past, b.Mass(s.Mass), b.Round(-s.Crown))
}
