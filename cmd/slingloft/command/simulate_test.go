package command_test

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/command"
	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/export/simulatetest"
	"slingloft/export/whole"
	"slingloft/outline/design"
	"slingloft/outline/designtest"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// shopMachine is a machine that programs are tried on, and what it was asked for beside
// cuts. All values are invented.
type shopMachine struct {
	name, settings string
	format         string
	cuts           []piece.Stock
	cloth, board   []piece.Work // marks that its jobs ask for
}

// jobs writes jobs for some kinds of work in a material.
func jobs(material, values string, works ...piece.Work) string {
	var b strings.Builder
	for _, w := range works {
		fmt.Fprintf(&b, "[[machine.job]]\nwork = %q\nmaterial = %q\n%s\n", w, material, values)
	}
	return b.String()
}

func shopMachines(cloth, board string) []shopMachine {
	both, marks := []piece.Stock{piece.Cloth, piece.Board}, []piece.Work{piece.Register, piece.Lettering, piece.Mark, piece.Stitch, piece.Score}
	cut := []piece.Work{piece.CutInside, piece.CutOut}
	const fast, slow = "feed = \"3000 mm/min\"\npower = 120", "feed = \"500 mm/min\"\npower = 700"
	const down = "plunge = \"300 mm/min\"\nsafe_height = \"6 mm\"\n"
	outline := jobs(cloth, slow, piece.CutOut)
	return []shopMachine{
		{"laser", outline + jobs(board, slow, cut...), "gcode", both, nil, nil},
		{"laser with all", "kerf = \"0.24 mm\"\nlead = \"3 mm\"\ntabs = 2\ntab_width = \"1.5 mm\"\ndynamic_power = true\nair = \"M8\"\ncontroller = \"lean\"\norigin = \"middle\"\nheader = [\"G54\"]\n" +
			outline + jobs(board, slow, cut...) + jobs(board, fast, marks...), "gcode", both, nil, marks},
		{"laser that marks cloth by name", "origin = \"upper-right\"\nx_left = true\ny_down = true\nswap_axes = true\n" +
			outline + jobs(cloth, fast, piece.Mark, piece.Register) + jobs(board, slow, cut...), "gcode", both, []piece.Work{piece.Mark}, nil},
		{"knife", "tool = \"knife\"\ntrail = \"0.4 mm\"\nlead = \"6 mm\"\nfor = \"cloth\"\norigin = \"lower-right\"\nx_left = true\n" + down +
			jobs(cloth, "feed = \"1200 mm/min\"\ndepth = \"0.6 mm\"", piece.CutOut), "gcode", []piece.Stock{piece.Cloth}, nil, nil},
		{"router", "tool = \"router\"\ncutter = \"2 mm\"\nthrough = \"0.3 mm\"\nspin_up = 3\nlead = \"2 mm\"\ntabs = 3\ntab_width = \"4 mm\"\ntab_height = \"1 mm\"\nfor = \"board\"\n" + down +
			jobs(board, "feed = \"900 mm/min\"\npower = 12000\npasses = 2", cut...) + jobs(board, "feed = \"1200 mm/min\"\npower = 12000\ndepth = \"0.3 mm\"", marks...),
			"gcode", []piece.Stock{piece.Board}, nil, marks},
		{"pen", "tool = \"pen\"\n" + down + jobs(cloth, "feed = \"5000 mm/min\"\ndepth = \"0.5 mm\"", piece.Works()...) + jobs(board, "feed = \"5000 mm/min\"\ndepth = \"0.5 mm\"", piece.Works()...),
			"gcode", both, append(slices.Clone(marks), piece.CutInside), marks},
		{"pen plotter", "", "hpgl", both, append(slices.Clone(marks), piece.CutInside), marks},
		{"knife plotter", "tool = \"knife\"\norigin = \"upper-left\"\ny_down = true\n", "hpgl", both, nil, nil},
		{"laser in fields", "fields = true\nwidth = \"700 mm\"\nkerf = \"0.3 mm\"\nlead = \"3 mm\"\nfor = \"cloth\"\norigin = \"lower-left\"\ncontroller = \"lean\"\n" + outline,
			"gcode", []piece.Stock{piece.Cloth}, nil, nil},
		{"pen plotter in fields", "tool = \"pen\"\nfields = true\nwidth = \"900 mm\"\nfor = \"cloth\"\norigin = \"middle\"\nx_left = true\nswap_axes = true\n",
			"hpgl", []piece.Stock{piece.Cloth}, append(slices.Clone(marks), piece.CutInside), nil},
		{"knife in fields", "tool = \"knife\"\ntrail = \"0.4 mm\"\nlead = \"6 mm\"\nfields = true\nwidth = \"800 mm\"\nfor = \"cloth\"\norigin = \"lower-right\"\nx_left = true\n" + down +
			jobs(cloth, "feed = \"1200 mm/min\"\ndepth = \"0.6 mm\"", piece.CutOut), "gcode", []piece.Stock{piece.Cloth}, nil, nil},
		{"laser on plots", "tool = \"laser\"\nkerf = \"0.2 mm\"\n", "hpgl", both, nil, marks},
	}
}

