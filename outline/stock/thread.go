package stock

// What a seam needs beyond its own stitches: own choice.
const (
	// TailLength is thread left at each end of a row to hold and to sew in, mm.
	TailLength = 100
	// ThreadWaste is added for bobbins, trials and thread that runs in curves.
	ThreadWaste = 0.2
)

// Thread returns the thread in one row of lock stitches, mm, both threads together:
// each goes along the seam and, once a stitch, half through the layers and back, so
// that they meet in the middle:
//
//	2 (s + t) / s per length, with the stitch s and the layers' thickness t
//
// The rule is plain geometry of a lock stitch with straight threads.
func Thread(length, stitch, layers float64) float64 {
	if !(stitch > 0) {
		return 0
	}
	return 2 * length * (stitch + layers) / stitch
}

func (b *Bill) thread(in Input) {
	s := in.Design.Seam
	layers := in.Layers
	if layers == 0 {
		layers = SeamLayers
	}
	total := 0.0
	for _, r := range in.Runs {
		rows := float64(r.Count * max(1, r.Rows))
		total += rows * (Thread(r.Length, s.StitchLength, layers) + 4*TailLength)
	}
	if total == 0 {
		return
	}
	r := Row{Kind: ThreadRow, Name: s.ThreadName, Quantity: total * (1 + ThreadWaste) / metre, Note: Note{Kind: LockStitch}}
	if r.Name == "" {
		r.Thing = AnyThread
	}
	b.row(r)
}
