package prove

import (
	"bytes"
	"compress/zlib"
	"encoding/binary"
	"fmt"
	"hash/crc32"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"slingloft/export"
)

// edit is one change to a file, as a hand, a sender of programs or another program makes
// it. None knows how our files are laid out beyond what their formats say.
type edit struct {
	format, machine string
	what            string
	do              func(file string) string
}

// swap replaces the match number n, from 1, of an expression; $1 and so on stand for
// its groups.
func swap(n int, pattern, by string) func(string) string {
	return func(file string) string {
		re := regexp.MustCompile("(?m)" + pattern)
		all := re.FindAllStringSubmatchIndex(file, n)
		if len(all) < n {
			return file
		}
		m := all[n-1]
		return file[:m[0]] + string(re.ExpandString(nil, by, file, m)) + file[m[1]:]
	}
}

// every replaces all matches.
func every(pattern, by string) func(string) string {
	return func(file string) string { return regexp.MustCompile("(?m)"+pattern).ReplaceAllString(file, by) }
}

// last replaces the last match.
func last(pattern, by string) func(string) string {
	return func(file string) string {
		return swap(len(regexp.MustCompile("(?m)"+pattern).FindAllStringIndex(file, -1)), pattern, by)(file)
	}
}

func appended(text string) func(string) string {
	return func(file string) string { return file + text }
}

// added adds to the number in the first group of the match number n.
func added(n int, pattern string, by float64) func(string) string {
	return func(file string) string {
		all := regexp.MustCompile("(?m)"+pattern).FindAllStringSubmatchIndex(file, n)
		if len(all) < n {
			return file
		}
		m := all[n-1]
		v, err := strconv.ParseFloat(file[m[2]:m[3]], 64)
		if err != nil {
			return file
		}
		return file[:m[2]] + strconv.FormatFloat(v+by, 'f', 4, 64) + file[m[3]:]
	}
}

// exchanged lets two neighbouring lines that match change places.
func exchanged(first, second string) func(string) string {
	return swap(1, `^(`+first+`)\n(`+second+`)$`, "$2\n$1")
}

const (
	ofLaser  = `tool = "laser"`
	ofRouter = "tool = \"router\"\nkerf = \"2 mm\"\nlead = \"3 mm\""
)

