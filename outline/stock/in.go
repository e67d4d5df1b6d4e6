package stock

import "slingloft/outline/quantity"

// In returns the list with lengths and the prices of a length in the units of the
// style; the masses stay in grams.
func (b Bill) In(s quantity.Style) Bill {
	rows := make([]Row, len(b.Rows))
	for i, r := range b.Rows {
		if r.Unit == Metre {
			r.Quantity, r.Price = s.Run(r.Quantity), s.PerRun(r.Price)
			if s.Inches {
				r.Unit = Yard
			}
		}
		rows[i] = r
	}
	b.Rows = rows
	return b
}
