package command_test

import (
	"context"
	"io"
	"testing"

	"slingloft/cmd/slingloft/command"
)

// BenchmarkCut is the whole command on the built-in design, reading, solving,
// laying and writing, as a built binary does it. TestFilesAgree pins what it
// writes. It has to stay under a second.
func BenchmarkCut(b *testing.B) {
	folder := b.TempDir()
	for b.Loop() {
		args := []string{"cut", "--force", "--out", folder}
		if code := command.Run(context.Background(), args, command.Streams{Out: io.Discard, Err: io.Discard}); code != command.Done {
			b.Fatalf("status %d", code)
		}
	}
}

// BenchmarkFigure is the same for the figures.
func BenchmarkFigure(b *testing.B) {
	for b.Loop() {
		args := []string{"figure", "--json"}
		if code := command.Run(context.Background(), args, command.Streams{Out: io.Discard, Err: io.Discard}); code != command.Done {
			b.Fatalf("status %d", code)
		}
	}
}
