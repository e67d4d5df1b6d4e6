package command

import (
	"context"
	"errors"
	"fmt"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/whole"
	"slingloft/outline/design"
)

// load reads the design that the arguments name, or the built-in one, with the given
// shelf, and carries it up to its pieces.
func load(ctx context.Context, s Streams, args []string, shelf string) (work.Plan, error) {
	return loadFor(ctx, s, args, work.Setting{Shelf: shelf})
}

// shelfFlag defines the flag that names a shelf.
func shelfFlag(f *pflag.FlagSet, to *string) {
	f.StringVar(to, "shelf", "", "")
}

// loadFor is [load] for a machine and with outlines that the design does not know.
// Its progress is shown where it cuts again from the cloth as it hangs, which takes seconds.
func loadFor(ctx context.Context, s Streams, args []string, with work.Setting) (work.Plan, error) {
	name, data, err := source(args)
	if err != nil {
		return work.Plan{}, err
	}
	show, done := progress(s)
	with.Leveling = func(part float64) error {
		if show != nil {
			show(part)
		}
		return ctx.Err()
	}
	p, err := work.ReadFor(name, data, with)
	done()
	if errors.Is(err, context.Canceled) {
		return p, ends(Failed, Stopped)
	}
	return p, err
}

// loadBeds loads every design that the arguments name, or the built-in one.
func loadBeds(ctx context.Context, s Streams, args []string, with work.Setting) ([]*work.Plan, error) {
	var out []*work.Plan
	for i := range max(1, len(args)) {
		p, err := loadFor(ctx, s, args[min(i, len(args)):min(i+1, len(args))], with)
		if err != nil {
			return nil, err
		}
		out = append(out, &p)
	}
	return out, nil
}

// sayRenamed notes the keys that a design calls as they were called before.
func sayRenamed(s Streams, p *work.Plan) {
	for _, r := range p.Renamed() {
		s.say(KeyRenamed, p.File(), r.At.Line, r.Old, r.New)
	}
}

// source returns the name and the text of the design that the arguments name, or
// of the built-in one.
func source(args []string) (string, []byte, error) {
	if len(args) == 0 {
		name, data := design.Demo()
		return name, data, nil
	}
	data, err := readDesign(args[0])
	return args[0], data, err
}

// readDesign reads a file that is to be a design, a machine or the like.
func readDesign(name string) ([]byte, error) {
	data, err := whole.ReadAtMost(name, design.MaxSize+1)
	switch {
	case errors.Is(err, export.Breaks(export.Unread)):
		return nil, ends(Failed, NoDesignFile, name)
	case err != nil:
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return data, nil
}
