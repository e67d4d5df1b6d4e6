// Package preview draws a sheet as a PNG picture, for looking at: the colours,
// dashes and widths of the scheme, but no line thinner than can be seen. The
// picture states its resolution, so that its size in mm is that of the sheet to a
// pixel.
package preview

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"image/color"
	"image/png"
	"io"
	"math"

	"github.com/tdewolff/canvas"

	"slingloft/export"
	"slingloft/export/style"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// Bounds of the picture: the longer side has at most maxPixels, and a millimetre
// at most maxPerMM.
const (
	maxPixels    = 2000
	maxPerMM     = 8.0
	minLinePixel = 1.2 // width below which a line looks broken
)

// Write writes the drawing as PNG.
func Write(w io.Writer, d export.Drawing, o export.Options) error {
	plain, err := d.Plain(o)
	if err != nil {
		return err
	}
	perMetre := pixelsPerMetre(plain)
	perMM := float64(perMetre) / 1000
	wide, high := math.Max(plain.Width, 1/perMM), math.Max(plain.Height, 1/perMM)
	picture := newPixels(wide, high, perMM)
	ctx := canvas.NewContext(picture)
	ctx.SetFillColor(canvas.White)
	ctx.DrawPath(0, 0, canvas.Rectangle(wide, high))
	ctx.SetFillColor(canvas.Transparent)
	ctx.SetStrokeCapper(canvas.RoundCap)
	ctx.SetStrokeJoiner(canvas.RoundJoin)
	for _, work := range piece.Works() {
		p := pen{ctx, o.Scheme.Of(work), 1 / perMM}
		p.take()
		for _, l := range plain.Lines {
			if l.Work == work {
				p.draw(l)
			}
		}
	}
	var b bytes.Buffer
	if err := png.Encode(&b, picture.RGBA); err != nil {
		return err
	}
	_, err = w.Write(withResolution(b.Bytes(), perMetre))
	return err
}

// pixelsPerMetre returns the resolution, a whole number as PNG stores it.
func pixelsPerMetre(d export.Drawing) int {
	longest := math.Max(d.Width, d.Height)
	return int(math.Max(1, math.Floor(1000*math.Min(maxPerMM, maxPixels/longest))))
}

// pen draws lines of one kind of work.
type pen struct {
	ctx    *canvas.Context
	stroke style.Stroke
	pixel  float64 // mm
}

// width returns the width that is drawn, mm.
func (p pen) width() float64 { return math.Max(p.stroke.Width, minLinePixel*p.pixel) }

func (p pen) take() {
	c := p.stroke.Colour
	p.ctx.SetStrokeColor(color.RGBA{c.R, c.G, c.B, 255})
	p.ctx.SetStrokeWidth(p.width())
}

// draw draws a line in runs. Round ends hide the seams, and dashes go on from run to
// run.
func (p pen) draw(l piece.Line) {
	pts := p.seen(l)
	done := 0.0
	for len(pts) > 1 {
		run := firstRun(pts)
		path := &canvas.Path{}
		path.MoveTo(run[0].X, run[0].Y)
		for _, q := range run[1:] {
			path.LineTo(q.X, q.Y)
		}
		p.dash(done)
		p.ctx.DrawPath(0, 0, path)
		done += run.Length()
		pts = pts[len(run)-1:]
	}
}

// firstRun returns the start of a line, two points at least, that bends by a right
// angle at most: canvas fills a stroke that comes back to itself, as small letters do.
// It is also short, since the time that canvas takes for the outline of a stroke grows
// with the square of its points.
func firstRun(pts geom.Polyline) geom.Polyline {
	const (
		maxPoints = 40
		bend      = math.Pi/2 + 1e-6 // processors differ in the last bits of an angle
	)
	bent := 0.0
	for i := 2; i < min(maxPoints, len(pts)); i++ {
		u, v := pts[i-1].Minus(pts[i-2]), pts[i].Minus(pts[i-1])
		if bent += math.Abs(u.AngleTo(v)); bent > bend {
			return pts[:i]
		}
	}
	return pts[:min(maxPoints, len(pts))]
}

// dash sets the dashes for a run that begins at the given length of the line, mm.
// Canvas counts them in line widths.
func (p pen) dash(at float64) {
	var dashes []float64
	for _, d := range p.stroke.Dash {
		dashes = append(dashes, d/p.stroke.Width)
	}
	p.ctx.SetDashes(at/p.width(), dashes...)
}

// seen returns the points of a line that can be told apart in the picture, the
// start once more at the end of a closed one.
func (p pen) seen(l piece.Line) geom.Polyline {
	out := geom.Polyline{l.Points[0]}
	for _, q := range l.Points[1:] {
		if q.Dist(out[len(out)-1]) > p.pixel/4 {
			out = append(out, q)
		}
	}
	last := l.Points[len(l.Points)-1]
	if l.Closed {
		last = l.Points[0]
	}
	return append(out, last)
}

// headLength is the signature and the header chunk, behind which a resolution may
// stand (PNG specification, 5.6: pHYs before IDAT).
const headLength = 8 + 25

// withResolution adds a pHYs chunk to an encoded PNG.
func withResolution(data []byte, perMetre int) []byte {
	chunk := []byte("pHYs")
	chunk = binary.BigEndian.AppendUint32(chunk, uint32(perMetre))
	chunk = binary.BigEndian.AppendUint32(chunk, uint32(perMetre))
	chunk = append(chunk, 1) // the unit is the metre
	out := append([]byte(nil), data[:headLength]...)
	out = binary.BigEndian.AppendUint32(out, uint32(len(chunk)-4))
	out = append(out, chunk...)
	out = binary.BigEndian.AppendUint32(out, crc32.ChecksumIEEE(chunk))
	return append(out, data[headLength:]...)
}

// Read returns a drawing with the size of the sheet that a picture of ours shows,
// true to a pixel, and without lines: they cannot be told from pixels.
func Read(r io.Reader) (export.Drawing, error) {
	const physLength = 4 + 4 + 9 + 4
	head := make([]byte, headLength+physLength)
	if _, err := io.ReadFull(r, head); err != nil {
		return export.Drawing{}, export.Refuse(export.InPicture, err)
	}
	config, err := png.DecodeConfig(bytes.NewReader(head))
	if err != nil {
		return export.Drawing{}, export.Refuse(export.InPicture, err)
	}
	phys := head[headLength:]
	perMetre := binary.BigEndian.Uint32(phys[8:])
	if string(phys[4:8]) != "pHYs" || perMetre == 0 || phys[16] != 1 {
		return export.Drawing{}, export.Refuse(export.PictureScale)
	}
	return export.Drawing{
		Width:  float64(config.Width) * 1000 / float64(perMetre),
		Height: float64(config.Height) * 1000 / float64(perMetre),
	}, nil
}
