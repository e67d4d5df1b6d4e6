package command

import (
	"os"
	"path/filepath"
	"slices"

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
func (k kept) about(folder string) notice {
	if k.Machine != "" {
		return notice{CutFor, []any{k.At, to(folder, k.Machine)}}
	}
	return notice{CutForOwn, []any{k.At}}
}

// cause says why files that nobody changed may not be as they should be now.
func (r run) cause(now design.Machine) []notice {
	switch {
	case r.kept == nil:
		return nil
	case r.kept.Settings != "" && r.kept.Settings != settingsOf(now):
		return []notice{{what: MachineSetOtherwise}}
	}
	return []notice{{what: SourceIsAnother}}
}

// mixed says which sheets in a folder do not belong together, for they were cut at
// another scale or for another machine than others there, if any. as are the
// formats that count, or "" for all.
func mixed(folder, as string) (notice, bool) {
	type kind struct{ at, settings string }
	var kinds []kind
	var parts series
	formats, err := formatsIn(folder, as)
	if err != nil {
		return notice{}, false
	}
	for _, k := range whole.ReadRecord(folder) {
		sheet, ok := sheetNamed(k.Name)
		was, err := readKept(k.Note)
		if _, gone := os.Lstat(filepath.Join(folder, k.Name)); !ok || k.Run == 0 || err != nil || gone != nil || was.At == "" ||
			!slices.Contains(formats, sheet.format) {
			continue
		}
		if is := (kind{was.At, was.Settings}); !slices.Contains(kinds, is) {
			kinds, parts = append(kinds, is), append(parts, notice{FileHow, []any{k.Name, was.about(folder)}})
		}
	}
	if len(kinds) < 2 {
		return notice{}, false
	}
	return notice{NotTogether, []any{folder, parts}}, true
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
