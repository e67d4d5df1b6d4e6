package chart

import (
	"image"
	"image/color"
	"math"

	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"

	"slingloft/export/sheet/picture"
	"slingloft/outline/geom"
)

// mmPerPoint is the typographic point of vg in mm.
const mmPerPoint = 25.4 / 72

// inked is an ink in the coat of a colour, as a plot carries colours through.
type inked struct{ ink picture.Ink }

// RGBA makes inked a colour; nothing reads its value.
func (inked) RGBA() (r, g, b, a uint32) { return 0, 0, 0, math.MaxUint16 }

// state is what Push keeps.
type state struct {
	width    vg.Length
	dash     []vg.Length
	ink      picture.Ink
	at, x, y geom.Point // origin and unit vectors on paper, points
}

// canvas draws what a plot draws into a picture.
type canvas struct {
	pic  *picture.Picture
	now  state
	kept []state
}

func newCanvas(p *picture.Picture) *canvas {
	return &canvas{pic: p, now: state{width: 1, x: geom.Pt(1, 0), y: geom.Pt(0, 1)}}
}

func (c *canvas) SetLineWidth(w vg.Length)                     { c.now.width = w }
func (c *canvas) SetLineDash(pattern []vg.Length, _ vg.Length) { c.now.dash = pattern }

func (c *canvas) SetColor(col color.Color) {
	c.now.ink = picture.Main
	if k, ok := col.(inked); ok {
		c.now.ink = k.ink
	}
}

func (c *canvas) Rotate(rad float64) { c.now.x, c.now.y = c.now.x.Turned(rad), c.now.y.Turned(rad) }

func (c *canvas) Translate(p vg.Point) { c.now.at = c.place(p) }

func (c *canvas) Scale(x, y float64) { c.now.x, c.now.y = c.now.x.Times(x), c.now.y.Times(y) }

func (c *canvas) Push() { c.kept = append(c.kept, c.now) }

func (c *canvas) Pop() {
	if n := len(c.kept); n > 0 {
		c.now, c.kept = c.kept[n-1], c.kept[:n-1]
	}
}

// place returns a point on paper, in points.
func (c *canvas) place(p vg.Point) geom.Point {
	return c.now.at.Plus(c.now.x.Times(float64(p.X))).Plus(c.now.y.Times(float64(p.Y)))
}

// lines returns a path's lines in mm; arcs and curves, which the charts here do
// not draw, count as straight to their ends.
func (c *canvas) lines(path vg.Path) []geom.Polyline {
	var out []geom.Polyline
	for _, q := range path {
		switch q.Type {
		case vg.MoveComp:
			out = append(out, nil)
		case vg.CloseComp:
			continue
		}
		if len(out) == 0 {
			out = append(out, nil)
		}
		last := len(out) - 1
		out[last] = append(out[last], c.place(q.Pos).Times(mmPerPoint))
	}
	return out
}

func (c *canvas) Stroke(path vg.Path) {
	if c.now.width <= 0 {
		return
	}
	p := picture.Path{Lines: c.lines(path), Stroke: c.now.ink, Width: float64(c.now.width) * mmPerPoint}
	for _, d := range c.now.dash {
		p.Dash = append(p.Dash, float64(d)*mmPerPoint)
	}
	c.pic.Items = append(c.pic.Items, p)
}

func (c *canvas) Fill(path vg.Path) {
	c.pic.Items = append(c.pic.Items, picture.Path{Lines: c.lines(path), Closed: true, Fill: c.now.ink, Filled: true})
}

func (c *canvas) FillString(f font.Face, at vg.Point, text string) {
	c.pic.Write(picture.Text{Text: text, At: c.place(at).Times(mmPerPoint),
		Size: float64(f.Font.Size) * mmPerPoint, Turn: c.now.x.Angle(), Ink: c.now.ink})
}

// DrawImage draws nothing: the charts here hold no images.
func (c *canvas) DrawImage(vg.Rectangle, image.Image) {}
