package watch

import (
	_ "embed"
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"time"

	"slingloft/export/sheet/page"
)

//go:embed live.html
var liveHTML string

//go:embed live.js
var liveJS string

//go:embed live.css
var liveCSS string

// handler serves the page and what it asks for.
func handler(h *hub) http.Handler {
	text := func(kind, body string) http.HandlerFunc {
		return func(w http.ResponseWriter, _ *http.Request) {
			w.Header().Set("Content-Type", kind)
			io.WriteString(w, body)
		}
	}
	m := http.NewServeMux()
	m.HandleFunc("GET /{$}", text("text/html; charset=utf-8", liveHTML))
	m.HandleFunc("GET /live.js", text("text/javascript; charset=utf-8", liveJS))
	m.HandleFunc("GET /live.css", text("text/css; charset=utf-8", page.Style()+liveCSS))
	m.HandleFunc("GET /favicon.ico", func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(http.StatusNoContent) })
	m.HandleFunc("GET /sheet", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		io.WriteString(w, h.state().sheet)
	})
	m.HandleFunc("GET /events", func(w http.ResponseWriter, r *http.Request) { events(w, r, h) })
	one := make(chan struct{}, 1)
	m.HandleFunc("POST /try", func(w http.ResponseWriter, r *http.Request) {
		select {
		case one <- struct{}{}:
			defer func() { <-one }()
			serveTry(w, r, h.state())
		case <-r.Context().Done():
		}
	})
	return m
}

// pulse is how often a quiet event stream sends a comment, by which both ends
// notice that the other is gone.
const pulse = 15 * time.Second

// events sends the state, now and after each change.
func events(w http.ResponseWriter, r *http.Request, h *hub) {
	c, end := h.listen()
	defer end()
	if c == nil {
		http.Error(w, English().TooManyPages, http.StatusServiceUnavailable)
		return
	}
	out := http.NewResponseController(w)
	out.SetReadDeadline(time.Time{})
	w.Header().Set("Content-Type", "text/event-stream")
	tick := time.NewTicker(pulse)
	defer tick.Stop()
	for {
		data, err := json.Marshal(h.state())
		if err != nil {
			return
		}
		out.SetWriteDeadline(time.Now().Add(2 * pulse))
		fmt.Fprintf(w, "event: state\ndata: %s\n\n", data)
		if out.Flush() != nil {
			return
		}
	wait:
		for {
			select {
			case <-r.Context().Done():
				return
			case <-c:
				break wait
			case <-tick.C:
				out.SetWriteDeadline(time.Now().Add(2 * pulse))
				io.WriteString(w, ": still here\n\n")
				if out.Flush() != nil {
					return
				}
			}
		}
	}
}

// mostTry bounds what a page may send, bytes.
const mostTry = 4 << 10

// serveTry answers other values for some fields.
func serveTry(w http.ResponseWriter, r *http.Request, s state) {
	data, err := io.ReadAll(http.MaxBytesReader(w, r.Body, mostTry))
	if err != nil {
		http.Error(w, English().TooMuch, http.StatusRequestEntityTooLarge)
		return
	}
	form, err := url.ParseQuery(string(data))
	if err != nil || s.Version == 0 {
		http.Error(w, English().Nothing, http.StatusBadRequest)
		return
	}
	other := map[string]string{}
	for key, v := range form {
		other[key] = v[0]
	}
	w.Header().Set("Content-Type", "application/json")
	json.NewEncoder(w).Encode(try(s.name, s.from, other))
}
