package svg

import (
	"math"
	"strconv"
	"strings"

	"github.com/beevik/etree"

	"slingloft/export"
	"slingloft/outline/geom"
)

// readSheet reads the size and returns the map from user units to mm, y upwards. unit
// is the length of a user unit, mm, where the file does not give it, 0 for none.
func readSheet(root *etree.Element, unit float64) (export.Drawing, geom.Affine, error) {
	d := export.Drawing{Title: childText(root, "title")}
	box, err := numbers(attr(root, "viewBox"), 4)
	if err != nil || (len(box) != 0 && len(box) != 4) {
		return d, geom.Identity(), export.Refuse(export.ViewBoxUnread, attr(root, "viewBox"))
	}
	hasBox := len(box) == 4
	var size [2]float64
	for i, name := range []string{"width", "height"} {
		text := strings.TrimSpace(attr(root, name))
		unsaid := text == "" || text == "auto" || strings.HasSuffix(text, "%")
		switch {
		case unsaid && !(unit > 0):
			return d, geom.Identity(), export.Refuse(export.SVGWithoutUnit, name, text)
		case unsaid && hasBox:
			size[i] = box[2+i] * unit
		case unsaid:
			return d, geom.Identity(), export.Refuse(export.SizeMissing, name)
		default:
			if size[i], err = length(text); err != nil {
				return d, geom.Identity(), export.Refuse(export.AtKey, name, err)
			}
		}
		if !export.Inside(size[i], 1e-3, export.MaxSize) {
			return d, geom.Identity(), export.Refuse(export.SizeOff, name, size[i])
		}
	}
	d.Width, d.Height = size[0], size[1]
	if !hasBox {
		box = []float64{0, 0, size[0] / mmPerPixel, size[1] / mmPerPixel}
	}
	if !(box[2] > 0 && box[3] > 0) {
		return d, geom.Identity(), export.Refuse(export.ViewBoxSize, box[2], box[3])
	}
	m, err := fitted(attr(root, "preserveAspectRatio"), box, size)
	return d, m, err
}

// fitted returns the map from the units of a viewBox to a sheet in mm, y upwards, as
// preserveAspectRatio says where their shapes differ (SVG 1.1, section 7.8).
func fitted(ratio string, box []float64, size [2]float64) (geom.Affine, error) {
	const alike = 1e-6 // of the scale
	words := strings.Fields(strings.TrimPrefix(strings.TrimSpace(ratio), "defer "))
	if len(words) == 0 {
		words = []string{"xMidYMid"}
	}
	kx, ky := size[0]/box[2], size[1]/box[3]
	differ := math.Abs(kx-ky) > alike*kx
	var part [2]float64 // of the room left over, before the picture
	if words[0] != "none" {
		align := words[0]
		shares := map[string]float64{"Min": 0, "Mid": 0.5, "Max": 1}
		ok := len(align) == 8 && align[0] == 'x' && align[4] == 'Y'
		for i := range part {
			if ok {
				part[i], ok = shares[align[1+4*i:4+4*i]]
			}
		}
		if !ok || len(words) > 2 || len(words) == 2 && words[1] != "meet" && words[1] != "slice" {
			return geom.Affine{}, export.Refuse(export.RatioUnread, ratio)
		}
		if differ && len(words) == 2 && words[1] == "slice" {
			return geom.Affine{}, export.Refuse(export.RatioSlices)
		}
		kx = math.Min(kx, ky)
		ky = kx
	}
	dx := part[0] * (size[0] - float64(kx*box[2]))
	dy := part[1] * (size[1] - float64(ky*box[3]))
	return geom.Affine{A: kx, D: -ky, E: dx - float64(kx*box[0]), F: size[1] - dy + float64(ky*box[1])}, nil
}

// mmPerPixel is the CSS pixel, a 96th of an inch.
const mmPerPixel = 25.4 / 96

// length reads a length with its unit as mm.
func length(text string) (float64, error) {
	text = strings.TrimSpace(text)
	units := []struct {
		suffix string
		mm     float64
	}{{"mm", 1}, {"cm", 10}, {"in", 25.4}, {"pt", 25.4 / 72}, {"pc", 25.4 / 6}, {"px", mmPerPixel}, {"Q", 0.25}, {"", mmPerPixel}}
	for _, u := range units {
		if bare, ok := strings.CutSuffix(text, u.suffix); ok {
			v, err := strconv.ParseFloat(strings.TrimSpace(bare), 64)
			if err != nil || math.IsNaN(v) || math.Abs(v) > maxCoordinate {
				break
			}
			return v * u.mm, nil
		}
	}
	return 0, export.Refuse(export.LengthUnread, text)
}
