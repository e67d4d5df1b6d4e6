package command

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/format"
	"slingloft/export/prove"
	"slingloft/export/setup"
	"slingloft/outline/geom"
)

// proveOptions are the flags of prove.
type proveOptions struct {
	as    string
	scale string
	shop
	told
}

func proveCommand() command {
	return command{
		name: "prove", args: " [DESIGN] FOLDER", most: 2,
		line: "read written files back and say whether they agree with the design",
		long: `Reads every file that cut wrote into a folder, measures its sheet, check bars and
lines, and says file by file whether it still agrees with the design: a file that
was rescaled, edited by hand, or left over from another run or design does not. The
design, the scale, the machine and all else that is not named here are those that
the files were cut with, and so is the lay: the folder's .slingloft keeps them. The
places of the pieces are checked anew.

The exit status is 5 where something does not agree, 1 where a file cannot be read.`,
		example: "  slingloft prove slingloft-out\n  slingloft prove my.toml my-files\n  slingloft prove my.toml my-files --as dxf --scale 1:5\n",
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o proveOptions
			f.StringVar(&o.as, "as", "", "formats to prove, with commas between (default: all that are there)")
			f.StringVar(&o.scale, "scale", "", "drawing scale, such as 1:5 (default: that of the files)")
			o.shop.flags(f, true)
			return o.told.flags(f, proofSchema, func(ctx context.Context, s Streams, args []string) error { return proveFiles(ctx, s, args, o) })
		},
	}
}

func proveFiles(ctx context.Context, s Streams, args []string, o proveOptions) error {
	folder := defaultFolder
	if n := len(args); n > 0 {
		folder, args = args[n-1], args[:n-1]
	}
	if info, err := os.Stat(folder); errors.Is(err, fs.ErrNotExist) {
		return status{Failed, fmt.Sprintf("prove: there is no folder %s; name the one that cut wrote into", folder)}
	} else if err != nil || !info.IsDir() {
		return usagef("prove: %s is no folder; name the one that cut wrote into", folder)
	}
	runs, err := runsIn(folder, o.as)
	if err != nil {
		return o.nothing(s, args, err)
	}
	var all []proof
	for _, r := range runs {
		one, err := r.prove(ctx, folder, args, o)
		if err != nil {
			return err
		}
		if one.said != "" && !o.json {
			sayf(s.Err, "as it was cut: %s", one.said)
		}
		all = append(all, one)
	}
	return o.tell(s, folder, all)
}

// nothing ends a proof for which there are no files.
func (o proveOptions) nothing(s Streams, args []string, err error) error {
	if !o.json || statusOf(err) != Disagree {
		return err
	}
	p, out, bad := o.load(args)
	if bad != nil {
		return bad
	}
	return errors.Join(err, document.Write(s.Out, proofDocument(proof{plan: &p, output: out}, nil, err)))
}

// tell tells of all files and returns the status that they earn.
func (o proveOptions) tell(s Streams, folder string, all []proof) error {
	var files []proved
	for _, p := range all {
		files = append(files, p.files...)
	}
	err := judgedFiles(files)
	if o.json {
		return errors.Join(err, document.Write(s.Out, proofDocument(all[0], files, err)))
	}
	for _, f := range files {
		fmt.Fprintf(s.Out, "%s: %s\n", filepath.Join(folder, f.about.Name), f.text)
	}
	return err
}

// load reads the design and returns it with how its sheets are written.
func (o proveOptions) load(args []string) (work.Plan, output, error) {
	with, err := o.setting()
	if err != nil {
		return work.Plan{}, output{}, err
	}
	p, err := loadFor(args, with)
	if err != nil {
		return p, output{}, err
	}
	out, err := outputOf(p.Design, o.shop, o.scale, "prove")
	return p, out, err
}

// stale says of all sheets that are there why they are not due.
func (o output) stale(why string) ([]proved, error) {
	files, err := sheetsIn(o.folder)
	var out []proved
	for _, f := range files {
		if slices.Contains(o.formats, f.format) {
			out = append(out, notDue(f, why))
		}
	}
	return out, err
}

// notDue is a file that belongs to no sheet.
func notDue(f sheetFile, why string) proved {
	return proved{Disagree, why, document.Proved{Name: f.name, Format: f.format, Sheet: f.stem, Verdict: "not due", Faults: []string{why}}}
}

