// Package browsertest opens pages in a real Chromium for tests.
//
// The test is skipped where Chromium is missing, or fails if the environment
// variable SLINGLOFT_READERS is "require". axe-core, which judges accessibility,
// is looked for where SLINGLOFT_AXE names its file axe.min.js.
package browsertest

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// Page is a browser with one page.
type Page struct {
	t        testing.TB
	ctx      context.Context
	problems chan string
}

// patience is how long anything may take on a busy machine.
const patience = 60 * time.Second

// missing skips the test, or fails it where readers are required.
func missing(t testing.TB, what string) {
	t.Helper()
	if os.Getenv("SLINGLOFT_READERS") == "require" {
		t.Fatalf("%s is not installed", what)
	}
	t.Skipf("%s is not installed", what)
}

// New starts a browser that ends with the test.
func New(t testing.TB) *Page {
	t.Helper()
	path, err := exec.LookPath("chromium")
	if err != nil {
		missing(t, "chromium")
	}
	options := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath(path), chromedp.NoSandbox, chromedp.UserDataDir(folder(t)),
		chromedp.Flag("disable-gpu", true), chromedp.Flag("disable-quic", true),
		chromedp.Flag("disable-component-update", true), chromedp.Flag("hide-scrollbars", true))
	ctx, stop := chromedp.NewExecAllocator(context.Background(), options...)
	t.Cleanup(stop)
	return opened(t, ctx)
}

// Tab opens another page of the same browser, for a test that ends before the first does.
func (p *Page) Tab(t testing.TB) *Page {
	t.Helper()
	return opened(t, p.ctx)
}

// opened opens a page whose console is listened to.
func opened(t testing.TB, in context.Context) *Page {
	t.Helper()
	ctx, end := chromedp.NewContext(in)
	t.Cleanup(end)
	p := &Page{t, ctx, make(chan string, 100)}
	p.Do(chromedp.Navigate("about:blank"))
	messages := chromedp.Console(ctx)
	go func() {
		for m, err := range messages {
			if err != nil {
				return
			}
			if m.IsException() || m.Type == chromedp.ConsoleError || m.Type == chromedp.ConsoleWarning {
				select {
				case p.problems <- m.String():
				default:
				}
			}
		}
	}()
	return p
}

// folder returns a folder of the test's own. A browser that has just ended may
// still write into it, so that removing it is tried again.
func folder(t testing.TB) string {
	dir, err := os.MkdirTemp("", "slingloft-browser")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		for range 50 {
			if os.RemoveAll(dir) == nil {
				return
			}
			time.Sleep(100 * time.Millisecond)
		}
	})
	return dir
}

// For returns the page for another test, which has to end before the first does.
func (p *Page) For(t testing.TB) *Page {
	other := *p
	other.t = t
	return &other
}

// Do runs an action and fails the test where it fails.
func (p *Page) Do(a chromedp.Action[chromedp.Void]) {
	p.t.Helper()
	if err := chromedp.Do(p.ctx, a); err != nil {
		p.t.Fatal(err)
	}
}

// Open opens an address.
func (p *Page) Open(url string) {
	p.t.Helper()
	p.Do(chromedp.Navigate(url))
}

// Resize gives the page a width and a height in CSS pixels.
func (p *Page) Resize(width, height int64) {
	p.t.Helper()
	p.Do(chromedp.EmulateViewport(width, height))
}

// Dark asks for dark colours, or light ones.
func (p *Page) Dark(dark bool) {
	p.t.Helper()
	value := "light"
	if dark {
		value = "dark"
	}
	p.Do(chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := cdp.Call(ctx, t, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
			Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: value}}})
		return err
	}))
}

// Eval returns the value of a JavaScript expression.
func Eval[T any](p *Page, expression string) T {
	p.t.Helper()
	v, err := chromedp.Run(p.ctx, chromedp.Evaluate[T](expression))
	if err != nil {
		p.t.Fatalf("%.120s: %v", expression, err)
	}
	return v
}

// Until waits until a JavaScript expression is true, and fails the test where it
// is not within a minute.
func (p *Page) Until(expression string) {
	p.t.Helper()
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(10 * time.Millisecond) {
		if Eval[bool](p, "Boolean("+expression+")") {
			return
		}
	}
	p.t.Fatalf("never true: %s; the page says: %.300s", expression, Eval[string](p, "document.body.innerText"))
}

// Quiet fails the test where the console has anything to complain of.
func (p *Page) Quiet() {
	p.t.Helper()
	Eval[int](p, "1") // whatever came before this has arrived
	for {
		select {
		case m := <-p.problems:
			p.t.Errorf("console: %s", m)
		default:
			return
		}
	}
}

