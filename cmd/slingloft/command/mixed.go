package command

import (
	"os"
	"path/filepath"
	"slices"
	"strings"

	"slingloft/export/format"
	"slingloft/export/whole"
	"slingloft/outline/design"
)

// knownIn returns what a folder's record says of its files, by their names.
func knownIn(folder string) map[string]whole.Known {
	out := map[string]whole.Known{}
	for _, k := range whole.ReadRecord(folder) {
		out[k.Name] = k
	}
	return out
}

// about says how a run's files were cut.
func (k kept) about(folder string) string {
	if k.Machine != "" {
		return "cut at " + k.At + " for " + to(folder, k.Machine)
	}
	return "cut at " + k.At + " for the design's machine"
}

// cause says why files that nobody changed may not be as they should be now.
func (r run) cause(now design.Machine) string {
	if r.kept == nil {
		return ""
	}
	if r.kept.Settings != "" && r.kept.Settings != settingsOf(now) {
		return "the machine is set otherwise now"
	}
	return "what it was made from, or by, is another now"
}

// mixed says which sheets in a folder do not belong together, for they were cut at
// another scale or for another machine than others there, if any. as are the
// formats that count, or "" for all.
func mixed(folder, as string) (told, bool) {
	type kind struct{ at, settings string }
	var kinds []kind
	var first, about []string
	formats, err := formatsIn(folder, as)
	if err != nil {
		return told{}, false
	}
	for _, k := range whole.ReadRecord(folder) {
		sheet, ok := sheetNamed(k.Name)
		was, err := readKept(k.Note)
		if _, gone := os.Lstat(filepath.Join(folder, k.Name)); !ok || k.Run == 0 || err != nil || gone != nil || was.At == "" ||
			!slices.Contains(formats, sheet.format) {
			continue
		}
		if is := (kind{was.At, was.Settings}); !slices.Contains(kinds, is) {
			kinds, first, about = append(kinds, is), append(first, k.Name), append(about, was.about(folder))
		}
	}
	if len(kinds) < 2 {
		return told{}, false
	}
	var parts []string
	for i, name := range first {
		parts = append(parts, name+" "+about[i])
	}
	return told{NotTogether, []any{folder, strings.Join(parts, ", ")}}, true
}

// sayMixed warns of sheets in a folder that do not belong together.
func sayMixed(s Streams, folder, as string) {
	if what, ok := mixed(folder, as); ok {
		s.say(Caution, what)
	}
}

// sayStrangers names files in a folder that are of a format of ours but were not written
// as sheets: nothing is said of what is in them.
func sayStrangers(s Streams, folder string) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return
	}
	known := knownIn(folder)
	for _, e := range entries {
		_, _, drawn := format.OfFile(e.Name())
		if _, sheet := sheetNamed(e.Name()); !drawn || sheet || e.IsDir() {
			continue
		}
		k, ok := known[e.Name()]
		data, err := readFile(filepath.Join(folder, e.Name()))
		switch {
		case !ok:
			s.say(NotByCut, filepath.Join(folder, e.Name()))
		case err == nil && (output{known: map[string]whole.Known{e.Name(): k}}).changed(e.Name(), data):
			s.say(ChangedSince, filepath.Join(folder, e.Name()))
		}
	}
}
