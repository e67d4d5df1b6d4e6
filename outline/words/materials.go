package words

import (
	"fmt"
	"math"
	"slingloft/outline/article"
	"strings"

	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/stock"
)

// Materials says what belongs to the list of what to buy.
type Materials struct {
	Kinds  map[stock.Kind]string
	Things map[stock.Thing]string
	Units  map[stock.Unit]string
	Notes  map[stock.NoteKind]string // cut strings hold the cuts and what of each is to tie
	// CordFor, ForTrial, ForPull and ForWaste say what a length of cord is for.
	CordFor, ForTrial, ForPull, ForWaste string
	Sizes                                map[stock.NoteKind]string // a remark, the size
	SizeTwo                              string                    // a remark, two sizes
	Of, Yield                            string                    // a remark, what it is made of; its yield strength
	Plug, Pin, PinAtMost, Past           string                    // of a bar's tip: size
	// CutString is one of the cuts: end and length. Cloth and Bars are weighed.
	CutString, Cloth, Bars string
	Bar                    map[hung.End]string
	OpenPrice              string // of a row
	OpenMass               string // of a part, and for want of which key
}

// Thing names what a row is for: as the maker calls it, or by its kind.
func (m Materials) Thing(r stock.Row) string {
	if r.Thing == stock.Named {
		return r.Name
	}
	return m.Things[r.Thing]
}

// Note says the remark to a row, lengths in inches if the style has them so.
func (n Names) Note(note stock.Note, style quantity.Style) string {
	m := n.Materials
	text := m.Notes[note.Kind]
	half := quantity.Style{Inches: style.Inches, Fraction: 2}
	switch note.Kind {
	case stock.CutStrings:
	case stock.RollLength:
		return m.sized(fmt.Sprintf(text, half.Length(stock.Squaring)), note, style)
	case stock.WithWaste:
		return fmt.Sprintf(text, m.cord(note.Cord, style))
	case stock.HoldsCord:
		return strings.Join(append([]string{text}, m.tip(note.Tip, style)...), "; ")
	default:
		return m.made(m.sized(text, note, style), note)
	}
	var cut []string
	for e, long := range note.Cut {
		cut = append(cut, fmt.Sprintf(m.CutString, n.Ends[e], half.Length(long)))
	}
	return fmt.Sprintf(text, strings.Join(cut, ", "), half.Length(stock.TieLength))
}

// made says what bars have to be made of.
func (m Materials) made(text string, note stock.Note) string {
	if note.Of != "" {
		text = fmt.Sprintf(m.Of, text, note.Of)
	}
	if note.Yield > 0 {
		text = fmt.Sprintf(m.Yield, text, quantity.Decimal(note.Yield, 0))
	}
	return text
}

// sized says how large the thing has to be, where that is given.
func (m Materials) sized(text string, note stock.Note, style quantity.Style) string {
	fine := quantity.Style{Inches: style.Inches, Fraction: 16, Decimals: 1}
	if a := note.Size[0]; a == math.Trunc(a) {
		fine.Decimals = 0
	}
	switch {
	case note.Size[0] == 0:
		return text
	case note.Size[1] > 0:
		return fmt.Sprintf(m.SizeTwo, text, fine.Length(note.Size[0]), fine.Length(note.Size[1]))
	}
	return fmt.Sprintf(m.Sizes[note.Kind], text, fine.Length(note.Size[0]))
}

// tip says how large the tip of a bar has to be.
func (m Materials) tip(t stock.TipSize, style quantity.Style) []string {
	var out []string
	add := func(text string, mm float64, write func(float64) string) {
		if mm > 0 {
			out = append(out, fmt.Sprintf(text, write(mm)))
		}
	}
	add(m.Plug, t.Plug, style.Thick)
	if add(m.Pin, t.Pin, style.Thick); t.Pin == 0 {
		add(m.PinAtMost, t.Most, style.ThickDown)
	}
	add(m.Past, t.Past, style.Thick)
	return out
}

// cord says what a length of cord is for.
func (m Materials) cord(c stock.CordShare, style quantity.Style) string {
	var all []string
	for _, q := range []struct {
		text string
		mm   float64
	}{{m.CordFor, c.Cords}, {m.ForTrial, c.Trial}, {m.ForPull, c.Fast}, {m.ForWaste, c.Waste}} {
		if q.mm > 0 {
			all = append(all, fmt.Sprintf(q.text, style.Metres(q.mm/1000)+" "+style.RunUnit()))
		}
	}
	return strings.Join(all, ", ")
}

// MassPart names a part that is weighed.
func (n Names) MassPart(p stock.MassPart) string {
	switch p.Kind {
	case stock.OfCloth:
		if p.Article != article.Bed {
			return n.Pieces.Sets[p.Article]
		}
		return n.Materials.Cloth
	case stock.OfBars:
		return n.Materials.Bars
	}
	return n.Cords.Parts[p.Cord]
}

