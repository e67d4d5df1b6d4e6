package nest

// field answers how deep a displacement lies in a no-fit region.
type field struct {
	patches []patch
}

func newField(ps []patch) *field { return &field{patches: ps} }
