package command

import (
	"slices"
	"strings"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// What --only names beside sheets and pieces.
const (
	onlyCloth  = "cloth"
	onlyBoards = "templates"
)

// selected returns the drawings that --only names, with those of their pieces that it
// names; all of them where it is not given.
func (o output) selected(drawings []export.Drawing) ([]export.Drawing, error) {
	if o.only == "" {
		return drawings, nil
	}
	names, err := o.onlyNames(drawings)
	if err != nil {
		return nil, err
	}
	var out []export.Drawing
	for _, d := range drawings {
		whole := slices.Contains(names, d.Name) ||
			slices.Contains(names, map[piece.Stock]string{piece.Cloth: onlyCloth, piece.Board: onlyBoards}[d.Stock])
		if whole {
			out = append(out, d)
		} else if slices.ContainsFunc(names, d.Holds) {
			part, err := d.Only(names)
			if err != nil {
				return nil, err
			}
			out = append(out, part)
		}
	}
	return out, nil
}

// onlyNames returns the names in --only, all of which some drawing has.
func (o output) onlyNames(drawings []export.Drawing) ([]string, error) {
	known := []string{onlyCloth, onlyBoards}
	for _, d := range drawings {
		known = append(append(known, d.Name), d.Pieces()...)
	}
	var names []string
	for name := range strings.SplitSeq(o.only, ",") {
		name = strings.TrimSpace(name)
		if !slices.Contains(known, name) {
			hint := notice{ThereAre, []any{strings.Join(known, ", ")}}
			if near := design.Nearest(name, known); near != "" {
				hint = notice{WriteName, []any{near}}
			}
			return nil, misuse(NotCalledSo, name, hint)
		}
		names = append(names, name)
	}
	return names, nil
}

// untold says of which stock there are no programs, since the machine is not for it.
func (o output) untold() []notice {
	drives := slices.ContainsFunc(o.formats, func(name string) bool {
		f, _, err := o.format(name, piece.Cloth, 0)
		return err == nil && f.Drives
	})
	for _, s := range piece.Stocks() {
		if drives && !o.machine.For.Takes(s) {
			return []notice{{what: map[piece.Stock]Message{piece.Cloth: NoCloth, piece.Board: NoBoards}[s]}}
		}
	}
	return nil
}
