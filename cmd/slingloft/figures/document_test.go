package figures_test

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/figures"
	"slingloft/cmd/slingloft/work"
)

// small is the plan of the small design and its figures as other programs read them.
func small(t *testing.T) (work.Plan, figures.Document) {
	t.Helper()
	const name = "../../../testdata/design/small.toml"
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	p, err := work.Read(name, data)
	if err != nil {
		t.Fatal(err)
	}
	l, err := p.Lay(context.Background(), work.Budget{})
	if err != nil {
		t.Fatal(err)
	}
	d, err := figures.Of(&p, l)
	if err != nil {
		t.Fatal(err)
	}
	return p, d
}

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.9g, want %.9g within %g", what, got, want, tol)
	}
}

// The document tells one thing in several places, or things that follow from each
// other: what another program could work out from it holds.
func TestDocument(t *testing.T) {
	p, d := small(t)
	t.Run("equilibrium", func(t *testing.T) { equilibrium(t, d) })
	t.Run("ends", func(t *testing.T) { ends(t, d) })
	t.Run("body", func(t *testing.T) { body(t, d) })
	t.Run("pieces", func(t *testing.T) { pieces(t, p, d) })
	t.Run("seams", func(t *testing.T) { seams(t, d) })
	t.Run("cords", func(t *testing.T) { cords(t, d) })
	t.Run("margins", func(t *testing.T) { margins(t, d) })
	t.Run("hanging", func(t *testing.T) { hanging(t, d) })
	t.Run("text", func(t *testing.T) { text(t, p, d) })
	t.Run("JSON", func(t *testing.T) { roundTrip(t, d) })
}

// equilibrium holds the cords of a side against the load at the printed stations: with
// the thrust H one side carries H z″ = w/2 upright and H y″ = w/2 cot θ across, walls
// at θ; along the cord it pulls with H times length over run, and the cloth with w over
// twice the sine of its wall.
func equilibrium(t *testing.T, d figures.Document) {
	s := d.Shape
	total := 0.0
	for i := range s.X {
		if i > 0 {
			total += (s.X[i] - s.X[i-1]) * (s.Load[i] + s.Load[i-1]) / 2
		}
		near(t, "cloth", s.ClothTension[i], s.Load[i]/2/math.Sin(s.WallAngle[i]), 1e-9)
		if i == 0 || i == len(s.X)-1 {
			continue
		}
		// Only where the load is even over both steps and no bar or tail's end is near.
		half := d.Ends.Head.TailEnd
		a, b := s.X[i]-s.X[i-1], s.X[i+1]-s.X[i]
		if math.Abs(s.Load[i-1]-s.Load[i+1]) > 0.02*s.Load[i] || math.Abs(a-b) > 1e-6 || math.Abs(s.X[i]) > 0.75*math.Abs(half) {
			continue
		}
		bend := func(v []float64) float64 { return ((v[i+1]-v[i])/b - (v[i]-v[i-1])/a) * 2 / (a + b) }
		near(t, fmt.Sprintf("upright at %.0f", s.X[i]), s.Thrust*bend(s.Z), s.Load[i]/2, 0.01*s.Load[i])
		near(t, fmt.Sprintf("across at %.0f", s.X[i]), s.Thrust*bend(s.Y), s.Load[i]/2/math.Tan(s.WallAngle[i]), 0.01*s.Load[i])
		dy, dz := (s.Y[i+1]-s.Y[i-1])/(a+b), (s.Z[i+1]-s.Z[i-1])/(a+b)
		near(t, fmt.Sprintf("pull at %.0f", s.X[i]), s.CordTension[i], s.Thrust*math.Sqrt(1+dy*dy+dz*dz), 0.01*s.Thrust)
		if s.CordTension[i] > s.MaxTension+1e-9 {
			t.Errorf("the cord pulls %g N at %g, said to be %g at most", s.CordTension[i], s.X[i], s.MaxTension)
		}
	}
	up := d.Ends.Head.Vertical + d.Ends.Foot.Vertical
	near(t, "load along the bed and the bars", total+d.Given.BarWeight[0]+d.Given.BarWeight[1], up, 0.01*up)
	near(t, "sleeper, cloth and bars", s.Weight, up, 0.03*up)
	for name, v := range map[string][]float64{"y": s.Y, "z": s.Z, "bottom": s.Bottom, "radius": s.Radius, "wall": s.WallAngle, "girth": s.Girth,
		"load": s.Load, "cord": s.CordTension, "cloth": s.ClothTension} {
		if len(v) != len(s.X) {
			t.Errorf("%s has %d stations, x has %d", name, len(v), len(s.X))
		}
	}
}

