package command

import (
	"context"
	"errors"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// reporting holds the flags of a command that tells other programs what came of it.
type reporting struct{ json bool }

// runner runs a command whose flags are read.
type runner = func(context.Context, Streams, []string) error

// flags defines the flags and returns what runs do, or prints the schema of its
// document instead. Faults of the design are printed as a document too where one was
// asked for; they reach the caller all the same.
func (r *reporting) flags(f *pflag.FlagSet, schema func() map[string]any, do runner) runner {
	f.BoolVar(&r.json, "json", false, "")
	asked := f.Bool("schema", false, "")
	return func(ctx context.Context, s Streams, args []string) error {
		if *asked {
			return document.Write(s.Out, schema())
		}
		err := do(ctx, s, args)
		var faults design.Faults
		if r.json && errors.As(err, &faults) {
			return errors.Join(err, document.Write(s.Out, document.FaultsOf(faults, Usage)))
		}
		return err
	}
}

// headOf is what the document of a plan begins with; err is what the command ends in.
func headOf(p *work.Plan, version int, err error) document.Head {
	return document.Head{Version: version, Name: p.Design.Name, Digest: p.Digest, Mark: p.Mark, Status: statusOf(err)}
}

// statusOf returns the exit status that an error earns.
func statusOf(err error) int {
	var with status
	var faults design.Faults
	switch {
	case err == nil:
		return Done
	case errors.As(err, &faults):
		return Usage
	case errors.As(err, &with):
		return with.code
	}
	return Failed
}
