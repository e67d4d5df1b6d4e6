package paper

import (
	"math"

	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
)

// figure sets a picture with its caption.
func (p *writer) figure(f *sheet.Figure) item {
	small := font{size: 7.5, ink: picture.Quiet}
	caption := wrap(small, f.Caption, f.Picture.Width)
	pic := &f.Picture
	h := pic.Height + 1 + small.lead()*float64(len(caption))
	return item{pic.Width, h, func(x, y float64) {
		for _, it := range pic.Items {
			switch it := it.(type) {
			case picture.Path:
				p.path(it, x, y+pic.Height)
			case picture.Text:
				p.letters(it, x, y+pic.Height)
			}
		}
		p.pdf.SetDashPattern(nil, 0)
		p.lines(small, caption).draw(x, y+pic.Height+1)
	}}
}

// path draws lines from a picture whose lower left corner stands at x, y.
func (p *writer) path(it picture.Path, x, y float64) {
	style := ""
	if it.Filled {
		c := it.Fill.OnPaper()
		p.pdf.SetFillColor(int(c[0]), int(c[1]), int(c[2]))
		style = "F"
	}
	if it.Width > 0 {
		c := it.Stroke.OnPaper()
		p.pdf.SetDrawColor(int(c[0]), int(c[1]), int(c[2]))
		p.pdf.SetLineWidth(it.Width)
		p.pdf.SetDashPattern(it.Dash, 0)
		style += "D"
	}
	if style == "" {
		return
	}
	for _, l := range it.Lines {
		for i, q := range l {
			if i == 0 {
				p.pdf.MoveTo(x+q.X, y-q.Y)
				continue
			}
			p.pdf.LineTo(x+q.X, y-q.Y)
		}
		if it.Closed {
			p.pdf.ClosePath()
		}
	}
	p.pdf.DrawPath(style)
}

// letters draws lettering from a picture whose lower left corner stands at x, y.
func (p *writer) letters(t picture.Text, x, y float64) {
	at, _ := t.Start()
	f := font{size: t.Size * 72 / 25.4, bold: t.Bold, ink: t.Ink}
	if t.Turn == 0 {
		p.write(f, x+at.X, y-at.Y, t.Text)
		return
	}
	p.pdf.TransformBegin()
	p.pdf.TransformRotate(t.Turn*180/math.Pi, x+at.X, y-at.Y)
	p.write(f, x+at.X, y-at.Y, t.Text)
	p.pdf.TransformEnd()
}