// ends holds each end's figures against each other: the section of straight walls and
// a round bottom, the line of its leg and the balance of its apex.
func ends(t *testing.T, d figures.Document) {
	for i, e := range []figures.End{d.Ends.Head, d.Ends.Foot} {
		near(t, "hang angle", e.HangAngle, math.Atan(e.Slope), 1e-12)
		near(t, "slope of the pull", e.Vertical/e.Horizontal, e.Slope, 1e-6)
		near(t, "both sides' thrust", e.Horizontal, 2*d.Shape.Thrust, 1e-6)
		at := [2]int{0, len(d.Shape.X) - 1}[i]
		near(t, "end of the tail", e.TailEnd, d.Shape.X[at], 1e-6)
		near(t, "girth there", e.EndGirth, d.Shape.Girth[at], 1e-6)
		// From the last station the leg runs straight to the apex; the cord so far and that
		// line make up the leg.
		run := math.Abs(e.Apex[0] - e.TailEnd)
		line := math.Hypot(run, math.Hypot(d.Shape.Y[at], e.Apex[1]-d.Shape.Z[at]))
		near(t, "leg", e.TailArc+line, e.Leg, 1e-6*e.Leg)
		near(t, "pull along that line", d.Shape.CordTension[at], d.Shape.Thrust*line/run, 1e-4*d.Shape.Thrust)
	}
	near(t, "head higher", d.Shape.HeadHigher, d.Ends.Head.Apex[1]-d.Ends.Foot.Apex[1], 1e-9)
}

// body holds the outlines against each other: corners on the net line, which lies the
// reach inside the cord line, alike on both sides of the warp.
func body(t *testing.T, d figures.Document) {
	b := d.Body
	if area := area(b.NetLine); area <= 0 || area >= areaOf(t, b.CordLine) {
		t.Errorf("net line round %g mm², cord line round %g", area, areaOf(t, b.CordLine))
	}
	for i, c := range b.Corners {
		if distance(c, b.NetLine) > 1e-6 {
			t.Errorf("corner %d lies off the net line", i)
		}
		other := b.Corners[len(b.Corners)-1-i]
		near(t, "the other side's corner, along", other[0], c[0], 1e-9)
		near(t, "the other side's corner, across", other[1], -c[1], 1e-9)
	}
	// Away from corners, sides of the net line lie the reach inside.
	for _, q := range b.NetLine {
		if math.Abs(q[0]) < 600 {
			near(t, fmt.Sprintf("reach at %.0f", q[0]), distance(q, b.CordLine), b.Reach, 0.02)
		}
	}
	for e, bar := range b.Bars {
		first, last := bar[0], bar[len(bar)-1]
		near(t, "bar line from side to side", first[1], -last[1], 1e-9)
		if distance(first, b.NetLine) > 0.05 || (first[0] < 0) != (e == 0) {
			t.Errorf("bar line %d begins at %v", e, first)
		}
	}
}

