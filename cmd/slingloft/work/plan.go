// Package work carries one design through every stage: read, hang, lay flat,
// build pieces and cords, lay the pieces on their stock, compose the sheets. Each
// stage takes the plain values of the one before; nothing is written here.
package work

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"math"
	"slices"
	"strconv"
	"sync"

	"slingloft/export"
	"slingloft/outline"
	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/flat"
	"slingloft/outline/hung"
	"slingloft/outline/label"
	"slingloft/outline/margin"
	"slingloft/outline/panel"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	"slingloft/outline/rig"
	"slingloft/outline/tarp"
)

// Plan is all that follows from a design before anything is laid on its stock.
type Plan struct {
	Design design.Design
	Digest string // eight hex digits that change with any value of the design
	Mark   string // eight hex digits that change with what is cut, see [outline.Mark]
	Shape  hung.Shape
	Body   flat.Body
	Sewn   panel.Sewn
	Cords  cord.Set
	Words  Words

	// Further is what is sewn beside the bed; its pieces and seams are among those of
	// Sewn too.
	Further outline.Further

	// Leveled is what came of the cut again from the cloth as it hangs; nil: it was not asked for.
	Leveled *Leveled

	Place   rig.Place // as it hangs between its supports; see Hangs
	Hangs   bool      // the design says where it hangs
	Shelter rig.Shelter
	Tarp    tarp.Size // over it, where the design asks for one

	// Templates are the stiff templates and gauges, those longer than the sheet
	// already divided.
	Templates []piece.Piece
	// Boards are the same before any is divided: how each lies on the cloth is told of it.
	Boards []piece.Piece

	Brought []Brought // outlines of the maker's own, in the order in which they are asked for
	Sources []Source  // the files that they are from

	beds     []*Plan        // that are laid together; none: this one alone
	laid     []piece.Piece  // of all beds, where several are laid together; see [Together]
	burden   func() burden  // what the made bed carries; found when first asked for
	guests   func() []Guest // what it carries under others; likewise
	apexes   func() Apexes  // by how much its apexes move; likewise
	keepOuts [2][]keepOut   // the maker's own, by stock
	source   design.Source
	sheet    [2]float64    // width and height as the design has them, whatever the machine reaches
	machine  design.Source // of the machine's settings, where they are not the design's own
}

// Setting is what a run brings along beside the design.
type Setting struct {
	Machine       *design.Machine // in place of the design's own, if set
	MachineSource design.Source   // where they were read
	Extras        []design.Extra  // beside the design's own, their files named as they are
	Words         *Words          // nil: English
	// Leveling is told now and then what part is done of the cut again from the cloth as it
	// hangs, about; an error of it ends the run. nil: nobody is.
	Leveling func(part float64) error
	// Closed keeps what came of it from run to run; nil: for this run alone.
	Closed *Closings
	Shelf  string // file of the maker's shelf; "": the one that the design names, or the one beside it
}

// words returns the words of a run.
func (s Setting) words() Words {
	if s.Words != nil {
		return *s.Words
	}
	return English()
}

// until returns the setting of a run that ends with a context.
func (s Setting) until(ctx context.Context) Setting {
	s.Leveling = func(float64) error { return ctx.Err() }
	return s
}

// ReadFor makes a plan from the text of a design file, for a machine and with outlines that
// the design does not know; name stands in messages. What is at fault in the design is
// returned as [design.Faults].
// A value that a fault names was tried: the design was read with it.
func ReadFor(name string, data []byte, with Setting) (Plan, error) {
	if with.Closed == nil {
		with.Closed = &Closings{}
	}
	p, err := readFor(name, data, with)
	if err != nil {
		return p, remedy{name: name, data: data, with: with, source: p.source, slow: p.Design.Bed.Level == design.ByHung}.tried(err)
	}
	return p, nil
}

