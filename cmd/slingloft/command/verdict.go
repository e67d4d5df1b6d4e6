package command

import (
	"fmt"
	"strings"

	"slingloft/cmd/slingloft/work"
)

// verdict returns the exit status that a plan earns by its own figures, with one
// line for each thing that is wrong: a required margin that is not met counts
// before a seam out of tolerance.
func verdict(p *work.Plan) error {
	code, lines := judged(p)
	if code == Unmet {
		lines = append(lines, "no cut files are written until every margin is met, or the check is waived by its name in margin.waived")
	}
	if code == Done {
		return nil
	}
	return status{code, strings.Join(lines, "\n")}
}

// verdictLines returns a line for each thing that is wrong, for a document.
func verdictLines(p *work.Plan) []string {
	_, lines := judged(p)
	return lines
}

// judged returns the status with a line for each thing that is wrong.
func judged(p *work.Plan) (code int, lines []string) {
	lines = []string{}
	for _, s := range p.Sewn.Seams {
		if !s.Within() {
			code = SeamOff
			lines = append(lines, fmt.Sprintf("seam %s: %s remain beyond the planned ease, %s are allowed; raise "+
				"seam.tolerance only after sewing a test piece",
				s, p.Style().Length(s.Remains), p.Style().Length(s.Tolerance)))
		}
	}
	for _, c := range p.Margins.Unmet() {
		code = Unmet
		line := fmt.Sprintf("margin not met: %s: %.2f, required %.2f", c.Name(), c.Ratio, c.Required)
		if how := p.Mend(c); how != "" {
			line += "; " + how
		}
		lines = append(lines, line)
	}
	return code, lines
}