// pieces holds areas, lengths and sizes against the cut lines, and the lay against both.
func pieces(t *testing.T, p work.Plan, d figures.Document) {
	byID := map[string]figures.Piece{}
	used := 0.0
	for _, q := range d.Pieces {
		byID[q.ID] = q
		near(t, q.ID+", area", q.Area, areaOf(t, q.CutLine), 1e-6*q.Area)
		long := 0.0
		low, high := q.CutLine[0], q.CutLine[0]
		for i, c := range q.CutLine {
			n := q.CutLine[(i+1)%len(q.CutLine)]
			long += math.Hypot(n[0]-c[0], n[1]-c[1])
			for k := range 2 {
				low[k], high[k] = min(low[k], c[k]), max(high[k], c[k])
			}
		}
		near(t, q.ID+", cut length", q.CutLength, long, 1e-9*long)
		near(t, q.ID+", along", q.Size[0], high[0]-low[0], 1e-9)
		near(t, q.ID+", across", q.Size[1], high[1]-low[1], 1e-9)
	}
	for _, place := range d.Lay.Cloth.Placed {
		used += byID[place.ID].Area
		// Turned and moved, the outline stays on the roll.
		sin, cos := math.Sincos(place.Turn)
		for _, c := range byID[place.ID].CutLine {
			if place.Mirror {
				c[1] = -c[1]
			}
			x, y := c[0]*cos-c[1]*sin+place.Shift[0], c[0]*sin+c[1]*cos+place.Shift[1]
			if x < -1e-6 || x > d.Lay.Cloth.Length+1e-6 || y < -1e-6 || y > d.Lay.Cloth.Width+1e-6 {
				t.Fatalf("%s lies at %g, %g on a roll of %g × %g", place.ID, x, y, d.Lay.Cloth.Length, d.Lay.Cloth.Width)
			}
		}
	}
	near(t, "used of the roll", d.Lay.Cloth.Use, used/(d.Lay.Cloth.Length*d.Lay.Cloth.Width), 0.02)
	near(t, "width of the roll", d.Lay.Cloth.Width, p.Design.Cloth.Width, 0)
}

// seams holds each seam against its parts, and offsets against the way along them.
func seams(t *testing.T, d figures.Document) {
	for _, s := range d.Seams {
		var flat [2]float64
		ease := 0.0
		for _, q := range s.Parts {
			flat[0], flat[1], ease = flat[0]+q.Flat[0], flat[1]+q.Flat[1], ease+q.Ease
			near(t, s.Name+", ease of a part", q.Ease, q.Flat[0]-q.Flat[1], 1e-6)
		}
		near(t, s.Name+", first piece", flat[0], s.Flat[0], 1e-6)
		near(t, s.Name+", second piece", flat[1], s.Flat[1], 1e-6)
		near(t, s.Name+", ease", ease, s.Ease, 1e-6)
		near(t, s.Name+", flat", s.Flat[0]-s.Flat[1], s.Difference, 1e-9)
		near(t, s.Name+", remains", s.Remains, s.Hung[0]-s.Hung[1], 1e-6)
		if s.Within != (math.Abs(s.Remains) <= s.Tolerance) {
			t.Errorf("%s: %g remains of %g, within %v", s.Name, s.Remains, s.Tolerance, s.Within)
		}
	}
	for _, o := range d.Offsets {
		first, last := o.Rows[0], o.Rows[len(o.Rows)-1]
		near(t, o.Name+", begins", math.Hypot(first.Station, first.Depth)+first.Arc, 0, 1e-6)
		near(t, o.Name+", chord", last.Station, o.Chord, 1e-6)
		near(t, o.Name+", along", last.Arc, o.Arc, 1e-6)
		deepest := 0
		for i, r := range o.Rows {
			if r.Deepest {
				deepest++
			}
			if i > 0 && r.Arc-o.Rows[i-1].Arc < math.Hypot(r.Station-o.Rows[i-1].Station, r.Depth-o.Rows[i-1].Depth)-1e-6 {
				t.Errorf("%s: at %g the way along is shorter than straight on", o.Name, r.Station)
			}
		}
		if deepest != 1 {
			t.Errorf("%s has %d deepest places", o.Name, deepest)
		}
	}
}

// cords holds each cut length against its terms.
func cords(t *testing.T, d figures.Document) {
	for _, c := range d.Cords {
		sum := 0.0
		for _, term := range c.Terms {
			sum += term.Length
		}
		near(t, c.Part.String(), sum, c.Cut, 1e-9)
	}
	near(t, "side cord, its first term", d.Cords[0].Terms[0].Length, d.Shape.SideArc, 1e-9)
}

