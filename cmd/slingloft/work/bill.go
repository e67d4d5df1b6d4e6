package work

import (
	"slingloft/outline/accuracy"
	"slingloft/outline/design"
	"slingloft/outline/finished"
	"slingloft/outline/piece"
	"slingloft/outline/rig"
	"slingloft/outline/stock"
)

// Bill lists what to buy for a laid plan, with masses and costs. Of a plan that is not laid
// it has no lengths of cloth to buy.
func (p *Plan) Bill(l Lays) (stock.Bill, error) {
	in := stock.Input{
		Design: p.Design,
		Cords:  p.Cords.Cords,
		Trials: p.Cords.Trials(p.Design.Output.Inches),
		Sheets: l.Boards.Beds,
		Mouths: p.Further.Sack.Mouths,
		Loops:  float64(p.Further.Tarp.Loops) * p.Design.Tarp.Loop,
	}
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
	for _, s := range p.Sewn.Seams {
		rows := 1
		switch {
		case s.Kind.Side():
			rows = p.Design.Seam.Rows
		case s.Kind == piece.BodyJoin, s.Kind == piece.LiningJoin, s.Kind == piece.TarpRidge, s.Kind == piece.TarpJoin:
			rows = 2
		}
		in.Runs = append(in.Runs, stock.Run{Count: 1, Length: s.Hung[0], Rows: rows})
	}
	for _, q := range p.Sewn.Pieces {
		if q.Hem > 0 {
			in.Runs = append(in.Runs, stock.Run{Count: q.Count, Length: q.Hem})
		}
	}
	if p.Design.Cap.Kind == design.Gathered {
		for _, net := range p.Sewn.EndNets {
			in.Gathered = append(in.Gathered, net.HungLength())
		}
	}
	b, err := stock.Of(in)
	if err != nil {
		return b, p.located(err)
	}
	return b, nil
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
	return w
}
