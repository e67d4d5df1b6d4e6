package prove

import (
	"bytes"
	"fmt"
	"image"
	"image/draw"
	"image/png"
	"regexp"
	"slices"
	"strings"
)

// Where the formats name their layers, pens or kinds of work. The readers take a
// name that they do not know for an outline to cut, so that a layer renamed would
// not be noticed there.
var (
	svgGroup = regexp.MustCompile(`<g\b[^>]*?\bid\s*=\s*["']([^"']*)["']`)
	pdfLayer = regexp.MustCompile(`(?s)/OCG /Name \((.*?)\)`)
	hpglPen  = regexp.MustCompile(`\bSP(\d+)`)
	gcodeJob = regexp.MustCompile(`\( work ([^)]*) \)`)
)

// layersOf returns the names of the layers in a file, each once, sorted.
func layersOf(format string, data []byte) []string {
	if format == "dxf" || format == "pattern" {
		return dxfLayers(data)
	}
	at := map[string]*regexp.Regexp{"svg": svgGroup, "pdf": pdfLayer, "hpgl": hpglPen, "gcode": gcodeJob}[format]
	if at == nil {
		return nil
	}
	var out []string
	for _, m := range at.FindAllSubmatch(data, -1) {
		// PDF has names in UTF-16, of which the letters are enough here.
		out = append(out, strings.TrimPrefix(strings.ReplaceAll(string(m[1]), "\x00", ""), "\xfe\xff"))
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// dxfLayers returns the names of the layers that entities lie on, group 8, each
// once, sorted.
func dxfLayers(data []byte) []string {
	var out []string
	code, entities := "", false
	for i := 0; len(data) > 0; i++ {
		line, rest, _ := bytes.Cut(data, []byte("\n"))
		data = rest
		text := strings.TrimSpace(string(line))
		switch {
		case i%2 == 0:
			code = text
		case code == "2" && text == "ENTITIES":
			entities = true
		case code == "0" && text == "ENDSEC":
			entities = false
		case code == "8" && entities && !slices.Contains(out, text):
			out = append(out, text)
		}
	}
	slices.Sort(out)
	return out
}

// gcodeEnd is the word that ends a program, without which some of it is gone.
var gcodeEnd = regexp.MustCompile(`(?m)^M0?(2|30)\s*$`)

// end finds a program that breaks off.
func (r *Report) end(format string, data []byte) {
	if format == "gcode" && !gcodeEnd.Match(data) {
		r.fault("the program breaks off")
	}
}

// layers compares the names of layers.
func (r *Report) layers(got, want []string) {
	only := func(a, b []string) []string {
		return slices.DeleteFunc(slices.Clone(a), func(name string) bool { return slices.Contains(b, name) })
	}
	for _, name := range only(want, got) {
		r.fault("no layer %.40q", name)
	}
	for i, name := range only(got, want) {
		if i == 3 {
			r.fault("more layers")
			return
		}
		r.fault("layer %.40q is not due", name)
	}
}

// picture compares pictures pixel by pixel.
func (r *Report) picture(got, want []byte) error {
	if bytes.Equal(got, want) {
		return nil
	}
	a, err := pixels(got)
	if err != nil {
		return err
	}
	b, err := pixels(want)
	if err != nil {
		return err
	}
	if a.Bounds() != b.Bounds() {
		r.fault("picture of %v pixels, %v due", a.Bounds().Size(), b.Bounds().Size())
		return nil
	}
	n := 0
	for i := 0; i < len(a.Pix); i += 4 {
		if !bytes.Equal(a.Pix[i:i+4], b.Pix[i:i+4]) {
			n++
		}
	}
	if n > 0 {
		r.fault("%d of %d pixels are of another colour", n, len(a.Pix)/4)
	}
	return nil
}

// maxPixels bounds the pictures that are compared, far more than ours have.
const maxPixels = 64 << 20

func pixels(data []byte) (*image.NRGBA, error) {
	config, err := png.DecodeConfig(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	if config.Width*config.Height > maxPixels {
		return nil, fmt.Errorf("picture of %d × %d pixels", config.Width, config.Height)
	}
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	out := image.NewNRGBA(img.Bounds())
	draw.Draw(out, out.Bounds(), img, img.Bounds().Min, draw.Src)
	return out, nil
}
