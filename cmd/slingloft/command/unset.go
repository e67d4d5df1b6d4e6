package command

import (
	"cmp"
	"errors"
	"slices"

	"slingloft/cmd/slingloft/work"
	"slingloft/export/gcode"
	"slingloft/outline/design"
)

// atMachine turns what programs lack into faults at the machine that lacks it.
func atMachine(p *work.Plan, err error) error {
	var lacking gcode.UnsetError
	if !errors.As(err, &lacking) {
		return err
	}
	var faults design.Faults
	for _, l := range lacking {
		at := p.MachineFault
		if l.Key.Table() != design.KeyMachine && l.Key != design.KeyMachineJob {
			at = p.Fault // the stock is the design's own
		}
		faults = append(faults, at(l.Key, l.Found, l.Hint)...)
	}
	slices.SortStableFunc(faults, func(a, b design.Fault) int {
		return cmp.Or(cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column))
	})
	return faults
}
