package design

import "slingloft/outline/bed"

// Which keys fix a bed's shape is asked here and nowhere else.

// HeadKey returns the key that sets the section at the head bar.
func (b Bed) HeadKey() Key {
	return [...]Key{Drop: KeyBedHeadDrop, Girth: KeyBedHeadGirth}[b.Head]
}

// ControlKey returns the key that sets the thrust.
func (b Bed) ControlKey() Key {
	return [...]Key{SideDepth: KeyBedSideDepth, HeadAngle: KeyBedHangAngle, FootAngle: KeyBedFootHangAngle, Thrust: KeyBedThrust}[b.Control]
}

// SecondKey returns the key that sets the height of the foot end. Equal wall angles,
// which hold where nothing is asked, hang on the foot bar.
func (b Bed) SecondKey() Key {
	return [...]Key{SameWall: KeyBedFootBar, FootDrop: KeyBedFootDrop, FootGirth: KeyBedFootGirth, LevelHooks: KeyBedLevelApexes,
		LevelAnchors: KeyBedLevelAnchors}[b.Second]
}

// LegKey returns the key of the legs at an end.
func LegKey(e bed.End) Key { return [...]Key{bed.Head: KeyBedHeadLeg, bed.Foot: KeyBedFootLeg}[e] }

// TailKey returns the key of the tail at an end.
func TailKey(e bed.End) Key { return [...]Key{bed.Head: KeyBedHeadTail, bed.Foot: KeyBedFootTail}[e] }

// Sense is the way in which a limit bounds a value.
type Sense int

// The senses of a limit.
const (
	NoLimit Sense = iota // there is none
	AtLeast              // the limit or more would do
	AtMost               // the limit or less would do
)

// WouldDo says that a limit would do, and what lies beyond it; written is the limit.
func (s Sense) WouldDo(written string) Phrase {
	return Say([...]PhraseKind{NoLimit: Nothing, AtLeast: LeastWouldDo, AtMost: MostWouldDo}[s], written)
}
