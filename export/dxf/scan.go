package dxf

import (
	"slingloft/export"

	"bufio"
	"errors"
	"io"
	"math"
	"strconv"
	"strings"
)

// What is read at most.
const (
	maxPairs      = 50_000_000
	maxLine       = 1 << 20
	maxCoordinate = 1e9 // mm
)

// pair is a group code with its value.
type pair struct {
	code  int
	value string
}

// scanner reads pairs, one of which can be put back.
type scanner struct {
	lines *bufio.Scanner
	line  int // number of the line read last
	held  *pair
	left  int // pairs that may still be read
}

func newScanner(r io.Reader) *scanner {
	lines := bufio.NewScanner(r)
	lines.Buffer(make([]byte, 0, 1<<16), maxLine)
	return &scanner{lines: lines, left: maxPairs}
}

// sections hands every pair to visit, with the section that it stands in, "" between
// sections, until the end of the file. What belongs to a pair visit may read on its own.
func (s *scanner) sections(visit func(section string, p pair) error) error {
	section := ""
	for {
		p, err := s.next()
		if errors.Is(err, io.EOF) {
			return export.Refuse(export.EndMissing)
		}
		if err != nil {
			return err
		}
		switch {
		case p.code == 0 && p.value == "EOF":
			return nil
		case p.code == 0 && p.value == "SECTION":
			if p, err = s.next(); err != nil {
				return err
			}
			section = p.value
		case p.code == 0 && p.value == "ENDSEC":
			section = ""
		default:
			if err := visit(section, p); err != nil {
				return err
			}
		}
	}
}

// next returns the next pair; io.EOF after the last.
func (s *scanner) next() (pair, error) {
	if s.held != nil {
		p := *s.held
		s.held = nil
		return p, nil
	}
	for {
		code, err := s.text()
		if err != nil {
			return pair{}, err
		}
		value, err := s.text()
		if errors.Is(err, io.EOF) {
			return pair{}, export.Refuse(export.GroupBare, s.line)
		}
		if err != nil {
			return pair{}, err
		}
		n, err := strconv.Atoi(strings.TrimSpace(code))
		if err != nil {
			return pair{}, export.Refuse(export.GroupCode, s.line-1, code)
		}
		if s.left--; s.left < 0 {
			return pair{}, export.Refuse(export.TooManyGroups)
		}
		if n != 999 { // a comment
			return pair{n, strings.TrimSpace(value)}, nil
		}
	}
}

func (s *scanner) back(p pair) { s.held = &p }

func (s *scanner) text() (string, error) {
	if !s.lines.Scan() {
		if err := s.lines.Err(); err != nil {
			return "", export.Refuse(export.AtLine, s.line+1, err)
		}
		return "", io.EOF
	}
	s.line++
	return strings.TrimSuffix(s.lines.Text(), "\r"), nil
}

// number reads a value as a finite number.
func (p pair) number() (float64, error) {
	v, err := strconv.ParseFloat(p.value, 64)
	if err != nil || math.IsNaN(v) || math.Abs(v) > maxCoordinate {
		return 0, export.Refuse(export.GroupNumber, p.code, p.value)
	}
	return v, nil
}

// integer reads a value as an integer; those of no use here are far below the bound.
func (p pair) integer() (int, error) {
	v, err := strconv.Atoi(p.value)
	if err != nil || v > math.MaxInt32 || v < math.MinInt32 {
		return 0, export.Refuse(export.GroupInteger, p.code, p.value)
	}
	return v, nil
}
