package command

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// load reads the design that the arguments name, or the built-in one, and
// carries it up to its pieces.
func load(args []string) (work.Plan, error) {
	if len(args) == 0 {
		name, data := design.Demo()
		return work.Read(name, data)
	}
	data, err := readAtMost(args[0], design.MaxSize+1)
	if err != nil {
		return work.Plan{}, err
	}
	return work.Read(args[0], data)
}

// readAtMost reads a file but not more of it than most bytes, so that a wrong
// name, a device or a disk image, does not fill the memory.
func readAtMost(name string, most int64) ([]byte, error) {
	f, err := os.Open(name)
	if err != nil {
		var p *fs.PathError
		if errors.As(err, &p) {
			return nil, fmt.Errorf("%s: %w", name, p.Err)
		}
		return nil, err
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, most))
	if err != nil {
		return nil, fmt.Errorf("%s: cannot be read as a design file", name)
	}
	return data, nil
}
