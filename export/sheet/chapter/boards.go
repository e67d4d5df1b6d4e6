package chapter

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"slingloft/export/sheet"
	"slingloft/export/sheet/given"
	"slingloft/export/sheet/sketch"
	"slingloft/outline/piece"
)

// templates shows every template where it lies on the cloth and tells how it is laid,
// and how the gauges are used.
func (b build) templates() (sheet.Section, error) {
	s := sheet.Section{ID: "boards", Title: b.Say.Boards.Title}
	if len(b.Boards) == 0 {
		return s, nil
	}
	var all sheet.Steps
	for _, q := range b.Boards {
		if len(q.Lie.Places) > 0 && len(sketch.LiesOn(b.Data, q)) > 0 {
			all = append(all, b.laid(q))
		}
	}
	for use := range piece.BoardUseCount {
		if do := b.gaugeDo(use); len(do) > 0 {
			if q, ok := b.board(use); ok {
				name := given.Capital(b.Say.Shop.Kinds[use])
				all = append(all, sheet.Step{ID: "board-" + q.ID, Title: name, Do: append(slices.Clone(do), b.used(use)),
					Figures: sheet.Figures{{Picture: sketch.Gauge(b.Data, q), Caption: fmt.Sprintf(b.Say.Boards.Gauge.Caption, name)}}})
			}
		}
	}
	s.Add(sheet.Para(b.Say.Boards.How), all, b.templateTable())
	return s, nil
}

// board returns the first template or gauge of a use.
func (b build) board(use piece.BoardUse) (piece.Piece, bool) {
	i := slices.IndexFunc(b.Boards, func(q piece.Piece) bool { return q.Lie.For == use })
	if i < 0 {
		return piece.Piece{}, false
	}
	return b.Boards[i], true
}

// used says in which steps templates of a use are at hand.
func (b build) used(use piece.BoardUse) string {
	return fmt.Sprintf(b.Say.Boards.UsedIn, b.usedIn(use))
}

// gaugeDo tells how the gauges of a use are used.
func (b build) gaugeDo(use piece.BoardUse) []string {
	say := b.Say.Boards
	switch use {
	case piece.PressBoard:
		return say.Press
	case piece.AllowBoard:
		return say.Allow
	case piece.CordBoard:
		return say.Cord
	case piece.NotchBoard:
		return say.Notch
	}
	return nil
}

// laid tells how a template is laid.
func (b build) laid(q piece.Piece) sheet.Step {
	say := b.Say.Boards
	s := sheet.Step{ID: "board-" + q.ID, Title: sketch.Titled(q)}
	s.Do = append(b.rests(q.Lie), b.drawn(q.Lie.For)...)
	for over, text := range []string{say.Up, say.Over} {
		if gives := b.gives(q.Lie, over == 1); gives != "" {
			s.Do = append(s.Do, fmt.Sprintf(text, gives))
		}
	}
	switch q.Lie.For {
	case piece.SideBoard, piece.LiningSideBoard:
		if q.Lie.Places[0].Part != piece.AllOfIt {
			s.Do = append(s.Do, say.MeetsSide)
		}
		s.Do = append(s.Do, fmt.Sprintf(say.AtEnds, b.listed(b.barNumbers(q.Lie.Places[0].Part))))
	case piece.HollowBoard, piece.CoverBoard:
		if len(q.Lie.Rests) > 1 {
			s.Do = append(s.Do, say.MeetsEdge)
		}
	case piece.TailBoard, piece.LiningTailBoard, piece.CapBoard, piece.RoundBoard:
		s.Do = append(s.Do, say.MeetsHalf)
	}
	for _, name := range notchesOf(q) {
		if up, over, ok := strings.Cut(name, "/"); ok && q.Lie.For.Side() {
			s.Do = append(s.Do, fmt.Sprintf(say.OfHalves, name, up, over))
		} else if ok {
			s.Do = append(s.Do, fmt.Sprintf(say.Halved, name, up, over))
		} else if q.Lie.For.Side() {
			s.Do = append(s.Do, fmt.Sprintf(say.Numbered, name))
		}
	}
	s.Do = append(s.Do, b.used(q.Lie.For))
	s.Figures = sheet.Figures{{Picture: sketch.Lie(b.Data, q), Caption: fmt.Sprintf(say.Lie.Caption, s.Title)}}
	return s
}

