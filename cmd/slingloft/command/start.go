package command

import (
	"context"
	"fmt"
	"io"

	"github.com/spf13/pflag"

	"slingloft/export/whole"
	"slingloft/outline/design"
)

func startCommand() command {
	return command{
		name: "start", args: " FILE", most: 1,
		line: "write a commented starter design to change",
		long: `Writes a complete design with a comment at every value, ready to be changed. It
never writes over a file that is there already.`,
		example: "  slingloft start my.toml\n  slingloft start my.toml --units in\n",
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			units := f.String("units", "mm", "units to write the design in: mm or in")
			return func(_ context.Context, s Streams, args []string) error { return start(s, args, *units) }
		},
	}
}

func start(s Streams, args []string, units string) error {
	if units != "mm" && units != "in" {
		return usagef("start: --units is mm or in, not %.20q", units)
	}
	if len(args) == 0 {
		return usagef("start: name the file to write, as in slingloft start my.toml")
	}
	text := design.Starter(units == "in")
	err := whole.Write(args[0], whole.Policy{}, func(w io.Writer) error {
		_, err := io.WriteString(w, text)
		return err
	})
	if err != nil {
		return err
	}
	fmt.Fprintln(s.Out, args[0])
	return nil
}
