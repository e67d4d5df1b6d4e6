package watch_test

import (
	"archive/zip"
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"io"
	"net"
	"net/http"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"slingloft/cmd/slingloft/watch"
	"slingloft/outline/design"
)

// served serves a copy of a design and returns the page's address and the copy's path.
func served(t testing.TB, text string) (url, path string) {
	t.Helper()
	path = filepath.Join(t.TempDir(), "bed.toml")
	save(t, path, text)
	return serving(t, path), path
}

// serving serves a file and returns the page's address. It fails the test where the
// server does not end cleanly.
func serving(t testing.TB, path string) string { return servingAt(t, path, "127.0.0.1:0") }

func servingAt(t testing.TB, path, address string) (url string) {
	t.Helper()
	return servingWith(t, watch.Options{Path: path, Address: address})
}

func servingWith(t testing.TB, o watch.Options) (url string) {
	t.Helper()
	ctx, stop := context.WithCancel(context.Background())
	ready, done := make(chan string, 1), make(chan error, 1)
	run := func(_ context.Context, args []string, out, _ io.Writer) int {
		if i := len(args) - 1; args[0] == "cut" {
			os.MkdirAll(args[3], 0o755)
			for _, name := range []string{"b.svg", "a.svg"} {
				os.WriteFile(filepath.Join(args[3], name), []byte(strings.Join(args[4:], " ")), 0o644)
			}
		} else if args[0] == "prove" {
			entries, _ := os.ReadDir(args[i])
			for _, e := range entries {
				io.WriteString(out, e.Name()+"\n")
			}
		}
		return 0
	}
	go func() {
		if o.Run == nil {
			o.Run = run
		}
		o.Ready = func(u string) { ready <- u }
		done <- watch.Serve(ctx, o)
	}()
	t.Cleanup(func() {
		stop()
		select {
		case err := <-done:
			if err != nil {
				t.Error(err)
			}
		case <-time.After(10 * time.Second):
			t.Error("the server does not end")
		}
	})
	select {
	case url = <-ready:
	case err := <-done:
		t.Fatal(err)
	}
	return url
}

