package gcode

import (
	"strconv"

	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// deep reports whether a kind of work is cut as deep as its sheet is thick and what is
// set to go below it, where its job gives no depth of its own.
func (s Settings) deep(w piece.Work) bool {
	return export.Through(w) && s.Of.Stock == piece.Board && s.Tool == design.Router
}

// depth returns how deep a kind of work goes, mm; 0: not given.
func (s Settings) depth(w piece.Work) float64 {
	if d := s.job(w).Depth; d > 0 {
		return d
	}
	if export.Through(w) && s.Of.Stock == piece.Board && s.Tool != design.Pen && s.Of.Thickness > 0 && s.Through > 0 {
		return s.Of.Thickness + s.Through
	}
	return 0
}

// wrongDepth finds cuts that would stop short of the sheet's other face and marks that
// would go through to it.
func (s Settings) wrongDepth(w piece.Work) UnsetError {
	if s.Of.Stock != piece.Board || s.Tool == design.Laser || s.Tool == design.Pen {
		return nil
	}
	thick, depth := s.Of.Thickness, s.depth(w)
	in := w.String() + " in " + strconv.Quote(s.Of.Name)
	switch {
	case !export.Through(w):
		if thick > 0 && depth >= thick {
			return UnsetError{{design.KeyMachineJob, in + " is " + s.said(depth) + " deep, through the sheet's " + s.said(thick),
				"a depth below " + s.said(thick) + " marks it"}}
		}
	case thick == 0 && s.Tool == design.Router:
		out := UnsetError{{design.KeySheetThickness, "a router has to know how thick the sheet is", `write thickness = "… ` + s.unit() + `" under [sheet], as it measures`}}
		if depth == 0 && s.Through == 0 {
			out = append(out, s.noThrough())
		}
		return out
	case depth == 0:
		return UnsetError{s.noThrough()}
	case depth < thick:
		return UnsetError{{design.KeyMachineJob, in + " is " + s.said(depth) + " deep and stops short of the sheet's " + s.said(thick),
			"leave depth out and give through, or " + s.said(thick) + " or more would do"}}
	}
	return nil
}

// noThrough is the lack of a depth below the sheet.
func (s Settings) noThrough() Lack {
	return Lack{design.KeyMachineThrough, "nothing says how far below the sheet the " + s.Tool.String() + " cuts",
		`write through = "… ` + s.unit() + `" under [machine], as deep as the spoil board may be cut`}
}

// unsetTool returns what a tool needs and nobody gave.
func (s Settings) unsetTool() UnsetError {
	var out UnsetError
	tool := s.Tool.String()
	want := func(key design.Key, value float64, found, unit string) {
		if value == 0 {
			write := "write " + key.Name() + " = \"… " + unit + "\" under [machine]"
			if unit == "" {
				write = "write " + key.Name() + " = … under [machine], in seconds"
			}
			out = append(out, Lack{key, found, write + ", with a value tried on scrap"})
		}
	}
	if s.Tool != design.Laser {
		want(design.KeyMachinePlunge, s.Plunge, "nothing says how fast the "+tool+" goes down", s.unit()+"/min")
		want(design.KeyMachineSafeHeight, s.Safe, "nothing says how high above the stock the "+tool+" is clear of all that holds it", s.unit())
	}
	switch s.Tool {
	case design.Router:
		want(design.KeyMachineCutter, s.Cutter, "a router has to know its cutter's diameter", s.unit())
		want(design.KeyMachineSpinUp, s.SpinUp, "nothing says how long the spindle takes to its speed", "")
	case design.Knife:
		want(design.KeyMachineTrail, s.Trail, "nothing says how far the knife's tip trails behind its holder", s.unit())
	}
	if s.Tabs > 0 {
		want(design.KeyMachineTabWidth, s.TabWidth, "nothing says how wide a holding tab is", s.unit())
		if s.Tool == design.Router {
			want(design.KeyMachineTabHeight, s.TabHeight, "nothing says how high a holding tab is", s.unit())
		}
	}
	return out
}
