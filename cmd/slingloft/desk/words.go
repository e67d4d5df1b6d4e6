package desk

// Words is what the desk says beside the design's own messages, in one language.
type Words struct {
	Use     string // a button: a value
	UseFor  string // a button: a value, its key
	TakeOut string // a button: a key
	And     string // between the parts of a button
}

// English returns the words in English.
func English() Words {
	return Words{Use: "Use %s", UseFor: "Use %s for %s", TakeOut: "Take %s out", And: ", "}
}
