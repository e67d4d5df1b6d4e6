package command

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/work"
	"slingloft/export"
	"slingloft/export/whole"
)

// defaultFolder is where cut writes when no folder is named.
const defaultFolder = "slingloft-out"

// cutOptions are the flags of cut.
type cutOptions struct {
	out     string
	as      string
	scale   string
	layTime time.Duration
	force   bool
}

func cutCommand() command {
	return command{
		name: "cut", args: " [DESIGN]", most: 1,
		line: "write the files to cut from: cloth lay and template sheets",
		long: `Lays the cloth pieces on the roll and the stiff templates on their sheets and
writes one file a sheet and format. Every file is written whole or not at all. A
file that is there already is replaced only if it was written for the same design
values, or with --force.

Formats: ` + strings.Join(formatNames(), ", ") + `.`,
		example: "  slingloft cut\n  slingloft cut my.toml --out my-files --as svg,dxf\n  slingloft cut my.toml --scale 1:5 --as svg\n",
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o cutOptions
			f.StringVarP(&o.out, "out", "o", defaultFolder, "folder to write into; made if it is not there")
			f.StringVar(&o.as, "as", "svg,dxf", "formats to write, with commas between")
			f.StringVar(&o.scale, "scale", "", "drawing scale, such as 1:5 (default: the design's, else 1:1)")
			f.DurationVar(&o.layTime, "lay-time", 0, "search so long for a better lay, such as 60s")
			f.BoolVar(&o.force, "force", false, "replace files that are there already")
			return func(ctx context.Context, s Streams, args []string) error { return cut(ctx, s, args, o) }
		},
	}
}

func cut(ctx context.Context, s Streams, args []string, o cutOptions) error {
	formats, err := formatsNamed(o.as)
	if err != nil {
		return err
	}
	if o.layTime < 0 || o.layTime > 24*time.Hour {
		return usagef("cut: --lay-time %s: want 0 to 24h", o.layTime)
	}
	p, err := load(args)
	if err != nil {
		return err
	}
	if err := verdict(&p); err != nil {
		return err
	}
	opts, err := exportOptions(&p, o)
	if err != nil {
		return err
	}
	l, err := p.Lay(ctx, work.Budget{Time: o.layTime})
	if err != nil {
		return err
	}
	drawings, err := p.Drawings(l, opts.ScaleFactor())
	if err != nil {
		return err
	}
	if err := os.MkdirAll(o.out, 0o755); err != nil {
		return err
	}
	for _, d := range drawings {
		for _, f := range formats {
			path := filepath.Join(o.out, d.Name+f.ending)
			if err := whole.Write(path, policy(&p, o.force), func(w io.Writer) error { return f.write(w, d, opts) }); err != nil {
				return err
			}
			fmt.Fprintln(s.Out, path)
		}
	}
	summary(s.Err, &p, l)
	return nil
}

// exportOptions turns flags and design into the writers' options.
func exportOptions(p *work.Plan, o cutOptions) (export.Options, error) {
	opts := export.Options{Scale: p.Design.Output.Scale}
	if o.scale != "" {
		var err error
		if opts.Scale, err = export.ParseScale(o.scale); err != nil {
			return opts, usagef("cut: --scale: %v", err)
		}
	}
	return opts, opts.Validate()
}

// policy lets a file be replaced that carries the digest of the same design.
func policy(p *work.Plan, force bool) whole.Policy {
	return whole.Policy{Replace: force, Ours: func(r io.Reader) bool {
		const most = 64 << 20
		data, err := io.ReadAll(io.LimitReader(r, most))
		return err == nil && strings.Contains(string(data), p.Digest)
	}}
}

// summary tells in a few lines what the files hold.
func summary(w io.Writer, p *work.Plan, l work.Lays) {
	st := p.Style()
	sayf(w, "%s, design %s", p.Design.Name, p.Digest)
	sayf(w, "cloth: %d pieces on %s of roll %s wide, %.0f %% used", len(l.Cloth.Placements),
		st.Length(l.Cloth.Length), st.Length(p.Design.Cloth.Width), 100*l.Cloth.Density)
	if l.Boards.Beds > 0 {
		sayf(w, "templates: %d parts on %d sheets", len(l.Boards.Placements), l.Boards.Beds)
	}
	for _, line := range p.Warnings() {
		say(w, "warning: "+line)
	}
	say(w, "hang it low and try it out before you trust it; slingloft figure shows loads and cautions")
}
