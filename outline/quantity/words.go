package quantity

import (
	"fmt"
	"strings"
)

// Words say in one language what is wrong with a quantity.
type Words struct {
	Rules      map[Rule]Message
	Dimensions map[Dimension]string // with an article
	WriteIn    string               // one of a dimension, in some units
	WriteLike  string               // one of a dimension, such as
	WriteRatio string               // a ratio
	OrIn       string               // after one unit, others
	Or         string               // between them
	Both       string               // what was found, and what would do
}

// Message says what was found, filled with the text in quotes, the longest text and the
// data of the rule, and what would do while nobody has asked for a dimension.
type Message struct{ Found, Hint string }

// English returns the words in English.
func English() Words {
	const number, unit = "write a number and a unit", "write one number and one unit"
	return Words{
		Rules: map[Rule]Message{
			TooLong:         {"%[1]s is too long", number + ", at most %[2]d characters"},
			NotText:         {"%[1]s is not valid text", number},
			NotFinite:       {"%[1]s is not a finite number", number},
			Empty:           {"%[1]s is empty", number},
			NumberMissing:   {"%[1]s does not begin with a number", number},
			GoesOn:          {"%[1]s goes on with %[3]s after its unit", unit},
			UnitMissingLast: {"%[1]s ends in a number without unit", "write %[3]s"},
			PartOfFirst:     {"%[1]s has a part of one %[3]s before the %[4]s", "write a whole number of %[3]s or one unit only"},
			SeveralNumbers: {"%[1]s has several numbers",
				unit + `; only feet and inches ("5 ft 8 in") or pounds and ounces go together`},
			NotCarried:       {"%[1]s has more %[4]s than one %[3]s holds", "carry them over to the %[3]s"},
			Comma:            {"%[1]s has a comma in its number", "write a decimal point, and nothing between thousands"},
			NumberBroken:     {"%[1]s has a number that cannot be read", "write it with one decimal point"},
			FractionTooLarge: {"%[1]s has a fraction of 1 or more after a whole number", "carry the whole part over"},
			FractionBroken: {"%[1]s has a fraction that cannot be read",
				`write whole numbers with a denominator above 0, such as "7 1/2 in"`},
			TabBeforeUnit:  {"%[1]s has a tab or a line end before its unit", "write one blank there"},
			Exponent:       {"%[1]s has an exponent", "write the number out"},
			UnitUnknown:    {"%[1]s has the unknown unit %[3]s", number},
			UnitMisspelt:   {"%[1]s has the unknown unit %[3]s", "write %[4]s"},
			UnitMissing:    {"%[1]s has no unit", "write %[3]s"},
			OtherDimension: {"%[1]s is %[3]s", number},
		},
		Dimensions: map[Dimension]string{
			Ratio: "a ratio", Length: "a length", Mass: "a mass", Force: "a force", Angle: "an angle", ArealDensity: "a mass per area",
			LinearDensity: "a mass per length", LineForce: "a force per width", Stress: "a stress", Density: "a density", Speed: "a speed",
			Volume: "a volume",
		},
		WriteIn:    "write %s in %s",
		WriteLike:  "write %s, such as %q",
		WriteRatio: `write %s, such as 0.15 or "15 %%"`,
		OrIn:       "%s (or %s)",
		Or:         ", ",
		Both:       "%s; %s",
	}
}

// Text returns what is wrong and what would do on one line.
func (w Words) Text(e *Error) string { return fmt.Sprintf(w.Both, w.Found(e), w.Hint(e)) }

// Found returns what is wrong with a text.
func (w Words) Found(e *Error) string {
	if e.Rule == OtherDimension {
		return fmt.Sprintf(w.Rules[e.Rule].Found, Quoted(e.Text), MaxLength, w.Dimensions[e.Have])
	}
	return w.filled(w.Rules[e.Rule].Found, e)
}

// Hint returns what would do instead.
func (w Words) Hint(e *Error) string {
	hint := w.Rules[e.Rule].Hint
	switch {
	case e.Rule == UnitMissing:
		return w.others(w.filled(hint, e), e.Want)
	case !e.Rule.shapeless() || !e.Known:
		return w.filled(hint, e)
	case len(e.Data) > 0 && e.Rule == OtherDimension:
		return fmt.Sprintf(w.WriteLike, w.Dimensions[e.Want], e.Data[0])
	case e.Want == Ratio:
		return fmt.Sprintf(w.WriteRatio, w.Dimensions[e.Want])
	}
	return fmt.Sprintf(w.WriteIn, w.Dimensions[e.Want], strings.Join(symbols(e.Want.Units()), w.Or))
}

// filled fills the text, its greatest length and the data of its rule into a message.
func (w Words) filled(message string, e *Error) string {
	if !strings.Contains(message, "%") {
		return message
	}
	fill := []any{Quoted(e.Text), MaxLength}
	for _, d := range e.Data {
		fill = append(fill, d)
	}
	return fmt.Sprintf(message, fill...)
}

// others adds the other units of a dimension to a hint.
func (w Words) others(hint string, d Dimension) string {
	units := d.Units()
	if len(units) < 2 {
		return hint
	}
	return fmt.Sprintf(w.OrIn, hint, strings.Join(symbols(units[1:]), w.Or))
}

func symbols(units []Unit) []string {
	var names []string
	for _, u := range units {
		names = append(names, u.Symbol)
	}
	return names
}
