package page

import (
	"fmt"
	"strings"

	"slingloft/export/sheet"
)

// writeTicks writes things to tick off, each with a box that can be ticked.
func writeTicks(b *writer, ticks sheet.Ticks) {
	b.WriteString("<ol class=\"ticks\">\n")
	for _, t := range ticks {
		fmt.Fprintf(b, "<li><input type=\"checkbox\" id=\"%s\"><label for=\"%s\"><b>%d %s</b> <span>%s</span></label></li>\n",
			t.ID, t.ID, t.No, esc(t.Text), esc(t.Note))
	}
	b.WriteString("</ol>\n")
}

// writeSteps writes steps of work, their pictures beside them.
func writeSteps(b *writer, steps sheet.Steps) {
	b.WriteString("<ol class=\"steps\">\n")
	for _, s := range steps {
		fmt.Fprintf(b, "<li id=\"%s\"><div class=\"do\">\n<h4>%s%s</h4>\n", s.ID, stepNumber(s), esc(s.Title))
		if len(s.Needs) > 0 {
			fmt.Fprintf(b, "<p class=\"needs\">%s %s</p>\n", esc(b.frame.Needs), esc(strings.Join(s.Needs, ", ")))
		}
		if len(s.Do) > 0 {
			writeList(b, s.Do)
		}
		writeFacts(b, s.Facts)
		if s.Done != "" {
			fmt.Fprintf(b, "<p class=\"done\"><b>%s</b> %s</p>\n", esc(b.frame.Done), esc(s.Done))
		}
		b.WriteString("</div>\n")
		if len(s.Figures) > 0 {
			writeFigures(b, s.Figures)
		}
		b.WriteString("</li>\n")
	}
	b.WriteString("</ol>\n")
}

// stepNumber writes the number of a step that has one.
func stepNumber(s sheet.Step) string {
	if s.No == 0 {
		return ""
	}
	return fmt.Sprintf("<span class=\"no\">%d</span> ", s.No)
}

func writeFacts(b *writer, facts []sheet.Fact) {
	if len(facts) == 0 {
		return
	}
	b.WriteString("<dl>\n")
	for _, f := range facts {
		fmt.Fprintf(b, "<div><dt>%s</dt><dd>%s</dd></div>\n", esc(f.Name), esc(f.Value))
	}
	b.WriteString("</dl>\n")
}

// writeTerms writes words with what they mean.
func writeTerms(b *writer, terms sheet.Terms) {
	b.WriteString("<dl class=\"terms\">\n")
	for _, t := range terms {
		fmt.Fprintf(b, "<div><dt>%s</dt><dd>%s</dd></div>\n", esc(t.Word), esc(t.Meaning))
	}
	b.WriteString("</dl>\n")
}