// OpenOf says what a list leaves open.
func (n Names) OpenOf(b stock.Bill) []string {
	var out []string
	for _, o := range b.Open {
		if o.Row != nil {
			out = append(out, fmt.Sprintf(n.Materials.OpenPrice, n.Materials.Thing(*o.Row)))
		} else {
			out = append(out, fmt.Sprintf(n.Materials.OpenMass, n.MassPart(o.Mass.Part), o.Mass.Missing))
		}
	}
	return out
}

func englishMaterials() Materials {
	return Materials{
		Kinds: identified(stock.KindCount),
		Things: map[stock.Thing]string{
			stock.AnyThread:    "thread",
			stock.Drawstring:   "drawstring, thin and smooth",
			stock.Drawcord:     "drawcord of the sacks, thin and smooth",
			stock.LoopTape:     "woven tape for the tarp's loops, one to two fingers wide",
			stock.GuyLine:      "guy line for the tarp, thin cord that does not stretch much",
			stock.Peg:          "peg for a guy line",
			stock.CoverTape:    "woven tape for the cover's loops",
			stock.CoverLine:    "thin cord for the cover's ridge, with little stretch",
			stock.CoverCord:    "cord for the cover's ridge, by the least strengths",
			stock.CoverElastic: "elastic cord for the cover's ridge",
			stock.HemElastic:   "elastic for the cover's lower edge",
			stock.CoverTies:    "thin cord for the cover's ties",
			stock.Zip:          "zip for the cover, with a slider that opens from both faces",
			stock.ApexHook:     "shackle or locking connector at an apex, wide enough for all its eyes",
			stock.FarHook:      "hook or shackle at an anchor, and a strap where it is a tree",
			stock.BarTip:       "tip for a bar's end",
			stock.OwnLine:      "hang line, which this design does not make",
			stock.RidgeTie:     "thin line, from the ridge line to its tree or post",
		},
		Units: identified(stock.UnitCount),
		Notes: map[stock.NoteKind]string{
			stock.RollLength:   "length of roll, %s of it to square the end",
			stock.WithWaste:    "made up of %s",
			stock.StockLengths: "stock lengths",
			stock.BothBars:     "both bars, stock length not given",
			stock.ForTemplates: "templates",
			stock.LockStitch:   "straight stitch, both threads, 20 % waste included; its mass is not counted",
			stock.CutStrings:   "cut: %s, of which %s to draw and tie",
			stock.Rated:        "rated, see the margins",
			stock.HoldsCord:    "to hold the cord in its gap",
			stock.ForSacks:     "one a mouth, each with enough to draw and tie",
			stock.ForLoops:     "one at each corner and ridge end",
			stock.ForGuys:      "with what tying takes",
			stock.ForPegs:      "one a corner",
			stock.WithCover:    "its cut lengths stand with the cover",
			stock.StopToStop:   "from stop to stop, as it is sewn in",
			stock.AsStrong:     "by the least strengths; as long as from apex to anchor, with what its eyes or knots take",
			stock.ToReach:      "to go once and a half round that, and be hitched",
		},
		CordFor: "%s for the cords", ForTrial: "%s for a trial splice", ForPull: "%s to make both ends fast while you mark it",
		ForWaste: "%s for ends and mistakes",
		Sizes: map[stock.NoteKind]string{
			stock.RollLength: "%s, %s wide", stock.WithWaste: "%s, %s", stock.StockLengths: "%s of %s", stock.BothBars: "%s, %s",
			stock.ForTemplates: "%s, %s", stock.LockStitch: "%s, %s", stock.CutStrings: "%s, %s",
			stock.Rated: "%s; %s thick where an eye lies on it", stock.ForSacks: "%s, %s",
			stock.ForLoops: "%s, %s", stock.StopToStop: "%s, %s", stock.WithCover: "%s, %s", stock.ForGuys: "%s, %s", stock.ForPegs: "%s, %s", stock.HoldsCord: "%s, %s", stock.AsStrong: "%s, %s", stock.ToReach: "%s, %s",
		},
		SizeTwo:   "%s, %s × %s",
		Of:        "%s, of %s",
		Yield:     "%s; yield strength %s MPa or more",
		Plug:      "plug for a bore of %s",
		Pin:       "pin %s thick",
		PinAtMost: "pin %s thick or less",
		Past:      "standing out %s or more",
		CutString: "%s %s",
		Cloth:     "cloth",
		Bars:      "bars",
		Bar:       map[hung.End]string{hung.Head: "head bar", hung.Foot: "foot bar"},
		OpenPrice: "price of %s",
		OpenMass:  "mass of %s, for want of %s",
	}
}
