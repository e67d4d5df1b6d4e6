//go:build unix

package whole

import "syscall"

// unwaiting opens a pipe at once, where opening it else waits for a writer.
const unwaiting = syscall.O_NONBLOCK