// drawn tells along which edges of a template one draws, and along which not.
func (b build) drawn(use piece.BoardUse) []string {
	say := b.Say.Boards
	switch use {
	case piece.FacingBoard:
		return []string{say.EdgeRound}
	case piece.TailBoard:
		return []string{say.EdgeTail, say.NoEdgeTail}
	case piece.CapBoard:
		return []string{say.EdgeCap, say.NoEdgeCap}
	}
	return []string{say.Edge, say.NoEdge}
}

// rests tells by what a template is laid: its straight edge, then its ends.
func (b build) rests(l piece.Lie) []string {
	say := b.Say.Boards
	straight, ends := l.Rests[0], l.Rests[1:]
	out := []string{fmt.Sprintf(say.On, say.Seen[straight.On])}
	switch {
	case straight.Off > 0:
		out[0] = fmt.Sprintf(say.Beside, b.Cloth(straight.Off), say.Seen[straight.On])
	case straight.Off < 0:
		out[0] = fmt.Sprintf(say.Inside, b.Cloth(-straight.Off), say.Seen[straight.On])
	}
	switch len(ends) {
	case 0:
	case 1:
		if l.For.Tail() { // it is what draws the bar line
			return append(out, say.EndTail)
		}
		out = append(out, fmt.Sprintf(say.End, say.Seen[ends[0].On]))
	default:
		out = append(out, fmt.Sprintf(say.EndsOn, b.Both(say.Seen[ends[0].On], say.Seen[ends[1].On])))
	}
	return out
}

// gives names what a template gives, turned over or not.
func (b build) gives(l piece.Lie, over bool) string {
	say := b.Say.Boards
	var out []string
	for _, at := range l.Places {
		if at.Over != over {
			continue
		}
		side := say.Sides[at.Side]
		switch l.For {
		case piece.SideBoard, piece.LiningSideBoard:
			out = append(out, fmt.Sprintf(say.SideOf, side, say.Parts[at.Part]))
		case piece.HollowBoard, piece.CoverBoard: // of all edges alike
			return b.givesEdge(l, over)
		case piece.FacingBoard:
			out = append(out, fmt.Sprintf(say.FacingOf, side))
		default:
			out = append(out, fmt.Sprintf(say.HalfOf, side))
		}
	}
	if len(out) == 2 {
		return b.Both(out[0], out[1])
	}
	return strings.Join(out, ", ")
}

// givesEdge names what a template of a hollow edge gives.
func (b build) givesEdge(l piece.Lie, over bool) string {
	say := b.Say.Boards.HalfEdge
	switch {
	case len(l.Rests) < 2: // no middle line
		return say[2]
	case over:
		return say[1]
	}
	return say[0]
}

// barNumbers returns the numbers of the notches at the bars that lie at the ends of a
// stretch of the side.
func (b build) barNumbers(part piece.Stretch) []string {
	var out []string
	for _, n := range b.Sewn.SideNotches {
		if n.Bar {
			out = append(out, strconv.Itoa(n.Number))
		}
	}
	if len(out) == 2 && part == piece.HeadHalf {
		return out[:1]
	}
	if len(out) == 2 && part == piece.FootHalf {
		return out[1:]
	}
	return out
}

// listed writes up to two names beside each other.
func (b build) listed(names []string) string {
	if len(names) == 2 {
		return b.Both(names[0], names[1])
	}
	return strings.Join(names, ", ")
}

// notchesOf lists the names of a template's notches, each once.
func notchesOf(q piece.Piece) []string {
	var names []string
	for _, l := range q.Lines {
		if l.Role == piece.NotchStroke && !slices.Contains(names, l.Of) {
			names = append(names, l.Of)
		}
	}
	return names
}
