package work

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"slingloft/export"
	"slingloft/export/outside"
	"slingloft/export/whole"
	"slingloft/nest"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// found is an extra outline with the shapes that its file holds.
type found struct {
	design.Extra
	outside.Drawn
}

// keepOut is an area of the stock that no piece may touch.
type keepOut struct {
	name  string
	shape outside.Shape
	at    geom.Point
}

// bringIn reads the files of all extra outlines, those of the design from its own
// folder, and lets the digest depend on what they hold.
func (p *Plan) bringIn(name string, more []design.Extra) ([]found, error) {
	var out []found
	own := p.Design.Extras
	for i, e := range slices.Concat(own, more) {
		path := e.File
		if i < len(own) && !filepath.IsAbs(path) {
			path = filepath.Join(filepath.Dir(name), path)
		}
		drawn, err := readShapes(path, e.Unit)
		switch {
		case err != nil && i < len(own):
			key := design.KeyExtra.Item(i + 1).In("file")
			return nil, design.Faults{p.source.Fault(key, design.Found(design.OfFile, e.File, p.Words.Files.Failure(err)), mending(err))}
		case err != nil:
			return nil, export.Refuse(export.AtKey, path, err)
		}
		if e.Name == "" {
			e.Name = strings.TrimSuffix(filepath.Base(path), filepath.Ext(path))
		}
		out = append(out, found{e, drawn})
	}
	if len(out) > 0 {
		sum := sha256.New()
		io.WriteString(sum, p.Digest)
		for _, f := range out {
			f.digest(sum)
		}
		p.Digest = hex.EncodeToString(sum.Sum(nil)[:4])
	}
	return out, nil
}

// mending says what would do where a drawing cannot be brought in.
func mending(err error) design.Phrase {
	if export.Broken(err, export.SVGWithoutUnit) || export.Broken(err, export.DXFWithoutUnit) {
		return design.Say(design.GiveUnit)
	}
	return design.Say(design.MendDrawing)
}

// Brought is an outline of the maker's own as it was brought in.
type Brought struct {
	File, Title   string
	Stock         piece.Stock
	KeepOut       bool
	Width, Height float64 // of the box around it, mm
	Holes, Lines  int
}

// Source is a file that outlines were brought in from.
type Source struct {
	File   string
	Left   export.Left     // objects that were left out
	Doubts []*export.Fault // what may look otherwise in the program that it was drawn with
}

// measured returns what was brought in, and from where.
func measured(all []found) (out []Brought, from []Source) {
	for _, f := range all {
		from = append(from, Source{f.File, f.Left, f.Doubts})
		for k, s := range f.Shapes {
			w, h := s.Size()
			out = append(out, Brought{f.File, f.title(k), f.Stock, f.As == design.AsKeepOut, w, h, len(s.Holes), len(s.Lines)})
		}
	}
	return out, from
}

// title returns what the outline number k of a file is called.
func (f found) title(k int) string {
	if len(f.Shapes) > 1 {
		return fmt.Sprintf("%s %d", f.Name, k+1)
	}
	return f.Name
}

// digest writes what the digest depends on: all that is asked for but the name of the
// file, which may be written in many ways, and the coordinates, names and work of what
// the file holds.
func (f found) digest(w io.Writer) {
	fmt.Fprintf(w, "{{ %s %d %d %d %t %v %v %v} [", f.Name, f.Count, f.Stock, f.As, f.FreeGrain, f.Unit, f.X, f.Y)
	for i, s := range f.Shapes {
		holes, lines := make([]string, len(s.Holes)), make([]string, len(s.Lines))
		for k, h := range s.Holes {
			holes[k] = digits(h)
		}
		for k, l := range s.Lines {
			lines[k] = fmt.Sprintf("{%s %d %s %t}", l.Name, l.Work, digits(l.Points), l.Closed)
		}
		fmt.Fprintf(w, "%*s{%s %s %v %v}", min(i, 1), "", s.Name, digits(s.Outline), holes, lines)
	}
	fmt.Fprint(w, "]}\n")
}

// digits returns coordinates with all their digits.
func digits[T ~[]geom.Point](pts T) string {
	out := make([]string, len(pts))
	for i, p := range pts {
		out[i] = fmt.Sprintf("{%v %v}", p.X, p.Y)
	}
	return fmt.Sprint(out)
}

// readShapes reads a drawing of outlines. An error does not name the file.
func readShapes(path string, unit float64) (outside.Drawn, error) {
	const limit = 64 << 20 // more than is read of it
	data, err := whole.ReadAtMost(path, limit)
	if errors.Is(err, export.Breaks(export.Unread)) {
		err = export.Refuse(export.NotDrawing)
	}
	if err != nil {
		return outside.Drawn{}, err
	}
	return outside.Read(path, bytes.NewReader(data), unit)
}

// add puts the extra outlines among the pieces of their stock, or the areas to keep
// clear.
func (p *Plan) add(all []found) {
	for i, f := range all {
		stock := f.Stock
		for k, s := range f.Shapes {
			id, title := fmt.Sprintf("extra-%d", i+1), f.title(k)
			if len(f.Shapes) > 1 {
				id = fmt.Sprintf("%s-%d", id, k+1)
			}
			if f.As == design.AsKeepOut {
				p.keepOuts[stock] = append(p.keepOuts[stock], keepOut{"keep-out " + title, s, geom.Pt(f.X, f.Y)})
				continue
			}
			q := s.Piece(id, title, stock, f.Copies())
			q.OneWay = stock == piece.Cloth && p.Design.Cloth.OneWay
			q.FreeGrain = f.FreeGrain || stock == piece.Board
			if stock == piece.Cloth {
				p.Sewn.Pieces = append(slices.Clip(p.Sewn.Pieces), q)
			} else {
				p.Templates = append(slices.Clip(p.Templates), q)
			}
		}
	}
}

// blocked returns the boxes that the lay keeps clear on a stock: those given and the
// maker's own. They count from the point lay of the stock.
func (p *Plan) blocked(stock piece.Stock, lay geom.Point, boxes []geom.Box) []geom.Box {
	out := slices.Clone(boxes)
	for _, k := range p.keepOuts[stock] {
		out = append(out, k.shape.KeepOut(k.at.Minus(lay))...)
	}
	return out
}

// KeptClear returns the outlines of the maker's own keep-outs on a stock, from its corner.
func (p *Plan) KeptClear(stock piece.Stock) []geom.Ring {
	var out []geom.Ring
	for _, k := range p.keepOuts[stock] {
		out = append(out, k.shape.Outline.Moved(geom.Motion{Shift: k.at}))
	}
	return out
}

// keepOutLines draws the areas that are kept clear as far as they lie in the lay.
func (p *Plan) keepOutLines(stock piece.Stock, lay geom.Point, room geom.Box) []piece.Line {
	var out []piece.Line
	for _, k := range p.keepOuts[stock] {
		ring := geom.Polyline(k.shape.Outline).Moved(geom.Motion{Shift: k.at.Minus(lay)})
		if room.ContainsBox(ring.Bounds()) {
			out = append(out, piece.Line{Name: k.name, Work: piece.Register, Points: ring, Closed: true})
		}
	}
	return out
}

// invalid turns a packer's refusal of an extra outline into a message with its name.
func invalid(err error, pieces []piece.Piece) error {
	var input *nest.InputError
	if errors.As(err, &input) && input.Item >= 0 && input.Item < len(pieces) {
		return fmt.Errorf("%s: %w", pieces[input.Item].Title, err)
	}
	return err
}
