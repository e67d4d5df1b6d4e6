// Package prove reads a file that was written for a drawing and says how far it
// agrees with it: size of the sheet, check bars, every line's place, shape, kind of
// work and closedness, and the layers. It finds files that were rescaled, edited
// by hand or written for something else.
//
// Where the format keeps all of a drawing the file is compared with the drawing
// itself; otherwise with a file written anew and read by the same reader.
package prove

import (
	"bytes"
	"math"
	"slices"

	"slingloft/export"
	"slingloft/outline/geom"
)

// Limit is how far a point may lie from its place, mm, where the format does not
// round more coarsely: a hundredth, as all lengths are true to that.
const Limit = 0.01

// Sheet is what a file should hold and how it was written.
type Sheet struct {
	Drawing export.Drawing
	Options export.Options
	Format  export.Format
	Codec   export.Codec // of the format
}

// Report is what was found in a file.
type Report struct {
	Lines int     // that were compared
	Worst float64 // greatest deviation of a point among them, mm
	Where string  // the line that holds it
	Limit float64 // how far one may lie from its place, mm
	// Found and Due are the measures of the file and those that it should have.
	Found, Due Measures
	// Faults are what does not agree, the gravest first; none if the file agrees.
	Faults []export.Note

	inches bool // lengths are told in inches
}

// figure returns a length, mm, to a hundredth of it or as fine in inches, without its
// unit; long with it.
func (r Report) figure(mm float64) string {
	if r.inches {
		return export.Fixed(mm/25.4, 4)
	}
	return export.Fixed(mm, 2)
}

func (r Report) long(mm float64) string {
	if r.inches {
		return r.figure(mm) + " in"
	}
	return r.figure(mm) + " mm"
}

// Agrees reports whether the file agrees in all that was compared.
func (r Report) Agrees() bool { return len(r.Faults) == 0 }

// Text returns the report on one line.
func (r Report) Text(say export.Words) string {
	const maxFaults = 5
	if !r.Agrees() {
		faults := r.Faults
		if n := len(faults) - maxFaults; n > 0 {
			faults = append(slices.Clone(faults[:maxFaults]), export.Tell(export.MoreNotes, n))
		}
		return say.Note(export.Tell(export.Disagrees, say.Joined(faults)))
	}
	if r.Lines == 0 {
		return say.Note(export.Tell(export.SamePicture))
	}
	worst := export.Fixed(r.Worst, 4) + " mm"
	if r.inches {
		worst = export.Fixed(r.Worst/25.4, 6) + " in"
	}
	return say.Note(export.Tell(export.Agreeing, r.Lines, worst))
}

func (r *Report) fault(kind export.NoteKind, data ...any) {
	r.Faults = append(r.Faults, export.Tell(kind, data...))
}

// File compares the content of a file with the sheet that it should hold. The
// error says that it cannot be read, or that the sheet cannot be written.
func File(data []byte, s Sheet) (Report, error) {
	r := Report{inches: s.Options.Inches}
	var anew bytes.Buffer
	if err := s.Codec.Write(&anew, s.Drawing, s.Options); err != nil {
		return r, err
	}
	got, err := s.Codec.Read(bytes.NewReader(data))
	if err != nil {
		return r, err
	}
	want, err := s.expected(anew.Bytes())
	if err != nil {
		return r, err
	}
	limit := math.Max(Limit, 1.5*s.Codec.Tolerance)
	r.Limit, r.Found, r.Due = limit, measuresOf(got, s.Codec.Keeps), measuresOf(want, s.Codec.Keeps)
	sizeOff := r.size(got, want, limit)
	if s.Codec.Keeps == export.Size {
		return r, r.unread(data, anew.Bytes(), s.Codec)
	}
	// Nothing is compared line by line where there is no end of lines to compare.
	if n := len(got.Lines); n > 4*len(want.Lines)+1000 {
		r.fault(export.LineCount, n, len(want.Lines))
		return r, nil
	}
	var m match
	if s.Codec.Keeps == export.Names {
		m = byName(want.Lines, got.Lines, limit)
	} else {
		m = byPlace(want.Lines, got.Lines, limit)
	}
	r.bars(limit)
	r.lines(m, got, want, limit)
	if only := len(r.Faults) == 1; only && sizeOff && s.Format.SizeUnsure {
		r.Faults = nil
	}
	return r, r.unread(data, anew.Bytes(), s.Codec)
}