// Shot writes a picture of the whole page into the folder that SLINGLOFT_SHOTS
// names, for people to look at; without it nothing is done.
func (p *Page) Shot(name string) { p.shot(name, chromedp.FullScreenshot(100)) }

// Screen writes a picture of what is on the screen likewise.
func (p *Page) Screen(name string) { p.shot(name, chromedp.CaptureScreenshot()) }

func (p *Page) shot(name string, take chromedp.Action[[]byte]) {
	p.t.Helper()
	dir := os.Getenv("SLINGLOFT_SHOTS")
	if dir == "" {
		return
	}
	data, err := chromedp.Run(p.ctx, take)
	if err == nil {
		err = os.WriteFile(filepath.Join(dir, name+".png"), data, 0o644)
	}
	if err != nil {
		p.t.Fatal(err)
	}
}

// Paper prints the page on a paper and returns the text of each printed page. It
// needs pdftotext.
func (p *Page) Paper(size chromedp.PaperSize) []string {
	p.t.Helper()
	tool, err := exec.LookPath("pdftotext")
	if err != nil {
		missing(p.t, "pdftotext")
	}
	data, err := chromedp.Run(p.ctx, chromedp.PrintToPDF(chromedp.PDFPaper(size), chromedp.PDFPreferCSSPageSize()))
	if err != nil {
		p.t.Fatal(err)
	}
	file := filepath.Join(p.t.TempDir(), "print.pdf")
	if err := os.WriteFile(file, data, 0o644); err != nil {
		p.t.Fatal(err)
	}
	out, err := exec.Command(tool, "-layout", file, "-").Output()
	if err != nil {
		p.t.Fatal(err)
	}
	return strings.Split(strings.TrimSuffix(string(out), "\f"), "\f")
}

// Foot returns the page number and the number of pages that a printed page shows
// at its foot, "3 / 12".
func Foot(text string) (page, pages int) {
	all := regexp.MustCompile(`(?m)(\d+) / (\d+)\s*$`).FindAllStringSubmatch(text, -1)
	if len(all) == 0 {
		return 0, 0
	}
	last := all[len(all)-1]
	page, _ = strconv.Atoi(last[1])
	pages, _ = strconv.Atoi(last[2])
	return page, pages
}

// Axe returns what axe-core finds at fault on the page that is serious or critical, by
// all its rules or by those that are named; of a picture it judges the whole and not
// its lines, which are taken out meanwhile: looking at each takes most of the time. It
// is skipped, or fails, where axe-core is missing.
func (p *Page) Axe(rules ...string) []string {
	p.t.Helper()
	name := os.Getenv("SLINGLOFT_AXE")
	if name == "" {
		missing(p.t, "axe-core (SLINGLOFT_AXE)")
	}
	script, err := os.ReadFile(name)
	if err != nil {
		p.t.Fatal(err)
	}
	Eval[chromedp.Void](p, string(script))
	only := ""
	if len(rules) > 0 {
		only = `, runOnly: ["` + strings.Join(rules, `", "`) + `"]`
	}
	Eval[chromedp.Void](p, fmt.Sprintf(axeScript, only))
	p.Until("window.axeResult")
	var found []struct {
		ID, Impact, Help string
		Nodes            []string
	}
	if err := json.Unmarshal([]byte(Eval[string](p, "window.axeResult")), &found); err != nil {
		p.t.Fatal(err)
	}
	var out []string
	for _, v := range found {
		p.t.Logf("axe: %s (%s): %s", v.ID, v.Impact, v.Help)
		if v.Impact == "serious" || v.Impact == "critical" {
			out = append(out, v.ID+": "+v.Help+": "+strings.Join(v.Nodes, " | "))
		}
	}
	return out
}

// axeScript judges the page. Only what is at fault is set out, and no file waited for,
// which takes half the time.
const axeScript = `window.axeResult = null;
(() => {
  const lines = [...document.querySelectorAll("svg")].map(svg => [svg, [...svg.childNodes]]);
  for (const [svg, all] of lines) svg.replaceChildren(...all.filter(n => n.nodeName === "title" || n.nodeName === "desc"));
  const back = () => lines.forEach(([svg, all]) => svg.replaceChildren(...all));
  axe.run(document, {resultTypes: ["violations"], preload: false%s}).then(r => {
    back();
    window.axeResult = JSON.stringify(r.violations.map(v => ({id: v.id, impact: v.impact, help: v.help,
      nodes: v.nodes.slice(0, 4).map(n => n.html.slice(0, 160) + " " + n.failureSummary)})));
  }, e => { back(); window.axeResult = String(e); });
})()`
