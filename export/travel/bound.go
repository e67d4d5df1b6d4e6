package travel

import (
	"math"

	"slingloft/outline/geom"
)

// Bound returns a length in mm that no order of the paths can do with less idle
// travel than: the largest minimum spanning 1-tree that an ascent over penalties of
// its nodes finds (Held and Karp 1970, from memory). An open path is two nodes, its
// ends, tied by an edge that every tour has at no cost; a closed path is one node,
// as near to another as the nearest of its corners. The tour ends where it likes:
// a node at no distance from the start and from every other closes it.
func Bound(paths []Path, from geom.Point) float64 {
	const rounds = 250
	if len(paths) == 0 {
		return 0
	}
	b := newBound(paths, from)
	n := len(b.nodes)
	best := 0.0
	step := 0.2 * b.tree(make([]int, n)) / float64(n)
	for range rounds {
		degree := make([]int, n)
		total := b.tree(degree)
		end := 1 // the closing node joins the start and the node of least penalty
		for i := 1; i < n; i++ {
			if b.penalty[i] < b.penalty[end] {
				end = i
			}
		}
		total += b.penalty[0] + b.penalty[end]
		degree[0]++
		degree[end]++
		for _, p := range b.penalty {
			total -= 2 * p
		}
		best = math.Max(best, total)
		for i := range b.penalty {
			b.penalty[i] += step * float64(degree[i]-2)
		}
		step *= 0.985
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
