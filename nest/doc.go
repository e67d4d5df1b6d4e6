// Package nest lays pieces out on stock: on a roll of fixed width and open
// length, the shortest length wanted ([PackStrip]), or on beds of fixed size,
// the fewest beds wanted and then the shortest use of the last one
// ([PackBeds]).
//
// x runs along the roll, y across it; lengths are mm, angles radians. A
// [Placement] carries the motion that takes an item's outline from its own
// coordinates to its place.
//
// # Promise
//
// Every lay that is returned has passed [Verify] or [VerifyBeds], which work on
// the true outlines with exact predicates and share no code with the search.
// Pieces may touch; they never overlap, keep the gap and the margin asked for,
// and stay clear of every keep-out area.
//
// With a step budget the lay depends on the items, the stock, the seed, the
// budget and the number of workers, never on the speed of the machine. With a
// time budget it is as good as the time allows. A step is one piece that was
// offered a better place.
//
// # Method
//
// The files, and packages below, in the order in which they are best read:
//
//   - package cover: outlines with many vertices are replaced by ones that cover
//     them with few, and those cut into convex parts.
//   - package nofit: for two outlines, the displacements at which they overlap,
//     prepared so that the depth of an overlap is known in some 15 ns whatever the
//     number of vertices.
//   - form.go, atlas.go, problem.go: which outlines in which turns there are, and
//     the fields between them.
//   - level.go: coarser covers where the fields of many or fine outlines would cost more
//     than the search.
//   - first.go: the first lay, piece after piece, each as far left as it goes.
//   - draft.go, vicinity.go, move.go: a lay with overlaps, what they cost, and a
//     better place for one piece.
//   - separate.go: moving pieces until none overlap, with weights that grow on
//     pairs that stay stuck.
//   - search.go: ever shorter lengths, separated again; perturbing lays that will
//     not come free; compressing at the end.
//   - settle.go: exact fits of outlines on a grid.
//   - team.go: several workers that share the best lay.
//   - package exact, verify.go: the independent check.
//
// Separating overlaps at a fixed length, over and over, is the plan of all
// strong methods since Imamichi, Yagiura & Nagamochi 2009, "An iterated local
// search algorithm based on nonlinear programming for the irregular strip
// packing problem"; the way in which places are sampled and weights grow follows
// Gardeyn, Vanden Berghe & Wauters 2025, "An open-source heuristic to reboot 2D
// nesting research" (arXiv 2509.13329). Fields and their depths are our own.
package nest
