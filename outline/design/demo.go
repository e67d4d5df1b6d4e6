package design

import _ "embed"

//go:embed demo.toml
var demo string

// Demo returns the name and the text of the built-in design, an invented example.
func Demo() (name string, data []byte) { return "demo.toml", []byte(demo) }
