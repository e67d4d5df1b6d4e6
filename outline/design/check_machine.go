package design

import (
	"errors"
	"regexp"
	"slices"
	"strings"

	"slingloft/outline/piece"
	"slingloft/outline/quantity"
)

// Bounds of what a correction can mend: a machine further off is broken or was
// misread.
const (
	leastCorrection = 0.9
	mostCorrection  = 1.1
)

// checkMachine wants settings that some machine can follow.
func (r *reader) checkMachine() {
	m := r.design.Machine
	for i, key := range []Key{KeyMachineCalibrationX, KeyMachineCalibrationY} {
		drawn, measured := m.Drawn[i], m.Measured[i]
		if measured == 0 || !r.good(key.In("drawn"), key.In("measured")) {
			continue
		}
		if c := drawn / measured; c < leastCorrection || c > mostCorrection {
			r.conflict(key.In("measured"), Found(MeasuredOff, r.show(key.In("drawn"), drawn)),
				Say(MeasureAgain, r.source.Length(key.In("measured"), drawn/mostCorrection, quantity.Up),
					r.source.Length(key.In("measured"), drawn/leastCorrection, quantity.Down)))
		}
	}
	if m.Tool == Knife && m.Tabs > 0 && r.good(KeyMachineTool, KeyMachineTabs) {
		r.conflict(KeyMachineTabs, Found(KnifeTabs), Say(LeaveOrOtherTool))
	}
	if r.source.Given(KeyMachineTrail) && m.Tool != Knife && r.good(KeyMachineTool, KeyMachineTrail) {
		r.conflict(KeyMachineTrail, Found(OfKnife, withArticle(m.Tool)), Say(WriteOrLeave, `tool = "knife"`))
	}
	if m.Tool == Pen && m.Tabs > 0 && r.good(KeyMachineTool, KeyMachineTabs) {
		r.conflict(KeyMachineTabs, Found(PenTabs), Say(LeaveOrOtherTool))
	}
	if m.Fields && m.Width == 0 && r.good(KeyMachineFields, KeyMachine.In("width")) {
		r.conflict(KeyMachineFields, Found(FieldsOfNoBed), Say(WriteOrLeave, `width = "… `+r.design.Output.Style(0).LengthUnit()+`"`))
	}
	r.checkCutter()
	r.checkProgram()
	r.checkStrokes()
	r.checkJobs()
}

var colour = regexp.MustCompile(`^#[0-9a-fA-F]{6}$`)

// checkStrokes wants one stroke for a kind of work, with a colour and dashes.
func (r *reader) checkStrokes() {
	first := map[piece.Work]int{}
	for i, s := range r.design.Machine.Strokes {
		stroke := KeyMachineStroke.Item(i + 1)
		if before, ok := first[s.Work]; ok && r.good(stroke.In("work")) {
			r.conflict(stroke.In("work"), Found(StrokeTwice, s.Work.String(), r.lineOf(KeyMachineStroke.Item(before).In("work"))), Say(KeepOne))
		} else {
			first[s.Work] = i + 1
		}
		if s.Colour != "" && r.good(stroke.In("colour")) && !colour.MatchString(s.Colour) {
			r.conflict(stroke.In("colour"), Found(NoColour, quantity.Quoted(s.Colour)), Say(WriteColour))
		}
		if s.Solid && s.Dash != "" && r.good(stroke.In("solid"), stroke.In("dash")) {
			r.conflict(stroke.In("solid"), Found(SolidAndDash), Say(KeepOne))
		}
		if s.Dash != "" && r.good(stroke.In("dash")) {
			r.checkDash(stroke.In("dash"), s.Dash)
		}
	}
}

// checkDash wants pairs of lengths.
func (r *reader) checkDash(key Key, dash string) {
	parts := strings.Split(dash, ",")
	if len(parts)%2 != 0 || len(parts) > maxDashes {
		r.conflict(key, Found(DashOdd, quantity.Quoted(dash), len(parts)), Say(WritePairs, maxDashes/2))
		return
	}
	for _, text := range parts {
		q, err := quantity.As(strings.TrimSpace(text), quantity.Length)
		var qe *quantity.Error
		switch {
		case errors.As(err, &qe):
			r.conflict(key, Found(NoQuantity, misread{qe}), Say(QuantityAsIn, remedy{qe}))
			return
		case !(q.Value > 0 && q.Value <= maxDash):
			r.conflict(key, Found(NoDash, quantity.Quoted(text)), Say(DashWillDo))
			return
		}
	}
}

// The longest dash in mm, and how many lengths of line and gap there are at most.
const (
	maxDash   = 100
	maxDashes = 8
)

// Dashes returns the lengths of line and gap in turn, mm, of a stroke that was
// read.
func (s Stroke) Dashes() []float64 {
	var out []float64
	for _, text := range strings.Split(s.Dash, ",") {
		if q, err := quantity.As(strings.TrimSpace(text), quantity.Length); err == nil {
			out = append(out, q.Value)
		}
	}
	return out
}

// checkJobs wants one job for a kind of work and a material.
func (r *reader) checkJobs() {
	type what struct {
		work     piece.Work
		material string
	}
	first := map[what]int{}
	for i, j := range r.design.Machine.Jobs {
		job := KeyMachineJob.Item(i + 1)
		if !r.good(job.In("work"), job.In("material")) {
			continue
		}
		if before, ok := first[what{j.Work, j.Material}]; ok {
			r.conflict(job.In("work"), Found(JobTwice, j.Work.String(), r.lineOf(KeyMachineJob.Item(before).In("work"))), Say(KeepOne))
			continue
		}
		first[what{j.Work, j.Material}] = i + 1
	}
}

// checkMaterials wants the design's own machine to name the design's own materials.
func (r *reader) checkMaterials() {
	if !r.good(KeyClothName, KeySheetName) {
		return
	}
	for _, f := range r.design.Strangers(r.design.Machine, r.source) {
		if r.good(f.Key) {
			r.bad[f.Key] = true
			r.faults = append(r.faults, f)
		}
	}
}

// Strangers returns a fault for every job of a machine that names a material which the
// design does not have: misspelt, it would leave the work to another job or to none.
// The source is where the machine was read.
func (d Design) Strangers(m Machine, from Source) Faults {
	return d.strangers(m, from, func(string) bool { return true })
}

// Misspelt returns of [Design.Strangers] those whose material has a name like one that
// the design has: a shop's file may have jobs for other designs' materials.
func (d Design) Misspelt(m Machine, from Source) Faults {
	return d.strangers(m, from, func(near string) bool { return near != "" })
}

// strangers returns the faults of [Design.Strangers] of which the nearest name will do.
func (d Design) strangers(m Machine, from Source, which func(near string) bool) Faults {
	var out Faults
	var has []string
	for _, c := range d.Rolls() {
		has = append(has, c.Name)
	}
	has = append(has, d.Sheet.Name)
	var all []string
	for _, name := range has {
		all = append(all, quantity.Quoted(name))
	}
	for i, j := range m.Jobs {
		if j.Material == "" || slices.Contains(has, j.Material) {
			continue
		}
		hint := Say(DesignHas, Listing(all))
		near := Nearest(j.Material, has)
		if !which(near) {
			continue
		}
		if near != "" {
			hint = Say(WriteThis, quantity.Quoted(near))
		}
		out = append(out, from.Fault(KeyMachineJob.Item(i+1).In("material"), Found(StrangeMaterial, quantity.Quoted(j.Material)), hint))
	}
	return out
}
