package words

import (
	"fmt"
	"slingloft/outline/article"

	"slingloft/outline/piece"
)

// Pieces says what belongs to the pieces and their seams.
type Pieces struct {
	Rims     map[piece.Rim]string
	Seams    map[piece.SeamKind]string   // hold the rim or the end
	SeamEnd  string                      // where a seam begins or ends
	Between  string                      // two corners
	Corners  map[piece.CornerKind]string // hold the end and the rim
	Measures map[piece.MeasureKind]string
	Opening  string // for a bar's tip, by the end
	BarLine  string // by the end
	Sets     map[article.Article]string
	Curves   map[piece.CurveKind]string
}

// Seam names a seam.
func (n Names) Seam(s piece.Seam) string {
	text := n.Pieces.Seams[s.Kind]
	switch end, rim := s.Named(); {
	case end:
		return fmt.Sprintf(text, n.Ends[s.End])
	case rim:
		return fmt.Sprintf(text, n.Pieces.Rims[s.Rim])
	case s.Number > 0:
		return fmt.Sprintf(text, s.Number)
	}
	return text
}

// SeamMark names a notch of a seam, or its end.
func (n Names) SeamMark(notch string) string {
	if notch == "" {
		return n.Pieces.SeamEnd
	}
	return notch
}

// Measure names a distance that proves a piece true.
func (n Names) Measure(m piece.Measure) string {
	switch m.Kind {
	case piece.Between:
		return fmt.Sprintf(n.Pieces.Between, n.corner(m.From), n.corner(m.To))
	case piece.LetteredCorners:
		return fmt.Sprintf(n.Pieces.Measures[m.Kind], m.Letters[0], m.Letters[1])
	}
	return n.Pieces.Measures[m.Kind]
}

func (n Names) corner(c piece.Corner) string {
	return fmt.Sprintf(n.Pieces.Corners[c.At], n.Ends[c.End], n.Pieces.Rims[c.Rim])
}

// OfEnd fills the name of an end of the bed into a text, "%s bar".
func (n Names) OfEnd(text string, end int) string { return fmt.Sprintf(text, n.Ends[end]) }

func englishPieces() Pieces {
	return Pieces{
		Rims: identified(piece.RimCount),
		Seams: map[piece.SeamKind]string{
			piece.SideToStrip:    "body %s side to channel",
			piece.SideToFacing:   "body %s side to facing",
			piece.EndToCap:       "body %s end to cap",
			piece.BodyJoin:       "body %s",
			piece.SackWall:       "sack's wall, edge to edge",
			piece.SackBottom:     "sack's wall to its base",
			piece.SackEdge:       "sack, %s edge",
			piece.SackCorner:     "sack, across the %s corner",
			piece.BarsEdge:       "bars' sack, along",
			piece.BarsEnd:        "bars' sack, its end",
			piece.TarpRidge:      "tarp, ridge",
			piece.TarpJoin:       "tarp, join %d",
			piece.CoverRidge:     "cover, ridge",
			piece.CoverLeft:      "cover, left side to the %s end",
			piece.CoverRight:     "cover, right side to the %s end",
			piece.CoverToChannel: "cover, %s side to its channel",
			piece.CoverToCap:     "cover, %s end to its cap",
			piece.SideToLining:   "body %s side to lining",
			piece.EndToLining:    "body %s end to lining",
			piece.LiningJoin:     "lining %s",
		},
		SeamEnd: "end",
		Between: "%s to %s",
		Corners: map[piece.CornerKind]string{piece.AtEnd: "%s %s", piece.AtBarLine: "%s bar line %s", piece.AtBar: "%s bar %s"},
		Measures: map[piece.MeasureKind]string{
			piece.CapTop:   "top edge, corner to corner",
			piece.CapDepth: "middle of the seam to the middle of the top edge",
			piece.CapSeam:  "seam, corner to corner along the net line",
			piece.NetAlong: "net line, along the grain", piece.NetAcross: "net line, across the grain",
			piece.NetDiagonal:     "net line, either diagonal",
			piece.LetteredCorners: "corner %s to corner %s",
			piece.NetRound:        "net line, once around", piece.NetDiameter: "net line, from side to side",
		},
		Opening: "%s tip opening",
		BarLine: "%s bar line",
		Sets: map[article.Article]string{article.Bed: "bed", article.Sack: "stow sacks", article.Tarp: "tarp", article.Lining: "lining",
			article.Cover: "cover"},
		Curves: identified(piece.CurveKindCount),
	}
}
