package whole

import (
	"errors"
	"time"

	"slingloft/export"
)

// A folder that another run writes into is asked for again so often, so far apart: the
// files of a run are written in less than a second or two.
const (
	lockTries = 500
	lockPause = 20 * time.Millisecond
)

// errBusy says that another run has the folder.
var errBusy = errors.New("busy")

// hold waits until no other run writes into a folder, and clears what killed runs left
// there. The system lets go of it when the program ends, however it does. Where a folder
// cannot be held, as on some file systems of other machines, nobody is waited for, and
// nothing is cleared: it may be another run's.
func hold(folder string) (release func(), err error) {
	for range lockTries {
		release, err := lock(folder)
		switch {
		case err == nil:
			clearParts(folder)
			return release, nil
		case !errors.Is(err, errBusy):
			return func() {}, nil
		}
		time.Sleep(lockPause)
	}
	return nil, export.Refuse(export.FolderBusy, folder)
}
