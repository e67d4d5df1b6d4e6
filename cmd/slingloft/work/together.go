package work

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"slingloft/nest"
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
func (p *Plan) Beds() []Bed {
	var out []Bed
	for _, b := range p.beds {
		out = append(out, Bed{b.Design.Name, b.File(), b.Digest, b.Mark})
	}
	return out
}

// Share is a design's own among beds that are laid together.
type Share struct {
	Plan *Plan
	Beds []int // its numbers, from 1; none where it is laid alone
}

// Shares returns the designs that are laid together, each with its beds.
func (p *Plan) Shares() []Share {
	var out []Share
	for i, b := range p.beds {
		if i == 0 || b != p.beds[i-1] {
			out = append(out, Share{Plan: b})
		}
		last := &out[len(out)-1]
		last.Beds = append(last.Beds, i+1)
	}
	if out == nil {
		return []Share{{Plan: p}}
	}
	return out
}

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
	sum, marks := sha256.New(), sha256.New()
	var names []string
	var templates []shared
	out.laid, out.Templates = nil, nil
	for i, p := range plans {
		if err := p.likens(plans[0]); err != nil {
			return out, err
		}
		fmt.Fprintf(sum, "%s %d\n", p.Digest, copies)
		fmt.Fprintf(marks, "%s %d\n", p.Mark, copies)
		if !slices.Contains(names, p.Design.Name) {
			names = append(names, p.Design.Name)
		}
		for k := range copies {
			out.beds = append(out.beds, p)
			bed := i*copies + k + 1
			out.lay(p, bed)
			templates = share(templates, p, bed)
		}
	}
	out.take(templates)
	out.Digest, out.Mark = hex.EncodeToString(sum.Sum(nil)[:4]), hex.EncodeToString(marks.Sum(nil)[:4])
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

// lay adds the pieces of a bed, numbered from 1.
func (p *Plan) lay(of *Plan, bed int) {
	for _, q := range of.Sewn.Pieces {
		q = p.lettered(q.OfBed(bed), []int{bed}, 20)
		q.Title = fmt.Sprintf(p.Words.Bed, strconv.Itoa(bed)) + ": " + q.Title
		p.laid = append(p.laid, q)
	}
}

// lettered letters a piece with the numbers of the beds that it is for, so high, mm, that
// they are read from where one stands, where there is room.
func (p *Plan) lettered(q piece.Piece, beds []int, high float64) piece.Piece {
	var numbers []string
	for _, n := range beds {
		numbers = append(numbers, strconv.Itoa(n))
	}
	q.Lines, q.Labels = slices.Clone(q.Lines), slices.Clone(q.Labels)
	box := q.Cut.Bounds()
	at := geom.Pt(box.Min.X+box.Width()*0.3, box.Center().Y)
	text := fmt.Sprintf(p.Words.Bed, strings.Join(numbers, ", "))
	label.NewRoom(&q).LetterBlock(label.Rows(text), at, high, label.Smallest, &q.Labels)
	return q
}

// shared is a template with the beds that it is for.
type shared struct {
	piece.Piece
	beds []int
}

// share adds the templates of a bed to those that there are, each once.
func share(all []shared, of *Plan, bed int) []shared {
	for _, t := range of.Templates {
		i := slices.IndexFunc(all, func(o shared) bool { return reflect.DeepEqual(o.Piece, t) })
		if i < 0 {
			all = append(all, shared{Piece: t})
			i = len(all) - 1
		}
		all[i].beds = append(all[i].beds, bed)
	}
	return all
}

// take takes the templates over. Those of one name that are not alike are lettered with
// their beds.
func (p *Plan) take(all []shared) {
	const high = 10.0
	for _, t := range all {
		if slices.ContainsFunc(all, func(o shared) bool { return o.ID == t.ID && o.beds[0] != t.beds[0] }) {
			t.Piece = p.lettered(t.OfBed(t.beds[0]), t.beds, high)
		}
		p.Templates = append(p.Templates, t.Piece)
	}
}

// pairs returns where the pieces of beds of one design lie on a roll where they are laid
// two by two, and the last of an odd number by itself: few pieces are laid well in short
// time, and so is a row of such lays. There are none of fewer than four beds: the search
// lays three better from its own start.
func (p *Plan) pairs(ctx context.Context, b Budget, roll int) []nest.Placement {
	if len(p.beds) < 4 || len(p.Shares()) > 1 {
		return nil
	}
	strip := p.strip(roll)
	var out []nest.Placement
	from := 0.0
	// add lays so many beds, over and over as often as is said.
	add := func(beds, times int) error {
		some, err := Together(p.beds[:1], beds)
		if err != nil {
			return err
		}
		pieces := some.OnRoll(roll)
		l, err := nest.PackStrip(ctx, items(pieces), strip, nest.Options{Seed: b.Seed, Steps: beds * defaultSteps})
		if err != nil {
			return err
		}
		for range times {
			first := len(out)
			for _, q := range l.Placements {
				q.Item += first
				q.Motion.Shift.X += from
				out = append(out, q)
			}
			from += l.Length - 2*strip.Margin + strip.Gap
		}
		return nil
	}
	if add(2, len(p.beds)/2) != nil || add(1, len(p.beds)%2) != nil {
		return nil // the search says why
	}
	return out
}
