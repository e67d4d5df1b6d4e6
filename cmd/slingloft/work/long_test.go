package work

import (
	"bytes"
	"context"
	"crypto/sha256"
	"errors"
	"flag"
	"fmt"
	"math"
	"math/rand/v2"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"

	"slingloft/outline/piece"

	sf "github.com/peterstace/simplefeatures/geom"

	"slingloft/export"
	"slingloft/export/format"
	"slingloft/export/prove"
	"slingloft/export/readertest"
	"slingloft/nest"
	"slingloft/outline/design"
	"slingloft/outline/designtest"
	"slingloft/outline/geom"
	"slingloft/outline/hung"
	"slingloft/outline/numeric"
)

// The long runs, left out unless a number is given:
//
//	go test ./cmd/slingloft/work -run Long -timeout 0 -long 100000 -long-lays 3000
//
// A design that fails is named by its number; -long-first begins with it.
var (
	longDesigns = flag.Int("long", 0, "random designs to carry to their pieces")
	longLays    = flag.Int("long-lays", 0, "random designs to carry on through lay and files")
	longFirst   = flag.Int("long-first", 0, "number of the first random design")
	longCovers  = flag.Bool("long-covers", false, "a cover over every random design")
	longLinings = flag.Bool("long-linings", false, "a lining in every random design")
	longTarps   = flag.Bool("long-tarps", false, "a tarp over every random design")
)

// random returns the text of the random design of a number.
func random(n int) []byte {
	r := rand.New(rand.NewPCG(8, uint64(n)))
	d := designtest.Design(r)
	if *longCovers {
		d.Cover = designtest.Cover(r)
	}
	if *longLinings {
		d = designtest.Lining(r, d)
	}
	if *longTarps {
		d.Tarp = designtest.Tarp(r)
	}
	return design.Write(d)
}

// TestLongShapes carries random designs from the text to their pieces. Each has to
// be refused by name or to give a shape in balance, outlines that are valid and seams
// that walk, twice the same.
func TestLongShapes(t *testing.T) {
	if *longDesigns == 0 {
		t.Skip("no -long")
	}
	var count sync.Map // of outcomes
	var wg sync.WaitGroup
	numbers := make(chan int)
	outcomes := make(chan string)
	for range runtime.GOMAXPROCS(0) {
		wg.Go(func() {
			for n := range numbers {
				outcomes <- carried(t, n)
			}
		})
	}
	go func() {
		for n := range *longDesigns {
			numbers <- *longFirst + n
		}
		close(numbers)
		wg.Wait()
		close(outcomes)
	}()
	for o := range outcomes {
		k, _ := count.LoadOrStore(o, new(int))
		*k.(*int)++
	}
	total(t, &count, *longDesigns)
}

// total logs how often each outcome came, and fails where less than half of the
// designs could be made: then it is not the designs that were tried.
func total(t *testing.T, count *sync.Map, of int) {
	var rows []string
	made := 0
	count.Range(func(k, v any) bool {
		rows = append(rows, fmt.Sprintf("%6d %s", *v.(*int), k))
		if strings.HasPrefix(k.(string), "made") {
			made += *v.(*int)
		}
		return true
	})
	slices.Sort(rows)
	slices.Reverse(rows)
	for _, r := range rows {
		t.Log(r)
	}
	if made < of/2 {
		t.Errorf("%d of %d designs made", made, of)
	}
}

