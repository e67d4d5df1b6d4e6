package watch_test

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"slingloft/cmd/slingloft/browsertest"
)

// testTold looks at the page as it is told to who does not see it.
func testTold(t *testing.T, b *browsertest.Page) {
	url, _ := served(t, small(t, "1500 mm"))
	p := b.Tab(t)
	p.Open(url)
	p.Until(`document.body.dataset.laid === "true" && document.body.dataset.drawn`)
	browsertest.Eval[bool](p, `(() => { window.told = []; const s = document.getElementById("status");
		new MutationObserver(() => window.told.push(s.textContent)).observe(s, {childList: true, characterData: true, subtree: true});
		document.getElementById("compare").open = true; for (const d of document.querySelectorAll("#form details")) d.open = true; return true })()`)
	for _, v := range []string{"1501 mm", "1502 mm", "1503 mm"} {
		enter(p, "bed.span", v)
		shows(p, "bed.span", v)
	}
	p.Until(`document.body.dataset.laid === "true" && document.querySelector("#sheet #summary").textContent.includes("1503 mm")`)
	if told := browsertest.Eval[[]string](p, `window.told`); len(told) > 3 || len(told) == 0 || told[0] != "Not saved yet." {
		t.Errorf("of three changes in a row is said: %q", told)
	}
	enter(p, "template.letter", "3 km")
	p.Until(`document.querySelector("#k-template-letter-fault button")`)
	all := p.Tree()
	find := func(role, name string) browsertest.Told {
		i := slices.IndexFunc(all, func(n browsertest.Told) bool { return n.Role == role && n.Name == name })
		if i < 0 {
			t.Errorf("no %s is called %q", role, name)
			return browsertest.Told{}
		}
		return all[i]
	}
	level, fields := 0, 0
	for _, n := range all {
		switch n.Role {
		case "heading":
			now, err := strconv.Atoi(n.State["level"])
			if err != nil || now > level+1 || n.Name == "" {
				t.Errorf("heading %q of level %s comes after one of level %d", n.Name, n.State["level"], level)
			}
			level = now
		case "textbox", "combobox", "spinbutton", "checkbox", "slider", "button", "link", "img", "image", "graphics-document", "table", "columnheader", "rowheader":
			if n.Name == "" && n.Role != "columnheader" {
				t.Errorf("a %s has no name: %q, %v", n.Role, n.Description, n.State)
			}
		}
		if n.State["focusable"] == "true" && n.Name == "" && n.Role != "RootWebArea" && n.Role != "generic" {
			t.Errorf("what the keyboard comes to has no name: %s %v", n.Role, n.State)
		}
		if (n.Role == "textbox" || n.Role == "combobox") && n.Description != "" {
			fields++
		}
	}
	if fields < 100 {
		t.Errorf("%d fields are described", fields)
	}
	// Of a field its name, value, unit, range and fault are said, and that it is at fault.
	for _, r := range []struct{ role, name, value, said, invalid string }{
		{"textbox", "Length from bar to bar", "1503 mm", "300 mm to 4000 mm. It has to be given.", "false"},
		{"textbox", "Height of lettering", "3 km", "Left empty: 5 mm. \"3 km\" has the unknown unit \"km\"; write a length in mm, cm, m, in, ft, yd", "true"},
	} {
		if n := find(r.role, r.name); n.Value != r.value || !strings.HasSuffix(strings.TrimSpace(n.Description), r.said) || n.State["invalid"] != r.invalid {
			t.Errorf("%s: %+v", r.name, n)
		}
	}
	if n := find("status", ""); n.State["live"] != "polite" {
		t.Errorf("the state is told: %+v", n)
	}
	if n := find("button", "Redo"); n.State["disabled"] != "true" {
		t.Errorf("nothing can be redone: %+v", n)
	}
	// Pictures tell their figures.
	for name, says := range map[string][]string{"How it hangs": {"1503 mm from bar to bar", "from apex to apex"}, "Section from the head bar": {"Between the cords", "mm", "Walls stand at"}} {
		i := slices.IndexFunc(all, func(n browsertest.Told) bool {
			return n.Name == name && !slices.Contains([]string{"heading", "slider", "StaticText", "LabelText", "region"}, n.Role) && n.Description != ""
		})
		for _, want := range says {
			if i < 0 || !strings.Contains(all[i].Description, want) {
				t.Errorf("%s does not tell %q", name, want)
			}
		}
	}
	if n := find("slider", "Height of lettering"); n.State["focusable"] != "true" {
		t.Errorf("the slider: %+v", n)
	}
	if got := browsertest.Eval[string](p, `["slide", "station"].map((i) => document.getElementById(i).getAttribute("aria-valuetext")).join()`); got != "5 mm,700 mm" {
		t.Errorf("sliders stand at %s", got)
	}
}
