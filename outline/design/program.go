package design

import (
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
			r.conflict(KeyMachinePause, Found(LeanPause), Say(WriteThis, `pause = "M0"`))
		}
		if m.Air == Mist && r.good(KeyMachineController, KeyMachineAir) {
			r.conflict(KeyMachineAir, Found(LeanAir), Say(WriteThis, `air = "M8"`))
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
		if odd >= 0 {
			r.conflict(key, Found(LineHolds, quantity.Quoted(line), []rune(line[odd:])[0]), Say(WriteWords))
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
				r.conflict(key, Found(OfRouter, withArticle(m.Tool)), Say(WriteOrLeave, `tool = "router"`))
			}
		}
		return
	}
	lo, hi := m.Cutter*(1-most), m.Cutter*(1+most)
	if kerf := KeyMachine.In("kerf"); m.Cutter > 0 && m.Kerf > 0 && (m.Kerf < lo || m.Kerf > hi) && r.good(KeyMachineCutter, kerf) {
		r.conflict(kerf, Found(CutOfNoCutter, r.show(KeyMachineCutter, m.Cutter)),
			Say(RangeOrLeave, r.source.Length(kerf, lo, quantity.Up), r.source.Length(kerf, hi, quantity.Down)))
	}
}

// withArticle returns the tool with its article.
func withArticle(t Tool) Phrase {
	if t == 0 {
		return Say(ToolUnnamed)
	}
	return Say(ATool, t.String())
}
