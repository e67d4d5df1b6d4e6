package work

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"reflect"
	"slices"
	"strings"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
)

// MostBeds is how many beds are laid together at most.
const MostBeds = 20

// Bed is one of several beds that are laid together.
type Bed struct {
	Name, File, Digest, Mark string
}

// Beds returns the beds that are laid together, by their numbers from 1; none where there
// is one alone.
func (p *Plan) Beds() []Bed { return p.beds }

// Together returns a plan that lays several beds on one roll: those of the plans, each as
// often as copies says. It is the first bed's in all else. Every piece of cloth is
// lettered with its bed and named after it, templates that beds share are there once.
// Designs that are not of the same cloths and sheets are a fault of the first that
// differs.
func Together(plans []*Plan, copies int) (Plan, error) {
	out := *plans[0]
	if len(plans) == 1 && copies < 2 {
		return out, nil
	}
	sum := sha256.New()
	var names []string
	out.laid, out.Templates = nil, nil
	for i, p := range plans {
		if err := p.likens(plans[0]); err != nil {
			return out, err
		}
		fmt.Fprintf(sum, "%s %d\n", p.Digest, copies)
		if !slices.Contains(names, p.Design.Name) {
			names = append(names, p.Design.Name)
		}
		for k := range copies {
			out.beds = append(out.beds, Bed{p.Design.Name, p.File(), p.Digest, p.Mark})
			out.lay(p, i*copies+k+1)
		}
	}
	out.Digest = hex.EncodeToString(sum.Sum(nil)[:4])
	out.Design.Name = strings.Join(names, ", ")
	return out, nil
}

// likens refuses a design whose stock is not that of another.
func (p *Plan) likens(first *Plan) error {
	key, mine, other := design.OtherStock(p.Design, first.Design)
	if key == "" {
		return nil
	}
	return p.Fault(key, design.Found(design.OtherRoll, mine, first.File(), other), design.Say(design.SameRoll))
}

// lay adds the pieces of a bed, numbered from 1, and those of its templates that no bed
// before has.
func (p *Plan) lay(of *Plan, bed int) {
	for _, q := range of.Sewn.Pieces {
		q.ID = fmt.Sprintf("bed-%d-%s", bed, q.ID)
		q.Lines, q.Labels = slices.Clone(q.Lines), slices.Clone(q.Labels)
		box := q.Cut.Bounds()
		const high = 20.0 // of a bed's number, mm: read from where one stands
		at := geom.Pt(box.Min.X+box.Width()*0.3, box.Center().Y)
		label.NewRoom(&q).LetterBlock(label.Rows(fmt.Sprintf(p.Words.Bed, bed)), at, high, label.Smallest, &q.Labels)
		p.laid = append(p.laid, q)
	}
	for _, t := range of.Templates {
		known := slices.ContainsFunc(p.Templates, func(o piece.Piece) bool {
			o.ID = t.ID
			return reflect.DeepEqual(o, t)
		})
		if known {
			continue
		}
		if slices.ContainsFunc(p.Templates, func(o piece.Piece) bool { return o.ID == t.ID }) {
			t.ID = fmt.Sprintf("bed-%d-%s", bed, t.ID)
		}
		p.Templates = append(p.Templates, t)
	}
}
