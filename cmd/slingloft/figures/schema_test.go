package figures_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/figures"
)

// roundTrip reads the document back as it was written.
func roundTrip(t *testing.T, d figures.Document) {
	data, err := json.Marshal(d)
	if err != nil {
		t.Fatal(err)
	}
	if bytes.Contains(data, []byte("NaN")) || bytes.Contains(data, []byte(":null")) && !bytes.Contains(data, []byte(`"checks":null`)) {
		t.Error("a figure is none")
	}
	var raw map[string]any
	if err := json.Unmarshal(data, &raw); err != nil {
		t.Fatal(err)
	}
	text, err := json.Marshal(figures.Schema())
	if err != nil {
		t.Fatal(err)
	}
	var schema map[string]any
	if err := json.Unmarshal(text, &schema); err != nil {
		t.Fatal(err)
	}
	if faults := against(schema["anyOf"].([]any)[0].(map[string]any), raw, "document"); len(faults) > 0 {
		t.Errorf("the schema does not hold: %q", faults)
	}
	raw["digest"], raw["shape"].(map[string]any)["weight"] = 7.0, "heavy"
	delete(raw, "name")
	if faults := against(schema["anyOf"].([]any)[0].(map[string]any), raw, "document"); len(faults) != 3 {
		t.Errorf("of three faults the schema shows %q", faults)
	}
}

// against returns where a value is not as a schema has it: types, required and known
// names, and how many items.
func against(schema map[string]any, v any, at string) []string {
	var faults []string
	kinds := fmt.Sprint(schema["type"])
	switch x := v.(type) {
	case nil:
		if !strings.Contains(kinds, "null") {
			faults = append(faults, at+" is null")
		}
	case map[string]any:
		props, ok := schema["properties"].(map[string]any)
		if !ok {
			return []string{at + " is an object"}
		}
		for _, name := range schema["required"].([]any) {
			if _, ok := x[name.(string)]; !ok {
				faults = append(faults, at+" lacks "+name.(string))
			}
		}
		for name, field := range x {
			if props[name] == nil {
				faults = append(faults, at+"."+name+" is not known")
				continue
			}
			faults = append(faults, against(props[name].(map[string]any), field, at+"."+name)...)
		}
	case []any:
		items, ok := schema["items"].(map[string]any)
		if n, fixed := schema["minItems"].(float64); !ok || fixed && int(n) != len(x) {
			return []string{fmt.Sprintf("%s is an array of %d", at, len(x))}
		}
		for i, item := range x {
			faults = append(faults, against(items, item, fmt.Sprintf("%s[%d]", at, i))...)
		}
	default:
		name := map[string]string{"string": "string", "bool": "boolean", "float64": "number"}[fmt.Sprintf("%T", x)]
		if f, ok := x.(float64); ok && f == math.Trunc(f) && strings.Contains(kinds, "integer") {
			name = "integer"
		}
		if !strings.Contains(kinds, name) {
			faults = append(faults, fmt.Sprintf("%s is a %s, not %s", at, name, kinds))
		}
	}
	return faults
}
