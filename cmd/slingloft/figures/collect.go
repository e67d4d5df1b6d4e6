package figures

import (
	"math"

	"slingloft/cmd/slingloft/work"
	"slingloft/nest"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
	"slingloft/outline/template"
	"slingloft/outline/words"
)

// stationsShown is how many even stations the shape is given at, its marks apart.
const stationsShown = 120

// Of gathers the figures of a laid plan, its remarks in one language.
func Of(p *work.Plan, l work.Lays, say Words) (Document, error) {
	w := say.Names
	d := Document{Version: Version, Name: p.Design.Name, Digest: p.Digest, Mark: p.Mark}
	d.Given = givenOf(p)
	d.Shape = shapeOf(p)
	d.Ends = Ends{endOf(p, hung.Head), endOf(p, hung.Foot)}
	felt, err := p.Room()
	d.felt, d.Room = felt, roomOf(felt, err)
	d.Body = bodyOf(p)
	d.Leveled = leveledOf(p)
	d.Cords = p.Cords.Cords
	d.Rigging = Rigging{p.Cords.Variant, w.Cords.NotesOf(p.Cords, p.Style())}
	d.Splices = p.Cords.Splicing.Shown
	for _, s := range p.Sewn.Seams {
		d.Seams = append(d.Seams, seamOf(s))
	}
	if d.Offsets, err = offsetsOf(p); err != nil {
		return d, err
	}
	for _, q := range p.Pieces() {
		d.Pieces = append(d.Pieces, pieceOf(q))
	}
	d.Lay = layOf(p, l)
	d.Sacks, d.Tarp, d.Lining = sacksOf(p), tarpOf(p), liningOf(p)
	d.Cover = coverOf(p)
	for h, c := range p.Cautions() {
		d.Cautions = append(d.Cautions, w.CautionLine(words.Hazard(h), c))
		d.Hazards = append(d.Hazards, Hazard{words.Hazard(h).Signal().String(), c.Hazard, c.Consequence, c.Avoidance})
	}
	d.Warnings = p.Warnings()
	loads := p.Margins()
	d.Margins, d.Cases, d.States = checksOf(loads.Checks, w.Margins), casesOf(loads, w.Margins, p.Style()), statesOf(loads.States)
	d.Governs, d.Leasts, d.Proof = checksOf(loads.ByPart(), w.Margins), leastsOf(loads), proofOf(loads, p.Design.Sleeper.Mass)
	d.strengths = loads.Leasts
	d.Sudden = suddenOf(loads, p.Style())
	d.Notes = w.Margins.NotesOf(loads.Notes)
	d.Hanging = hangingOf(p)
	stack, err := p.Accuracy()
	d.Accuracy = accuracyOf(stack, err, say)
	d.Guests = []Guest{}
	for _, g := range p.Guests() {
		d.Guests, d.least = append(d.Guests, guestOf(g, w)), append(d.least, g.Least())
	}
	d.hung(p, say)
	d.bill, err = p.Bill(l)
	d.Materials = materialsOf(d.bill, w, p.Style())
	return d, err
}

// hangingOf gathers how the hammock hangs, with a sweep over the distance of its
// supports from a little more than its own length on, in round steps of its units.
func hangingOf(p *work.Plan) Hanging {
	const steps = 8
	first, step := 100.0, 250.0
	if p.Design.Output.Inches {
		first, step = 6*quantity.Inch, 12*quantity.Inch
	}
	over := rig.Overall(&p.Shape)
	out := Hanging{Overall: over, Roll: p.Roll(), Shelter: p.Shelter}
	if out.Reckoned = p.Reckoned(); p.Hangs {
		out.Place = &p.Place
	}
	out.Anchors, out.Apexes = out.Reckoned.HeadAbove, out.Reckoned.ApexAbove()
	from := math.Ceil(over/first) * first
	out.Sweep = rig.Sweep(&p.Shape, from, from+steps*step, p.Design.Hang.Bed, steps)
	return out
}