// margins holds each check's load against the loads of its case.
func margins(t *testing.T, d figures.Document) {
	cases := map[string]figures.Case{}
	for _, c := range d.Cases {
		cases[c.Name] = c
	}
	seen := 0
	for _, k := range d.Margins {
		c, part := cases[k.Case], strings.TrimSuffix(k.Name, ", "+k.Case)
		end := 0
		if strings.HasPrefix(part, "foot") {
			end = 1
		}
		load := c.Side
		switch {
		case strings.HasSuffix(part, "leg"):
			load = c.Leg[end]
		case strings.HasSuffix(part, "hang line"), strings.HasSuffix(part, "hook"):
			load = c.Hang[end]
		case strings.Contains(part, "bar"):
			load = c.Bar[end]
		case strings.Contains(part, "cloth"), strings.Contains(part, "seam"):
			load = c.Cloth
		}
		near(t, k.Name, k.Load, k.Factor*load, 1e-9)
		if k.Capacity > 0 {
			near(t, k.Name+", margin", k.Ratio, k.Capacity/k.Load, 1e-12)
			seen++
		} else if len(k.Missing) == 0 {
			t.Errorf("%s holds nothing, and nothing is missing", k.Name)
		}
	}
	if seen < 10 {
		t.Errorf("%d capacities known", seen)
	}
	near(t, "lying, leg", cases["lying"].Leg[0], max(d.Ends.Head.LegTension, d.Shape.CordTension[0]), 0.5)
}

// hanging holds the place against the sweep: hooks rise with the slope of their lines.
func hanging(t *testing.T, d figures.Document) {
	h := d.Hanging
	near(t, "overall", h.Overall, d.Ends.Foot.Apex[0]-d.Ends.Head.Apex[0], 1e-9)
	for i, p := range append(h.Sweep, *h.Place) {
		run := 0.0
		for e, end := range []figures.End{d.Ends.Head, d.Ends.Foot} {
			run += p.Ends[e].Run
			near(t, "rise", p.Ends[e].Hook-p.Ends[e].Apex, p.Ends[e].Run*end.Slope, 1e-6)
			near(t, "line", p.Ends[e].Line, math.Hypot(p.Ends[e].Run, p.Ends[e].Hook-p.Ends[e].Apex), 1e-6)
			near(t, "pull", p.Ends[e].Pull.N, math.Hypot(end.Horizontal, end.Vertical), 1e-6)
		}
		near(t, "distance", run+h.Overall, p.Distance, 1e-6)
		if i > 0 && i < len(h.Sweep) {
			near(t, "step", p.Distance-h.Sweep[i-1].Distance, 250, 1e-9)
		}
	}
	if first := h.Sweep[0].Distance; first < h.Overall || first > h.Overall+100 || math.Mod(first, 100) != 0 {
		t.Errorf("the sweep begins at %g for %g overall", first, h.Overall)
	}
}

