// Package watch serves a local page on which a design is made and its build sheet
// follows: what is typed there, and what others write into the design's file.
//
// The page asks nothing of any other host. It is served to whoever names this
// address in the Host field as an address, not as a name that anybody could point
// here, and nothing but the empty page is told to who does not have the token that is
// printed with the address; see [guard].
package watch

import (
	"context"
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"time"

	"slingloft/cmd/slingloft/desk"
	"slingloft/cmd/slingloft/form"
	"slingloft/cmd/slingloft/work"
	"slingloft/outline/design"
)

// DefaultAddress is where the page is served unless another place is named.
const DefaultAddress = "127.0.0.1:8650"

// Options say what is watched and where the page is served.
type Options struct {
	Path    string // design file, there or not; empty: the built-in design
	Shelf   string // file of the maker's shelf; empty: the design's own
	Address string // host:port; empty: [DefaultAddress]; port 0: any free one

	// Run runs the program with arguments and returns its exit status. By it the page
	// makes files, so that they are those of the commands.
	Run func(ctx context.Context, args []string, out, messages io.Writer) int

	// Ready is called once with the page's address, such as
	// "http://127.0.0.1:8650/#f3…", as soon as it can be opened. It may be nil.
	Ready func(url string)
}

// Serve serves the page until ctx is done, and then returns nil.
func Serve(ctx context.Context, o Options) error {
	if o.Address == "" {
		o.Address = DefaultAddress
	}
	f := &file{path: o.Path}
	_, data := design.Demo()
	if o.Path != "" {
		var err error
		if data, err = f.read(); err != nil {
			return err
		}
	}
	p, err := form.New(form.English())
	if err != nil {
		return err
	}
	l, err := net.Listen("tcp", o.Address)
	if err != nil {
		return fmt.Errorf(English().OtherAddress, err)
	}
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	with := work.Setting{Shelf: o.Shelf}
	d := desk.New(f, data, with)
	d.Open()
	defer d.Close()
	go follow(ctx, f, d, with)
	token := rand.Text()
	h := &handler{desk: d, page: p, token: token, locked: !Loopback(o.Address), run: o.Run}
	s := &http.Server{
		Handler:           newGuard(o.Address, l.Addr()).wrap(h.routes(), p.Policy),
		ReadHeaderTimeout: 5 * time.Second,
		MaxHeaderBytes:    16 << 10,
		BaseContext:       func(net.Listener) context.Context { return ctx },
	}
	done := make(chan error, 1)
	go func() { done <- s.Serve(l) }()
	if o.Ready != nil {
		o.Ready("http://" + l.Addr().String() + "/#" + token)
	}
	return ended(ctx, s, done)
}

// ended waits until the server fails or ctx is done, and ends it.
func ended(ctx context.Context, s *http.Server, done <-chan error) error {
	select {
	case err := <-done:
		return err
	case <-ctx.Done():
	}
	// Whatever still waits ends with ctx; what hangs on is cut off.
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
