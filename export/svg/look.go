package svg

import (
	"slingloft/export"

	"slices"
	"strconv"
	"strings"

	"github.com/beevik/etree"
)

// property is a property of the looks with what it is where nothing sets it.
type property struct {
	name, initial string
	inherited     bool
}

// properties are those by which an object is seen or not, or looks as it does (SVG
// 1.1, appendix P; those of SVG 2 that drawing programs write).
var properties = [...]property{
	{"display", "inline", false}, {"visibility", "visible", true}, {"opacity", "1", false}, {"color", "#000000", true},
	{"fill", "#000000", true}, {"fill-opacity", "1", true}, {"fill-rule", "nonzero", true},
	{"stroke", "none", true}, {"stroke-opacity", "1", true}, {"stroke-width", "1", true},
	{"stroke-dasharray", "none", true}, {"stroke-dashoffset", "0", true},
	{"stroke-linecap", "butt", true}, {"stroke-linejoin", "miter", true}, {"stroke-miterlimit", "4", true},
	{"clip-path", "none", false}, {"mask", "none", false}, {"filter", "none", false},
	{"marker-start", "none", true}, {"marker-mid", "none", true}, {"marker-end", "none", true},
	{"mix-blend-mode", "normal", false}, {"vector-effect", "none", false}, {"paint-order", "normal", true},
	{"transform", "none", false},
}

// moving are properties that change an outline in ways that are not read.
const moving = " translate rotate scale offset-path offset-distance offset-rotate offset-anchor offset-position motion-path " +
	"perspective zoom d x y x1 y1 x2 y2 cx cy r rx ry width height points transform-origin transform-box transform-style " +
	"animation animation-name transition content-visibility clip all "

// look is how an object is seen, by the names of properties.
type look map[string]string

// of returns the value of a property.
func (l look) of(name string) string {
	if v, ok := l[name]; ok {
		return v
	}
	for _, p := range properties {
		if p.name == name {
			return p.initial
		}
	}
	return ""
}

// within returns the look of an element in one with the look l: attributes, then the
// rules of the sheet, then the element's own style, then what is important.
func (l look) within(e *etree.Element, s sheet) (look, error) {
	set := map[string]string{}
	for _, p := range properties {
		if v := attr(e, p.name); v != "" {
			set[p.name] = strings.TrimSpace(v)
		}
	}
	var all []declaration
	for _, r := range s {
		if r.picks(e) {
			all = append(all, r.declarations...)
		}
	}
	all = append(all, declarations(attr(e, "style"))...)
	slices.SortStableFunc(all, func(a, b declaration) int { return boolInt(a.important) - boolInt(b.important) })
	for _, d := range all {
		switch {
		case strings.Contains(moving, " "+d.name+" ") && !harmless(d):
			return nil, export.Refuse(export.StyleUnread, d.name, short(d.value))
		case d.name == "marker":
			set["marker-start"], set["marker-mid"], set["marker-end"] = d.value, d.value, d.value
		default:
			set[d.name] = d.value
		}
	}
	if o := strings.TrimSpace(attr(e, "transform-origin")); o != "" && !zeros(o) {
		return nil, export.Refuse(export.TransformOrigin, short(o))
	}
	return l.inheriting(set)
}

// inheriting returns what is set with what is inherited of l.
func (l look) inheriting(set map[string]string) (look, error) {
	out := look{}
	for _, p := range properties {
		v, ok := set[p.name]
		switch {
		case strings.Contains(v, "var(") || strings.Contains(v, "calc(") || strings.Contains(v, "env("):
			return nil, export.Refuse(export.StyleUnread, p.name, short(v))
		case v == "inherit" || v == "unset" && p.inherited || v == "revert" || !ok && p.inherited:
			v = l.of(p.name)
		case !ok || v == "initial" || v == "unset":
			v = p.initial
		}
		out[p.name] = v
	}
	return out, nil
}

func boolInt(b bool) int {
	if b {
		return 1
	}
	return 0
}

func short(text string) string {
	if len(text) > 30 {
		return text[:30] + "…"
	}
	return text
}

// harmless reports whether a moving property has the value that it has by itself.
func harmless(d declaration) bool {
	switch d.name {
	case "transform-origin":
		return zeros(d.value)
	case "transform-box":
		return d.value == "view-box"
	case "content-visibility":
		return d.value == "visible"
	case "zoom":
		return d.value == "1"
	}
	return slices.Contains([]string{"none", "auto", "normal", "initial", "unset"}, d.value)
}

// zeros reports whether lengths are all nought.
func zeros(text string) bool {
	for _, w := range strings.Fields(text) {
		if mm, err := length(w); err != nil || mm != 0 {
			return false
		}
	}
	return true
}

// opacityOf reads an opacity, 1 where it is none.
func opacityOf(text string) float64 {
	part := 1.0
	bare, percent := strings.CutSuffix(strings.TrimSpace(text), "%")
	if percent {
		part = 100
	}
	if v, err := strconv.ParseFloat(bare, 64); err == nil {
		return v / part
	}
	return 1
}

// painted reports whether a stroke or a filling has a colour, and whether one can see
// through all of it.
func (l look) painted(kind string) (painted, clear bool) {
	paint := strings.ToLower(l.of(kind))
	if paint == "currentcolor" {
		paint = strings.ToLower(l.of("color"))
	}
	if paint == "none" || kind == "stroke" && nought(l.of("stroke-width")) {
		return false, false
	}
	return true, opacityOf(l.of(kind+"-opacity")) <= 0 || clearColour(paint)
}

func nought(text string) bool {
	mm, err := length(text)
	return err == nil && mm == 0
}

// clearColour reports whether a colour is written as one of no opacity.
func clearColour(c string) bool {
	if c == "transparent" {
		return true
	}
	if hex, ok := strings.CutPrefix(c, "#"); ok {
		return len(hex) == 4 && hex[3] == '0' || len(hex) == 8 && hex[6:] == "00"
	}
	name, args, ok := strings.Cut(strings.TrimSuffix(c, ")"), "(")
	if !ok || !slices.Contains([]string{"rgb", "rgba", "hsl", "hsla"}, name) {
		return false
	}
	parts := strings.FieldsFunc(args, func(r rune) bool { return r == ',' || r == '/' || r == ' ' })
	return len(parts) == 4 && opacityOf(parts[3]) <= 0
}
