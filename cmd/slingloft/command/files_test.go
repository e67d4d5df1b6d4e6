package command_test

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/command"
	"slingloft/cmd/slingloft/figures"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// tolerance in mm within which a file agrees with the figures, whatever the
// scale.
const tolerance = 0.01

// What cut writes is opened again, by the program's own readers and by others,
// and compared with what figure says of the same design.
func TestFilesAgree(t *testing.T) {
	for _, tc := range []struct {
		what   string
		design []string
		scales map[string]float64
	}{
		{"demo", nil, map[string]float64{"1:1": 1, "1:5": 0.2}},
		{"inches", []string{inches}, map[string]float64{"1:1": 1}},
	} {
		t.Run(tc.what, func(t *testing.T) {
			t.Parallel()
			doc := figuresOf(t, tc.design...)
			for scale, factor := range tc.scales {
				t.Run(scale, func(t *testing.T) { agree(t, doc, tc.design, scale, factor) })
			}
		})
	}
}

// agree cuts a design at a scale and compares every file with the figures.
func agree(t *testing.T, doc cutting, design []string, scale string, factor float64) {
	folder := t.TempDir()
	args := append([]string{"cut", "--as", "svg,dxf", "--out", folder, "--scale", scale}, design...)
	names := strings.Fields(output(t, args...))
	if want := 2 * (1 + doc.Lay.Sheets.Count); len(names) != want {
		t.Fatalf("%d files written, want %d", len(names), want)
	}
	own, foreign := readOwn(t, names), readForeign(t, names)
	for _, name := range names {
		want := sheetOf(t, doc, name)
		t.Run(filepath.Base(name), func(t *testing.T) { want.agrees(t, own[name], factor) })
		t.Run(filepath.Base(name)+" by another reader", func(t *testing.T) {
			if foreign == nil {
				missing(t, "ezdxf or svg.path")
			}
			want.agrees(t, foreign[name], factor)
		})
	}
}

// output runs the command in this process and returns its standard output.
func output(t testing.TB, args ...string) string {
	t.Helper()
	var out, stderr bytes.Buffer
	if code := command.Run(context.Background(), args, command.Streams{Out: &out, Err: &stderr}); code != command.Done {
		t.Fatalf("slingloft %s: status %d\n%s", strings.Join(args, " "), code, stderr.String())
	}
	return out.String()
}

// cutting is what figure --json prints of pieces and lay.
type cutting struct {
	Pieces []figures.Piece `json:"pieces"`
	Lay    figures.Lay     `json:"lay"`
}

// figuresOf returns what figure --json prints.
func figuresOf(t testing.TB, args ...string) cutting {
	t.Helper()
	var doc cutting
	text := output(t, append([]string{"figure", "--json"}, args...)...)
	if err := json.Unmarshal([]byte(text), &doc); err != nil {
		t.Fatal(err)
	}
	return doc
}

// wanted is what the figures say of one sheet.
type wanted struct {
	width, height float64 // of the sheet, of the lay area for the cloth
	cloth         bool
	pieces        map[string]figures.Piece // by the name of the line: body-1
	places        map[string]figures.Place
}

// sheetOf picks from the figures what lies on the sheet of a file.
func sheetOf(t testing.TB, doc cutting, name string) wanted {
	t.Helper()
	w := wanted{pieces: map[string]figures.Piece{}, places: map[string]figures.Place{}}
	stem := strings.TrimSuffix(filepath.Base(name), filepath.Ext(name))
	stock, number := doc.Lay.Cloth, 1
	if stem == "cloth-lay" {
		w.cloth, w.width, w.height = true, stock.Length, stock.Width
	} else {
		stock = doc.Lay.Sheets
		w.width, w.height = stock.Width, stock.Length
		if n, err := fmt.Sscanf(stem, "template-sheet-%d", &number); n != 1 {
			t.Fatalf("%s: %v", name, err)
		}
	}
	for _, p := range stock.Placed {
		if p.Sheet == number {
			id := fmt.Sprintf("%s-%d", p.ID, p.Copy)
			i := slices.IndexFunc(doc.Pieces, func(q figures.Piece) bool { return q.ID == p.ID })
			w.pieces[id], w.places[id] = doc.Pieces[i], p
		}
	}
	return w
}

// agrees compares a sheet with what a reader found in its file.
func (w wanted) agrees(t *testing.T, got reading, factor float64) {
	t.Helper()
	near := func(what string, got, want float64) {
		t.Helper()
		if math.Abs(got-want*factor) > tolerance {
			t.Errorf("%s: %.4f mm, want %.4f", what, got, want*factor)
		}
	}
	if w.cloth {
		near("lay area across", got.lines["lay edge"].box.Height(), w.height)
		near("lay area along", got.lines["lay edge"].box.Width(), w.width)
	} else {
		near("width", got.width, w.width)
		near("height", got.height, w.height)
	}
	near("100 mm bar", got.lines["bar-100mm-x"].box.Width(), 100)
	near("100 mm bar upright", got.lines["bar-100mm-y"].box.Height(), 100)
	near("4 in bar", got.lines["bar-4in-x"].box.Width(), 101.6)
	near("4 in bar upright", got.lines["bar-4in-y"].box.Height(), 101.6)
	for _, work := range piece.Works() {
		if got.layers != nil && !slices.Contains(got.layers, work.String()) {
			t.Errorf("no layer %s among %v", work, got.layers)
		}
	}
	cuts := 0
	for name, l := range got.lines {
		if strings.HasSuffix(name, "/cut line") {
			cuts++
		}
		if open := strings.Contains(name, "/notch ") || strings.HasPrefix(name, "cross "); open && l.closed {
			t.Errorf("%s is closed", name)
		}
	}
	if cuts != len(w.pieces) || cuts == 0 {
		t.Errorf("%d cut lines, want %d", cuts, len(w.pieces))
	}
	var origin *geom.Point
	for id, p := range w.pieces {
		l, ok := got.lines[id+"/cut line"]
		if !ok || !l.closed || l.layer != "cut-outline" {
			t.Errorf("%s/cut line: found %v, closed %v, layer %q", id, ok, l.closed, l.layer)
			continue
		}
		near(id+"/cut line", l.length, p.CutLength)
		if net, ok := got.lines[id+"/net line"]; ok {
			near(id+"/net line", net.length, p.NetLength)
		}
		box := placed(p, w.places[id])
		near(id+" along", l.box.Width(), box.Width())
		near(id+" across", l.box.Height(), box.Height())
		// All pieces of a sheet are moved by the same band around the lay.
		at := l.box.Min.Minus(box.Min.Times(factor))
		if origin == nil {
			origin = &at
		} else if at.Dist(*origin) > 2*tolerance {
			t.Errorf("%s lies off its place by %.3f mm", id, at.Dist(*origin))
		}
	}
}

// placed returns the box of a piece's outline where the lay put it.
func placed(p figures.Piece, at figures.Place) geom.Box {
	m := geom.Motion{Turn: at.Turn, Mirror: at.Mirror, Shift: geom.Pt(at.Shift[0], at.Shift[1])}
	var ring geom.Polyline
	for _, q := range p.CutLine {
		ring = append(ring, m.Apply(geom.Pt(q[0], q[1])))
	}
	return ring.Bounds()
}

// missing skips a test whose outside reader is not there, or fails it.
func missing(t testing.TB, what string) {
	t.Helper()
	if os.Getenv("SLINGLOFT_READERS") == "require" {
		t.Fatalf("%s is not installed", what)
	}
	t.Skipf("%s is not installed", what)
}