func save(t testing.TB, path, text string) {
	t.Helper()
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// small returns a design that is laid in little time, with a span of so many mm.
func small(t testing.TB, span string) string {
	t.Helper()
	data, err := os.ReadFile("../../../testdata/design/small.toml")
	if err != nil {
		t.Fatal(err)
	}
	row := regexp.MustCompile(`(?m)^span = "\d+ mm"`)
	if !row.Match(data) {
		t.Fatal("the design has no span in mm")
	}
	return string(row.ReplaceAll(data, []byte("span = \""+span+"\"")))
}

// page asks as a page does.
type page struct {
	t     testing.TB
	base  string
	token string
}

func open(t testing.TB, address string) page {
	base, token, ok := strings.Cut(address, "#")
	if !ok || len(token) < 20 {
		t.Fatalf("no token in %s", address)
	}
	return page{t, base, token}
}

// seen is what a state tells.
type seen struct {
	Number, Drawn int
	File, Digest  string
	Unsaved, Laid bool
	Undo, Redo    bool
	Broken, Ask   bool
	Locked        bool
	Values        map[string]string
	Counts        map[string]int
	Text          string
	Theirs        *string
	Faults        []struct {
		Field, Place, Text, Line string
		Ways                     []struct{ Label string }
	}
}

// ask sends a question and returns the status and the answer.
func (p page) ask(what string, body any) (int, string) {
	p.t.Helper()
	data, err := json.Marshal(body)
	if err != nil {
		p.t.Fatal(err)
	}
	return p.send(what, data)
}

func (p page) send(what string, data []byte) (int, string) {
	p.t.Helper()
	r, err := http.NewRequest("POST", p.base+"ask/"+what, bytes.NewReader(data))
	if err != nil {
		p.t.Fatal(err)
	}
	r.Header.Set("Authorization", "Bearer "+p.token)
	r.Header.Set("Origin", strings.TrimSuffix(p.base, "/"))
	answer, err := http.DefaultClient.Do(r)
	if err != nil {
		p.t.Fatal(err)
	}
	defer answer.Body.Close()
	out, err := io.ReadAll(answer.Body)
	if err != nil {
		p.t.Fatal(err)
	}
	return answer.StatusCode, string(out)
}

// must is [page.ask] of what has to be answered.
func (p page) must(what string, body any) string {
	p.t.Helper()
	code, out := p.ask(what, body)
	if code != http.StatusOK {
		p.t.Fatalf("%s %v: %d %s", what, body, code, out)
	}
	return out
}

type m map[string]any

func set(field, value string) m { return m{"set": []m{{"field": field, "value": value}}} }

// until returns the first state for which ok holds.
func (p page) until(ok func(seen) bool) seen {
	p.t.Helper()
	var last seen
	since := -1
	for end := time.Now().Add(time.Minute); time.Now().Before(end); since = last.Number {
		last = seen{}
		if err := json.Unmarshal([]byte(p.must("state", m{"since": since})), &last); err != nil {
			p.t.Fatal(err)
		}
		if ok(last) {
			return last
		}
	}
	p.t.Fatalf("it never came; last was %+v", last)
	return last
}

func spanIs(v string) func(seen) bool { return func(s seen) bool { return s.Values["bed.span"] == v } }

// What others save is followed, from the last sound drawing to the next.
func TestFollows(t *testing.T) {
	address, path := served(t, small(t, "1500 mm"))
	p := open(t, address)
	first := p.until(func(s seen) bool { return s.Laid })
	for _, span := range []string{"1510 mm", "1520 mm", "1530 mm"} {
		save(t, path, small(t, span))
		p.until(spanIs(span))
	}
	s := p.until(func(s seen) bool { return s.Laid && s.Drawn > first.Drawn+1 })
	if s.Unsaved || !strings.Contains(p.must("sheet", m{}), "1530 mm") {
		t.Error("the sheet is not that of the last save")
	}
	// Editors that write a new file and give it the old one's name.
	other := filepath.Join(filepath.Dir(path), "other")
	save(t, other, small(t, "1540 mm"))
	if err := os.Rename(other, path); err != nil {
		t.Fatal(err)
	}
	for last := 0; !strings.Contains(p.must("sheet", m{}), "1540 mm"); {
		last = p.until(func(s seen) bool { return s.Drawn > last }).Drawn
	}
	// A fault is told of at its field and line; the last good drawing stays.
	save(t, path, strings.Replace(small(t, "1540 mm"), "span", "spam", 1))
	s = p.until(func(s seen) bool { return len(s.Faults) > 0 && len(s.Faults[0].Ways) > 0 })
	if f := s.Faults[0]; f.Field != "bed.spam" || !strings.Contains(f.Place, "bed.toml:") || !strings.HasPrefix(f.Line, "spam") {
		t.Errorf("%+v", f)
	}
	if !strings.Contains(p.must("sheet", m{}), "1540 mm") {
		t.Error("the last good drawing is gone")
	}
	// What is not TOML is mended as text.
	save(t, path, "name = \"a\"\n[bed\n")
	s = p.until(func(s seen) bool { return s.Broken && len(s.Faults) > 0 })
	p.must("text", m{"text": small(t, "1550 mm")})
	p.until(func(s seen) bool { return !s.Broken && s.Unsaved && s.Laid && len(s.Faults) == 0 })
}

// The file is removed, becomes a folder, and comes back.
func TestFileGoes(t *testing.T) {
	address, path := served(t, small(t, "1500 mm"))
	p := open(t, address)
	p.until(func(s seen) bool { return s.Laid })
	os.Remove(path)
	p.until(func(s seen) bool { return s.Unsaved && s.Digest == "" })
	if err := os.Mkdir(path, 0o755); err != nil {
		t.Fatal(err)
	}
	p.until(func(s seen) bool { return len(s.Faults) == 1 && strings.Contains(s.Faults[0].Text, "no plain file") })
	os.Remove(path)
	p.until(func(s seen) bool { return len(s.Faults) == 0 })
	p.must("save", m{"digest": ""})
	if text(t, path) != small(t, "1500 mm") {
		t.Error("it was not put back")
	}
}

// Saving keeps links and modes, needs the bytes that it began with, and asks for a name
// where there is none.
func TestSave(t *testing.T) {
	folder := t.TempDir()
	real, link := filepath.Join(folder, "real.toml"), filepath.Join(folder, "link.toml")
	save(t, real, strings.ReplaceAll("\ufeff"+small(t, "1500 mm"), "\n", "\r\n"))
	if err := errors.Join(os.Chmod(real, 0o640), os.Symlink("real.toml", link)); err != nil {
		t.Fatal(err)
	}
	p := open(t, serving(t, link))
	s := p.until(func(s seen) bool { return s.Drawn > 0 })
	p.must("set", set("bed.span", "nonsense")) // faults are saved too
	p.must("save", m{"digest": s.Digest})
	info, err := os.Stat(real)
	if dest, e := os.Readlink(link); err != nil || e != nil || dest != "real.toml" || info.Mode().Perm() != 0o640 {
		t.Errorf("%s %v, %v, %v", dest, info.Mode(), err, e)
	}
	if got := text(t, real); got != strings.ReplaceAll("\ufeff"+small(t, "nonsense"), "\n", "\r\n") {
		t.Errorf("the file reads %q", got)
	}
	// The digest of before is no longer that of the file.
	p.must("set", set("bed.span", "1510 mm"))
	if code, _ := p.ask("save", m{"digest": s.Digest}); code != http.StatusConflict {
		t.Errorf("status %d", code)
	}
	// Each undo takes one change of one field back, though it was typed in several.
	for _, v := range []string{"15", "152", "1520 mm"} {
		p.must("set", m{"set": []m{{"field": "bed.span", "value": v}}, "turn": 7})
	}
	p.must("undo", m{})
	p.until(spanIs("1510 mm"))
}

// The built-in design takes a name, cleaned, and never that of a file that is there.
func TestSaveBuiltIn(t *testing.T) {
	t.Chdir(t.TempDir())
	p := open(t, serving(t, ""))
	p.until(func(s seen) bool { return s.Drawn > 0 && s.File == "" })
	p.must("set", set("bed.span", "1490 mm"))
	if code, _ := p.ask("save", m{}); code != http.StatusNotFound {
		t.Errorf("without a name: status %d", code)
	}
	save(t, "mine.toml", "x")
	for name, want := range map[string]int{"mine": http.StatusConflict, "..": http.StatusUnprocessableEntity} {
		if code, _ := p.ask("save", m{"name": name}); code != want {
			t.Errorf("%q: status %d", name, code)
		}
	}
	p.must("save", m{"name": "../../Größe 1.toml"})
	if s := p.until(func(s seen) bool { return !s.Unsaved }); s.File != "Gr--e-1.toml" {
		t.Errorf("it is called %q", s.File)
	}
	_, demo := design.Demo()
	if got := text(t, "Gr--e-1.toml"); got != strings.Replace(string(demo), `span = "1500 mm"`, `span = "1490 mm"`, 1) {
		t.Errorf("the file reads\n%s", got)
	}
}

// Values are tried without being kept.
func TestTry(t *testing.T) {
	address, path := served(t, small(t, "1500 mm"))
	p := open(t, address)
	p.until(func(s seen) bool { return s.Drawn > 0 })
	var model struct{ Reach float64 }
	if err := json.Unmarshal([]byte(p.must("try", set("bed.span", "1600 mm"))), &model); err != nil || model.Reach < 800 {
		t.Errorf("%v, %v", model, err)
	}
	if code, messages := p.ask("try", set("bed.span", "1 mm")); code != http.StatusUnprocessableEntity || !strings.Contains(messages, "bed.span") {
		t.Errorf("%d %s", code, messages)
	}
	if p.until(func(seen) bool { return true }).Unsaved || text(t, path) != small(t, "1500 mm") {
		t.Error("trying changed the design")
	}
}

// Files come as zips of the same bytes, and dropped ones are proved under flat names.
func TestFiles(t *testing.T) {
	address, _ := served(t, small(t, "1500 mm"))
	p := open(t, address)
	made := p.must("files", m{"want": "cut", "as": []string{"svg", "dxf"}})
	z, err := zip.NewReader(strings.NewReader(made), int64(len(made)))
	if err != nil || len(z.File) != 2 || z.File[0].Name != "a.svg" {
		t.Fatalf("%v, %v", z, err)
	}
	if p.must("files", m{"want": "cut", "as": []string{"svg", "dxf"}}) != made {
		t.Error("the same files make another zip")
	}
	for _, q := range []m{{"want": "rm"}, {"want": "cut", "as": []string{"--out=/"}}} {
		if code, _ := p.ask("files", q); code != http.StatusUnprocessableEntity {
			t.Errorf("%v: status %d", q, code)
		}
	}
	body := `[{"name":"../a.svg","size":1},{"name":"b.zip","size":` + itoa(len(made)) + "}]\nx" + made
	if code, messages := p.send("prove", []byte(body)); code != http.StatusBadRequest {
		t.Errorf("a file over another: %d %s", code, messages)
	}
	body = `[{"name":"../c.svg","size":1},{"name":"b.zip","size":` + itoa(len(made)) + "}]\nx" + made
	if code, messages := p.send("prove", []byte(body)); code != http.StatusOK || messages != "a.svg\nb.svg\nc.svg\n" {
		t.Errorf("%d %s", code, messages)
	}
}

// Settings of machines that lie beside the design can be had files for, and no others. A
// shelf that the program was started with may lie anywhere.
func TestFilesBeside(t *testing.T) {
	folder, elsewhere := t.TempDir(), filepath.Join(t.TempDir(), "mine.toml")
	path := filepath.Join(folder, "bed.toml")
	save(t, path, small(t, "1500 mm"))
	save(t, elsewhere, "[cord.grey]\nname = \"grey\"\ndiameter = \"3 mm\"\n")
	save(t, filepath.Join(folder, "broken.toml"), "[machine")
	p := open(t, servingWith(t, watch.Options{Path: path, Address: "127.0.0.1:0", Shelf: elsewhere}))
	p.until(func(s seen) bool { return s.Drawn > 0 })
	for body, want := range map[string]int{"[machine]\ntool = 'laser'\n": http.StatusOK, "[machine]\ntool = 'axe'\n": http.StatusUnprocessableEntity} {
		if code, messages := p.send("bring/machine", []byte(`[{"name":"../my laser.toml","size":`+itoa(len(body))+`}]`+"\n"+body)); code != want {
			t.Errorf("%s: %d %s", body, code, messages)
		}
	}
	if got := p.must("beside", m{}); got != `{"machines":["my-laser.toml"],"shelf":{"cord.leg.use":["grey"],"cord.side.use":["grey"],"hang.line.use":["grey"]}}`+"\n" {
		t.Errorf("beside lies %s", got)
	}
	made := p.must("files", m{"want": "cut", "as": []string{"svg"}, "machine": "my-laser.toml", "copies": 2})
	z, err := zip.NewReader(strings.NewReader(made), int64(len(made)))
	if err != nil {
		t.Fatal(err)
	}
	r, err := z.File[0].Open()
	if err != nil {
		t.Fatal(err)
	}
	if args, _ := io.ReadAll(r); !regexp.MustCompile(`^--as svg --shelf \S+mine.toml --machine \S+my-laser.toml --copies 2$`).Match(args) {
		t.Errorf("it was run with %s", args)
	}
	for _, name := range []string{"broken.toml", "bed.toml", "../x.toml", elsewhere} {
		if code, _ := p.ask("files", m{"want": "cut", "machine": name}); code != http.StatusUnprocessableEntity {
			t.Errorf("%s: status %d", name, code)
		}
	}
	if code, messages := p.send("bring/shelf", []byte(`[{"name":"s.toml","size":0}]`+"\n")); code != http.StatusOK {
		t.Errorf("a shelf: %d %s", code, messages)
	}
	p.until(func(s seen) bool { return s.Values["shelf"] == "s.toml" })
}

// A request that takes long holds up no other.
func TestSlowRequest(t *testing.T) {
	path := filepath.Join(t.TempDir(), "bed.toml")
	save(t, path, small(t, "1500 mm"))
	begun, end := make(chan bool), make(chan bool)
	slow := func(_ context.Context, _ []string, out, _ io.Writer) int {
		close(begun)
		<-end
		io.WriteString(out, "x")
		return 0
	}
	p := open(t, servingWith(t, watch.Options{Path: path, Address: "127.0.0.1:0", Run: slow}))
	p.until(func(s seen) bool { return s.Drawn > 0 })
	made := make(chan int, 1)
	go func() {
		code, _ := p.ask("files", m{"want": "figures"})
		made <- code
	}()
	<-begun
	// A body that never comes whole is another.
	c, err := net.Dial("tcp", strings.TrimSuffix(strings.TrimPrefix(p.base, "http://"), "/"))
	if err != nil {
		t.Fatal(err)
	}
	defer c.Close()
	io.WriteString(c, "POST /ask/set HTTP/1.1\r\nHost: "+c.RemoteAddr().String()+"\r\nOrigin: http://"+c.RemoteAddr().String()+"\r\nAuthorization: Bearer "+p.token+"\r\nContent-Length: 999\r\n\r\n{")
	p.must("set", set("bed.span", "1490 mm"))
	p.must("try", set("bed.span", "1600 mm"))
	p.until(func(s seen) bool { return s.Laid && s.Values["bed.span"] == "1490 mm" })
	p.must("save", m{"digest": p.until(func(seen) bool { return true }).Digest})
	select {
	case code := <-made:
		t.Errorf("the slow request was not slow: status %d", code)
	default:
	}
	close(end)
	if code := <-made; code != http.StatusOK {
		t.Errorf("status %d", code)
	}
}

// Outlines that are dropped onto the page lie beside the design under flat names, never
// over a file, and stand in the design.
func TestBring(t *testing.T) {
	address, path := served(t, small(t, "1500 mm"))
	p := open(t, address)
	p.until(func(s seen) bool { return s.Drawn > 0 })
	drop := func(name string) (int, string) {
		return p.send("bring/outline", []byte(`[{"name":"`+name+`","size":3}]`+"\nabc"))
	}
	if code, messages := drop("../../Größe.SVG"); code != http.StatusOK {
		t.Fatalf("%d %s", code, messages)
	}
	s := p.until(func(s seen) bool { return s.Counts["extra"] == 1 })
	if name := s.Values["extra.0.file"]; name != "Gr--e.svg" || text(t, filepath.Join(filepath.Dir(path), name)) != "abc" {
		t.Errorf("it is called %q", name)
	}
	for name, want := range map[string]int{"Gr--e.svg": http.StatusConflict, "x.toml": http.StatusUnprocessableEntity, ".svg": http.StatusUnprocessableEntity} {
		if code, messages := drop(name); code != want {
			t.Errorf("%s: %d %s", name, code, messages)
		}
	}
}

// Values and other designs are looked at side by side; nothing of it is kept.
func TestCompare(t *testing.T) {
	address, path := served(t, small(t, "1500 mm"))
	p := open(t, address)
	p.until(func(s seen) bool { return s.Drawn > 0 })
	var out []struct{ Name, Sheet, Fault string }
	messages := p.must("compare", m{"field": "bed.span", "values": []string{"1450 mm", "1 mm"}, "texts": []string{small(t, "1470 mm")}})
	if err := json.Unmarshal([]byte(messages), &out); err != nil || len(out) != 3 {
		t.Fatalf("%v: %s", err, messages)
	}
	if !strings.Contains(out[0].Sheet, "1450 mm") || !strings.Contains(out[1].Fault, "bed.span") || !strings.Contains(out[2].Sheet, "1470 mm") || out[2].Name != "Short nap" {
		t.Errorf("%.200s", messages)
	}
	if text(t, path) != small(t, "1500 mm") || p.until(func(seen) bool { return true }).Unsaved {
		t.Error("comparing changed the design")
	}
}

// What other values buy, and how the cut hangs as cloth, is told as the commands tell it.
func TestTold(t *testing.T) {
	path := filepath.Join(t.TempDir(), "bed.toml")
	save(t, path, small(t, "1500 mm")+"\n[[guest]]\nname = \"--Ida, tall\"\nmass = \"60 kg\"\nstature = \"1600 mm\"\ncrown = \"-20 mm\"\n")
	p := open(t, servingWith(t, watch.Options{Path: path, Address: "127.0.0.1:0", Run: really}))
	p.until(func(s seen) bool { return s.Drawn > 0 })
	told := func(args ...string) string {
		var out bytes.Buffer
		if code := really(t.Context(), args, &out, &out); code > 1 {
			t.Fatalf("%s: status %d: %s", args, code, out.String())
		}
		return out.String()
	}
	chart := filepath.Join(t.TempDir(), "vary.html")
	told("figure", path, "--vary", "bed.head_bar=850.5 mm,900 mm", "--vary", "cap.kind=gathered,upright", "--chart", chart)
	two := m{"vary": []m{{"field": "bed.head_bar", "values": []string{"850,5 mm", "900 mm"}}, {"field": "cap.kind", "values": []string{"gathered", "upright"}}}}
	if p.must("vary", two) != text(t, chart) {
		t.Error("the table differs from the command's")
	}
	if got := p.must("hang", m{"guest": "--Ida, tall"}); got != told("hang", path, "--guest=--Ida, tall") || !strings.Contains(got, "mm") {
		t.Errorf("of the cloth is told\n%s", got)
	}
	for what, q := range map[string]m{"vary": {"vary": []m{{"field": "bed.head_bar", "values": []string{"1, 2"}}}}, "hang": {"how": "--out=x"}} {
		if code, _ := p.ask(what, q); code != http.StatusUnprocessableEntity && code != http.StatusNotFound {
			t.Errorf("%s %v: status %d", what, q, code)
		}
	}
	if code, messages := p.ask("vary", m{"vary": []m{{"field": "bed.hed", "values": []string{"1 m"}}}}); code != http.StatusUnprocessableEntity || !strings.Contains(messages, "bed.hed") {
		t.Errorf("%d %s", code, messages)
	}
}

func itoa(n int) string { data, _ := json.Marshal(n); return string(data) }

// Nothing but the empty page is told to strangers.
func TestGuard(t *testing.T) {
	address, path := served(t, small(t, "1500 mm"))
	p := open(t, address)
	p.until(func(s seen) bool { return s.Drawn > 0 })
	home, _ := url.Parse(p.base)
	for _, tc := range []struct {
		name, method, path, host, origin, site, token string
		want                                          int
	}{
		{"the page", "GET", "/", home.Host, "", "", "", 200},
		{"by the name localhost", "GET", "/", "localhost:" + home.Port(), "", "", "", 200},
		{"the state", "POST", "/ask/state", home.Host, p.base[:len(p.base)-1], "same-origin", p.token, 200},
		{"without the token", "POST", "/ask/state", home.Host, p.base[:len(p.base)-1], "same-origin", "", 401},
		{"with another token", "POST", "/ask/save", home.Host, p.base[:len(p.base)-1], "same-origin", "x" + p.token[1:], 401},
		{"without an origin", "POST", "/ask/state", home.Host, "", "", p.token, 403},
		{"under another name", "GET", "/", "evil.example:" + home.Port(), "", "", "", 403},
		{"from another page", "POST", "/ask/set", home.Host, "http://evil.example", "cross-site", p.token, 403},
		{"from another port", "POST", "/ask/set", home.Host, "http://127.0.0.1:1", "same-site", p.token, 403},
		{"read by another page", "GET", "/favicon.ico", home.Host, "", "cross-site", "", 403},
		{"another method", "GET", "/ask/state", home.Host, "", "same-origin", p.token, 405},
		{"a path", "GET", "/../../etc/passwd", home.Host, "", "same-origin", p.token, 404},
		{"an unknown question", "POST", "/ask/rm", home.Host, p.base[:len(p.base)-1], "same-origin", p.token, 404},
	} {
		r, err := http.NewRequest(tc.method, p.base, strings.NewReader("{}"))
		if err != nil {
			t.Fatal(err)
		}
		r.URL.Path, r.Host = tc.path, tc.host
		for head, v := range map[string]string{"Origin": tc.origin, "Sec-Fetch-Site": tc.site, "Authorization": "Bearer " + tc.token} {
			if v != "" && v != "Bearer " {
				r.Header.Set(head, v)
			}
		}
		answer, err := http.DefaultClient.Do(r)
		if err != nil {
			t.Fatal(err)
		}
		body, _ := io.ReadAll(answer.Body)
		answer.Body.Close()
		if answer.StatusCode != tc.want || !strings.Contains(answer.Header.Get("Content-Security-Policy"), "default-src 'none'") {
			t.Errorf("%s: status %d, want %d", tc.name, answer.StatusCode, tc.want)
		}
		if strings.Contains(string(body), filepath.Base(path)) && tc.want != 200 {
			t.Errorf("%s: told of the design", tc.name)
		}
	}
	if code, _ := p.send("text", bytes.Repeat([]byte(" "), 3<<20)); code != http.StatusRequestEntityTooLarge {
		t.Errorf("3 MiB: status %d", code)
	}
}

// A page that other machines see does not save.
func TestLocked(t *testing.T) {
	path := filepath.Join(t.TempDir(), "bed.toml")
	save(t, path, small(t, "1500 mm"))
	address := servingAt(t, path, "0.0.0.0:0")
	_, port, _ := net.SplitHostPort(strings.TrimSuffix(strings.TrimPrefix(strings.Split(address, "#")[0], "http://"), "/"))
	p := open(t, "http://127.0.0.1:"+port+"/#"+strings.Split(address, "#")[1])
	s := p.until(func(s seen) bool { return s.Drawn > 0 && s.Locked })
	p.must("set", set("bed.span", "1490 mm"))
	if code, _ := p.ask("save", m{"digest": s.Digest}); code != http.StatusForbidden || text(t, path) != small(t, "1500 mm") {
		t.Errorf("status %d", code)
	}
}

// A port that is taken is told of with what would do.
func TestBusyPort(t *testing.T) {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer l.Close()
	err = watch.Serve(context.Background(), watch.Options{Address: l.Addr().String()})
	if err == nil || !strings.Contains(err.Error(), "--addr") {
		t.Errorf("%v", err)
	}
}

// TestLoopback tells this machine's own addresses from others.
func TestLoopback(t *testing.T) {
	for address, want := range map[string]bool{"127.0.0.1:1": true, "localhost:1": true, "[::1]:1": true, "0.0.0.0:1": false, ":1": false, "x": false} {
		if got := watch.Loopback(address); got != want {
			t.Errorf("%s: %v", address, got)
		}
	}
}
