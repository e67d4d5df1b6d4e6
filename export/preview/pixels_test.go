package preview

import (
	"bytes"
	"image"
	"image/color"
	"testing"

	"github.com/tdewolff/canvas"
	"github.com/tdewolff/canvas/renderers/rasterizer"
)

// TestPixels draws areas, curved strokes and dashes, some past the edge, and compares
// every byte with what canvas' own rasterizer makes of them.
func TestPixels(t *testing.T) {
	const wide, high, perMM = 40.3, 30.7, 7.3
	draw := func(ctx *canvas.Context) {
		ctx.SetFillColor(canvas.White)
		ctx.DrawPath(0, 0, canvas.Rectangle(wide, high))
		ctx.SetFillColor(color.RGBA{20, 90, 160, 255})
		ctx.DrawPath(20, 15, canvas.StarPolygon(5, 9, 4, true))
		ctx.SetFillColor(canvas.Transparent)
		ctx.SetStrokeCapper(canvas.RoundCap)
		ctx.SetStrokeJoiner(canvas.RoundJoin)
		ctx.SetStrokeColor(color.RGBA{200, 30, 0, 255})
		ctx.SetStrokeWidth(0.7)
		ctx.DrawPath(20, 15, canvas.Circle(13))
		ctx.SetDashes(0.4, 3, 2)
		ctx.DrawPath(-5, 3, canvas.MustParseSVGPath("M0 0L30 11L18 20L60 40"))
	}
	drawn := newPixels(wide, high, perMM)
	draw(canvas.NewContext(drawn))

	c := canvas.New(wide, high)
	draw(canvas.NewContext(c))
	theirs := rasterizer.Draw(c, canvas.DPMM(perMM), canvas.LinearColorSpace{})
	if drawn.Rect != theirs.Rect {
		t.Fatalf("picture of %v, want %v", drawn.Rect, theirs.Rect)
	}
	if !bytes.Equal(drawn.Pix, theirs.Pix) {
		t.Errorf("%d bytes differ", differing(drawn.RGBA, theirs))
	}
	inked := 0
	for i := range drawn.Pix {
		if drawn.Pix[i] != 255 {
			inked++
		}
	}
	if inked < 10000 {
		t.Errorf("only %d bytes are not white: the figure is not there", inked)
	}
}

func differing(a, b *image.RGBA) int {
	n := 0
	for i := range a.Pix {
		if a.Pix[i] != b.Pix[i] {
			n++
		}
	}
	return n
}
