package gcode

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"slingloft/export"
	"slingloft/export/readertest"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// A lean controller takes every program, hostile names and all, and no line is longer
// than it reads, comments counted.
func TestLeanControllersTakeIt(t *testing.T) {
	d := readertest.Drawing(t, 1, readertest.Hostile()...)
	for i, text := range readertest.Hostile() {
		d.Lines[i].Name = text
	}
	for _, tool := range design.Tools() {
		for _, controller := range []design.Dialect{design.Full, design.Lean} {
			s := settings(tool)
			s.Controller, s.Air, s.Dynamic, s.Example = controller, design.Flood, true, true
			s.Of.Name = "Sperrholz Lärche? 3 mm!"
			s.Header, s.Footer = []string{"G54"}, []string{"G0 X0 Y100"}
			program := programFor(t, d, s)
			for _, fault := range readertest.Lean(program) {
				t.Errorf("%s: %s", tool, fault)
			}
			for line := range strings.Lines(program) {
				if len(strings.TrimRight(line, "\n")) > design.MaxBlock {
					t.Errorf("%s: %d characters: %s", tool, len(line), line)
				}
			}
		}
	}
}

// What the settings say of the controller stands in the program, in its place.
func TestControllerWords(t *testing.T) {
	for _, row := range []struct {
		what string
		edit func(*Settings)
		want []string // lines or beginnings of lines, in this order
		none string   // beginning that no line has
	}{
		{"usual", func(*Settings) {}, []string{"G17 G21 G40 G49 G80 G90 G94", "G61", "M5", "( frame )", "M0", "M3 S", "G1 ", "M5", "M5", "G0 X0.0000 Y0.0000", "M2"}, "M1"},
		{"lean", func(s *Settings) { s.Controller = design.Lean }, []string{"G17 G21 G90 G94", "M5", "( frame )", "M0"}, "G61"},
		{"dynamic", func(s *Settings) { s.Dynamic = true }, []string{"M4 S800", "M5"}, "M3"},
		{"optional pause", func(s *Settings) { s.Pause = design.OptionalHalt }, []string{"( frame )", "M1", "M3 S"}, "M0"},
		{"no pause", func(s *Settings) { s.Pause = design.NoPause }, []string{"( frame )", "M3 S"}, "M0"},
		{"no frame", func(s *Settings) { s.Frame = false }, []string{"M5", "M3 S"}, "M0"},
		{"air", func(s *Settings) { s.Air = design.Flood }, []string{"M0", "M8", "M3 S", "M5", "M5", "M9", "G0 X0.0000 Y0.0000"}, "M7"},
		{"mist", func(s *Settings) { s.Air = design.Mist }, []string{"M0", "M7", "M3 S", "M9"}, "M8"},
		{"own lines", func(s *Settings) { s.Header, s.Footer = []string{"G54"}, []string{"G0 X0 Y300"} },
			[]string{"( own lines )", "G54", "( end of own lines )", "G17 G21", "M5", "M3 S", "G0 X0.0000 Y0.0000", "( own lines )", "G0 X0 Y300", "( end of own lines )", "M2"}, "%"},
	} {
		s := settings(design.Laser)
		row.edit(&s)
		rest := strings.Split(programFor(t, readertest.Square(), s), "\n")
		for _, line := range rest {
			if strings.HasPrefix(line, row.none) {
				t.Errorf("%s: %s", row.what, line)
			}
		}
		for _, want := range row.want {
			for len(rest) > 0 && !strings.HasPrefix(rest[0], want) {
				rest = rest[1:]
			}
			if len(rest) == 0 {
				t.Errorf("%s: no %q in its place", row.what, want)
				break
			}
			rest = rest[1:]
		}
	}
}

