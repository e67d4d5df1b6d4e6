package figures

import (
	"math"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/insectnet"
	"slingloft/outline/quantity"
)

// Cover tells how the insect net hangs, opens and keeps off the sleeper.
type Cover struct {
	Edge    string  `json:"edge"`    // "sewn" or "elastic"
	Area    float64 `json:"area"`    // finished, mm²
	Shear   float64 `json:"shear"`   // largest that the sides ask of the net, rad
	ShearX  float64 `json:"shear_x"` // its station
	Narrows float64 `json:"narrows"` // how many times as wide as it lies flat the net hangs there
	Mesh    float64 `json:"mesh,omitempty"`
	// Ridge is how its cord is cut; lengths that hang on anchors which are not known are 0.
	Ridge  CoverRidge `json:"ridge"`
	Zip    CoverZip   `json:"zip"`
	Loops  int        `json:"loops"`
	Ties   []float64  `json:"ties"` // of a loose edge, as they are cut
	Hem    float64    `json:"hem_elastic"`
	Gap    float64    `json:"gap"` // of a loose edge
	Free   []Free     `json:"free"`
	Packed float64    `json:"packed"` // l, at the sacks' density; 0: its mass is not known
}

// CoverRidge is the cord of a cover's ridge.
type CoverRidge struct {
	Between    float64 `json:"between"` // hooks, under the sleeper
	Cord       float64 `json:"cord"`    // finished
	Cut        float64 `json:"cut"`
	Elastic    float64 `json:"elastic"` // between its knots, slack
	ElasticCut float64 `json:"elastic_cut"`
	Stretched  float64 `json:"stretched"` // under the sleeper
	Nearer     float64 `json:"nearer"`    // by how much the apexes move when somebody sits up
	Apart      float64 `json:"apart"`     // when the bed is empty
}

// CoverZip is the opening of a cover.
type CoverZip struct {
	Place string     `json:"place"` // "left", "right", "head" or "foot"
	Long  float64    `json:"long"`
	Room  float64    `json:"room"`
	Stops [2]float64 `json:"stops"` // along its line, from the head's end, or up from the cap
	Ease  [2]float64 `json:"ease"`  // of both rows
	Hangs float64    `json:"hangs"` // net below it, open
	Rolls float64    `json:"rolls"` // net above it, rolled up
}

// Free is how far the net keeps off a part of the sleeper.
type Free struct {
	Lies  string  `json:"lies"`  // "back" or "side"
	Place string  `json:"place"` // "face", "shoulders", "elbows" or "feet"; "head bar" of the face
	Off   float64 `json:"off"`
	is    design.Posture
	at    insectnet.Place // PlaceCount: the head bar
}

// coverOf gathers the cover of a plan, nil where there is none.
func coverOf(p *work.Plan) *Cover {
	if !p.Design.Cover.On {
		return nil
	}
	d, c := p.Design.Cover, p.Further.Cover
	l, z := c.Space.Line, c.Zip
	out := &Cover{Edge: d.Edge.String(), Shear: c.Shear, ShearX: c.ShearX, Narrows: c.Narrows, Mesh: d.Mesh,
		Ridge: CoverRidge{Between: l.Between, Cord: l.Cord, Cut: l.Cut, Elastic: l.Elastic, ElasticCut: l.ElasticCut, Stretched: l.Stretch},
		Zip:   CoverZip{d.Zip.String(), z.Long, z.Room, z.Stops, z.Rows, z.Hangs, z.Opens},
		Loops: c.Loops, Ties: append([]float64{}, c.Ties...), Hem: c.Elastic, Gap: c.Gap, Packed: float64(c.Packed)}
	for _, q := range c.Pieces {
		out.Area += q.Net.Area()
	}
	if d.Height == 0 {
		a := p.Apexes()
		out.Ridge.Nearer, out.Ridge.Apart = a.Nearer, a.Apart
	}
	f := c.Space.Free
	for _, lies := range []design.Posture{design.OnBack, design.OnSide} {
		for at := range insectnet.PlaceCount {
			if off := f.From[lies][at]; !math.IsInf(off, 1) {
				out.Free = append(out.Free, Free{lies.String(), at.String(), off, lies, at})
			}
		}
		out.Free = append(out.Free, Free{lies.String(), headBar, f.Bar[lies], lies, insectnet.PlaceCount})
	}
	return out
}

// headBar is what documents call the head bar, as far as the face keeps off it.
const headBar = "head bar"

// CoverWords says what belongs to the cover.
type CoverWords struct {
	Title   string
	Area    string // finished
	Shear   string // how far, where, how much narrower
	Ridge   string // from hook to hook, cord finished, cord as cut
	Elastic string // slack, as cut, stretched
	Apexes  string // nearer, apart
	NoRidge string
	Carries string
	Zip     string // where, how long, how much there is room for
	Zips    map[design.CoverZip]string
	Ease    string // of either row
	Open    string // net that hangs below, net that is rolled up
	OpenEnd string // net below
	Loose   string // ties, elastic, gap
	Mesh    string // from hole to hole, holes per square inch
	NoMesh  string
	Free    string // posture, place, how far
	Lies    map[design.Posture]string
	Places  map[insectnet.Place]string
	FaceBar string // posture, how far
	Packed  string // volume
}

