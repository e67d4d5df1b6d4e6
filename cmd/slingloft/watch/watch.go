// Package watch serves a local page that shows a design's build sheet and draws
// it again on each save of the design file.
//
// The page asks nothing of any other host. It is served to whoever names this
// address in the Host field as an address, not as a name that anybody could point
// here, and what changes the page is taken only from the page itself; see [guard].
package watch

import (
	"context"
	"errors"
	"fmt"
	"net"
	"net/http"
	"time"
)

// DefaultAddress is where the page is served unless another place is named.
const DefaultAddress = "127.0.0.1:8650"

// Options say what is watched and where the page is served.
type Options struct {
	Path    string // design file; empty: the built-in design, which nobody changes
	Shelf   string // file of the maker's shelf; empty: the design's own
	Address string // host:port; empty: [DefaultAddress]; port 0: any free one

	// Ready is called once with the page's address, such as
	// "http://127.0.0.1:8650/", as soon as it can be opened. It may be nil.
	Ready func(url string)
}

// Serve serves the page until ctx is done, and then returns nil.
func Serve(ctx context.Context, o Options) error {
	if o.Address == "" {
		o.Address = DefaultAddress
	}
	l, err := net.Listen("tcp", o.Address)
	if err != nil {
		return fmt.Errorf(English().OtherAddress, err)
	}
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	h := newHub()
	go follow(ctx, o, h)
	s := &http.Server{
		Handler:           newGuard(o.Address, l.Addr()).wrap(handler(h)),
		ReadHeaderTimeout: 5 * time.Second,
		ReadTimeout:       10 * time.Second,
		MaxHeaderBytes:    16 << 10,
		BaseContext:       func(net.Listener) context.Context { return ctx },
	}
	done := make(chan error, 1)
	go func() { done <- s.Serve(l) }()
	if o.Ready != nil {
		o.Ready("http://" + l.Addr().String() + "/")
	}
	select {
	case err := <-done:
		return err
	case <-ctx.Done():
	}
	// Open event streams end with ctx; whatever hangs on is cut off.
	const patience = time.Second
	wait, cancel := context.WithTimeout(context.Background(), patience)
	defer cancel()
	if s.Shutdown(wait) != nil {
		s.Close()
	}
	if err := <-done; !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return nil
}

// Loopback reports whether an address is served to this machine only.
func Loopback(address string) bool {
	host, _, err := net.SplitHostPort(address)
	if err != nil {
		return false
	}
	ip := net.ParseIP(host)
	return host == "localhost" || ip != nil && ip.IsLoopback()
}
