package command

import (
	"context"
	"fmt"
	"net"

	"github.com/spf13/pflag"

	"slingloft/cmd/slingloft/watch"
)

func watchCommand() command {
	return command{
		name: "watch", args: " [DESIGN]", maxArgs: 1,
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			address := f.String("addr", watch.DefaultAddress, "")
			return func(ctx context.Context, s Streams, args []string) error { return serve(ctx, s, args, *address) }
		},
	}
}

func serve(ctx context.Context, s Streams, args []string, address string) error {
	if _, _, err := net.SplitHostPort(address); err != nil {
		return misuse(NoHost, address, watch.DefaultAddress)
	}
	o := watch.Options{Address: address}
	if len(args) > 0 {
		o.Path = args[0]
		if _, err := readAtMost(o.Path, 1); err != nil {
			return err
		}
	}
	if !watch.Loopback(address) {
		s.say(SeenByOthers, address)
	}
	o.Ready = func(url string) { fmt.Fprintln(s.Out, url) }
	return watch.Serve(ctx, o)
}