// Programs and plots, followed as machines would, spoil nothing: no line on cloth or on
// a template that nobody asked for, nothing off the stock or over the bed, and all cuts
// through; on machines of all kinds, of the examples and of random designs, of which
// there are as many as SLINGLOFT_SIMULATE says.
func TestProgramsSpoilNothing(t *testing.T) {
	read := func(path string) []byte {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		return data
	}
	_, demo := design.Demo()
	every := func(int) bool { return true }
	for _, d := range []struct {
		name string
		data []byte
		on   func(machine int) bool
	}{{"small", read(small), every}, {"demo", demo, func(m int) bool { return m == 4 || m == 9 }}, {"inches", read(inches), func(m int) bool { return m == 3 }}} {
		t.Run(d.name, func(t *testing.T) {
			t.Parallel()
			simulate(t, d.data, d.on)
		})
	}
	n, err := strconv.Atoi(os.Getenv("SLINGLOFT_SIMULATE"))
	if err != nil {
		n = 1
	}
	for i := range n {
		t.Run(fmt.Sprint("random ", i), func(t *testing.T) {
			t.Parallel()
			simulate(t, untested(designtest.Design(rand.New(rand.NewPCG(15, uint64(i))))), func(m int) bool { return m%4 == i%4 })
		})
	}
}

// untested returns a design whose strengths nobody knows, so that none is too weak to
// be cut.
func untested(d design.Design) []byte {
	d.Bar.Material, d.Bar.Modulus, d.Bar.Yield = "", 0, 0
	d.Side.Strength, d.Leg.Strength, d.Hang.Line.Strength, d.Hang.HookStrength = 0, 0, 0, 0
	d.Cloth.StripStrength, d.Seam.ThreadStrength = 0, 0
	return design.Write(d)
}

// simulate cuts a design on those machines that a number is asked for, and follows what
// was written. What cannot be made, or is not strong enough, is no matter here.
func simulate(t *testing.T, data []byte, on func(machine int) bool) {
	folder := t.TempDir()
	d, _, err := design.Read("d.toml", data)
	if err != nil {
		t.Skip(err)
	}
	if d.Sheet.Thickness == 0 {
		data = bytes.Replace(data, []byte("[sheet]\n"), []byte("[sheet]\nthickness = \"3 mm\"\n"), 1)
	}
	path := filepath.Join(folder, "d.toml")
	if err := os.WriteFile(path, data, 0o600); err != nil {
		t.Fatal(err)
	}
	tried := 0
	for i, m := range shopMachines(d.Cloth.Name, d.Sheet.Name) {
		if !on(i) {
			continue
		}
		shop := filepath.Join(folder, fmt.Sprintf("m%d.toml", i))
		if err := os.WriteFile(shop, []byte("[machine]\n"+m.settings), 0o600); err != nil {
			t.Fatal(err)
		}
		out := filepath.Join(folder, fmt.Sprint("out", i))
		var said, errs bytes.Buffer
		status := command.Run(context.Background(), []string{"cut", path, "--machine", shop, "--as", m.format, "--out", out}, command.Streams{Out: &said, Err: &errs})
		if status == command.Unmet || status == command.SeamOff || status == command.Usage && strings.Contains(errs.String(), "d.toml:") {
			t.Skip(errs.String())
		}
		if status != command.Done {
			t.Fatalf("%s: status %d\n%s", m.name, status, errs.String())
		}
		tried += follow(t, m, shop, data, cutRun{out, errs.String()})
	}
	if tried == 0 {
		t.Error("nothing was followed")
	}
}

