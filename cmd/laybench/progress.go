package main

import (
	"fmt"
	"os"

	"slingloft/nest"
)

// ticker returns a function that shows the best lay so far on one line of f, nil
// if f is not a terminal.
func ticker(f *os.File, name string) func(nest.Progress) {
	if info, err := f.Stat(); err != nil || info.Mode()&os.ModeCharDevice == 0 {
		return nil
	}
	return func(p nest.Progress) {
		fmt.Fprintf(f, "%s: length %.4f, density %.2f %%, %.0f s \r", name, p.Length, 100*p.Density, p.Elapsed.Seconds())
	}
}
