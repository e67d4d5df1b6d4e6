// Package divide divides a template that is longer than a sheet into parts with
// interlocking joints, such that the joined parts are as true as the whole.
package divide

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"

	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/label"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// Part is one of the parts that a piece is divided into.
type Part struct {
	Piece  piece.Piece
	Motion geom.Motion // from the part's coordinates back to those of the whole
}

// maxParts bounds into how many parts a piece may fall.
const maxParts = 64

// errManyParts is met where a piece would fall into more parts than allowed.
type errManyParts struct{}

// Error says in English what was found.
func (e errManyParts) Error() string { return design.English().Found(e.Finding()) }

// Finding returns what was found.
func (errManyParts) Finding() design.Finding { return design.Found(design.PartsTooMany, maxParts) }

// minStrip is the least length of a part in mm: its alignment hole and a wall.
const minStrip = JointHoles/2 + 12

// Parts returns the parts of a template or gauge that is larger than the sheet,
// sheetW by sheetH mm within its margins, such that each part fits the sheet, by
// quarter turns if need be. Parts are joined as joint says; each joint has a
// letter, lettered on both parts. Lines that run across a joint are divided;
// texts stay whole on one part and are moved off the joint where they must be. Each
// part has the piece's title with its own number. A piece that fits comes back as its
// only part, unchanged.
//
// It fails where no place for a joint is found, which happens on sheets hardly
// larger than a joint and on pieces narrower than one.
func Parts(p piece.Piece, sheetW, sheetH float64, joint Joint, w words.Boards) ([]Part, error) {
	if err := checkDivide(&p, sheetW, sheetH, joint); err != nil {
		return nil, design.Of(p.ID, err)
	}
	d := divider{w: sheetW, h: sheetH, joint: joint, maxParts: maxParts}
	for _, l := range p.Labels {
		if l.Role != piece.TitleLabel {
			d.texts = append(d.texts, label.QuadOf(l))
		}
	}
	for _, l := range p.Lines {
		d.marks = append(d.marks, l.Points)
	}
	whole := region{p.Cut, p.Holes}
	if d.fits(whole) {
		return []Part{{Piece: p}}, nil
	}
	d, err := d.best(whole)
	if err != nil {
		b := p.Cut.Bounds()
		return nil, &design.Breach{Found: design.Found(design.Undivided,
			p.ID, b.Width(), b.Height(), sheetW, sheetH, design.FindingOf(err)), Cause: err}
	}
	return d.share(p, w)
}

func checkDivide(p *piece.Piece, sheetW, sheetH float64, joint Joint) error {
	if !(sheetW > 0 && sheetH > 0) || math.IsInf(sheetW+sheetH, 0) {
		return fmt.Errorf("a sheet of %g × %g mm has no area", sheetW, sheetH)
	}
	if p.Stock != piece.Board {
		return errors.New("only stiff templates and gauges can be divided, not cloth")
	}
	if len(p.Cut) < 3 || p.Cut.Area() <= 0 {
		return errors.New("its outline does not run counter-clockwise around an area")
	}
	for _, ring := range append([]geom.Ring{p.Cut}, p.Holes...) {
		for i, v := range ring {
			if !v.Finite() {
				return fmt.Errorf("point %d of its outline is not finite", i)
			}
		}
	}
	return joint.check()
}

// divider divides one piece.
type divider struct {
	w, h     float64
	joint    Joint
	maxParts int // parts allowed
	texts    []label.Quad
	marks    []geom.Polyline

	peelFirst bool // peel parts off rather than cut strips
	peeled    bool // a part was peeled off

	places []jointPlace
	done   []region
}

// jointPlace is where a joint came to lie: the centres of its alignment holes.
type jointPlace struct {
	name string
	a, b geom.Point
}

// fits reports whether the region fits the sheet, as it lies or by a quarter turn.
func (d *divider) fits(r region) bool {
	b := r.ring.Bounds()
	return b.Width() <= d.w && b.Height() <= d.h || b.Width() <= d.h && b.Height() <= d.w
}

