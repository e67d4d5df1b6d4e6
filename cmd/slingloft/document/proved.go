package document

// ProveVersion is the version of [Proof].
const ProveVersion = 1

// Proof is what prove found.
type Proof struct {
	Head
	Agrees bool     `json:"agrees" doc:"every file that is due is there and agrees, and no other"`
	Scale  float64  `json:"scale" doc:"length in the files over true length; of the last run, where there are files of several"`
	Files  []Proved `json:"files"`
}

// Proved is what was found of one file.
type Proved struct {
	Name    string    `json:"name" doc:"within its folder"`
	Format  string    `json:"format"`
	Sheet   string    `json:"sheet" doc:"its name without the ending, the same in every format"`
	Verdict string    `json:"verdict" doc:"agrees; differs; missing; not due: there but of another run or design; unreadable"`
	Agrees  bool      `json:"agrees"`
	Changed bool      `json:"changed" doc:"its bytes are not those that were written, as far as the folder's record knows"`
	Faults  []string  `json:"faults" doc:"what does not agree, the gravest first"`
	Lines   int       `json:"lines" doc:"lines of work that were compared; 0 for a picture"`
	Worst   float64   `json:"worst" doc:"greatest deviation of a point among them, mm"`
	Where   string    `json:"where" doc:"the line that holds it"`
	Limit   float64   `json:"limit" doc:"how far a point may lie from its place, mm"`
	Found   *Measures `json:"found,omitempty" doc:"absent where the file was not read"`
	Due     *Measures `json:"due,omitempty"`
}

// Measures are what a file measures as a whole.
type Measures struct {
	Size  [2]float64 `json:"size" doc:"of the sheet along x and y, mm"`
	Lines int        `json:"lines" doc:"lines of work that it holds; 0 for a picture"`
	Bars  []Bar      `json:"bars" doc:"check bars, where they can be told from other lines"`
}

// Bar is a check bar.
type Bar struct {
	Name   string  `json:"name"`
	Length float64 `json:"length" doc:"in the file, mm"`
}
