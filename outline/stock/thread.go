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
	layers := in.Layers
	if layers == 0 {
		layers = SeamLayers
	}
	var rows []Row
	for _, h := range in.Hammocks {
		s := h.Design.Seam
		r := Row{Kind: ThreadRow, Name: s.ThreadName, Note: Note{Kind: LockStitch}}
		if r.Name == "" {
			r.Thing = AnyThread
		}
		for _, run := range h.Runs {
			r.Quantity += float64(run.Count*max(1, run.Rows)) * (Thread(run.Length, s.StitchLength, layers) + 4*TailLength)
		}
		if r.Quantity > 0 {
			rows = together(rows, r)
		}
	}
	for _, r := range rows {
		r.Quantity *= (1 + ThreadWaste) / metre
		b.row(r)
	}
}
