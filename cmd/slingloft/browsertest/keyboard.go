package browsertest

import (
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// Press presses keys on the keyboard, one after the other: letters, or those of package
// chromedp/kb.
func (p *Page) Press(keys ...string) {
	p.t.Helper()
	for _, k := range keys {
		p.Do(chromedp.KeyEvent(k))
	}
}

// PressWith presses a key while another is held.
func (p *Page) PressWith(held kb.Modifier, key string) {
	p.t.Helper()
	p.Do(chromedp.KeyEvent(key, chromedp.KeyModifiers(held)))
}
