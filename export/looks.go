package export

import "slices"

// Looks is what the eye, a list of jobs or a viewer's program acts on in a file beside
// its lines: the properties of each object that is drawn, of its layers and of the file,
// by the object's name. The same name may stand for several.
type Looks map[string][]Properties

// Properties are the properties of one object, by name. Those that are what they are by
// themselves are left out.
type Properties map[string]string

// Add adds an object.
func (l Looks) Add(name string, p Properties) { l[name] = append(l[name], p) }

// LookFaultsOf is [LookFaults] for files, whose looks are read by looksOf.
func LookFaultsOf(got, due []byte, looksOf func([]byte) (Looks, error)) ([]Note, error) {
	a, err := looksOf(got)
	if err != nil {
		return nil, err
	}
	b, err := looksOf(due)
	if err != nil {
		return nil, err
	}
	return LookFaults(a, b), nil
}

// LookFaults says what of the looks of a file is not as it should be: a few of the
// objects, the first by name, and how many more.
func LookFaults(got, due Looks) []Note {
	const most = 4
	var out []Note
	n := 0
	for _, name := range namesOf(got, due) {
		fault, differs := objectFault(name, got[name], due[name])
		if !differs {
			continue
		}
		if n++; n <= most {
			out = append(out, fault)
		}
	}
	if n > most {
		out = append(out, Tell(MoreObjects, n-most))
	}
	return out
}

// namesOf returns the keys of both, each once, sorted.
func namesOf[M ~map[string]V, V any](a, b M) []string {
	var out []string
	for n := range a {
		out = append(out, n)
	}
	for n := range b {
		out = append(out, n)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// objectFault says how the objects of one name differ, if they do.
func objectFault(name string, got, due []Properties) (Note, bool) {
	switch {
	case len(due) == 0:
		return Tell(ObjectStrange, name), true
	case len(got) == 0:
		return Tell(ObjectMissing, name), true
	case len(got) != len(due):
		return Tell(ObjectCount, name, len(got), len(due)), true
	}
	var out []Note
	for i, p := range got {
		for _, n := range namesOf(p, due[i]) {
			if a, b := p[n], due[i][n]; a != b && len(out) < 2 {
				out = append(out, propertyFault(n, a, b))
			}
		}
	}
	return Tell(ObjectOff, name, out), len(out) > 0
}

func propertyFault(name, got, due string) Note {
	switch {
	case got == "":
		return Tell(PropertyMissing, name, due)
	case due == "":
		return Tell(PropertyStrange, name, got)
	}
	return Tell(PropertyOff, name, got, due)
}
