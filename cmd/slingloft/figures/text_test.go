package figures_test

import (
	"bytes"
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/figures"
	"slingloft/cmd/slingloft/work"
)

// text holds the figures for people against those of the document.
func text(t *testing.T, p work.Plan, d figures.Document) {
	var b bytes.Buffer
	if err := figures.Text(&b, &p, d, figures.English()); err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(b.String(), "\n")
	has := func(start string, want ...string) {
		t.Helper()
		for _, l := range lines {
			if rest, ok := strings.CutPrefix(strings.TrimSpace(l), start); ok && strings.Join(strings.Fields(rest), " ") == strings.Join(want, " ") {
				return
			}
		}
		t.Errorf("no line %q with %q", start, want)
	}
	mm := func(v float64) string { return decimal(v) + " mm" }
	newton := func(v float64) string { return fmt.Sprintf("%.0f N", v) }
	h, f := d.Ends.Head, d.Ends.Foot
	has("bar, between cord centres", mm(h.Bar), mm(f.Bar))
	has("leg, tip to apex", mm(h.Leg), mm(f.Leg))
	has("apex above the bed bottom", mm(h.Apex[1]), mm(f.Apex[1]))
	has("pull at the apex, horizontal", newton(h.Horizontal), newton(f.Horizontal))
	has("pull at the apex, vertical", newton(h.Vertical), newton(f.Vertical))
	has("bar compression", newton(h.BarCompression), newton(f.BarCompression))
	has("leg tension at the tip", newton(h.LegTension), newton(f.LegTension))
	has("set the anchors: the head one stands", mm(d.Hanging.Anchors),
		"higher than the other. To check afterwards: the head apex then stands", mm(d.Hanging.Apexes), "higher than the other")
	has("overall length from apex to apex", mm(d.Hanging.Overall))
	for _, q := range d.Pieces {
		has(q.ID, fmt.Sprint(q.Count), mm(q.Size[0]), mm(q.Size[1]), mm(q.CutLength), q.Stock)
	}
	for _, title := range []string{
		"Cautions", "Hung shape", "Ends", "Flat body", "Margins: capacity over load", "Hanging", "Pieces", "Lay", "Materials",
	} {
		found := false
		for i, l := range lines {
			found = found || l == title && lines[i+1] == strings.Repeat("-", len(title))
		}
		if !found {
			t.Errorf("no section %q", title)
		}
	}
}

// decimal writes a figure to a tenth, halves rounded away from zero, as people do.
func decimal(v float64) string {
	return strconv.FormatFloat(math.Round(v*10*(1+1e-14))/10, 'f', 1, 64)
}
