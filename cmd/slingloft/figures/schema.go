package figures

import (
	"fmt"
	"reflect"
	"strings"
)

// Schema returns the JSON Schema (draft 2020-12) of a [Document], made from the
// types themselves so that the two cannot differ.
func Schema() map[string]any {
	s := schemaOf(reflect.TypeFor[Document]())
	s["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	s["title"] = fmt.Sprintf("slingloft figures, version %d", Version)
	s["description"] = "Lengths mm, forces N, angles rad, line loads and cloth tensions N/mm, areas mm², masses as named. " +
		"x along the hammock from mid-bay, head end negative; y across; z up; u and v likewise in the flat cloth."
	return s
}

// schemaOf returns the schema of one type. The types of a document are built from
// structs, slices, arrays, pointers, strings, numbers and truth values only.
func schemaOf(t reflect.Type) map[string]any {
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
	panic("figures: no schema for " + t.String())
}

func objectSchema(t reflect.Type) map[string]any {
	fields := map[string]any{}
	var required []string
	for i := range t.NumField() {
		tag := t.Field(i).Tag.Get("json")
		name, rest, _ := strings.Cut(tag, ",")
		if name == "-" || name == "" {
			continue
		}
		fields[name] = schemaOf(t.Field(i).Type)
		if rest != "omitempty" {
			required = append(required, name)
		}
	}
	return map[string]any{"type": "object", "properties": fields, "required": required}
}
