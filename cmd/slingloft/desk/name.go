package desk

import (
	"fmt"
	"strconv"
	"strings"

	"slingloft/outline/design"
)

// FieldName returns the name of a key's field: elements of lists are counted from 0 and
// set off by a point.
func FieldName(key design.Key) string {
	head, rest, numbered := strings.Cut(string(key), "[")
	number, tail, _ := strings.Cut(rest, "]")
	n, err := strconv.Atoi(number)
	if !numbered || err != nil {
		return string(key)
	}
	return fmt.Sprintf("%s.%d%s", head, n-1, tail)
}

// KeyOf returns the key of a field's name.
func KeyOf(name string) design.Key {
	parts := strings.Split(name, ".")
	for i, p := range parts {
		if n, err := strconv.Atoi(p); err == nil && n >= 0 && i > 0 {
			list := design.Key(strings.Join(parts[:i], "."))
			return list.Item(n + 1).In(strings.Join(parts[i+1:], "."))
		}
	}
	return design.Key(name)
}

// listOf returns the list that a numbered key belongs to and the number of its element,
// from 1; "" and 0 for another.
func listOf(key design.Key) (design.Key, int) {
	head, rest, numbered := strings.Cut(string(key), "[")
	number, _, _ := strings.Cut(rest, "]")
	n, err := strconv.Atoi(number)
	if !numbered || err != nil {
		return "", 0
	}
	return design.Key(head), n
}
