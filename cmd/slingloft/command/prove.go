package command

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/work"
)

// proveOptions are the flags of prove.
type proveOptions struct {
	as    string
	scale string
	// copies of each bed that lie together, as the run kept it; 0: one.
	copies int
	shop
	reporting
}

func proveCommand() command {
	return command{
		name: "prove", args: " [DESIGN] FOLDER", maxArgs: 2,
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o proveOptions
			f.StringVar(&o.as, "as", "", "")
			f.StringVar(&o.scale, "scale", "", "")
			o.shop.flags(f, true)
			return o.reporting.flags(f, proofSchema, func(ctx context.Context, s Streams, args []string) error {
				return proveFiles(ctx, s, args, o)
			})
		},
	}
}

func proveFiles(ctx context.Context, s Streams, args []string, o proveOptions) error {
	folder := defaultFolder
	if n := len(args); n > 0 {
		folder, args = args[n-1], args[:n-1]
	}
	if info, err := os.Stat(folder); errors.Is(err, fs.ErrNotExist) {
		return ends(Failed, NoFolder, folder)
	} else if err != nil || !info.IsDir() {
		return misuse(NotAFolder, folder)
	}
	runs, err := runsIn(folder, o.as)
	if err != nil {
		return o.nothing(ctx, s, args, err)
	}
	var all []proof
	for _, r := range runs {
		one, err := r.prove(ctx, folder, args, o, s.words())
		if err != nil {
			return err
		}
		if one.said != "" && !o.json {
			s.say(AsItWasCut, one.said)
		}
		all = append(all, one)
	}
	return o.tell(s, folder, all)
}

// nothing ends a proof for which there are no files.
func (o proveOptions) nothing(ctx context.Context, s Streams, args []string, err error) error {
	if !o.json || statusOf(err) != Disagree {
		return err
	}
	p, out, bad := o.load(ctx, args)
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
	if what, ok := mixed(folder, o.as); ok && err == nil {
		err = status{Disagree, []notice{what}}
	} else if ok {
		s.say(Caution, what)
	}
	if o.json {
		return errors.Join(err, document.Write(s.Out, proofDocument(all[0], files, err)))
	}
	for _, f := range files {
		fmt.Fprintf(s.Out, "%s: %s\n", filepath.Join(folder, f.about.Name), f.text)
	}
	sayStrangers(s, folder)
	return err
}

// load reads the design and returns it with how its sheets are written.
func (o proveOptions) load(ctx context.Context, args []string) (work.Plan, output, error) {
	with, err := o.setting()
	if err != nil {
		return work.Plan{}, output{}, err
	}
	beds, err := loadBeds(ctx, Streams{}, args, with)
	if err != nil {
		return work.Plan{}, output{}, err
	}
	p, err := work.Together(beds, max(1, o.copies))
	if err != nil {
		return p, output{}, err
	}
	out, err := outputOf(p.Design, o.shop, o.scale, "prove", &p.Words.Sheets)
	return p, out, err
}

func proofSchema() map[string]any {
	return document.Schema[document.Proof]("slingloft prove", document.ProveVersion,
		"What written files measure against what they should. Lengths mm. With exit status 2 there is a list of "+
			"faults in its place where the design is at fault.")
}

func proofDocument(p proof, files []proved, err error) document.Proof {
	out := document.Proof{
		Head: headOf(p.plan, document.ProveVersion, err), Agrees: err == nil,
		Scale: p.output.options.ScaleFactor(), Files: []document.Proved{},
	}
	for _, f := range files {
		out.Files = append(out.Files, f.about)
	}
	return out
}
