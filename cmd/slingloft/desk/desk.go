// Package desk holds a design while somebody works on it on a page: its text with every
// change so far, what is wrong with it and what would do, and its build sheet. It knows
// neither browser nor network; package watch brings requests here.
package desk

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"path/filepath"
	"sync"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// Store is where the design's file lies.
type Store interface {
	// Name is what the file is called in messages; "" where the design has no file yet.
	Name() string
	// Save writes the file whole, if what stands there has the digest, and is [ErrChanged]
	// otherwise. The digest of a file that is not there is "".
	Save(data []byte, digest string) error
	// Create gives a design without a file one of that name, cleaned, which must not be
	// there.
	Create(name string, data []byte) error
}

// Digest returns what tells the contents of two files apart; "" for no file.
func Digest(data []byte) string {
	if data == nil {
		return ""
	}
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:])
}

// Desk is one design that is worked on. Its methods may be called at the same time.
type Desk struct {
	store Store
	with  work.Setting
	words Words

	mu     sync.Mutex
	opened []byte // what the file holds, as far as is known; nil: there is none
	steps  []step // the texts so far; the first is as opened
	at     int    // the one that stands
	saves  int    // how often it was saved
	lost   bool   // the file cannot be read
	theirs []byte // what somebody else has put into the file meanwhile; nil: nothing
	drawn  drawn
	number int           // of the state; rises with each change
	news   chan struct{} // closed at the next change
	stop   func()        // ends the drawing under way
}

// step is the text after one change.
type step struct {
	data []byte
	key  design.Key // the one that was changed, if it was one
	turn int        // changes of one key in one turn are one step
	bare bool       // the key was emptied: what is typed into it next belongs to this step
}

// retyped reports whether a step fills in the key that the one before it emptied.
func (s step) retyped(next step) bool {
	return s.key != "" && s.key == next.key && s.bare && !next.bare
}

// New returns a desk with a file's contents; nil data: the file is not there yet.
func New(s Store, data []byte, with work.Setting) *Desk {
	if with.Closed == nil {
		with.Closed = &work.Closings{}
	}
	d := &Desk{store: s, with: with, words: English(), opened: data, news: make(chan struct{}), stop: func() {}}
	d.steps = []step{{data: data}}
	return d
}

// name is what messages call the file.
func (d *Desk) name() string {
	if n := d.store.Name(); n != "" {
		return n
	}
	name, _ := design.Demo()
	return name
}

// changed tells those who wait that there is a new state; the lock is held.
func (d *Desk) changed() {
	d.number++
	close(d.news)
	d.news = make(chan struct{})
}

// Number returns the number of the state.
func (d *Desk) Number() int {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.number
}

// Wait returns once there is a newer state than that of a number, or ctx is done.
func (d *Desk) Wait(ctx context.Context, number int) {
	for {
		d.mu.Lock()
		now, news := d.number, d.news
		d.mu.Unlock()
		if now != number {
			return
		}
		select {
		case <-news:
		case <-ctx.Done():
			return
		}
	}
}

// text returns what stands; the lock is held.
func (d *Desk) text() []byte { return d.steps[d.at].data }

// unsaved reports whether what stands is not what the file holds; the lock is held.
func (d *Desk) unsaved() bool { return d.text() != nil && !bytes.Equal(d.text(), d.opened) }

// Saves returns how often the design was saved, for [Desk.Found].
func (d *Desk) Saves() int {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.saves
}

// Found takes in what the file held after so many [Desk.Saves]. Where something here is
// not saved both are kept, and the state says so. It reports false where the design was
// saved meanwhile, so that the file has to be read anew.
func (d *Desk) Found(data []byte, saves int) bool {
	d.mu.Lock()
	defer d.mu.Unlock()
	if saves != d.saves {
		return false
	}
	d.found(data)
	return true
}

// found is [Desk.Found]; the lock is held.
func (d *Desk) found(data []byte) {
	if d.lost {
		d.lost = false
		d.draw()
		d.changed()
	}
	switch {
	case Digest(data) == Digest(d.opened):
		if d.theirs != nil {
			d.theirs = nil
			d.changed()
		}
		return
	case data != nil && bytes.Equal(data, d.text()):
		d.opened, d.theirs = data, nil // somebody else has written the same
		d.drawn.saved = d.drawn.sheet
		d.changed()
		return
	case data == nil:
		d.opened = nil // the file is gone; what stands here is not saved any more
		d.changed()
		return
	case d.theirs != nil && bytes.Equal(data, d.theirs):
		return // known
	case d.unsaved():
		d.theirs = data
		d.changed()
		return
	}
	d.take(data)
}

