package cord

import (
	"math"

	"slingloft/outline/design"
	"slingloft/outline/numeric"
)

// A test piece between its two marks loses
//
//	before − after = κ b + k c
//
// with b buried in the host and c crossings, 0 or 1. A whole eye (b, 1) read as a
// bury alone gives κ + k/b in place of κ: 0.16 and 5 mm come out as 0.189 over
// 172 mm. So both are found together, by least squares. The readings of one piece
// scatter by
//
//	v = 2 r² + (s b)²
//
// with r of one reading of the tape and s from splice to splice. s follows from what
// is left over, as in R. C. Paule and J. Mandel, "Consensus values and weighting
// factors", J. Res. Natl. Bur. Stand. 87 (1982) 377: the sum of squares over v is
// what so many pieces leave on average. The scatter that the maker states counts
// among them as much as [statedPieces] would.

// TestPiece is a splice made for trial.
type TestPiece struct {
	Before   float64 // between two marks of the host before its splice, mm
	After    float64 // between the same marks afterwards, mm
	Buried   float64 // in the host between the marks, mm; 0: nothing
	Crossing bool    // whether an eye's crossing lies between the marks too
}

// lost returns what the splice took of the host, mm.
func (p TestPiece) lost() float64 { return p.Before - p.After }

// crossings returns how often the piece crosses.
func (p TestPiece) crossings() float64 {
	if p.Crossing {
		return 1
	}
	return 0
}

// Stated is what a maker says of the splices before any is tried.
type Stated struct {
	Kappa   float64 // κ
	Loss    float64 // k, mm
	Scatter float64 // of κ from splice to splice, as a standard deviation
	Reading float64 // of one reading of the tape, as a standard deviation, mm
}

const (
	// statedPieces is how many test pieces the stated scatter counts for: own choice.
	statedPieces = 2
	// leastDoubt is how far a stated loss may be off at least, mm; it may be off by
	// itself where that is more. Own choice.
	leastDoubt = 3
	// oddBeyond is from how many standard deviations on a piece is called odd: one in
	// 370 sound ones is.
	oddBeyond = 3
)

// Measured is a value with its standard error.
type Measured struct {
	Value float64 `json:"value"`
	Error float64 `json:"error"`
}

// Estimate is what test pieces show.
type Estimate struct {
	Kappa Measured `json:"kappa"` // κ
	Loss  Measured `json:"loss"`  // k, mm
	// Scatter is the standard deviation of κ from one splice to the next.
	Scatter float64 `json:"scatter"`
	Pieces  int     `json:"pieces"`
	// Together says that the pieces show only what bury and crossing lose together:
	// Loss is as stated then, and Kappa holds with it.
	Together bool `json:"together"`
	// LossAlone is the error of the loss that has nothing to do with κ's, mm: where κ is
	// larger by some amount the loss is smaller by so much of Balance, mm, besides.
	LossAlone float64 `json:"-"`
	Balance   float64 `json:"-"`
	// Whole is what an eye loses over WholeBuried mm of bury, the mean of the whole
	// eyes that were tried. It is as sure as the pieces are, Together or not. Zero
	// where no whole eye was tried.
	Whole       Measured `json:"whole"`
	WholeBuried float64  `json:"whole_buried"`
}

// Of returns the standard deviation of what a single splice with b mm buried
// loses, its own scatter and the error of κ together, mm.
func (e Estimate) Of(b float64) float64 { return b * math.Hypot(e.Scatter, e.Kappa.Error) }

