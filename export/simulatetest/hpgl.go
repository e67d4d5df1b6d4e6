package simulatetest

import (
	"strconv"
	"strings"

	"slingloft/outline/geom"
)

// HPGL follows a plot: a plotter unit is 0.025 mm. A pen, a knife without a trail or a
// beam works wherever it is down.
func HPGL(plot string, s Setup) Run {
	run := Run{Way: geom.EmptyBox().With(s.place(0, 0))}
	at, down, pen := s.place(0, 0), false, 0
	for n, text := range strings.Split(strings.ReplaceAll(plot, "\n", ""), ";") {
		if text == "" {
			continue
		}
		name, rest := text[:min(2, len(text))], text[min(2, len(text)):]
		var v []float64
		for _, f := range strings.FieldsFunc(rest, func(r rune) bool { return r == ',' }) {
			x, err := strconv.ParseFloat(f, 64)
			if err != nil {
				run.fault(n+1, "%q is no number", f)
			}
			v = append(v, x/40)
		}
		switch name {
		case "IN", "PS":
			continue
		case "PA":
		case "SP":
			if down || len(v) != 1 {
				run.fault(n+1, "changes the pen while it is down")
				continue
			}
			pen = int(v[0]*40 + 0.5)
		case "PU":
			down = false
		case "PD":
			down = true
			if pen == 0 {
				run.fault(n+1, "draws without a pen")
			}
		default:
			run.fault(n+1, "%q", text)
		}
		if name == "SP" || len(v)%2 != 0 {
			continue
		}
		for i := 0; i < len(v); i += 2 {
			to := s.place(v[i], v[i+1])
			run.Way = run.Way.With(to)
			if down {
				run.Tracks = append(run.Tracks, Track{From: at, To: to, Pen: pen})
			}
			at = to
		}
	}
	if down {
		run.fault(0, "ends with the pen down")
	}
	return run
}
