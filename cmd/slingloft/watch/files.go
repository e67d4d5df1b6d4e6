package watch

import (
	"archive/zip"
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"slingloft/export/format"
)

// A page has its files from the commands: the design as it stands is put into a folder of
// its own with all that it takes things from, the command is run there, and what it wrote
// is sent.

// copied is the design as it stands in a folder of its own, and the arguments that go
// with it.
type copied struct {
	folder, design string
	args           []string
}

// inCopy does something in a copy of the design as it stands, which is gone afterwards,
// and answers an error.
func (h *handler) inCopy(w http.ResponseWriter, do func(copied) error) {
	folder, err := os.MkdirTemp("", "slingloft-page-")
	if err != nil {
		http.Error(w, err.Error(), http.StatusInternalServerError)
		return
	}
	defer os.RemoveAll(folder)
	name, args, err := h.copyOf(folder)
	if err == nil {
		err = do(copied{folder, filepath.Join(folder, name), args})
	}
	if err != nil {
		http.Error(w, err.Error(), statusOf(err))
	}
}

// files sends what a command makes of the design as it stands: one file, or many as zip.
func (h *handler) files(w http.ResponseWriter, r *http.Request, q question) {
	h.inCopy(w, func(c copied) error { return h.filesOf(w, r, q, c) })
}

func (h *handler) filesOf(w http.ResponseWriter, r *http.Request, q question, c copied) error {
	stem := strings.TrimSuffix(filepath.Base(c.design), ".toml")
	out := filepath.Join(c.folder, stem+"-files")
	args, single, err := q.command(c.design, out)
	if err == nil && q.Machine != "" {
		c.args, err = h.withMachine(c.args, c.folder, q)
	}
	if err != nil {
		return err
	}
	args = append(args, c.args...)
	if q.Copies != 0 && q.Copies != 1 {
		args = append(args, "--copies", strconv.Itoa(q.Copies))
	}
	var product, messages bytes.Buffer
	code := h.run(r.Context(), args, &product, &messages)
	var made []byte
	file := stem + "-" + q.Want + ".zip"
	switch {
	case single == "-":
		made, file = product.Bytes(), stem+map[string]string{"figures": ".json", "materials": "-materials.csv"}[q.Want]
	case single != "":
		made, err = os.ReadFile(filepath.Join(out, single))
		file = single
	default:
		made, err = zipped(out)
	}
	if err != nil || len(made) == 0 {
		http.Error(w, c.clean(messages.String()), http.StatusUnprocessableEntity)
		return nil
	}
	w.Header().Set("Content-Type", "application/octet-stream")
	w.Header().Set("X-File-Name", file)
	w.Header().Set("X-Exit-Status", fmt.Sprint(code))
	w.Write(made)
	return nil
}

// clean takes the folder, which means nothing to anybody, out of messages.
func (c copied) clean(messages string) string {
	return strings.ReplaceAll(messages, c.folder+string(os.PathSeparator), "")
}

// command returns the arguments that make what is asked for, and the one file that comes
// of it: "-" for standard output, "" for a folder.
func (q question) command(design, out string) (args []string, single string, err error) {
	paper := func(args []string) []string {
		if q.Paper != "" {
			return append(args, "--paper", q.Paper)
		}
		return args
	}
	as := strings.Join(q.As, ",")
	for _, f := range q.As {
		if !slices.Contains(format.Names(), f) {
			return nil, "", NoSuchFiles
		}
	}
	switch q.Want {
	case "cut", "calibrate":
		args = []string{q.Want, design, "--out", out}
		if as != "" {
			args = append(args, "--as", as)
		}
		return paper(args), "", nil
	case "sheet":
		return []string{"sheet", design, "--out", filepath.Join(out, "build-sheet.html")}, "build-sheet.html", nil
	case "pdf":
		return paper([]string{"sheet", design, "--out", filepath.Join(out, "build-sheet.pdf")}), "build-sheet.pdf", nil
	case "shop":
		return paper([]string{"sheet", design, "--pages", "shop", "--out", filepath.Join(out, "shop-pages.pdf")}), "shop-pages.pdf", nil
	case "materials":
		return []string{"figure", design, "--materials"}, "-", nil
	case "figures":
		return []string{"figure", design, "--json"}, "-", nil
	}
	return nil, "", NoSuchFiles
}

// withMachine copies a machine's settings into a folder and returns the arguments with
// them.
func (h *handler) withMachine(args []string, folder string, q question) ([]string, error) {
	if !slices.Contains(h.machines(), q.Machine) || q.Want != "cut" && q.Want != "calibrate" {
		return nil, NoSuchFiles
	}
	data, err := os.ReadFile(filepath.Join(h.folder(), q.Machine))
	if err != nil {
		return nil, err
	}
	to := filepath.Join(folder, "machine", q.Machine)
	return append(args, "--machine", to), put(to, data)
}

