//go:build js

// Inpage is the program as the page that is one file carries it: it answers what the
// page asks, in a worker of the browser, on files that are kept in memory. The worker's
// script is engine.js beside this file; cmd/release puts all into one page.
package main

import (
	"bytes"
	"context"
	"encoding/json"
	"io"
	"net/http"
	"syscall/js"

	"slingloft/cmd/slingloft/command"
	"slingloft/cmd/slingloft/watch"
)

func main() {
	a := watch.NewAlone(func(ctx context.Context, args []string, out, told io.Writer) int {
		return command.Run(ctx, args, command.Streams{Out: out, Err: told})
	})
	js.Global().Call("ready", js.FuncOf(func(_ js.Value, args []js.Value) any {
		op, body, done := args[0].String(), make([]byte, args[1].Length()), args[2]
		js.CopyBytesToGo(body, args[1])
		go func() { answer(a, op, body, done) }()
		return nil
	}))
	select {}
}

// answer has a question answered and hands status, heads in JSON and body on.
func answer(a *watch.Alone, op string, body []byte, done js.Value) {
	w := &written{head: http.Header{}, status: http.StatusOK}
	if r, err := http.NewRequest(http.MethodPost, "/ask/"+op, bytes.NewReader(body)); err == nil {
		a.ServeHTTP(w, r)
	} else {
		w.status = http.StatusNotFound
	}
	heads := map[string]string{}
	for name := range w.head {
		heads[name] = w.head.Get(name)
	}
	text, _ := json.Marshal(heads) // strings always go
	out := js.Global().Get("Uint8Array").New(w.body.Len())
	js.CopyBytesToJS(out, w.body.Bytes())
	done.Invoke(w.status, string(text), out)
}

// written is an answer as it is written.
type written struct {
	head   http.Header
	status int
	body   bytes.Buffer
}

func (w *written) Header() http.Header         { return w.head }
func (w *written) WriteHeader(status int)      { w.status = status }
func (w *written) Write(b []byte) (int, error) { return w.body.Write(b) }