// cutRun is a folder that was cut into, and what was said of it.
type cutRun struct{ folder, said string }

// movedOn finds how far the cloth is moved on before a field.
var movedOn = regexp.MustCompile(`field (\d+) of \d+: move the cloth on by ([0-9.]+) mm`)

// feeds returns by how much the cloth is moved on before each field, by the notes.
func (r cutRun) feeds(t *testing.T) map[int]float64 {
	out := map[int]float64{1: 0}
	for _, m := range movedOn.FindAllStringSubmatch(r.said, -1) {
		n, _ := strconv.Atoi(m[1])
		feed, err := strconv.ParseFloat(m[2], 64)
		if err != nil {
			t.Fatal(err)
		}
		out[n] = feed
	}
	return out
}

// follow follows all files of a run, the fields of a cloth one after the other.
func follow(t *testing.T, m shopMachine, shop string, data []byte, r cutRun) int {
	folder := r.folder
	text, err := os.ReadFile(shop)
	if err != nil {
		t.Fatal(err)
	}
	settings, from, err := design.ReadMachine(shop, text)
	if err != nil {
		t.Fatal(err)
	}
	p, err := work.ReadFor("d.toml", data, work.Setting{Machine: &settings, MachineSource: from})
	if err != nil {
		t.Fatal(err)
	}
	lays, err := p.Restore(laysIn(t, folder))
	if err != nil {
		t.Fatal(err)
	}
	files, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	var fields []simulatetest.Run
	var fed []float64
	for _, f := range files {
		if strings.HasPrefix(f.Name(), ".") {
			continue
		}
		n++
		program, err := os.ReadFile(filepath.Join(folder, f.Name()))
		if err != nil {
			t.Fatal(err)
		}
		setup, order := m.expected(t, &p, lays, f.Name())
		field := 0
		if _, err := fmt.Sscanf(f.Name(), "cloth-lay-field-%d.", &field); err == nil {
			setup.Width = setup.Bed[0]
		}
		run := simulatetest.HPGL
		if m.format == "gcode" {
			run = simulatetest.GCode
			for _, fault := range readertest.Lean(string(program)) {
				t.Errorf("%s, %s: a lean controller: %s", m.name, f.Name(), fault)
			}
		}
		done := run(string(program), setup)
		if field > 0 {
			if field != len(fields)+1 {
				t.Fatalf("%s: field %d behind %d others", m.name, field, len(fields))
			}
			fields, fed = append(fields, done), append(fed, r.feeds(t)[field])
			continue
		}
		for _, bad := range simulatetest.Judge(done, setup, order) {
			t.Errorf("%s, %s: %s", m.name, f.Name(), bad)
		}
	}
	if len(fields) > 0 {
		setup, order := m.expected(t, &p, lays, "cloth-lay")
		order.Once = 20 // a lap at each place where an outline goes over a field's edge
		for _, bad := range simulatetest.Judge(simulatetest.Joined(fields, fed), setup, order) {
			t.Errorf("%s, %d fields: %s", m.name, len(fields), bad)
		}
		if len(fields) < 2 {
			t.Errorf("%s: all in one field", m.name)
		}
	}
	return n
}

