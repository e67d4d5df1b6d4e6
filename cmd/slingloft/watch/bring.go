package watch

import (
	"io"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"slingloft/export/whole"
	"slingloft/outline/design"
)

// bring writes files of the maker's own, which were dropped onto the page, beside the
// design, under flat names and never over a file. Outlines and a shelf are then named in
// the design. The body is as that of prove.
func (h *handler) bring(w http.ResponseWriter, r *http.Request) {
	if h.locked {
		http.Error(w, Locked.Error(), http.StatusForbidden)
		return
	}
	take := map[string]func(string, []byte) error{"outline": h.outline, "machine": h.machine, "shelf": h.shelf}[r.PathValue("kind")]
	if take == nil {
		http.Error(w, NoQuestion.Error(), http.StatusNotFound)
		return
	}
	data, err := io.ReadAll(http.MaxBytesReader(w, r.Body, mostDropped))
	if err != nil {
		http.Error(w, TooManyDropped.Error(), http.StatusRequestEntityTooLarge)
		return
	}
	if err := eachDropped(data, mostBrought, take); err != nil {
		http.Error(w, err.Error(), statusOf(err))
	}
}

// mostBrought bounds how many files are brought in at once: own choice.
const mostBrought = 20

// folder is where the design's file lies, or would.
func (h *handler) folder() string { return filepath.Dir(h.desk.Snapshot().Name) }

// beside writes a file beside the design and returns its name there.
func (h *handler) beside(name string, data []byte, refusal Refusal, endings ...string) (string, error) {
	kind := strings.ToLower(filepath.Ext(name))
	if !slices.Contains(endings, kind) {
		return "", refusal
	}
	name, err := cleaned(strings.TrimSuffix(filepath.Base(strings.ReplaceAll(name, `\`, "/")), filepath.Ext(name)), kind)
	if err != nil {
		return "", err
	}
	return name, whole.Write(filepath.Join(h.folder(), name), whole.Policy{}, func(w io.Writer) error {
		_, err := w.Write(data)
		return err
	})
}

// outline takes in an outline.
func (h *handler) outline(name string, data []byte) error {
	name, err := h.beside(name, data, NoOutline, ".svg", ".dxf")
	if err != nil {
		return err
	}
	one := design.KeyExtra.Item(h.desk.State().Counts[string(design.KeyExtra)] + 1)
	return h.desk.Set([]design.Change{{Key: one.In(design.KeyExtraFile.Name()), Value: name}}, 0)
}

// machine takes in the settings of a machine, which have to be sound.
func (h *handler) machine(name string, data []byte) error {
	if _, _, err := design.ReadMachine(filepath.Base(name), data); err != nil {
		return err
	}
	_, err := h.beside(name, data, NoSettings, ".toml")
	return err
}

// shelf takes in a shelf, which has to be sound.
func (h *handler) shelf(name string, data []byte) error {
	if _, err := design.ReadShelf(filepath.Base(name), data); err != nil {
		return err
	}
	name, err := h.beside(name, data, NoSettings, ".toml")
	if err != nil {
		return err
	}
	return h.desk.Set([]design.Change{{Key: design.KeyShelf, Value: name}}, 0)
}

// mostMachines bounds how many files beside the design are looked into: own choice.
const mostMachines = 100

// machines returns the files beside the design that hold a machine's settings: the only
// ones that the page can name.
func (h *handler) machines() []string {
	entries, _ := os.ReadDir(h.folder())
	out := []string{}
	for looked, e := 0, 0; e < len(entries) && looked < mostMachines; e++ {
		name := entries[e].Name()
		info, err := entries[e].Info()
		if filepath.Ext(name) != ".toml" || err != nil || !info.Mode().IsRegular() || info.Size() > design.MaxSize {
			continue
		}
		looked++
		data, err := os.ReadFile(filepath.Join(h.folder(), name))
		if err != nil {
			continue
		}
		if _, _, err := design.ReadMachine(name, data); err == nil {
			out = append(out, name)
		}
	}
	return out
}
