package whole

import (
	"errors"
	"path/filepath"

	"golang.org/x/sys/windows"
)

// lock takes a folder, or returns errBusy where somebody has it: by a file in it that is
// open for one alone, and gone when it is closed.
func lock(folder string) (release func(), err error) {
	name, err := windows.UTF16PtrFromString(filepath.Join(folder, ".slingloft.lock"))
	if err != nil {
		return nil, err
	}
	h, err := windows.CreateFile(name, windows.GENERIC_READ|windows.GENERIC_WRITE, 0, nil, windows.OPEN_ALWAYS,
		windows.FILE_ATTRIBUTE_HIDDEN|windows.FILE_FLAG_DELETE_ON_CLOSE, 0)
	if errors.Is(err, windows.ERROR_SHARING_VIOLATION) {
		return nil, errBusy
	} else if err != nil {
		return nil, err
	}
	return func() { windows.CloseHandle(h) }, nil
}
