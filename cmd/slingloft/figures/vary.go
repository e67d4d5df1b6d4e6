package figures

import (
	"errors"
	"fmt"
	"math"

	"slingloft/cmd/slingloft/document"
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/hung"
	"slingloft/outline/quantity"
	"slingloft/outline/room"
	"slingloft/outline/words"
)

// VariedVersion is the version of [Varied].
const VariedVersion = 1

// Varied is what a design buys with several values of a key or two.
type Varied struct {
	Version  int       `json:"version"`
	Name     string    `json:"name" doc:"of the design"`
	Keys     []string  `json:"keys" doc:"that are varied"`
	Variants []Variant `json:"variants" doc:"those of the last key run fastest"`
}

// Variant is one of the designs.
type Variant struct {
	Values []string `json:"values" doc:"by key, as the design would have them"`
	Now    bool     `json:"now" doc:"the design has them as it stands"`
	Cannot string   `json:"cannot,omitempty" doc:"why there is no such bed; its figures are then absent"`
	Buys   *Buys    `json:"buys,omitempty"`
}

// Buys is what a variant is like: of the bed as it is made, under its sleeper.
type Buys struct {
	Shoulders float64 `json:"shoulders" doc:"opening between the cords at the shoulders beyond their breadth, as the sleeper lies, mm"`
	Arms      float64 `json:"arms" doc:"likewise at the elbows on the back, at the knees drawn up on the side, mm"`
	Squeeze   float64 `json:"squeeze" doc:"largest push on a part of the body from one side, N"`
	Sag       float64 `json:"sag" doc:"bottom line at mid-bay below the straight line between the bars, lying, mm"`
	Along     float64 `json:"along" doc:"bottom line at the head bar above that at the foot bar, lying, mm"`
	Turn      float64 `json:"turn" doc:"of the bed with the sleeper 100 mm aside, rad; pi where it turns over"`
	Hang      Pair    `json:"hang" doc:"of the hang lines above the level, head and foot, lying, rad"`
	Line      float64 `json:"line" doc:"largest pull in a hang line of all states, N"`
	Side      float64 `json:"side" doc:"largest pull in a side cord of all states, N"`
	Bar       float64 `json:"bar" doc:"largest thrust along a bar of all states, N"`
	Check     string  `json:"check" doc:"that is nearest to what it requires; empty where no capacity is known"`
	Margin    float64 `json:"margin" doc:"its capacity over its load"`
	Required  float64 `json:"required" doc:"least margin of it"`
	Length    float64 `json:"length" doc:"from apex to apex, mm"`
	Mass      float64 `json:"mass" doc:"of what is known, g"`
	Cloth     float64 `json:"cloth" doc:"area of the pieces of cloth, mm²"`
}

// VariedSchema returns the JSON Schema of a [Varied].
func VariedSchema() map[string]any {
	return document.Schema[Varied]("slingloft figure --vary", VariedVersion, "Lengths mm, forces N, angles rad.")
}

// VariedOf returns what is told of a design's variants.
func VariedOf(name string, axes []work.Axis, all []work.Variant, w words.Names) Varied {
	out := Varied{Version: VariedVersion, Name: name}
	for _, a := range axes {
		out.Keys = append(out.Keys, string(a.Key))
	}
	for _, v := range all {
		one := Variant{Values: v.Values, Now: v.Now}
		if v.Err != nil {
			one.Cannot = whyNot(v.Err, w)
		} else {
			one.Buys = buysOf(v, w.Margins)
		}
		out.Variants = append(out.Variants, one)
	}
	return out
}

// whyNot says what is wrong with a variant: the first fault, the others follow from the
// same value.
func whyNot(err error, w words.Names) string {
	var faults design.Faults
	if errors.As(err, &faults) && len(faults) > 0 {
		return fmt.Sprintf("%s: %s", faults[0].Key, w.Faults.Found(faults[0].Found))
	}
	return w.Why(err)
}

