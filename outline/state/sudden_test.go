package state_test

import (
	"testing"

	"slingloft/outline/finished"
	"slingloft/outline/hung"
	"slingloft/outline/state"
)

func TestSudden(t *testing.T) {
	for _, row := range []struct{ ratio, want float64 }{
		{0, 2}, {0.5, 2.41421356}, {1, 2.73205081}, {2.5, 3.44948974}, {5, 4.31662479}, {7.5, 5}, {10, 5.58257569},
	} {
		near(t, "factor", state.Sudden(row.ratio*40, 40), row.want, 1e-8)
	}
	// Gere, problem 2.8-1: 150 lb slides 2 in down a rod of 48 in, 0.75 in², 30e6 psi:
	// printed 0.0361 in and 22600 psi.
	give := 150.0 * 48 / (30e6 * 0.75)
	near(t, "stretch", give*state.Sudden(2, give), 0.0361, 5e-5)
	near(t, "stress", 150/0.75*state.Sudden(2, give), 22600, 50)
}

// The bed gives like a spring: for half the weight more it sinks by half of what it gives
// for all, of cords and cloth twice as stiff by half as much, and by less where hang
// lines do not stretch. Of what is not known to stretch nothing is said.
func TestGive(t *testing.T) {
	h, p := bed(t, nil)
	give := state.GiveOf(h, p)
	if give.Least || give.Length < 5 || give.Length > 60 {
		t.Errorf("gives by %+v", give)
	}
	sits := func(times float64) float64 {
		load := hung.EvenLoad(times*p.Weight, -p.Seat/2, p.Seat/2)
		pose, err := h.Hang(finished.Change{}, finished.Weight{Load: load, Centre: p.Back})
		if err != nil {
			t.Fatal(err)
		}
		return pose.Level.Height
	}
	near(t, "sinks for half the weight more", sits(1)-sits(1.5), give.Length/2, 0.05*give.Length)
	with := func(change func(*finished.Made)) state.Give {
		m := h.Made
		change(&m)
		return state.GiveOf(finished.Make(m), p)
	}
	twice := with(func(m *finished.Made) {
		m.SideEA, m.LegEA, m.LineEA, m.Weft = 2*m.SideEA, 2*m.LegEA, 2*m.LineEA, 2*m.Weft
	})
	near(t, "twice as stiff", twice.Length, give.Length/2, 0.05*give.Length)
	if rigid := with(func(m *finished.Made) { m.LineEA = 0 }); !rigid.Least || rigid.Length >= give.Length {
		t.Errorf("with lines that are not known to stretch %+v, with others %+v", rigid, give)
	}
	for name, change := range map[string]func(*finished.Made){
		"side cord": func(m *finished.Made) { m.SideEA = 0 }, "legs": func(m *finished.Made) { m.LegEA = 0 },
		"cloth": func(m *finished.Made) { m.Weft = 0 },
	} {
		if got := with(change); got != (state.Give{}) {
			t.Errorf("%s not known: %+v", name, got)
		}
	}
}
