package pdf

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"fmt"
	"maps"
	"path"
	"slices"
	"strconv"
	"strings"

	"slingloft/export"
)

// faults compares every object that a viewer can reach, what is painted on each page
// included, and what stands behind the end.
func faults(got, due []byte) ([]export.Note, error) {
	a, err := looksOf(got)
	if err != nil {
		return nil, err
	}
	b, err := looksOf(due)
	if err != nil {
		return nil, err
	}
	out := export.LookFaults(a.looks, b.looks)
	for _, way := range slices.Sorted(maps.Keys(b.painted)) {
		for _, fault := range export.StepFaults(a.painted[way], b.painted[way]) {
			out = append(out, export.Tell(export.InContent, way, fault))
		}
	}
	return out, nil
}

// judge takes down all objects of a file.
type judge struct {
	*file
	looks   export.Looks
	painted map[string][]export.Step // by the way to a content
	seen    map[ref]string
	left    int // objects that may still be taken down
}

func looksOf(data []byte) (*judge, error) {
	f, err := open(bytes.NewReader(data))
	if err != nil {
		return nil, export.Refuse(export.InPDF, err)
	}
	j := &judge{f, export.Looks{}, map[string][]export.Step{}, map[ref]string{}, maxObjects}
	for _, key := range []name{"Root", "Info", "Encrypt"} {
		if v, ok := f.trailer[key]; ok {
			if err := j.object(string(key), v, 0); err != nil {
				return nil, export.Refuse(export.AtPDFKey, key, err)
			}
		}
	}
	const end = "%%EOF"
	if at := bytes.LastIndex(data, []byte(end)); at >= 0 {
		if rest := bytes.TrimSpace(data[at+len(end):]); len(rest) > 0 {
			j.looks.Add("text behind the end", export.Properties{"text": string(rest[:min(len(rest), 40)])})
		}
	}
	return j, nil
}

// object takes down what v is or refers to, under the way that leads to it.
func (j *judge) object(way string, v any, depth int) error {
	if j.left--; j.left < 0 || depth > maxNesting {
		return export.Refuse(export.TooManyObjects)
	}
	r, isRef := v.(ref)
	if isRef {
		if first, ok := j.seen[r]; ok {
			j.looks.Add(way, export.Properties{"value": "as " + first})
			return nil
		}
		j.seen[r] = way
		var err error
		if v, err = j.get(v); err != nil {
			return err
		}
	}
	switch v := v.(type) {
	case dict:
		for _, key := range slices.Sorted(maps.Keys(v)) {
			if key == "Length" {
				continue
			}
			if err := j.object(way+"/"+string(key), v[key], depth+1); err != nil {
				return err
			}
		}
		if _, packed := v["Length"]; packed && isRef {
			content, err := j.stream(r)
			if err != nil {
				return err
			}
			if path.Base(way) == "Contents" {
				j.looks.Add(way, nil)
				j.painted[way], err = painting(content)
				return err
			}
			j.looks.Add(way, export.Properties{"content": fmt.Sprintf("of %d bytes, %x", len(content), sha256.Sum256(content))[:40]})
		}
	case array:
		for i, e := range v {
			if err := j.object(way+"/"+strconv.Itoa(i+1), e, depth+1); err != nil {
				return err
			}
		}
	case []byte:
		j.looks.Add(way, export.Properties{"value": "(" + text(v) + ")"})
	default:
		j.looks.Add(way, export.Properties{"value": fmt.Sprint(v)})
	}
	return nil
}

// painting returns all that a page's content does but for the paths that are drawn,
// which Read gives back: colours, widths, states, clips, layers and names.
func painting(content []byte) ([]export.Step, error) {
	l := &lexer{text: content}
	var out []export.Step
	var args []string
	first := 0            // step of the path that is being made
	line, counted := 1, 0 // of the content up to there
	for {
		v, err := l.next()
		if errors.Is(err, errEnd) {
			return out, nil
		}
		if err != nil {
			return nil, err
		}
		op, ok := v.(keyword)
		if !ok {
			if args = append(args, operand(v)); len(args) > maxArgs {
				return nil, export.Refuse(export.TooManyOperands)
			}
			continue
		}
		does := strings.TrimSpace(strings.Join(args, " ") + " " + string(op))
		args = args[:0]
		line, counted = line+bytes.Count(content[counted:l.pos], []byte("\n")), l.pos
		switch op {
		case "S", "s": // a path that is drawn; in other ways only where that is due
			out = append(out[:first], export.Step{Line: line, Does: "S"})
		default:
			out = append(out, export.Step{Line: line, Does: does})
		}
		if op != "m" && op != "l" && op != "h" && op != "c" {
			first = len(out)
		}
	}
}

// operand returns an operand in one way of writing it.
func operand(v any) string {
	switch v := v.(type) {
	case float64:
		return strconv.FormatFloat(v, 'f', -1, 64)
	case []byte:
		return "(" + text(v) + ")"
	case dict:
		var out []string
		for _, key := range slices.Sorted(maps.Keys(v)) {
			out = append(out, "/"+string(key)+" "+operand(v[key]))
		}
		return "<<" + strings.Join(out, " ") + ">>"
	}
	return fmt.Sprint(v)
}
