package command

import (
	"cmp"
	"context"
	"errors"
	"io/fs"
	"path/filepath"
	"slices"

	"slingloft/cmd/slingloft/work"
	"slingloft/export/whole"
)

// run is one run of cut of which files are in a folder.
type run struct {
	formats []string
	digest  string // of its design
	kept    *kept  // nil if the folder's record does not know
	number  int    // the higher the later
}

// runsIn returns the runs whose files are to be proved, the latest first: for each
// format the last that wrote any of it, which is the only one whose files are still
// due. Files that the record does not know are held against the latest.
func runsIn(folder, list string) ([]run, error) {
	formats, err := formatsIn(folder, list)
	if err != nil {
		return nil, err
	}
	last := map[string]whole.Known{} // by format; "" for any
	for _, k := range whole.ReadRecord(folder) {
		if f, ok := sheetNamed(k.Name); ok && k.Run > 0 {
			for _, format := range [2]string{f.format, ""} {
				if k.Run > last[format].Run {
					last[format] = k
				}
			}
		}
	}
	var out []run
	for _, f := range formats {
		k, ok := last[f]
		if !ok {
			k = last[""]
		}
		at := slices.IndexFunc(out, func(r run) bool { return r.number == k.Run })
		if at < 0 {
			r := run{digest: k.Tag, number: k.Run}
			if k.Run > 0 {
				what, err := readKept(k.Note)
				if err != nil {
					return nil, unsound(folder, err)
				}
				r.kept = &what
			}
			at, out = len(out), append(out, r)
		}
		out[at].formats = append(out[at].formats, f)
	}
	slices.SortFunc(out, func(a, b run) int { return cmp.Compare(b.number, a.number) })
	return out, nil
}

// unsound is the fault of a folder's record.
func unsound(folder string, err error) error {
	return ends(Disagree, RecordBroken, filepath.Join(folder, whole.RecordName), err)
}

// proof is what came of the files of one run.
type proof struct {
	plan   *work.Plan
	output output
	files  []proved
	said   string // what was taken from the record
}

// prove holds the files of the run against the design.
func (r run) prove(ctx context.Context, folder string, args []string, o proveOptions, w Words) (proof, error) {
	var out proof
	if r.kept != nil {
		args, out.said = r.kept.fill(&o, folder, args)
	}
	p, o2, err := o.load(ctx, args)
	if errors.Is(err, fs.ErrNotExist) && out.said != "" {
		err = ends(Failed, HasAnotherPlace, err, out.said)
	}
	if err != nil {
		return out, err
	}
	out.plan, out.output = &p, o2
	out.output.speak(w)
	out.output.folder, out.output.formats = folder, r.formats
	out.output.known, out.output.cause = knownIn(folder), r.cause(o2.machine)
	if r.kept != nil && r.digest != p.Digest {
		out.files, err = out.output.stale(w.text(notice{OfOtherDesign, []any{r.digest, p.Digest}}))
		return out, err
	}
	l, err := r.lay(ctx, folder, &p)
	if err != nil {
		return out, err
	}
	if o.scale == "" && r.kept == nil {
		if out.output.options.Scale, err = out.output.scaleOf(&p, l); err != nil {
			return out, err
		}
	}
	drawings, err := p.Drawings(l, out.output.options.ScaleFactor())
	if err != nil {
		return out, err
	}
	out.files, err = out.output.prove(drawings)
	return out, err
}

// lay returns the lay that the run kept, or searches for the usual one.
func (r run) lay(ctx context.Context, folder string, p *work.Plan) (work.Lays, error) {
	if r.kept == nil {
		return p.Lay(ctx, work.Budget{})
	}
	l, err := p.Restore(r.kept.Lay)
	if err != nil {
		return l, unsound(folder, ends(Disagree, LayUnsound, err))
	}
	return l, nil
}