// EstimateOf finds contraction, loss and scatter from test pieces. Without any they
// are as stated, κ good to its scatter. The error is a [hung.Impossible] for
// splice.trial.
func EstimateOf(pieces []TestPiece, s Stated) (Estimate, error) {
	for i, p := range pieces {
		if err := p.check(i); err != nil {
			return Estimate{}, err
		}
	}
	doubt := max(s.Loss, leastDoubt)
	e := Estimate{Kappa: Measured{s.Kappa, s.Scatter}, Loss: Measured{s.Loss, doubt}, LossAlone: doubt, Scatter: s.Scatter,
		Pieces: len(pieces)}
	if len(pieces) == 0 {
		return e, nil
	}
	// What is left over decides the scatter, and the scatter decides the weights.
	const greatest = 1 // κ of a braid that loses all
	left := func(scatter float64) float64 { return e.leftOver(pieces, s, scatter) }
	if scatter, err := numeric.Root(left, s.Scatter*1e-3, greatest, 1e-9); err == nil && s.Scatter > 0 {
		e.Scatter = scatter
	}
	e.read(pieces, s, e.Scatter)
	e.whole(pieces, s)
	if e.Together {
		e.LossAlone, e.Balance = 0, e.WholeBuried
	}
	return e, nil
}

// Odd returns the pieces, from 0, that lie further off than chance explains: each is
// held against what the others show, since one that is far off hides in a scatter
// that it made itself. They are worth another look, no more.
func Odd(pieces []TestPiece, s Stated) ([]int, error) {
	var out []int
	for i, p := range pieces {
		others := append(append([]TestPiece(nil), pieces[:i]...), pieces[i+1:]...)
		e, err := EstimateOf(others, s)
		if err != nil {
			return nil, err
		}
		spread := s.variance(p, e.Scatter) + math.Pow(e.Kappa.Error*p.Buried, 2)
		if p.Crossing && !e.Together {
			spread += e.Loss.Error * e.Loss.Error
		}
		if off := p.lost() - e.predicted(p); len(others) > 1 && math.Abs(off) > oddBeyond*math.Sqrt(spread) {
			out = append(out, i)
		}
	}
	return out, nil
}

// check returns the fault of a piece that cannot be.
func (p TestPiece) check(i int) error {
	sound := p.Before > 0 && p.After > 0 && p.Buried >= 0 && !math.IsInf(p.Before+p.Buried, 0)
	switch {
	case !sound:
		return trialFault(i, design.TrialLengths)
	case p.lost() < 0:
		return trialFault(i, design.TrialLonger)
	case p.Buried == 0 && !p.Crossing:
		return trialFault(i, design.TrialEmpty)
	case p.Buried > 0 && !p.Crossing && p.lost() >= p.Buried:
		return trialFault(i, design.TrialLost)
	}
	return nil
}

// variance returns v of a piece for a scatter from splice to splice, mm².
func (s Stated) variance(p TestPiece, scatter float64) float64 {
	return 2*s.Reading*s.Reading + scatter*scatter*p.Buried*p.Buried + tiny
}

// tiny keeps a piece that is said to have no error at all from counting for ever,
// mm²: a thousandth of a mm.
const tiny = 1e-6

func (e *Estimate) predicted(p TestPiece) float64 {
	return float64(e.Kappa.Value*p.Buried) + float64(e.Loss.Value*p.crossings())
}

// leftOver reads the pieces for a scatter and returns by how much they and the
// stated scatter leave more than they do on average.
func (e *Estimate) leftOver(pieces []TestPiece, s Stated, scatter float64) float64 {
	fitted := e.read(pieces, s, scatter)
	sum, free, crossed := 0.0, -1.0, false
	for _, p := range pieces {
		if p.Buried == 0 {
			crossed = true // a crossing alone says nothing of κ's scatter
			continue
		}
		free++
		off := p.lost() - e.predicted(p)
		sum += off * off / s.variance(p, scatter)
	}
	if fitted && !crossed {
		free-- // both were taken from the buries
	}
	part := s.Scatter / scatter
	return sum + float64(statedPieces*part*part) - max(free, 0) - statedPieces
}

