package figures

import (
	"fmt"
	"io"
	"math"
	"strings"
	"text/tabwriter"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/margin"
	"slingloft/outline/quantity"
	"slingloft/outline/words"
)

// Text writes the figures for people in one language, lengths as the design wants them.
func Text(w io.Writer, p *work.Plan, d Document, say Words) error {
	b := &report{style: p.Style(), imperial: p.Design.Output.Inches, words: say.Names, say: say}
	b.out = tabwriter.NewWriter(&b.text, 0, 0, 2, ' ', tabwriter.AlignRight)
	b.line(say.Head, d.Name, d.Digest, d.Mark)
	b.unmet(p, d)
	b.cautions(p)
	b.shape(d)
	b.ends(d)
	b.stations(d)
	b.room(d)
	b.body(p, d)
	b.leveled(d)
	b.margins(p.Margins())
	b.hanging(p, d)
	b.cords(d)
	b.accuracy(d)
	b.corrections(p, d)
	b.guests(d)
	b.seams(p.Sewn.Seams)
	b.offsets(p, d)
	b.pieces(p, d)
	b.lay(d)
	b.sacks(d.Sacks)
	b.tarp(d.Tarp)
	b.cover(p, d.Cover)
	b.lining(d.Lining)
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
	words    words.Names // what things are called
	say      Words       // what stands around them
}

// line writes a line of text, after any table so far.
func (b *report) line(format string, a ...any) {
	b.out.Flush()
	fmt.Fprintf(&b.text, format+"\n", a...)
}

// head starts a section.
func (b *report) head(title string, a ...any) {
	title = fmt.Sprintf(title, a...)
	b.line("\n%s\n%s", title, strings.Repeat("-", len([]rune(title))))
}

// notes writes remarks.
func (b *report) notes(all []string) {
	for _, n := range all {
		b.line(b.say.Note, n)
	}
}

// row writes one row of a table.
func (b *report) row(cells ...string) { fmt.Fprintln(b.out, strings.Join(cells, "\t")+"\t") }

// Figures with their units.
func (b *report) mm(v float64) string     { return b.style.Length(v) }
func (b *report) figure(v float64) string { return b.style.Figure(v) }
func (b *report) deg(v float64) string    { return b.style.Angle(v) }

func (b *report) force(v float64) string { return b.style.Force(v) }

// unit returns the unit of bare length figures in tables.
func (b *report) unit() string { return b.style.LengthUnit() }

// cautions prints what holds of every load figure, once in full.
func (b *report) cautions(p *work.Plan) {
	b.head(b.say.Faults.Title)
	for h, c := range p.Cautions() {
		b.line(b.say.Caution, b.words.CautionLine(words.Hazard(h), c))
	}
	if weak := p.Margins().Unproven(); len(weak) > 0 {
		var parts []string
		for _, part := range weak {
			parts = append(parts, b.words.Margins.Parts[part])
		}
		b.line(b.say.Faults.Unproven, quantity.Decimal(margin.ProofLeast, 1), strings.Join(parts, ", "))
	}
}

// careful stands beside every group of loads and points to the cautions.
func (b *report) careful() { b.line(b.say.Careful) }

func (b *report) shape(d Document) {
	s, say := d.Shape, b.say.Shape
	b.head(say.Title)
	b.line(say.Thrust, b.force(s.Thrust), b.mm(s.SideDepth), b.mm(s.SideDepthAt), b.mm(s.SideArc))
	b.line(say.Tension, b.force(s.MaxTension), b.mm(s.MaxTensionAt))
	if s.Slide > 0 {
		b.line(say.Slide, b.force(s.Slide))
	}
	b.careful()
}

func (b *report) ends(d Document) {
	b.head(b.say.Ends.Title)
	b.row("", b.words.Ends[hung.Head], b.words.Ends[hung.Foot])
	for k, f := range [endFigures]func(End) string{
		endBar:         func(e End) string { return b.mm(e.Bar) },
		endDrop:        func(e End) string { return b.mm(e.Drop) },
		endGirth:       func(e End) string { return b.mm(e.Girth) },
		endTailGirth:   func(e End) string { return b.mm(e.EndGirth) },
		endWall:        func(e End) string { return b.deg(e.WallAngle) },
		endLeg:         func(e End) string { return b.mm(e.Leg) },
		endTailArc:     func(e End) string { return b.mm(e.TailArc) },
		endApexOut:     func(e End) string { return b.mm(math.Abs(e.Apex[0])) },
		endApexUp:      func(e End) string { return b.mm(e.Apex[1]) },
		endHangAngle:   func(e End) string { return b.deg(e.HangAngle) },
		endLevelPull:   func(e End) string { return b.force(e.Horizontal) },
		endUprightPull: func(e End) string { return b.force(e.Vertical) },
		endCompression: func(e End) string { return b.force(e.BarCompression) },
		endLegTension:  func(e End) string { return b.force(e.LegTension) },
		endTipTension:  func(e End) string { return b.force(e.TipTension) },
	} {
		b.row(b.say.Ends.Figures[k], f(d.Ends.Head), f(d.Ends.Foot))
	}
	b.careful()
}

// stationsApart is how many stations of the shape are left out between two rows.
const stationsApart = 8

func (b *report) stations(d Document) {
	s, say := d.Shape, b.say.Stations
	b.head(say.Title, b.unit())
	b.row(append(say.Columns[:], fmt.Sprintf(say.Load, b.style.PerLengthUnit()),
		fmt.Sprintf(say.Cord, b.style.ForceUnit()), fmt.Sprintf(say.Cloth, b.style.PerLengthUnit()))...)
	for i := 0; i < len(s.X); i++ {
		if i%stationsApart != 0 && i != len(s.X)-1 {
			continue
		}
		b.row(b.figure(s.X[i]), b.figure(2*s.Y[i]), b.figure(s.Z[i]-s.Bottom[i]), b.figure(s.Bottom[i]),
			b.figure(s.Girth[i]), b.deg(s.WallAngle[i]),
			b.style.PerLengthFigure(s.Load[i]), b.style.ForceFigure(s.CordTension[i]), b.style.PerLengthFigure(s.ClothTension[i]))
	}
}

func (b *report) body(p *work.Plan, d Document) {
	say := b.say.Body
	b.head(say.Title)
	cut := say.Net
	if p.Body.Cut == design.Straight {
		cut = say.Straight
	}
	b.line(say.Cut, cut, b.mm(d.Body.Reach))
	if c := d.Body.Compensation; c.WeftStiffness > 0 {
		b.line(say.Shortened, quantity.Decimal(100*c.Strain, 2), b.mm(c.Narrower))
	} else {
		b.line(say.NotShortened)
	}
	b.offLevel(d)
	if len(d.Body.Departures) == 0 {
		s := d.Body.MaxShear
		b.line(say.Shear, b.deg(s.Angle), b.mm(s.At[0]), b.mm(s.At[1]))
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
	b.line(b.say.Body.OffLevel, b.mm(high[1]), b.mm(high[0]), b.mm(-low[1]), b.mm(low[0]))
}

// departures tables what a straight cut gives up.
func (b *report) departures(d Document) {
	half := -d.Ends.Head.TailEnd
	b.line(b.say.Body.Departs, b.unit())
	b.row(b.say.Body.Columns[:]...)
	for _, q := range d.Body.Departures {
		if math.Abs(q.Cut-q.Girth) > 1e-6 || math.Abs(q.X) >= half {
			b.row(b.figure(q.X), b.figure(q.Girth), b.figure(q.Cut), b.figure(q.Cut-q.Girth))
		}
	}
}
