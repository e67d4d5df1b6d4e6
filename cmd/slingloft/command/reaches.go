package command

import (
	"errors"

	"slingloft/export"
)

// reaches are the sheets that a machine does not reach over, each once with the most
// that any of its files needs.
type reaches []*export.ReachError

// took reports whether an error of a sheet's file is one of reach, and keeps it.
func (r *reaches) took(err error, sheet string) bool {
	var far *export.ReachError
	if !errors.As(err, &far) {
		return false
	}
	for _, e := range *r {
		if e.Name == sheet {
			e.Need.X, e.Need.Y = max(e.Need.X, far.Need.X), max(e.Need.Y, far.Need.Y)
			return true
		}
	}
	*r = append(*r, &export.ReachError{Name: sheet, Stock: far.Stock, Need: far.Need, Bed: far.Bed})
	return true
}
