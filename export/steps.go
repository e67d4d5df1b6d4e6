package export

import "fmt"

// Step is one thing that a program has its machine do, as its format writes it in a way
// of its own: the same for the same doing.
type Step struct {
	Line int // of the file, from 1
	Does string
}

// StepFaults compares what a program does, step by step, with what it should do: what
// was changed, and how many steps are missing or not due. Where steps stand before the
// first and behind the last difference they are the same.
func StepFaults(got, due []Step) []string {
	const most = 3
	for len(got) > 0 && len(due) > 0 && got[0].Does == due[0].Does {
		got, due = got[1:], due[1:]
	}
	for len(got) > 0 && len(due) > 0 && got[len(got)-1].Does == due[len(due)-1].Does {
		got, due = got[:len(got)-1], due[:len(due)-1]
	}
	switch {
	case len(got) == 0 && len(due) == 0:
		return nil
	case len(got) == 0:
		return []string{fmt.Sprintf("%s missing, the first %.60q", stepsCounted(len(due)), due[0].Does)}
	case len(due) == 0:
		return []string{fmt.Sprintf("%s not due, the first %.60q on line %d", stepsCounted(len(got)), got[0].Does, got[0].Line)}
	case len(got) != len(due):
		return []string{fmt.Sprintf("%s where %d are due, from line %d on: %.60q where %.60q is due",
			stepsCounted(len(got)), len(due), got[0].Line, got[0].Does, due[0].Does)}
	}
	var out []string
	n := 0
	for i := range got {
		if got[i].Does == due[i].Does {
			continue
		}
		if n++; n <= most {
			out = append(out, fmt.Sprintf("line %d: %.60q where %.60q is due", got[i].Line, got[i].Does, due[i].Does))
		}
	}
	if n > most {
		out = append(out, stepsCounted(n-most)+" more changed")
	}
	return out
}

func stepsCounted(n int) string {
	if n == 1 {
		return "1 step"
	}
	return fmt.Sprintf("%d steps", n)
}