func englishCover() CoverWords {
	return CoverWords{
		Title:   "Cover",
		Area:    "finished area of the net %s",
		Shear:   "its sides are laid flat with all edges as long as they hang; the net shears by up to %s, %s from mid-bay, and hangs %s narrower there than it lies flat",
		Ridge:   "ridge: %s from hook to hook under the sleeper; cord %s finished, cut at %s",
		Elastic: "its elastic: %s slack between its knots, cut at %s, stretched to %s under the sleeper",
		Apexes:  "the apexes come %s nearer when somebody sits up, and go %s apart when the bed is empty",
		Carries: "its cord keeps the apexes from going further apart: what it holds where the bed hangs too tight stands with the margins",
		NoRidge: "ridge: its cord hangs on how far the anchors are apart, which is not known",
		Zip:     "zip %s: %s from stop to stop, where there is room for %s",
		Zips: map[design.CoverZip]string{design.ZipLeft: "along the left side", design.ZipRight: "along the right side",
			design.ZipHead: "up the head's end", design.ZipFoot: "up the foot's end"},
		Ease:    "the net is longer than the zip by %s in the lower row and %s in the upper one; minus: shorter",
		Open:    "open, %s of net hang below it over the cord; above it %s are rolled up to the ridge",
		OpenEnd: "open, both halves are tied back to the sides; %s of net stay closed below",
		Loose:   "loose edge: %d ties across under the bed, %s of elastic in its hem, a gap of up to %s between two ties where nothing lies against the bed",
		Mesh:    "mesh by its maker: %s from hole to hole, %s holes per square inch",
		NoMesh:  "mesh of the net: not known; ask its maker for holes per square inch and mass per area",
		Free:    "%s: net %s off the %s",
		Lies:    map[design.Posture]string{design.OnBack: "on the back", design.OnSide: "on the side"},
		Places: map[insectnet.Place]string{insectnet.Face: "face", insectnet.Shoulders: "shoulders", insectnet.Elbows: "elbows",
			insectnet.Feet: "feet"},
		FaceBar: "%s: head bar %s off the face",
		Packed:  "packed about %s, by sack.density",
	}
}

// cover tells of the cover.
func (b *report) cover(p *work.Plan, c *Cover) {
	if c == nil {
		return
	}
	say := b.say.Cover
	b.head(say.Title)
	b.line(say.Area, quantity.Decimal(b.style.Area(c.Area), 2)+" "+b.style.AreaUnit())
	b.line(say.Shear, b.style.Angle(c.Shear), b.mm(c.ShearX), quantity.Decimal(100*(1-c.Narrows), 1)+" %")
	if c.Ridge.Between > 0 {
		b.line(say.Ridge, b.mm(c.Ridge.Between), b.mm(c.Ridge.Cord), b.mm(c.Ridge.Cut))
	} else {
		b.line(say.NoRidge)
	}
	if c.Ridge.Elastic > 0 {
		b.line(say.Elastic, b.mm(c.Ridge.Elastic), b.mm(c.Ridge.ElasticCut), b.mm(c.Ridge.Stretched))
	} else {
		b.line(say.Carries)
	}
	if c.Ridge.Nearer != 0 || c.Ridge.Apart != 0 {
		b.line(say.Apexes, b.mm(c.Ridge.Nearer), b.mm(c.Ridge.Apart))
	}
	b.line(say.Zip, say.Zips[p.Design.Cover.Zip], b.mm(c.Zip.Long), b.mm(c.Zip.Room))
	if c.Zip.Rolls > 0 {
		b.line(say.Ease, b.mm(c.Zip.Ease[0]), b.mm(c.Zip.Ease[1]))
		b.line(say.Open, b.mm(c.Zip.Hangs), b.mm(c.Zip.Rolls))
	} else {
		b.line(say.OpenEnd, b.mm(c.Zip.Hangs))
	}
	if len(c.Ties) > 0 {
		b.line(say.Loose, len(c.Ties), b.mm(c.Hem), b.mm(c.Gap))
	}
	if c.Mesh > 0 {
		b.line(say.Mesh, b.mm(c.Mesh), quantity.Decimal(quantity.Inch*quantity.Inch/(c.Mesh*c.Mesh), 0))
	} else {
		b.line(say.NoMesh)
	}
	for _, f := range c.Free {
		if f.at == insectnet.PlaceCount {
			b.line(say.FaceBar, say.Lies[f.is], b.mm(f.Off))
			continue
		}
		b.line(say.Free, say.Lies[f.is], b.mm(f.Off), say.Places[f.at])
	}
	if c.Packed > 0 {
		b.line(say.Packed, b.style.Volume(c.Packed))
	}
}
