package gcode

import (
	"fmt"
	"reflect"
	"slices"
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
	Key   design.Key
	Found design.Finding
	Hint  design.Phrase
}

// Error returns a line in English for each lack.
func (e UnsetError) Error() string {
	lines, say := make([]string, len(e)), design.English()
	for i, l := range e {
		lines[i] = string(l.Key) + ": " + say.Message(design.Fault{Found: l.Found, Hint: design.Hint{Say: l.Hint}})
	}
	return strings.Join(lines, "\n")
}

// With returns all lacks of both, each once.
func (e UnsetError) With(more UnsetError) UnsetError {
	out := slices.Clone(e)
	for _, l := range more {
		if !slices.ContainsFunc(out, func(other Lack) bool { return reflect.DeepEqual(l, other) }) {
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
		marked := export.Slit(l) || !export.Through(l.Work) && l.Work != piece.Register // which lies in the waste
		out.caught = out.caught || a == done && s.Of.Stock == piece.Cloth && marked && s.Tool != design.Pen
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
	lines := fmt.Sprintf("[[machine.job]], work = %q, material = %q", w, s.Of.Name)
	for _, key := range s.lacks(w) {
		lines += ", " + key + " = " + map[string]string{
			"feed": `"… ` + s.unit() + `/min"`, "power": "…", "depth": `"… ` + s.unit() + `"`,
		}[key]
	}
	return Lack{design.KeyMachineJob, design.Found(design.JobMissing, s.Tool, w, s.Of.Name), design.Say(design.WriteJob, lines)}
}

// remarks says what of a drawing is left out of its program, and what to mind.
func (s Settings) remarks(d export.Drawing) []export.Note {
	all := s.sort(d)
	var out []export.Note
	if s.Example {
		out = append(out, export.Tell(export.ExampleValues))
	}
	if d.Field != nil && s.Tabs > 0 {
		out = append(out, export.Tell(export.FieldWithoutTabs))
	}
	if s.Kerf == 0 && !s.Of.OnLines && s.Tool == design.Laser && (slices.ContainsFunc(all.works[done], export.Through)) {
		out = append(out, export.Tell(export.CutOnLines))
	}
	if s.Tool == design.Knife && s.Lead == 0 {
		out = append(out, export.Tell(export.KnifeOnEdges))
	}
	if works := all.works[unset]; len(works) > 0 {
		out = append(out, export.Tell(export.NoJobSays, works, s.Tool, s.Of.Name))
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

// ofField says what to do with the stock before a field of it is worked.
func (s Settings) ofField(f *export.Field) export.Note {
	if len(f.Match) != 2 {
		return export.Tell(export.FieldStarts, f.Number, len(f.Spans))
	}
	return export.Tell(export.FieldGoesOn, f.Number, len(f.Spans), s.said(f.Feed), f.Match[0].Name, f.Match[1].Name)
}

// caution warns of what is done to cloth beside its cutting.
func (s Settings) caution(all sorted) export.Note {
	works := slices.DeleteFunc(slices.Clone(all.works[done]), func(w piece.Work) bool { return export.Through(w) || w == piece.Register })
	var what any = works
	if slits := all.slits[done]; slits && len(works) == 0 {
		what = export.Tell(export.SlitsAlone)
	} else if slits {
		what = export.Tell(export.SlitsToo, works)
	}
	if s.Tool == design.Laser {
		return export.Tell(export.BurntIntoCloth, what)
	}
	return export.Tell(export.CutIntoCloth, what)
}