// formatsIn returns the formats to prove: those named, or those that any sheet in
// the folder has.
func formatsIn(folder, list string) ([]string, error) {
	if list != "" {
		return formatsNamed(list, "prove")
	}
	var out []string
	files, err := sheetsIn(folder)
	for _, f := range files {
		if !slices.Contains(out, f.format) {
			out = append(out, f.format)
		}
	}
	if err == nil && len(out) == 0 {
		return nil, status{Disagree, fmt.Sprintf("%s: none of the files that cut writes is here", folder)}
	}
	slices.SortFunc(out, func(a, b string) int {
		return cmp.Compare(slices.Index(setup.Names(), a), slices.Index(setup.Names(), b))
	})
	return out, err
}

// sheetFile is a file in a folder that is named like a sheet of cut.
type sheetFile struct{ name, stem, format string }

// sheetsIn returns the files named like sheets, sorted by name.
func sheetsIn(folder string) ([]sheetFile, error) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil, err
	}
	var out []sheetFile
	for _, e := range entries {
		if f, ok := sheetNamed(e.Name()); ok {
			out = append(out, f)
		}
	}
	return out, nil
}

// sheetNamed returns what the name of a file says of a sheet, if it is one's.
func sheetNamed(name string) (sheetFile, bool) {
	for _, f := range append([]format.Format{format.Pattern()}, format.All()...) { // the longer ending first
		stem, ok := strings.CutSuffix(name, f.Ending)
		if ok && (stem == clothSheet || strings.HasPrefix(stem, "template-sheet-")) {
			return sheetFile{name, stem, f.Name}, true
		}
	}
	return sheetFile{}, false
}

// scaleOf returns the scale at which the files were written, by the extent of
// their lines: the design's own or one of the usual ones, whichever comes nearest.
func (o output) scaleOf(p *work.Plan, l work.Lays) (float64, error) {
	files, err := sheetsIn(o.folder)
	if err != nil {
		return 0, err
	}
	const surely = 1e-4 // of a sheet's size
	best, least := o.options.ScaleFactor(), math.Inf(1)
	for _, scale := range append([]float64{best}, usualScales()...) {
		drawings, err := p.Drawings(l, scale)
		if err != nil {
			continue // the title block finds no room at this scale
		}
		at := o.options
		at.Scale = scale
		if off := o.offBy(files, drawings, at); off < least {
			best, least = scale, off
		}
		if least < surely {
			break
		}
	}
	return best, nil
}

// usualScales are those of ISO 5455 that sheets are drawn at.
func usualScales() []float64 {
	return []float64{1, 1.0 / 2, 1.0 / 5, 1.0 / 10, 1.0 / 20, 1.0 / 50, 1.0 / 100, 2, 5, 10}
}

// offBy returns by what part the extent of the first file that can be read is off.
func (o output) offBy(files []sheetFile, drawings []export.Drawing, at export.Options) float64 {
	for _, file := range files {
		i := slices.IndexFunc(drawings, func(d export.Drawing) bool { return d.Name == file.stem })
		f, err := o.format(file.format, file.stem)
		if i < 0 || err != nil || !slices.Contains(o.formats, file.format) || f.Name == "pdf" && o.tiled() {
			continue
		}
		data, err := readFile(filepath.Join(o.folder, file.name))
		if err != nil {
			continue
		}
		got, err := f.Read(strings.NewReader(string(data)))
		if err != nil {
			continue
		}
		w, h := extent(drawings[i])
		gotW, gotH := extent(got)
		if len(got.Lines) == 0 { // a picture
			w, h, gotW, gotH = drawings[i].Width, drawings[i].Height, got.Width, got.Height
		}
		size := at.Point(geom.Pt(w, h))
		// A machine's x may be y here, which is no matter.
		long, short := max(gotW, gotH)/max(size.X, size.Y), min(gotW, gotH)/min(size.X, size.Y)
		return math.Max(math.Abs(long-1), math.Abs(short-1))
	}
	return math.Inf(1)
}

