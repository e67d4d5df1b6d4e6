package watch

import (
	"bytes"
	"net/http"
	"os"
	"path/filepath"
	"regexp"
	"strings"
)

// varied is a field with the values that it is to have in turn.
type varied struct {
	Field  string   `json:"field"`
	Values []string `json:"values"`
}

// told sends what a command tells of the design as it stands: of vary a page, of hang
// text.
func (h *handler) told(w http.ResponseWriter, r *http.Request, what string, q question) {
	h.inCopy(w, func(c copied) error { return h.toldOf(w, r, what, q, c) })
}

func (h *handler) toldOf(w http.ResponseWriter, r *http.Request, what string, q question, c copied) error {
	var args []string
	var page string // that the command writes; "": it tells on standard output
	var err error
	if what == "vary" {
		page = filepath.Join(c.folder, "vary", "vary.html")
		args, err = q.varying(c.design, page)
	} else {
		args, err = q.hanging(c.design)
	}
	if err != nil {
		return err
	}
	var product, messages bytes.Buffer
	h.run(r.Context(), append(args, c.args...), &product, &messages)
	made := product.Bytes()
	if page != "" {
		made, err = os.ReadFile(page)
	}
	if err != nil || len(made) == 0 {
		http.Error(w, c.clean(messages.String()), http.StatusUnprocessableEntity)
		return nil
	}
	w.Header().Set("Content-Type", "text/plain; charset=utf-8") // what the page takes in, not what is opened
	w.Write(made)
	return nil
}

// decimalComma is a comma that stands between digits.
var decimalComma = regexp.MustCompile(`(\d),(\d)`)

// varying returns the arguments that compare the design with other values. Between values
// the command has commas, so that a decimal one becomes a point.
func (q question) varying(design, page string) ([]string, error) {
	args := []string{"figure", design, "--chart", page}
	for _, a := range q.Vary {
		var values []string
		for _, v := range a.Values {
			v = decimalComma.ReplaceAllString(v, "$1.$2")
			if strings.ContainsAny(v, ",\n") {
				return nil, NoComparison
			}
			values = append(values, v)
		}
		args = append(args, "--vary="+a.Field+"="+strings.Join(values, ","))
	}
	return args, nil
}

// hanging returns the arguments that hang the cut as cloth.
func (q question) hanging(design string) ([]string, error) {
	args := []string{"hang", design}
	switch q.How {
	case "":
	case "sitting", "round":
		args = append(args, "--"+q.How)
	default:
		return nil, NoQuestion
	}
	if q.Guest != "" {
		args = append(args, "--guest="+q.Guest)
	}
	return args, nil
}