func buysOf(v work.Variant, w words.Margins) *Buys {
	b, arms := v.Buys, room.Elbows
	if v.Lies == design.OnSide {
		arms = room.Knees
	}
	out := &Buys{Shoulders: roomTrait(b.Room, v.Lies, room.Shoulders), Arms: roomTrait(b.Room, v.Lies, arms),
		Squeeze: mostSqueezed(b.Room, v.Lies),
		Sag:     b.Level.Sag, Along: b.Level.Along, Turn: b.Turn, Hang: b.Hang, Line: b.Line, Side: b.Side, Bar: b.Bar,
		Length: b.Length, Mass: b.Mass, Cloth: b.Cloth}
	if b.Least.Capacity > 0 {
		out.Check, out.Margin, out.Required = w.CheckName(b.Least), b.Least.Ratio, b.Least.Required
	}
	return out
}

// Trait is one of the figures that variants are compared by.
type Trait int

// The traits, in the order of the columns.
const (
	ShoulderTrait Trait = iota
	ArmTrait
	SqueezeTrait
	SagTrait
	AlongTrait
	TurnTrait
	HeadHangTrait
	FootHangTrait
	LineTrait
	SideTrait
	BarTrait
	MarginTrait
	LengthTrait
	MassTrait
	ClothTrait
	TraitCount // how many there are
)

// kind is what a trait is a measure of.
func (m Trait) kind() dimension {
	return [TraitCount]dimension{
		ShoulderTrait: aLength, ArmTrait: aLength, SqueezeTrait: aForce,
		SagTrait: aLength, AlongTrait: aLength, TurnTrait: anAngle, HeadHangTrait: anAngle, FootHangTrait: anAngle,
		LineTrait: aForce, SideTrait: aForce, BarTrait: aForce, MarginTrait: aRatio, LengthTrait: aLength,
		MassTrait: aMass, ClothTrait: anArea,
	}[m]
}

// of returns the trait of a bed, in mm, N, rad, g or mm²; of the margin its part of what
// is required, 0 where none is known.
func (m Trait) of(b *Buys) float64 {
	if m == MarginTrait && b.Required == 0 {
		return 0
	}
	return [TraitCount]float64{
		ShoulderTrait: b.Shoulders,
		ArmTrait:      b.Arms,
		SqueezeTrait:  b.Squeeze,
		SagTrait:      b.Sag,
		AlongTrait:    b.Along,
		TurnTrait:     b.Turn,
		HeadHangTrait: b.Hang[hung.Head],
		FootHangTrait: b.Hang[hung.Foot],
		LineTrait:     b.Line,
		SideTrait:     b.Side,
		BarTrait:      b.Bar,
		MarginTrait:   b.Margin / b.Required,
		LengthTrait:   b.Length,
		MassTrait:     b.Mass,
		ClothTrait:    b.Cloth,
	}[m]
}

// dimension is what a figure is a figure of.
type dimension int

const (
	aLength dimension = iota
	anAngle
	aForce
	aRatio
	aMass
	anArea
)

// unit returns the unit of a figure in a style, "" for a ratio.
func (d dimension) unit(s quantity.Style) string {
	return [...]string{aLength: s.LengthUnit(), anAngle: "°", aForce: s.ForceUnit(), aRatio: "", aMass: s.WeightUnit(),
		anArea: s.AreaUnit()}[d]
}

// number returns a figure as a number in that unit.
func (d dimension) number(v float64, s quantity.Style) float64 {
	switch d {
	case aLength:
		return s.Number(v)
	case anAngle:
		return v * 180 / math.Pi
	case aForce:
		return s.Pull(v)
	case aMass:
		return s.Grams(v)
	case anArea:
		return s.Area(v)
	}
	return v
}

// text returns a figure as people read it, without its unit.
func (d dimension) text(v float64, s quantity.Style) string {
	decimals := [...]int{anAngle: 1, aForce: 0, aRatio: 2, aMass: 0, anArea: 2}
	if d == aLength {
		return s.Figure(v)
	}
	if d == aMass {
		return s.Weight(v)
	}
	return quantity.Decimal(d.number(v, s), decimals[d])
}