// extent returns the size of the box around all lines of a drawing. The crosses at
// its corners make it nearly that of the sheet.
func extent(d export.Drawing) (width, height float64) {
	box := geom.EmptyBox()
	for _, l := range d.Lines {
		box = box.Union(l.Points.Bounds())
	}
	return box.Width(), box.Height()
}

func (o output) tiled() bool { return o.machine.Paper != "" && o.machine.Paper != "sheet" }

// proved is what came of one file.
type proved struct {
	code  int    // exit status that it earns
	text  string // on one line
	about document.Proved
}

// prove compares every file that should be there, and finds those that should not.
func (o output) prove(drawings []export.Drawing) ([]proved, error) {
	var out []proved
	due := map[string]bool{}
	for _, d := range drawings {
		for _, name := range o.formats {
			f, err := o.format(name, d.Name)
			if err != nil {
				return nil, err
			}
			one := o.proveOne(prove.Sheet{Drawing: d, Options: o.options, Format: f})
			due[one.about.Name] = true
			out = append(out, one)
		}
	}
	files, err := sheetsIn(o.folder)
	for _, f := range files {
		if !due[f.name] && slices.Contains(o.formats, f.format) {
			out = append(out, notDue(f, "is not due: it belongs to another run or design"))
		}
	}
	return out, err
}

// judgedFiles returns the status that files earn together.
func judgedFiles(files []proved) error {
	code := Done
	for _, f := range files {
		if code == Done || f.code == Failed {
			code = f.code
		}
	}
	switch code {
	case Done:
		return nil
	case Failed:
		return status{Failed, "not every file could be read"}
	}
	return status{code, "some files do not agree with the design; slingloft cut writes them anew"}
}

// proveOne compares one file.
func (o output) proveOne(sheet prove.Sheet) proved {
	name := sheet.Drawing.Name + sheet.Format.Ending
	about := document.Proved{Name: name, Format: sheet.Format.Name, Sheet: sheet.Drawing.Name}
	fails := func(code int, verdict, text string) proved {
		about.Verdict, about.Faults = verdict, []string{text}
		return proved{code, text, about}
	}
	data, err := readFile(filepath.Join(o.folder, name))
	if errors.Is(err, fs.ErrNotExist) {
		return fails(Disagree, "missing", "is missing")
	}
	if err != nil {
		return fails(Failed, "unreadable", err.Error())
	}
	r, err := prove.File(data, sheet)
	if err != nil {
		return fails(Failed, "unreadable", "cannot be read: "+err.Error())
	}
	about.Verdict, about.Agrees, about.Faults = "agrees", r.Agrees(), append([]string{}, r.Faults...)
	about.Lines, about.Worst, about.Where, about.Limit = r.Lines, r.Worst, r.Where, r.Limit
	about.Found, about.Due = measures(r.Found), measures(r.Due)
	if !r.Agrees() {
		about.Verdict = "differs"
		return proved{Disagree, r.String(), about}
	}
	return proved{Done, r.String(), about}
}

func measures(m prove.Measures) *document.Measures {
	out := document.Measures{Size: [2]float64{m.Width, m.Height}, Lines: m.Lines, Bars: []document.Bar{}}
	for _, b := range m.Bars {
		out.Bars = append(out.Bars, document.Bar(b))
	}
	return &out
}

func proofSchema() map[string]any {
	return document.Schema[document.Proof]("slingloft prove", document.ProveVersion,
		"What written files measure against what they should. Lengths mm. With exit status 2 there is a list of faults in its place where the design is at fault.")
}

func proofDocument(p proof, files []proved, err error) document.Proof {
	out := document.Proof{Head: headOf(p.plan, document.ProveVersion, err), Agrees: err == nil, Scale: p.output.options.ScaleFactor(), Files: []document.Proved{}}
	for _, f := range files {
		out.Files = append(out.Files, f.about)
	}
	return out
}

// readFile reads a file that may have been written by cut, but nothing much larger.
func readFile(path string) ([]byte, error) {
	const most = 512 << 20
	f, err := os.Open(path)
	if err != nil {
		var where *fs.PathError
		if errors.As(err, &where) {
			return nil, where.Err
		}
		return nil, err
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, most+1))
	if err != nil {
		return nil, errors.New("cannot be read")
	}
	if len(data) > most {
		return nil, fmt.Errorf("larger than %d MB", most>>20)
	}
	return data, nil
}
