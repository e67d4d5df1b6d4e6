package main

import (
	"archive/tar"
	"archive/zip"
	"bytes"
	"compress/gzip"
	"flag"
	"io"
	"os"
	"path/filepath"
	"testing"
)

var long = flag.Bool("long", false, "build every target twice")

func TestPacked(t *testing.T) {
	files := []packed{{"slingloft", []byte("program"), true}, {"LICENSE", []byte("text"), false}}
	data, err := tarred("x-1", files)
	if err != nil {
		t.Fatal(err)
	}
	z, err := gzip.NewReader(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	r := tar.NewReader(z)
	for _, f := range files {
		h, err := r.Next()
		if err != nil {
			t.Fatal(err)
		}
		text, _ := io.ReadAll(r)
		if h.Name != "x-1/"+f.name || h.Mode != f.mode() || string(text) != string(f.content) || h.ModTime.Year() != 1980 {
			t.Errorf("tar: %+v holding %q", h, text)
		}
	}
	if data, err = zipped("x-1", files); err != nil {
		t.Fatal(err)
	}
	a, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	for i, f := range files {
		one, err := a.File[i].Open()
		if err != nil {
			t.Fatal(err)
		}
		text, _ := io.ReadAll(one)
		if a.File[i].Name != "x-1/"+f.name || string(text) != string(f.content) || a.File[i].Modified.Year() != 1980 {
			t.Errorf("zip: %s of %v holding %q", a.File[i].Name, a.File[i].Modified, text)
		}
	}
}

func TestRefused(t *testing.T) {
	if err := release(t.TempDir(), "../x", ""); err == nil {
		t.Error("a version with a slash was taken")
	}
	if err := release(t.TempDir(), "x", "plan9/none"); err == nil {
		t.Error("an unknown target was taken")
	}
}

// Two builds give the same bytes.
func TestReleaseTwice(t *testing.T) {
	if !*long {
		t.Skip("no -long")
	}
	a, b := t.TempDir(), t.TempDir()
	for _, folder := range []string{a, b} {
		if err := release(folder, "test", ""); err != nil {
			t.Fatal(err)
		}
	}
	entries, err := os.ReadDir(a)
	if err != nil || len(entries) != len(targets())+2 {
		t.Fatalf("%d files, error %v", len(entries), err)
	}
	for _, e := range entries {
		x, _ := os.ReadFile(filepath.Join(a, e.Name()))
		y, _ := os.ReadFile(filepath.Join(b, e.Name()))
		if !bytes.Equal(x, y) {
			t.Errorf("%s differs", e.Name())
		}
	}
}
