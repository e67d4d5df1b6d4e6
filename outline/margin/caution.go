package margin

// Cautions returns the warnings that stand beside every load figure.
func Cautions() []string {
	return []string{
		"Hang it low at first, over soft ground, and load it little by little with a hand on something firm.",
		"Look over cords, splices, seams, bars and hooks before each use; a part that is cut, fuzzed, bent or stretched is done.",
		"It carries one resting person. It is no gear for lifting, climbing, rescue or swinging.",
		"Trees and posts must be sound. For anchors in a building ask a qualified person and keep to the local rules.",
		"Children stay out of it without an adult beside them; cords and loose cloth can go round a neck. Take it down when it is not in use.",
		"Laser and hot knife: cut only materials that are known to be safe for it, with air drawn off, and never leave it alone; molten edges burn skin.",
		"The figures are computed from the design and from data sheets. They replace no test of your own splices and seams.",
	}
}
