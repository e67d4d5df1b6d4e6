package command_test

import (
	"archive/zip"
	"bufio"
	"bytes"
	"context"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/command"
)

// What the page hands out is what the commands write, byte for byte, and it proves it.
func TestPageFiles(t *testing.T) {
	folder := t.TempDir()
	data, err := os.ReadFile("../../../testdata/design/small.toml")
	if err != nil {
		t.Fatal(err)
	}
	design := filepath.Join(folder, "bed.toml")
	if err := os.WriteFile(design, data, 0o644); err != nil {
		t.Fatal(err)
	}
	ask := served(t, design)
	made := ask("files", []byte(`{"want":"cut","as":["svg","hpgl"]}`))
	out := filepath.Join(folder, "bed-files")
	var notice bytes.Buffer
	if code := command.Run(t.Context(), []string{"cut", design, "--out", out, "--as", "svg,hpgl"}, command.Streams{Out: &notice, Err: &notice}); code != command.Done {
		t.Fatal(notice.String())
	}
	z, err := zip.NewReader(bytes.NewReader(made), int64(len(made)))
	if err != nil {
		t.Fatalf("%v: %.200s", err, made)
	}
	entries, err := os.ReadDir(out)
	if err != nil || len(entries) != len(z.File) {
		t.Fatalf("%d files in the zip, %d in the folder, %v", len(z.File), len(entries), err)
	}
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		got, _ := io.ReadAll(r)
		want, err := os.ReadFile(filepath.Join(out, f.Name))
		if err != nil || !bytes.Equal(got, want) {
			t.Errorf("%s differs: %v", f.Name, err)
		}
	}
	for want, args := range map[string][]string{"figures": {"figure", design, "--json"}, "materials": {"figure", design, "--materials"}} {
		var own bytes.Buffer
		command.Run(t.Context(), args, command.Streams{Out: &own, Err: io.Discard})
		if !bytes.Equal(ask("files", []byte(`{"want":"`+want+`"}`)), own.Bytes()) {
			t.Errorf("%s differ", want)
		}
	}
	head := `[{"name":"bed.zip","size":` + strconv.Itoa(len(made)) + "}]\n"
	if notice := string(ask("prove", append([]byte(head), made...))); !strings.Contains(notice, "agree") {
		t.Errorf("it proves: %s", notice)
	}
}

// served runs watch, and returns what asks as its page does.
func served(t *testing.T, design string) func(what string, body []byte) []byte {
	t.Helper()
	ctx, stop := context.WithCancel(context.Background())
	r, w := io.Pipe()
	done := make(chan int, 1)
	go func() {
		done <- command.Run(ctx, []string{"watch", design, "--addr", "127.0.0.1:0"}, command.Streams{Out: w, Err: io.Discard})
	}()
	t.Cleanup(func() {
		stop()
		if code := <-done; code != command.Done {
			t.Errorf("watch ends with %d", code)
		}
	})
	line, err := bufio.NewReader(r).ReadString('\n')
	if err != nil {
		t.Fatal(err)
	}
	base, token, _ := strings.Cut(strings.TrimSpace(line), "#")
	return func(what string, body []byte) []byte {
		t.Helper()
		q, err := http.NewRequest("POST", base+"ask/"+what, bytes.NewReader(body))
		if err != nil {
			t.Fatal(err)
		}
		q.Header.Set("Authorization", "Bearer "+token)
		q.Header.Set("Origin", strings.TrimSuffix(base, "/"))
		answer, err := http.DefaultClient.Do(q)
		if err != nil {
			t.Fatal(err)
		}
		defer answer.Body.Close()
		out, err := io.ReadAll(answer.Body)
		if err != nil || answer.StatusCode != http.StatusOK {
			t.Fatalf("%s: %d %s, %v", what, answer.StatusCode, out, err)
		}
		return out
	}
}
