package piece

// Side names a side of the bed as the sleeper on the back has it.
type Side int

// The sides: Left is at v > 0.
const (
	Left Side = iota
	Right
)

// String returns "left" or "right".
func (s Side) String() string {
	if s == Left {
		return "left"
	}
	return "right"
}

// Letter returns the side's letter in notch names.
func (s Side) Letter() string {
	if s == Left {
		return "L"
	}
	return "R"
}
