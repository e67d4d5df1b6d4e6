package command

import (
	"strings"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/outline/design"
	"slingloft/outline/piece"
)

// shop are the flags that say for which machine files are.
type shop struct {
	machine  string
	shelf    string
	measured string
	paper    string
	only     string   // what to write of the lays, names with commas between
	add      []string // outlines for the cloth
	addBoard []string // outlines for the sheets
}

// flags defines the flags of a shop, those for extra outlines only where pieces
// are laid.
func (o *shop) flags(f *pflag.FlagSet, lays bool) {
	f.StringVar(&o.machine, "machine", "", "")
	shelfFlag(f, &o.shelf)
	f.StringVar(&o.paper, "paper", "", strings.Join(design.Papers(), ", "))
	if lays {
		f.StringVar(&o.measured, "measured", "", "")
		f.StringVar(&o.only, "only", "", "")
		f.StringArrayVar(&o.add, "add", nil, "")
		f.StringArrayVar(&o.addBoard, "add-board", nil, "")
	}
}

// setting reads what goes beside the design.
func (o shop) setting() (work.Setting, error) {
	with := work.Setting{Shelf: o.shelf}
	for _, file := range o.add {
		with.Extras = append(with.Extras, design.Extra{File: file})
	}
	for _, file := range o.addBoard {
		with.Extras = append(with.Extras, design.Extra{File: file, Stock: piece.Board})
	}
	if o.machine == "" {
		return with, nil
	}
	data, err := readDesign(o.machine)
	if err != nil {
		return with, err
	}
	m, from, err := design.ReadMachine(o.machine, data)
	with.Machine, with.MachineSource = &m, from
	return with, err
}

// apply lets the flags go over what the machine's settings say.
func (o shop) apply(m *design.Machine, name string) error {
	if o.paper != "" {
		m.Paper = ""
		for _, p := range design.Papers() {
			if strings.EqualFold(p, o.paper) {
				m.Paper = p
			}
		}
		if m.Paper == "" {
			return misuse(NoPaper, name, o.paper, strings.Join(design.Papers(), ", "))
		}
	}
	if o.measured != "" {
		drawn, bars, err := export.ParseMeasured(o.measured)
		if err != nil {
			return misuse(NotMeasured, name, err)
		}
		m.Drawn, m.Measured = drawn, bars
	}
	return nil
}
