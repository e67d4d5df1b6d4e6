package desk_test

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"slingloft/cmd/slingloft/desk"
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// memory is a store in memory.
type memory struct {
	name string
	data []byte
}

func (m *memory) Name() string { return m.name }
func (m *memory) Save(data []byte, digest string) error {
	if desk.Digest(m.data) != digest {
		return desk.ErrChanged
	}
	m.data = data
	return nil
}
func (m *memory) Create(name string, data []byte) error {
	m.name, m.data = name, data
	return nil
}

func opened(t testing.TB, text string) (*desk.Desk, *memory) {
	t.Helper()
	m := &memory{"bed.toml", []byte(text)}
	d := desk.New(m, m.data, work.Setting{})
	d.Open()
	t.Cleanup(d.Close)
	return d, m
}

// until waits for a state.
func until(t testing.TB, d *desk.Desk, ok func(desk.State) bool) desk.State {
	t.Helper()
	ctx, stop := context.WithTimeout(t.Context(), 20*time.Second)
	defer stop()
	for {
		s := d.State()
		if ok(s) {
			return s
		}
		if ctx.Err() != nil {
			t.Fatalf("it never came: %+v", s.Faults)
		}
		d.Wait(ctx, s.Number)
	}
}

func small(t testing.TB) string {
	t.Helper()
	data, err := os.ReadFile("../../../testdata/design/small.toml")
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// TestNames takes keys to fields and back.
func TestNames(t *testing.T) {
	for key, name := range map[design.Key]string{"name": "name", "bed.span": "bed.span", "guest[1].mass": "guest.0.mass", "machine.job[12].work": "machine.job.11.work", "cloth.flaw[2].left": "cloth.flaw.1.left"} {
		if desk.FieldName(key) != name || desk.KeyOf(name) != key {
			t.Errorf("%s: %s, %s", key, desk.FieldName(key), desk.KeyOf(name))
		}
	}
}

// A design with ten faults is mended by its buttons alone.
func TestTenFaults(t *testing.T) {
	text := small(t)
	for _, r := range [][2]string{
		{`span = "1480 mm"`, `span = "1500"`}, {`mass = "74 kg"`, `mass = "74 kgs"`}, {`stature = "1680 mm"`, `statur = "1680 mm"`},
		{`head_bar = "880 mm"`, `head_bar = "880 mn"`}, {`foot_bar = "800 mm"`, `foot_bar = "800,5 mm"`},
		{`head_drop = "400 mm"`, "head_drop = \"400 mm\"\nhead_girth = \"1200 mm\""},
		{`side_depth = "195 mm"`, `side_depth = 195`}, {`head_tail = "165 mm"`, `head_tail = "x"`}, {"head_leg = \"840 mm\"\n", ""},
		{`foot_tail = "190 mm"`, `foot_tail = true`},
	} {
		if !strings.Contains(text, r[0]) {
			t.Fatalf("no %s", r[0])
		}
		text = strings.Replace(text, r[0], r[1], 1)
	}
	d, _ := opened(t, text)
	for pressed := 0; ; pressed++ {
		s := until(t, d, func(s desk.State) bool {
			return s.Laid && len(s.Faults) == 0 || len(s.Faults) > 0 && len(s.Faults[0].Ways) > 0
		})
		if pressed == 0 && len(s.Faults) != 10 {
			t.Errorf("%d faults", len(s.Faults))
		}
		if len(s.Faults) == 0 {
			break
		}
		if pressed > 15 {
			t.Fatalf("still at fault: %+v", s.Faults)
		}
		if err := d.Set(desk.Keys(s.Faults[0].Ways[0].Set), 0); err != nil {
			t.Fatal(err)
		}
	}
}

// What somebody else writes is taken in, or kept beside what is not saved here.
func TestFound(t *testing.T) {
	d, m := opened(t, small(t))
	until(t, d, func(s desk.State) bool { return s.Drawn > 0 })
	set := func(v string) {
		if err := d.Set([]design.Change{{Key: design.KeyBedSpan, Value: v}}, 0); err != nil {
			t.Fatal(err)
		}
	}
	set("1510 mm")
	theirs := []byte(strings.Replace(small(t), `span = "1480 mm"`, `span = "1520 mm"`, 1))
	m.data = theirs
	d.Found(theirs, d.Saves())
	s := d.State()
	if s.Theirs == nil || *s.Theirs != string(theirs) || s.Values["bed.span"] != "1510 mm" {
		t.Fatalf("%+v", s)
	}
	if err := d.Save(s.Digest, ""); !errors.Is(err, desk.ErrChanged) {
		t.Errorf("saved over it: %v", err)
	}
	if err := d.Save(s.Lost, ""); err != nil || d.State().Theirs != nil || d.State().Unsaved {
		t.Errorf("%v, %+v", err, d.State())
	}
	d.Undo()
	if got := d.State().Values["bed.span"]; got != "1480 mm" || !d.State().Unsaved {
		t.Errorf("undone to %s", got)
	}
}

// What was read before the design was saved is not taken for another's change, and the
// same text by another hand is none.
func TestFoundLate(t *testing.T) {
	d, m := opened(t, small(t))
	if err := d.Set([]design.Change{{Key: design.KeyBedSpan, Value: "1510 mm"}}, 0); err != nil {
		t.Fatal(err)
	}
	saves, before := d.Saves(), m.data
	if err := d.Save(d.State().Digest, ""); err != nil {
		t.Fatal(err)
	}
	for _, late := range [][]byte{nil, before} {
		if d.Found(late, saves) || d.State().Unsaved || d.State().Theirs != nil {
			t.Errorf("%d bytes of before were taken in: %+v", len(late), d.State())
		}
	}
	if !d.Found(nil, d.Saves()) || !d.State().Unsaved {
		t.Error("a file that is gone is saved")
	}
	if !d.Found(m.data, d.Saves()) || d.State().Unsaved || d.State().Theirs != nil {
		t.Errorf("the same text is another's: %+v", d.State())
	}
}

// Emptying a field and typing into it again is one change.
func TestUndoRetyped(t *testing.T) {
	d, _ := opened(t, small(t))
	for turn, v := range []string{"", "1.5 m"} {
		if err := d.Set([]design.Change{{Key: design.KeyBedSpan, Value: v}}, turn+1); err != nil {
			t.Fatal(err)
		}
	}
	// The key stands where it stood.
	if got, want := d.State().Text, strings.Replace(small(t), `span = "1480 mm"`, `span = "1.5 m"`, 1); got != want {
		t.Errorf("the text reads\n%s", got)
	}
	d.Undo()
	if got := d.State(); got.Values["bed.span"] != "1480 mm" || got.Undo {
		t.Errorf("undone to %q", got.Values["bed.span"])
	}
	for turn, v := range []string{"", "1480 mm"} {
		if err := d.Set([]design.Change{{Key: design.KeyBedSpan, Value: v}}, turn+1); err != nil {
			t.Fatal(err)
		}
	}
	if got := d.State(); got.Text != small(t) || got.Undo || got.Unsaved {
		t.Errorf("typed as it was: undo %v, unsaved %v\n%s", got.Undo, got.Unsaved, got.Text)
	}
}

// The questions make a whole design, once.
func TestPropose(t *testing.T) {
	m := &memory{name: "new.toml"}
	d := desk.New(m, nil, work.Setting{})
	d.Open()
	defer d.Close()
	if err := d.Propose(desk.Answers{Stature: "5 m", Mass: "70 kg"}); err == nil {
		t.Error("a giant got a bed")
	}
	a := desk.Answers{Stature: "5 ft 9 in", Mass: "160 lb", Lies: "side", Inches: true}
	if err := d.Propose(a); err != nil {
		t.Fatal(err)
	}
	s := until(t, d, func(s desk.State) bool { return s.Drawn > 0 })
	if s.Values["sleeper.lies"] != "side" || s.Values["output.units"] != "in" || !s.Inches || s.Ask || !s.Unsaved || s.Undo {
		t.Errorf("%+v", s)
	}
	if d.Propose(a) == nil {
		t.Error("it was proposed over a design")
	}
}

// What a maker has at hand stands in the proposal: no bar is longer, what is on the shelf
// is taken from there, and the strength of a cord is not guessed.
func TestProposeAtHand(t *testing.T) {
	folder := t.TempDir()
	shelf := "[cloth.blue]\nname = \"blue\"\nwidth = \"1500 mm\"\nareal_density = \"70 g/m²\"\n"
	if err := os.WriteFile(filepath.Join(folder, design.ShelfFile), []byte(shelf), 0o600); err != nil {
		t.Fatal(err)
	}
	d := desk.New(&memory{name: filepath.Join(folder, "new.toml")}, nil, work.Setting{})
	d.Open()
	defer d.Close()
	if got := d.Offers(); len(got["cloth.use"]) != 1 || len(got["bar.use"]) != 0 {
		t.Fatalf("offered: %v", got)
	}
	a := desk.Answers{Stature: "1720 mm", Mass: "75 kg", Distance: " 4 m", Height: "2,2 m", Bar: "855 mm", Cord: "3 mm", Take: map[string]string{"cloth.use": "blue"}}
	narrow := a
	narrow.Take, narrow.Width = nil, "30 cm"
	for key, wrong := range map[design.Key]desk.Answers{
		design.KeyClothWidth: narrow, design.KeySleeperMass: {Stature: "1,72 m", Mass: "400 kg"},
		design.KeySleeperStature: {Stature: "172", Mass: "75 kg"},
	} {
		var unread desk.Unread
		if err := d.Propose(wrong); !errors.As(err, &unread) || unread.Key != key || strings.Contains(err.Error(), ".toml") || strings.Contains(err.Error(), string(key)) {
			t.Errorf("%s: %v", key, err)
		}
	}
	wrong := a
	wrong.Distance = "4"
	var unread desk.Unread
	if err := d.Propose(wrong); !errors.As(err, &unread) || unread.Key != design.KeyHangDistance {
		t.Errorf("a distance without unit: %v", err)
	}
	if err := d.Propose(a); err != nil {
		t.Fatal(err)
	}
	s := until(t, d, func(s desk.State) bool { return s.Drawn > 0 })
	for field, want := range map[string]string{"hang.distance": "4 m", "hang.height": "2.2 m", "bed.head_bar": "850 mm", "cord.side.diameter": "3 mm",
		"cord.leg.diameter": "3 mm", "cord.side.strength": "", "cord.leg.strength": "", "cloth.use": "blue", "cloth.name": "", "cloth.width": ""} {
		if s.Values[field] != want {
			t.Errorf("%s is %q, want %q", field, s.Values[field], want)
		}
	}
	// What is said of the values that the shelf has is gone with them.
	if _, cloth, _ := strings.Cut(s.Text, "\n[cloth]\n"); !strings.HasPrefix(cloth, "use = \"blue\"\n\n[") {
		t.Errorf("[cloth] reads %.300s", cloth)
	}
}
