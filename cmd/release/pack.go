package main

import (
	"archive/tar"
	"archive/zip"
	"bytes"
	"compress/gzip"
	"io"
	"time"
)

// packed is one file of an archive.
type packed struct {
	name    string
	content []byte
	program bool
}

func (p packed) mode() int64 {
	if p.program {
		return 0o755
	}
	return 0o644
}

// moment is the time that every file in an archive bears: the first one that a zip
// archive can tell.
func moment() time.Time { return time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC) }

// tarred returns the files in a folder of the given name as tar.gz.
func tarred(folder string, files []packed) ([]byte, error) {
	var b bytes.Buffer
	z := gzip.NewWriter(&b)
	w := tar.NewWriter(z)
	for _, f := range files {
		h := tar.Header{Name: folder + "/" + f.name, Mode: f.mode(), Size: int64(len(f.content)), ModTime: moment(), Format: tar.FormatUSTAR}
		if err := w.WriteHeader(&h); err != nil {
			return nil, err
		}
		if _, err := w.Write(f.content); err != nil {
			return nil, err
		}
	}
	for _, c := range []io.Closer{w, z} {
		if err := c.Close(); err != nil {
			return nil, err
		}
	}
	return b.Bytes(), nil
}

// zipped returns the files in a folder of the given name as zip.
func zipped(folder string, files []packed) ([]byte, error) {
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for _, f := range files {
		one, err := w.CreateHeader(&zip.FileHeader{Name: folder + "/" + f.name, Method: zip.Deflate, Modified: moment()})
		if err != nil {
			return nil, err
		}
		if _, err := one.Write(f.content); err != nil {
			return nil, err
		}
	}
	if err := w.Close(); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}