// edits of programs, plotter files and drawings.
var edits = [...]edit{
	{"gcode", ofLaser, "more power", swap(2, `\bS\d+(\.\d+)?`, "S999")},
	{"gcode", ofLaser, "no power", every(`\bS\d+(\.\d+)?`, "S0")},
	{"gcode", ofLaser, "power all along", every(`\bM3\b`, "M4")},
	{"gcode", ofLaser, "slower", swap(1, `\bF\d+(\.\d+)?`, "F10")},
	{"gcode", ofLaser, "faster once", last(`\bF\d+(\.\d+)?`, "F99999")},
	{"gcode", ofLaser, "the beam stays on", swap(3, `^M5.*\n`, "")},
	{"gcode", ofLaser, "the beam is on while it travels", swap(1, `^G0 X`, "G1 X")},
	{"gcode", ofLaser, "a move left out", swap(9, `^G1 X.*\n`, "")},
	{"gcode", ofLaser, "a move made twice", swap(9, `^(G1 X.*\n)`, "$1$1")},
	{"gcode", ofLaser, "two moves exchanged", exchanged("G1 X.*", "G1 X.*")},
	{"gcode", ofLaser, "a place moved by a tenth", added(12, `^G1 X(\S+)`, 0.1)},
	{"gcode", ofLaser, "inches", swap(1, `\bG21\b`, "G20")},
	{"gcode", ofLaser, "from where it is", swap(1, `\bG90\b`, "G91")},
	{"gcode", ofLaser, "behind the end", appended("G1 X0 Y0 S500 F100\n")},
	{"gcode", ofLaser, "the beam behind the end", appended("M3 S1000\n")},
	{"gcode", ofLaser, "no end", last(`^M0?(2|30)\s*$`, "")},
	{"gcode", ofLaser, "the end comes early", swap(5, `^(G0 X.*)$`, "M2\n$1")},
	{"gcode", ofLaser, "another zero", swap(1, `^(G0 X.*)$`, "G92 X5 Y5\n$1")},
	{"gcode", ofLaser, "another coordinate system", swap(1, `^(G0 X.*)$`, "G55\n$1")},
	{"gcode", ofLaser, "a scale", swap(1, `^(G0 X.*)$`, "G51 X2 Y2\n$1")},
	{"gcode", ofLaser, "a wait with the beam on", swap(1, `^(M3 .*)$`, "$1\nG4 P5")},
	{"gcode", ofLaser, "air on", swap(1, `^(M3 .*)$`, "M8\n$1")},
	{"gcode", ofLaser, "a stop", swap(4, `^(G0 X.*)$`, "M0\n$1")},
	{"gcode", ofLaser, "a block that may be skipped", swap(3, `^(G1 X.*)$`, "/$1")},
	{"gcode", ofLaser, "a block made a comment", swap(3, `^(G1 X.*)$`, "($1)")},
	{"gcode", ofLaser, "a byte that stops", swap(6, `\( `, "( !")},
	{"gcode", ofLaser, "a letter that opens the door", swap(6, `\( `, "( Ä")},
	{"gcode", ofLaser, "a message", swap(2, `^(G0 X.*)$`, "(MSG,look away)\n$1")},
	{"gcode", ofLaser, "a setting of the controller", func(f string) string { return "$32=0\n" + f }},
	{"gcode", ofRouter, "deeper", added(3, `\bZ(-\d\S*)`, -5)},
	{"gcode", ofRouter, "not through", added(3, `\bZ(-\d\S*)`, 1)},
	{"gcode", ofRouter, "it travels in the sheet", every(`^G0 Z\d.*$`, "G0 Z0.0")},
	{"gcode", ofRouter, "the spindle stands still", swap(1, `^M3\b.*\n`, "")},
	{"gcode", ofRouter, "the spindle turns the other way", swap(1, `^M3\b`, "M4")},
	{"gcode", ofRouter, "straight down", swap(1, `^G1 Z(\S+) F\S+`, "G0 Z$1")},

	{"hpgl", "", "another pen", swap(2, `SP(\d)`, "SP8")},
	{"hpgl", "", "pens exchanged", swap(1, `SP1;`, "SP7;")},
	{"hpgl", "", "the pen does not lift", swap(5, `PU(\d+,\d+;)`, "PD$1")},
	{"hpgl", "", "a place moved by a millimetre", swap(6, `PD(\d+),(\d+)`, "PD${1}1,$2")},
	{"hpgl", "", "force", swap(1, `(SP\d;)`, "${1}FS80;")},
	{"hpgl", "", "speed", swap(1, `(SP\d;)`, "${1}VS90;")},
	{"hpgl", "", "a scale", swap(1, `(SP\d;)`, "SC0,2000,0,2000;$1")},
	{"hpgl", "", "turned", swap(1, `(SP\d;)`, "RO90;$1")},
	{"hpgl", "", "a label", swap(2, `(SP\d;)`, "LBhello\x03$1")},
	{"hpgl", "", "behind the end", appended("SP1;PU0,0;PD4000,4000;")},
	{"hpgl", "", "relative", swap(1, `PA;`, "PR;")},

	{"svg", "", "a group hidden", swap(3, `<g `, `<g display="none" `)},
	{"svg", "", "a group hidden by its style", swap(3, `<g `, `<g style="display:none" `)},
	{"svg", "", "a path hidden", swap(30, `<path `, `<path visibility="hidden" `)},
	{"svg", "", "a path of no opacity", swap(30, `<path `, `<path opacity="0" `)},
	{"svg", "", "half the opacity", swap(30, `<path `, `<path opacity="0.5" `)},
	{"svg", "", "another colour", swap(30, `<path `, `<path stroke="#ff0000" `)},
	{"svg", "", "a colour by a class", swap(1, `(<title>)`, `<style>#cut-outline{stroke:blue}</style>$1`)},
	{"svg", "", "hidden by a style sheet", swap(1, `(<title>)`, `<style>path{display:none}</style>$1`)},
	{"svg", "", "wider strokes", swap(3, `stroke-width="[^"]*"`, `stroke-width="3"`)},
	{"svg", "", "dashes", swap(30, `<path `, `<path stroke-dasharray="1 1" `)},
	{"svg", "", "filled", swap(30, `<path `, `<path fill="black" `)},
	{"svg", "", "clipped", swap(30, `<path `, `<path clip-path="url(#c)" `)},
	{"svg", "", "a mask", swap(2, `<g `, `<g mask="url(#c)" `)},
	{"svg", "", "a filter", swap(2, `<g `, `<g filter="url(#c)" `)},
	{"svg", "", "a script", swap(1, `(</svg>)`, `<script>document.rootElement.remove()</script>$1`)},
	{"svg", "", "on load", swap(1, `<svg `, `<svg onload="go()" `)},
	{"svg", "", "animated", swap(30, `(<path [^>]*>)`, `$1<animateTransform attributeName="transform" type="scale" to="2"/>`)},
	{"svg", "", "moved by a transform", swap(30, `<path `, `<path transform="translate(1 0)" `)},
	{"svg", "", "moved by a style", swap(3, `<g `, `<g style="transform:scale(1.01)" `)},
	{"svg", "", "another title", swap(30, `<title>`, `<title>not `)},
	{"svg", "", "another title of the sheet", swap(1, `<title>`, `<title>not `)},
	{"svg", "", "another scale in words", swap(1, `scale 1:1`, `scale 1:2`)},
	{"svg", "", "another id", swap(30, `<path id="`, `<path id="x`)},
	{"svg", "", "a text", swap(1, `(</svg>)`, `<text x="90" y="90">CUT TWICE</text>$1`)},
	{"svg", "", "a picture", swap(1, `(</svg>)`, `<image href="a.png" width="90" height="90"/>$1`)},
	{"svg", "", "a clone", swap(1, `<path id="([^"]*)"([^>]*>(.|\n)*?</path>)`, `<path id="$1"$2<use href="#$1" x="9"/>`)},
	{"svg", "", "a rectangle", swap(1, `(</svg>)`, `<rect width="90" height="90"/>$1`)},
	{"svg", "", "fitted to the page", swap(1, `width="[^"]*" height="[^"]*"`, `width="210mm" height="297mm"`)},
	{"svg", "", "to a width in per cent", swap(1, `width="[^"]*" height="[^"]*"`, `width="100%" height="100%"`)},
	{"svg", "", "stretched", swap(1, `width="\d+`, `preserveAspectRatio="none" width="999`)},
	{"svg", "", "a style sheet of another file", func(f string) string {
		return strings.Replace(f, "?>", "?><?xml-stylesheet href=\"a.css\"?>", 1)
	}},

	{"dxf", "", "a layer off", swap(1, `(AcDbLayerTableRecord\n\s*2\ncut-outline\n(.|\n)*?\n\s*62\n)`, "${1}-")},
	{"dxf", "", "a layer frozen", swap(1, `(AcDbLayerTableRecord\n\s*2\ncut-outline\n\s*70\n)\d+`, "${1}1")},
	{"dxf", "", "a layer locked", swap(1, `(AcDbLayerTableRecord\n\s*2\ncut-outline\n\s*70\n)\d+`, "${1}4")},
	{"dxf", "", "a layer of another colour", swap(1, `(AcDbLayerTableRecord\n\s*2\ncut-outline\n(.|\n)*?\n\s*62\n)\d+`, "${1}3")},
	{"dxf", "", "a layer of another true colour", swap(1, `(AcDbLayerTableRecord\n\s*2\ncut-outline\n(.|\n)*?\n\s*420\n)\d+`, "${1}255")},
	{"dxf", "", "a layer of other dashes", swap(1, `(AcDbLayerTableRecord\n\s*2\ncut-outline\n(.|\n)*?\n\s*6\n).*`, "${1}score")},
	{"dxf", "", "a layer that is not plotted", swap(1, `(AcDbLayerTableRecord\n\s*2\ncut-outline\n\s*70\n\d+\n)`, "${1}290\n0\n")},
	{"dxf", "", "an entity of its own colour", swap(5, `(\n\s*100\nAcDbPolyline\n)`, "\n62\n1$1")},
	{"dxf", "", "an entity of no opacity", swap(5, `(\n\s*100\nAcDbPolyline\n)`, "\n440\n33554432$1")},
	{"dxf", "", "an entity hidden", swap(5, `(\n\s*100\nAcDbPolyline\n)`, "\n60\n1$1")},
	{"dxf", "", "an entity on a layout", swap(5, `(\n\s*100\nAcDbPolyline\n)`, "\n67\n1$1")},
	{"dxf", "", "an entity of its own dashes", swap(5, `(\n\s*100\nAcDbPolyline\n)`, "\n6\nCONTINUOUS$1")},
	{"dxf", "", "an entity raised", swap(5, `(\nAcDbPolyline\n)`, "${1} 38\n5.0\n")},
	{"dxf", "", "an entity given width", swap(5, `(\n\s*43\n)\S+`, "${1}4.0")},
	{"dxf", "", "an entity seen from behind", swap(5, `(\nAcDbPolyline\n)`, "${1}210\n0.0\n220\n0.0\n230\n-1.0\n")},
	{"dxf", "", "another layer", swap(9, `(\nAcDbEntity\n\s*8\n).*`, "${1}mark2")},
	{"dxf", "", "inches", swap(1, `(\$INSUNITS\n\s*70\n)4`, "${1}1")},
	{"dxf", "", "dashes of another scale", swap(1, `(\$LTSCALE\n\s*40\n)1.0`, "${1}25.4")},
	{"dxf", "", "a text", swap(1, `(\n\s*0\nENDSEC\n\s*0\nSECTION\n\s*2\nOBJECTS)`, "\n0\nTEXT\n8\nmark\n10\n90.0\n20\n90.0\n40\n5.0\n1\nCUT TWICE$1")},
	{"dxf", "", "an insertion", swap(1, `(\n\s*0\nENDSEC\n\s*0\nSECTION\n\s*2\nOBJECTS)`, "\n0\nLINE\n8\nmark\n10\n90.0\n20\n90.0\n11\n5.0\n21\n1$1")},
	{"dxf", "", "behind the end", appended("  0\nSECTION\n  2\nENTITIES\n")},
	{"dxf", `arcs = "0.02 mm"`, "an arc made flat", swap(7, `(\n\s*42\n)\S+`, "${1}0.0")},

	{"pattern", "", "a notch on another layer", swap(1, `(\nPOINT\n\s*8\n)4\n`, "${1}13\n")},
	{"pattern", "", "another quantity", swap(1, `Quantity: \d+`, "Quantity: 9")},
	{"pattern", "", "a text moved", added(1, `\nTEXT\n\s*8\n\S+\n\s*10\n(\S+)`, 30)},
	{"pattern", "", "a point of the outline moved", added(3, `\nPOINT\n\s*8\n\S+\n\s*10\n(\S+)`, 30)},

	{"png", "", "another size on paper", func(f string) string { return chunkAfterHead(f, "pHYs", "\x00\x00\x10\x00\x00\x00\x10\x00\x01") }},
	{"png", "", "another brightness", func(f string) string { return chunkAfterHead(f, "gAMA", "\x00\x01\x00\x00") }},
	{"png", "", "behind the end", appended("PK\x03\x04")},

	{"pdf", "", "a page turned", inPage("/Type /Page\n", "/Type /Page\n/Rotate 90")},
	{"pdf", "", "a page cropped", inPage("/Type /Page\n", "/Type /Page\n/CropBox [0 0 90 90]")},
	{"pdf", "", "user units", inPage("/Type /Page\n", "/Type /Page\n/UserUnit 2")},
	{"pdf", "", "an action when it is opened", inPage("/Type /Catalog\n", "/Type /Catalog\n/OpenAction << /S /JavaScript /JS (go) >>")},
	{"pdf", "", "another colour", inContent(`(\S+) (\S+) (\S+) RG`, "0 1 0 RG")},
	{"pdf", "", "wider strokes", inContent(`RG \S+ w`, "RG 5 w")},
	{"pdf", "", "a clip", inContent(`^(\S+ \S+ m)$`, "0 0 m 9 0 l 9 9 l W n $1")},
	{"pdf", "", "dashes", inContent(`\[\] 0 d`, "[3] 0 d")},
	{"pdf", "", "a layer that is not shown", inPage("/OFF []", "/OFF [5 0 R]")},
	{"pdf", "", "moved", inContent(`^(\S+ \S+ m)$`, "1 0 0 1 9 9 cm $1")},
	{"pdf", "", "behind the end", appended("more")},
}

