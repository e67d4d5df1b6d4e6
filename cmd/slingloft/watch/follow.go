package watch

import (
	"bytes"
	"context"
	"os"
	"time"

	"slingloft/cmd/slingloft/desk"
	"slingloft/cmd/slingloft/work"
)

// beat is how often the file is looked at, and every how many beats it is read
// even if neither its time nor its size has changed: some file systems keep time by
// the second.
const (
	beat  = 40 * time.Millisecond
	reads = 12
)

// look is what was last seen of the file.
type look struct {
	path  string
	time  time.Time
	size  int64
	there bool
	shelf []byte // what the design's shelf held when the file was last read; nil: nothing
	known bool   // the shelf was looked at
}

// follow brings what others write into the file to the desk, until ctx is done.
func follow(ctx context.Context, f *file, d *desk.Desk, with work.Setting) {
	tick := time.NewTicker(beat)
	defer tick.Stop()
	var seen look
	for n := 0; ; n++ {
		if path := f.Name(); path != "" {
			seen = looked(f, path, seen, n%reads == 0, d, with)
		}
		select {
		case <-ctx.Done():
			return
		case <-tick.C:
		}
	}
}

// looked looks at the file, and reads it where it seems changed or must be read.
func looked(f *file, path string, seen look, read bool, d *desk.Desk, with work.Setting) look {
	now := look{path: path}
	if info, err := os.Stat(path); err == nil {
		now.time, now.size, now.there = info.ModTime(), info.Size(), true
	}
	now.shelf, now.known = seen.shelf, seen.known
	if !read && now.path == seen.path && now.there == seen.there && now.time.Equal(seen.time) && now.size == seen.size {
		return now
	}
	saves := d.Saves()
	data, err := f.read()
	if err != nil {
		d.Cannot(err)
		return look{path: path}
	}
	if !d.Found(data, saves) {
		return seen // it is read anew at the next look
	}
	if data == nil {
		return now
	}
	var shelf []byte
	if name := with.ShelfFile(path, data); name != "" {
		shelf, _ = os.ReadFile(name) // where it cannot be read the drawing says so
	}
	if now.known && !bytes.Equal(shelf, now.shelf) {
		d.Open()
	}
	now.shelf, now.known = shelf, true
	return now
}
