// Package wordstest swaps the words of a table for others, for tests of what may not
// hang on them.
package wordstest

import (
	"reflect"
	"regexp"
	"slices"
)

// Reversed returns a table of words with the letters of every word in reverse, so that
// each is another and takes as much room and as many strokes. Verbs that are filled in stay.
func Reversed[T any](table T) T { return reversed(reflect.ValueOf(table)).Interface().(T) }

// reversed returns a value with all texts in it reversed.
func reversed(v reflect.Value) reflect.Value {
	out := reflect.New(v.Type()).Elem()
	switch v.Kind() {
	case reflect.String:
		out.SetString(Text(v.String()))
	case reflect.Struct:
		for i := range v.NumField() {
			out.Field(i).Set(reversed(v.Field(i)))
		}
	case reflect.Array:
		for i := range v.Len() {
			out.Index(i).Set(reversed(v.Index(i)))
		}
	case reflect.Slice:
		out.Set(reflect.MakeSlice(v.Type(), v.Len(), v.Len()))
		for i := range v.Len() {
			out.Index(i).Set(reversed(v.Index(i)))
		}
	case reflect.Map:
		out.Set(reflect.MakeMap(v.Type()))
		for _, k := range v.MapKeys() {
			out.SetMapIndex(k, reversed(v.MapIndex(k)))
		}
	default:
		panic("wordstest: no words in " + v.Type().String())
	}
	return out
}

// word matches a verb with its verb's letter, or a word.
var word = regexp.MustCompile(`%[-+#0]*(?:\[\d+\])?[\d.]*(?:\[\d+\])?[a-zA-Z%]|\pL+`)

// Text returns a text with the letters of every word in reverse.
func Text(s string) string {
	return word.ReplaceAllStringFunc(s, func(w string) string {
		if w[0] == '%' {
			return w
		}
		letters := []rune(w)
		slices.Reverse(letters)
		return string(letters)
	})
}

// run matches a word, or what stands between two.
var run = regexp.MustCompile(`\pL+|\PL+`)

// Same reports whether two texts are the same but for words that are in reverse in one
// of them.
func Same(a, b string) bool {
	left, right := run.FindAllString(a, -1), run.FindAllString(b, -1)
	return slices.EqualFunc(left, right, func(a, b string) bool { return a == b || Text(a) == b })
}
