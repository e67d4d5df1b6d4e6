package dxf

import (
	"math"
	"strings"

	"slingloft/export"
	"slingloft/outline/geom"
)

// curveTolerance is how far the chords of a curve may lie from it, mm; blocks that
// are inserted larger than they are drawn, by the 25.4 of an inch for one, still
// stay well within a twentieth of a millimetre.
const curveTolerance = 0.001

// entity is one line of a file, or one insertion of a block.
type entity struct {
	name, layer string
	points      geom.Polyline
	closed      bool
	loose       bool          // a spline whose ends programs draw in ways of their own
	block       string        // set for an insertion
	placement   geom.Affine   // of the inserted block, its base point at the origin
	left        []export.Skip // why it is left out, one or none
	err         error         // why it cannot be read, if nothing else leaves it out
}

// raw is an entity as it is read: the last value of each group that is of use,
// and the vertices.
type raw struct {
	kind, layer, handle  string
	flags                int
	value                map[int]float64
	vertices             []vertex
	spline               spline
	name                 string
	block                string
	copies               int     // of a block in rows and columns, 0 or 1 for one
	mirrored             bool    // extrusion along −z: x runs the other way
	hidden, paper, clear bool    // not to be seen, on a layout, of no opacity
	tolerance            float64 // for curves, in the file's unit
}

type vertex struct {
	at    geom.Point
	bulge float64
}

// readEntities reads entities up to the end of the section or block, for which
// the pair is put back.
func (f *file) readEntities(s *scanner, out []entity) ([]entity, error) {
	for {
		p, err := s.next()
		if err != nil {
			return nil, err
		}
		if p.code != 0 {
			continue
		}
		switch p.value {
		case "ENDSEC", "ENDBLK", "EOF", "SECTION":
			s.back(p)
			return out, nil
		}
		r, err := readRaw(s, p.value)
		if err == nil && p.value == "POLYLINE" {
			err = readVertices(s, &r)
		}
		if err != nil {
			return nil, export.Refuse(export.AtEntity, s.line, p.value, err)
		}
		r.tolerance = curveTolerance / f.unit()
		e, err := r.entity()
		if err != nil {
			e.err = export.Refuse(export.AtHandle, s.line, p.value, r.handle, err)
		}
		e.left = r.left(e)
		f.budget -= len(e.points)
		if f.budget < 0 || len(out) >= export.MaxLines {
			return nil, export.Refuse(export.TooManyAtLine, s.line)
		}
		if len(e.points) > 1 || e.block != "" || e.err != nil || len(e.left) > 0 {
			out = append(out, e)
		}
	}
}

// readRaw reads the groups of one entity up to the next.
func readRaw(s *scanner, kind string) (raw, error) {
	r := raw{kind: kind, value: map[int]float64{}}
	app := ""
	for {
		p, err := s.next()
		if err != nil {
			return r, err
		}
		if p.code == 0 {
			s.back(p)
			r.name = unescaped(r.name)
			return r, nil
		}
		switch {
		case p.code == 1001:
			app = p.value
		case p.code == 1000 && app == application:
			r.name += p.value
		case p.code == 5:
			r.handle = p.value
		case p.code == 8:
			r.layer = p.value
		case p.code == 2 && (kind == "INSERT" || kind == "BLOCK"):
			r.block = p.value
		case (p.code == 70 || p.code == 71) && kind == "INSERT":
			var n int
			n, err = p.integer()
			r.copies = max(r.copies, n)
		case p.code == 70:
			r.flags, err = p.integer()
		case p.code == 71 && kind == "SPLINE":
			r.spline.degree, err = p.integer()
		case p.code == 60 && kind != "DIMENSION":
			var n int
			n, err = p.integer()
			r.hidden = n != 0
		case p.code == 67:
			var n int
			n, err = p.integer()
			r.paper = n != 0
		case p.code == 440:
			// The lowest byte is the opacity where the byte of 2 stands above it.
			var n int
			n, err = p.integer()
			r.clear = n>>24 == 2 && n&0xff == 0
		case p.code >= 10 && p.code < 60 && p.code != 43, p.code == 230:
			err = r.number(p)
		}
		if err != nil {
			return r, err
		}
	}
}

// number takes a group that is a number.
func (r *raw) number(p pair) error {
	v, err := p.number()
	if err != nil {
		return err
	}
	if r.kind == "SPLINE" {
		return r.spline.number(p.code, v)
	}
	if r.kind == "LWPOLYLINE" {
		switch n := len(r.vertices); {
		case p.code == 10 && n >= export.MaxPoints:
			return export.Refuse(export.TooManyPoints)
		case p.code == 10:
			r.vertices = append(r.vertices, vertex{at: geom.Pt(v, 0)})
		case p.code == 20 && n > 0:
			r.vertices[n-1].at.Y = v
		case p.code == 42 && n > 0:
			r.vertices[n-1].bulge = v
		}
	}
	if p.code == 230 && v < 0 {
		r.mirrored = true
	}
	r.value[p.code] = v
	return nil
}

// readVertices reads the VERTEX entities of an old-style polyline.
func readVertices(s *scanner, r *raw) error {
	for {
		p, err := s.next()
		if err != nil {
			return err
		}
		if p.code != 0 {
			continue
		}
		switch p.value {
		case "VERTEX":
			v, err := readRaw(s, p.value)
			if err != nil {
				return err
			}
			if len(r.vertices) >= export.MaxPoints {
				return export.Refuse(export.TooManyPoints)
			}
			if v.flags&16 == 0 { // a control point of a spline frame
				r.vertices = append(r.vertices, vertex{geom.Pt(v.value[10], v.value[20]), v.value[42]})
			}
		case "SEQEND":
			_, err := readRaw(s, p.value)
			return err
		default:
			return export.Refuse(export.NoVertex, p.value)
		}
	}
}

