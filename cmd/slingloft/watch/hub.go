package watch

import (
	"sync"

	"slingloft/outline/design"
)

// state is what the page shows.
type state struct {
	Version int     `json:"version"` // of the sheet; rises with each new drawing
	Laid    bool    `json:"laid"`    // the sheet has its lay
	Faults  []fault `json:"faults"`  // what is wrong in the file now; the sheet is the last good one
	Fields  []value `json:"fields"`  // the design's main dimensions

	sheet string        // HTML
	from  design.Design // what the sheet shows
	name  string        // of the file
}

// fault is one thing wrong in the design file.
type fault struct {
	Place string `json:"place"` // "my.toml:12:8"; empty where it has none
	Text  string `json:"text"`
	Line  string `json:"line,omitempty"` // the line of the file as it stands
}

// hub keeps the state and tells those who listen of each new one.
type hub struct {
	mu        sync.Mutex
	now       state
	listeners map[chan struct{}]bool
}

func newHub() *hub { return &hub{listeners: map[chan struct{}]bool{}} }

// change alters the state and tells the listeners.
func (h *hub) change(f func(*state)) {
	h.mu.Lock()
	defer h.mu.Unlock()
	f(&h.now)
	for c := range h.listeners {
		select {
		case c <- struct{}{}:
		default: // it has not yet looked at the last change and will see both
		}
	}
}

// state returns the state as it is.
func (h *hub) state() state {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.now
}

// mostListeners bounds how many pages may be open.
const mostListeners = 32

// listen returns a channel that gets a message after each change, and what ends
// that; nil where too many listen already.
func (h *hub) listen() (c chan struct{}, end func()) {
	h.mu.Lock()
	defer h.mu.Unlock()
	if len(h.listeners) >= mostListeners {
		return nil, func() {}
	}
	c = make(chan struct{}, 1)
	h.listeners[c] = true
	return c, func() {
		h.mu.Lock()
		defer h.mu.Unlock()
		delete(h.listeners, c)
	}
}
