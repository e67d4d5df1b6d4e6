package browsertest

import (
	"context"
	"encoding/json"

	"github.com/chromedp/cdproto/accessibility"
	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/chromedp"
)

// Told is one thing on a page as it is told to who does not see it.
type Told struct {
	Role, Name, Description, Value string
	State                          map[string]string // focusable, invalid, expanded, level and others
}

// Tree returns everything on the page that is told, in order.
func (p *Page) Tree() []Told {
	p.t.Helper()
	var all accessibility.GetFullAXTreeResult
	p.Do(chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		var err error
		all, err = cdp.Call(ctx, t, accessibility.GetFullAXTree, accessibility.GetFullAXTreeParams{})
		return err
	}))
	var out []Told
	for _, n := range all.Nodes {
		if n.Ignored {
			continue
		}
		one := Told{textOf(n.Role), textOf(n.Name), textOf(n.Description), textOf(n.Value), map[string]string{}}
		for _, q := range n.Properties {
			one.State[string(q.Name)] = textOf(q.Value)
		}
		out = append(out, one)
	}
	return out
}

// textOf returns a value as text.
func textOf(v *accessibility.Value) string {
	if v == nil {
		return ""
	}
	var text string
	if json.Unmarshal(v.Value, &text) == nil {
		return text
	}
	return string(v.Value)
}
