package command_test

import (
	"encoding/json"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"
)

// The keys that the documents of the first version had, each with its type and whether
// it always stood there, taken from the schemas which that version printed: other
// programs read them, so they stand there still. The file only ever grows.
const firstKeys = "../../../testdata/golden/document-keys.txt"

func TestDocumentsKeepTheirKeys(t *testing.T) {
	data, err := os.ReadFile(firstKeys)
	if err != nil {
		t.Fatal(err)
	}
	now := map[string]map[string]bool{}
	lines := strings.Split(strings.TrimSpace(string(data)), "\n")
	if len(lines) < 500 {
		t.Fatalf("%d keys", len(lines))
	}
	for _, line := range lines {
		command, key, _ := strings.Cut(line, " ")
		if now[command] == nil {
			var schema any
			if err := json.Unmarshal([]byte(output(t, command, "--schema")), &schema); err != nil {
				t.Fatal(err)
			}
			now[command] = map[string]bool{}
			keysOf(schema, "", true, now[command])
		}
		if !now[command][key] && !now[command][key+" always"] {
			t.Errorf("the document of %s no longer has the key %s", command, key)
		}
	}
}

// keysOf gathers the keys of a schema, as the file has them.
func keysOf(schema any, path string, always bool, into map[string]bool) {
	s := schema.(map[string]any)
	for _, one := range list(s["anyOf"]) {
		keysOf(one, path, always, into)
	}
	if path != "" && s["type"] != nil {
		line := path + " " + typeOf(s["type"])
		if always {
			line += " always"
		}
		into[line] = true
	}
	required := list(s["required"])
	fields, _ := s["properties"].(map[string]any)
	for name, field := range fields {
		keysOf(field, strings.TrimPrefix(path+"."+name, "."), slices.Contains(required, any(name)), into)
	}
	if items, ok := s["items"].(map[string]any); ok {
		keysOf(items, path+"[]", true, into)
	}
}

func list(v any) []any { all, _ := v.([]any); return all }

func typeOf(v any) string {
	var kinds []string
	for _, k := range list(v) {
		kinds = append(kinds, fmt.Sprint(k))
	}
	if len(kinds) == 0 {
		return fmt.Sprint(v)
	}
	slices.Sort(kinds)
	return strings.Join(kinds, "|")
}
