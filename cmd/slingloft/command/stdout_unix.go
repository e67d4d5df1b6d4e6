//go:build unix

package command

import (
	"os"

	"golang.org/x/sys/unix"
)

// wasClosed reports whether a standard stream was closed when the program began: Go then
// opens the null device for reading and writing, where a shell opens it for writing.
func wasClosed(f *os.File) bool {
	now, err := f.Stat()
	null, no := os.Stat(os.DevNull)
	if err != nil || no != nil || !os.SameFile(now, null) {
		return false
	}
	how, err := unix.FcntlInt(f.Fd(), unix.F_GETFL, 0)
	return err == nil && how&unix.O_ACCMODE == unix.O_RDWR
}
