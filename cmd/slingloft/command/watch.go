package command

import (
	"context"
	"fmt"
	"io"
	"net"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/watch"
)

func watchCommand() command {
	return command{
		name: "watch", args: " [DESIGN]", maxArgs: 1,
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			var o watch.Options
			shelfFlag(f, &o.Shelf)
			f.StringVar(&o.Address, "addr", watch.DefaultAddress, "")
			return func(ctx context.Context, s Streams, args []string) error { return serve(ctx, s, args, o) }
		},
	}
}

func serve(ctx context.Context, s Streams, args []string, o watch.Options) error {
	if _, _, err := net.SplitHostPort(o.Address); err != nil {
		return misuse(NoHost, o.Address, watch.DefaultAddress)
	}
	if len(args) > 0 {
		o.Path = args[0]
	}
	if !watch.Loopback(o.Address) {
		s.say(SeenByOthers, o.Address)
	}
	o.Run = func(ctx context.Context, args []string, out, notice io.Writer) int {
		return Run(ctx, args, Streams{Out: out, Err: notice, Words: s.Words})
	}
	o.Ready = func(url string) { fmt.Fprintln(s.Out, url) }
	return watch.Serve(ctx, o)
}