// read finds κ and k for a given scatter and reports whether the pieces gave both.
func (e *Estimate) read(pieces []TestPiece, s Stated, scatter float64) bool {
	var n normal
	for _, p := range pieces {
		n.add(p, 1/s.variance(p, scatter))
	}
	doubt := max(s.Loss, leastDoubt)
	e.Kappa, e.Loss, e.Together = Measured{s.Kappa, s.Scatter}, Measured{s.Loss, doubt}, false
	e.LossAlone, e.Balance = doubt, 0
	if n.bb == 0 {
		if n.cc > 0 {
			e.Loss = Measured{n.cy / n.cc, 1 / math.Sqrt(n.cc)}
			e.LossAlone = e.Loss.Error
		}
		return false
	}
	held := n.held(s.Loss, doubt)
	if kappa, loss, ok := n.both(); ok && kappa.Error <= held.Error {
		e.Kappa, e.Loss = kappa, loss
		// k = (Σcy − κ Σbc)/Σcc by the second equation.
		e.LossAlone, e.Balance = 1/math.Sqrt(n.cc), n.bc/n.cc
		return true
	}
	e.Kappa, e.Together = held, n.bc > 0
	return false
}

// whole fills in what a whole eye loses over the mean bury of those tried.
func (e *Estimate) whole(pieces []TestPiece, s Stated) {
	n, lost, weight := 0.0, 0.0, 0.0
	for _, p := range pieces {
		if p.Buried > 0 && p.Crossing {
			n++
			e.WholeBuried += p.Buried
			lost += p.lost()
			weight += s.variance(p, e.Scatter)
		}
	}
	if n > 0 {
		e.WholeBuried /= n
		e.Whole = Measured{lost / n, math.Sqrt(weight) / n}
	}
}

// normal holds the sums of the normal equations: b buried, c crossings, y lost.
type normal struct{ bb, bc, cc, by, cy float64 }

func (n *normal) add(p TestPiece, weight float64) {
	b, c, y := p.Buried, p.crossings(), p.lost()
	n.bb += float64(weight * b * b)
	n.bc += float64(weight * b * c)
	n.cc += float64(weight * c * c)
	n.by += float64(weight * b * y)
	n.cy += float64(weight * c * y)
}

// both returns κ and k where the pieces give two equations. Nearly like ones have
// errors that say so.
func (n *normal) both() (kappa, loss Measured, ok bool) {
	det := float64(n.bb*n.cc) - float64(n.bc*n.bc)
	if !(det > 1e-9*n.bb*n.cc) {
		return kappa, loss, false
	}
	kappa = Measured{(float64(n.cc*n.by) - float64(n.bc*n.cy)) / det, math.Sqrt(n.cc / det)}
	loss = Measured{(float64(n.bb*n.cy) - float64(n.bc*n.by)) / det, math.Sqrt(n.bb / det)}
	return kappa, loss, true
}

// held returns κ where k is held at a value that may be off by doubt.
func (n *normal) held(loss, doubt float64) Measured {
	per := n.bc / n.bb // κ falls by it for every mm of k
	return Measured{(n.by - float64(n.bc*loss)) / n.bb, math.Hypot(1/math.Sqrt(n.bb), per*doubt)}
}

// Further is a set of test pieces to make beside those that there are.
type Further struct {
	Count  int     `json:"count"`
	Buried float64 `json:"buried"` // in each, mm
}

// mostFurther is how many pieces are asked for at most in one go: own choice.
const mostFurther = 5

// Apart returns what to make so that bury and crossing can be told apart: whole eyes
// with half the bury of those that there are. Count is zero where they can be told
// apart already. At most [mostFurther] are asked for.
func (e Estimate) Apart(pieces []TestPiece, s Stated) Further {
	if !e.Together {
		return Further{}
	}
	f := Further{Buried: math.Max(math.Round(e.WholeBuried/2), 1)}
	more := append([]TestPiece(nil), pieces...)
	for f.Count < 2 || (f.Count < mostFurther && e.Together) {
		lost := math.Max(float64(e.Kappa.Value*f.Buried)+e.Loss.Value, 0)
		more = append(more, TestPiece{Before: lost + f.Buried, After: f.Buried, Buried: f.Buried, Crossing: true})
		e.read(more, s, e.Scatter)
		f.Count++
	}
	return f
}