// chunkAfterHead puts a chunk behind the head of a PNG file.
func chunkAfterHead(file, kind, data string) string {
	const head = 8 + 25
	b := binary.BigEndian.AppendUint32(nil, uint32(len(data)))
	b = append(append(b, kind...), data...)
	b = binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE([]byte(kind+data)))
	return file[:head] + string(b) + file[head:]
}

// inPage replaces text in a PDF's objects and mends the table of their places.
func inPage(from, to string) func(string) string {
	return func(file string) string { return tabled(strings.Replace(file, from, to+"\n", 1)) }
}

// inContent replaces the first match in the content of a PDF's page.
func inContent(pattern, by string) func(string) string {
	return func(file string) string {
		at := regexp.MustCompile(`/Length (\d+)[^>]*>>\s*stream\r?\n`).FindStringSubmatchIndex(file)
		if at == nil {
			return file
		}
		n, _ := strconv.Atoi(file[at[2]:at[3]])
		z, err := zlib.NewReader(strings.NewReader(file[at[1] : at[1]+n]))
		if err != nil {
			return file
		}
		var plain, packed bytes.Buffer
		if _, err := plain.ReadFrom(z); err != nil {
			return file
		}
		w := zlib.NewWriter(&packed)
		fmt.Fprint(w, swap(1, pattern, by)(plain.String()))
		w.Close()
		return tabled(file[:at[2]] + strconv.Itoa(packed.Len()) + file[at[3]:at[1]] + packed.String() + file[at[1]+n:])
	}
}

