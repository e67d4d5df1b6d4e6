// Package wordstest swaps the words of a table for others, for tests of what may not
// hang on them.
package wordstest

import (
	"reflect"
	"regexp"
	"unicode"
)

// Reversed returns a table of words with the letters of every word in reverse, so that
// each is another and takes as much room. Verbs that are filled in stay.
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
var word = regexp.MustCompile(`%[-+# 0]*(?:\[\d+\])?[\d.]*[a-zA-Z%]|\pL+`)

// Text returns a text with the letters of every word in reverse, capitals kept in
// their places.
func Text(s string) string {
	return word.ReplaceAllStringFunc(s, func(w string) string {
		if w[0] == '%' {
			return w
		}
		in := []rune(w)
		out := make([]rune, len(in))
		for i, r := range in {
			r = unicode.ToLower(r)
			if unicode.IsUpper(in[len(in)-1-i]) {
				r = unicode.ToUpper(r)
			}
			out[len(in)-1-i] = r
		}
		return string(out)
	})
}
