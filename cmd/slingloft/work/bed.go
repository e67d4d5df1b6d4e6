package work

import (
	"slingloft/export"
	"slingloft/nest"
	"slingloft/outline/design"
	"slingloft/outline/quantity"
)

// SmallSheet are the faults of sheets on which there is no room, by the rule.
func (p *Plan) SmallSheet(e *export.BedError, r design.Rule) design.Faults {
	return p.tooSmall(design.Found(r), e.NeedWidth-e.Width, e.NeedHeight-e.Height)
}

// narrowBed are the faults of sheets on which a piece does not fit.
func (p *Plan) narrowBed(e *nest.SizeError, found design.Finding) design.Faults {
	return p.tooSmall(found, e.Along-e.RoomX, e.Across-e.RoomY)
}

// tooSmall are the faults of sheets that should be larger by so much along x and y; of
// what is not positive there is enough. Each points at a value that limits the sheet:
// its own size, the reach of the machine, or both.
func (p *Plan) tooSmall(found design.Finding, alongX, alongY float64) design.Faults {
	var out design.Faults
	side := func(name string, least, own, reach float64) {
		if least > own {
			out = append(out, p.source.Bounded(found, p.source.Least(design.KeySheet.In(name), least)))
		}
		if reach == 0 || least <= reach {
			return
		}
		key := design.KeyMachine.In(name)
		if p.machine.File() == "" {
			out = append(out, p.source.Bounded(found, p.source.Least(key, least)))
		} else {
			out = append(out, p.machine.Fault(key, found, design.Say(design.MoreWouldDo, p.machine.Length(key, least, quantity.Up))))
		}
	}
	s, m := p.Design.Sheet, p.Design.Machine
	if alongX > 0 {
		side("width", s.Width+alongX, p.sheet[0], m.Width)
	}
	if alongY > 0 {
		side("height", s.Height+alongY, p.sheet[1], m.Height)
	}
	return out
}
