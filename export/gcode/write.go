package gcode

import (
	"bufio"
	"fmt"
	"io"
	"math"
	"strings"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// decimals of a coordinate in mm, and in inches, a fortieth of a tenth of a micrometre:
// the interpreter compares the radii at both ends of an arc to 0.002 mm, from memory.
const (
	decimals     = 4
	inchDecimals = 6
)

const mmPerInch = 25.4

// WriteFor writes the drawing as a program for the machine of the settings. Where they
// lack what the program needs the error is an [UnsetError].
func WriteFor(out io.Writer, d export.Drawing, o export.Options, s Settings) error {
	if err := s.Validate(); err != nil {
		return export.Refuse(export.InMachine, err)
	}
	plain, err := d.Plain(o)
	if err != nil {
		return err
	}
	s.inches = o.Inches
	if err := s.check(plain); err != nil {
		return err
	}
	cuts, err := s.plan(plain)
	if err != nil {
		return export.Refuse(export.AtDrawing, d.Name, err)
	}
	plain = plain.OnBed()
	if err := s.Bed.Reach(plain, o.Axes, way(cuts)); err != nil {
		return err
	}
	for i := range cuts {
		cuts[i].count(o.Axes, plain)
	}
	w := &program{Writer: bufio.NewWriter(out), settings: s, say: o.Note}
	w.head(plain, o)
	w.lineUp(plain, o.Axes)
	if s.Frame {
		w.frame(cuts)
	}
	switch s.Air {
	case design.Mist:
		w.line("M7")
	case design.Flood:
		w.line("M8")
	}
	for i, c := range cuts {
		if i == 0 || cuts[i-1].work != c.work {
			w.comment("work " + c.work.String())
			w.begin(s.job(c.work))
		}
		w.cut(c)
	}
	w.tail()
	return w.Flush() // holds the first error of all
}

// program writes the lines of a program.
type program struct {
	*bufio.Writer
	settings Settings
	say      func(export.Note) string
	feed     float64    // in force
	at       geom.Point // where the last move ended
}

func (w *program) line(format string, args ...any) { fmt.Fprintf(w, format+"\n", args...) }

// tail ends the program: the tool off, back at the zero.
func (w *program) tail() {
	w.off()
	w.line("M5")
	if w.settings.Air != design.NoAir {
		w.line("M9")
	}
	w.line("G0 %s", w.xy(geom.Point{}))
	w.own(w.settings.Footer)
	w.line("M2")
}

// own writes lines of the owner's own.
func (w *program) own(lines []string) {
	if len(lines) == 0 {
		return
	}
	w.comment(ownBegin)
	for _, l := range lines {
		w.line("%s", l)
	}
	w.comment(ownEnd)
}

// maxComment keeps lines within what small controllers take, parentheses and all.
const maxComment = design.MaxBlock - len("(  )")

// comment writes a comment. Nothing in it can end it, begin another or mean
// anything to a sender of programs: only letters, digits and a few signs are left.
func (w *program) comment(text string) {
	var b strings.Builder
	for _, r := range export.OneLine(text) {
		switch {
		case b.Len() >= maxComment:
		case r > ' ' && r <= '~' && !strings.ContainsRune("()%;*$!?@#{}\\~", r):
			b.WriteRune(r)
		case r == ' ':
			b.WriteByte(' ')
		default:
			b.WriteByte('_')
		}
	}
	// "MSG," and its like at the beginning would be shown or printed.
	w.line("( %s )", strings.ReplaceAll(b.String(), ",", " "))
}

// remark writes a remark. Each line begins with a word that tells it from the comments
// that are read back.
func (w *program) remark(text string) { w.wrapped("note:", text) }

// wrapped writes a comment on as many lines as it takes, each with the same head.
func (w *program) wrapped(head, text string) {
	line := head
	for _, word := range strings.Fields(export.OneLine(text)) {
		if line != head && len(line)+1+len(word) > maxComment {
			w.comment(line)
			line = head
		}
		line += " " + word
	}
	w.comment(line)
}

// num writes a number that has no length in it.
func num(v float64) string { return export.Fixed(v, decimals) }

// length writes a length, mm, or a speed, mm/min, in the unit of the program.
func (w *program) length(mm float64) string {
	if w.settings.inches {
		return export.Fixed(mm/mmPerInch, inchDecimals)
	}
	return num(mm)
}

func (w *program) xy(p geom.Point) string { return "X" + w.length(p.X) + " Y" + w.length(p.Y) }

// head writes what the program is and sets the modes: the unit, absolute, plane XY, no
// compensation, no canned cycle, feed by the minute, exact path.
func (w *program) head(d export.Drawing, o export.Options) {
	s := w.settings
	w.wrapped("slingloft", d.Title)
	w.comment(fmt.Sprintf("sheet %s x %s %s scale %s", w.length(d.Width), w.length(d.Height), s.unit(), export.ScaleText(o.ScaleFactor())))
	w.comment("zero " + o.Note(export.Tell(zeroOn(d), o.Axes.Origin)))
	w.comment(fmt.Sprintf("tool %[1]s kerf %[2]s %[5]s lead %[3]s %[5]s trail %[4]s %[5]s",
		s.Tool, w.length(s.Kerf), w.length(s.Lead), w.length(s.Trail), s.unit()))
	if d.Field != nil {
		w.remark(o.Note(s.ofField(d.Field)))
	}
	for _, n := range s.remarks(d) {
		w.remark(o.Note(n))
	}
	w.own(s.Header)
	unit := "G21"
	if w.settings.inches {
		unit = "G20"
	}
	if s.Controller == design.Lean {
		w.line("G17 %s G90 G94", unit)
	} else {
		w.line("G17 %s G40 G49 G80 G90 G94", unit)
		w.line("G61")
	}
	w.line("M5")
	if s.Tool != design.Laser {
		w.line("G0 Z%s", w.length(s.Safe))
	}
}

// zeroOn returns what the zero lies on.
func zeroOn(d export.Drawing) export.NoteKind {
	if d.Field != nil {
		return export.CornerOfField
	}
	return export.CornerOfStock
}

// way returns the box around all moves.
func way(cuts []cut) geom.Box {
	box := geom.EmptyBox()
	for _, c := range cuts {
		box = box.With(c.start)
		for _, m := range c.moves {
			box = box.With(m.to)
		}
	}
	return box
}

// frame goes round all work with the tool off, so that one sees where it will be,
// and pauses.
func (w *program) frame(cuts []cut) {
	box := way(cuts)
	if box.Empty() {
		return
	}
	w.comment("frame")
	for _, p := range box.Ring().Closed() {
		w.line("G0 %s", w.xy(p))
	}
	w.pause()
}

// pause pauses as the machine does.
func (w *program) pause() {
	switch w.settings.Pause {
	case design.Halt:
		w.line("M0")
	case design.OptionalHalt:
		w.line("M1")
	}
}

// lineUp goes to each cross of a field that was made with the field before, and pauses
// there with the tool off.
func (w *program) lineUp(d export.Drawing, a export.Axes) {
	if d.Field == nil || w.settings.Pause == design.NoPause {
		return
	}
	for _, m := range d.Field.Match {
		w.comment("match " + m.Name)
		w.line("G0 %s", w.xy(a.Apply(m.At, d.Width, d.Height)))
		w.pause()
	}
}

// begin makes the tool ready for a kind of work.
func (w *program) begin(j Job) {
	w.feed = 0
	if w.settings.Tool == design.Router {
		w.line("M3 S%s", num(j.Power))
		w.line("G4 P%s", num(w.settings.SpinUp))
	}
}

// off stops the beam or lifts the tool.
func (w *program) off() {
	if w.settings.Tool == design.Laser {
		w.line("M5")
	} else {
		w.line("G0 Z%s", w.length(w.settings.Safe))
	}
}

// cut follows one path in all its passes.
func (w *program) cut(c cut) {
	j := w.settings.job(c.work)
	j.Depth = w.settings.depth(c.work)
	w.comment("path " + c.name)
	if c.noRoom {
		w.comment(w.say(export.Tell(export.NoRoomForLead)))
	}
	for pass := 1; pass <= j.Passes; pass++ {
		if pass > 1 {
			w.comment(fmt.Sprintf("pass %d", pass))
		}
		w.line("G0 %s", w.xy(c.start))
		w.at = c.start
		depth := j.Depth * float64(pass) / float64(j.Passes)
		w.on(j, depth)
		w.follow(c, j, depth)
		w.off()
	}
}

// on starts the beam or lowers the tool.
func (w *program) on(j Job, depth float64) {
	if w.settings.Tool == design.Laser {
		w.beam(j)
		return
	}
	w.line("G1 Z%s F%s", w.length(-depth), w.length(w.settings.Plunge))
	w.feed = w.settings.Plunge
}

// beam turns the laser on.
func (w *program) beam(j Job) {
	word := "M3"
	if w.settings.Dynamic {
		word = "M4"
	}
	w.line("%s S%s", word, num(j.Power))
}

// follow makes the moves of a path, over tabs with the beam off or the tool
// raised as far as the tab is high.
func (w *program) follow(c cut, j Job, depth float64) {
	laser := w.settings.Tool == design.Laser
	over := math.Min(depth, j.Depth-w.settings.TabHeight) // depth above a tab
	up := false
	for _, m := range c.moves {
		if m.lifted != up && (laser || over < depth) {
			up = m.lifted
			switch {
			case laser && up:
				w.line("M5")
			case laser:
				w.beam(j)
			case up:
				w.line("G1 Z%s F%s", w.length(-math.Max(0, over)), w.length(w.settings.Plunge))
			default:
				w.line("G1 Z%s F%s", w.length(-depth), w.length(w.settings.Plunge))
			}
			w.feed = 0
		}
		w.step(m, j.Feed, laser && m.lifted)
	}
}

// step makes one move; rapid skips a laser over a tab.
func (w *program) step(m move, feed float64, rapid bool) {
	if rapid {
		w.line("G0 %s", w.xy(m.to))
		w.at = m.to
		return
	}
	suffix := ""
	if feed != w.feed {
		suffix = " F" + w.length(feed)
		w.feed = feed
	}
	if m.turn == 0 {
		w.line("G1 %s%s", w.xy(m.to), suffix)
		w.at = m.to
		return
	}
	word := "G3"
	if m.turn < 0 {
		word = "G2"
	}
	// I and J lead from where the arc begins, as it stands in the program, to its
	// centre.
	toCentre := m.centre.Minus(w.rounded(w.at))
	w.line("%s %s I%s J%s%s", word, w.xy(m.to), w.length(toCentre.X), w.length(toCentre.Y), suffix)
	w.at = m.to
}

// rounded returns the point that stands in a program for p.
func (w *program) rounded(p geom.Point) geom.Point {
	k := 1e4 // by the number of decimals
	if w.settings.inches {
		k = 1e6 / mmPerInch
	}
	return geom.Pt(math.Round(p.X*k)/k, math.Round(p.Y*k)/k)
}

// workNamed returns the kind of work of a name, as comments give it.
func workNamed(name string) (piece.Work, bool) {
	for _, w := range piece.Works() {
		if w.String() == name {
			return w, true
		}
	}
	return 0, false
}
