package command

import (
	"context"
	"errors"
	"strings"
	"sync"
	"time"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/format"
	"slingloft/nest"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// defaultFolder is where cut writes when no folder is named.
const defaultFolder = "slingloft-out"

// cutOptions are the flags of cut.
type cutOptions struct {
	out     string
	as      string
	scale   string
	layTime time.Duration
	force   bool
	copies  int
	shop
	reporting
}

func cutCommand() command {
	return command{
		name: "cut", args: " [DESIGN …]", names: strings.Join(format.Names(), ", "), maxArgs: work.MostBeds,
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o cutOptions
			f.StringVarP(&o.out, "out", "o", defaultFolder, "")
			f.StringVar(&o.as, "as", "svg,dxf", "")
			f.StringVar(&o.scale, "scale", "", "")
			f.DurationVar(&o.layTime, "lay-time", 0, "")
			f.IntVar(&o.copies, "copies", 1, "")
			f.BoolVar(&o.force, "force", false, "")
			o.shop.flags(f, true)
			return o.reporting.flags(f, cutSchema, func(ctx context.Context, s Streams, args []string) error { return cut(ctx, s, args, o) })
		},
	}
}

func cut(ctx context.Context, s Streams, args []string, o cutOptions) error {
	formats, err := formatsNamed(o.as, "cut")
	if err != nil {
		return err
	}
	if o.layTime < 0 || o.layTime > 24*time.Hour {
		return misuse(LayTimeRange, o.layTime)
	}
	with, err := o.setting()
	if err != nil {
		return err
	}
	if o.copies < 1 || o.copies*max(1, len(args)) > work.MostBeds {
		return misuse(CopiesRange, "cut", o.copies, work.MostBeds)
	}
	beds, err := loadBeds(ctx, s, args, with)
	if err != nil {
		return err
	}
	for _, p := range beds {
		sayRenamed(s, p)
	}
	p, err := work.Together(beds, o.copies)
	if err != nil {
		return err
	}
	l, out, unfit, err := laidOut(ctx, beds, &p, o)
	if unfit != nil {
		if o.json {
			return errors.Join(unfit, document.Write(s.Out, cutDocument(&p, unfit, s.words())))
		}
		return unfit
	}
	if err != nil {
		return err
	}
	drawings, err := p.Drawings(l, out.options.ScaleFactor())
	if err != nil {
		return err
	}
	out.speak(s.words())
	out.folder, out.formats, out.force = o.out, formats, o.force
	if out.mark, err = keptOf(args, o, out, p.Keep(l)).mark(p.Digest); err != nil {
		return err
	}
	if o.json {
		return out.tell(s, &p, l, drawings)
	}
	tell := named{Streams: s}
	if err := out.write(drawings, tell.done); err != nil {
		return atMachine(&p, err)
	}
	tell.tell()
	for _, t := range out.untold() {
		s.say(Note, t)
	}
	sayMixed(s, o.out, "")
	summary(s, &p, l)
	return nil
}

// laidOut lays beds out together, while it is found whether they may be cut at all. It
// returns the lays with how they are written, and why they may not be cut.
func laidOut(ctx context.Context, beds []*work.Plan, p *work.Plan, o cutOptions) (l work.Lays, out output, unfit, err error) {
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	var laying sync.WaitGroup
	laying.Go(func() {
		if out, err = outputOf(p.Design, o.shop, o.scale, "cut", &p.Words.Sheets); err == nil {
			l, err = p.Lay(ctx, work.Budget{Time: o.layTime})
		}
	})
	if unfit = verdicts(beds); unfit != nil {
		stop()
	}
	laying.Wait()
	return l, out, unfit, err
}

// tell writes every drawing and tells of it in a document, of as many as were
// written where something is in the way.
func (o output) tell(s Streams, p *work.Plan, l work.Lays, drawings []export.Drawing) error {
	var files []document.Sheet
	err := atMachine(p, o.write(drawings, collect(&files)))
	if _, faulty := err.(design.Faults); faulty {
		return err
	}
	doc := cutDocument(p, err, s.words())
	doc.Warnings = append(doc.Warnings, s.words().lines(o.untold())...)
	doc.Scale, doc.Lays, doc.Files = o.options.ScaleFactor(), laysOf(p, l), append(doc.Files, files...)
	return errors.Join(err, document.Write(s.Out, doc))
}

func cutSchema() map[string]any {
	return document.Schema[document.Cut]("slingloft cut", document.CutVersion,
		"What was written to cut from. Lengths mm. With exit status 2 there is a list of faults in its place where the design is at fault.")
}

// cutDocument returns what cut tells of a plan before anything is laid.
func cutDocument(p *work.Plan, err error, w Words) document.Cut {
	out := document.Cut{
		Beds:    bedsOf(p),
		Head:    headOf(p, document.CutVersion, err),
		Verdict: []string{}, Warnings: []string{}, Files: []document.Sheet{}, Lays: []document.Lay{},
		Outlines: outlinesOf(p, w),
	}
	for _, s := range p.Shares() {
		out.Verdict, out.Warnings = append(out.Verdict, verdictLines(s.Plan, w)...), append(out.Warnings, s.Plan.Warnings()...)
	}
	return out
}

// bedsOf tells of the beds that are laid together.
func bedsOf(p *work.Plan) []document.Bed {
	var out []document.Bed
	for _, b := range p.Beds() {
		out = append(out, document.Bed(b))
	}
	return out
}

// laysOf tells of both lays.
func laysOf(p *work.Plan, l work.Lays) []document.Lay {
	s := p.Design.Sheet
	lay := func(stock piece.Stock, material string, l nest.Lay, width, length float64, err error) document.Lay {
		return document.Lay{Stock: stock.String(), Material: material, Pieces: len(l.Placements), Beds: l.Beds,
			Width: width, Length: length, Use: l.Density, Verified: err == nil}
	}
	cloth, boards := p.Verify(l)
	var out []document.Lay
	for roll, c := range p.Rolls() {
		out = append(out, lay(piece.Cloth, c.Name, l.Rolls[roll], c.Width, l.Rolls[roll].Length, cloth))
	}
	if l.Boards.Beds > 0 {
		out = append(out, lay(piece.Board, s.Name, l.Boards, s.Width, s.Height, boards))
	}
	return out
}

// summary tells in a few lines what the files hold.
func summary(s Streams, p *work.Plan, l work.Lays) {
	st := p.Style()
	s.say(DesignOf, p.Design.Name, p.Digest, p.Mark)
	for roll, c := range p.Rolls() {
		lay, size := l.Rolls[roll], st.Length(c.Width)
		if roll == 0 {
			s.say(ClothLaid, len(lay.Placements), st.Length(lay.Length), size, 100*lay.Density)
		} else {
			s.say(RollLaid, c.Name, len(lay.Placements), st.Length(lay.Length), size, 100*lay.Density)
		}
	}
	if l.Boards.Beds > 0 {
		s.say(BoardsLaid, len(l.Boards.Placements), l.Boards.Beds)
	}
	sayBrought(s, p)
	shares := p.Shares()
	for _, share := range shares {
		for _, line := range share.Plan.Warnings() {
			if len(shares) == 1 {
				s.say(Caution, line)
			} else {
				s.say(Caution, notice{OfDesign, []any{share.Plan.File(), line}})
			}
		}
	}
	s.say(HangLow)
}