// carried carries the design of a number to its pieces and returns what came of it.
func carried(t *testing.T, n int) string {
	read := readFor
	if n%20 == 0 {
		read = ReadFor // with values tried for a fault, which takes ten times as long
	}
	p, err := read("random.toml", random(n), Setting{})
	if err != nil {
		f := faultsOf(err)
		if len(f) == 0 || f[0].Key == "" {
			t.Errorf("design %d: %v names no key", n, err)
			return "refused without a name"
		}
		return "refused: " + string(f[0].Key)
	}
	if err := sound(&p); err != nil {
		t.Errorf("design %d: %v", n, err)
		return "unsound"
	}
	if n%10 == 0 {
		for _, q := range p.Pieces() {
			if err := onPiece(q); err != nil {
				t.Errorf("design %d: %v", n, err)
				return "unsound"
			}
		}
		again, err := ReadFor("random.toml", random(n), Setting{})
		if err != nil || fmt.Sprint(again.Sewn, again.Templates) != fmt.Sprint(p.Sewn, p.Templates) {
			t.Errorf("design %d: other pieces the second time, error %v", n, err)
			return "differs"
		}
	}
	return "made"
}

// sound returns what is wrong with a plan.
func sound(p *Plan) error {
	if err := balanced(&p.Shape); err != nil {
		return err
	}
	for _, q := range p.Pieces() {
		if err := valid(q); err != nil {
			return fmt.Errorf("%s: %w", q.ID, err)
		}
	}
	for _, s := range p.Sewn.Seams {
		if !s.Within() {
			return fmt.Errorf("seam %s: %g mm remain, tolerance %g", s, s.Remains, s.Tolerance)
		}
	}
	return nil
}

// balanced checks the hung shape as a free body: the load integrated along it, the
// bars and the upright pulls at the ends, by forces and by moments about the head bar.
func balanced(s *hung.Shape) error {
	head, foot := s.TailEnds()
	half := s.Problem.Bed.Span / 2
	marks := append(s.Problem.Load.Breaks(), -half, half, 0, head, foot)
	for i := range 40 {
		marks = append(marks, head+(foot-head)*float64(i)/40)
	}
	slices.Sort(marks)
	panel := numeric.NewPanel()
	var force, moment float64
	for i := 1; i < len(marks); i++ {
		a, b := max(marks[i-1], head), min(marks[i], foot)
		if b-a < 1e-9 {
			continue
		}
		var w, m [numeric.Order]float64
		for k := range w {
			x := a + panel.At(k)*(b-a)
			w[k] = s.At(x).Load
			m[k] = w[k] * (x + half)
		}
		_, f := panel.Integrate(&w, b-a)
		_, g := panel.Integrate(&m, b-a)
		force, moment = force+f, moment+g
	}
	force += s.Problem.BarWeight[0] + s.Problem.BarWeight[1]
	moment += s.Problem.BarWeight[1] * 2 * half
	h, f := s.Ends[hung.Head], s.Ends[hung.Foot]
	pulls := h.Vertical*(h.ApexX+half) + f.Vertical*(f.ApexX+half) + h.Horizontal*h.ApexZ - f.Horizontal*f.ApexZ
	up, about := (h.Vertical+f.Vertical)/force-1, pulls/moment-1
	if !(math.Abs(up) < 1e-8) || !(math.Abs(about) < 1e-8) {
		return fmt.Errorf("out of balance by %g of the force, %g of the moment", up, about)
	}
	return nil
}

// valid checks an outline with its holes by a library that is not ours, and that
// every other number of the piece is finite.
func valid(p piece.Piece) error {
	var rings []sf.LineString
	for _, r := range append([]geom.Ring{p.Cut}, p.Holes...) {
		var flat []float64
		for _, q := range r.Closed() {
			flat = append(flat, q.X, q.Y)
		}
		rings = append(rings, sf.NewLineString(sf.NewSequence(flat, sf.DimXY)))
	}
	if err := sf.NewPolygon(rings).Validate(); err != nil {
		return fmt.Errorf("outline: %w", err)
	}
	if p.Cut.Area() <= 0 {
		return fmt.Errorf("outline runs clockwise")
	}
	for _, l := range p.Lines {
		for _, q := range l.Points {
			if !q.Finite() {
				return fmt.Errorf("%s: %v", l.Name, q)
			}
		}
	}
	return nil
}

