package figures

import (
	"fmt"
	"io"
	"math"
	"strings"
	"text/tabwriter"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/words"
)

// Text writes the figures for people, lengths as the design wants them.
func Text(w io.Writer, p *work.Plan, d Document) error {
	b := &report{style: p.Style(), imperial: p.Design.Output.Inches, words: p.Words.Names}
	b.out = tabwriter.NewWriter(&b.text, 0, 0, 2, ' ', tabwriter.AlignRight)
	b.printf("%s · design %s\n", d.Name, d.Digest)
	b.unmet(p, d)
	b.cautions()
	b.shape(d)
	b.ends(d)
	b.stations(d)
	b.body(d)
	b.margins(p.Margins)
	b.hanging(d)
	b.cords(d)
	b.accuracy(d)
	b.seams(p.Sewn.Seams)
	b.offsets(p, d)
	b.pieces(p, d)
	b.lay(d)
	b.materials(d)
	b.out.Flush()
	_, err := io.WriteString(w, b.text.String())
	return err
}

// report collects text; tables go through its tabwriter.
type report struct {
	text     strings.Builder
	out      *tabwriter.Writer
	style    quantity.Style
	imperial bool
	words    words.Names
}

// printf writes plain text, after any table so far.
func (b *report) printf(format string, a ...any) {
	b.out.Flush()
	fmt.Fprintf(&b.text, format, a...)
}

// head starts a section.
func (b *report) head(title string) {
	b.printf("\n%s\n%s\n", title, strings.Repeat("-", len([]rune(title))))
}

// row writes one row of a table.
func (b *report) row(cells ...string) { fmt.Fprintln(b.out, strings.Join(cells, "\t")+"\t") }

// Figures with their units.
func (b *report) mm(v float64) string     { return b.style.Length(v) }
func (b *report) figure(v float64) string { return b.style.Figure(v) }
func (b *report) deg(v float64) string    { return quantity.Decimal(v*180/math.Pi, 1) + "°" }

func (b *report) force(v float64) string { return b.style.Force(v) }

// unit returns the unit of bare length figures in tables.
func (b *report) unit() string {
	if b.imperial {
		return "in"
	}
	return "mm"
}

// cautions prints what holds of every load figure, once in full.
func (b *report) cautions() {
	b.head("Cautions")
	for _, c := range b.words.Cautions {
		b.printf("! %s\n", c)
	}
}

// careful stands beside every group of loads and points to the cautions.
func (b *report) careful() {
	b.printf("! One resting person only; low at first, over soft ground. Read the cautions above.\n")
}

func (b *report) shape(d Document) {
	s := d.Shape
	b.head("Hung shape")
	b.printf("thrust of each side's cord %s, side depth %s at the cord line, at %s from mid-bay, side cord %s from tip to tip\n",
		b.force(s.Thrust), b.mm(s.SideDepth), b.mm(s.SideDepthAt), b.mm(s.SideArc))
	b.printf("largest cord tension %s, at %s from mid-bay\n", b.force(s.MaxTension), b.mm(s.MaxTensionAt))
	higher, which := s.HeadHigher, "head"
	if higher < 0 {
		higher, which = -higher, "foot"
	}
	b.printf("hang the %s hook %s higher than the other\n", which, b.mm(higher))
	if s.Slide > 0 {
		b.printf("the bed is inclined: the sleeper slides with %s\n", b.force(s.Slide))
	}
	b.careful()
}

