package work_test

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/rig"
)

func BenchmarkVary(b *testing.B) {
	name, data := design.Demo()
	bar := work.Axis{Key: design.KeyBedHeadBar}
	for i := range 25 {
		bar.Values = append(bar.Values, fmt.Sprintf("%d mm", 800+10*i))
	}
	legs := work.Axis{Key: design.KeyBedHeadLeg, Values: []string{"850 mm", "860 mm", "870 mm", "880 mm"}}
	for range b.N {
		if _, err := work.Vary(context.Background(), name, data, work.Setting{}, []work.Axis{bar, legs}); err != nil {
			b.Fatal(err)
		}
	}
}

// A variant is what the design is with that value written into it, in the order of the
// values, and one that cannot be made does not stand in the way of the others.
func TestVary(t *testing.T) {
	name, data := design.Demo()
	axes := []work.Axis{{Key: design.KeyBedHeadBar, Values: []string{"900 mm", "950 mm"}},
		{Key: design.KeyBedSideDepth, Values: []string{"205 mm", "500 mm"}}}
	all, err := work.Vary(context.Background(), name, data, work.Setting{}, axes)
	if err != nil || len(all) != 4 {
		t.Fatal(len(all), err)
	}
	for i, v := range all {
		if want := (i == 1 || i == 3); (v.Err != nil) != want {
			t.Errorf("%v: %v", v.Values, v.Err)
		}
		if v.Now != (i == 0) {
			t.Errorf("%v is said to be as it stands: %v", v.Values, v.Now)
		}
	}
	text := bytes.Replace(data, []byte(`head_bar = "900 mm"`), []byte(`head_bar = "950 mm"`), 1)
	p, err := work.ReadFor(name, text, work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	b, r := all[2].Buys, p.Margins()
	least, _ := r.Governing()
	line := 0.0
	for _, c := range r.Cases {
		line = max(line, c.Hang[0], c.Hang[1])
	}
	if b.Line != line || b.Least.Part != least.Part || b.Least.Ratio != least.Ratio || b.Turn != p.Roll().Turn || b.Length != rig.Overall(&p.Shape) {
		t.Errorf("%+v, want a line of %g, %v, a turn of %g", b, line, least, p.Roll().Turn)
	}
	stop, cancel := context.WithCancel(context.Background())
	cancel()
	if _, err := work.Vary(stop, name, data, work.Setting{}, axes); !errors.Is(err, context.Canceled) {
		t.Errorf("cancelled: %v", err)
	}
}
