package quantity

import "errors"

// Error says what is wrong with a quantity's text and what would do. It is data, since
// a language is chosen only where it is written: see [Words].
type Error struct {
	Rule Rule
	Text string   // as it stands
	Data []string // units and parts of the text that belong to the rule
	// Want is the dimension asked for, where Known; a text that is no quantity at all
	// may be met before anybody asked for one.
	Want  Dimension
	Known bool
	Have  Dimension // of the text, for [OtherDimension]
}

// Error returns both parts on one line, in English.
func (e *Error) Error() string { return English().Text(e) }

// Rule is what a text breaks that is to be a quantity.
type Rule int

// The rules, with what belongs to them as data.
const (
	TooLong          Rule = iota
	NotText               // not UTF-8
	NotFinite             // an infinity, or no number
	Empty                 //
	NumberMissing         // where it begins
	GoesOn                // after its unit: with what
	UnitMissingLast       // after its last number: what it is likely meant as
	PartOfFirst           // a fraction of the first of two units: both units
	SeveralNumbers        // that do not go together
	NotCarried            // more of the second unit than the first holds: both units
	Comma                 // in its number
	NumberBroken          // in its number
	FractionTooLarge      // after a whole number
	FractionBroken        //
	TabBeforeUnit         // or a line end
	Exponent              //
	UnitUnknown           // which
	UnitMisspelt          // which, and what the text is likely meant as
	UnitMissing           // what it is likely meant as
	OtherDimension        // what it is likely meant as, or nothing
	RuleCount             // how many there are
)

// shapeless reports whether a rule is broken by what is no quantity of the dimension
// asked for in any way, so that only the dimension itself says what to write.
func (r Rule) shapeless() bool {
	switch r {
	case NotText, NotFinite, Empty, NumberMissing, UnitUnknown, OtherDimension:
		return true
	}
	return false
}

// fault builds an Error about text.
func fault(text string, rule Rule, data ...string) *Error {
	return &Error{Rule: rule, Text: text, Data: data}
}

// wanted adds the dimension asked for.
func (e *Error) wanted(d Dimension) *Error {
	e.Want, e.Known = d, true
	return e
}

// asked returns the error of a text that was asked for a dimension.
func asked(err error, d Dimension) error {
	var e *Error
	if errors.As(err, &e) {
		return e.wanted(d)
	}
	return err
}
