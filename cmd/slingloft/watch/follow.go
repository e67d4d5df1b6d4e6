package watch

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strings"
	"time"

	"slingloft/cmd/slingloft/show"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet/page"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
)

// beat is how often the file is looked at, and every how many beats it is read
// even if neither its time nor its size has changed: some file systems keep time by
// the second.
const (
	beat  = 40 * time.Millisecond
	reads = 12
)

// follow keeps the hub's state at what the file says, until ctx is done.
func follow(ctx context.Context, o Options, h *hub) {
	path := o.Path
	d := drawer{hub: h, with: work.Setting{Shelf: o.Shelf}, stop: func() {}}
	defer func() { d.stop() }()
	if path == "" {
		name, data := design.Demo()
		d.draw(ctx, name, data)
		<-ctx.Done()
		return
	}
	tick := time.NewTicker(beat)
	defer tick.Stop()
	var seen look
	for n := 0; ; n++ {
		now, data, err := lookAt(path, seen, n%reads == 0)
		switch {
		case err != nil && (seen.err == "" || n == 0):
			seen = look{err: err.Error()}
			h.change(func(s *state) { s.Faults = []fault{{Text: cannotRead(path, err)}} })
		case err == nil && data != nil && d.news(path, data, &seen):
			now.data, now.shelf = data, seen.shelf
			seen = now
			d.draw(ctx, path, data)
		case err == nil:
			now.data, now.shelf = seen.data, seen.shelf
			seen = now
		}
		select {
		case <-ctx.Done():
			return
		case <-tick.C:
		}
	}
}

// look is what was last seen of the file.
type look struct {
	time time.Time
	size int64
	data []byte
	// shelf is what the design's shelf held when the file was last read; nil: nothing.
	shelf []byte
	err   string
}

// news reports whether the design or its shelf has changed, and keeps the shelf.
func (d *drawer) news(path string, data []byte, seen *look) bool {
	var shelf []byte
	if file := d.with.ShelfFile(path, data); file != "" {
		shelf, _ = os.ReadFile(file) // where it cannot be read the drawing says so
	}
	changed := seen.data == nil || !bytes.Equal(data, seen.data) || !bytes.Equal(shelf, seen.shelf)
	seen.shelf = shelf
	return changed
}

// lookAt looks at the file, and reads it where it seems changed or must be read.
func lookAt(path string, seen look, read bool) (look, []byte, error) {
	info, err := os.Stat(path)
	if err != nil {
		return look{}, nil, err
	}
	now := look{time: info.ModTime(), size: info.Size()}
	if !read && now.time.Equal(seen.time) && now.size == seen.size && seen.err == "" {
		return now, nil, nil
	}
	f, err := os.Open(path)
	if err != nil {
		return look{}, nil, err
	}
	defer f.Close()
	// One byte more than a design may have lets its reader say that it is too long.
	data, err := io.ReadAll(io.LimitReader(f, design.MaxSize+1))
	if data == nil {
		data = []byte{}
	}
	return now, data, err
}

func cannotRead(path string, err error) string {
	var p *fs.PathError
	if errors.As(err, &p) {
		err = p.Err
	}
	return fmt.Sprintf(English().Unread, path, err)
}

// drawer draws a design's sheet, at first without its lay, then with it.
type drawer struct {
	hub  *hub
	with work.Setting
	stop func() // ends the lay that is under way
}

// draw puts the sheet of a design file into the hub, or what is wrong in it.
func (d *drawer) draw(ctx context.Context, name string, data []byte) {
	d.stop()
	p, err := work.ReadFor(name, data, d.with)
	var html string
	if err == nil {
		s, e := show.Unlaid(&p, wording.English())
		html, err = page.Body(s), e
	}
	if err != nil {
		d.hub.change(func(s *state) { s.Faults, s.name = faultsOf(err, name, data), name })
		return
	}
	version := 0
	d.hub.change(func(s *state) {
		s.Version++
		version = s.Version
		s.Laid, s.Faults, s.Fields = false, nil, valuesOf(p.Design, English())
		s.sheet, s.from, s.name = html, p.Design, name
	})
	ctx, d.stop = context.WithCancel(ctx)
	go d.lay(ctx, p, version)
}

// lay lays the pieces and puts the whole sheet in place of the one of the given
// version, unless a newer one stands there by then.
func (d *drawer) lay(ctx context.Context, p work.Plan, version int) {
	l, err := p.Lay(ctx, work.Budget{})
	var html string
	if err == nil {
		s, e := show.Of(&p, l, wording.English())
		html, err = page.Body(s), e
	}
	if ctx.Err() != nil {
		return
	}
	d.hub.change(func(s *state) {
		if s.Version != version {
			return
		}
		if err != nil {
			s.Faults = faultsOf(err, "", nil)
			return
		}
		s.Version++
		s.Laid, s.sheet = true, html
	})
}

// faultsOf returns an error as what the page shows, with the lines at fault.
func faultsOf(err error, name string, data []byte) []fault {
	var many design.Faults
	if !errors.As(err, &many) {
		return []fault{{Text: err.Error()}}
	}
	lines := strings.Split(string(data), "\n")
	var out []fault
	for _, f := range many {
		one := fault{Place: fmt.Sprintf("%s:%d:%d", f.File, f.Line, f.Column), Text: design.English().Message(f)}
		if f.Key != "" {
			one.Text = string(f.Key) + ": " + one.Text
		}
		if data != nil && f.File == name && f.Line >= 1 && f.Line <= len(lines) {
			one.Line = cut(strings.TrimRight(lines[f.Line-1], "\r"))
		}
		out = append(out, one)
	}
	return out
}

// cut shortens a line that no page would show whole.
func cut(line string) string {
	const longest = 160
	if r := []rune(line); len(r) > longest {
		return string(r[:longest]) + " …"
	}
	return line
}
