package work

import (
	"math"

	"slingloft/outline/accuracy"
	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/piece"
	"slingloft/outline/rig"
	"slingloft/outline/stock"
)

// Bill lists what to buy for a laid plan, with masses and costs; of beds that are laid
// together, for all of them. Of a plan that is not laid it has no lengths of cloth to buy.
func (p *Plan) Bill(l Lays) (stock.Bill, error) {
	in := stock.Input{Sheets: l.Boards.Beds, Sheet: p.Design.Sheet}
	for roll, c := range p.Rolls() {
		r := stock.Roll{Cloth: c}
		if roll < len(l.Rolls) {
			r.Lay = l.Rolls[roll].Length
		}
		for _, q := range p.OnRoll(roll) {
			r.Pieces = append(r.Pieces, stock.Piece{Article: q.Article, Count: q.Count, Area: q.Cut.Area()})
		}
		in.Rolls = append(in.Rolls, r)
	}
	beds := p.beds
	if len(beds) == 0 {
		beds = []*Plan{p}
	}
	for _, bed := range beds {
		in.Hammocks = append(in.Hammocks, bed.hammock())
	}
	b, err := stock.Of(in)
	if err != nil {
		return b, p.located(err)
	}
	return b, nil
}

// hammock returns what one hammock takes beside its cloth.
func (p *Plan) hammock() stock.Hammock {
	out := stock.Hammock{
		Design: p.Design,
		Cords:  p.Cords.Cords,
		Trials: p.Cords.Trials(p.Design.Output.Inches),
		Mouths: p.Further.Sack.Mouths,
		Loops:  float64(p.Further.Tarp.Loops) * p.Design.Tarp.Loop,
		Cover:  p.coverStock(),
	}
	if p.Design.Tarp.On {
		out.Guys, out.Pegs = p.guys()
	}
	for _, s := range p.Sewn.Seams {
		rows := 1
		switch {
		case s.Kind.Side():
			rows = p.Design.Seam.Rows
		case s.Kind == piece.BodyJoin, s.Kind == piece.LiningJoin, s.Kind == piece.TarpRidge, s.Kind == piece.TarpJoin,
			s.Kind == piece.CoverRidge, s.Kind == piece.CoverLeft, s.Kind == piece.CoverRight, s.Kind == piece.CoverToChannel, s.Kind == piece.CoverToCap:
			rows = 2
		}
		out.Runs = append(out.Runs, stock.Run{Count: 1, Length: s.Hung[0], Rows: rows})
	}
	for _, q := range p.Sewn.Pieces {
		if q.Hem > 0 {
			out.Runs = append(out.Runs, stock.Run{Count: q.Count, Length: q.Hem})
		}
	}
	if z := p.Further.Cover.Zip; z.Long > 0 {
		out.Runs = append(out.Runs, stock.Run{Count: 2, Length: z.Long})
	}
	if p.Design.Cap.Kind == design.Gathered {
		for _, net := range p.Sewn.EndNets {
			out.Gathered = append(out.Gathered, net.HungLength())
		}
	}
	return out
}

// Accuracy returns how level the bed comes out with the maker's working errors.
func (p *Plan) Accuracy() (accuracy.Report, error) {
	return accuracy.Of(p.Made(), p.Design, p.Cords.Splicing, p.lying())
}

// lying returns the sleeper as a weight that lies in the bed.
func (p *Plan) lying() finished.Weight {
	w := finished.Weight{Load: p.Shape.Problem.Load}
	back, side := rig.CentreHeight(p.Design.Sleeper)
	w.Centre = back
	if p.Design.Sleeper.Lies == design.OnSide {
		w.Centre = side
	}
	w.Centre += p.Design.Lining.Raises()
	return w
}

// guys returns the lines of the tarp as they are cut, and how many pegs there are: from each
// corner to a peg as far out as the corner is high, and where no ridge line carries the
// tarp, from both ends of its ridge to tree or post and round it.
func (p *Plan) guys() (lines []float64, pegs int) {
	const tying, around = 600, 1500 // own choice, mm
	z, d := p.Further.Tarp.Size, p.Design
	pegs = max(p.Further.Tarp.Loops-2, 0)
	for range pegs {
		lines = append(lines, float64((z.EdgeUp+d.Hang.Bed)*math.Sqrt2)+tying)
	}
	if _, ridged := p.Cords.Find(cord.RidgeLine); !ridged {
		for range 2 {
			lines = append(lines, max(0, (p.Place.Distance-z.Ridge)/2)+around)
		}
	}
	return lines, pegs
}