// take goes on with the file's contents in place of what stands; the lock is held.
func (d *Desk) take(data []byte) {
	d.opened, d.theirs = data, nil
	d.push(step{data: data})
}

// mostSteps bounds how many changes can be undone: own choice.
const mostSteps = 500

// push makes a text the one that stands; the lock is held.
func (d *Desk) push(s step) {
	last := d.steps[d.at]
	same := s.key != "" && s.key == last.key && s.turn == last.turn && s.turn != 0
	switch {
	case d.at > 0 && last.retyped(s) && bytes.Equal(s.data, d.steps[d.at-1].data):
		d.steps = d.steps[:d.at] // it stands as before
	case d.at > 0 && (same || last.retyped(s)):
		d.steps = append(d.steps[:d.at], s)
	default:
		d.steps = append(d.steps[:d.at+1], s)
	}
	if len(d.steps) > mostSteps {
		d.steps = d.steps[1:]
	}
	d.at = len(d.steps) - 1
	d.draw()
	d.changed()
}

// Save writes what stands into the file that has the digest. A design without a file
// takes a name.
func (d *Desk) Save(digest, name string) error {
	d.mu.Lock()
	defer d.mu.Unlock()
	data := d.text()
	if data == nil {
		return nil
	}
	var err error
	switch {
	case d.store.Name() != "":
		err = d.store.Save(data, digest)
	case name == "":
		return ErrNoFile
	default:
		err = d.store.Create(name, data)
	}
	if err != nil {
		return err
	}
	d.saves++
	d.opened, d.theirs = data, nil
	d.drawn.saved = d.drawn.sheet
	d.changed()
	return nil
}

// TakeTheirs goes on with what somebody else has put into the file. It can be undone.
func (d *Desk) TakeTheirs() {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.theirs != nil {
		d.take(d.theirs)
	}
}

// Undo takes the last change back, and Redo puts it on again.
func (d *Desk) Undo() { d.move(-1) }

// Redo puts on again what was undone last.
func (d *Desk) Redo() { d.move(1) }

func (d *Desk) move(by int) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if to := d.at + by; to >= 0 && to < len(d.steps) && d.steps[to].data != nil {
		d.at = to
		d.draw()
		d.changed()
	}
}

// Cannot notes that the file cannot be read any more.
func (d *Desk) Cannot(err error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if !d.lost {
		d.lost, d.drawn.faults = true, []Fault{{Text: err.Error()}}
		d.changed()
	}
}

// Copied is what stands, and the files that it takes things from.
type Copied struct {
	Name   string // of the design's file
	Data   []byte
	Beside []string // its own shelf and outlines, each by the path under which the design's folder has it
	Shelf  string   // the shelf of the whole run, in place of its own; "": none
}

// Snapshot returns what stands.
func (d *Desk) Snapshot() Copied {
	d.mu.Lock()
	defer d.mu.Unlock()
	c := Copied{Name: d.name(), Data: d.text(), Shelf: d.with.Shelf}
	if shelf := d.with.ShelfFile(c.Name, c.Data); shelf != "" && c.Shelf == "" {
		c.Beside = append(c.Beside, shelf)
	}
	if t, err := design.OpenText(c.Name, c.Data); err == nil {
		for i := range t.Count(design.KeyExtra) {
			if file, ok := t.Value(design.KeyExtra.Item(i + 1).In(design.KeyExtraFile.Name())); ok {
				c.Beside = append(c.Beside, file)
			}
		}
	}
	return c
}

// Offers returns what is on the shelf of what stands, by the fields that take it.
func (d *Desk) Offers() map[string][]string {
	d.mu.Lock()
	name, data := d.name(), d.text()
	d.mu.Unlock()
	with := d.with
	if with.Shelf == "" {
		if named, takes := design.ShelfOf(data); named == "" && !takes {
			with.Shelf = filepath.Join(filepath.Dir(name), design.ShelfFile) // it may be there all the same
		}
	}
	out := map[string][]string{}
	if shelf, err := work.OpenShelf(with, name, data); err == nil {
		for key, names := range shelf.Offers() {
			out[FieldName(key)] = names
		}
	}
	return out
}
