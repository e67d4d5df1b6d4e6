package figures

import (
	"math"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// Lining tells where the lining lies, how long it is across and where the pad goes in.
type Lining struct {
	Place     string        `json:"place"` // "below" or "above"
	Pad       Pad           `json:"pad"`
	Play      float64       `json:"play"`   // room between the layers beyond the pad's thickness
	Panels    int           `json:"panels"` // that it is cut in
	Girths    []LiningGirth `json:"girths"` // from the head to the foot
	Opening   LiningOpening `json:"opening"`
	MostEased float64       `json:"most_eased"` // of any stretch between notches of its seams, part of the body's edge
}

// Pad is what the lining holds.
type Pad struct {
	Thickness float64 `json:"thickness"` // under load
	Width     float64 `json:"width"`     // 0: as wide as the lining is round
	Length    float64 `json:"length"`
	Head      float64 `json:"head"` // station of its head end
	Foot      float64 `json:"foot"`
}

// LiningGirth is how long both layers are from cord to cord.
type LiningGirth struct {
	Station float64 `json:"station"`
	Body    float64 `json:"body"`
	Lining  float64 `json:"lining"`
}

// LiningOpening is where the lining is hemmed rather than sewn in.
type LiningOpening struct {
	Edge   string  `json:"edge"` // "head", "foot", "left" or "right"
	From   string  `json:"from"` // notch
	To     string  `json:"to"`
	Length float64 `json:"length"`
	Hem    float64 `json:"hem"`
}

// liningOf gathers the lining of a plan, nil where there is none.
func liningOf(p *work.Plan) *Lining {
	l := p.Further.Lining
	if !p.Design.Lining.On || len(l.Pieces) == 0 {
		return nil
	}
	d, o := p.Design.Lining, l.Opening
	out := &Lining{Place: d.Place.String(), Play: d.Play, Panels: len(l.Pieces),
		Pad:     Pad{Thickness: d.Thickness, Width: d.Width, Length: l.Laid.Foot - l.Laid.Head, Head: l.Laid.Head, Foot: l.Laid.Foot},
		Opening: LiningOpening{o.Edge.String(), o.From.Name, o.To.Name, o.Length(), o.Hem}, MostEased: mostEased(l.Seams)}
	for _, x := range l.Stations() {
		section := p.Shape.At(x).Section
		if over, err := l.Laid.Over(section); err == nil { // the lining was built over it
			body := p.Body.HungGirth(&p.Shape)(x)
			out.Girths = append(out.Girths, LiningGirth{x, body, body + over.Girth() - section.Girth()})
		}
	}
	return out
}

// mostEased returns the largest part by which one of two layers is longer than the other
// between two notches.
func mostEased(seams []piece.Seam) float64 {
	most := 0.0
	for _, s := range seams {
		if s.Kind == piece.LiningJoin {
			continue
		}
		for _, q := range s.Parts {
			most = max(most, math.Abs(q.Ease)/q.Flat[0])
		}
	}
	return most
}

// LiningWords says what belongs to the lining.
type LiningWords struct {
	Title   string
	Below   string // thickness, length, where it begins and ends
	Above   string // likewise
	Width   string // of the pad
	Wide    string // of a pad without a width
	Girth   string // body's, lining's, station
	Opening string // edge, length, notches
	Panels  string // how many
	Eased   string // per cent
	Carries string
	Edges   map[string]string // of the opening
}

func englishLining() LiningWords {
	return LiningWords{
		Title:   "Lining",
		Below:   "below the body, for a pad %s thick and %s long, from %s to %s",
		Above:   "above the body, over a pad %s thick and %s long, from %s to %s",
		Width:   "the pad %s wide",
		Wide:    "the pad as wide as the bed is round",
		Girth:   "from cord to cord: body %s, lining %s, at %s",
		Opening: "hemmed and open at the %s, over %s between notches %s and %s",
		Panels:  "in %d panels",
		Eased:   "no stretch between notches has one layer longer than the other by more than %.1f %%",
		Carries: "the body alone carries: loads and margins count one layer",
		Edges: map[string]string{
			design.HeadOpening.String(): "head end", design.FootOpening.String(): "foot end",
			design.LeftOpening.String(): "left side", design.RightOpening.String(): "right side",
		},
	}
}

// lining tells of the lining.
func (b *report) lining(l *Lining) {
	if l == nil {
		return
	}
	say := b.say.Lining
	b.head(say.Title)
	text := say.Below
	if l.Place == design.AboveBody.String() {
		text = say.Above
	}
	b.line(text, b.mm(l.Pad.Thickness), b.mm(l.Pad.Length), b.mm(l.Pad.Head), b.mm(l.Pad.Foot))
	if l.Pad.Width > 0 {
		b.line(say.Width, b.mm(l.Pad.Width))
	} else {
		b.line(say.Wide)
	}
	for _, g := range l.Girths {
		b.line(say.Girth, b.mm(g.Body), b.mm(g.Lining), b.mm(g.Station))
	}
	b.line(say.Opening, say.Edges[l.Opening.Edge], b.mm(l.Opening.Length), l.Opening.From, l.Opening.To)
	if l.Panels > 1 {
		b.line(say.Panels, l.Panels)
	}
	b.line(say.Eased, 100*l.MostEased)
	b.line(say.Carries)
}
