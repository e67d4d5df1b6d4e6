//go:build !(darwin || dragonfly || freebsd || linux || netbsd || openbsd || windows)

package whole

import "errors"

// lock takes nothing: here a folder cannot be held.
func lock(string) (release func(), err error) { return nil, errors.ErrUnsupported }