// Begin reads a design for a machine and makes nothing of it yet: the plan has the
// design and its digest alone. Errors are as for [ReadFor].
func Begin(name string, data []byte, with Setting) (Plan, error) {
	shelf, err := with.shelf(name, data)
	if err != nil {
		return Plan{Words: with.words()}, err
	}
	d, src, err := design.ReadWith(name, data, shelf)
	p := Plan{source: src, Words: with.words()}
	if err != nil {
		return p, err
	}
	p.Digest, p.sheet = Digest(d), [2]float64{d.Sheet.Width, d.Sheet.Height}
	if with.Machine != nil {
		d.Machine, p.machine = *with.Machine, with.MachineSource
	}
	p.Design = d.OnMachine()
	return p, nil
}

// readFor is [ReadFor] with values as the stages name them.
func readFor(name string, data []byte, with Setting) (Plan, error) {
	p, err := Begin(name, data, with)
	if err != nil {
		return p, err
	}
	found, err := p.bringIn(name, with.Extras)
	if err != nil {
		return p, p.located(err)
	}
	if err := p.make(with); err != nil {
		return p, p.located(err)
	}
	p.add(found)
	p.Brought, p.Sources = measured(found)
	for _, all := range [][]piece.Piece{p.Sewn.Pieces, p.Templates} {
		for i := range all {
			all[i] = label.Freed(all[i]).Settled()
		}
	}
	return p, nil
}

// Renamed returns the keys that the design's file calls as they were called before.
func (p *Plan) Renamed() []design.Renamed { return p.source.Renamed() }

// File returns the name of the design's file.
func (p *Plan) File() string { return p.source.File() }

// Digest returns eight hex digits of the SHA-256 of a design's values, so that
// comments and spacing of the file do not count, nor the machine it is cut on.
func Digest(d design.Design) string {
	d.Machine = design.Defaults().Machine
	sum := sha256.Sum256(design.Values(d))
	return hex.EncodeToString(sum[:4])
}

// make runs the stages in order.
func (p *Plan) make(with Setting) error {
	if err := p.formed(with); err != nil {
		return err
	}
	p.Mark = outline.Mark(p.Sewn, p.Cords.Cords)
	if err := p.panels(); err != nil {
		return err
	}
	p.setPaths()
	if err := p.furthered(); err != nil {
		return err
	}
	if err := p.boarded(); err != nil {
		return &blamed{"sheet", err}
	}
	return nil
}

// formed runs the stages up to a bed that hangs: all that a figure of it hangs on, with
// pieces that have no mark yet and without templates.
func (p *Plan) formed(with Setting) error {
	if err := p.laidFlat(); err != nil {
		return err
	}
	if err := p.leveled(with); err != nil {
		return err
	}
	if err := p.opened(); err != nil {
		return err
	}
	// The mark that is lettered on the pieces comes from their shapes.
	if err := p.panels(); err != nil {
		return err
	}
	if err := p.markable(); err != nil {
		return err
	}
	return p.rigged()
}

// laidFlat solves the hung shape and lays the body flat from it.
func (p *Plan) laidFlat() error {
	var err error
	d := p.Design
	if p.Shape, err = hung.Solve(hung.ProblemOf(d)); err != nil {
		return err
	}
	if p.Body, err = flat.Lay(&p.Shape, d.Cap.Kind == design.Leaning); err != nil {
		if d.Cap.Kind == design.Leaning {
			return &blamed{design.KeyCapKind, err}
		}
		return &blamed{design.KeyBedCut, err}
	}
	if p.Body, err = p.Body.Drawn(&p.Shape, d.Bed.Curve); err != nil {
		return err
	}
	if !d.Bed.Plain {
		p.Body = p.Body.Compensated(&p.Shape, float64(d.Cloth.WeftStiffness))
	}
	return nil
}

// panels builds the cloth pieces with the mark as far as it is known.
func (p *Plan) panels() error {
	var err error
	if p.Sewn, err = outline.Panels(p.Design, &p.Shape, &p.Body, p.Mark, p.Words.Lettering); err != nil {
		return &blamed{design.KeyChannelDepth, err}
	}
	return nil
}

