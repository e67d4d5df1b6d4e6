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

// holding is a folder that a run has to itself.
type holding struct {
	release func()
	alone   bool // the system says that nobody else has it
}

// hold waits until no other run writes into a folder. The system lets go of it when
// the program ends, however it does. Where a folder cannot be held, as on some file
// systems of other machines, nobody is waited for.
func hold(folder string) (holding, error) {
	for range lockTries {
		release, err := lock(folder)
		switch {
		case err == nil:
			return holding{release, true}, nil
		case !errors.Is(err, errBusy):
			return holding{func() {}, false}, nil
		}
		time.Sleep(lockPause)
	}
	return holding{}, export.Refuse(export.FolderBusy, folder)
}
