package command

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// load reads the design that the arguments name, or the built-in one, with the given
// shelf, and carries it up to its pieces.
func load(args []string, shelf string) (work.Plan, error) {
	return loadFor(args, work.Setting{Shelf: shelf})
}

// shelfFlag defines the flag that names a shelf.
func shelfFlag(f *pflag.FlagSet, to *string) {
	f.StringVar(to, "shelf", "", "")
}

// loadFor is [load] for a machine and with outlines that the design does not know.
func loadFor(args []string, with work.Setting) (work.Plan, error) {
	name, data, err := source(args)
	if err != nil {
		return work.Plan{}, err
	}
	return work.ReadFor(name, data, with)
}

// loadBeds loads every design that the arguments name, or the built-in one.
func loadBeds(args []string, with work.Setting) ([]*work.Plan, error) {
	var out []*work.Plan
	for i := range max(1, len(args)) {
		p, err := loadFor(args[min(i, len(args)):min(i+1, len(args))], with)
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
	data, err := readAtMost(args[0], design.MaxSize+1)
	return args[0], data, err
}

// readAtMost reads a file but not more of it than limit bytes, so that a wrong
// name, a device or a disk image, does not fill the memory.
func readAtMost(name string, limit int64) ([]byte, error) {
	f, err := os.Open(name)
	if err != nil {
		var p *fs.PathError
		if errors.As(err, &p) {
			return nil, fmt.Errorf("%s: %w", name, p.Err)
		}
		return nil, err
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, limit))
	if err != nil {
		return nil, ends(Failed, NoDesignFile, name)
	}
	return data, nil
}
