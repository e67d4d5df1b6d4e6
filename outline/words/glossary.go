package words

import (
	"fmt"
	"strings"
)

// Term is a word of the trade, or one of our own, with what it means.
type Term struct {
	Word    string
	Meaning string
}

// EnglishGlossary returns the words that files, figures and sheets use, in the order of
// the alphabet. Each names one thing, and each thing has one name.
func EnglishGlossary() []Term {
	return []Term{
		{"allowance", "cloth outside of the net line, which a seam or a hem takes up"},
		{"anchor", "where a hang line is hung: a hook or shackle on a tree, a post, a stand"},
		{"apex", "where the two legs of an end meet; a hang line pulls at its ring"},
		{"bar", "a spreader bar, which holds the cords apart: head bar and foot bar"},
		{"bar line", "where a bar comes to lie, drawn across the body"},
		{"bay", "the stretch of the body between the bars; its length is the span"},
		{"bed bottom", "the lowest line along the middle of the bed"},
		{"body", "the cloth that one lies on, in one panel or joined from several"},
		{"bury", "a length of cord drawn into the hollow of another, or of itself"},
		{"centre line", "the line along the middle of the body, from head to foot, along the grain"},
		{"chain", "the cords of one side spliced together: eye, leg, tip gap, side cord, tip gap, leg, eye"},
		{"channel", "the sewn tube along a side in which the cord runs; its depth is from the seam to the fold"},
		{"channel strip", "the straight strip of cloth that makes a channel"},
		{"clear width", "the width of a channel inside its innermost row of stitching"},
		{"contraction", "the length that a cord loses for each length that is buried in it"},
		{"corner of the tail", "where a tail's end meets its side: the mouth of the channel, out of which the leg comes"},
		{"cover", "an insect net over the bed, from the cords up to a ridge"},
		{"crossing", "where two cords, or a cord and itself, pass through each other and lock"},
		{"cut line", "where the cloth is cut: the net line with its allowance"},
		{"drop", "the height of the cords at a bar above the bed bottom"},
		{"ease", "the difference in length of two edges that are sewn together, spread along the seam"},
		{"end cap", "the panel that closes a tail"},
		{"entry mark", "where the end of its partner goes into a cord"},
		{"eye", "the spliced loop at the outer end of a leg; the throat is where it closes"},
		{"facing", "a piece cut to the curve of the side, which makes a channel in place of a strip"},
		{"fid", "a hollow needle that draws a cord into another; as a measure, 21 cord diameters"},
		{"gap", "the tip gap: the short opening at a corner, between two splices, that takes a bar's tip"},
		{"girth", "the length of cloth across the bed, from cord to cord"},
		{"grain", "the way of the warp, along the roll"},
		{"hang line", "the line from an apex to its anchor"},
		{"hanging point", "the middle of what an eye hangs on: a ring, a hook, a strap"},
		{"host", "the cord that another one is buried in"},
		{"leg", "the cord from a bar's tip to the apex"},
		{"lining", "a second layer of the bed, below or above the body, with a pad between them; it carries nothing"},
		{"lock stitching", "thread through both cords of a bury, so that it cannot slip while slack"},
		{"milk", "to stroke a host smooth over what is buried in it"},
		{"net line", "the finished line, along which the seam runs"},
		{"node", "a place on a chain that is read off a tape: hanging point, throat, entry, tip, middle"},
		{"notch", "a mark that has its like on the edge that is sewn to it"},
		{"offset", "how far a curve lies from a straight line at a station on it"},
		{"opening", "the worked opening in a channel through which a tip gap is drawn out"},
		{"press line", "where a fold is pressed before it is sewn"},
		{"reach", "how far the cord's centre lies outside of the seam of its channel"},
		{"ridge line", "a line above the bed, as long as the shelter's ridge that lies over it"},
		{"right side", "the face of a cloth that is not lettered: outside on body and caps, outside the channel on strips and facings"},
		{"seizing", "turns of thread that bind two cords side by side"},
		{"selvedge", "the woven edge of a roll; along it a selvedge strip may be kept free"},
		{"shoulder mark", "how far an end is drawn into its partner"},
		{"side cord", "the cord in a channel, from bar tip to bar tip"},
		{"side depth", "how far a side bows in at its deepest, measured in the flat cloth"},
		{"standing part", "the part of a cord that carries, as against its working end"},
		{"tail", "the stretch of the body past a bar; the end of a cord is no tail"},
		{"taper mark", "from where the strands of an end are dropped, so that it grows thin"},
		{"tarp", "a sheet that hangs over the bed on its ridge and keeps the rain off it"},
		{"thrust", "the horizontal pull in the cords of one side, the same all along"},
		{"turn-under", "the strip at an edge that is folded under before it is sewn"},
		{"underbody radius", "the radius of the round part of a section of the bed, under the sleeper"},
		{"wall", "the straight part of a section, between its round part and the cord"},
		{"warp, weft", "the threads along the roll, and those across it"},
		{"working end", "the end of a cord that is being spliced"},
	}
}

// GlossaryTable returns a glossary in Markdown.
func GlossaryTable(terms []Term) string {
	var b strings.Builder
	b.WriteString("| word | meaning |\n|---|---|\n")
	for _, t := range terms {
		fmt.Fprintf(&b, "| %s | %s |\n", t.Word, t.Meaning)
	}
	return b.String()
}
