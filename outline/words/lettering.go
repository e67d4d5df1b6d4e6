package words

import (
	"fmt"
	"strings"

	"slingloft/outline/cord"
)

// Lettering is what stands on cloth pieces, templates, gauges and sheets. Text that holds a
// verb is filled in by the method that is named beside it.
type Lettering struct {
	Names
	Cloth  Cloth
	Boards Boards
	Sheets Sheets

	CordGauge string             // [Lettering.CordGaugeTitle]
	CordEnd   string             // the mark at a cord's own end
	CordEnds  map[CordEnd]string // [Lettering.EndOf]
}

// CordEnd tells the ends of a cord apart.
type CordEnd int

// The ends.
const (
	StartEnd CordEnd = iota // where its marks are measured from
	LastEnd
	BothEnds
)

// EndOf names an end of a cord.
func (l Lettering) EndOf(p cord.Part, e CordEnd) string {
	return fmt.Sprintf(l.CordEnds[e], l.Cords.Parts[p])
}

// CordGaugeTitle is the title of the cord gauge number n, which serves for the ends.
func (l Lettering) CordGaugeTitle(n int, ends []string) string {
	return fmt.Sprintf(l.CordGauge, n, strings.ToUpper(strings.Join(ends, ", ")))
}

// EnglishLettering returns the lettering in English.
func EnglishLettering() Lettering {
	return Lettering{
		Names:     English(),
		Cloth:     englishCloth(),
		Boards:    englishBoards(),
		Sheets:    EnglishSheets(),
		CordGauge: "CORD GAUGE %d: %s",
		CordEnd:   "END",
		CordEnds:  map[CordEnd]string{StartEnd: "%s start", LastEnd: "%s end", BothEnds: "%s both ends"},
	}
}