// tabled writes the table of a PDF's objects anew.
func tabled(file string) string {
	at := strings.LastIndex(file, "\nxref\n") + 1
	table, tail := file[at:], file[strings.LastIndex(file, "trailer"):]
	out := "xref\n" + strings.SplitN(table, "\n", 3)[1] + "\n0000000000 65535 f \n"
	for i := 1; ; i++ {
		place := regexp.MustCompile(fmt.Sprintf(`(?m)^%d 0 obj`, i)).FindStringIndex(file[:at])
		if place == nil {
			break
		}
		out += fmt.Sprintf("%010d 00000 n \n", place[0])
	}
	tail = regexp.MustCompile(`startxref\n\d+`).ReplaceAllString(tail, fmt.Sprintf("startxref\n%d", at))
	return file[:at] + out + tail
}

// Every edit is caught: told of, or refused as what cannot be read.
func TestEditsAreCaught(t *testing.T) {
	d := sample(t, 1)
	files := map[string]string{}
	for _, e := range edits {
		f := set(t, e.format, e.machine)
		key := e.format + e.machine
		if files[key] == "" {
			files[key] = string(written(t, f, d, export.Options{}))
		}
		file := files[key]
		changed := e.do(file)
		if changed == file {
			t.Errorf("%s, %s: nothing was changed", e.format, e.what)
			continue
		}
		r, err := File([]byte(changed), f.sheet(d, export.Options{}))
		if err == nil && r.Agrees() {
			t.Errorf("%s, %s: %v", e.format, e.what, r)
		}
		t.Logf("%s, %s: %v %v", e.format, e.what, r, err)
	}
	if len(edits) < 60 {
		t.Errorf("%d edits", len(edits))
	}
}
