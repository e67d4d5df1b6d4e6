package work

import (
	"testing"
	"time"

	"slingloft/nest"
)

// The longer search is kept where it takes less: fewer beds count before the length
// used of the last one.
func TestFewerBedsBeatAShorterLast(t *testing.T) {
	rows := []struct {
		name               string
		usual, longer, due nest.Lay
	}{
		{"fewer beds, more of the last", nest.Lay{Beds: 4, Length: 100}, nest.Lay{Beds: 3, Length: 580}, nest.Lay{Beds: 3, Length: 580}},
		{"more beds, less of the last", nest.Lay{Beds: 3, Length: 580}, nest.Lay{Beds: 4, Length: 100}, nest.Lay{Beds: 3, Length: 580}},
		{"as many beds, less of the last", nest.Lay{Beds: 2, Length: 300}, nest.Lay{Beds: 2, Length: 200}, nest.Lay{Beds: 2, Length: 200}},
		{"as many beds, more of the last", nest.Lay{Beds: 2, Length: 200}, nest.Lay{Beds: 2, Length: 300}, nest.Lay{Beds: 2, Length: 200}},
	}
	for _, row := range rows {
		var reports []nest.Progress
		b := Budget{Time: time.Hour, Progress: func(_ string, p nest.Progress) { reports = append(reports, p) }}
		got, err := b.search("sheets", func(o nest.Options) (nest.Lay, error) {
			lay := row.usual
			if o.Time > 0 {
				lay = row.longer
			}
			o.Progress(nest.Progress{Beds: lay.Beds, Length: lay.Length})
			return lay, nil
		})
		if err != nil || got.Beds != row.due.Beds || got.Length != row.due.Length {
			t.Errorf("%s: %d beds and %g mm, error %v", row.name, got.Beds, got.Length, err)
		}
		if last := reports[len(reports)-1]; last.Beds != row.due.Beds || last.Length != row.due.Length {
			t.Errorf("%s: told of %d beds and %g mm last", row.name, last.Beds, last.Length)
		}
	}
}
