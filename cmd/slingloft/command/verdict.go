package command

import "slingloft/cmd/slingloft/work"

// verdict returns the exit status that a plan earns by its own figures, with one
// line for each thing that is wrong: a required margin that is not met counts
// before a seam out of tolerance.
func verdict(p *work.Plan) error {
	code, said := judged(p)
	if code == Unmet {
		said = append(said, notice{what: NoCutFiles})
	}
	if code == Done {
		return nil
	}
	return status{code, said}
}

// verdicts returns the verdict of one plan, or of all with the name of each that has one:
// the gravest counts.
func verdicts(all []*work.Plan) error {
	if len(all) == 1 {
		return verdict(all[0])
	}
	var out status
	for _, p := range all {
		code, said := judged(p)
		if code == Unmet || out.code == Done {
			out.code = code
		}
		for _, line := range said {
			out.said = append(out.said, notice{OfDesign, []any{p.File(), line}})
		}
	}
	if out.code == Done {
		return nil
	}
	if out.code == Unmet {
		out.said = append(out.said, notice{what: NoCutFiles})
	}
	return out
}

// verdictLines returns a line for each thing that is wrong, for a document.
func verdictLines(p *work.Plan, w Words) []string {
	_, said := judged(p)
	return w.lines(said)
}

// judged returns the status with what there is to say of each thing that is wrong.
func judged(p *work.Plan) (code int, said []notice) {
	for _, s := range p.Sewn.Seams {
		if !s.Within() {
			code = SeamOff
			said = append(said, notice{SeamIsOff, []any{p.Words.Seam(s), p.Style().Length(s.Remains), p.Style().Length(s.Tolerance)}})
		}
	}
	for _, c := range p.Margins().Unmet() {
		code = Unmet
		line := notice{MarginNotMet, []any{c.Name(), c.Ratio, c.Required}}
		if how := p.Mend(c); how != "" {
			line = notice{WouldDo, []any{line, how}}
		}
		said = append(said, line)
	}
	return code, said
}
