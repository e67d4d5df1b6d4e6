package export

import (
	"math"
	"strconv"
	"strings"

	"slingloft/export/simplify"
	"slingloft/export/style"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// Options says how a drawing goes into a file, whatever the format.
type Options struct {
	// Scale is length on paper over true length: 0.2 for 1:5. 0 means 1.
	Scale float64
	// Correct holds the factors by which lengths along x and y are multiplied so
	// that a machine that is off draws them true, see [Correction]. 0 means 1.
	Correct [2]float64
	// Thin is how far, in mm on paper, a line may be off when points of it are left
	// out to make the file small; 0 keeps every point.
	Thin float64
	// Axes is how the machine counts; only formats that drive one follow it.
	Axes Axes
	// Inches has lengths in inches in the formats that can have either unit.
	Inches bool
	// Scheme is the strokes; the zero value means [style.Default].
	Scheme style.Scheme
	// Words is what a file says beside its drawing; nil means English.
	Words *words.Sheets
	// Notes is how notes are said in a file; nil means English.
	Notes *Words
}

// Note puts a note into words.
func (o Options) Note(n Note) string {
	if o.Notes == nil {
		return English().Note(n)
	}
	return o.Notes.Note(n)
}

// Said returns what a file says beside its drawing.
func (o Options) Said() words.Sheets { return sheetWords(o.Words) }

func sheetWords(w *words.Sheets) words.Sheets {
	if w == nil {
		return words.EnglishSheets()
	}
	return *w
}

// Bounds of what a correction can mend: a machine further off is broken or was
// misread.
const (
	minCorrection = 0.9
	maxCorrection = 1.1
)

// Scales that can be asked for, far outside the series of ISO 5455 that is of use.
const (
	minScale = 1.0 / 1000
	maxScale = 50.0
)

// maxThin is more than any line of a pattern may be off, mm.
const maxThin = 1.0

// Correction returns the factor that makes a line of the nominal length come out
// true on a machine that drew it with the measured length, both in mm.
func Correction(nominal, measured float64) (float64, error) {
	return correction(nominal, measured, 1, "mm")
}

// correction is [Correction] with its error in a unit of so many mm.
func correction(nominal, measured, unit float64, name string) (float64, error) {
	c := nominal / measured
	if !Inside(c, minCorrection, maxCorrection) {
		return 0, Refuse(BarOffByTenth, nominal/unit, measured/unit, name)
	}
	return c, nil
}

// ParseScale reads a scale as it is written on drawings, "1:5" or "2:1", as
// length on paper over true length.
func ParseScale(text string) (float64, error) {
	a, b, ok := strings.Cut(text, ":")
	paper, errA := strconv.ParseFloat(strings.TrimSpace(a), 64)
	size, errB := strconv.ParseFloat(strings.TrimSpace(b), 64)
	if s := paper / size; ok && errA == nil && errB == nil && paper > 0 && Inside(s, minScale, maxScale) {
		return s, nil
	}
	return 0, Refuse(ScaleUnread, text)
}

// ScaleText returns the scale as it is written on drawings, "1:5".
func ScaleText(scale float64) string {
	short := func(v float64) string { return strconv.FormatFloat(math.Round(v*1e4)/1e4, 'f', -1, 64) }
	if scale > 1 {
		return short(scale) + ":1"
	}
	return "1:" + short(1/scale)
}

// Validate reports the first option that cannot be followed.
func (o Options) Validate() error {
	if o.Scale != 0 && !Inside(o.Scale, minScale, maxScale) {
		return Refuse(ScaleOff, o.Scale, minScale, maxScale)
	}
	for i, axis := range []string{"x", "y"} {
		if c := o.Correct[i]; c != 0 && !Inside(c, minCorrection, maxCorrection) {
			return Refuse(CorrectionOff, c, axis, minCorrection, maxCorrection)
		}
	}
	if !Inside(o.Thin, 0, maxThin) {
		return Refuse(ThinOff, o.Thin, maxThin)
	}
	if err := o.Axes.Validate(); err != nil {
		return err
	}
	return checkStrokes(o.Scheme)
}

// ScaleFactor returns the scale, 1 where none is set.
func (o Options) ScaleFactor() float64 {
	if o.Scale == 0 {
		return 1
	}
	return o.Scale
}

// factor returns scale and correction along axis 0 or 1.
func (o Options) factor(axis int) float64 {
	c := o.Correct[axis]
	if c == 0 {
		c = 1
	}
	return o.ScaleFactor() * c
}

// Point returns where the point p of a drawing comes to lie in the file, in mm.
func (o Options) Point(p geom.Point) geom.Point {
	return geom.Pt(p.X*o.factor(0), p.Y*o.factor(1))
}

// Size returns the size of the drawing's sheet in the file, in mm.
func (o Options) Size(d Drawing) (width, height float64) {
	p := o.Point(geom.Pt(d.Width, d.Height))
	return p.X, p.Y
}

// Line returns the line as it is drawn in the file, in mm. Its points are the
// caller's own.
func (o Options) Line(l piece.Line) piece.Line {
	pts := make(geom.Polyline, len(l.Points))
	for i, p := range l.Points {
		pts[i] = o.Point(p)
	}
	if o.Thin > 0 {
		pts = simplify.Chords(pts, l.Closed, o.Thin)
	}
	l.Points = pts
	return l
}
