package gcode

import (
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
	lack := func(key design.Key, found design.Finding, hint design.Phrase) UnsetError {
		return UnsetError{{key, found, hint}}
	}
	switch {
	case !export.Through(w):
		if thick > 0 && depth >= thick {
			return lack(design.KeyMachineJob, design.Found(design.MarkGoesThrough, w, s.Of.Name, s.said(depth), s.said(thick)),
				design.Say(design.DepthMarks, s.said(thick)))
		}
	case thick == 0 && s.Tool == design.Router:
		out := lack(design.KeySheetThickness, design.Found(design.ThicknessUnsaid), design.Say(design.WriteThickness, s.unit()))
		if depth == 0 && s.Through == 0 {
			out = append(out, s.noThrough())
		}
		return out
	case depth == 0:
		return UnsetError{s.noThrough()}
	case depth < thick:
		return lack(design.KeyMachineJob, design.Found(design.CutStopsShort, w, s.Of.Name, s.said(depth), s.said(thick)),
			design.Say(design.GiveThrough, s.said(thick)))
	}
	return nil
}

// noThrough is the lack of a depth below the sheet.
func (s Settings) noThrough() Lack {
	return Lack{design.KeyMachineThrough, design.Found(design.ThroughUnsaid, s.Tool), design.Say(design.WriteThrough, s.unit())}
}

// unsetTool returns what a tool needs and nobody gave.
func (s Settings) unsetTool() UnsetError {
	var out UnsetError
	want := func(key design.Key, value float64, found design.Rule, unit string) {
		if value == 0 {
			write := design.Say(design.WriteTried, key.Name(), unit)
			if unit == "" {
				write = design.Say(design.WriteSeconds, key.Name())
			}
			out = append(out, Lack{key, design.Found(found, s.Tool), write})
		}
	}
	if s.Tool != design.Laser {
		want(design.KeyMachinePlunge, s.Plunge, design.PlungeUnsaid, s.unit()+"/min")
		want(design.KeyMachineSafeHeight, s.Safe, design.SafeHeightUnsaid, s.unit())
	}
	switch s.Tool {
	case design.Router:
		want(design.KeyMachineCutter, s.Cutter, design.CutterUnsaid, s.unit())
		want(design.KeyMachineSpinUp, s.SpinUp, design.SpinUpUnsaid, "")
	case design.Knife:
		want(design.KeyMachineTrail, s.Trail, design.TrailUnsaid, s.unit())
	}
	if s.Tabs > 0 {
		want(design.KeyMachineTabWidth, s.TabWidth, design.TabWidthUnsaid, s.unit())
		if s.Tool == design.Router {
			want(design.KeyMachineTabHeight, s.TabHeight, design.TabHeightUnsaid, s.unit())
		}
	}
	return out
}
