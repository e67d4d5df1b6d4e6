package design

// Lining is a second layer of the bed, sewn into the same seams, that holds a pad between
// itself and the body. It carries nothing: the body alone does.
type Lining struct {
	On        bool
	Place     LiningPlace
	Thickness float64 // of the pad under load, mm
	Width     float64 // of the pad, mm; 0: as wide as the body is round, and more
	Length    float64 // of the pad, mm; 0: somewhat less than the bay
	Shift     float64 // of the pad's middle from the middle of the bay towards the foot, mm
	Play      float64 // room between the layers beyond the pad's thickness, mm
	Opening   LiningOpening
	Own       Own
}

// LiningPlace is on which face of the body a lining lies.
type LiningPlace int

// The places.
const (
	BelowBody LiningPlace = iota // the sleeper lies on the body, the pad under it
	AboveBody                    // the sleeper lies on the lining, which lies on the pad
)

// String returns the place's name, as designs and documents have it.
func (p LiningPlace) String() string { return [...]string{"below", "above"}[p] }

// LiningOpening is the edge of a lining that is hemmed for the pad to go in, rather than
// sewn to the body.
type LiningOpening int

// The openings.
const (
	HeadOpening LiningOpening = iota
	FootOpening
	LeftOpening
	RightOpening
)

// String returns the opening's name, as designs and documents have it.
func (o LiningOpening) String() string { return [...]string{"head", "foot", "left", "right"}[o] }

// AtEnd reports whether the opening lies at an end of the bed rather than at a side.
func (o LiningOpening) AtEnd() bool { return o == HeadOpening || o == FootOpening }

// Out returns how far the lining lies outside the body where the pad is, mm: negative
// inside of it. Room beyond the pad's thickness makes the lining longer on either face.
func (l Lining) Out() float64 {
	if l.Place == AboveBody {
		return l.Play - l.Thickness
	}
	return l.Thickness + l.Play
}

// Raises returns how far above the body a sleeper lies, mm.
func (l Lining) Raises() float64 {
	if l.On && l.Place == AboveBody {
		return l.Thickness
	}
	return 0
}

// Long returns how long the pad is in a bay of a length, mm.
func (l Lining) Long(span float64) float64 {
	if l.Length > 0 {
		return l.Length
	}
	return span - 2*padShort
}

// padShort is by how much a pad that is left to the program ends short of each bar, mm: so
// that its lining need not draw in over the tail alone. Own choice.
const padShort = 100.0

func liningRows() []row {
	of := func(d *Design) *Lining { return &d.Lining }
	return append([]row{
		named(KeyLiningPlace, func(d *Design) *LiningPlace { return &of(d).Place }, []LiningPlace{BelowBody, AboveBody}).
			says("below: the sleeper lies on the body, the pad between it and the lining underneath; above: on the lining, which lies on the "+
				"pad. The body carries either way.", "below", "below").or("below").known("side", "face", "layer"),
		length(KeyLiningPadThickness, 3, 150, func(d *Design) *float64 { return &of(d).Thickness }).
			says("Thickness of the pad with the sleeper on it.", "40 mm", "1 1/2 in").or("25 mm").orIn("1 in").
			known("thickness", "pad", "pad_height"),
		length(KeyLiningPadWidth, 150, 2000, func(d *Design) *float64 { return &of(d).Width }).
			says("Width of the pad; left out, it fills the bed as far as it is round.", "560 mm", "22 in").known("width"),
		length(KeyLiningPadLength, 200, 3000, func(d *Design) *float64 { return &of(d).Length }).
			says("Length of the pad; left out, 200 mm less than the bay.", "1300 mm", "51 in").known("length"),
		length(KeyLiningPadShift, -1000, 1000, func(d *Design) *float64 { return &of(d).Shift }).
			says("How far the pad's middle lies from the middle of the bay towards the foot; negative: towards the head.", "-50 mm",
				"-2 in").or("0 mm").known("offset", "pad_position"),
		length(KeyLiningPlay, 0, 50, func(d *Design) *float64 { return &of(d).Play }).
			says("Room between the layers beyond the pad's thickness. It makes the lining longer across than the pad asks for, so that the "+
				"body alone carries; own choice.", "4 mm", "1/8 in").or("5 mm").orIn("3/16 in").known("ease", "slack", "room"),
		named(KeyLiningOpening, func(d *Design) *LiningOpening { return &of(d).Opening },
			[]LiningOpening{HeadOpening, FootOpening, LeftOpening, RightOpening}).
			says("Edge that is hemmed rather than sewn in, for the pad to go in: at an end between its quarters, at a side between the notches "+
				"beside its middle. With gathered ends left is taken where this is left out.", "head", "head").or("head").known("entry", "open"),
	}, ownRows(KeyLiningCloth, func(d *Design) *Own { return &of(d).Own })...)
}

