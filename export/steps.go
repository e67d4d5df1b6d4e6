package export

// Step is one thing that a program has its machine do, as its format writes it in a way
// of its own: the same for the same doing.
type Step struct {
	Line int // of the file, from 1
	Does string
}

// StepFaults compares what a program does, step by step, with what it should do: what
// was changed, and how many steps are missing or not due. Where steps stand before the
// first and behind the last difference they are the same.
func StepFaults(got, due []Step) []Note {
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
		return []Note{Tell(StepsMissing, stepsCounted(len(due)), due[0].Does)}
	case len(due) == 0:
		return []Note{Tell(StepsStrange, stepsCounted(len(got)), got[0].Does, got[0].Line)}
	case len(got) != len(due):
		return []Note{Tell(StepsOff, stepsCounted(len(got)), len(due), got[0].Line, got[0].Does, due[0].Does)}
	}
	var out []Note
	n := 0
	for i := range got {
		if got[i].Does == due[i].Does {
			continue
		}
		if n++; n <= most {
			out = append(out, Tell(StepOff, got[i].Line, got[i].Does, due[i].Does))
		}
	}
	if n > most {
		out = append(out, Tell(MoreSteps, stepsCounted(n-most)))
	}
	return out
}

func stepsCounted(n int) Note {
	if n == 1 {
		return Tell(OneStep)
	}
	return Tell(ManySteps, n)
}
