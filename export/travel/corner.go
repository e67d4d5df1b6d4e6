package travel

import "math"

// chooseCorners begins each closed path at the corner that makes the travel shortest
// in the order in which the paths stand, all corners chosen together.
func (t *tour) chooseCorners() {
	length := make([]float64, 1) // of the shortest way to the end of each choice for the step before
	last := []stop{{in: t.from, out: t.from}}
	choices, before := make([][]stop, len(t.steps)), make([][]int, len(t.steps))
	for i, s := range t.steps {
		choices[i] = []stop{s}
		if t.paths[s.Path].Closed {
			choices[i] = t.choices(s.Path)
		}
		next := make([]float64, len(choices[i]))
		before[i] = make([]int, len(choices[i]))
		for c, choice := range choices[i] {
			next[c] = math.Inf(1)
			for b, l := range length {
				if way := l + last[b].out.Dist(choice.in); way < next[c] {
					next[c], before[i][c] = way, b
				}
			}
		}
		length, last = next, choices[i]
	}
	c := 0
	for k, l := range length {
		if l < length[c] {
			c = k
		}
	}
	for i := len(t.steps) - 1; i >= 0; i-- {
		t.steps[i] = choices[i][c]
		c = before[i][c]
	}
	for i := range t.steps {
		t.measure(i)
	}
}
