//go:build !unix

package whole

// unwaiting does nothing where there are no pipes by name.
const unwaiting = 0
