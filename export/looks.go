package export

import (
	"fmt"
	"slices"
	"strings"
)

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
func LookFaultsOf(got, due []byte, looksOf func([]byte) (Looks, error)) ([]string, error) {
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
func LookFaults(got, due Looks) []string {
	const most = 4
	names := map[string]bool{}
	for n := range got {
		names[n] = true
	}
	for n := range due {
		names[n] = true
	}
	var out []string
	n := 0
	for _, name := range sortedNames(names) {
		text := objectFault(got[name], due[name])
		if text == "" {
			continue
		}
		if n++; n <= most {
			out = append(out, name+" "+text)
		}
	}
	if n > most {
		out = append(out, fmt.Sprintf("%d more objects do not look as they should", n-most))
	}
	return out
}

func sortedNames[V any](m map[string]V) []string {
	var out []string
	for n := range m {
		out = append(out, n)
	}
	slices.Sort(out)
	return out
}

// objectFault says how the objects of one name differ; "" if they do not.
func objectFault(got, due []Properties) string {
	switch {
	case len(due) == 0:
		return "is not due"
	case len(got) == 0:
		return "is missing"
	case len(got) != len(due):
		return fmt.Sprintf("is there %d times, %d due", len(got), len(due))
	}
	var out []string
	for i, p := range got {
		names := map[string]bool{}
		for n := range p {
			names[n] = true
		}
		for n := range due[i] {
			names[n] = true
		}
		for _, n := range sortedNames(names) {
			if a, b := p[n], due[i][n]; a != b && len(out) < 2 {
				out = append(out, propertyFault(n, a, b))
			}
		}
	}
	return strings.Join(out, ", ")
}

func propertyFault(name, got, due string) string {
	switch {
	case got == "":
		return fmt.Sprintf("lacks %s, %.40q due", name, due)
	case due == "":
		return fmt.Sprintf("has %s %.40q", name, got)
	}
	return fmt.Sprintf("has %s %.40q, %.40q due", name, got, due)
}
