// Package firefoxtest opens pages in a real Firefox for tests, by Marionette, its own
// protocol: over TCP, JSON with its length before it.
//
// The test is skipped where Firefox is missing, or fails if the environment variable
// SLINGLOFT_READERS is "require".
package firefoxtest

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
)

// Page is a Firefox with one page.
type Page struct {
	t         testing.TB
	conn      net.Conn
	in        *bufio.Reader
	asked     int
	Downloads string // the folder that files are downloaded into
}

// Tab is the key, for [Page.Type].
const Tab = "\ue004"

// patience is how long anything may take on a busy machine.
const patience = 60 * time.Second

// New starts a Firefox that ends with the test.
func New(t testing.TB) *Page {
	t.Helper()
	path, err := exec.LookPath("firefox-esr")
	if err != nil {
		if os.Getenv("SLINGLOFT_READERS") == "require" {
			t.Fatal("firefox-esr is not installed")
		}
		t.Skip("firefox-esr is not installed")
	}
	home, err := os.MkdirTemp("", "slingloft-firefox")
	if err != nil {
		t.Fatal(err)
	}
	p := &Page{t: t, Downloads: filepath.Join(home, "downloads")}
	profile := filepath.Join(home, "profile")
	for _, dir := range []string{p.Downloads, profile} {
		if err := os.Mkdir(dir, 0o700); err != nil {
			t.Fatal(err)
		}
	}
	settings := fmt.Sprintf(`user_pref("marionette.port", 0);
user_pref("browser.download.folderList", 2);
user_pref("browser.download.dir", %q);
user_pref("browser.download.alwaysOpenPanel", false);
user_pref("browser.shell.checkDefaultBrowser", false);
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("app.update.disabledForTesting", true);
user_pref("browser.startup.page", 0);
user_pref("dom.ipc.processPrelaunch.enabled", false);
user_pref("fission.autostart", false);
user_pref("media.rdd-process.enabled", false);
user_pref("network.process.enabled", false);
user_pref("network.connectivity-service.enabled", false);
user_pref("network.captive-portal-service.enabled", false);
`, p.Downloads)
	if err := os.WriteFile(filepath.Join(profile, "user.js"), []byte(settings), 0o600); err != nil {
		t.Fatal(err)
	}
	c := exec.Command(path, "--headless", "--marionette", "--no-remote", "--profile", profile, "about:blank")
	c.Env = append(os.Environ(), "HOME="+home)
	if err := c.Start(); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if p.conn != nil {
			if p.tell("Marionette:Quit", map[string]any{"flags": []string{"eForceQuit"}}) == nil {
				p.heard() // it quits after it has answered
			}
			p.conn.Close()
		}
		gone := time.AfterFunc(5*time.Second, func() { c.Process.Kill() })
		c.Wait()
		gone.Stop()
		os.RemoveAll(home)
	})
	p.meet(filepath.Join(profile, "MarionetteActivePort"))
	p.do("WebDriver:NewSession", nil)
	return p
}

// meet reaches the browser, which writes its port into a file once it can be reached.
func (p *Page) meet(file string) {
	p.t.Helper()
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(20 * time.Millisecond) {
		port, err := os.ReadFile(file)
		if err != nil || len(port) == 0 {
			continue
		}
		if p.conn, err = net.Dial("tcp", "127.0.0.1:"+strings.TrimSpace(string(port))); err != nil {
			continue
		}
		p.in = bufio.NewReader(p.conn)
		if _, err := p.heard(); err != nil { // it says what it is
			p.t.Fatal(err)
		}
		return
	}
	p.t.Fatal("Firefox cannot be reached")
}

// heard returns the next message.
func (p *Page) heard() ([]byte, error) {
	p.conn.SetReadDeadline(time.Now().Add(patience))
	head, err := p.in.ReadString(':')
	if err != nil {
		return nil, err
	}
	n, err := strconv.Atoi(strings.TrimSuffix(head, ":"))
	if err != nil {
		return nil, err
	}
	data := make([]byte, n)
	_, err = io.ReadFull(p.in, data)
	return data, err
}

// tell sends a command.
func (p *Page) tell(command string, with map[string]any) error {
	p.asked++
	if with == nil {
		with = map[string]any{}
	}
	data, err := json.Marshal([]any{0, p.asked, command, with})
	if err != nil {
		return err
	}
	_, err = fmt.Fprintf(p.conn, "%d:%s", len(data), data)
	return err
}

// do sends a command and returns what comes back.
func (p *Page) do(command string, with map[string]any) json.RawMessage {
	p.t.Helper()
	if err := p.tell(command, with); err != nil {
		p.t.Fatal(err)
	}
	data, err := p.heard()
	if err != nil {
		p.t.Fatalf("%s: %v", command, err)
	}
	var answer [4]json.RawMessage // that it is one, to which, an error, what
	if err := json.Unmarshal(data, &answer); err != nil || string(answer[2]) != "null" {
		p.t.Fatalf("%s: %v %.400s", command, err, data)
	}
	return answer[3]
}

// Open opens an address.
func (p *Page) Open(url string) {
	p.t.Helper()
	p.do("WebDriver:Navigate", map[string]any{"url": url})
}

// Until waits until a JavaScript expression is true.
func (p *Page) Until(expression string) {
	p.t.Helper()
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(20 * time.Millisecond) {
		out := p.do("WebDriver:ExecuteScript", map[string]any{"script": "return Boolean(" + expression + ")", "args": []any{}})
		if string(out) == `{"value":true}` {
			return
		}
	}
	p.t.Fatalf("never true: %s", expression)
}

// element finds an element and returns what Firefox calls it.
func (p *Page) element(selector string) string {
	p.t.Helper()
	var out struct{ Value map[string]string }
	data := p.do("WebDriver:FindElement", map[string]any{"using": "css selector", "value": selector})
	if err := json.Unmarshal(data, &out); err != nil {
		p.t.Fatal(err)
	}
	for _, id := range out.Value {
		return id
	}
	p.t.Fatalf("no %s: %s", selector, data)
	return ""
}

// Click clicks on an element as a mouse does.
func (p *Page) Click(selector string) {
	p.t.Helper()
	p.do("WebDriver:ElementClick", map[string]any{"id": p.element(selector)})
}

// Type empties a field and types into it.
func (p *Page) Type(selector, text string) {
	p.t.Helper()
	p.do("WebDriver:ElementClear", map[string]any{"id": p.element(selector)})
	p.do("WebDriver:ElementSendKeys", map[string]any{"id": p.element(selector), "text": text})
}

// Downloaded waits for a whole file and returns its bytes.
func (p *Page) Downloaded(name string) []byte {
	p.t.Helper()
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(20 * time.Millisecond) {
		if _, err := os.Stat(filepath.Join(p.Downloads, name+".part")); err == nil {
			continue
		}
		if data, err := os.ReadFile(filepath.Join(p.Downloads, name)); err == nil && len(data) > 0 {
			return data
		}
	}
	entries, _ := os.ReadDir(p.Downloads)
	p.t.Fatalf("%s was not downloaded, but %v", name, entries)
	return nil
}
