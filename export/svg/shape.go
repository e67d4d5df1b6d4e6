package svg

import (
	"slingloft/export"

	"fmt"
	"math"
	"strings"

	"github.com/beevik/etree"
)

// shapeData returns the path data of a basic shape, SVG 1.1 section 9, or "" for
// what is no shape.
func shapeData(e *etree.Element) (string, error) {
	switch e.Tag {
	case "path":
		return attr(e, "d"), nil
	case "polyline", "polygon":
		return polyData(e)
	}
	keys := map[string]string{
		"line": "x1 y1 x2 y2", "rect": "x y width height rx ry", "circle": "cx cy r", "ellipse": "cx cy rx ry",
	}[e.Tag]
	if keys == "" {
		return "", nil
	}
	var v [6]float64
	for i, key := range strings.Fields(keys) {
		text := attr(e, key)
		if text == "" {
			continue
		}
		mm, err := length(text) // the unit of bare numbers cancels below
		if err != nil {
			return "", export.Refuse(export.AtKey, key, err)
		}
		v[i] = mm / mmPerPixel
	}
	switch e.Tag {
	case "line":
		return fmt.Sprintf("M%f %fL%f %f", v[0], v[1], v[2], v[3]), nil
	case "circle":
		return ovalData(v[0], v[1], v[2], v[2]), nil
	case "ellipse":
		return ovalData(v[0], v[1], v[2], v[3]), nil
	}
	return rectData(v), nil
}

func polyData(e *etree.Element) (string, error) {
	data := attr(e, "points")
	if strings.Trim(data, " ,\t\r\n0123456789.+-eE") != "" {
		return "", export.Refuse(export.PointsUnread, data)
	}
	if strings.TrimSpace(data) == "" {
		return "", nil
	}
	if e.Tag == "polygon" {
		return "M" + data + "Z", nil
	}
	return "M" + data, nil
}

func ovalData(x, y, rx, ry float64) string {
	if !(rx > 0 && ry > 0) {
		return ""
	}
	return fmt.Sprintf("M%f %fA%f %f 0 0 1 %f %fA%f %f 0 0 1 %f %fZ", x+rx, y, rx, ry, x-rx, y, rx, ry, x+rx, y)
}

// rectData draws v = x, y, width, height, rx, ry.
func rectData(v [6]float64) string {
	x, y, w, h, rx, ry := v[0], v[1], v[2], v[3], v[4], v[5]
	if !(w > 0 && h > 0) {
		return ""
	}
	if rx == 0 {
		rx = ry
	}
	if ry == 0 {
		ry = rx
	}
	rx, ry = math.Min(rx, w/2), math.Min(ry, h/2)
	if !(rx > 0 && ry > 0) {
		return fmt.Sprintf("M%f %fH%fV%fH%fZ", x, y, x+w, y+h, x)
	}
	arc := func(tx, ty float64) string { return fmt.Sprintf("A%f %f 0 0 1 %f %f", rx, ry, tx, ty) }
	return fmt.Sprintf("M%f %fH%f", x+rx, y, x+w-rx) + arc(x+w, y+ry) + fmt.Sprintf("V%f", y+h-ry) + arc(x+w-rx, y+h) +
		fmt.Sprintf("H%f", x+rx) + arc(x, y+h-ry) + fmt.Sprintf("V%f", y+ry) + arc(x+rx, y) + "Z"
}
