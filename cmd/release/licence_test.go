package main

import (
	"crypto/sha256"
	"encoding/json"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"
	"unicode/utf8"
)

// Every module of every program has a licence in the list, which its own file bears out,
// and the list has no other.
func TestLicences(t *testing.T) {
	root, err := moduleRoot()
	if err != nil {
		t.Fatal(err)
	}
	folders, err := moduleFolders(root)
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range ours() {
		if rel, err := filepath.Rel(root, folders[m]); err != nil || strings.HasPrefix(rel, "..") {
			t.Errorf("%s is said to be ours and lies in %s", m, folders[m])
		}
	}
	used := map[string]bool{}
	for _, at := range append(targets(), target{"js", "wasm"}) {
		modules, _, err := listed(root, "./cmd/slingloft", at)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range modules {
			used[m.path] = true
		}
	}
	for m := range used {
		l, ok := licences()[m]
		if !ok {
			t.Errorf("%s is linked and has no licence in the list: read it, then list it or do without", m)
			continue
		}
		texts, err := noticesIn(folders[m], l.files)
		if err != nil || !l.known(texts[0].text) {
			t.Errorf("%s: not %s (%v)", m, l.spdx, err)
		}
		for _, text := range texts {
			if !utf8.ValidString(text.text) {
				t.Errorf("%s: %s is not UTF-8", m, text.name)
			}
		}
	}
	for m := range licences() {
		if !used[m] {
			t.Errorf("%s is listed and not linked", m)
		}
	}
}

// The texts of an archive name nothing that only the sources have, and what they link to
// is there.
func TestTexts(t *testing.T) {
	root, err := moduleRoot()
	if err != nil {
		t.Fatal(err)
	}
	files, err := texts(root)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, f := range files {
		names = append(names, f.name)
	}
	for _, f := range files {
		if !strings.HasSuffix(f.name, ".md") {
			continue
		}
		for _, link := range strings.Split(string(f.content), "](")[1:] {
			to, _, _ := strings.Cut(strings.FieldsFunc(link, func(r rune) bool { return r == ')' })[0], "#")
			if to != "" && !strings.Contains(to, "://") && !slices.Contains(names, to) {
				t.Errorf("%s: there is no %s", f.name, to)
			}
		}
		if f.name == "README.md" && !strings.Contains(string(f.content), "THIRD-PARTY-NOTICES") {
			t.Error("the README does not say how the program is installed")
		}
	}
}

// Notices hold every licence in full, and the bill names each part once, says how each is
// linked, and has the same bytes each time.
func TestNoticesAndBill(t *testing.T) {
	root, err := moduleRoot()
	if err != nil {
		t.Fatal(err)
	}
	golang, err := library(root, runtime.Version())
	if err != nil {
		t.Fatal(err)
	}
	some := []part{golang, {"example.org/x", "v1.0.0", "MIT", []notice{{"LICENSE", "line one\r\nline two\n"}}}}
	text := string(notices(some))
	if !strings.Contains(text, "line one\nline two\n") || !strings.Contains(text, strings.TrimSpace(golang.texts[0].text)) {
		t.Error("a licence is not in the notices")
	}
	data, err := bill("x-1", []byte("program"), time.Unix(1e9, 0), some)
	if err != nil {
		t.Fatal(err)
	}
	var doc spdxDocument
	if err := json.Unmarshal(data, &doc); err != nil {
		t.Fatal(err)
	}
	ids := map[string]bool{doc.ID: true}
	for _, p := range doc.Packages {
		if ids[p.ID] {
			t.Errorf("%s twice", p.ID)
		}
		ids[p.ID] = true
	}
	if len(doc.Packages) != 3 || len(doc.Relationships) != 3 || doc.Creation.Created != "2001-09-09T01:46:40Z" {
		t.Errorf("%s", data)
	}
	for _, r := range doc.Relationships {
		if !ids[r.From] || !ids[r.To] {
			t.Errorf("%+v leads nowhere", r)
		}
	}
	if id := uuid(sha256.Sum256(nil)); id != "e3b0c442-98fc-8c14-9afb-f4c8996fb924" { // by hand from the digest of nothing
		t.Error(id)
	}
}
