//go:build darwin || dragonfly || freebsd || linux || netbsd || openbsd

package whole

import (
	"errors"
	"os"

	"golang.org/x/sys/unix"
)

// lock takes a folder, or returns errBusy where somebody has it.
func lock(folder string) (release func(), err error) {
	d, err := os.Open(folder)
	if err != nil {
		return nil, err
	}
	for {
		err = unix.Flock(int(d.Fd()), unix.LOCK_EX|unix.LOCK_NB)
		if !errors.Is(err, unix.EINTR) {
			break
		}
	}
	if err == nil {
		return func() { d.Close() }, nil
	}
	d.Close()
	if errors.Is(err, unix.EWOULDBLOCK) {
		return nil, errBusy
	}
	return nil, err
}
