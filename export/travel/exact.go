package travel

import (
	"math"
	"slices"

	"slingloft/outline/geom"
)

// exactWork bounds what the shortest order is found for: the square of the choices, times
// the sets of paths. Five outlines of four hundred corners take it, in half a second.
const exactWork = 1 << 28

// exactly returns the shortest order of few paths, by dynamic programming over the
// sets of paths that are done (Held and Karp 1962); ok is false if they are too many.
func exactly(paths []Path, from geom.Point) (steps []stop, ok bool) {
	choices, first := choicesOf(paths) // a way to follow each path: where it is begun and left
	if n := len(paths); n == 0 || n > 16 || len(choices)*len(choices)<<n > exactWork {
		return nil, false
	}
	// By set of paths and choice of the last of them: the shortest way to its end, and
	// the choice before.
	length := make([][]float64, 1<<len(paths))
	before := make([][]int32, len(length))
	for set := 1; set < len(length); set++ {
		length[set], before[set] = make([]float64, len(choices)), make([]int32, len(choices))
		for p := range paths {
			if set&(1<<p) == 0 {
				continue
			}
			rest := set &^ (1 << p)
			for d := first[p]; d < first[p+1]; d++ {
				length[set][d], before[set][d] = shortest(choices, first, rest, length[rest], from, choices[d].in)
			}
		}
	}
	all := len(length) - 1
	last := 0
	for d := range choices {
		if length[all][d] < length[all][last] {
			last = d
		}
	}
	return unwound(choices, before, last), true
}

// choicesOf returns all choices, path by path, and where those of each begin.
func choicesOf(paths []Path) (choices []stop, first []int) {
	t := tour{paths: paths}
	for i := range paths {
		first = append(first, len(choices))
		choices = append(choices, t.choices(i)...)
	}
	return choices, append(first, len(choices))
}

// choices returns all ways to follow a path: an open one from either end, a closed one
// from any corner.
func (t *tour) choices(path int) []stop {
	p := t.paths[path]
	if !p.Closed {
		return []stop{t.stop(Step{Path: path}), t.stop(Step{Path: path, Reversed: true})}
	}
	out := make([]stop, len(p.Points))
	for k := range out {
		out[k] = t.stop(Step{Path: path, Start: k})
	}
	return out
}

// shortest returns the shortest way to a place over the paths of a set, and the choice
// that it leaves the last of them by.
func shortest(choices []stop, first []int, set int, length []float64, from, to geom.Point) (float64, int32) {
	if set == 0 {
		return from.Dist(to), -1
	}
	best, choice := math.Inf(1), int32(-1)
	for p := range len(first) - 1 {
		if set&(1<<p) == 0 {
			continue
		}
		for d := first[p]; d < first[p+1]; d++ {
			if length[d] < best {
				if way := length[d] + choices[d].out.Dist(to); way < best {
					best, choice = way, int32(d)
				}
			}
		}
	}
	return best, choice
}

// unwound returns the stops of the way that ends with choice last.
func unwound(choices []stop, before [][]int32, last int) []stop {
	var out []stop
	for set, d := len(before)-1, int32(last); d >= 0; {
		out = append(out, choices[d])
		next := before[set][d]
		set &^= 1 << choices[d].Path
		d = next
	}
	slices.Reverse(out)
	return out
}
