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
)

// verdict sums up the checks.
func (b build) verdict() sheet.Verdict {
	unmet, unknown, waived := b.checks()
	off := b.seamsOff()
	switch {
	case len(unmet) > 0:
		return sheet.Verdict{Grade: sheet.Bad, Text: fmt.Sprintf("%s not met. Do not hang anybody in it before that is mended.",
			given.Counted(len(unmet), "required margin is", "required margins are"))}
	case len(off) > 0:
		return sheet.Verdict{Grade: sheet.Bad, Text: fmt.Sprintf("%s out of tolerance.", given.Counted(len(off), "seam is", "seams are"))}
	case b.Margins == nil:
		return sheet.Verdict{Grade: sheet.Careful, Text: "Strength was not checked: see what is missing below."}
	case len(waived) > 0:
		return sheet.Verdict{Grade: sheet.Careful, Text: fmt.Sprintf("Checks that fail were waived by name: %d. Everything else that is known is met.", len(waived))}
	case len(b.Warnings) > 0 && len(unknown) == 0:
		return sheet.Verdict{Grade: sheet.Careful, Text: "Every required margin is met and every seam is in tolerance; read what to know before cutting."}
	case len(unknown) > 0:
		return sheet.Verdict{Grade: sheet.Careful, Text: fmt.Sprintf("Every margin that can be worked out is met; for %s a data sheet value is missing.",
			given.Counted(len(unknown), "check", "checks"))}
	}
	return sheet.Verdict{Grade: sheet.Good, Text: "Every required margin is met and every seam is in tolerance."}
}

// checks returns the checks that fail, that lack a value and that are waived.
func (b build) checks() (unmet, unknown, waived []margin.Check) {
	if b.Margins == nil {
		return nil, nil, nil
	}
	return b.Margins.Unmet(), b.Margins.Unknown(), b.Margins.Waived()
}

// seamsOff returns the names of seams out of tolerance.
func (b build) seamsOff() []string {
	var out []string
	for _, s := range b.Sewn.Seams {
		if !s.Within() {
			out = append(out, fmt.Sprintf("%s: %s remain beyond the planned ease, %s are allowed", b.Names.Seam(s), b.Long(s.Remains), b.Long(s.Tolerance)))
		}
	}
	return out
}

// checkLine writes a check in one line.
func (b build) checkLine(c margin.Check) string {
	bound := ""
	if c.Bound {
		bound = "at most "
	}
	return fmt.Sprintf("%s: load %s, holds %s%s, margin %s of %s required", b.Names.Margins.CheckName(c), b.Load(c.Load, c.Unit),
		bound, b.Load(c.Capacity, c.Unit), given.Times(c.Ratio), given.Times(c.Required))
}

// result is the first section: failed margins and cautions before anything else,
// then what the design is.
func (b build) result() (sheet.Section, error) {
	s := sheet.Section{ID: "result", Title: "What it is, and what the checks say"}
	unmet, unknown, waived := b.checks()
	add := func(g sheet.Grade, title string, checks []margin.Check) {
		if len(checks) == 0 {
			return
		}
		n := sheet.Notice{Grade: g, Title: title}
		for _, c := range checks {
			n.Lines = append(n.Lines, b.checkLine(c))
		}
		s.Blocks = append(s.Blocks, n)
	}
	add(sheet.Bad, "Required margins that are not met", unmet)
	if off := b.seamsOff(); len(off) > 0 {
		s.Blocks = append(s.Blocks, sheet.Notice{Grade: sheet.Bad, Title: "Seams out of tolerance", Lines: off})
	}
	add(sheet.Careful, "Checks that fail and were waived by name", waived)
	if len(unknown) > 0 {
		s.Blocks = append(s.Blocks, sheet.Notice{Grade: sheet.Careful, Title: "Not known for want of values from data sheets", Lines: b.missing(unknown)})
	}
	if len(b.Warnings) > 0 {
		n := sheet.Notice{Grade: sheet.Careful, Title: "Know this before cutting"}
		for _, w := range b.Warnings {
			n.Lines = append(n.Lines, given.Capital(w)+".")
		}
		s.Blocks = append(s.Blocks, n)
	}
	s.Blocks = append(s.Blocks, b.cautions(), b.summary())
	return s, nil
}

