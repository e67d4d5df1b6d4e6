//go:build !unix

package main

import (
	"errors"
	"time"
)

// processorTime is not to be had on this system.
func processorTime() (time.Duration, error) {
	return 0, errors.New("--processor is not to be had on this system")
}
