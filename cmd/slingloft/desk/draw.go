package desk

import (
	"context"

	"slingloft/cmd/slingloft/show"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet/page"
	"slingloft/export/sheet/wording"
	"slingloft/outline/design"
)

// drawn is what was made of a text.
type drawn struct {
	number int // rises with each new sheet
	sheet  string
	saved  string // the sheet of what is saved
	laid   bool
	faults []Fault // of what stands; the sheet is then the last good one
	plan   work.Plan
	room   []Tight // what of the body has how much room; none where it is not known yet
}

// draw begins to draw what stands, in place of any drawing under way; the lock is held.
// What is wrong in the text alone is known at once.
func (d *Desk) draw() {
	d.stop()
	data := d.text()
	if data == nil {
		return
	}
	ctx, stop := context.WithCancel(context.Background())
	d.stop = stop
	d.drawn.faults = nil
	if shelf, err := work.OpenShelf(d.with, d.name(), data); err == nil {
		if _, _, err := design.ReadWith(d.name(), data, shelf); err != nil {
			d.drawn.faults = d.faultsOf(err, data, false)
		}
	}
	go d.drawing(ctx, d.name(), data)
}

// Open draws what was opened.
func (d *Desk) Open() {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.draw()
	d.changed()
}

// Close ends all drawing, and those who wait for news wait no longer.
func (d *Desk) Close() {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.stop()
	d.changed()
}

// drawing draws a text, at first without its lay, then with it.
func (d *Desk) drawing(ctx context.Context, name string, data []byte) {
	with := d.with
	with.Leveling = func(float64) error { return ctx.Err() }
	p, html, err := unlaid(name, data, with)
	var room []Tight
	if err == nil {
		d.put(ctx, func() { d.sheet(html, data, false); d.drawn.plan, d.drawn.faults, d.drawn.room = p, nil, nil })
		room = roomOf(&p, d.words) // goes with the lay
		html, err = laid(ctx, &p)
	}
	if err != nil {
		faults := d.faultsOf(err, data, true)
		d.put(ctx, func() { d.drawn.faults = faults })
		return
	}
	d.put(ctx, func() { d.sheet(html, data, true); d.drawn.room = room })
}

// unlaid reads a design and returns its plan and its build sheet without the lay, as HTML.
func unlaid(name string, data []byte, with work.Setting) (work.Plan, string, error) {
	p, err := work.ReadFor(name, data, with)
	if err != nil {
		return p, "", err
	}
	s, err := show.Unlaid(&p, wording.English())
	if err != nil {
		return p, "", err
	}
	return p, page.Body(s), nil
}

// laid lays a plan's pieces and returns the whole build sheet as HTML.
func laid(ctx context.Context, p *work.Plan) (string, error) {
	l, err := p.Lay(ctx, work.Budget{})
	if err != nil {
		return "", err
	}
	s, err := show.Of(p, l, wording.English())
	if err != nil {
		return "", err
	}
	return page.Body(s), nil
}

// sheet keeps a new sheet; the lock is held.
func (d *Desk) sheet(html string, data []byte, laid bool) {
	d.drawn.number++
	d.drawn.sheet, d.drawn.laid = html, laid
	if string(data) == string(d.opened) || d.drawn.saved == "" {
		d.drawn.saved = html
	}
}

// put changes what is drawn unless the drawing was ended.
func (d *Desk) put(ctx context.Context, change func()) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if ctx.Err() == nil {
		change()
		d.changed()
	}
}

// Sheet returns the build sheet as HTML, that of the last sound design, and the one of
// what is saved, to be compared.
func (d *Desk) Sheet() (now, saved string) {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.drawn.sheet, d.drawn.saved
}
