package design

import "testing"

// BenchmarkReadDemo is pinned by TestReadDemo.
func BenchmarkReadDemo(b *testing.B) {
	name, data := Demo()
	for b.Loop() {
		if _, _, err := Read(name, data); err != nil {
			b.Fatal(err)
		}
	}
}
