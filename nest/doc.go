// Package nest lays pieces out on stock: on a roll of fixed width and open
// length, the shortest length wanted ([PackStrip]), or on beds of fixed size,
// the fewest beds wanted and then the shortest use of the last one
// ([PackBeds]).
//
// x runs along the roll, y across it; lengths are mm, angles radians. A
// [Placement] carries the motion that takes an item's outline from its own
// coordinates to its place.
//
// The promise: every lay that is returned has passed [Verify], which works on
// the true outlines with exact predicates and shares no code with the search.
// Pieces may touch; they never overlap, keep the gap and the margin asked for,
// and stay clear of every keep-out area.
//
// With a step budget the lay depends on the items, the stock, the seed, the
// budget and the number of workers, never on the speed of the machine. With a
// time budget it is as good as the time allows.
package nest
