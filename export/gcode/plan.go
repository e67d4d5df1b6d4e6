package gcode

import (
	"slingloft/export"
	"slingloft/export/travel"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// cut is one path of a program.
type cut struct {
	name   string
	work   piece.Work
	start  geom.Point
	moves  []move
	noRoom bool // a lead-in was asked for but there is no room
}

// source is a path before it is ordered.
type source struct {
	name string
	path travel.Path
	ring int // number among the closed cuts, −1 if it is none
}

// plan returns the cuts of a plain drawing in the order of work.
func (s Settings) plan(d export.Drawing) ([]cut, error) {
	sources := make([][]source, len(piece.Works()))
	finder := leads{length: s.Lead, sheet: geom.Box{Max: geom.Pt(d.Width, d.Height)}}
	for _, l := range d.Lines {
		if s.answer(l) != done {
			continue
		}
		if !l.Closed {
			sources[l.Work] = append(sources[l.Work], source{l.Name, travel.Path{Points: l.Points}, -1})
			continue
		}
		if at, ok := s.drilled(l); ok {
			sources[l.Work] = append(sources[l.Work], source{l.Name, travel.Path{Points: geom.Polyline{at}}, -1})
			continue
		}
		rings, err := s.cutPaths(l)
		if err != nil {
			return nil, err
		}
		for _, r := range rings {
			src := source{l.Name, travel.Path{Points: geom.Polyline(r), Closed: true}, -1}
			if l.Work == piece.CutInside || l.Work == piece.CutOut {
				src.ring = len(finder.rings)
				finder.rings = append(finder.rings, ringCut{r, r.Bounds(), l.Work})
			}
			sources[l.Work] = append(sources[l.Work], src)
		}
	}
	var out []cut
	at := geom.Point{}
	for _, w := range piece.Works() {
		paths := make([]travel.Path, len(sources[w]))
		for i, src := range sources[w] {
			paths[i] = src.path
		}
		for _, step := range travel.Order(paths, at) {
			c := s.cut(sources[w][step.Path], step, w, finder)
			out = append(out, c)
			if n := len(c.moves); n > 0 {
				at = c.moves[n-1].to
			}
		}
	}
	return out, nil
}

// cut turns one ordered path into moves.
func (s Settings) cut(src source, step travel.Step, w piece.Work, finder leads) cut {
	c := cut{name: src.name, work: w}
	var lead *geom.Point
	if src.ring >= 0 && s.Lead > 0 {
		corner, from, ok := finder.find(src.ring, step.Start)
		if ok {
			step.Start, lead = corner, &from
		} else {
			c.noRoom = true
		}
	}
	pts := step.Follow(src.path)
	switch {
	case s.Tool == design.Knife:
		if lead != nil {
			pts = append(geom.Polyline{*lead}, pts...)
		}
		c.start, c.moves = s.trailed(pts)
		return c
	case w == piece.CutOut && src.path.Closed && s.Tabs > 0:
		c.start, c.moves = pts[0], s.tabbed(pts)
	default:
		c.start, c.moves = pts[0], lines(pts)
	}
	if lead != nil {
		c.moves = append([]move{{to: c.start}}, c.moves...)
		c.start = *lead
	}
	return c
}

// count changes a cut to the numbers of a machine that counts otherwise.
func (c *cut) count(a export.Axes, d export.Drawing) {
	c.start = a.Apply(c.start, d.Width, d.Height)
	for i, m := range c.moves {
		m.to, m.centre = a.Apply(m.to, d.Width, d.Height), a.Apply(m.centre, d.Width, d.Height)
		if a.Mirrors() {
			m.turn = -m.turn
		}
		c.moves[i] = m
	}
}
