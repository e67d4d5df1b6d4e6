//go:build !js

package nest

// breath is nothing here: elsewhere searches have threads of their own.
type breath struct{}

func (*breath) breathe() {}
