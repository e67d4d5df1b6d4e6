//go:build js

package nest

import (
	"sync"
	"syscall/js"
	"time"
)

// breath lets the browser in now and then: it has one thread for the search and for what
// the page asks meanwhile, and hands that on only while no worker runs.
type breath struct {
	mu   sync.Mutex
	last time.Time
	wait chan struct{} // closed once the browser was let in; nil: nobody waits
}

// breathe returns at once, or once the browser did what was due there.
func (b *breath) breathe() {
	const often = 40 * time.Millisecond // a page that follows a finger bears that
	b.mu.Lock()
	if b.wait == nil && time.Since(b.last) > often {
		wait := make(chan struct{})
		b.wait = wait
		var let js.Func
		let = js.FuncOf(func(js.Value, []js.Value) any {
			let.Release()
			b.mu.Lock() // free: nothing runs while this does
			b.wait, b.last = nil, time.Now()
			b.mu.Unlock()
			close(wait)
			return nil
		})
		js.Global().Call("setTimeout", let, 0)
	}
	wait := b.wait
	b.mu.Unlock()
	if wait != nil {
		<-wait
	}
}