func (b *report) ends(d Document) {
	b.head("Ends")
	b.row("", "head", "foot")
	add := func(name string, f func(End) string) { b.row(name, f(d.Ends.Head), f(d.Ends.Foot)) }
	add("bar, between cord centres", func(e End) string { return b.mm(e.Bar) })
	add("drop", func(e End) string { return b.mm(e.Drop) })
	add("girth at the bar", func(e End) string { return b.mm(e.Girth) })
	add("girth at the tail's end", func(e End) string { return b.mm(e.EndGirth) })
	add("wall angle", func(e End) string { return b.deg(e.WallAngle) })
	add("leg, tip to hook", func(e End) string { return b.mm(e.Leg) })
	add("cord over the tail", func(e End) string { return b.mm(e.TailArc) })
	add("hook from mid-bay", func(e End) string { return b.mm(math.Abs(e.Apex[0])) })
	add("hook above the bed's bottom", func(e End) string { return b.mm(e.Apex[1]) })
	add("hang angle", func(e End) string { return b.deg(e.HangAngle) })
	add("pull on the hook, level", func(e End) string { return b.force(e.Horizontal) })
	add("pull on the hook, upright", func(e End) string { return b.force(e.Vertical) })
	add("bar compression", func(e End) string { return b.force(e.BarCompression) })
	add("leg tension at the tip", func(e End) string { return b.force(e.LegTension) })
	add("side cord tension at the tip", func(e End) string { return b.force(e.TipTension) })
	b.careful()
}

// stationsApart is how many stations of the shape are left out between two rows.
const stationsApart = 8

func (b *report) stations(d Document) {
	s := d.Shape
	b.head("Stations (" + b.unit() + " from mid-bay, head negative)")
	b.row("station", "opening", "cord height", "bottom", "girth", "wall",
		"load "+b.style.PerLengthUnit(), "cord "+b.style.ForceUnit(), "cloth "+b.style.PerLengthUnit())
	for i := 0; i < len(s.X); i++ {
		if i%stationsApart != 0 && i != len(s.X)-1 {
			continue
		}
		b.row(b.figure(s.X[i]), b.figure(2*s.Y[i]), b.figure(s.Z[i]-s.Bottom[i]), b.figure(s.Bottom[i]),
			b.figure(s.Girth[i]), b.deg(s.WallAngle[i]),
			b.style.PerLengthFigure(s.Load[i]), b.style.ForceFigure(s.CordTension[i]), b.style.PerLengthFigure(s.ClothTension[i]))
	}
}

func (b *report) body(d Document) {
	b.head("Flat body")
	b.printf("cut %s; seam lines lie %s inside the cord line; side depth and girths are at the cord line, offsets "+
		"and templates at the seam lines\n", d.Body.Cut, b.mm(d.Body.Reach))
	if c := d.Body.Compensation; c.WeftStiffness > 0 {
		b.printf("weft shortened for its stretch under the sleeper: up to %s %%, a side moved in by %s at most\n",
			quantity.Decimal(100*c.Strain, 2), b.mm(c.Narrower))
	} else {
		b.printf("weft not shortened for its stretch under the sleeper: cloth.weft_stiffness is not given, or bed.compensate is off\n")
	}
	b.offLevel(d)
	if len(d.Body.Departures) == 0 {
		s := d.Body.MaxShear
		b.printf("largest shear when hung %s, at %s from mid-bay and %s off the centre line\n", b.deg(s.Angle), b.mm(s.At[0]), b.mm(s.At[1]))
		return
	}
	b.departures(d)
}

// offLevel tells how far a drawn side curve hangs off level.
func (b *report) offLevel(d Document) {
	if len(d.Body.OffLevel) == 0 {
		return
	}
	low, high := d.Body.OffLevel[0], d.Body.OffLevel[0]
	for _, q := range d.Body.OffLevel {
		if q[1] < low[1] {
			low = q
		}
		if q[1] > high[1] {
			high = q
		}
	}
	b.printf("the side curve is drawn, not balanced: the bed will not lie level. It stands %s high at %s and %s low at %s from mid-bay\n",
		b.mm(high[1]), b.mm(high[0]), b.mm(-low[1]), b.mm(low[0]))
}

// departures tables what a straight cut gives up.
func (b *report) departures(d Document) {
	half := -d.Ends.Head.TailEnd
	b.printf("straight tails do not hang level; girth that would, girth of the cut (%s):\n", b.unit())
	b.row("station", "level", "cut", "departs")
	for _, q := range d.Body.Departures {
		if math.Abs(q.Cut-q.Girth) > 1e-6 || math.Abs(q.X) >= half {
			b.row(b.figure(q.X), b.figure(q.Girth), b.figure(q.Cut), b.figure(q.Cut-q.Girth))
		}
	}
}

