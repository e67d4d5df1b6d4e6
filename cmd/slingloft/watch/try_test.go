package watch

import (
	"testing"

	"slingloft/outline/design"
)

// Every dimension that can be tried has a name, whichever way the design gives it, and
// no name is of anything else.
func TestFieldsNamed(t *testing.T) {
	named := map[design.Key]bool{}
	_, text := design.Demo()
	d, _, err := design.Read("demo.toml", text)
	if err != nil {
		t.Fatal(err)
	}
	for _, d.Bed.Head = range []design.Section{design.Drop, design.Girth} {
		for _, d.Bed.Control = range []design.Control{design.SideDepth, design.HeadAngle, design.FootAngle, design.Thrust} {
			for _, v := range valuesOf(d, English()) {
				if v.Name == "" {
					t.Errorf("%s has no name", v.Key)
				}
				named[design.Key(v.Key)] = true
			}
		}
	}
	for key := range English().Fields {
		if !named[key] {
			t.Errorf("%s cannot be tried", key)
		}
	}
}
