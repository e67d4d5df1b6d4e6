package gcode

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// UnsetError says what the machine's settings lack without which there is no program.
type UnsetError []Lack

// Lack is one thing that is not set: its key, what was found in its place and what
// would do.
type Lack struct {
	Key         design.Key
	Found, Hint string
}

// Error returns a line for each lack.
func (e UnsetError) Error() string {
	lines := make([]string, len(e))
	for i, l := range e {
		lines[i] = string(l.Key) + ": " + l.Found + "; " + l.Hint
	}
	return strings.Join(lines, "\n")
}

// With returns all lacks of both, each once.
func (e UnsetError) With(more UnsetError) UnsetError {
	out := slices.Clone(e)
	for _, l := range more {
		if !slices.Contains(out, l) {
			out = append(out, l)
		}
	}
	return out
}

// answer is what the settings say to a line.
type answer int

// The answers.
const (
	done    answer = iota
	skipped        // a job says to leave it out
	unasked        // only a job that names the work and the material would have it done
	unset          // no job says how
)

// answer says whether a line is done. A program marks nothing on cloth, and a knife
// marks nothing at all, unless a job asks for it by name: such marks are cuts or
// burns. So are slits in cloth, which are slit when their edges are bound.
func (s Settings) answer(l piece.Line) answer {
	j := s.job(l.Work)
	switch {
	case j.Skip:
		return skipped
	case !j.Named && export.ByNameOnly(s.Tool, s.Of.Stock, l):
		return unasked
	case len(s.lacks(l.Work)) > 0:
		return unset
	}
	return done
}

// lacks returns the keys of a job that the tool needs and that are not given.
func (s Settings) lacks(w piece.Work) []string {
	var out []string
	j := s.job(w)
	if j.Feed == 0 {
		out = append(out, "feed")
	}
	if j.Power == 0 && (s.Tool == design.Laser || s.Tool == design.Router) {
		out = append(out, "power")
	}
	if s.Tool != design.Laser && s.depth(w) == 0 && !s.deep(w) {
		out = append(out, "depth")
	}
	return out
}

// sorted is the lines of a drawing by what the settings say to them.
type sorted struct {
	works  [unset + 1][]piece.Work // by answer, each once, in the order of work
	slits  [unset + 1]bool         // by answer
	uncut  []piece.Work            // what is to be cut through but no job says how
	caught bool                    // work on cloth beside its cutting is done
}

func (s Settings) sort(d export.Drawing) sorted {
	var out sorted
	note := func(l piece.Line) {
		a := s.answer(l)
		if export.Slit(l) && s.Of.Stock == piece.Cloth {
			out.slits[a] = true
		} else {
			out.works[a] = append(out.works[a], l.Work)
		}
		if a == unset && export.Through(l.Work) {
			out.uncut = append(out.uncut, l.Work)
		}
		out.caught = out.caught || a == done && s.Of.Stock == piece.Cloth && (export.Slit(l) || !export.Through(l.Work)) && s.Tool != design.Pen
	}
	for _, l := range d.Lines {
		note(l)
	}
	if len(d.Labels) > 0 {
		note(piece.Line{Work: piece.Lettering})
	}
	for i := range out.works {
		out.works[i] = each(out.works[i])
	}
	out.uncut = each(out.uncut)
	return out
}

// each returns every kind of work once, in the order of work.
func each(works []piece.Work) []piece.Work {
	slices.Sort(works)
	return slices.Compact(works)
}

// check refuses a drawing that cannot be cut, or of which nothing is left to do, for
// want of a job, and a tool of which nobody said how fast it goes down.
func (s Settings) check(d export.Drawing) error {
	all := s.sort(d)
	lacking := all.uncut
	if nothing := len(all.works[done]) == 0 && !all.slits[done]; nothing && len(lacking) == 0 {
		lacking = all.works[unset]
		if len(lacking) == 0 {
			lacking = all.works[unasked]
		}
	}
	var out UnsetError
	for _, w := range lacking {
		out = append(out, s.jobless(w))
	}
	out = append(out, s.unsetTool()...)
	for _, w := range all.works[done] {
		out = append(out, s.wrongDepth(w)...)
	}
	if len(out) > 0 {
		return out
	}
	return nil
}

// jobless is the lack of a job for a kind of work.
func (s Settings) jobless(w piece.Work) Lack {
	name := strconv.Quote(s.Of.Name)
	lines := fmt.Sprintf("[[machine.job]], work = %q, material = %s", w, name)
	for _, key := range s.lacks(w) {
		lines += ", " + key + " = " + map[string]string{"feed": `"… ` + s.unit() + `/min"`, "power": "…", "depth": `"… ` + s.unit() + `"`}[key]
	}
	return Lack{design.KeyMachineJob, "no job says how the " + s.Tool.String() + " does " + w.String() + " in " + name,
		"write, each on a line of its own and with values tried on scrap: " + lines}
}

// remarks says what of a drawing is left out of its program, and what to mind.
func (s Settings) remarks(d export.Drawing) []string {
	all := s.sort(d)
	var out []string
	if s.Example {
		out = append(out, "example values, try yours on scrap first")
	}
	if s.Kerf == 0 && !s.Of.OnLines && s.Tool == design.Laser && (slices.ContainsFunc(all.works[done], export.Through)) {
		out = append(out, "cut on the lines, since nothing says how wide the cut is: kerf under [machine], as a kerf comb shows it, cuts beside them")
	}
	if s.Tool == design.Knife && s.Lead == 0 {
		out = append(out, "the knife swings into line on the pieces' edges, where its cuts begin: lead under [machine] begins them in the waste")
	}
	name, tool := strconv.Quote(s.Of.Name), s.Tool.String()
	if works := all.works[unset]; len(works) > 0 {
		out = append(out, "left out: "+export.Listed(works)+": no job says how the "+tool+" does it in "+name)
	}
	out = append(out, export.LeftOut(s.Tool, s.Of.Name, all.works[unasked], all.slits[unasked])...)
	if slices.Contains(all.works[done], piece.Register) {
		out = append(out, d.Room()...)
	}
	if all.caught {
		out = append(out, s.caution(all))
	}
	return out
}

// caution warns of what is done to cloth beside its cutting.
func (s Settings) caution(all sorted) string {
	works := export.Listed(slices.DeleteFunc(slices.Clone(all.works[done]), export.Through))
	if all.slits[done] {
		works = strings.TrimPrefix(works+", slits", ", ")
	}
	how := "cut into"
	if s.Tool == design.Laser {
		how = "burnt into"
	}
	return "caution: " + works + ": " + how + " cloth that carries a person, as a job asks"
}
