package watch

import (
	"io"
	"net/http"
	"path/filepath"
	"slices"
	"strings"

	"slingloft/export/whole"
	"slingloft/outline/design"
)

// bring writes outlines of the maker's own, which were dropped onto the page, beside the
// design, under flat names and never over a file, and names them in the design. The body
// is as that of prove.
func (h *handler) bring(w http.ResponseWriter, r *http.Request) {
	if h.locked {
		http.Error(w, Locked.Error(), http.StatusForbidden)
		return
	}
	data, err := io.ReadAll(http.MaxBytesReader(w, r.Body, mostDropped))
	if err != nil {
		http.Error(w, TooManyDropped.Error(), http.StatusRequestEntityTooLarge)
		return
	}
	if err := eachDropped(data, mostBrought, h.brought); err != nil {
		http.Error(w, err.Error(), statusOf(err))
	}
}

// mostBrought bounds how many outlines are brought in at once: own choice.
const mostBrought = 20

// brought takes in one outline.
func (h *handler) brought(name string, data []byte) error {
	kind := strings.ToLower(filepath.Ext(name))
	if !slices.Contains([]string{".svg", ".dxf"}, kind) {
		return NoOutline
	}
	name, err := cleaned(strings.TrimSuffix(filepath.Base(strings.ReplaceAll(name, `\`, "/")), filepath.Ext(name)), kind)
	if err != nil {
		return err
	}
	beside, _, _ := h.desk.Snapshot()
	err = whole.Write(filepath.Join(filepath.Dir(beside), name), whole.Policy{}, func(w io.Writer) error {
		_, err := w.Write(data)
		return err
	})
	if err != nil {
		return err
	}
	return h.desk.Set([]design.Change{{Key: design.KeyExtra.Item(h.desk.State().Counts[string(design.KeyExtra)] + 1).In(design.KeyExtraFile.Name()), Value: name}}, 0)
}
