package command

import (
	"cmp"
	"os"
	"slices"
	"strings"

	"slingloft/export/format"
	"slingloft/export/whole"
)

// formatsIn returns the formats to prove: those named, or those that any sheet in
// the folder has.
func formatsIn(folder, list string) ([]string, error) {
	if list != "" {
		return formatsNamed(list, "prove")
	}
	var out []string
	files, err := sheetsIn(folder)
	for _, f := range files {
		if !slices.Contains(out, f.format) {
			out = append(out, f.format)
		}
	}
	if err == nil && len(out) == 0 {
		return nil, ends(Disagree, NoneHere, folder)
	}
	slices.SortFunc(out, func(a, b string) int {
		return cmp.Compare(slices.Index(format.Names(), a), slices.Index(format.Names(), b))
	})
	return out, err
}

// sheetFile is a file in a folder that is named like a sheet of cut.
type sheetFile struct{ name, stem, format string }

// sheetsIn returns the files named like sheets, sorted by name.
func sheetsIn(folder string) ([]sheetFile, error) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil, err
	}
	var out []sheetFile
	for _, e := range entries {
		if f, ok := sheetNamed(e.Name()); ok {
			out = append(out, f)
		}
	}
	return out, nil
}

// sheetNamed returns what the name of a file says of a sheet, if it is one's.
func sheetNamed(name string) (sheetFile, bool) {
	stem, f, ok := format.OfFile(name)
	if !ok || !strings.HasPrefix(stem, "cloth-lay") && !strings.HasPrefix(stem, "template-sheet-") {
		return sheetFile{}, false
	}
	return sheetFile{name, stem, f.Name}, true
}

// readFile reads a file that may have been written by cut, but nothing much larger.
func readFile(path string) ([]byte, error) {
	const maxBytes = 512 << 20
	data, err := whole.ReadAtMost(path, maxBytes+1)
	if err != nil {
		return nil, err
	}
	if len(data) > maxBytes {
		return nil, ends(Failed, LargerThan, maxBytes>>20)
	}
	return data, nil
}
