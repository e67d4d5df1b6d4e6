package command

import (
	"io"
	"io/fs"
	"os"
	"syscall"
)

// Output returns what writes on a standard stream. One that was closed when the program
// began, for which Go puts the null device, takes nothing: then each writing fails.
func Output(f *os.File) io.Writer {
	if wasClosed(f) {
		return closed{f.Name()}
	}
	return f
}

// closed is a stream that takes nothing.
type closed struct{ name string }

func (c closed) Write([]byte) (int, error) {
	return 0, &fs.PathError{Op: "write", Path: c.name, Err: syscall.EBADF}
}
