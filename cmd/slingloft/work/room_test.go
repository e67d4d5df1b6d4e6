package work_test

import (
	"testing"

	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
	"slingloft/outline/room"
)

// Longer bars give shoulders and elbows more room and press them less; the trunk is held by
// no more than the sleeper weighs.
func TestRoom(t *testing.T) {
	name, data := design.Demo()
	all, err := work.Vary(t.Context(), name, data, work.Setting{}, []work.Axis{{Key: design.KeyBedHeadBar, Values: []string{"800 mm", "900 mm", "1000 mm"}}})
	if err != nil {
		t.Fatal(err)
	}
	var before room.Room
	for i, v := range all {
		r := v.Buys.Room
		sum := 0.0
		for _, part := range [...]room.Part{room.Shoulders, room.Elbows, room.Hips} {
			f, _ := r.Find(part, design.OnBack)
			sum += 2 * f.Squeeze
			if was, ok := before.Find(part, design.OnBack); ok && i > 0 && (f.Spare <= was.Spare || f.Squeeze >= was.Squeeze) {
				t.Errorf("%v: %v has %g mm to spare under %g N, with a shorter bar %g mm under %g N", v.Values, part, f.Spare, f.Squeeze, was.Spare, was.Squeeze)
			}
		}
		if sum <= 0 || sum > 74*9.80665 {
			t.Errorf("%v: pressed by %g N", v.Values, sum)
		}
		before = r
	}
}
