package panel

import (
	"slingloft/outline/article"
	"slingloft/outline/design"
	"slingloft/outline/piece"
	"slingloft/outline/words"
)

// layer says which of the two layers of a bed a pattern is of, and what tells its pieces
// from the other's.
type layer struct {
	article     article.Article
	id, prefix  string // of the whole, of its panels
	whole, part piece.Kind
	title       string
	panels      map[piece.Panel]string
	face        string // that is lettered: mark
	join        piece.SeamKind
	letter      string // of its joins' notches
	joinsKey    design.Key
}

// bodyLayer is the layer that carries.
func bodyLayer(w words.Lettering) layer {
	return layer{
		article: article.Bed, id: "body", prefix: "body-", whole: piece.WholeBody, part: piece.BodyPanel,
		title: w.Cloth.Body, panels: w.Cloth.Panels, face: w.Cloth.ShapeFace, join: piece.BodyJoin, letter: "J",
		joinsKey: design.KeyClothJoins,
	}
}

// liningLayer is the layer that holds the pad.
func liningLayer(d design.Design, w words.Lettering) layer {
	return layer{
		article: article.Lining, id: piece.LiningID, prefix: "lining-", whole: piece.WholeLining, part: piece.LiningPanel,
		title: w.Cloth.Lining, panels: w.Cloth.LiningPanels, face: w.Cloth.LiningFaces[d.Lining.Place], join: piece.LiningJoin, letter: "N",
		joinsKey: d.WidthKey(article.Lining),
	}
}

// cloth returns a piece of the layer that is cut once.
func (m *pattern) cloth(id string, kind piece.Kind, title string) piece.Piece {
	return piece.Piece{ID: id, Kind: kind, Title: title, Article: m.as.article, Stock: piece.Cloth, Count: 1, OneWay: m.d.Cloth.OneWay}
}
