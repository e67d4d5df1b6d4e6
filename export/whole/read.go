package whole

import (
	"io"
	"os"

	"slingloft/export"
)

// ReadAtMost reads a file, a device or a pipe, such as a shell makes of a command, but
// no more of it than limit bytes, so that a wrong name does not fill the memory. Nobody
// is waited for: a pipe by name that nobody writes into is a fault, [export.PipeEmpty].
// Errors say what is wrong and do not name the file; a folder is [export.Unread].
func ReadAtMost(path string, limit int64) ([]byte, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, cause(err)
	}
	how := os.O_RDONLY
	pipe := info.Mode()&os.ModeNamedPipe != 0
	if pipe {
		how |= unwaiting
	}
	f, err := os.OpenFile(path, how, 0)
	if err != nil {
		return nil, cause(err)
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, limit))
	switch {
	case err != nil:
		return nil, export.Refuse(export.Unread)
	case pipe && len(data) == 0:
		return nil, export.Refuse(export.PipeEmpty)
	}
	return data, nil
}
