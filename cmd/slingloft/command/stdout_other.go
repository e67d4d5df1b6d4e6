//go:build !unix

package command

import "os"

// wasClosed reports nothing: only on Unix a closed stream is known.
func wasClosed(*os.File) bool { return false }
