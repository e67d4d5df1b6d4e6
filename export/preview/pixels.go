package preview

import (
	"image"
	"image/color"
	"image/draw"

	"github.com/golang/freetype/raster"
	"github.com/tdewolff/canvas"
	"golang.org/x/image/math/fixed"
)

// pixels is a picture that canvas draws its paths on. Canvas finds the outlines of
// strokes; the pixels are filled here, since the rasterizer that canvas has for it needs
// a module that states no licence.
type pixels struct {
	*image.RGBA
	perMM float64
	fill  *raster.Rasterizer
	paint *raster.RGBAPainter
}

// newPixels returns a transparent picture of a sheet's size, mm.
func newPixels(width, height, perMM float64) pixels {
	img := image.NewRGBA(image.Rect(0, 0, int(float64(width*perMM)+0.5), int(float64(height*perMM)+0.5)))
	p := pixels{img, perMM, raster.NewRasterizer(img.Rect.Dx(), img.Rect.Dy()), raster.NewRGBAPainter(img)}
	p.fill.UseNonZeroWinding = true
	p.paint.Op = draw.Over
	return p
}

// Size returns the size of the picture, mm.
func (p pixels) Size() (width, height float64) {
	return float64(p.Rect.Dx()) / p.perMM, float64(p.Rect.Dy()) / p.perMM
}

// RenderPath draws a path, first its area, then its line, each if it has a colour.
func (p pixels) RenderPath(path *canvas.Path, s canvas.Style, m canvas.Matrix) {
	if s.HasFill() {
		p.area(path.Copy().Transform(m), s.Fill.Color)
	}
	if s.HasStroke() {
		if len(s.Dashes) > 0 {
			offset, dashes := canvas.ScaleDash(s.StrokeWidth, s.DashOffset, s.Dashes)
			path = path.Dash(offset, dashes...)
		}
		path = path.Stroke(s.StrokeWidth, s.StrokeCapper, s.StrokeJoiner, p.tolerance())
		p.area(path.Transform(m), s.Stroke.Color)
	}
}

// RenderText does nothing: sheets are lettered in strokes.
func (p pixels) RenderText(*canvas.Text, canvas.Matrix) {}

// RenderImage does nothing: sheets hold no pictures.
func (p pixels) RenderImage(image.Image, canvas.Matrix) {}

// tolerance is how far a chord may lie from its arc, mm.
func (p pixels) tolerance() float64 { return canvas.PixelTolerance / p.perMM }

// area fills a path by the non-zero rule.
func (p pixels) area(path *canvas.Path, c color.RGBA) {
	p.fill.Clear()
	for s := path.Flatten(p.tolerance()).Scanner(); s.Scan(); {
		if to := p.at(s.End()); s.Cmd() == canvas.MoveToCmd {
			p.fill.Start(to)
		} else {
			p.fill.Add1(to)
		}
	}
	p.paint.SetColor(c)
	p.fill.Rasterize(p.paint)
}

// at returns where a point of the sheet stands in the picture, whose rows run down.
func (p pixels) at(q canvas.Point) fixed.Point26_6 {
	const parts = 1 << 6 // of a pixel
	round := func(v float64) fixed.Int26_6 { return fixed.Int26_6(v*parts + 0.5) }
	return fixed.Point26_6{X: round(q.X * p.perMM), Y: round(float64(p.Rect.Dy()) - float64(q.Y*p.perMM))}
}
