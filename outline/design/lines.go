package design

import (
	"sort"
	"unicode/utf8"
)

// lines finds the line and column of an offset.
type lines struct {
	data   []byte
	starts []int // offset of each line's first byte

	// The place asked for last: reading on from there keeps a file that is one long
	// line from taking quadratic time.
	last   int
	lastAt Position
}

// newLines indexes data.
func newLines(data []byte) *lines {
	starts := []int{0}
	for i, c := range data {
		if c == '\n' {
			starts = append(starts, i+1)
		}
	}
	return &lines{data: data, starts: starts, lastAt: Position{1, 1}}
}

// position returns the line and the column, in characters, of an offset.
func (l *lines) position(offset int) Position {
	offset = min(max(offset, 0), len(l.data))
	i := sort.SearchInts(l.starts, offset+1) - 1
	from, column := l.starts[i], 1
	if l.lastAt.Line == i+1 && l.last <= offset {
		from, column = l.last, l.lastAt.Column
	}
	l.last, l.lastAt = offset, Position{i + 1, column + utf8.RuneCount(l.data[from:offset])}
	return l.lastAt
}

// text returns line n, from 1, without its end.
func (l *lines) text(n int) string {
	end := len(l.data)
	if n < len(l.starts) {
		end = l.starts[n] - 1
	}
	line := l.data[l.starts[n-1]:end]
	if len(line) > 0 && line[len(line)-1] == '\r' {
		line = line[:len(line)-1]
	}
	return string(line)
}

// after returns the offset at which the line after line n starts.
func (l *lines) after(n int) int {
	if n < len(l.starts) {
		return l.starts[n]
	}
	return len(l.data)
}

// offset returns the offset of a position, the end of its line for one past it.
func (l *lines) offset(p Position) int {
	at := l.starts[min(max(p.Line, 1), len(l.starts))-1]
	for i := 1; i < p.Column && at < len(l.data) && l.data[at] != '\n'; i++ {
		_, size := utf8.DecodeRune(l.data[at:])
		at += size
	}
	return at
}
