package figures

import (
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/accuracy"
	"slingloft/outline/bed"
	"slingloft/outline/hung"
)

// Correction is one thing to set on a bed that was measured as it hung.
type Correction struct {
	Part        string       `json:"part"`
	Change      float64      `json:"change"`      // mm; positive: longer, of an anchor higher
	Uncertainty float64      `json:"uncertainty"` // of the tips that it moves most, afterwards, as a standard deviation, mm
	How         accuracy.Way `json:"how"`
}

// Tips are what belongs to each bar tip, mm; left and right are those of one who lies
// on the back.
type Tips struct {
	HeadLeft  float64 `json:"head_left"`
	HeadRight float64 `json:"head_right"`
	FootLeft  float64 `json:"foot_left"`
	FootRight float64 `json:"foot_right"`
}

func tipsOf(t [2][2]float64) Tips {
	h, f := t[hung.Head], t[hung.Foot]
	return Tips{h[bed.Left], h[bed.Right], f[bed.Left], f[bed.Right]}
}

// Hung is what the heights of a bed that hangs tell. Standing off is against the
// design, over the mean of the four tips.
type Hung struct {
	Under       string   `json:"under"` // as the design has it
	Level       bool     `json:"level"` // nothing is to be done
	Off         Tips     `json:"off"`
	Uncertainty Tips     `json:"uncertainty"` // as a standard deviation
	OffAfter    Tips     `json:"off_after"`   // what the corrections cannot take out
	Notes       []string `json:"notes"`
}

// hung fills in what a bed that was measured tells.
func (d *Document) hung(p *work.Plan, say Words) {
	d.Corrections = []Correction{}
	if !p.Design.Hung.Given {
		return
	}
	d.Hung = &Hung{Under: p.Design.Hung.Under.String()}
	c := p.Corrected()
	d.Hung.Notes = say.Names.Accuracy.NotesOf(c.Notes)
	if c.Unread {
		return
	}
	for _, a := range c.Adjustments {
		d.Corrections = append(d.Corrections, Correction{a.Part.String(), a.Change, a.Uncertainty, a.How()})
	}
	d.corrected = &c
	after := tipsOf(c.After)
	d.After = &after
	d.Hung.Level, d.Hung.Off, d.Hung.Uncertainty, d.Hung.OffAfter = c.Level, tipsOf(c.Off), tipsOf(c.Uncertainty), tipsOf(c.OffAfter)
}
