package document

import (
	"encoding"
	"fmt"
	"reflect"
	"strings"
)

// Schema returns the JSON Schema (draft 2020-12) of a document of type T, or of
// [Faults] in its place, made from the types themselves so that the two cannot
// differ. The tag doc of a field is its description.
func Schema[T any](title string, version int, about string) map[string]any {
	return map[string]any{
		"$schema":     "https://json-schema.org/draft/2020-12/schema",
		"title":       fmt.Sprintf("%s, version %d", title, version),
		"description": about,
		"anyOf":       []map[string]any{schemaOf(reflect.TypeFor[T]()), schemaOf(reflect.TypeFor[Faults]())},
	}
}

// schemaOf returns the schema of one type. The types of a document are built from
// structs, slices, arrays, pointers, strings, numbers and truth values only; what
// writes itself as text is a string.
func schemaOf(t reflect.Type) map[string]any {
	if t.Implements(reflect.TypeFor[encoding.TextMarshaler]()) {
		return map[string]any{"type": "string"}
	}
	switch t.Kind() {
	case reflect.Pointer:
		return schemaOf(t.Elem())
	case reflect.Struct:
		return objectSchema(t)
	case reflect.Slice:
		return map[string]any{"type": []string{"array", "null"}, "items": schemaOf(t.Elem())}
	case reflect.Array:
		return map[string]any{"type": "array", "items": schemaOf(t.Elem()), "minItems": t.Len(), "maxItems": t.Len()}
	case reflect.String:
		return map[string]any{"type": "string"}
	case reflect.Bool:
		return map[string]any{"type": "boolean"}
	case reflect.Int:
		return map[string]any{"type": "integer"}
	case reflect.Float64:
		return map[string]any{"type": "number"}
	}
	panic("document: no schema for " + t.String())
}

// objectSchema returns the schema of a struct; the fields of those embedded in it
// are its own.
func objectSchema(t reflect.Type) map[string]any {
	fields := map[string]any{}
	required := []string{}
	for _, f := range reflect.VisibleFields(t) {
		name, rest, _ := strings.Cut(f.Tag.Get("json"), ",")
		if name == "-" || name == "" {
			continue
		}
		field := schemaOf(f.Type)
		if about := f.Tag.Get("doc"); about != "" {
			field["description"] = about
		}
		fields[name] = field
		if rest != "omitempty" {
			required = append(required, name)
		}
	}
	return map[string]any{"type": "object", "properties": fields, "required": required}
}
