package watch_test

import (
	"archive/zip"
	"bytes"
	"context"
	"encoding/json"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/command"
	"slingloft/cmd/slingloft/watch"
)

// asked returns status and body of an answer.
func asked(a *watch.Alone, op, body string) (int, string) {
	w := httptest.NewRecorder()
	a.ServeHTTP(w, httptest.NewRequest(http.MethodPost, "/ask/"+op, strings.NewReader(body)))
	return w.Code, w.Body.String()
}

// dropped is files as a page sends them: names and contents in turn.
func dropped(files ...string) string {
	type head struct {
		Name string `json:"name"`
		Size int    `json:"size"`
	}
	var heads []head
	var bodies strings.Builder
	for i := 0; i < len(files); i += 2 {
		heads = append(heads, head{files[i], len(files[i+1])})
		bodies.WriteString(files[i+1])
	}
	first, _ := json.Marshal(heads)
	return string(first) + "\n" + bodies.String()
}

// archived is files as a zip holds them.
func archived(t *testing.T, files ...string) string {
	t.Helper()
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for i := 0; i < len(files); i += 2 {
		w, err := z.Create(files[i])
		if err != nil {
			t.Fatal(err)
		}
		io.WriteString(w, files[i+1])
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// TestAlone opens a design with its shelf in a page without a server, changes it, and
// packs it: what is packed opens again as it stood.
func TestAlone(t *testing.T) {
	design := small(t, "1500 mm")
	t.Chdir(t.TempDir())
	a := watch.NewAlone(func(ctx context.Context, args []string, out, told io.Writer) int {
		return command.Run(ctx, args, command.Streams{Out: out, Err: told})
	})
	const shelf = "[cord.\"mine\"]\ndiameter = \"3 mm\"\nstrength = \"12 kN\"\n"
	for _, c := range []struct {
		body string
		want int
	}{
		{dropped("readme.txt", "no design"), http.StatusUnprocessableEntity},
		{dropped("x.zip", archived(t, "../x.toml", design)), http.StatusBadRequest},
		{dropped("x.zip", "no zip"), http.StatusBadRequest},
		{"nothing", http.StatusBadRequest},
		{dropped("a-shelf.toml", shelf, "bed.toml", design), http.StatusOK},
	} {
		if code, text := asked(a, "open", c.body); code != c.want {
			t.Errorf("%.60s: %d, want %d: %s", c.body, code, c.want, text)
		}
	}
	for _, q := range []struct{ op, body string }{
		{"set", `{"set": [{"field": "bed.span", "value": "1510 mm"}, {"field": "shelf", "value": "a-shelf.toml"}]}`}, {"save", `{"digest": ""}`},
	} {
		if code, text := asked(a, q.op, q.body); code != http.StatusOK && q.op == "set" {
			t.Fatalf("%s: %d %s", q.op, code, text)
		}
	}
	code, first := asked(a, "pack", "{}")
	if code != http.StatusOK {
		t.Fatal(first)
	}
	if code, text := asked(a, "open", dropped("all.zip", first)); code != http.StatusOK {
		t.Fatal(text)
	}
	var now struct {
		File   string
		Values map[string]string
	}
	_, text := asked(a, "state", "{}")
	if err := json.Unmarshal([]byte(text), &now); err != nil || now.File != "bed.toml" || now.Values["bed.span"] != "1510 mm" || now.Values["shelf"] != "a-shelf.toml" {
		t.Errorf("%v %+v", err, now)
	}
	if code, again := asked(a, "pack", "{}"); code != http.StatusOK || again != first {
		t.Errorf("packed anew: %d, %d bytes, want the %d of before", code, len(again), len(first))
	}
	if code, _ := asked(a, "new", "{}"); code != http.StatusOK {
		t.Error("no new design")
	}
	if code, _ := asked(a, "pack", "{}"); code != http.StatusNotFound {
		t.Errorf("nothing is packed with status %d", code)
	}
}
