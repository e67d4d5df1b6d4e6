package command

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/work"
	"slingloft/export/whole"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
)

// startOptions are the flags of start.
type startOptions struct {
	units                          string
	stature, mass, shoulders, lies string
	clothWidth                     string
	all                            bool
	reporting
}

func startCommand() command {
	return command{
		name: "start", args: " FILE", maxArgs: 1,
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o startOptions
			f.StringVar(&o.units, "units", "mm", "")
			f.BoolVar(&o.all, "all", false, "")
			f.StringVar(&o.stature, "stature", "", "")
			f.StringVar(&o.mass, "mass", "", "")
			f.StringVar(&o.shoulders, "shoulders", "", "")
			f.StringVar(&o.lies, "sleeps", "", "")
			f.StringVar(&o.clothWidth, "cloth-width", "", "")
			return o.flags(f, startSchema, func(_ context.Context, s Streams, args []string) error { return start(s, args, o) })
		},
	}
}

func start(s Streams, args []string, o startOptions) error {
	if o.units != "mm" && o.units != "in" {
		return misuse(NoUnits, o.units)
	}
	if len(args) == 0 {
		return misuse(NameFile)
	}
	if o == (startOptions{units: o.units, all: o.all, reporting: o.reporting}) {
		text := design.Starter(o.units == "in")
		if o.all {
			text = design.FullStarter(o.units == "in")
		}
		return o.write(s, args[0], text, nil)
	}
	w, err := o.wish()
	if err != nil {
		return err
	}
	if _, err := os.Lstat(args[0]); err == nil && args[0] != toOutput {
		return o.write(s, args[0], "", nil) // says that it is there
	}
	p, err := work.Propose(args[0], w)
	if err != nil {
		return o.refused(err)
	}
	return o.write(s, args[0], p.Text, &p)
}

// toOutput is the name of a file that stands for standard output.
const toOutput = "-"

// write writes a new design file and tells of it and of the proposal in it, if it
// holds one.
func (o startOptions) write(s Streams, name, text string, p *work.Proposal) error {
	if name == toOutput {
		if o.json {
			return misuse(BothToOutput, toOutput)
		}
		if p != nil {
			reasoning(s, *p)
		}
		_, err := io.WriteString(s.Out, text)
		return err
	}
	err := whole.Write(name, whole.Policy{}, func(w io.Writer) error {
		_, err := io.WriteString(w, text)
		return err
	})
	switch {
	case err != nil:
		return err
	case o.json:
		return document.Write(s.Out, o.document(name, text, p))
	}
	fmt.Fprintln(s.Out, name)
	if p != nil {
		reasoning(s, *p)
	}
	return nil
}

func startSchema() map[string]any {
	return document.Schema[document.Start]("slingloft start", document.StartVersion, "The design that was written.")
}

// document tells of the written design.
func (o startOptions) document(name, text string, p *work.Proposal) document.Start {
	out := document.Start{Version: document.StartVersion, Units: o.units,
		Proposed: []document.Value{}, Unmet: []document.Missing{}, Cautions: []string{},
		File: document.FileOf(document.Named(name), "toml", []byte(text))}
	if p == nil {
		return out
	}
	for _, v := range p.Values {
		out.Proposed = append(out.Proposed, document.Value{Key: string(v.Key), Value: v.Value, Reason: p.Plan.Words.Proposal.Reason(v)})
	}
	out.Joins, out.Cautions = p.Joins, append(out.Cautions, p.Cautions...)
	for _, c := range p.Plan.Margins().Unmet() {
		out.Unmet = append(out.Unmet, document.Missing{Check: c.Name(), Margin: c.Ratio, Required: c.Required})
	}
	return out
}

// wish reads the flags that describe the sleeper.
func (o startOptions) wish() (work.Wish, error) {
	w, width := work.Wish{Inches: o.units == "in", All: o.all}, 0.0
	if w.Inches {
		w.Person.Step = quantity.Inch / 4
	}
	switch o.lies {
	case "", "back":
	case "side":
		w.Person.OnSide = true
	default:
		return w, misuse(NoLying, o.lies)
	}
	for _, f := range []struct {
		flag, text, example string
		key                 design.Key
		value               *float64
		as                  *string
	}{
		{"stature", o.stature, "172 cm", design.KeySleeperStature, &w.Person.Stature, &w.Stature},
		{"mass", o.mass, "80 kg", design.KeySleeperMass, (*float64)(&w.Person.Mass), &w.Mass},
		{"shoulders", o.shoulders, "", design.KeySleeperShoulders, &w.Person.Shoulders, &w.Shoulders},
		{"cloth-width", o.clothWidth, "", design.KeyClothWidth, &width, &w.ClothWidth},
	} {
		if f.text == "" {
			if f.example != "" {
				return w, misuse(ProposalNeeds, f.flag, f.example)
			}
			continue
		}
		q, err := design.Measure(f.key, f.text, w.Inches)
		if err != nil {
			return w, misuse(BadMeasure, f.flag, err)
		}
		*f.value, *f.as = q.Value, strings.TrimSpace(f.text)
	}
	return w, nil
}

// refused names the flag that a proposal failed for.
func (o startOptions) refused(err error) error {
	var no *hung.Impossible
	if errors.As(err, &no) {
		flag := map[design.Key]string{
			design.KeySleeperStature: "stature", design.KeySleeperMass: "mass", design.KeySleeperShoulders: "shoulders",
		}[no.Key]
		limit := fmt.Sprintf("%.0f mm", no.Limit)
		switch {
		case flag == "":
			return misuse(NoProposal, err)
		case flag == "mass":
			limit = fmt.Sprintf("%.0f kg", no.Limit)
		case o.units == "in":
			limit = quantity.Style{Inches: true}.Length(no.Limit)
		}
		return misuse(BadMeasure, flag, &design.Advised{Found: no.Found, Hint: no.Bound.WouldDo(limit)})
	}
	var f design.Faults
	if errors.As(err, &f) && len(f) > 0 {
		return misuse(NoProposal, notice{NoBed, []any{f[0].Key, design.English().Message(f[0])}})
	}
	return misuse(NoProposal, err)
}

// reasoning tells briefly how the proposal came about.
func reasoning(s Streams, p work.Proposal) {
	for _, c := range p.Cautions {
		say(s.Err, c)
	}
	for _, v := range p.Values {
		if !v.Asked {
			say(s.Err, fmt.Sprintf("%s = %s: %s", v.Key, v.Value, v.Why))
		}
	}
	for _, c := range p.Plan.Margins().Unmet() {
		s.say(TooWeak, c.Name(),
			quantity.Decimal(c.Ratio, 2), quantity.Decimal(c.Required, 2), p.Plan.Mend(c))
	}
	if p.Joins > 0 {
		s.say(NarrowCloth, p.Plan.Words.Joins(p.Joins))
	}
	s.say(ReasonsBeside)
}