// missing lists what is not known, each missing key once with what hangs on it.
func (b build) missing(checks []margin.Check) []string {
	var keys []design.Key
	on := map[design.Key][]string{}
	for _, c := range checks {
		for _, k := range c.Missing {
			if on[k] == nil {
				keys = append(keys, k)
			}
			on[k] = append(on[k], b.Names.Margins.CheckName(c))
		}
	}
	var out []string
	for _, k := range keys {
		out = append(out, fmt.Sprintf("%s: needed for %s", k, strings.Join(on[k], "; ")))
	}
	return out
}

// cautionTitle heads the cautions.
const cautionTitle = "Before anybody lies in it"

// cautions are what goes with every load figure, once in full.
func (b build) cautions() sheet.Notice {
	return sheet.Notice{Grade: sheet.Careful, Title: cautionTitle, Lines: b.Names.Cautions}
}

// carefully stands beside the load figures and points to the cautions.
func carefully() sheet.Para {
	return sheet.Para("One resting person only; low at first, over soft ground. What stands at the top of this " +
		"sheet under “" + cautionTitle + "” goes with every load.")
}

// summary tables the main measures.
func (b build) summary() sheet.Table {
	bed, sh := b.Design.Bed, b.Shape
	t := sheet.Table{ID: "summary", Caption: "The bed in short", Head: []string{"measure", "value"}, Words: []bool{true, true}}

	t.Add("span between the bars", b.Round(bed.Span))
	t.Add("bars, head and foot, between cord centres", b.Round(bed.HeadBar)+" and "+b.Round(bed.FootBar))
	t.Add("drop at the bars, head and foot", b.Round(sh.Ends[hung.Head].Section.Height)+" and "+b.Round(sh.Ends[hung.Foot].Section.Height))
	t.Add("side depth, flat, at the cord line", b.Round(sh.Depth))
	t.Add("tails past the bars, head and foot", b.Round(bed.HeadTail)+" and "+b.Round(bed.FootTail))
	t.Add("overall length, hook to hook", b.Round(sh.Ends[hung.Foot].ApexX-sh.Ends[hung.Head].ApexX))
	t.Add("hang angles, head and foot", given.Degrees(math.Atan(sh.Ends[hung.Head].Slope))+" and "+given.Degrees(math.Atan(sh.Ends[hung.Foot].Slope)))
	pull, _ := sh.MaxTension()
	high, low, by := hung.Head, hung.Foot, sh.Offset
	if by < 0 {
		high, low, by = low, high, -by
	}
	t.Add(fmt.Sprintf("%s hook above the %s hook, hooks straight at the apexes", high, low), b.Round(by))
	t.Add("largest cord tension", b.Force(pull))
	t.Add("ends", capKind(b.Design.Cap.Kind))
	cut := "shaped on a net of threads that do not stretch"
	if bed.Cut == design.Straight {
		cut = "straight tails"
	}
	t.Add("cut of the body", cut)
	t.Add("load", b.loadWords())
	return t
}

// loadWords says what load the bed hangs level under.
func (b build) loadWords() string {
	if b.Design.Load.Model == design.Even {
		return b.Mass(b.Design.Sleeper.Mass) + " spread evenly"
	}
	where := "past the head bar, over the tail"
	if b.Design.Sleeper.Crown >= 0 {
		where = "inside the head bar"
	}
	c := b.Design.Sleeper.Crown
	return fmt.Sprintf("a sleeper of %s, top of the head %s %s", b.Mass(b.Design.Sleeper.Mass), b.Round(max(c, -c)), where)
}

// capKind names the ends' closing in words.
func capKind(k design.CapKind) string {
	switch k {
	case design.Leaning:
		return "caps square to the rising cords"
	case design.Gathered:
		return "gathered by a drawstring"
	}
	return "upright caps"
}

// subtitle says for whom it is.
func (b build) subtitle() string {
	s := b.Design.Sleeper
	return fmt.Sprintf("Bridge hammock for a sleeper of %s and %s; build sheet of design %s",
		b.Round(s.Stature), b.Mass(s.Mass), b.Digest)
}
