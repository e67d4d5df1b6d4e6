package figures

// HungWords says what belongs to a bed that was measured as it hung.
type HungWords struct {
	Title string
	Do    string // an adjustment, how level its tips then are
}

func englishHung() HungWords {
	return HungWords{
		Title: "Put right: what levels the bed that hangs",
		Do:    "%s; its tips are then level to ± %s",
	}
}

// GuestWords says what belongs to other sleepers.
type GuestWords struct {
	Title string
	Unmet string // guest, check, its margin, required, where they are not met
}

func englishGuests() GuestWords {
	return GuestWords{
		Title: "Other sleepers in the bed as it is made",
		Unmet: "%s: NOT MET: %s carries %s times the load (%s needed)",
	}
}
