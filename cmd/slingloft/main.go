// Slingloft turns one design file of a bridge hammock into everything that it is
// cut and sewn from. See package command for what it can do.
package main

import (
	"context"
	"os"
	"os/signal"

	"slingloft/cmd/slingloft/command"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	os.Exit(command.Run(ctx, os.Args[1:], command.Streams{Out: command.Output(os.Stdout), Err: os.Stderr}))
}
