package design

import (
	"fmt"
	"strings"

	"slingloft/outline/quantity"
)

// Pause is how a program pauses.
type Pause int

// The pauses.
const (
	Halt         Pause = iota // M0: always
	OptionalHalt              // M1: where the controller's switch for it is on
	NoPause
)

// Air is the word that turns a machine's air assist on.
type Air int

// The kinds of air assist.
const (
	NoAir Air = iota
	Mist      // M7
	Flood     // M8
)

// Dialect is a set of words of RS-274.
type Dialect int

// The dialects.
const (
	Full Dialect = iota
	// Lean leaves out what hobby controllers reject or pass over, by the public code
	// and notes of one kind of them: M7 is an error there and M1 does not pause.
	Lean
)

// MaxBlock is the longest line of a program, in characters: what small controllers take.
const MaxBlock = 79

// checkProgram wants words that the controller has.
func (r *reader) checkProgram() {
	m := r.design.Machine
	if m.Controller == Lean {
		if m.Pause == OptionalHalt && r.good(KeyMachineController, KeyMachinePause) {
			r.conflict(KeyMachinePause, "M1 does not pause on a lean controller", `write pause = "M0"`)
		}
		if m.Air == Mist && r.good(KeyMachineController, KeyMachineAir) {
			r.conflict(KeyMachineAir, "M7 is an error on a lean controller", `write air = "M8"`)
		}
	}
	r.checkOwnLines(KeyMachineHeader, m.Header)
	r.checkOwnLines(KeyMachineFooter, m.Footer)
}

// checkOwnLines wants lines that hold words and nothing that acts at once: some
// controllers act on !, ? and ~ and on bytes beyond ASCII wherever they stand.
func (r *reader) checkOwnLines(key Key, lines []string) {
	if !r.good(key) {
		return
	}
	for _, line := range lines {
		odd := strings.IndexFunc(line, func(c rune) bool { return c < ' ' || c > '~' || strings.ContainsRune("!?~%()", c) })
		switch {
		case odd >= 0:
			r.conflict(key, fmt.Sprintf("%s holds %q", quantity.Quoted(line), []rune(line[odd:])[0]),
				"write words such as \"G54\", in plain letters and figures, without comments")
			return
		case strings.TrimSpace(line) == "":
			r.conflict(key, "a line is empty", "leave it out")
			return
		}
	}
}

// checkCutter wants a router's values of a router, and a width of cut that its cutter
// can make: what the comb shows differs from the diameter by how it runs out, not by
// a fifth (own choice).
func (r *reader) checkCutter() {
	const most = 0.2
	m := r.design.Machine
	if m.Tool != Router {
		for _, key := range []Key{KeyMachineCutter, KeyMachineSpinUp} {
			if r.source.Given(key) && r.good(KeyMachineTool, key) {
				r.conflict(key, "belongs to a router, but the tool is "+withArticle(m.Tool), `write tool = "router", or leave it out`)
			}
		}
		return
	}
	lo, hi := m.Cutter*(1-most), m.Cutter*(1+most)
	if kerf := KeyMachine.In("kerf"); m.Cutter > 0 && m.Kerf > 0 && (m.Kerf < lo || m.Kerf > hi) && r.good(KeyMachineCutter, kerf) {
		r.conflict(kerf, "is no cut of a cutter of "+r.show(KeyMachineCutter, m.Cutter),
			r.source.Length(kerf, lo, quantity.Up)+" to "+r.source.Length(kerf, hi, quantity.Down)+" will do, or leave it out")
	}
}

// withArticle returns the tool with its article.
func withArticle(t Tool) string {
	if t == 0 {
		return "not named"
	}
	return "a " + t.String()
}
