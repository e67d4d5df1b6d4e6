package command_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

var folders = flag.Int("folders", 3, "how many untouched folders are proved, of all kinds from 40 on")

// Folders that nobody touched agree, of every format, scale, paper and machine.
func TestUntouchedFoldersAgree(t *testing.T) {
	small := filepath.Join("..", "..", "..", "testdata", "design", "small.toml")
	machines := []string{"", machineOf("laser", ""), machineOf("router", "for = \"board\"\ncutter = \"3 mm\"\nlead = \"4 mm\"\nplunge = \"300 mm/min\"\nsafe_height = \"5 mm\"\nspin_up = 2\nthrough = \"0.5 mm\"\ntabs = 2\ntab_width = \"3 mm\"\ntab_height = \"1 mm\""),
		machineOf("laser", "fields = true\nwidth = \"900 mm\"\nkerf = \"0.2 mm\""),
		machineOf("laser", "x_left = true\nswap_axes = true\norigin = \"lower-right\"\narcs = \"0.02 mm\"\nthin = \"0.02 mm\"")}
	formats := []string{"svg,dxf", "pdf,png", "hpgl,pattern", "gcode", "svg,dxf,pdf,hpgl,png,pattern"}
	scales := []string{"1:1", "1:5"}
	n := 0
	for turn := 0; n < *folders; turn++ {
		scale, machine := scales[turn%2], machines[turn/2%len(machines)]
		format, design := formats[turn%len(formats)], []string{small, inches, ""}[turn/len(formats)%3]
		if format == "gcode" && machine == "" {
			continue // no jobs
		}
		if format == "gcode" {
			scale = "1:1" // openings drawn small are too narrow for a cutter
		}
		paper := []string{"", "a4", "letter"}[turn%3]
		n++
		t.Run(fmt.Sprintf("%d", turn), func(t *testing.T) {
			folder := t.TempDir()
			args := []string{"cut", "--as", format, "--scale", scale, "--out", folder}
			if design != "" {
				args = append(args, design)
			}
			if machine != "" {
				file := filepath.Join(t.TempDir(), "machine.toml")
				if err := os.WriteFile(file, []byte(machine), 0o644); err != nil {
					t.Fatal(err)
				}
				args = append(args, "--machine", file)
			}
			if paper != "" {
				args = append(args, "--paper", paper)
			}
			written := strings.Count(output(t, args...), "\n")
			notice := output(t, "prove", folder)
			if strings.Count(notice, ": agrees") != written || strings.Contains(notice, "changed") {
				t.Errorf("%v: of %d files\n%s", args, written, notice)
			}
		})
	}
}

// machineOf returns the settings of an invented machine that cuts outlines and openings.
func machineOf(tool, more string) string {
	text := "[machine]\ntool = \"" + tool + "\"\n" + more + "\n"
	for _, work := range []string{"cut-inside", "cut-outline"} {
		text += "\n[[machine.job]]\nwork = \"" + work + "\"\nfeed = \"900 mm/min\"\npower = 700\n"
		if tool == "router" {
			text += "passes = 2\n"
		}
	}
	return text
}
