package watch

import (
	"net"
	"net/http"
	"net/url"
	"strings"
)

// guard turns away requests that did not come from the page itself.
//
// A page elsewhere can make a browser send requests here, under a name of its own
// that it has pointed at this machine (DNS rebinding) or from its own origin. So
// the Host field has to hold an address with the port that is listened on, or
// localhost, or the name that the maker gave; the Origin field, where there is
// one, has to be that same place, and a request that is acted on has to have one.
type guard struct {
	port string
	name string // host that was asked for on the command line
}

// newGuard returns the guard of a listener, which was asked for as address.
func newGuard(address string, listening net.Addr) guard {
	_, port, _ := net.SplitHostPort(listening.String())
	host, _, _ := net.SplitHostPort(address)
	return guard{port, strings.ToLower(host)}
}

// known reports whether host, as in a Host field, is a way to name this place that
// no outsider can bend.
func (g guard) known(host string) bool {
	name, port, err := net.SplitHostPort(host)
	if err != nil {
		name, port = strings.Trim(host, "[]"), "80"
	}
	if port != g.port {
		return false
	}
	name = strings.ToLower(name)
	return name == "localhost" || net.ParseIP(name) != nil || (name != "" && name == g.name)
}

// sameOrigin reports whether an Origin field names the place that the Host field
// names.
func sameOrigin(origin, host string) bool {
	u, err := url.Parse(origin)
	return err == nil && u.Scheme == "http" && strings.EqualFold(u.Host, host)
}

// wrap guards a handler; policy is what a browser may do on its page.
func (g guard) wrap(next http.Handler, policy string) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		head := w.Header()
		head.Set("Content-Security-Policy", policy)
		head.Set("X-Content-Type-Options", "nosniff")
		head.Set("Referrer-Policy", "no-referrer")
		head.Set("Cross-Origin-Resource-Policy", "same-origin")
		head.Set("Cross-Origin-Opener-Policy", "same-origin")
		head.Set("Cache-Control", "no-store")
		origin := r.Header.Get("Origin")
		acts := r.Method != http.MethodGet && r.Method != http.MethodHead
		site := r.Header.Get("Sec-Fetch-Site")
		switch {
		case !g.known(r.Host):
			http.Error(w, AddressOnly.Error(), http.StatusForbidden)
		case origin != "" && !sameOrigin(origin, r.Host), origin == "" && acts:
			http.Error(w, PageOnly.Error(), http.StatusForbidden)
		case r.URL.Path != "/" && site != "" && site != "same-origin" && site != "none":
			http.Error(w, PageOnly.Error(), http.StatusForbidden)
		default:
			next.ServeHTTP(w, r)
		}
	})
}
