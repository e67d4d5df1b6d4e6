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
	sources := make([][2][]source, len(piece.Works())) // match crosses, then all else
	bed := d.OnBed()
	finder := leads{length: s.Lead, sheet: geom.Box{Max: geom.Pt(bed.Width, bed.Height)}}
	for _, l := range d.Lines {
		if s.answer(l) != done {
			continue
		}
		group := 1
		if l.Role == piece.MatchCross {
			group = 0
		}
		some, err := s.sources(l, d.Field, &finder)
		if err != nil {
			return nil, err
		}
		sources[l.Work][group] = append(sources[l.Work][group], some...)
	}
	var out []cut
	at := geom.Point{}
	for _, w := range piece.Works() {
		for _, some := range sources[w] {
			paths := make([]travel.Path, len(some))
			for i, src := range some {
				paths[i] = src.path
			}
			for _, step := range travel.Order(paths, at) {
				c := s.cut(some[step.Path], step, w, finder)
				out = append(out, c)
				if n := len(c.moves); n > 0 {
					at = c.moves[n-1].to
				}
			}
		}
	}
	return out, nil
}

// sources returns the paths of a line in a field, where there is one, and takes every
// closed cut up among those that lead-ins keep clear of.
func (s Settings) sources(l piece.Line, f *export.Field, finder *leads) ([]source, error) {
	lines := []piece.Line{l}
	if at, ok := s.drilled(l); ok && l.Closed {
		lines[0].Points, lines[0].Closed = geom.Polyline{at}, false
	} else if l.Closed {
		rings, err := s.cutPaths(l)
		if err != nil {
			return nil, err
		}
		lines = lines[:0]
		for _, r := range rings {
			l.Points = geom.Polyline(r)
			lines = append(lines, l)
		}
	}
	var out []source
	for _, l := range lines {
		ring := -1
		if l.Closed && export.Through(l.Work) {
			path := geom.Ring(l.Points.Moved(geom.Motion{Shift: f.Shift()}))
			ring = len(finder.rings)
			finder.rings = append(finder.rings, ringCut{path, path.Bounds(), l.Work})
		}
		// A knife's holder goes past a corner by its trail.
		for _, part := range f.Parts(l, s.Trail+fieldClear) {
			src := source{l.Name, travel.Path{Points: part.Points.Moved(geom.Motion{Shift: f.Shift()}), Closed: part.Closed}, -1}
			if part.Closed {
				src.ring = ring
			}
			out = append(out, src)
		}
	}
	return out, nil
}

// fieldClear is what paths keep from the edges of a field, mm, for rounding.
const fieldClear = 0.1

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
