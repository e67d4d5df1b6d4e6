package command

import (
	"context"
	"io"
	"strings"
	"time"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/work"
	"slingloft/export/setup"
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
	shop
}

func cutCommand() command {
	return command{
		name: "cut", args: " [DESIGN]", most: 1,
		line: "write the files to cut from: cloth lay and template sheets",
		long: `Lays the cloth pieces on the roll and the stiff templates on their sheets and
writes one file a sheet and format. Every file is written whole or not at all. A
file that is there already is replaced only if it was written for the same design
values and not changed since, or with --force.

Formats: ` + strings.Join(setup.Names(), ", ") + `.`,
		example: "  slingloft cut\n  slingloft cut my.toml --out my-files --as svg,dxf\n  slingloft cut my.toml --scale 1:5 --as svg\n  slingloft cut my.toml --as pdf --paper a4 --measured 99.6x100.2\n",
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o cutOptions
			f.StringVarP(&o.out, "out", "o", defaultFolder, "folder to write into; made if it is not there")
			f.StringVar(&o.as, "as", "svg,dxf", "formats to write, with commas between")
			f.StringVar(&o.scale, "scale", "", "drawing scale, such as 1:5 (default: the design's, else 1:1)")
			f.DurationVar(&o.layTime, "lay-time", 0, "search so long for a better lay, such as 60s")
			f.BoolVar(&o.force, "force", false, "replace files that are there already")
			o.flags(f, true)
			return func(ctx context.Context, s Streams, args []string) error { return cut(ctx, s, args, o) }
		},
	}
}

func cut(ctx context.Context, s Streams, args []string, o cutOptions) error {
	formats, err := formatsNamed(o.as, "cut")
	if err != nil {
		return err
	}
	if o.layTime < 0 || o.layTime > 24*time.Hour {
		return usagef("cut: --lay-time %s: want 0 to 24h", o.layTime)
	}
	with, err := o.setting()
	if err != nil {
		return err
	}
	p, err := loadFor(args, with)
	if err != nil {
		return err
	}
	if err := verdict(&p); err != nil {
		return err
	}
	out, err := outputOf(p.Design, o.shop, o.scale, "cut")
	if err != nil {
		return err
	}
	l, err := p.Lay(ctx, work.Budget{Time: o.layTime})
	if err != nil {
		return err
	}
	drawings, err := p.Drawings(l, out.options.ScaleFactor())
	if err != nil {
		return err
	}
	out.folder, out.formats, out.digest, out.force = o.out, formats, []byte(p.Digest), o.force
	if err := out.write(s, drawings); err != nil {
		return err
	}
	summary(s.Err, &p, l)
	return nil
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
