package sheet

import (
	"fmt"
	"strings"

	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
)

// verdict sums up the checks.
func (b *builder) verdict() Verdict {
	unmet, unknown, waived := b.checks()
	off := b.seamsOff()
	switch {
	case len(unmet) > 0:
		return Verdict{Bad, fmt.Sprintf("%s not met. Do not hang anybody in it before that is mended.",
			counted(len(unmet), "required margin is", "required margins are"))}
	case len(off) > 0:
		return Verdict{Bad, fmt.Sprintf("%s out of tolerance.", counted(len(off), "seam is", "seams are"))}
	case b.Margins == nil:
		return Verdict{Careful, "Strength was not checked: see what is missing below."}
	case len(waived) > 0:
		return Verdict{Careful, fmt.Sprintf("Checks that fail were waived by name: %d. Everything else that is known is met.", len(waived))}
	case len(b.Warnings) > 0 && len(unknown) == 0:
		return Verdict{Careful, "Every required margin is met and every seam is in tolerance; read what to know before cutting."}
	case len(unknown) > 0:
		return Verdict{Careful, fmt.Sprintf("Every margin that can be worked out is met; for %s a data sheet value is missing.",
			counted(len(unknown), "check", "checks"))}
	}
	return Verdict{Good, "Every required margin is met and every seam is in tolerance."}
}

// counted returns a number with the form that goes with it.
func counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

// checks returns the checks that fail, that lack a value and that are waived.
func (b *builder) checks() (unmet, unknown, waived []margin.Check) {
	if b.Margins == nil {
		return nil, nil, nil
	}
	return b.Margins.Unmet(), b.Margins.Unknown(), b.Margins.Waived()
}

// seamsOff returns the names of seams out of tolerance.
func (b *builder) seamsOff() []string {
	var out []string
	for _, s := range b.Sewn.Seams {
		if !s.Within() {
			out = append(out, fmt.Sprintf("%s: %s remain beyond the planned ease, %s are allowed", b.words.Seam(s), b.long(s.Remains), b.long(s.Tolerance)))
		}
	}
	return out
}

// checkLine writes a check in one line.
func (b *builder) checkLine(c margin.Check) string {
	bound := ""
	if c.Bound {
		bound = "at most "
	}
	return fmt.Sprintf("%s: load %s, holds %s%s, margin %s of %s required", b.words.Margins.CheckName(c), b.load(c.Load, c.Unit),
		bound, b.load(c.Capacity, c.Unit), times(c.Ratio), times(c.Required))
}

// load writes a load in a check's unit.
func (b *builder) load(v float64, unit margin.Unit) string {
	if unit == margin.Force {
		return b.force(v)
	}
	return b.Style.PerWidth(v)
}

// result is the first section: failed margins and cautions before anything else,
// then what the design is.
func (b *builder) result() (Section, error) {
	s := Section{ID: "result", Title: "What it is, and what the checks say"}
	unmet, unknown, waived := b.checks()
	add := func(g Grade, title string, checks []margin.Check) {
		if len(checks) == 0 {
			return
		}
		n := Notice{Grade: g, Title: title}
		for _, c := range checks {
			n.Lines = append(n.Lines, b.checkLine(c))
		}
		s.Blocks = append(s.Blocks, n)
	}
	add(Bad, "Required margins that are not met", unmet)
	if off := b.seamsOff(); len(off) > 0 {
		s.Blocks = append(s.Blocks, Notice{Bad, "Seams out of tolerance", off})
	}
	add(Careful, "Checks that fail and were waived by name", waived)
	if len(unknown) > 0 {
		s.Blocks = append(s.Blocks, Notice{Careful, "Not known for want of values from data sheets", b.missing(unknown)})
	}
	if len(b.Warnings) > 0 {
		n := Notice{Grade: Careful, Title: "Know this before cutting"}
		for _, w := range b.Warnings {
			n.Lines = append(n.Lines, capital(w)+".")
		}
		s.Blocks = append(s.Blocks, n)
	}
	s.Blocks = append(s.Blocks, b.cautions(), b.summary())
	return s, nil
}

// missing lists what is not known, each missing key once with what hangs on it.
func (b *builder) missing(checks []margin.Check) []string {
	var keys []design.Key
	on := map[design.Key][]string{}
	for _, c := range checks {
		for _, k := range c.Missing {
			if on[k] == nil {
				keys = append(keys, k)
			}
			on[k] = append(on[k], b.words.Margins.CheckName(c))
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
func (b *builder) cautions() Notice {
	return Notice{Careful, cautionTitle, b.words.Cautions}
}

// carefully stands beside the load figures and points to the cautions.
func carefully() Para {
	return Para("One resting person only; low at first, over soft ground. What stands at the top of this " +
		"sheet under “" + cautionTitle + "” goes with every load.")
}

// summary tables the main measures.
func (b *builder) summary() Table {
	bed, sh := b.Design.Bed, b.Shape
	t := Table{ID: "summary", Caption: "The bed in short", Head: []string{"measure", "value"}, Words: []bool{true, true}}
	add := func(name, value string) { t.Rows = append(t.Rows, []string{name, value}) }
	add("span between the bars", b.round(bed.Span))
	add("bars, head and foot, between cord centres", b.round(bed.HeadBar)+" and "+b.round(bed.FootBar))
	add("drop at the bars, head and foot", b.round(sh.Ends[hung.Head].Section.Height)+" and "+b.round(sh.Ends[hung.Foot].Section.Height))
	add("side depth, flat, at the cord line", b.round(sh.Depth))
	add("tails past the bars, head and foot", b.round(bed.HeadTail)+" and "+b.round(bed.FootTail))
	add("overall length, hook to hook", b.round(sh.Ends[hung.Foot].ApexX-sh.Ends[hung.Head].ApexX))
	add("hang angles, head and foot", degrees(atan(sh.Ends[hung.Head].Slope))+" and "+degrees(atan(sh.Ends[hung.Foot].Slope)))
	high, low, by := hung.Head, hung.Foot, sh.Offset
	if by < 0 {
		high, low, by = low, high, -by
	}
	add(fmt.Sprintf("%s hook above the %s hook, hooks straight at the apexes", high, low), b.round(by))
	add("largest cord tension", b.force(first(sh.MaxTension())))
	add("ends", capKind(b.Design.Cap.Kind))
	cut := "shaped on a net of threads that do not stretch"
	if bed.Cut == design.Straight {
		cut = "straight tails"
	}
	add("cut of the body", cut)
	add("load", b.loadWords())
	return t
}

// loadWords says what load the bed hangs level under.
func (b *builder) loadWords() string {
	if b.Design.Load.Model == design.Even {
		return b.mass(b.Design.Sleeper.Mass) + " spread evenly"
	}
	where := "past the head bar, over the tail"
	if b.Design.Sleeper.Crown >= 0 {
		where = "inside the head bar"
	}
	c := b.Design.Sleeper.Crown
	return fmt.Sprintf("a sleeper of %s, top of the head %s %s", b.mass(b.Design.Sleeper.Mass), b.round(max(c, -c)), where)
}
