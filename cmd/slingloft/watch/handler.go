package watch

import (
	"context"
	"crypto/subtle"
	"encoding/json"
	"errors"
	"io"
	"io/fs"
	"net/http"
	"strings"
	"time"

	"slingloft/cmd/slingloft/desk"
	"slingloft/cmd/slingloft/form"
	"slingloft/export/whole"
	"slingloft/outline/design"
)

// handler answers the page.
type handler struct {
	desk   *desk.Desk
	page   form.Page
	token  string
	locked bool // it shows and does not save
	run    func(ctx context.Context, args []string, out, messages io.Writer) int
}

// Bounds of a request, bytes.
const (
	mostAsked   = 1<<20 + 64<<10 // a whole text in JSON
	mostDropped = 64 << 20
)

// Times. A page asks anew after the longest wait; a body has to have come by then.
const (
	longestWait = 25 * time.Second
	bodyTime    = 30 * time.Second
)

// question is what the page asks; each request has its part of it.
type question struct {
	Since   *int          `json:"since"`
	Set     []desk.Change `json:"set"`
	Turn    int           `json:"turn"`
	List    design.Key    `json:"list"`
	Index   int           `json:"index"`
	Table   design.Key    `json:"table"`
	On      bool          `json:"on"`
	Text    string        `json:"text"`
	Digest  string        `json:"digest"`
	Name    string        `json:"name"`
	Want    string        `json:"want"`
	As      []string      `json:"as"`
	Paper   string        `json:"paper"`
	Machine string        `json:"machine"` // a file beside the design
	Copies  int           `json:"copies"`  // beds that are laid together; 0: one
	Field   string        `json:"field"`
	Values  []string      `json:"values"`
	Texts   []string      `json:"texts"`
	Moving  bool          `json:"moving"` // the value goes on changing
	At      float64       `json:"at"`     // station of the section, mm from the head bar
	Have    string        `json:"have"`   // digest of the saved sheet that the page has
	Vary    []varied      `json:"vary"`
	Guest   string        `json:"guest"` // who lies in it; "": the sleeper
	How     string        `json:"how"`   // the cut is hung: "", sitting or round
	desk.Answers
}

// routes returns what serves the page and what it asks for.
func (h *handler) routes() http.Handler {
	m := http.NewServeMux()
	m.HandleFunc("GET /{$}", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		w.Write(h.page.HTML)
	})
	m.HandleFunc("GET /favicon.ico", func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(http.StatusNoContent) })
	m.HandleFunc("POST /ask/prove", h.known(h.prove))
	m.HandleFunc("POST /ask/bring/{kind}", h.known(h.bring))
	m.HandleFunc("POST /ask/{what}", h.known(h.ask))
	return m
}

// known turns away who does not have the token.
func (h *handler) known(next http.HandlerFunc) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		given, _ := strings.CutPrefix(r.Header.Get("Authorization"), "Bearer ")
		if subtle.ConstantTimeCompare([]byte(given), []byte(h.token)) != 1 {
			http.Error(w, NoToken.Error(), http.StatusUnauthorized)
			return
		}
		http.NewResponseController(w).SetReadDeadline(time.Now().Add(bodyTime))
		next(w, r)
	}
}

// ask answers one question.
func (h *handler) ask(w http.ResponseWriter, r *http.Request) {
	data, err := io.ReadAll(http.MaxBytesReader(w, r.Body, mostAsked))
	if err != nil {
		http.Error(w, TooMuch.Error(), http.StatusRequestEntityTooLarge)
		return
	}
	var q question
	if json.Unmarshal(data, &q) != nil {
		http.Error(w, NoQuestion.Error(), http.StatusBadRequest)
		return
	}
	what := r.PathValue("what")
	switch what {
	case "files":
		h.files(w, r, q)
		return
	case "vary", "hang":
		h.told(w, r, what, q)
		return
	}
	out, err := h.answer(r.Context(), what, q)
	if err != nil {
		var unread desk.Unread
		if errors.As(err, &unread) {
			w.Header().Set("X-Field", desk.FieldName(unread.Key))
		}
		http.Error(w, err.Error(), statusOf(err))
		return
	}
	w.Header().Set("Content-Type", "application/json")
	json.NewEncoder(w).Encode(out)
}

// statusOf returns the HTTP status of an error.
func statusOf(err error) int {
	switch {
	case errors.Is(err, NoQuestion), errors.Is(err, desk.ErrNoFile):
		return http.StatusNotFound
	case errors.Is(err, desk.ErrChanged), errors.Is(err, whole.ErrExists):
		return http.StatusConflict
	case errors.Is(err, NotWhole):
		return http.StatusBadRequest
	case errors.Is(err, Locked), errors.Is(err, fs.ErrPermission):
		return http.StatusForbidden
	}
	return http.StatusUnprocessableEntity
}

// state is a state of the desk as this page shows it.
type state struct {
	desk.State
	Locked bool `json:"locked"`
}

// beside is what lies beside the design.
type beside struct {
	Machines []string            `json:"machines"`
	Shelf    map[string][]string `json:"shelf"` // by the fields that take it
}

// numbered is the state that has a change.
type numbered struct {
	Number int `json:"number"`
}

// sheets are the build sheet of the design and of what is saved, and the shape.
type sheets struct {
	Now   string      `json:"now"`
	Saved string      `json:"saved,omitempty"` // "": the page has it
	Kept  string      `json:"kept"`            // digest of that
	Shape *desk.Model `json:"shape"`
}

// answer does what is asked and returns what there is to tell.
func (h *handler) answer(ctx context.Context, what string, q question) (any, error) {
	d, done := h.desk, struct{}{}
	switch what {
	case "state":
		if q.Since != nil {
			ctx, stop := context.WithTimeout(ctx, longestWait)
			defer stop()
			d.Wait(ctx, *q.Since)
		}
		return state{d.State(), h.locked}, nil
	case "sheet":
		now, saved := d.Sheet()
		out := sheets{Now: now, Saved: saved, Kept: desk.Digest([]byte(saved)), Shape: d.Model(q.At)}
		if out.Kept == q.Have {
			out.Saved = ""
		}
		return out, nil
	case "beside":
		return beside{h.machines(), d.Offers()}, nil
	case "section":
		return d.Section(q.At), nil
	case "try":
		return d.Try(desk.Keys(q.Set), q.Moving, q.At)
	case "compare":
		return d.Compare(desk.KeyOf(q.Field), q.Values, q.Texts), nil
	case "set":
		err := d.Set(desk.Keys(q.Set), q.Turn)
		return numbered{d.Number()}, err
	case "grow":
		return done, d.Grow(q.List)
	case "drop":
		return done, d.Drop(q.List, q.Index+1)
	case "switch":
		return done, d.Switch(q.Table, q.On)
	case "text":
		return done, d.SetText(q.Text)
	case "undo":
		d.Undo()
	case "redo":
		d.Redo()
	case "take":
		d.TakeTheirs()
	case "propose":
		return done, d.Propose(q.Answers)
	case "example":
		return done, d.Example(q.Inches)
	case "save":
		if h.locked {
			return nil, Locked
		}
		return done, d.Save(q.Digest, q.Name)
	default:
		return nil, NoQuestion
	}
	return done, nil
}