// unread compares what the reader does not give back.
func (r *Report) unread(got, due []byte, c export.Codec) error {
	if c.Layers != nil {
		r.Faults = append(r.Faults, export.LayerFaults(c.Layers(got), c.Layers(due))...)
	}
	if c.Faults != nil {
		faults, err := c.Faults(got, due)
		if err != nil {
			return err
		}
		r.Faults = append(r.Faults, faults...)
	}
	return nil
}

// expected returns what the reader should find: the plain drawing, if the format
// keeps it whole, or else what it finds in the file written anew.
func (s Sheet) expected(anew []byte) (export.Drawing, error) {
	read, err := s.Codec.Read(bytes.NewReader(anew))
	if err != nil || s.Codec.Keeps != export.Names {
		return read, err
	}
	plain, err := s.Drawing.Plain(s.Options)
	if err != nil || len(plain.Lines) != len(read.Lines) {
		return read, err // divided into pages
	}
	return plain, nil
}

// size compares the sizes of the sheets and reports whether they differ.
func (r *Report) size(got, want export.Drawing, limit float64) bool {
	if math.Abs(got.Width-want.Width) > limit || math.Abs(got.Height-want.Height) > limit {
		r.fault(export.SheetOff, r.figure(got.Width), r.long(got.Height), r.figure(want.Width), r.figure(want.Height))
		return true
	}
	return false
}

// bars compares the check bars, where they can be told from other lines; bars that
// are gone are named with the other lines.
func (r *Report) bars(limit float64) {
	var off []export.Note
	for _, a := range r.Found.Bars {
		for _, b := range r.Due.Bars {
			if a.Name == b.Name && math.Abs(a.Length-b.Length) > limit {
				off = append(off, export.Tell(export.BarOff, a.Name, r.long(a.Length), r.figure(b.Length)))
			}
		}
	}
	if len(off) > 0 {
		r.fault(export.SeveralOff, off)
	}
}

// lines says what came of the comparison of lines.
func (r *Report) lines(m match, got, want export.Drawing, limit float64) {
	r.Lines = len(m.pairs)
	var off []pair
	var other []export.Note
	for _, p := range m.pairs {
		if p.off > r.Worst || r.Where == "" {
			r.Worst, r.Where = p.off, p.want.Name
		}
		if p.off > limit {
			off = append(off, p)
		}
		if p.want.Work != p.got.Work {
			other = append(other, export.Tell(export.WorkOff, named(p.want), p.got.Work, p.want.Work))
		} else if p.want.Closed != p.got.Closed {
			is := export.LineOpen
			if p.got.Closed {
				is = export.LineClosed
			}
			other = append(other, export.Tell(is, named(p.want)))
		}
	}
	if len(off) > 0 {
		worst := slices.MaxFunc(off, func(a, b pair) int { return int(math.Copysign(1, a.off-b.off)) })
		r.fault(export.LinesOff, counted(len(off)), named(worst.want), r.long(worst.off))
	}
	if 2*len(off) > len(m.pairs) {
		r.scale(got, want)
	}
	r.list(export.LinesMissing, m.missing)
	r.list(export.LinesStrange, m.extra)
	r.Faults = append(r.Faults, other...)
}

func counted(n int) export.Note {
	if n == 1 {
		return export.Tell(export.LineCounted)
	}
	return export.Tell(export.LinesCounted, n)
}

// scale says by how much everything is larger than it should be.
func (r *Report) scale(got, want export.Drawing) {
	a, b := boundsOf(got), boundsOf(want)
	if b.Width() == 0 || b.Height() == 0 {
		return
	}
	kx, ky := a.Width()/b.Width(), a.Height()/b.Height()
	const noise = 1e-5
	if math.Abs(kx-1) > noise || math.Abs(ky-1) > noise {
		r.fault(export.Rescaled, 100*kx, 100*ky)
	} else if d := a.Min.Minus(b.Min); d.Len() > Limit {
		r.fault(export.Displaced, r.long(d.X), r.long(d.Y))
	}
}

func boundsOf(d export.Drawing) geom.Box {
	box := geom.EmptyBox()
	for _, l := range d.Lines {
		box = box.Union(l.Points.Bounds())
	}
	return box
}

// list gives the names of lines that only one side has.
func (r *Report) list(what export.NoteKind, names []export.Note) {
	const maxNames = 3
	switch n := len(names); {
	case n > maxNames:
		r.fault(what, export.Tell(export.MoreLines, names[:maxNames], n-maxNames))
	case n > 0:
		r.fault(what, names)
	}
}
