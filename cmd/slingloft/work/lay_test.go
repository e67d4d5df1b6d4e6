package work_test

import (
	"context"
	"reflect"
	"testing"
	"time"

	"slingloft/cmd/slingloft/work"
)

// A time to search in, however short, gives no worse a lay than none; one that is
// over before it begins gives the same.
func TestLayTime(t *testing.T) {
	p, err := work.ReadFor("small.toml", small(t), work.Setting{})
	if err != nil {
		t.Fatal(err)
	}
	lay := func(d time.Duration) work.Lays {
		t.Helper()
		l, err := p.Lay(context.Background(), work.Budget{Time: d})
		if err != nil {
			t.Fatal(err)
		}
		return l
	}
	usual, hasty := lay(0), lay(time.Microsecond)
	if !reflect.DeepEqual(usual, hasty) {
		t.Errorf("a microsecond lays %g mm of cloth and %g mm of sheets, no time %g and %g",
			hasty.Rolls[0].Length, hasty.Boards.Length, usual.Rolls[0].Length, usual.Boards.Length)
	}
	if long := lay(time.Second); long.Rolls[0].Length > usual.Rolls[0].Length || long.Boards.Length > usual.Boards.Length {
		t.Errorf("a second lays %g mm of cloth and %g mm of sheets, no time %g and %g",
			long.Rolls[0].Length, long.Boards.Length, usual.Rolls[0].Length, usual.Boards.Length)
	}
}
