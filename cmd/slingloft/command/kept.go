package command

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"path/filepath"
	"strings"

	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/whole"
	"slingloft/outline/design"
)

// kept is what a folder's record keeps of a run of cut, so that its files can be
// proved: what was asked for, and where the pieces lie. Paths are those from the
// folder, with slashes.
type kept struct {
	Design   string    `json:"design,omitempty"` // empty for the built-in one
	Scale    string    `json:"scale,omitempty"`
	Machine  string    `json:"machine,omitempty"`
	Paper    string    `json:"paper,omitempty"`
	Measured string    `json:"measured,omitempty"`
	Only     string    `json:"only,omitempty"`
	Add      []string  `json:"add,omitempty"`
	AddBoard []string  `json:"add_board,omitempty"`
	Beside   []string  `json:"beside,omitempty"`   // further designs on the same roll
	Copies   int       `json:"copies,omitempty"`   // of each bed; 0: one
	At       string    `json:"at,omitempty"`       // scale of the files, wherever it was set
	Settings string    `json:"settings,omitempty"` // digest of the machine's
	Lay      work.Kept `json:"lay"`
}

// keptOf returns what is kept of a run that writes into a folder.
func keptOf(args []string, o cutOptions, out output, lay work.Kept) kept {
	folder := o.out
	k := kept{Scale: o.scale, Paper: o.paper, Measured: o.measured, Only: o.only, Lay: lay,
		At: export.ScaleText(out.options.ScaleFactor()), Settings: settingsOf(out.machine)}
	for i, file := range args {
		if i == 0 {
			k.Design = from(folder, file)
		} else {
			k.Beside = append(k.Beside, from(folder, file))
		}
	}
	if o.copies > 1 {
		k.Copies = o.copies
	}
	if o.machine != "" {
		k.Machine = from(folder, o.machine)
	}
	for _, file := range o.add {
		k.Add = append(k.Add, from(folder, file))
	}
	for _, file := range o.addBoard {
		k.AddBoard = append(k.AddBoard, from(folder, file))
	}
	return k
}

// settingsOf returns a digest of a machine's settings but for the paper, which leaves
// every line where it is.
func settingsOf(m design.Machine) string {
	d := design.Defaults()
	d.Machine = m
	d.Machine.Paper, d.Machine.Overlap = "", 0
	sum := sha256.Sum256(design.Write(d))
	return hex.EncodeToString(sum[:4])
}

// mark is what the record keeps beside the files.
func (k kept) mark(digest string) (whole.Mark, error) {
	note, err := json.Marshal(k)
	return whole.Mark{Tag: digest, Note: string(note)}, err
}

// from returns the path of a file as it is found from a folder, or the whole path
// where none leads from one to the other.
func from(folder, file string) string {
	base, err1 := filepath.Abs(folder)
	path, err2 := filepath.Abs(file)
	if err1 != nil || err2 != nil {
		return filepath.ToSlash(file)
	}
	if rel, err := filepath.Rel(base, path); err == nil {
		path = rel
	}
	return filepath.ToSlash(path)
}

// to returns the path of a file that is kept as it is found from a folder.
func to(folder, kept string) string {
	path := filepath.FromSlash(kept)
	if filepath.IsAbs(path) {
		return path
	}
	return filepath.Join(folder, path)
}

// fill takes from what was kept whatever the command line of prove leaves open, and
// says it in the words of a command line; args are those before the folder.
func (k kept) fill(o *proveOptions, folder string, args []string) ([]string, string) {
	var said []string
	if len(args) == 0 && k.Design != "" {
		args = []string{to(folder, k.Design)}
		said = args
	}
	if len(args) <= 1 {
		for _, file := range k.Beside {
			args, said = append(args, to(folder, file)), append(said, to(folder, file))
		}
		if o.copies = max(1, k.Copies); k.Copies > 1 {
			said = append(said, fmt.Sprintf("--copies %d", k.Copies))
		}
	}
	take := func(flag string, value *string, kept string) {
		if *value == "" && kept != "" {
			*value = kept
			said = append(said, flag+" "+kept)
		}
	}
	take("--scale", &o.scale, k.Scale)
	take("--paper", &o.paper, k.Paper)
	take("--measured", &o.measured, k.Measured)
	take("--only", &o.only, k.Only)
	if k.Machine != "" {
		take("--machine", &o.machine, to(folder, k.Machine))
	}
	takeAll := func(flag string, values *[]string, kept []string) {
		if len(*values) > 0 {
			return
		}
		for _, file := range kept {
			*values = append(*values, to(folder, file))
			said = append(said, flag+" "+to(folder, file))
		}
	}
	takeAll("--add", &o.add, k.Add)
	takeAll("--add-board", &o.addBoard, k.AddBoard)
	return args, strings.Join(said, " ")
}

// readKept reads what a record keeps of a run.
func readKept(note string) (kept, error) {
	var k kept
	if err := json.Unmarshal([]byte(note), &k); err != nil {
		return k, ends(Disagree, RunUnread, err)
	}
	return k, nil
}
