package sack_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"slingloft/outline/cord"
	"slingloft/outline/design"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
	"slingloft/outline/quantity"
	_ "slingloft/outline/rapidtest"
	"slingloft/outline/sack"
	"slingloft/outline/words"
)

func sewn(d design.Design, p sack.Packed) sack.Sewn {
	return sack.Pieces(d, p, "0123abcd", words.EnglishLettering())
}

func sacked() design.Design {
	d := design.Defaults()
	d.Sack.On = true
	d.Bar.Outer = 25
	d.Bed.HeadBar, d.Bed.FootBar = 914, 814
	return d
}

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s is %g, want %g", what, got, want)
	}
}

func byID(t *testing.T, s sack.Sewn, id string) piece.Piece {
	t.Helper()
	for _, p := range s.Pieces {
		if p.ID == id {
			return p
		}
	}
	t.Fatalf("no %s", id)
	return piece.Piece{}
}

// A mass over a density is a volume; a cord of unknown mass takes twice its cylinder.
func TestVolume(t *testing.T) {
	two := cord.Cord{Count: 2, Cut: 1000}
	heavy, bare := two, two
	heavy.Kind.LinearDensity = 10
	bare.Kind.Diameter = 4
	for _, r := range []struct {
		p    sack.Packed
		want float64 // l
	}{
		{sack.Packed{Cloth: 120}, 1},
		{sack.Packed{Cloth: 100, Cords: []cord.Cord{heavy}}, 1},
		{sack.Packed{Cords: []cord.Cord{bare}}, 2 * math.Pi * 4 * 2000 / 1e6},
		{sack.Packed{Cloth: 120, Measured: 3.5}, 3.5},
	} {
		near(t, "volume", float64(r.p.Volume(120)), r.want, 1e-12)
	}
}

// A round sack is a cylinder: what it holds, its wall and its base by the formulas.
func TestRound(t *testing.T) {
	d := sacked()
	d.Sack.Width = 140
	s := sewn(d, sack.PackedOf(d, 360, nil)) // 3 l
	const bottom = math.Pi / 4 * 140 * 140
	long := math.Ceil(3e6/bottom/5) * 5
	near(t, "length", s.Size.Long, long, 1e-9)
	near(t, "volume", float64(s.Size.Volume), bottom*long/1e6, 1e-12)
	near(t, "wall", s.Size.Wall, long+70, 1e-9) // half the diameter closes the mouth
	const sag = 0.002                           // of chords off their circle, mm: no area lacks more than that all around
	near(t, "area of the base", byID(t, s, "sack-base").Net.Area(), bottom, sag*math.Pi*140)
	near(t, "cut area of the base", byID(t, s, "sack-base").Cut.Area(), math.Pi*80*80, sag*math.Pi*160)
	near(t, "area of the wall", byID(t, s, "sack-side").Net.Area(), math.Pi*140*(long+70), 5)
	hem, allowance := d.Sack.Hem, d.Sack.Allowance
	near(t, "cut area of the wall", byID(t, s, "sack-side").Cut.Area(), (long+70+2*hem+allowance)*(math.Pi*140+2*allowance), 10)
	for _, q := range s.Seams {
		near(t, q.String(), q.Difference, 0, 1e-9)
	}
	near(t, "seam of the base", s.Seams[1].Flat[1], math.Pi*140, 0.02)
}

