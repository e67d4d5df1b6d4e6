package figures

import (
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/finished"
	"slingloft/outline/state"
	"slingloft/outline/words"
)

// Guest is what another sleeper finds in the bed as it is made.
type Guest struct {
	Name  string         `json:"name"`
	Level finished.Level `json:"level"` // its height is against the design
	// Ground is the height of the bottom line at mid-bay above ground, absent where the
	// design does not say where the bed hangs.
	Ground  float64    `json:"ground,omitempty"`
	Hang    Pair       `json:"hang"` // of the hang lines above the level, head and foot, rad
	Loads   GuestLoads `json:"loads"`
	Margins []Check    `json:"margins"`
	Governs []Check    `json:"governing"`        // of each part the check of the guest's state that loads it most
	Cannot  string     `json:"cannot,omitempty"` // why the bed does not rest under the guest
}

// GuestLoads are what the parts carry under a guest who lies still.
type GuestLoads struct {
	Side  float64 `json:"side"`  // largest pull in a side cord, N
	Leg   Pair    `json:"leg"`   // largest pull in a leg, head and foot, N
	Hang  Pair    `json:"hang"`  // pull in a hang line and on its support, N
	Bar   Pair    `json:"bar"`   // thrust along a bar, N
	Cloth float64 `json:"cloth"` // largest tension across the bed, N/mm
}

func guestOf(g work.Guest, w words.Names) Guest {
	out := Guest{Name: g.Name, Level: g.Lying.Level, Ground: g.Ground, Hang: g.Lying.Hang, Margins: []Check{}, Governs: []Check{}}
	if g.Err != nil {
		out.Cannot = w.Why(g.Err)
		return out
	}
	out.Margins = append(out.Margins, checksOf(g.Margins.Checks, w.Margins)...)
	out.Governs = append(out.Governs, checksOf(g.Margins.ByPart(), w.Margins)...)
	load := func(m state.Member) float64 { return m.Load(g.Lying.Loads) }
	out.Loads = GuestLoads{Side: load(state.SideCord), Leg: Pair{load(state.HeadLeg), load(state.FootLeg)},
		Hang: Pair{load(state.HeadLine), load(state.FootLine)}, Bar: Pair{load(state.HeadBar), load(state.FootBar)}, Cloth: load(state.Cloth)}
	return out
}

// guests prints what other sleepers find in the bed.
func (b *report) guests(d Document) {
	if len(d.Guests) == 0 {
		return
	}
	say, names := b.say.Guests, b.words.Guests
	b.head(say.Title)
	b.row(names.Columns[:]...)
	for _, g := range d.Guests {
		if g.Cannot != "" {
			continue
		}
		ground := b.say.NotGiven
		if g.Ground != 0 {
			ground = b.mm(g.Ground)
		}
		b.row(g.Name, b.mm(g.Level.Along), b.mm(g.Level.Sag), b.mm(g.Level.Height), ground, b.deg(g.Hang[0]), b.deg(g.Hang[1]),
			b.force(g.Loads.Hang[0]), b.force(g.Loads.Hang[1]), b.force(g.Loads.Side))
	}
	for i, g := range d.Guests {
		if g.Cannot != "" {
			b.line(names.Cannot, g.Name, g.Cannot)
		} else {
			b.line("%s", b.words.GuestMargin(g.Name, d.least[i], say.Unmet))
		}
	}
	b.line("%s", names.How)
	b.careful()
}
