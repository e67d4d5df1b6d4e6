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
}

func proveCommand() command {
	return command{
		name: "prove", args: " [DESIGN] FOLDER", most: 2,
		line: "read written files back and say whether they agree with the design",
		long: `Reads every file that cut wrote into a folder, measures its sheet, check bars and
lines, and says file by file whether it still agrees with the design: a file that
was rescaled, edited by hand, or left over from another run does not. Formats and
scale are found from the files, if they are not named. Files of a lay that was
searched for with --lay-time are not found again and do not agree.

The exit status is 5 where something does not agree, 1 where a file cannot be read.`,
		example: "  slingloft prove slingloft-out\n  slingloft prove my.toml my-files\n  slingloft prove my.toml my-files --as dxf --scale 1:5\n",
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o proveOptions
			f.StringVar(&o.as, "as", "", "formats to prove, with commas between (default: all that are there)")
			f.StringVar(&o.scale, "scale", "", "drawing scale, such as 1:5 (default: that of the files)")
			o.flags(f, true)
			return func(ctx context.Context, s Streams, args []string) error { return proveFiles(ctx, s, args, o) }
		},
	}
}

func proveFiles(ctx context.Context, s Streams, args []string, o proveOptions) error {
	folder := defaultFolder
	if n := len(args); n > 0 {
		folder, args = args[n-1], args[:n-1]
	}
	if info, err := os.Stat(folder); err != nil || !info.IsDir() {
		return usagef("prove: %s is no folder; name the one that cut wrote into", folder)
	}
	with, err := o.setting()
	if err != nil {
		return err
	}
	p, err := loadFor(args, with)
	if err != nil {
		return err
	}
	out, err := outputOf(p.Design, o.shop, o.scale, "prove")
	if err != nil {
		return err
	}
	l, err := p.Lay(ctx, work.Budget{})
	if err != nil {
		return err
	}
	out.folder, out.digest = folder, []byte(p.Digest)
	if out.formats, err = formatsIn(folder, o.as); err != nil {
		return err
	}
	if o.scale == "" {
		if out.options.Scale, err = out.scaleOf(&p, l); err != nil {
			return err
		}
	}
	drawings, err := p.Drawings(l, out.options.ScaleFactor())
	if err != nil {
		return err
	}
	return out.prove(s, drawings)
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
	endings := append([]format.Format{format.Pattern()}, format.All()...) // the longer one first
	var out []sheetFile
	for _, e := range entries {
		for _, f := range endings {
			stem, ok := strings.CutSuffix(e.Name(), f.Ending)
			if ok && (stem == clothSheet || strings.HasPrefix(stem, "template-sheet-")) {
				out = append(out, sheetFile{e.Name(), stem, f.Name})
				break
			}
		}
	}
	return out, nil
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

// prove compares every file that should be there, and tells of those that should
// not.
func (o output) prove(s Streams, drawings []export.Drawing) error {
	code := Done
	note := func(c int, path, text string) {
		fmt.Fprintf(s.Out, "%s: %s\n", path, text)
		if code == Done || c == Failed {
			code = c
		}
	}
	due := map[string]bool{}
	for _, d := range drawings {
		for _, name := range o.formats {
			f, err := o.format(name, d.Name)
			if err != nil {
				return err
			}
			due[d.Name+f.Ending] = true
			path := filepath.Join(o.folder, d.Name+f.Ending)
			c, text := o.proveOne(path, prove.Sheet{Drawing: d, Options: o.options, Format: f})
			note(c, path, text)
		}
	}
	files, err := sheetsIn(o.folder)
	if err != nil {
		return err
	}
	for _, f := range files {
		if !due[f.name] && slices.Contains(o.formats, f.format) {
			note(Disagree, filepath.Join(o.folder, f.name), "is not due: it belongs to another run or design")
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

// proveOne compares one file and returns the status that it earns.
func (o output) proveOne(path string, sheet prove.Sheet) (int, string) {
	data, err := readFile(path)
	if errors.Is(err, fs.ErrNotExist) {
		return Disagree, "is missing"
	}
	if err != nil {
		return Failed, err.Error()
	}
	r, err := prove.File(data, sheet)
	switch {
	case err != nil:
		return Failed, "cannot be read: " + err.Error()
	case r.Agrees():
		return Done, r.String()
	}
	return Disagree, r.String()
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