// A flat sack stands as a prism on a square of half its width, and a line across a corner
// is as long on both of its sides as that square is wide.
func TestFlat(t *testing.T) {
	d := sacked()
	d.Sack.Base, d.Sack.Width = design.FlatBase, 240
	s := sewn(d, sack.Packed{Measured: 3, Bar: d.Bar, Head: 914, Foot: 814})
	near(t, "square", s.Size.Thick, 120, 1e-12)
	near(t, "length", s.Size.Long, 210, 1e-9) // 3e6 / 14400 = 208.3, up to 5 mm
	near(t, "volume", float64(s.Size.Volume), 3.024, 1e-12)
	side := byID(t, s, "sack-side")
	near(t, "along", side.Net.Bounds().Width(), 2*(s.Size.Wall+60), 1e-9)
	near(t, "across", side.Net.Bounds().Height(), 240, 1e-9)
	corners := 0
	for _, q := range s.Seams {
		near(t, q.String(), q.Difference, 0, 1e-9)
		if q.Kind == piece.SackCorner {
			corners++
			near(t, q.String(), q.Flat[0], 120, 1e-9)
		}
	}
	if corners != 2 {
		t.Errorf("%d corners", corners)
	}
}

// Around two circles in contact, and four on each other, the shortest line is that around
// their convex outline.
func TestBundle(t *testing.T) {
	hull := func(centres []geom.Point) float64 { // by the support function: its mean times 2π
		const n = 20000
		sum := 0.0
		for i := range n {
			u := geom.Pt(1, 0).Turned(2 * math.Pi * float64(i) / n)
			most := math.Inf(-1)
			for _, c := range centres {
				most = max(most, c.X*u.X+c.Y*u.Y+12.5)
			}
			sum += most
		}
		return sum * 2 * math.Pi / n
	}
	d := sacked()
	s := sewn(d, sack.PackedOf(d, 100, nil))
	near(t, "two bars", s.Bundle.Girth, hull([]geom.Point{{}, {X: 25}}), 1e-4)
	near(t, "their length", s.Bundle.Long, 914, 0)
	near(t, "width of their sack", s.Flat[1], s.Bundle.Girth/2+d.Sack.Slack, 1e-12)
	d.Bar.Joint = 60
	s = sewn(d, sack.PackedOf(d, 100, nil))
	near(t, "four halves", s.Bundle.Girth, hull([]geom.Point{{}, {X: 25}, {Y: 25}, {X: 25, Y: 25}}), 1e-4)
	near(t, "a half", s.Bundle.Long, 487, 1e-12)
	d.Sack.NoBars = true
	if s = sewn(d, sack.PackedOf(d, 100, nil)); s.Bundle.Parts != 0 || len(s.Pieces) != 2 {
		t.Errorf("without a sack for the bars there are %d pieces, %d bars", len(s.Pieces), s.Bundle.Parts)
	}
}

// Whatever is asked for, a sack holds what it has to, its seams fit, its allowances lie
// outside, and its lettering on it.
func TestAnySack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := sacked()
		d.Output.Inches = rapid.Bool().Draw(t, "inches")
		d.Sack.Base = design.SackBase(rapid.IntRange(0, 1).Draw(t, "base"))
		d.Sack.Width = rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(60, 600)).Draw(t, "width")
		d.Sack.Hem, d.Sack.Allowance = rapid.Float64Range(6, 60).Draw(t, "hem"), rapid.Float64Range(4, 40).Draw(t, "allowance")
		d.Bar.Joint = rapid.SampledFrom([]float64{0, 80}).Draw(t, "joint")
		volume := quantity.Litres(rapid.Float64Range(0.2, 100).Draw(t, "volume"))
		s := sewn(d, sack.Packed{Measured: volume, Bar: d.Bar, Head: 900, Foot: 800})
		if s.Size.Volume < volume*(1-1e-9) {
			t.Errorf("holds %g l of %g", s.Size.Volume, volume)
		}
		for _, q := range s.Seams {
			if math.Abs(q.Difference) > 1e-6 || !(q.Flat[0] > 0) {
				t.Errorf("%s: %v", q, q.Flat)
			}
		}
		for _, p := range s.Pieces {
			for _, at := range p.Net {
				if !p.Cut.Contains(at) {
					t.Errorf("%s: net line at %v lies outside of the cut", p.ID, at)
				}
			}
			if len(p.Labels) == 0 {
				t.Errorf("%s has no lettering", p.ID)
			}
		}
	})
}