// derivedOpening puts the opening at a side where the ends are drawn together.
func (r *reader) derivedOpening() {
	if l := &r.design.Lining; l.On && r.design.Cap.Kind == Gathered && !r.seen(KeyLiningOpening) {
		l.Opening = LeftOpening
	}
}

// Own choices of where a pad may lie, mm.
const (
	// padPastMiddle is how far a pad reaches past the middle of the bay at either end.
	padPastMiddle = 50.0
	// leastRound is the least radius of a lining's round part over a pad.
	leastRound = 20.0
)

// checkLining wants a pad that lies under the middle of the bay, a lining that stays round
// and an opening that can be sewn.
func (r *reader) checkLining() {
	l, b := r.design.Lining, r.design.Bed
	if !l.On {
		return
	}
	if r.good(KeyLiningPadLength, KeyLiningPadShift, KeyBedSpan) {
		switch most := l.Long(b.Span)/2 - padPastMiddle; {
		case l.Shift > max(most, 0):
			r.bounded(KeyLiningPadShift, Found(PadPastMiddle), r.atMost(KeyLiningPadShift, max(most, 0)))
		case l.Shift < -max(most, 0):
			r.bounded(KeyLiningPadShift, Found(PadPastMiddle), r.atLeast(KeyLiningPadShift, -max(most, 0)))
		}
	}
	r.checkAbove()
	r.checkOpening()
}

// checkAbove wants a lining over the body to stay round where the pad makes it narrower.
func (r *reader) checkAbove() {
	l, b := r.design.Lining, r.design.Bed
	if l.Place != AboveBody || !r.good(KeyLiningPlace, KeyLiningPadThickness, KeyLiningPlay, KeyBedHeadRadius, KeyBedSeatRadius, KeyBedFootRadius) {
		return
	}
	if most := min(b.HeadRadius, b.SeatRadius, b.FootRadius) - leastRound + l.Play; l.Thickness > most {
		r.bounded(KeyLiningPadThickness, Found(PadOverRound), r.atMost(KeyLiningPadThickness, most))
	}
}

// checkOpening wants an opening where a hem can be sewn and nothing else runs along it.
func (r *reader) checkOpening() {
	if !r.good(KeyLiningOpening, KeyCapKind, KeyChannelKind) {
		return
	}
	gathered, facing := r.design.Cap.Kind == Gathered, r.design.Channel.Kind == Facing
	switch end := r.design.Lining.Opening.AtEnd(); {
	case gathered && facing:
		r.conflict(KeyCapKind, Found(OpeningNowhere), Say(LeaveOrOtherKind))
	case end && gathered:
		r.conflict(KeyLiningOpening, Found(OpeningInGathers), Say(WriteThis, `opening = "left"`))
	case !end && facing:
		r.conflict(KeyLiningOpening, Found(OpeningInFacing), Say(WriteThis, `opening = "head"`))
	}
	allowance, key := r.design.Seam.End, KeySeamEndAllowance
	if !r.design.Lining.Opening.AtEnd() {
		allowance, key = r.design.Seam.Side, KeySeamSideAllowance
	}
	if r.good(key) && allowance < leastOpeningHem {
		r.bounded(key, Found(HemOfOpening), r.atLeast(key, leastOpeningHem))
	}
}

// leastOpeningHem is the least allowance that a hem at the opening is folded from, in two
// halves, mm: own choice.
const leastOpeningHem = 8.0
