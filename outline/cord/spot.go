package cord

// Spot says what a place on a cord is: its kind and, where a cord has several of a
// kind, on which branch.
type Spot struct {
	Kind   SpotKind
	On     Branch
	Second bool // on the second run of a loop
}

// SpotKind is the kind of a place on a cord.
type SpotKind int

// The kinds of places.
const (
	Middle        SpotKind = iota // meets the middle notch of the bed
	Tip                           // where a bar's tip stands
	Entry                         // where a partner's tail goes in
	BuryEnd                       // how far a tail reaches inside
	Throat                        // of an eye
	Shoulder                      // how far a tail is drawn in
	Taper                         // from where strands are dropped
	Hook                          // the centre of what an eye or a loop hangs on
	Anchor                        // where a hitch is tied
	SetMark                       // shows where a sliding eye is at its shortest
	SpotKindCount                 // how many kinds there are
)

// Branch tells places of one kind apart.
type Branch int

// The branches.
const (
	Alone       Branch = iota // the cord has one
	AtHead                    // towards the head
	AtFoot                    // towards the foot
	AtStart                   // towards the start of a loop
	AtEnd                     // towards its end
	NearEye                   // of a line's eye at the apex
	FarEye                    // of its eye at the anchor
	InSide                    // of a leg, in the side cord
	OfEye                     // of a leg's eye
	BranchCount               // how many branches there are
)

// String returns the identifier of the kind.
func (k SpotKind) String() string {
	return [...]string{"middle", "tip", "entry", "bury end", "throat", "shoulder", "taper", "hook", "anchor", "set"}[k]
}

// String returns the identifier of the branch.
func (b Branch) String() string {
	return [...]string{"", "head", "foot", "start", "end", "near", "far", "side", "eye"}[b]
}

// String returns the place's identifier, as documents for other programs have it:
// "head tip, second run".
func (s Spot) String() string {
	out := s.Kind.String()
	if s.On != Alone {
		out = s.On.String() + " " + out
	}
	if s.Second {
		out += ", second run"
	}
	return out
}

// MarshalText writes the place's identifier.
func (s Spot) MarshalText() ([]byte, error) { return []byte(s.String()), nil }
