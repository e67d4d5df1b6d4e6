package work

import "slingloft/outline/accuracy"

// Corrected returns what to set on the bed, from the heights that the design gives.
// They are read for the bed as it is made. It is asked for where the design gives any.
func (p *Plan) Corrected() accuracy.Corrected {
	c := accuracy.Corrected{Survey: accuracy.SurveyOf(p.Design)}
	bed, err := accuracy.BedOf(p.Made(), p.Design, p.Cords, accuracy.Burden(p.Design, p.lying()))
	if err == nil {
		c.Advice, err = bed.Advise(c.Survey)
	}
	if err != nil {
		c.Unread, c.Notes = true, []accuracy.Note{accuracy.WhyNot(err)}
		return c
	}
	c.Notes = c.Advice.Notes(c.Survey, p.Cords)
	return c
}
