package travel

import (
	"math"

	"slingloft/outline/geom"
)

// lowerBound returns a length in mm that no order of the paths can do with less idle
// travel than: the largest minimum spanning 1-tree that an ascent over penalties of
// its nodes finds (Held and Karp 1970, with Polyak's steps, from memory). An open
// path is two nodes, its ends, tied by an edge that every tour has at no cost; a
// closed path is one node, as near to another as the nearest of its corners. The
// tour ends where it likes: a node at no distance from the start and from every
// other closes it. The bound gets better with more rounds, of which 300 do for a
// hundred paths and 2500 for a thousand; one takes a time that grows as the square
// of the paths.
func lowerBound(paths []Path, from geom.Point, rounds int) float64 {
	if len(paths) == 0 {
		return 0
	}
	b := newBound(paths, from)
	n := len(b.nodes)
	travel := Idle(paths, Order(paths, from), from) // to aim at
	best, share, stall := 0.0, 0.5, 0
	for range rounds {
		degree := make([]int, n)
		total := b.oneTree(degree)
		if stall++; total > best {
			best, stall = total, 0
		} else if stall == 60 {
			share, stall = share/2, 0
		}
		square := 0
		for _, d := range degree {
			square += (d - 2) * (d - 2)
		}
		if square == 0 || share < 1e-3 {
			break // a tour itself, or no more to gain
		}
		step := share * (travel - total) / float64(square)
		for i := range b.penalty {
			b.penalty[i] += step * float64(degree[i]-2)
		}
	}
	return best
}

// bound is the graph of the 1-trees.
type bound struct {
	nodes   []geom.Polyline // the points by which a node is reached
	path    []int           // by node: the path that it belongs to, −1 for the start
	penalty []float64
	dist    [][]float64
}

func newBound(paths []Path, from geom.Point) *bound {
	b := &bound{nodes: []geom.Polyline{{from}}, path: []int{-1}}
	for i, p := range paths {
		if p.Closed {
			b.nodes, b.path = append(b.nodes, p.Points), append(b.path, i)
			continue
		}
		last := len(p.Points) - 1
		b.nodes, b.path = append(b.nodes, p.Points[:1], p.Points[last:]), append(b.path, i, i)
	}
	b.penalty = make([]float64, len(b.nodes))
	b.dist = make([][]float64, len(b.nodes))
	for i := range b.nodes {
		b.dist[i] = make([]float64, len(b.nodes))
		for k := range i {
			d := nearest(b.nodes[i], b.nodes[k])
			b.dist[i][k], b.dist[k][i] = d, d
		}
	}
	return b
}

// oneTree adds up a minimum spanning tree with the closing node, which joins the
// start and the node of least penalty, less what a tour would pay in penalties.
func (b *bound) oneTree(degree []int) float64 {
	total, end := b.tree(degree), 1
	for i, p := range b.penalty {
		total -= 2 * p
		if i > 0 && p < b.penalty[end] {
			end = i
		}
	}
	degree[0]++
	degree[end]++
	return total + b.penalty[0] + b.penalty[end]
}

// tree adds up a minimum spanning tree of the distances with their penalties, in
// which every tie is an edge (Prim's method), and counts the degrees.
func (b *bound) tree(degree []int) float64 {
	n := len(b.nodes)
	key, parent, done := make([]float64, n), make([]int, n), make([]bool, n)
	for i := range key {
		key[i], parent[i] = math.Inf(1), -1
	}
	key[0] = 0
	total := 0.0
	for range n {
		u := -1
		for i := range n {
			if !done[i] && (u < 0 || key[i] < key[u]) {
				u = i
			}
		}
		done[u] = true
		if p := parent[u]; p >= 0 {
			degree[u]++
			degree[p]++
			total += b.penalty[u] + b.penalty[p]
			if b.path[u] != b.path[p] {
				total += b.dist[u][p]
			}
		}
		for v := range n {
			w := b.dist[u][v] + b.penalty[u] + b.penalty[v]
			if b.path[u] == b.path[v] {
				w = math.Inf(-1) // a tie is taken before any other edge
			}
			if !done[v] && w < key[v] {
				key[v], parent[v] = w, u
			}
		}
	}
	return total
}