// laysIn returns where the pieces of a folder lie, by its record.
func laysIn(t *testing.T, folder string) work.Kept {
	var note struct {
		Lay work.Kept `json:"lay"`
	}
	for _, k := range whole.ReadRecord(folder) {
		if err := json.Unmarshal([]byte(k.Note), &note); err != nil {
			t.Fatal(err)
		}
	}
	return note.Lay
}

// expected is what is due of a file: the pieces where the lay put them on the stock.
func (m shopMachine) expected(t *testing.T, p *work.Plan, l work.Lays, name string) (simulatetest.Setup, simulatetest.Order) {
	mc, d := p.Design.Machine, p.Design
	setup := simulatetest.Setup{Tool: mc.Tool, Trail: mc.Trail, Bed: [2]float64{mc.Width, mc.Height},
		Axes: export.Axes{Origin: mc.Origin.Corner, XLeft: mc.XLeft, YDown: mc.YDown, Swap: mc.Swap}}
	if setup.Tool == 0 {
		setup.Tool = map[string]design.Tool{"gcode": design.Laser, "hpgl": design.Pen}[m.format]
	}
	order := simulatetest.Order{Kerf: mc.Cut(), Tolerance: 0.03, Tabs: mc.Tabs, TabWidth: mc.TabWidth + 0.5}
	var items []export.Item
	shift, marks := geom.Point{}, m.cloth
	if strings.HasPrefix(name, "cloth-lay") {
		items = work.Placed(p.OnRoll(0), l.Rolls[0], 0)
		setup.Width, setup.Height = l.Rolls[0].Length, d.Cloth.Width
	} else {
		var n int
		if _, err := fmt.Sscanf(name, "template-sheet-%d", &n); err != nil {
			t.Fatal(err)
		}
		frame, err := export.Within(d.Sheet.Width, d.Sheet.Height)
		if err != nil {
			t.Fatal(err)
		}
		items, shift, marks = work.Placed(p.Templates, l.Boards, n-1), frame.Lay.Min, m.board
		setup.Width, setup.Height = d.Sheet.Width, d.Sheet.Height
		if m.format == "gcode" {
			order.Thickness = d.Sheet.Thickness
			if mc.Tool == 0 {
				order.Kerf = max(mc.Kerf, d.Sheet.Kerf)
			}
		}
	}
	if m.format == "hpgl" || setup.Tool == design.Pen {
		order.Kerf, order.Thickness = 0, 0 // drawn along the lines
	}
	if setup.Tool == design.Knife && m.format == "gcode" {
		order.Tolerance = 0.1 + mc.Trail // the tip swings into line where a cut begins
	}
	for _, it := range items {
		motion := it.Motion
		motion.Shift = motion.Shift.Plus(shift)
		order.Parts = append(order.Parts, partOf(it, motion, marks, shift != geom.Point{}))
	}
	return setup, order
}

// partOf is a piece on its place, with the marks that were asked for.
func partOf(it export.Item, motion geom.Motion, marks []piece.Work, board bool) simulatetest.Part {
	out := simulatetest.Part{Name: fmt.Sprintf("%s-%d", it.Piece.ID, it.Copy), Cut: it.Piece.Cut.Moved(motion)}
	for _, h := range it.Piece.Holes {
		out.Holes = append(out.Holes, h.Moved(motion))
	}
	for _, l := range it.Piece.Lines {
		l = l.Moved(motion)
		switch {
		case l.Work == piece.CutInside && l.Closed:
			out.Holes = append(out.Holes, geom.Ring(l.Points))
		case l.Work == piece.CutInside && (board || slices.Contains(marks, l.Work)):
			out.Slits = append(out.Slits, l)
		case slices.Contains(marks, l.Work):
			out.Marks = append(out.Marks, l)
		}
	}
	if slices.Contains(marks, piece.Lettering) {
		for _, label := range it.Piece.Labels {
			out.Marks = append(out.Marks, export.LabelLines(0, label.Moved(motion))...)
		}
	}
	return out
}
