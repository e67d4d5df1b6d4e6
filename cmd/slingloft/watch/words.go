package watch

// Words is what the server says to a page and to who starts it, in one language.
type Words struct {
	OtherAddress string // why the page is not served at its address
	File         string // a file, what is wrong with it
	Refused      map[Refusal]string
}

// Refusal is why something that a page asks for is not done.
type Refusal int

// The refusals.
const (
	AddressOnly Refusal = iota // another name than the page's address
	PageOnly                   // asked from elsewhere
	NoToken                    // not opened by the printed address
	TooMuch                    // larger than a request may be
	TooManyDropped
	NoQuestion // nothing that can be asked
	Locked     // shows and does not save
	NoPlainFile
	NoName
	NoSuchFiles
	LiesOutside
	NotWhole
	NoOutline
	NoSettings
	NoDesign
	NoComparison
)

// Error says it in English.
func (r Refusal) Error() string { return English().Refused[r] }

// English returns the words in English.
func English() Words {
	return Words{
		OtherAddress: "%w; another address can be named with --addr, and 127.0.0.1:0 takes any free port",
		File:         "%s: %w",
		Refused: map[Refusal]string{
			AddressOnly: "this page is served under its address only", PageOnly: "only the page itself may ask this",
			NoToken: "open the address that the program printed", TooMuch: "this is more than a page may send at once",
			TooManyDropped: "these files are more than 64 MiB", NoQuestion: "there is no such question",
			Locked:      "this page shows and does not save: it is served to other machines",
			NoPlainFile: "is no plain file", NoName: "a name needs a letter or a digit", NoSuchFiles: "there are no such files",
			LiesOutside: "lies outside of the design's folder; bring it in, or make these files by the command",
			NotWhole:    "the files did not come through whole",
			NoOutline:   "an outline is an SVG or DXF file", NoSettings: "settings and shelves are TOML files",
			NoComparison: "this cannot be compared", NoDesign: "there is no design among these files: a design is a TOML file",
		},
	}
}
