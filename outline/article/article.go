// Package article says what is sewn: the bed, and what goes with it.
package article

// Article is one thing that pieces are sewn into.
type Article int

// The articles.
const (
	Bed    Article = iota
	Sack           // stow sacks, for the bed and for its bars
	Tarp           // the sheet over the bed
	Lining         // a second layer of the bed, for a pad
	Cover          // the insect net over it
	count
)

// All lists the articles, the bed first.
func All() []Article {
	out := make([]Article, count)
	for i := range out {
		out[i] = Article(i)
	}
	return out
}

// String returns the article's identifier, as ids of pieces begin and documents have it.
func (a Article) String() string { return [count]string{"bed", "sack", "tarp", "lining", "cover"}[a] }
