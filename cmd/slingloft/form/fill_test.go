package form

import (
	"bytes"
	"html/template"
	"strings"
	"testing"
)

// The page is filled in as html/template does it, every byte but the sign for a plus.
func TestFilled(t *testing.T) {
	words := English()
	words.Title = `<i>"Names" & 'signs'</i>`
	data, err := dataOf(words)
	if err != nil {
		t.Fatal(err)
	}
	data["Style"], data["Script"], data["Program"] = raw("a>b{}"), raw("1<2"), ""
	got := filled(document, data)
	data["Style"], data["Script"], data["Said"] = template.CSS("a>b{}"), template.JS("1<2"), words.Said
	theirs, err := template.New("page").Parse(document)
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := theirs.Execute(&b, data); err != nil {
		t.Fatal(err)
	}
	want := strings.ReplaceAll(b.String(), "&#43;", "+")
	for i := range got {
		if i >= len(want) || got[i] != want[i] {
			t.Fatalf("after %d bytes: %.100s, want %.100s", i, got[i:], want[min(i, len(want)):])
		}
	}
	if len(got) != len(want) {
		t.Errorf("%d bytes, want %d", len(got), len(want))
	}
}

func TestFilledFaults(t *testing.T) {
	for _, document := range []string{"{{.No}}", "{{range .A}}{{.B}}{{end}}", "{{.A | not}}", "{{with .A}}{{end}}", "{{if}}", "{{le 1 2}}", "{{eq 1}}"} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%s was taken", document)
				}
			}()
			filled(document, map[string]any{"A": []int{1}})
		}()
	}
}