func (b *report) cords(d Document) {
	b.head("Cords: " + b.words.Cords.Rigging[d.Rigging.Variant])
	for _, c := range d.Cords {
		b.printf("%s, %d of: cut %s", b.words.Cords.Parts[c.Part], c.Count, b.mm(c.Cut))
		for i, t := range c.Terms {
			sep := " + "
			if i == 0 {
				sep = " = "
			}
			if t.Length < 0 {
				sep = " − "
			}
			b.printf("%s%s %s", sep, b.words.Cords.Terms[t.Kind], b.figure(math.Abs(t.Length)))
		}
		b.printf("\n")
		b.row("mark", "from start", "from end", "spliced, from "+b.words.Cords.Spot(c.Datum))
		for _, m := range c.Marks {
			spliced := b.figure(m.Spliced)
			if m.Buried {
				spliced += " (buried)"
			}
			b.row(b.words.Cords.Spot(m.Spot), b.figure(m.FromStart), b.figure(m.FromEnd), spliced)
		}
	}
	for _, n := range d.Rigging.Notes {
		b.printf("note: %s\n", n)
	}
}

func (b *report) seams(seams []piece.Seam) {
	b.head("Seam walk (" + b.unit() + ")")
	b.row("seam", "flat", "flat", "hung", "hung", "planned ease", "per 100", "remains", "allowed")
	for _, s := range seams {
		verdict := b.figure(s.Tolerance)
		if !s.Within() {
			verdict += " OUT"
		}
		b.row(b.words.Seam(s), b.figure(s.Flat[0]), b.figure(s.Flat[1]), b.figure(s.Hung[0]), b.figure(s.Hung[1]),
			b.figure(s.Ease), quantity.Decimal(s.EasePer100, 2), b.figure(s.Remains), verdict)
	}
	for _, s := range seams {
		b.printf("%s, notch to notch:\n", b.words.Seam(s))
		b.row("from", "to", s.IDs[0], s.IDs[1], "ease", "gathers at the fold")
		for _, q := range s.Parts {
			b.row(b.words.SeamMark(q.From), b.words.SeamMark(q.To), b.figure(q.Flat[0]), b.figure(q.Flat[1]), b.figure(q.Ease), b.figure(q.Fold))
		}
	}
}

func (b *report) offsets(p *work.Plan, d Document) {
	for i, c := range p.Sewn.Curves() {
		t := d.Offsets[i]
		b.head(fmt.Sprintf("Offsets: %s (%s; chord %s, along the curve %s)", b.words.Pieces.Curves[c.Kind], b.unit(), b.mm(t.Chord), b.mm(t.Arc)))
		b.row("along the chord", "offset", "along the curve")
		for _, r := range t.Rows {
			mark := ""
			if r.Deepest {
				mark = " deepest"
			}
			b.row(b.figure(r.Station), b.figure(r.Depth)+mark, b.figure(r.Arc))
		}
	}
}

func (b *report) pieces(p *work.Plan, d Document) {
	b.head("Pieces")
	b.row("piece", "count", "along", "across", "cut outline", "stock")
	for _, q := range d.Pieces {
		b.row(q.ID, fmt.Sprint(q.Count), b.mm(q.Size[0]), b.mm(q.Size[1]), b.mm(q.CutLength), q.Stock)
	}
	for _, q := range p.Pieces() {
		if len(q.Checks) > 0 {
			b.printf("%s, to prove it square on the cloth:\n", q.ID)
		}
		for _, c := range q.Checks {
			b.row(b.words.Measure(c), b.mm(c.Length))
		}
	}
}

func (b *report) lay(d Document) {
	b.head("Lay")
	c := d.Lay.Cloth
	b.printf("cloth: %s of roll %s wide, %.1f %% used\n", b.mm(c.Length), b.mm(c.Width), 100*c.Use)
	if s := d.Lay.Sheets; s.Count > 0 {
		b.printf("templates: %d sheets of %s × %s, %.1f %% used\n", s.Count, b.mm(s.Width), b.mm(s.Length), 100*s.Use)
	}
}
