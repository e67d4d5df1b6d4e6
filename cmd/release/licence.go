package main

import "strings"

// licence is what a module says of how it may be given on.
type licence struct {
	spdx  string   // by SPDX's list, what we conclude
	files []string // that are given on with it, from the module's folder; a folder stands for all in it
	says  string   // what the first file says, by which the licence is known
}

// Phrases by which a licence is known.
const (
	mit      = "Permission is hereby granted, free of charge"
	bsd      = "Redistribution and use in source and binary forms"
	freetype = "The FreeType License"
	either   = "SPDX-License-Identifier: Unlicense OR BSD-3-Clause"
)

// ours are modules that go.mod replaces by code of this project.
func ours() []string {
	return []string{"github.com/benoitkugler/textprocessing", "github.com/srwiley/scanx"}
}

// licences returns the licence of every module that a program may hold. What is not
// listed is not given away.
func licences() map[string]licence {
	golang := licence{"BSD-3-Clause", []string{"LICENSE", "PATENTS"}, bsd}
	return map[string]licence{
		// The fonts themselves are under the second.
		"codeberg.org/go-fonts/liberation": {"BSD-3-Clause AND OFL-1.1", []string{"LICENSE", "LICENSE-SIL"}, bsd},
		"codeberg.org/go-pdf/fpdf":         {"MIT", []string{"LICENSE"}, mit},
		"github.com/ByteArena/poly2tri-go": {"BSD-3-Clause", []string{"LICENSE"}, bsd},
		"github.com/andybalholm/brotli":    {"MIT", []string{"LICENSE"}, mit},
		"github.com/beevik/etree":          {"BSD-2-Clause", []string{"LICENSE"}, bsd},
		"github.com/go-text/typesetting":   {"Unlicense OR BSD-3-Clause", []string{"LICENSE"}, either},
		// Of two to choose from; the other one is the GPL.
		"github.com/golang/freetype":      {"FTL", []string{"LICENSE", "licenses/ftl.txt", "AUTHORS"}, freetype},
		"github.com/pelletier/go-toml/v2": {"MIT", []string{"LICENSE"}, mit},
		"github.com/spf13/pflag":          {"BSD-3-Clause", []string{"LICENSE"}, bsd},
		"github.com/tdewolff/canvas":      {"MIT", []string{"LICENSE.md"}, mit},
		"github.com/tdewolff/font":        {"MIT", []string{"LICENSE.md"}, mit},
		"github.com/tdewolff/minify/v2":   {"MIT", []string{"LICENSE"}, mit},
		"github.com/tdewolff/parse/v2":    {"MIT", []string{"LICENSE.md"}, mit},
		"golang.org/x/image":              golang,
		"golang.org/x/net":                golang,
		"golang.org/x/sys":                golang,
		"golang.org/x/text":               golang,
		"gonum.org/v1/gonum":              {"BSD-3-Clause", []string{"LICENSE", "AUTHORS", "THIRD_PARTY_LICENSES"}, bsd},
	}
}

// known reports whether the first file of a licence says what it should.
func (l licence) known(text string) bool {
	return strings.Contains(strings.Join(strings.Fields(text), " "), l.says)
}
