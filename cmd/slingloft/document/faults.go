// Package document holds what the commands tell other programs: the types of their
// JSON documents, which are its schema too, and how a document is written.
//
// Lengths are mm. A document names files by their last part or as they were named on
// the command line, never by where they lie on the machine. Each has a version of its
// own, which rises when a name changes its meaning; names are added without it.
package document

import (
	"path/filepath"

	"slingloft/outline/design"
)

// FaultsVersion is the version of [Faults].
const FaultsVersion = 1

// Faults stand in place of a command's document where the design, or a file beside
// it, is at fault.
type Faults struct {
	Version int     `json:"version"`
	Status  int     `json:"status" doc:"exit status"`
	Faults  []Fault `json:"faults"`
}

// Fault is one thing wrong in a file.
type Fault struct {
	File    string `json:"file"`
	Line    int    `json:"line" doc:"from 1"`
	Column  int    `json:"column" doc:"from 1; a character, a tab counting as one"`
	Key     string `json:"key" doc:"in full, such as bed.span; empty where there is none"`
	Message string `json:"message" doc:"what was found"`
	Hint    string `json:"hint" doc:"what would do"`
}

// FaultsOf returns the document of a design's faults.
func FaultsOf(faults design.Faults, status int) Faults {
	out := Faults{Version: FaultsVersion, Status: status, Faults: []Fault{}}
	w := design.English()
	for _, f := range faults {
		out.Faults = append(out.Faults, Fault{Named(f.File), f.Line, f.Column, string(f.Key), w.Found(f.Found), w.Hint(f.Hint)})
	}
	return out
}

// Named returns the name of a file as a document has it: as it was given, or its
// last part where it says where the file lies on the machine.
func Named(path string) string {
	if filepath.IsAbs(path) {
		path = filepath.Base(path)
	}
	return filepath.ToSlash(path)
}
