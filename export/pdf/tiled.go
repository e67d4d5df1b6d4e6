package pdf

import (
	"io"

	"slingloft/export"
	"slingloft/export/tile"
)

// WriteTiled writes drawings as a PDF for a printer that takes the given paper:
// for each drawing a map page and then its pages, see package tile.
func WriteTiled(w io.Writer, ds []export.Drawing, o export.Options, p tile.Paper) error {
	var pages []export.Drawing
	for _, d := range ds {
		split, err := tile.Split(d, o, p)
		if err != nil {
			return err
		}
		pages = append(pages, split...)
	}
	return WritePages(w, pages, export.Options{Scheme: o.Scheme})
}