// best divides the whole into strips and, if seams along the axes do not serve
// everywhere, by peeling alone as well, and returns the division into fewer parts.
func (d divider) best(whole region) (divider, error) {
	peel := d
	peel.peelFirst = true
	err := d.divide(whole)
	if err == nil && !d.peeled || errors.Is(err, errManyParts{}) {
		return d, err
	}
	if err == nil {
		peel.maxParts = len(d.done) - 1
	}
	if peel.divide(whole) == nil {
		return peel, nil
	}
	return d, err
}

// divide splits the region until every part fits, those at smaller x and y first.
func (d *divider) divide(r region) error {
	if d.fits(r) {
		d.done = append(d.done, r)
		return nil
	}
	if len(d.places) == d.maxParts-1 {
		return errManyParts{}
	}
	if d.peelFirst {
		if angle, plan, ok := d.peel(r); ok {
			return d.divideAt(r, angle, plan)
		}
	}
	ways := d.ways(r)
	if len(ways) == 0 {
		return &design.Breach{Found: design.Found(design.SheetUnderJoint, d.joint.reach()+minStrip)}
	}
	for _, w := range ways {
		if plan, ok := d.seam(r, w); ok {
			return d.divideAt(r, w.angle, plan)
		}
	}
	if !d.peelFirst {
		if angle, plan, ok := d.peel(r); ok {
			d.peeled = true
			return d.divideAt(r, angle, plan)
		}
	}
	return &design.Breach{Found: design.Found(design.NoPlaceForJoint, d.joint.least())}
}

// way is a way to divide a region: seams square to the direction of one axis.
type way struct {
	angle  float64 // of that axis, rad
	size   float64 // of the region along it
	room   float64 // of the sheet
	strips int     // into which it is to fall
	parts  int     // in all
}

// ways lists the ways to divide a region, those with the fewest parts first, and
// then with more parts than need be, in case no seam is found.
func (d *divider) ways(r region) []way {
	b := r.ring.Bounds()
	var out []way
	for _, sheet := range [][2]float64{{d.w, d.h}, {d.h, d.w}} {
		nx, ny := d.strips(b.Width(), sheet[0]), d.strips(b.Height(), sheet[1])
		if nx == 0 || ny == 0 {
			continue
		}
		for more := range 3 {
			if nx > 1 {
				out = append(out, way{0, b.Width(), sheet[0], nx + more, (nx + more) * ny})
			}
			if ny > 1 {
				out = append(out, way{math.Pi / 2, b.Height(), sheet[1], ny + more, nx * (ny + more)})
			}
		}
	}
	slices.SortStableFunc(out, func(a, b way) int {
		return cmp.Or(cmp.Compare(a.parts, b.parts), cmp.Compare(b.strips, a.strips))
	})
	return out
}

// strips returns into how many strips a length falls on a sheet, each but the last
// with a tongue; 0 if the sheet is too small for any.
func (d *divider) strips(length, sheet float64) int {
	if length <= sheet {
		return 1
	}
	step := sheet - d.joint.reach()
	if step < minStrip {
		return 0
	}
	return int(math.Ceil((length-sheet)/step)) + 1
}

// seam looks for the seam after the first strip of a way.
func (d *divider) seam(r region, w way) (seamPlan, bool) {
	f := d.turned(r, w.angle)
	start := f.r.ring.Bounds().Min.X
	reach := d.joint.reach()
	step := w.room - reach
	span := seamRange{
		from:  start + max(minStrip, w.size-w.room-float64(w.strips-2)*step),
		to:    start + min(step, w.size-minStrip-reach),
		ideal: start + w.size/float64(w.strips),
	}
	if span.to <= span.from {
		return seamPlan{}, false
	}
	return d.bestSeam(f, span)
}

// divideAt cuts the region by a seam square to a direction and goes on with both
// sides.
func (d *divider) divideAt(r region, angle float64, plan seamPlan) error {
	tongue, socket := d.cut(r.moved(geom.Motion{Turn: -angle}), plan)
	back := geom.Motion{Turn: angle}
	a, b := plan.holes()
	d.places = append(d.places, jointPlace{jointName(len(d.places)), back.Apply(a), back.Apply(b)})
	if err := d.divide(tongue.moved(back)); err != nil {
		return err
	}
	return d.divide(socket.moved(back))
}

// jointName returns A to Z, then A2 to Z2 and so on.
func jointName(n int) string {
	name := string(rune('A' + n%26))
	if n >= 26 {
		name += fmt.Sprint(n/26 + 1)
	}
	return name
}
