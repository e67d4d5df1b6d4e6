package gcode

import (
	"bufio"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// What is read at most.
const (
	maxLines    = 20_000_000
	maxLineSize = 1 << 16
	maxNumber   = 1e7
)

// Read reads a program that we wrote as the lines that its tool cuts, in mm on the
// sheet: with lead-ins, beside the outlines by half a kerf, parted at tabs, once
// for each pass. Kinds of work and names come from our comments; a line that
// returns to its start is closed; arcs become chords. A program with words that we
// do not write is an error.
func Read(r io.Reader) (export.Drawing, error) {
	m := machine{work: piece.CutOut, scale: 1}
	lines := bufio.NewScanner(r)
	lines.Buffer(make([]byte, 0, 1<<12), maxLineSize)
	n := 0
	for lines.Scan() {
		if n++; n > maxLines {
			return export.Drawing{}, export.Refuse(export.TooManyProgramLines)
		}
		if err := m.line(lines.Text()); err != nil {
			return export.Drawing{}, export.Refuse(export.AtProgramLine, n, err)
		}
	}
	if err := lines.Err(); err != nil {
		return export.Drawing{}, export.Refuse(export.AtProgramLine, n+1, err)
	}
	m.end()
	if m.drawing.Width == 0 {
		return export.Drawing{}, export.Refuse(export.ProgramNameless)
	}
	return m.drawing, nil
}

// machine follows a program.
type machine struct {
	drawing export.Drawing
	scale   float64 // mm in a unit of the program
	points  int

	tool design.Tool
	work piece.Work
	name string
	pass string
	own  bool // within lines of the owner's own, which are not followed

	motion int // 0 to 3
	beam   bool
	at     geom.Point
	height float64
	path   geom.Polyline
}

// line follows one line.
func (m *machine) line(text string) error {
	for {
		open := strings.IndexByte(text, '(')
		if open < 0 {
			break
		}
		length := strings.IndexByte(text[open:], ')')
		if length < 0 {
			return export.Refuse(export.CommentOpen)
		}
		if err := m.comment(strings.TrimSpace(text[open+1 : open+length])); err != nil {
			return err
		}
		text = text[:open] + " " + text[open+length+1:]
	}
	if m.own {
		return nil
	}
	words, err := parse(text)
	if err != nil || len(words) == 0 {
		return err
	}
	return m.block(words)
}

// comment takes what we say in comments.
func (m *machine) comment(text string) error {
	switch text {
	case ownBegin:
		m.own = true
	case ownEnd:
		m.own = false
	}
	kind, rest, _ := strings.Cut(text, " ")
	switch kind {
	case "path":
		m.end()
		m.name, m.pass = rest, ""
	case "pass":
		m.end()
		m.pass = " (" + text + ")"
	case "work":
		m.end()
		if w, ok := workNamed(rest); ok {
			m.work = w
		}
	case "tool":
		name, _, _ := strings.Cut(rest, " ")
		t, err := design.ParseTool(name)
		m.tool = t
		return err
	case "sheet":
		w, after, _ := strings.Cut(rest, " x ")
		h, unit, _ := strings.Cut(after, " ")
		width, errW := strconv.ParseFloat(w, 64)
		height, errH := strconv.ParseFloat(h, 64)
		if strings.HasPrefix(unit, "in ") {
			width, height = width*mmPerInch, height*mmPerInch
		}
		if errW != nil || errH != nil || !export.Inside(width, 1e-3, 2*export.MaxSize) || !export.Inside(height, 1e-3, 2*export.MaxSize) {
			return export.Refuse(export.CommentSheet, rest)
		}
		m.drawing.Width, m.drawing.Height = width, height
	}
	return nil
}

// word is a letter and its number.
type word struct {
	letter byte
	value  float64
}

func parse(text string) ([]word, error) {
	var out []word
	text = strings.ToUpper(strings.TrimSpace(text))
	for text != "" {
		letter := text[0]
		if letter < 'A' || letter > 'Z' {
			return nil, export.Refuse(export.WordMissing, text)
		}
		rest := strings.TrimLeft(text[1:], " \t")
		end := 0
		for end < len(rest) && strings.IndexByte("0123456789.+-", rest[end]) >= 0 {
			end++
		}
		v, err := strconv.ParseFloat(rest[:end], 64)
		if err != nil || math.Abs(v) > maxNumber {
			return nil, export.Refuse(export.WordUnread, text)
		}
		out = append(out, word{letter, v})
		text = strings.TrimLeft(rest[end:], " \t")
	}
	return out, nil
}

// Codes that change nothing that is read.
var (
	silentG = []float64{17, 40, 49, 61, 64, 80, 90, 94}
	silentM = []float64{0, 1, 2, 7, 8, 9, 30}
)

// block carries out the words of one line.
func (m *machine) block(words []word) error {
	to, height := m.at, m.height
	var centre geom.Point
	moves, dwells := false, false
	for _, w := range words {
		switch w.letter {
		case 'G':
			switch {
			case w.value == 4:
				dwells = true
			case w.value == 20:
				m.scale = 25.4
			case w.value == 21:
				m.scale = 1
			case w.value >= 0 && w.value <= 3 && w.value == math.Floor(w.value):
				m.motion = int(w.value)
			case !slices.Contains(silentG, w.value):
				return export.Refuse(export.GStrange, w.value)
			}
		case 'M':
			if err := m.code(w.value); err != nil {
				return err
			}
		case 'X':
			to.X, moves = w.value*m.scale, true
		case 'Y':
			to.Y, moves = w.value*m.scale, true
		case 'Z':
			height, moves = w.value*m.scale, true
		case 'I':
			centre.X = w.value * m.scale
		case 'J':
			centre.Y = w.value * m.scale
		case 'F', 'S', 'N':
		case 'P':
			if !dwells {
				return export.Refuse(export.WordP)
			}
		default:
			return export.Refuse(export.WordStrange, w.letter)
		}
	}
	if moves {
		return m.move(to, height, m.at.Plus(centre))
	}
	return nil
}

// code carries out an M word.
func (m *machine) code(value float64) error {
	switch {
	case value == 3 || value == 4:
		m.beam = true
	case value == 5:
		m.beam = false
		m.end()
	case !slices.Contains(silentM, value):
		return export.Refuse(export.MStrange, value)
	}
	return nil
}

// move goes to a place; what the tool passes over while it cuts is added to the
// path.
func (m *machine) move(to geom.Point, height float64, centre geom.Point) error {
	cuts := m.motion > 0 && ((m.tool == design.Laser && m.beam) || (m.tool != design.Laser && height < 0))
	if !cuts {
		m.end()
	} else if to != m.at {
		if len(m.path) == 0 {
			m.path = geom.Polyline{m.at}
		}
		way := geom.Polyline{to}
		if m.motion > 1 {
			way = arcPoints(m.at, to, centre, m.motion == 3)
		}
		m.path = append(m.path, way...)
		m.points += len(way)
		if m.points > export.MaxPoints || len(m.drawing.Lines) >= export.MaxLines {
			return export.Refuse(export.TooManyLinesAndPoints)
		}
	}
	m.at, m.height = to, height
	return nil
}

// end ends the line that is being cut.
func (m *machine) end() {
	l := piece.Line{Name: export.OneLine(m.name) + m.pass, Work: m.work, Points: m.path}
	m.path = nil
	n := len(l.Points)
	if n < 2 {
		return
	}
	if n > 3 && l.Points[0] == l.Points[n-1] {
		l.Closed, l.Points = true, l.Points[:n-1]
	}
	m.drawing.Lines = append(m.drawing.Lines, l)
}

// arcPoints returns the points of an arc behind its start, chords within 0.005 mm
// of it.
func arcPoints(from, to, centre geom.Point, left bool) geom.Polyline {
	const tolerance = 0.005
	arm := from.Minus(centre)
	turn := to.Minus(centre).Angle() - arm.Angle()
	if left && turn <= 0 {
		turn += 2 * math.Pi
	} else if !left && turn >= 0 {
		turn -= 2 * math.Pi
	}
	out := geom.ArcPoints(centre, arm, turn, tolerance)[1:]
	out[len(out)-1] = to
	return out
}