// copyOf puts the design as it stands into a folder, with what it takes things from, and
// returns its name there and the arguments that go with it.
func (h *handler) copyOf(folder string) (name string, args []string, err error) {
	c := h.desk.Snapshot()
	if c.Shelf != "" {
		// Who started the program named it, so that it may lie anywhere.
		data, err := os.ReadFile(c.Shelf)
		if err != nil {
			return "", nil, err
		}
		to := filepath.Join(folder, "shelf", filepath.Base(c.Shelf))
		if err := put(to, data); err != nil {
			return "", nil, err
		}
		args = append(args, "--shelf", to)
	}
	from := filepath.Dir(c.Name)
	for _, f := range c.Beside {
		if err := copyBeside(from, f, folder); err != nil {
			return "", nil, err
		}
	}
	name = filepath.Base(c.Name)
	return name, args, put(filepath.Join(folder, name), c.Data)
}

// copyBeside copies a file that a design names into a folder, under the path that it has
// from the design's own.
func copyBeside(from, f, folder string) error {
	path := f
	if rel, err := filepath.Rel(from, f); err == nil && filepath.IsAbs(f) == filepath.IsAbs(from) && from != "." {
		if !strings.HasPrefix(rel, "..") {
			f = rel
		}
	} else if !filepath.IsAbs(f) {
		path = filepath.Join(from, f)
	}
	if !filepath.IsLocal(f) {
		return fmt.Errorf(English().File, f, LiesOutside)
	}
	data, err := os.ReadFile(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil // the command says so
	case err != nil:
		return err
	}
	return put(filepath.Join(folder, f), data)
}

// put writes a file for nobody else, and the folders that it lies in.
func put(path string, data []byte) error {
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return err
	}
	return os.WriteFile(path, data, 0o600)
}

// zipped returns a folder's files as one zip, the same bytes for the same files.
func zipped(folder string) ([]byte, error) {
	entries, err := os.ReadDir(folder) // sorted by name
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for _, e := range entries {
		data, err := os.ReadFile(filepath.Join(folder, e.Name()))
		if err != nil {
			return nil, err
		}
		w, err := z.CreateHeader(&zip.FileHeader{Name: e.Name(), Method: zip.Deflate, Modified: time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC)})
		if err != nil {
			return nil, err
		}
		if _, err := w.Write(data); err != nil {
			return nil, err
		}
	}
	err = z.Close()
	return b.Bytes(), err
}

// prove proves files that were dropped onto the page against the design as it stands. The
// body is a line of JSON with their names and sizes, and then the files.
func (h *handler) prove(w http.ResponseWriter, r *http.Request) {
	data, err := io.ReadAll(http.MaxBytesReader(w, r.Body, mostDropped))
	if err != nil {
		http.Error(w, TooManyDropped.Error(), http.StatusRequestEntityTooLarge)
		return
	}
	h.inCopy(w, func(c copied) error {
		dropped := filepath.Join(c.folder, "files")
		if err := unpacked(data, dropped); err != nil {
			http.Error(w, err.Error(), http.StatusBadRequest)
			return nil
		}
		var messages bytes.Buffer
		h.run(r.Context(), append([]string{"prove", c.design, dropped}, c.args...), &messages, &messages)
		w.Header().Set("Content-Type", "text/plain; charset=utf-8")
		io.WriteString(w, c.clean(messages.String()))
		return nil
	})
}

// mostFiles bounds how many files are proved at once: own choice.
const mostFiles = 500

// unpacked writes the files of a body into a folder, under flat names; those of a zip one
// by one.
func unpacked(data []byte, folder string) error {
	if err := os.Mkdir(folder, 0o700); err != nil {
		return err
	}
	return eachDropped(data, mostFiles, func(name string, one []byte) error { return unpack(name, one, folder) })
}

// eachDropped hands every file of a body on, in its order.
func eachDropped(data []byte, most int, take func(name string, data []byte) error) error {
	head, rest, ok := bytes.Cut(data, []byte("\n"))
	var files []struct {
		Name string `json:"name"`
		Size int    `json:"size"`
	}
	if !ok || json.Unmarshal(head, &files) != nil || len(files) > most {
		return NotWhole
	}
	for _, f := range files {
		if f.Size < 0 || f.Size > len(rest) {
			return NotWhole
		}
		if err := take(f.Name, rest[:f.Size]); err != nil {
			return err
		}
		rest = rest[f.Size:]
	}
	return nil
}

func unpack(name string, data []byte, folder string) error {
	if !strings.HasSuffix(name, ".zip") {
		return dropInto(folder, name, data)
	}
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil || len(z.File) > mostFiles {
		return NotWhole
	}
	left := int64(mostDropped)
	for _, f := range z.File {
		if strings.Contains(f.Name, "..") {
			return NotWhole
		}
		r, err := f.Open()
		if err != nil {
			return NotWhole
		}
		one, err := io.ReadAll(io.LimitReader(r, left+1))
		r.Close()
		if left -= int64(len(one)); err != nil || left < 0 {
			return NotWhole
		}
		if err := dropInto(folder, f.Name, one); err != nil {
			return err
		}
	}
	return nil
}

// dropInto writes one file, never over another and never elsewhere.
func dropInto(folder, name string, data []byte) error {
	name = filepath.Base(strings.ReplaceAll(name, `\`, "/"))
	if !filepath.IsLocal(name) || name == "." {
		return NotWhole
	}
	f, err := os.OpenFile(filepath.Join(folder, name), os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600)
	if err != nil {
		return NotWhole
	}
	defer f.Close()
	_, err = f.Write(data)
	return err
}