// flatTop rounds the place of a greatest value to a thousandth of a millimetre: it is
// known to only half the digits of the value itself.
func flatTop(x float64) float64 { return math.Round(x*1e3) / 1e3 }

func givenOf(p *work.Plan) Given {
	d, q := p.Design, &p.Shape.Problem
	g := Given{
		ClothWeight: q.ClothWeight, BarWeight: q.BarWeight,
		SideStiffness: float64(d.Side.Stiffness), LegStiffness: float64(d.Leg.Stiffness),
		WarpStiffness: float64(d.Cloth.WarpStiffness), WeftStiffness: float64(d.Cloth.WeftStiffness),
		Compensated: !d.Bed.Plain,
	}
	for _, s := range q.Load {
		g.Load = append(g.Load, [4]float64{s.From, s.To, s.Start, s.End})
	}
	return g
}

func shapeOf(p *work.Plan) Shape {
	s := &p.Shape
	out := Shape{Thrust: s.Thrust, SideDepth: s.Depth, SideDepthAt: flatTop(s.DepthX), SideArc: s.SideArc, HeadHigher: s.Offset}
	out.MaxTension, out.MaxTensionAt = s.MaxTension()
	out.Weight = float64(p.Design.Sleeper.Mass.Weight())
	out.Slide = out.Weight * math.Sin(math.Abs(float64(p.Design.Bed.Lift)))
	for _, x := range s.Stations(stationsShown) {
		q := s.At(x)
		out.X, out.Y, out.Z = append(out.X, x), append(out.Y, q.Y), append(out.Z, q.Z)
		out.Bottom = append(out.Bottom, q.Bottom)
		out.Radius = append(out.Radius, q.Section.Radius)
		out.WallAngle = append(out.WallAngle, q.Section.Wall)
		out.Girth = append(out.Girth, p.Body.Hangs(s, x))
		out.Load = append(out.Load, q.Load)
		out.CordTension = append(out.CordTension, q.Tension)
		out.ClothTension = append(out.ClothTension, q.Cloth)
	}
	return out
}

func endOf(p *work.Plan, at hung.End) End {
	e := p.Shape.Ends[at]
	bar := at.Sign() * p.Design.Bed.Span / 2
	return End{
		Bar: e.Bar, Drop: e.Section.Height, Girth: p.Body.Hangs(&p.Shape, bar), WallAngle: e.Section.Wall,
		Leg: e.Leg, Apex: Pair{e.ApexX, e.ApexZ}, Slope: e.Slope, HangAngle: math.Atan(e.Slope),
		Horizontal: e.Horizontal, Vertical: e.Vertical, BarCompression: e.BarCompression,
		LegTension: e.LegTension, TipTension: e.TipTension,
		TailArc: e.TailArc, TailEnd: e.TailX, EndGirth: p.Body.Hangs(&p.Shape, e.TailX),
	}
}

// pairs returns points as pairs.
func pairs(pts []geom.Point) []Pair {
	out := make([]Pair, len(pts))
	for i, p := range pts {
		out[i] = Pair{p.X, p.Y}
	}
	return out
}

func bodyOf(p *work.Plan) Body {
	out := Body{Reach: p.Sewn.Reach, Cut: "net"}
	if p.Body.Cut == design.Straight {
		out.Cut = "straight"
	}
	out.NetLine = pairs(p.Sewn.BodyNet)
	side, head, foot := p.Body.Side, p.Body.Ends[hung.Head], p.Body.Ends[hung.Foot]
	ring := geom.RingOf([]geom.Polyline{
		side.Mirrored().Flat, foot.Mirrored().Reversed().Flat, foot.Flat,
		side.Reversed().Flat, head.Reversed().Flat, head.Mirrored().Flat,
	})
	out.CordLine = pairs(ring)
	for e, half := range p.Sewn.BarLines {
		for _, q := range half.Reversed() {
			out.Bars[e] = append(out.Bars[e], Pair{q.X, -q.Y})
		}
		out.Bars[e] = append(out.Bars[e], pairs(half[1:])...)
	}
	net := p.Sewn.SideNet.Flat
	h, f := net[0], net[len(net)-1]
	out.Corners = []Pair{{h.X, -h.Y}, {f.X, -f.Y}, {f.X, f.Y}, {h.X, h.Y}}
	out.MaxShear = MaxShear{p.Body.Shear.Angle, Pair{p.Body.Shear.At.X, p.Body.Shear.At.Y}}
	c := p.Body.Compensation
	out.Compensation = Compensation{c.Stiffness, c.Strain, c.At, c.Narrower}
	for _, q := range p.Body.Level.Stations {
		out.OffLevel = append(out.OffLevel, Pair{q.X, q.Off})
	}
	for _, q := range p.Body.Departures {
		out.Departures = append(out.Departures, Departure{q.X, q.True, q.Cut})
	}
	return out
}

