package command

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/figures"
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/quantity"
)

// hangOptions are the flags of hang.
type hangOptions struct {
	work.Draping
	guest string
	shelf string
	reporting
}

func hangCommand() command {
	return command{
		name: "hang", args: " [DESIGN]", maxArgs: 1,
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o hangOptions
			f.BoolVar(&o.Exact, "exact", false, "")
			f.BoolVar(&o.Round, "round", false, "")
			f.BoolVar(&o.Sits, "sitting", false, "")
			f.StringVar(&o.guest, "guest", "", "")
			shelfFlag(f, &o.shelf)
			return o.flags(f, figures.ClothSchema, func(ctx context.Context, s Streams, args []string) error { return hangCloth(ctx, s, args, o) })
		},
	}
}

// hangCloth hangs the cut as cloth and prints what comes of it.
func hangCloth(ctx context.Context, s Streams, args []string, o hangOptions) error {
	if o.Round && o.Sits {
		return misuse(RoundOrSitting)
	}
	p, err := load(ctx, s, args, o.shelf)
	if err != nil {
		return err
	}
	sayRenamed(s, &p)
	if err := o.invite(&p); err != nil {
		return err
	}
	h, err := draped(ctx, s, &p, o.Draping)
	if err != nil && !errors.Is(err, work.ErrUnsettled) {
		return err
	}
	doc := figures.ClothOf(&p, h, err)
	if err = verdict(&p); err != nil {
		doc.Status = statusOf(err)
	}
	if o.json {
		return errors.Join(err, document.Write(s.Out, doc))
	}
	return errors.Join(doc.Text(s.Out, p.Style(), figures.English()), err)
}

// draped hangs the cut as cloth, with its progress on a terminal. An error that is not
// [work.ErrUnsettled] says what to print.
func draped(ctx context.Context, s Streams, p *work.Plan, how work.Draping) (work.Draped, error) {
	show, done := progress(s)
	how.Watch = show
	h, err := p.Drape(ctx, how)
	done()
	switch {
	case errors.Is(err, context.Canceled):
		return h, ends(Failed, Stopped)
	case err != nil && !errors.Is(err, work.ErrUnsettled):
		return h, ends(Failed, NotHung, err)
	}
	return h, err
}

// invite finds the guest who is asked for.
func (o *hangOptions) invite(p *work.Plan) error {
	if o.guest == "" {
		return nil
	}
	var names []string
	for i, g := range p.Design.Guests {
		if g.Name == o.guest {
			o.Guest = &p.Design.Guests[i]
			return nil
		}
		names = append(names, g.Name)
	}
	return misuse(NoGuest, quantity.Quoted(o.guest), meant(o.guest, "", names))
}

// progress shows how far something is on a terminal: a function to call with the part that
// is done, and one for its end. Elsewhere both do nothing.
func progress(s Streams) (show func(float64), done func()) {
	f, ok := s.Err.(*os.File)
	if !ok {
		return nil, func() {}
	}
	if info, err := f.Stat(); err != nil || info.Mode()&os.ModeCharDevice == 0 {
		return nil, func() {}
	}
	last := -1
	show = func(part float64) {
		// It may fall back a little; what is shown does not.
		if now := int(100 * part); now > last {
			last = now
			fmt.Fprintf(f, "\r"+s.words().Messages[Hanging], now)
		}
	}
	return show, func() { io.WriteString(f, "\r\x1b[K") }
}
