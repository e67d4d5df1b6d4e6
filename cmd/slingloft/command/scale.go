package command

import (
	"math"
	"path/filepath"
	"slices"
	"strings"

	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/outline/geom"
)

// scaleOf returns the scale at which the files were written, by the extent of
// their lines: the design's own or one of the usual ones, whichever comes nearest.
func (o output) scaleOf(p *work.Plan, l work.Lays) (float64, error) {
	files, err := sheetsIn(o.folder)
	if err != nil {
		return 0, err
	}
	const surely = 1e-4 // of a sheet's size
	best, least := o.options.ScaleFactor(), math.Inf(1)
	for _, scale := range append([]float64{best}, usualScales()...) {
		drawings, err := p.Drawings(l, scale)
		if err != nil {
			continue // the title block finds no room at this scale
		}
		at := o.options
		at.Scale = scale
		if off := o.offBy(files, drawings, at); off < least {
			best, least = scale, off
		}
		if least < surely {
			break
		}
	}
	return best, nil
}

// usualScales are those of ISO 5455 that sheets are drawn at.
func usualScales() []float64 {
	return []float64{1, 1.0 / 2, 1.0 / 5, 1.0 / 10, 1.0 / 20, 1.0 / 50, 1.0 / 100, 2, 5, 10}
}

// offBy returns by what part the extent of the first file that can be read is off.
func (o output) offBy(files []sheetFile, drawings []export.Drawing, at export.Options) float64 {
	for _, file := range files {
		i := slices.IndexFunc(drawings, func(d export.Drawing) bool { return d.Name == file.stem })
		if i < 0 {
			continue
		}
		f, codec, err := o.format(file.format, drawings[i].Stock, drawings[i].Roll)
		if err != nil || !slices.Contains(o.formats, file.format) || codec.Divided {
			continue
		}
		data, err := readFile(filepath.Join(o.folder, file.name))
		if err != nil {
			continue
		}
		got, err := codec.Read(strings.NewReader(string(data)))
		if err != nil {
			continue
		}
		d, err := o.shown(f, drawings[i])
		if err != nil {
			continue
		}
		w, h := extent(d)
		gotW, gotH := extent(got)
		if len(got.Lines) == 0 { // a picture
			w, h, gotW, gotH = d.Width, d.Height, got.Width, got.Height
		}
		size := at.Point(geom.Pt(w, h))
		// A machine's x may be y here, which is no matter.
		long, short := max(gotW, gotH)/max(size.X, size.Y), min(gotW, gotH)/min(size.X, size.Y)
		return math.Max(math.Abs(long-1), math.Abs(short-1))
	}
	return math.Inf(1)
}

// extent returns the size of the box around all lines of a drawing. The crosses at
// its corners make it nearly that of the sheet.
func extent(d export.Drawing) (width, height float64) {
	box := geom.EmptyBox()
	for _, l := range d.Lines {
		box = box.Union(l.Points.Bounds())
	}
	return box.Width(), box.Height()
}