// furthered builds what is sewn beside the bed.
func (p *Plan) furthered() error {
	var err error
	over := outline.Hanging{Shape: &p.Shape, Sewn: p.Sewn, Cords: p.Cords.Cords, Over: p.Tarp, Anchors: p.Place.Distance}
	if p.Leveled != nil {
		over.Times = p.Leveled.Times
	}
	if p.Further, err = outline.FurtherPieces(p.Design, over, p.Words.Lettering); err != nil {
		var place *design.Advised
		if errors.As(err, &place) { // the one that is returned so
			return &blamed{design.KeyCoverZip, err}
		}
		return err
	}
	p.Sewn.Pieces = append(slices.Clip(p.Sewn.Pieces), p.Further.Pieces()...)
	p.Sewn.Seams = append(slices.Clip(p.Sewn.Seams), p.Further.Seams()...)
	return nil
}

// Curves returns the seam lines by which the bed can be marked by hand, and what is sewn
// beside it.
func (p *Plan) Curves() []piece.Curve { return append(p.Sewn.Curves(), p.Further.Curves()...) }

// opened makes the openings at the bars' tips as long as the working errors ask for,
// where the design leaves them out, and refuses those that are too short.
func (p *Plan) opened() error {
	sp, err := cord.Resolve(p.Design, cord.Options{})
	if err != nil {
		return nil // the cords' own stage says so
	}
	w := accuracy.WorkingOf(p.Design.Accuracy, sp.Shown.Estimate)
	play := accuracy.Play(accuracy.Lengths(&p.Shape, p.Design, sp, w)[0])
	least := p.Design.Splice.TipGap + play
	switch {
	case !p.source.Given(design.KeyChannelOpening):
		p.Design.Channel.Opening = p.Design.OpeningFor(play)
	case p.Design.Channel.Opening < least:
		return &hung.Impossible{Key: design.KeyChannelOpening, Bound: design.AtLeast, Limit: least,
			Found: design.Found(design.OpeningUnderPlay)}
	}
	return nil
}

// rigged hangs the shape up, cuts its cords and checks what everything carries.
func (p *Plan) rigged() error {
	var err error
	d, s := p.Design, &p.Shape
	if p.Place, p.Hangs, err = rig.Of(s, d.Hang); err != nil {
		return err
	}
	ridge := d.Hang.Shelter
	if d.Tarp.On {
		if p.Tarp, err = tarp.SizeOf(d, tarp.Over(s)); err != nil {
			return err
		}
		ridge = p.Tarp.Ridge
	}
	o := cord.Options{Hook: d.Hang.HookDiameter, Tip: d.Bar.TipDiameter, Ridge: ridge,
		Middle: p.Sewn.MiddlePart()}
	if p.Hangs && d.Hang.Line.Diameter > 0 {
		o.Lines = [2]float64{p.Place.Ends[hung.Head].Line, p.Place.Ends[hung.Foot].Line}
	}
	if d.Hang.Line.Diameter == 0 {
		o.Ridge = 0
	}
	if p.Cords, err = cord.Of(s, d, o); err != nil {
		return err
	}
	p.Shelter = rig.Cover(s, ridge)
	if names := margin.Strangers(d.Margins.Waived, p.joined(), d.Cover.Carries()); len(names) > 0 {
		return &blamed{design.KeyMarginAccepted, p.stranger(names[0])}
	}
	made := *p
	p.burden = sync.OnceValue(func() burden { return burdenOf(&made) })
	p.guests = sync.OnceValue(func() []Guest { return guestsOf(&made) })
	p.apexes = sync.OnceValue(func() Apexes { return apexesOf(&made) })
	return nil
}

// stranger says which check a name in the list of waivers is likely meant for.
func (p *Plan) stranger(name string) error {
	all, checks := margin.Names(p.joined(), p.Design.Cover.Carries()), margin.Possible(p.joined(), p.Design.Cover.Carries())
	hint := design.Say(design.ChecksAre, design.Listing(quoted(all)))
	if near := slices.Index(all, design.Nearest(name, all)); near >= 0 {
		meant := []string{all[near]}
		for i, other := range checks {
			if i != near && other.Part == checks[near].Part {
				meant = append(meant, all[i])
			}
		}
		hint = design.Say(design.WriteThis, design.Meant(quoted(meant)))
	}
	return &design.Advised{Found: design.Found(design.UnknownCheck, quantity.Quoted(name)), Hint: hint}
}

