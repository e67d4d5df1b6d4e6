package main

import (
	"bytes"
	"compress/gzip"
	"encoding/base64"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"slingloft/cmd/slingloft/form"
)

// pageName is the page that carries the program, for whoever can install nothing.
const pageName = "slingloft-page.html"

// onePage builds the page that carries the program.
func onePage(root string) ([]byte, error) {
	const command = "./cmd/inpage"
	browser := target{"js", "wasm"}
	program, err := browser.buildOf(root, command)
	if err != nil {
		return nil, err
	}
	modules, golang, err := listed(root, command, browser)
	if err != nil {
		return nil, err
	}
	others, err := parts(root, modules, golang)
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	z, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return nil, err
	}
	if _, err := z.Write(program); err != nil {
		return nil, err
	}
	if err := z.Close(); err != nil {
		return nil, err
	}
	runtime, err := os.ReadFile(filepath.Join(goRoot(root), "lib", "wasm", "wasm_exec.js"))
	if err != nil {
		return nil, err
	}
	engine, err := os.ReadFile(filepath.Join(root, "cmd", "inpage", "engine.js"))
	if err != nil {
		return nil, err
	}
	p, err := form.Alone(form.English(), form.Carried{
		Program: base64.StdEncoding.EncodeToString(b.Bytes()), Runtime: string(runtime), Engine: string(engine), Notices: string(notices(others)),
	})
	return p.HTML, err
}

// goRoot returns where Go is installed that builds the sources.
func goRoot(root string) string {
	cmd := exec.Command("go", "env", "GOROOT")
	cmd.Dir = root
	out, _ := cmd.Output() // without it nothing is found there, which is said
	return strings.TrimSpace(string(out))
}
