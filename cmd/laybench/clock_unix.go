//go:build unix

package main

import (
	"syscall"
	"time"
)

// processorTime returns how long the program has computed so far, over all
// processors.
func processorTime() (time.Duration, error) {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		return 0, err
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano()), nil
}
