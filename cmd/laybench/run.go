package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"time"

	"github.com/spf13/pflag"

	"slingloft/nest"
)

const usage = `usage: laybench [options] FILE.json...

Packs each instance and prints its name, number of pieces, strip width, length,
density in per cent and the seconds it took, then the mean density.

  --seconds N   search time for an instance (60)
  --processor   measure the search time, and the seconds printed, by the processor
                time of all workers over their number: on a machine that does
                other work the same search as on a quiet one
  --steps N     search steps for an instance instead, reproducible with a seed
  --seed K      seed of the search (1)
  --workers N   searches side by side (2)
  --svg DIR     draw each lay as DIR/NAME.svg
  --json DIR    write each lay as DIR/NAME.json
`

// settings are the options of one run.
type settings struct {
	seconds   float64
	processor bool
	nest.Options
	svg, json string
}

// flags returns the flags, bound to s.
func (s *settings) flags() *pflag.FlagSet {
	fs := pflag.NewFlagSet("laybench", pflag.ContinueOnError)
	fs.SetOutput(io.Discard)
	fs.Float64Var(&s.seconds, "seconds", 60, "")
	fs.BoolVar(&s.processor, "processor", false, "")
	fs.IntVar(&s.Steps, "steps", 0, "")
	fs.Uint64Var(&s.Seed, "seed", 1, "")
	fs.IntVar(&s.Workers, "workers", 2, "")
	fs.StringVar(&s.svg, "svg", "", "")
	fs.StringVar(&s.json, "json", "", "")
	return fs
}

// run packs the instances named in args and prints a table to out.
func run(ctx context.Context, args []string, out io.Writer) error {
	var s settings
	fs := s.flags()
	if err := fs.Parse(args); errors.Is(err, pflag.ErrHelp) {
		_, err := io.WriteString(out, usage)
		return err
	} else if err != nil {
		return fmt.Errorf("%w\n%s", err, usage)
	}
	if fs.NArg() == 0 {
		return errors.New("no instance given\n" + usage)
	}
	if fs.Changed("steps") && fs.Changed("seconds") {
		return errors.New("--steps and --seconds exclude each other")
	}
	if !(s.seconds >= 0 && s.seconds <= 1e6) || s.Steps < 0 || s.Workers < 1 {
		return errors.New("--seconds, --steps and --workers must not be negative, nor workers 0")
	}
	if s.Steps == 0 {
		s.Time = time.Duration(s.seconds * float64(time.Second))
	}
	start := time.Now()
	s.Clock = func() time.Duration { return time.Since(start) }
	if s.processor {
		if _, err := processorTime(); err != nil {
			return err
		}
		s.Clock = func() time.Duration {
			t, _ := processorTime()
			return t / time.Duration(s.Workers)
		}
	}
	return s.lay(ctx, fs.Args(), out)
}

// lay packs the instances one after another.
func (s settings) lay(ctx context.Context, paths []string, out io.Writer) error {
	sum := 0.0
	for _, path := range paths {
		in, err := readInstance(path)
		if err != nil {
			return err
		}
		start := s.Clock()
		s.Progress = ticker(os.Stderr, in.Name)
		lay, err := nest.PackStrip(ctx, in.items(), nest.Strip{Width: in.Width}, s.Options)
		if err != nil {
			return fmt.Errorf("%s: %w", path, err)
		}
		took := (s.Clock() - start).Seconds()
		sum += lay.Density
		fmt.Fprintf(out, "%-12s %4d pieces  width %9.6g  length %12.6f  density %6.2f %%  %6.1f s\n",
			in.Name, len(lay.Placements), in.Width, lay.Length, 100*lay.Density, took)
		if err := s.save(in, lay, took); err != nil {
			return err
		}
		if ctx.Err() != nil {
			return ctx.Err()
		}
	}
	_, err := fmt.Fprintf(out, "mean density %.2f %%\n", 100*sum/float64(len(paths)))
	return err
}

// save writes the drawing and the placements of a lay where they are asked for.
func (s settings) save(in instance, lay nest.Lay, took float64) error {
	if s.svg != "" {
		if err := write(filepath.Join(s.svg, in.Name+".svg"), drawing(in, lay)); err != nil {
			return err
		}
	}
	if s.json == "" {
		return nil
	}
	data, err := placements(in, lay, took)
	if err != nil {
		return err
	}
	return write(filepath.Join(s.json, in.Name+".json"), data)
}

// write writes a file and the folder it stands in.
func write(path string, data []byte) error {
	if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
		return err
	}
	return os.WriteFile(path, data, 0o666)
}