// quoted returns texts in quotes.
func quoted(texts []string) []string {
	out := make([]string, len(texts))
	for i, t := range texts {
		out[i] = strconv.Quote(t)
	}
	return out
}

// blamed is a fault of a stage with the key that it hangs on.
type blamed struct {
	key design.Key
	err error
}

func (b *blamed) Error() string { return string(b.key) + ": " + b.err.Error() }
func (b *blamed) Unwrap() error { return b.err }

// located turns the fault of a stage into one that names the design's line.
func (p *Plan) located(err error) error {
	var no *hung.Impossible
	if errors.As(err, &no) {
		return design.Faults{p.impossible(no, no.Finding())}
	}
	var wide *panel.TooWide
	if errors.As(err, &wide) {
		return p.tooWide(wide)
	}
	var bed *export.BedError
	if errors.As(err, &bed) {
		return p.SmallSheet(bed, design.NoRoomForFrame)
	}
	var b *blamed
	if errors.As(err, &b) {
		var a *design.Advised
		if errors.As(b.err, &a) {
			return p.Fault(b.key, a.Found, a.Hint)
		}
		return p.Fault(b.key, design.FindingOf(b.err), design.Say(design.ChangeThis))
	}
	return err
}

// impossible is the fault of a design that has no shape, with the value that would
// do where one is known.
func (p *Plan) impossible(no *hung.Impossible, found design.Finding) design.Fault {
	switch no.Bound {
	case design.AtLeast:
		return p.source.Bounded(found, p.source.Least(no.Key, no.Limit))
	case design.AtMost:
		return p.source.Bounded(found, p.source.Most(no.Key, no.Limit))
	}
	return p.source.Fault(no.Key, found, design.Say(design.ChangeWithIt))
}

// Fault is a fault of the design's value of a key.
func (p *Plan) Fault(key design.Key, found design.Finding, hint design.Phrase) design.Faults {
	return design.Faults{p.source.Fault(key, found, hint)}
}

// MachineFault is a fault of the machine's value of a key, in the design or in the
// machine's own file.
func (p *Plan) MachineFault(key design.Key, found design.Finding, hint design.Phrase) design.Faults {
	if p.machine.File() != "" {
		return design.Faults{p.machine.Fault(key, found, hint)}
	}
	return p.Fault(key, found, hint)
}

// Style returns how the design has lengths written for people.
func (p *Plan) Style() quantity.Style {
	return p.Design.Output.Style(1)
}

// setPaths puts each cord's way along the flat pattern into the cord set: u, v
// and the cord's length from the head tip, for a leg from its own tip outwards.
// The side at v > 0 stands for both.
func (p *Plan) setPaths() {
	b := &p.Body
	last := len(b.Side.Flat) - 1
	tip := [2]int{b.TipIndex(hung.Head), b.TipIndex(hung.Foot)}
	path := func(from, to int) [][3]float64 {
		var out [][3]float64
		step := 1
		if to < from {
			step = -1
		}
		for i := from; i != to+step; i += step {
			q := b.Side.Flat[i]
			out = append(out, [3]float64{q.X, q.Y, math.Abs(b.Side.Hung[i] - b.Side.Hung[from])})
		}
		return out
	}
	ways := map[cord.Part][][3]float64{
		cord.SideCord: path(tip[0], tip[1]),
		cord.HeadLeg:  path(tip[0], 0),
		cord.FootLeg:  path(tip[1], last),
		cord.SideLoop: path(0, last),
	}
	for i := range p.Cords.Cords {
		p.Cords.Cords[i].Path = ways[p.Cords.Cords[i].Part]
	}
}