// Kinds that hold no line to follow: letters, pictures, and what nobody sees.
const (
	letters  = " TEXT MTEXT DIMENSION LEADER MULTILEADER MLEADER ATTRIB TOLERANCE ARC_DIMENSION LARGE_RADIAL_DIMENSION "
	pictures = " HATCH SOLID WIPEOUT IMAGE "
	silent   = " POINT ATTDEF SEQEND VIEWPORT "
)

// left returns why an entity is left out, whatever its layer; none if it is not.
func (r *raw) left(e entity) []export.Skip {
	word := " " + r.kind + " "
	switch {
	case strings.Contains(silent, word):
		return nil
	case r.paper:
		return []export.Skip{export.PaperSpace}
	case r.hidden:
		return []export.Skip{export.Hidden}
	case strings.Contains(letters, word):
		return []export.Skip{export.Text}
	case strings.Contains(pictures, word):
		return []export.Skip{export.Picture}
	case r.clear:
		return []export.Skip{export.Transparent}
	case e.block == "" && e.err == nil && len(e.points) == 1:
		return []export.Skip{export.Lengthless}
	}
	return nil
}

// entity turns the groups into points.
func (r *raw) entity() (entity, error) {
	e := entity{name: r.name, layer: r.layer}
	if e.name == "" {
		e.name = strings.ToLower(r.kind) + " " + escaped(r.handle)
	}
	v := r.value
	centre := geom.Pt(v[10], v[20])
	switch r.kind {
	case "LINE":
		// Its points are the world's own, whatever side it is seen from.
		e.points = geom.Polyline{centre, geom.Pt(v[11], v[21])}
		return e, nil
	case "ELLIPSE":
		e.points, e.closed = r.ellipse()
		return e, nil
	case "SPLINE":
		var err error
		e.closed = r.flags&1 != 0
		e.loose = r.spline.looseEnded(e.closed)
		e.points, err = r.spline.points(r.tolerance, e.closed)
		if n := len(e.points); e.closed && n > 2 && e.points[0].Dist(e.points[n-1]) < r.tolerance {
			e.points = e.points[:n-1]
		}
		return e, err
	case "LWPOLYLINE":
		return r.polyline(e)
	case "POLYLINE":
		if r.flags&(16|64) != 0 {
			return e, export.Refuse(export.MeshUnread)
		}
		return r.polyline(e)
	case "CIRCLE":
		e.points, e.closed = geom.Polyline(geom.CirclePoints(centre, math.Abs(v[40]), r.tolerance)), true
	case "ARC":
		from, to := v[50]*math.Pi/180, v[51]*math.Pi/180
		turn := math.Mod(to-from, 2*math.Pi)
		if turn <= 0 {
			turn += 2 * math.Pi
		}
		e.points = geom.ArcPoints(centre, geom.Direction(from).Times(math.Abs(v[40])), turn, r.tolerance)
	case "INSERT":
		if r.copies > 1 {
			return e, export.Refuse(export.BlockRows)
		}
		e.block = r.block
		e.placement = geom.Translation(centre).After(geom.Rotation(v[50] * math.Pi / 180)).After(geom.Scaling(or(v, 41, 1), or(v, 42, 1)))
	default:
		if !strings.Contains(letters+pictures+silent, " "+r.kind+" ") {
			return e, export.Refuse(export.CurveUnread)
		}
	}
	return r.unmirrored(e), nil
}

// polyline finishes e as a polyline of the vertices.
func (r *raw) polyline(e entity) (entity, error) {
	var err error
	e.closed = r.flags&1 != 0
	e.points, err = bulged(r.vertices, e.closed, r.tolerance)
	return r.unmirrored(e), err
}

// unmirrored turns an entity that is seen from behind to the front.
func (r *raw) unmirrored(e entity) entity {
	if r.mirrored {
		for i := range e.points {
			e.points[i].X = -e.points[i].X
		}
	}
	return e
}

func or(v map[int]float64, code int, missing float64) float64 {
	if got, ok := v[code]; ok {
		return got
	}
	return missing
}

// bulged returns the polyline through the vertices, its arcs as chords. A bulge is
// the tangent of a quarter of the angle that its arc turns through, positive to
// the left.
func bulged(vertices []vertex, closed bool, tolerance float64) (geom.Polyline, error) {
	var out geom.Polyline
	for i, v := range vertices {
		if len(out) > export.MaxPoints {
			return nil, export.Refuse(export.TooManyPoints)
		}
		out = append(out, v.at)
		last := i == len(vertices)-1
		if v.bulge == 0 || (last && !closed) {
			continue
		}
		next := vertices[(i+1)%len(vertices)].at
		turn := 4 * math.Atan(v.bulge)
		chord := next.Minus(v.at)
		if chord.Len() == 0 {
			continue
		}
		// From the chord's middle the centre lies to the left by half the chord
		// over the tangent of half the turn.
		centre := v.at.Towards(next, 0.5).Plus(chord.Left().Times(0.5 / math.Tan(turn/2)))
		pts := geom.ArcPoints(centre, v.at.Minus(centre), turn, tolerance)
		out = append(out, pts[1:len(pts)-1]...)
	}
	return out, nil
}