func seamOf(s piece.Seam) Seam {
	out := Seam{
		Name: s.String(), Pieces: s.IDs, Flat: s.Flat, Hung: s.Hung, Difference: s.Difference,
		Ease: s.Ease, EasePer100: s.EasePer100, Remains: s.Remains, Tolerance: s.Tolerance, Within: s.Within(),
	}
	for _, q := range s.Parts {
		out.Parts = append(out.Parts, SeamPart{notchOrEnd(q.From), notchOrEnd(q.To), q.Flat, q.Ease, q.Fold})
	}
	return out
}

// notchOrEnd returns a notch's name, or what stands for an end of the seam.
func notchOrEnd(name string) string {
	if name == "" {
		return "end"
	}
	return name
}

// offsetsOf tables the curves that are marked by hand.
func offsetsOf(p *work.Plan) ([]Offsets, error) {
	var out []Offsets
	for _, c := range p.Curves() {
		rows, err := template.Offsets(c.Line, p.Design.Template.Tick)
		if err != nil {
			return nil, err
		}
		t := Offsets{Name: c.Kind.String(), Chord: c.Line[0].Dist(c.Line[len(c.Line)-1]), Arc: c.Line.Length()}
		for _, r := range rows {
			t.Rows = append(t.Rows, Ordinate{r.Station, r.Depth, r.Arc, r.Deepest})
		}
		out = append(out, t)
	}
	return out, nil
}

func pieceOf(q piece.Piece) Piece {
	box := q.Cut.Bounds()
	out := Piece{
		ID: q.ID, Stock: q.Stock.String(), Roll: q.Roll, Count: q.Count, Size: Pair{box.Width(), box.Height()},
		Area: q.Cut.Area(), CutLength: q.Cut.Perimeter(), NetLength: q.Net.Perimeter(), CutLine: pairs(q.Cut),
	}
	for _, c := range q.Checks {
		out.Checks = append(out.Checks, Measure{c.String(), c.Length})
	}
	return out
}

func layOf(p *work.Plan, l work.Lays) Lay {
	var out Lay
	for roll, c := range p.Rolls() {
		lay := l.Rolls[roll]
		s := Stock{Count: 1, Width: c.Width, Length: lay.Length, Use: lay.Density, Placed: placesOf(p.OnRoll(roll), lay)}
		if roll == 0 {
			out.Cloth = s
		} else {
			out.Rolls = append(out.Rolls, Roll{c.Name, s})
		}
	}
	boards := Stock{Count: l.Boards.Beds, Width: p.Design.Sheet.Width, Length: p.Design.Sheet.Height, Use: l.Boards.Density}
	boards.Placed = placesOf(p.Templates, l.Boards)
	out.Sheets = boards
	return out
}

func placesOf(pieces []piece.Piece, l nest.Lay) []Place {
	var out []Place
	for _, q := range l.Placements {
		m := q.Motion
		out = append(out, Place{pieces[q.Item].ID, q.Copy + 1, q.Bed + 1, m.Turn, m.Mirror, Pair{m.Shift.X, m.Shift.Y}})
	}
	return out
}
