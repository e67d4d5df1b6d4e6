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
		line: "serve a local page that redraws the build sheet on each save",
		long: `Serves a page on this machine that shows the build sheet and draws it again each
time the design file is saved. What is wrong in the file is shown in its place, and
the last good drawing stays. The main dimensions can be tried on the page without
touching the file. It ends with Ctrl-C.

The page is served to this machine only, unless --addr names another address.`,
		example: "  slingloft watch my.toml\n  slingloft watch my.toml --addr 127.0.0.1:0\n",
		set: func(f *pflag.FlagSet) func(context.Context, Streams, []string) error {
			address := f.String("addr", watch.DefaultAddress, "address and port to serve the page at; port 0 takes a free one")
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
