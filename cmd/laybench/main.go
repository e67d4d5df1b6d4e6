// Command laybench packs strip instances of the open research collections and
// prints how dense the lays become. It is a tool for working on package nest;
// the instances are JSON files, see [instance].
package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	err := run(ctx, os.Args[1:], os.Stdout)
	stop()
	if err != nil {
		fmt.Fprintln(os.Stderr, "laybench:", err)
		os.Exit(1)
	}
}
