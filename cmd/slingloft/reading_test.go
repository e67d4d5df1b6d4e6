package main

import (
	"fmt"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/export/sheet"
	"slingloft/export/sheet/picture"
	"slingloft/outline/design"
	"slingloft/outline/piece"
	"slingloft/outline/wordstest"
)

// reading is what somebody finds on a sheet who knows none of its words.
type reading struct {
	there []string
	said  []string // its texts
}

// see notes a thing with the figures in its texts.
func (r *reading) see(thing string, texts ...string) {
	for _, t := range texts {
		thing += " " + strings.Join(number.FindAllString(t, -1), " ")
	}
	r.there, r.said = append(r.there, thing), append(r.said, texts...)
}

// sheet reads a sheet from its title to its last block.
func (r *reading) sheet(s sheet.Sheet) {
	r.see("subtitle", s.Subtitle)
	r.see(fmt.Sprint("verdict ", s.Verdict.Grade), s.Verdict.Title, s.Verdict.Text)
	frame := reflect.ValueOf(s.Frame)
	for i := range frame.NumField() {
		if f := frame.Field(i); f.Kind() == reflect.String {
			r.see(frame.Type().Field(i).Name, f.String())
		}
	}
	for i, name := range s.Frame.Parts {
		r.see(fmt.Sprint("part ", i), name)
	}
	for _, sec := range s.Sections {
		r.see(fmt.Sprint("section ", sec.ID, " of ", sec.Part), sec.Title)
		for _, b := range sec.Blocks {
			r.block(b)
		}
	}
}

func (r *reading) block(b sheet.Block) {
	switch b := b.(type) {
	case sheet.Para:
		r.see("paragraph", string(b))
	case sheet.List:
		r.see("list", b...)
	case sheet.Notice:
		r.see(fmt.Sprint("notice ", b.Grade), append([]string{b.Title}, b.Lines...)...)
	case sheet.Steps:
		for _, s := range b {
			r.see("step "+s.ID, append([]string{s.Title, s.Done}, slices.Concat(s.Do, s.Needs)...)...)
			for _, f := range s.Facts {
				r.see(fmt.Sprint("fact ", f.Check), f.Name, f.Value)
			}
			r.block(s.Figures)
		}
	case sheet.Ticks:
		for _, q := range b {
			r.see("tick "+q.ID, q.Text, q.Note)
		}
	case sheet.Terms:
		for _, q := range b {
			r.see("term", q.Word, q.Meaning)
		}
	case sheet.Table:
		r.see(fmt.Sprint("table ", b.ID, b.Words, b.Strong, b.Dense), append([]string{b.Caption}, b.Head...)...)
		for _, row := range b.Rows {
			r.see("row", row...)
		}
	case sheet.Figures:
		for _, f := range b {
			r.see(fmt.Sprint("picture ", f.Picture.ID, f.Wide()), f.Caption, f.Picture.Title, f.Picture.Desc)
			r.picture(f.Picture)
		}
	}
}

// picture counts the lines of a picture. Which lettering finds room may hang on how wide
// it is.
func (r *reading) picture(p picture.Picture) {
	paths := 0
	for _, it := range p.Items {
		switch it := it.(type) {
		case picture.Path:
			paths++
		case picture.Text:
			r.said = append(r.said, it.Text)
		}
	}
	r.see(fmt.Sprint("paths ", paths))
}

var number = regexp.MustCompile(`−?\d+([./]\d+)?`)

// ofDesign matches a line to write into a design, which is the same in every language.
var ofDesign = regexp.MustCompile(`^[a-z_]+ = "`)

// aText matches what is no unit and no name of a notch.
var aText = regexp.MustCompile(`\pL{4}`)

// swappedSheet holds the texts of two build sheets against each other: each is the same
// but for its words, and none of the words of the tables stays.
func swappedSheet(t *testing.T, p *work.Plan, english, other []string) {
	t.Helper()
	// Sentences begin with a capital in every language.
	swapped(t, "build sheet", strings.ToLower(strings.Join(english, "\n")), strings.ToLower(strings.Join(other, "\n")))
	free := []string{p.Design.Seam.ThreadName, p.Design.Leg.Name, "[[" + string(design.KeySpliceTrial) + "]]"}
	for _, q := range p.Pieces() {
		free = append(free, q.ID)
		if q.Kind == piece.Own {
			free = append(free, q.Title)
		}
	}
	for _, q := range p.Sewn.Seams {
		free = append(free, q.IDs[:]...)
	}
	for i, s := range english {
		bare := strings.TrimLeft(s, "0123456789 ")
		isFree := func(f string) bool { return strings.EqualFold(bare, f) }
		if s == other[i] && !ofDesign.MatchString(s) && s != wordstest.Text(s) && aText.MatchString(s) && !slices.ContainsFunc(free, isFree) {
			t.Errorf("build sheet: %q stays", s)
		}
	}
}