// Lines of the owner's own are not read, and not passed where they are changed.
func TestOwnLines(t *testing.T) {
	s := settings(design.Laser)
	s.Header = []string{"G54", "M64 P0"}
	program := programFor(t, readertest.Square(), s)
	if _, err := Read(strings.NewReader(program)); err != nil {
		t.Fatal(err)
	}
	if got, err := faults([]byte(program), []byte(program)); err != nil || len(got) > 0 {
		t.Errorf("unchanged: %v, %v", got, err)
	}
	for _, edit := range [][2]string{{"M64 P0", "M64 P1"}, {"( end of own lines )", "M3 S900\n( end of own lines )"}, {"G54\n", ""},
		{"M2\n", "( own lines )\nM3 S900\nM2\n"}} {
		if got, err := faults([]byte(strings.Replace(program, edit[0], edit[1], 1)), []byte(program)); err != nil || len(got) == 0 {
			t.Errorf("%q for %q: %v, %v", edit[1], edit[0], got, err)
		}
	}
}

// What a tool has to know and nobody gave is no program, but a lack at its key.
func TestToolsLacks(t *testing.T) {
	router, knife := settings(design.Router), settings(design.Knife)
	for _, row := range []struct {
		what string
		from Settings
		edit func(*Settings)
		want design.Key // "": a program
	}{
		{"router", router, func(*Settings) {}, ""},
		{"cutter", router, func(s *Settings) { s.Cutter = 0 }, design.KeyMachineCutter},
		{"thickness", router, func(s *Settings) { s.Of.Thickness = 0 }, design.KeySheetThickness},
		{"safe height", router, func(s *Settings) { s.Safe = 0 }, design.KeyMachineSafeHeight},
		{"time to speed", router, func(s *Settings) { s.SpinUp = 0 }, design.KeyMachineSpinUp},
		{"tab width", router, func(s *Settings) { s.TabWidth = 0 }, design.KeyMachineTabWidth},
		{"tab height", router, func(s *Settings) { s.TabHeight = 0 }, design.KeyMachineTabHeight},
		{"neither depth nor through", router, func(s *Settings) { s.Jobs[piece.CutOut].Depth = 0 }, design.KeyMachineThrough},
		{"through", router, func(s *Settings) { s.Jobs[piece.CutOut].Depth, s.Through = 0, 0.4 }, ""},
		{"stops short", router, func(s *Settings) { s.Of.Thickness = 3.2 }, design.KeyMachineJob},
		{"marks go through", router, func(s *Settings) { s.Jobs[piece.Score].Depth = 2.8 }, design.KeyMachineJob},
		{"knife", knife, func(*Settings) {}, ""},
		{"trail", knife, func(s *Settings) { s.Trail = 0 }, design.KeyMachineTrail},
		{"knife stops short", knife, func(s *Settings) { s.Of.Thickness = 0.7 }, design.KeyMachineJob},
		{"a knife may not know the thickness", knife, func(s *Settings) { s.Of.Thickness = 0 }, ""},
		{"pen", settings(design.Pen), func(*Settings) {}, ""},
		{"height of a pen", settings(design.Pen), func(s *Settings) { s.Safe = 0 }, design.KeyMachineSafeHeight},
	} {
		s := row.from
		s.Jobs = append([]Job{}, s.Jobs...)
		row.edit(&s)
		var b bytes.Buffer
		var lacks UnsetError
		err := WriteFor(&b, readertest.Square(), export.Options{}, s)
		if errors.As(err, &lacks) != (row.want != "") || row.want != "" && (lacks[0].Key != row.want || b.Len() > 0) {
			t.Errorf("%s: %v, want %q", row.what, err, row.want)
		}
		if row.want == "" && err != nil {
			t.Errorf("%s: %v", row.what, err)
		}
	}
}

// A sheet is cut as deep as it is thick and what is set to go below it.
func TestThrough(t *testing.T) {
	s := settings(design.Router)
	s.Of.Thickness, s.Through = 6.35, 0.5
	s.Jobs[piece.CutOut].Depth, s.Jobs[piece.CutInside].Depth = 0, 0
	if program := programFor(t, readertest.Square(), s); !strings.Contains(program, "G1 Z-6.8500 ") || strings.Contains(program, "Z-6.3") {
		t.Error(program)
	}
}
