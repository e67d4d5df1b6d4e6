package watch

import (
	"context"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"sync"

	"slingloft/cmd/slingloft/desk"
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// Alone answers the page that holds the program in itself: no network, no address, no
// token. The design and what it takes things from lie flat in the folder that the
// program stands in, which the page keeps in memory; they come and go as one file or as
// one zip.
type Alone struct {
	run func(ctx context.Context, args []string, out, told io.Writer) int

	mu     sync.Mutex
	now    *handler
	routes http.Handler // of it
	stop   func()       // ends its drawing
}

// NewAlone returns what answers the page, with the built-in design. Run is as in
// [Options].
func NewAlone(run func(ctx context.Context, args []string, out, told io.Writer) int) *Alone {
	a := &Alone{run: run, stop: func() {}}
	_, data := design.Demo()
	a.begin("", data)
	return a
}

// begin works on a design from here on.
func (a *Alone) begin(name string, data []byte) {
	d := desk.New(&file{path: name}, data, work.Setting{})
	a.mu.Lock()
	defer a.mu.Unlock()
	a.stop()
	a.now, a.stop = &handler{desk: d, run: a.run}, d.Close
	a.routes = a.now.routes()
	d.Open()
}

// ServeHTTP answers what the page of [Serve] asks, and beside it: open, with files as
// those that are proved, of which one is a design; new, which begins with questions; and
// pack, which is what stands with all that it takes things from, as zip.
func (a *Alone) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	a.mu.Lock()
	h, routes := a.now, a.routes
	a.mu.Unlock()
	switch r.URL.Path {
	case "/ask/open":
		if err := a.open(w, r); err != nil {
			http.Error(w, err.Error(), statusOf(err))
		}
	case "/ask/new":
		a.begin("", nil)
	case "/ask/pack":
		data, err := h.packed()
		if err != nil {
			http.Error(w, err.Error(), statusOf(err))
			return
		}
		w.Write(data)
	default:
		routes.ServeHTTP(w, r)
	}
}

// open takes files in place of those that are there.
func (a *Alone) open(w http.ResponseWriter, r *http.Request) error {
	data, err := io.ReadAll(http.MaxBytesReader(w, r.Body, mostDropped))
	if err != nil {
		return TooManyDropped
	}
	folder, err := os.MkdirTemp("", "slingloft-open-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	if err := unpacked(data, filepath.Join(folder, "files")); err != nil {
		return err
	}
	name, text, err := designIn(filepath.Join(folder, "files"))
	if err != nil {
		return err
	}
	if err := replaced(".", filepath.Join(folder, "files")); err != nil {
		return err
	}
	a.begin(name, text)
	return nil
}

// designIn returns the design among the files of a folder: the one that says how long a
// bed is or who sleeps in it, else the first that is TOML.
func designIn(folder string) (string, []byte, error) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return "", nil, err
	}
	var name string
	var text []byte
	for _, e := range entries {
		if !strings.EqualFold(filepath.Ext(e.Name()), ".toml") {
			continue
		}
		data, err := os.ReadFile(filepath.Join(folder, e.Name()))
		if err != nil {
			return "", nil, err
		}
		if name == "" {
			name, text = e.Name(), data
		}
		if t, err := design.OpenText(e.Name(), data); err == nil {
			_, long := t.Value(design.KeyBedSpan)
			_, who := t.Value(design.KeySleeperStature)
			if long || who {
				return e.Name(), data, nil
			}
		}
	}
	if name == "" {
		return "", nil, NoDesign
	}
	return name, text, nil
}

// replaced puts the files of one folder in place of those of another.
func replaced(folder, with string) error {
	old, err := os.ReadDir(folder)
	if err != nil {
		return err
	}
	for _, e := range old {
		if err := os.RemoveAll(filepath.Join(folder, e.Name())); err != nil {
			return err
		}
	}
	files, err := os.ReadDir(with)
	if err != nil {
		return err
	}
	for _, e := range files {
		data, err := os.ReadFile(filepath.Join(with, e.Name()))
		if err == nil {
			err = os.WriteFile(filepath.Join(folder, e.Name()), data, 0o600)
		}
		if err != nil {
			return err
		}
	}
	return nil
}

// packed returns what stands and all that it takes things from as zip.
func (h *handler) packed() ([]byte, error) {
	if h.desk.State().Ask {
		return nil, desk.ErrNoFile
	}
	folder, err := os.MkdirTemp("", "slingloft-pack-")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(folder)
	if _, _, err := h.copyOf(folder); err != nil {
		return nil, err
	}
	for _, name := range h.machines() { // what was brought in and is named only when files are made
		if err := copyBeside(".", name, folder); err != nil {
			return nil, err
		}
	}
	return zipped(folder)
}
