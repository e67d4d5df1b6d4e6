package watch_test

import (
	"strings"
	"testing"

	"slingloft/cmd/slingloft/firefoxtest"
)

// TestFirefox opens the page in another browser, changes a value, saves the file with every
// other byte as it was, and has files downloaded.
func TestFirefox(t *testing.T) {
	before := strings.ReplaceAll("# mine\n"+small(t, "1500 mm")+"# the end\n", "\n", "\r\n")
	url, path := served(t, before)
	p := firefoxtest.New(t)
	p.Open(url)
	p.Until(`document.body.dataset.laid === "true" && document.body.dataset.drawn`)
	p.Type(`[name="bed.span"]`, "1,53 m"+firefoxtest.Tab)
	p.Until(`document.querySelector('[name="bed.span"]').value === "1.53 m"`)
	p.Click("#save")
	p.Until(`document.body.dataset.unsaved === "false" && document.getElementById("status").textContent.includes("Saved in")`)
	if got, want := text(t, path), strings.Replace(before, `"1500 mm"`, `"1.53 m"`, 1); got != want {
		t.Errorf("the file reads\n%q\nwant\n%q", got, want)
	}
	p.Until(`document.body.dataset.laid === "true" && document.querySelector("#sheet #summary").textContent.includes("1530 mm")`)
	p.Click("#files")
	p.Until(`document.getElementById("files-box").open`)
	p.Click("#files-make")
	if got, want := string(p.Downloaded("bed-cut.zip")), open(t, url).must("files", m{"want": "cut", "as": []string{"svg", "dxf"}}); got != want {
		t.Errorf("%d bytes were downloaded, want %d", len(got), len(want))
	}
}
