package preview

import (
	"image/color"
	"math"
	"testing"

	"github.com/tdewolff/canvas"
)

// TestPixels draws areas, curved strokes and dashes, some past the edge, each in black on
// white, and compares every third pixel with the area that the shape has in it, found by
// clipping the shape to the pixel.
func TestPixels(t *testing.T) {
	black, none := canvas.Paint{Color: color.RGBA{0, 0, 0, 255}}, canvas.Paint{}
	line := canvas.Style{Stroke: black, StrokeWidth: 0.7, StrokeCapper: canvas.RoundCap, StrokeJoiner: canvas.RoundJoin}
	dashed := line
	dashed.DashOffset, dashed.Dashes = 0.4, []float64{3, 2}
	broken := canvas.MustParseSVGPath("M0 0L30 11L18 20L60 40").Translate(-5, 3)
	for _, c := range []struct {
		name  string
		path  *canvas.Path
		style canvas.Style
		shape *canvas.Path // that is to be black
	}{
		{"star", canvas.StarPolygon(5, 9, 4, true).Translate(20, 15), canvas.Style{Fill: black, Stroke: none},
			canvas.StarPolygon(5, 9, 4, true).Translate(20, 15)},
		{"ring", canvas.Circle(13).Translate(20, 15), line,
			canvas.Circle(13.35).Append(canvas.Circle(12.65).Reverse()).Translate(20, 15)},
		{"dashes", broken, dashed, broken.Dash(0.28, 2.1, 1.4).Stroke(0.7, canvas.RoundCap, canvas.RoundJoin, 1e-4)}, // by widths of the line
	} {
		const wide, high, perMM = 40.3, 30.7, 7.3
		p := newPixels(wide, high, perMM)
		p.RenderPath(canvas.Rectangle(wide+1, high+1), canvas.Style{Fill: canvas.Paint{Color: canvas.White}}, canvas.Identity)
		p.RenderPath(c.path, c.style, canvas.Identity)
		scale := canvas.Identity.ReflectYAbout(float64(p.Rect.Dy())/2).Scale(perMM, perMM)
		loops := contours(c.shape.Flatten(1e-4).Transform(scale))
		inked := 0.0
		for x := 0; x < p.Rect.Dx(); x += 3 {
			for y := range p.Rect.Dy() {
				area := 0.0
				for _, l := range loops {
					area += within(l, float64(x), float64(y))
				}
				inked += math.Abs(area)
				// Corners lie on 64ths of a pixel, chords of curves a tenth off at most.
				rounding := 1.0/64 + canvas.PixelTolerance
				if got := 1 - float64(p.RGBAAt(x, y).R)/255; math.Abs(got-math.Abs(area)) > rounding {
					t.Errorf("%s: pixel %d,%d is %.3f black, want %.3f", c.name, x, y, got, math.Abs(area))
				}
			}
		}
		if inked < 300 {
			t.Errorf("%s: only %.0f pixels are black: the figure is not there", c.name, inked)
		}
	}
}

// contours returns the corners of each closed contour of a path of straight lines.
func contours(p *canvas.Path) [][]canvas.Point {
	var out [][]canvas.Point
	for _, c := range p.Split() {
		out = append(out, c.Coords())
	}
	return out
}

// within returns the signed area that a contour encloses within the pixel whose least
// corner is x, y: Sutherland and Hodgman's clipping, then the sum of cross products.
func within(loop []canvas.Point, x, y float64) float64 {
	for _, inside := range []func(canvas.Point) float64{
		func(q canvas.Point) float64 { return q.X - x },
		func(q canvas.Point) float64 { return x + 1 - q.X },
		func(q canvas.Point) float64 { return q.Y - y },
		func(q canvas.Point) float64 { return y + 1 - q.Y },
	} {
		var kept []canvas.Point
		for i, q := range loop {
			before := loop[(i+len(loop)-1)%len(loop)]
			a, b := inside(before), inside(q)
			if (a < 0) != (b < 0) {
				kept = append(kept, before.Interpolate(q, a/(a-b)))
			}
			if b >= 0 {
				kept = append(kept, q)
			}
		}
		loop = kept
	}
	area := 0.0
	for i, q := range loop {
		area += loop[(i+len(loop)-1)%len(loop)].PerpDot(q) / 2
	}
	return area
}
