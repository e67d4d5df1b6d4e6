package sheet

// Ticks are things to tick off when they are done.
type Ticks []Tick

// Tick is one of them.
type Tick struct {
	ID   string // safe as an id, unique on the sheet
	No   int
	Text string
	Note string // when it is done
}

// Steps are numbered steps of work.
type Steps []Step

// Step is one step: what to do, an action a sentence, the figures that it needs, what it
// looks like when it is done, and pictures of it.
type Step struct {
	ID      string // safe as an id, unique on the sheet
	No      int    // counts through all sections
	Title   string
	Do      []string
	Done    string
	Needs   []string // what lies at hand
	Facts   []Fact
	Figures Figures
}

// Fact is a named figure, ready to print.
type Fact struct {
	Name, Value string
	Check       bool // is measured, and catches a mistake at once
}

// Add adds a figure to a step.
func (s *Step) Add(name, value string) { s.Facts = append(s.Facts, Fact{Name: name, Value: value}) }

// Check adds a figure that is measured before one goes on.
func (s *Step) Check(name, value string) { s.Facts = append(s.Facts, Fact{name, value, true}) }

// Terms are words with what they mean.
type Terms []Term

// Term is one of them.
type Term struct{ Word, Meaning string }