// onPiece checks that no line of a piece leaves it.
func onPiece(p piece.Piece) error {
	cut := geom.NewArc(p.Cut.Closed())
	for _, l := range p.Lines {
		for _, q := range l.Points {
			if p.Cut.Contains(q) {
				continue
			}
			if _, off := cut.Nearest(q); off > 0.01 {
				return fmt.Errorf("%s: %s lies %.2f mm outside the cut line at %v", p.ID, l.Name, off, q)
			}
		}
	}
	return nil
}

// TestLongFiles carries random designs through lay and files: no overlap, the files
// read back as what was to be written. One in ten is written in every format, those
// that order their paths or are painted among them, and on one processor and on two,
// which must give the same bytes.
func TestLongFiles(t *testing.T) {
	if *longLays == 0 {
		t.Skip("no -long-lays")
	}
	var count sync.Map
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(0))
	for i := range *longLays {
		n := *longFirst + i
		o := filed(t, n, i%10 == 0)
		k, _ := count.LoadOrStore(o, new(int))
		*k.(*int)++
	}
	total(t, &count, *longLays)
}

// filed carries the design of a number to its files and returns what came of it.
func filed(t *testing.T, n int, every bool) string {
	var first [sha256.Size]byte
	for _, processors := range []int{2, 1} {
		runtime.GOMAXPROCS(processors)
		p, err := readFor("random.toml", random(n), Setting{})
		if err != nil {
			return "refused" // TestLongShapes looks at how
		}
		l, err := p.Lay(context.Background(), Budget{})
		if err != nil {
			var f design.Faults
			if !errors.As(err, &f) || f[0].Key == "" {
				t.Errorf("design %d: lay: %v", n, err)
				return "lay refused without a name"
			}
			return "lay refused: " + string(f[0].Key)
		}
		sum, err := readBack(&p, l, every, processors == 2)
		switch {
		case err != nil:
			t.Errorf("design %d: %v", n, err)
			return "unsound"
		case !every:
			return "made"
		case processors == 2:
			first = sum
		case sum != first:
			t.Errorf("design %d: other bytes on one processor", n)
			return "differs"
		}
	}
	return "made in every format, twice"
}

// readBack verifies a lay, writes its sheets and, if they are to be checked, reads
// them back; HP-GL, G-code and pictures only if every format is asked for. It returns
// the sum of all bytes.
func readBack(p *Plan, l Lays, every, check bool) (sum [sha256.Size]byte, err error) {
	for roll, c := range p.Rolls() {
		if err := nest.Verify(items(p.OnRoll(roll)), nest.Strip{Width: c.Width, Gap: c.Gap, Margin: c.Margin, KeepOut: c.Flaws}, l.Rolls[roll]); err != nil {
			return sum, err
		}
	}
	drawings, err := p.Drawings(l, 1)
	if err != nil {
		return sum, err
	}
	h := sha256.New()
	for _, d := range drawings {
		for _, f := range format.All() {
			if slow := f.Name == "hpgl" || f.Name == "gcode" || f.Name == "png"; slow && !every {
				continue
			}
			codec, err := f.SetUp(readertest.WithJobs(design.Machine{}, "card"), export.Material{Name: "card", Stock: piece.Board})
			if err != nil {
				return sum, err
			}
			var b bytes.Buffer
			if err := codec.Write(&b, d, export.Options{}); err != nil {
				return sum, fmt.Errorf("%s.%s: %w", d.Name, f.Name, err)
			}
			h.Write(b.Bytes())
			if !check {
				continue
			}
			r, err := prove.File(b.Bytes(), prove.Sheet{Drawing: d, Format: f, Codec: codec})
			if err != nil || !r.Agrees() {
				return sum, fmt.Errorf("%s.%s: %v, error %w", d.Name, f.Name, r, err)
			}
		}
	}
	return [sha256.Size]byte(h.Sum(nil)), nil
}