// text holds the figures for people against those of the document.
func text(t *testing.T, p work.Plan, d figures.Document) {
	var b bytes.Buffer
	if err := figures.Text(&b, &p, d); err != nil {
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
	has("leg, tip to hook", mm(h.Leg), mm(f.Leg))
	has("hook above the bed's bottom", mm(h.Apex[1]), mm(f.Apex[1]))
	has("pull on the hook, level", newton(h.Horizontal), newton(f.Horizontal))
	has("pull on the hook, upright", newton(h.Vertical), newton(f.Vertical))
	has("bar compression", newton(h.BarCompression), newton(f.BarCompression))
	has("leg tension at the tip", newton(h.LegTension), newton(f.LegTension))
	has("hang the head hook", mm(d.Shape.HeadHigher), "higher than the other")
	has("overall length from hook to hook", mm(d.Hanging.Overall))
	for _, q := range d.Pieces {
		has(q.ID, fmt.Sprint(q.Count), mm(q.Size[0]), mm(q.Size[1]), mm(q.CutLength), q.Stock)
	}
	for _, title := range []string{"Cautions", "Hung shape", "Ends", "Flat body", "Margins: capacity over load", "Hanging", "Pieces", "Lay", "Materials"} {
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

// roundTrip reads the document back as it was written.
func roundTrip(t *testing.T, d figures.Document) {
	data, err := json.Marshal(d)
	if err != nil {
		t.Fatal(err)
	}
	if bytes.Contains(data, []byte("NaN")) || bytes.Contains(data, []byte(":null")) && !bytes.Contains(data, []byte(`"checks":null`)) {
		t.Error("a figure is none")
	}
	var raw map[string]any
	if err := json.Unmarshal(data, &raw); err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(figures.Schema())
	if err != nil {
		t.Fatal(err)
	}
	var schema map[string]any
	if err := json.Unmarshal(text, &schema); err != nil {
		t.Fatal(err)
	}
	if faults := against(schema["anyOf"].([]any)[0].(map[string]any), raw, "document"); len(faults) > 0 {
		t.Errorf("the schema does not hold: %q", faults)
	}
	raw["digest"], raw["shape"].(map[string]any)["weight"] = 7.0, "heavy"
	delete(raw, "name")
	if faults := against(schema["anyOf"].([]any)[0].(map[string]any), raw, "document"); len(faults) != 3 {
		t.Errorf("of three faults the schema shows %q", faults)
	}
}

// against returns where a value is not as a schema has it: types, required and known
// names, and how many items.
func against(schema map[string]any, v any, at string) []string {
	var faults []string
	kinds := fmt.Sprint(schema["type"])
	switch x := v.(type) {
	case nil:
		if !strings.Contains(kinds, "null") {
			faults = append(faults, at+" is null")
		}
	case map[string]any:
		props, ok := schema["properties"].(map[string]any)
		if !ok {
			return []string{at + " is an object"}
		}
		for _, name := range schema["required"].([]any) {
			if _, ok := x[name.(string)]; !ok {
				faults = append(faults, at+" lacks "+name.(string))
			}
		}
		for name, field := range x {
			if props[name] == nil {
				faults = append(faults, at+"."+name+" is not known")
				continue
			}
			faults = append(faults, against(props[name].(map[string]any), field, at+"."+name)...)
		}
	case []any:
		items, ok := schema["items"].(map[string]any)
		if n, fixed := schema["minItems"].(float64); !ok || fixed && int(n) != len(x) {
			return []string{fmt.Sprintf("%s is an array of %d", at, len(x))}
		}
		for i, item := range x {
			faults = append(faults, against(items, item, fmt.Sprintf("%s[%d]", at, i))...)
		}
	default:
		name := map[string]string{"string": "string", "bool": "boolean", "float64": "number"}[fmt.Sprintf("%T", x)]
		if f, ok := x.(float64); ok && f == math.Trunc(f) && strings.Contains(kinds, "integer") {
			name = "integer"
		}
		if !strings.Contains(kinds, name) {
			faults = append(faults, fmt.Sprintf("%s is a %s, not %s", at, name, kinds))
		}
	}
	return faults
}

// areaOf returns the area inside a closed line, which has to run counter-clockwise.
func areaOf(t *testing.T, line []figures.Pair) float64 {
	t.Helper()
	a := area(line)
	if a <= 0 {
		t.Errorf("a line of %d points runs clockwise", len(line))
	}
	return a
}

func area(line []figures.Pair) float64 {
	a := 0.0
	for i, p := range line {
		q := line[(i+1)%len(line)]
		a += (p[0]*q[1] - p[1]*q[0]) / 2
	}
	return a
}

// distance returns how far a point lies from a closed line.
func distance(p figures.Pair, line []figures.Pair) float64 {
	best := math.Inf(1)
	for i, a := range line {
		b := line[(i+1)%len(line)]
		dx, dy := b[0]-a[0], b[1]-a[1]
		t := 0.0
		if l := dx*dx + dy*dy; l > 0 {
			t = min(max(((p[0]-a[0])*dx+(p[1]-a[1])*dy)/l, 0), 1)
		}
		best = min(best, math.Hypot(p[0]-a[0]-t*dx, p[1]-a[1]-t*dy))
	}
	return best
}
