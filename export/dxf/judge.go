package dxf

import (
	"bytes"
	"errors"
	"io"
	"slices"
	"strconv"
	"strings"

	"slingloft/export"
)

// faults compares all that Read does not give back and that a program which opens the
// file acts on: colours, line types, widths and states of layers and entities, texts and
// points, units, and whatever stands behind the end.
func faults(got, due []byte) ([]export.Note, error) { return export.LookFaultsOf(got, due, looksOf) }

// judge gathers the looks of a file.
type judge struct {
	*scanner
	looks  export.Looks
	tables export.Looks // records of tables, of which those count that are used
	used   map[string]bool
}

func looksOf(data []byte) (export.Looks, error) {
	j := judge{newScanner(bytes.NewReader(data)), export.Looks{}, export.Looks{}, map[string]bool{}}
	if err := j.file(); err != nil {
		return nil, export.Refuse(export.InDXF, err)
	}
	for {
		text, err := j.text()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, export.Refuse(export.InDXF, err)
		}
		if strings.TrimSpace(text) != "" {
			j.looks.Add("text behind the end", export.Properties{"text": text})
			break
		}
	}
	for range 2 { // layers name line types
		for name, all := range j.tables {
			if !j.used[strings.ToLower(name)] {
				continue
			}
			j.looks[name] = all
			for _, p := range all {
				j.used["line type "+strings.ToLower(p["line type"])] = true
			}
		}
	}
	return j.looks, nil
}

// file follows the file to its end.
func (j judge) file() error {
	return j.sections(func(section string, p pair) (err error) {
		switch {
		case section == "HEADER" && p.code == 9:
			err = j.variable(p.value)
		case section == "TABLES" && p.code == 0 && (p.value == "LAYER" || p.value == "LTYPE"):
			err = j.record(p.value)
		case section == "ENTITIES" && p.code == 0:
			err = j.object(p.value, "")
		case section == "BLOCKS" && p.code == 0 && p.value == "BLOCK":
			err = j.block()
		}
		return err
	})
}

// Variables of the header by which the file is drawn otherwise.
const drawnBy = " $INSUNITS $MEASUREMENT $LTSCALE $PLINEGEN "

func (j judge) variable(name string) error {
	p, err := j.next()
	if err == nil && strings.Contains(drawnBy, " "+name+" ") {
		j.looks.Add("header "+name, export.Properties{"value": plainValue(p.value)})
	}
	return err
}

// groups returns the groups of an object behind its kind, but for its handles and the
// data of other programs.
func (j judge) groups() ([]pair, error) {
	var out []pair
	inner := false
	for {
		p, err := j.next()
		if err != nil {
			return out, err
		}
		if p.code == 0 {
			j.back(p)
			return out, nil
		}
		if p.code == 102 {
			inner = strings.HasPrefix(p.value, "{")
			continue
		}
		if inner || slices.Contains([]int{5, 105, 330, 350, 360, 390, 100}, p.code) {
			continue
		}
		if len(out) > export.MaxPoints {
			return out, export.Refuse(export.TooManyGroups)
		}
		out = append(out, p)
	}
}

// record takes down a record of a table.
func (j judge) record(kind string) error {
	groups, err := j.groups()
	if err != nil {
		return err
	}
	name, p := "", export.Properties{}
	for _, g := range groups {
		switch {
		case g.code == 2:
			name = g.value
		case g.code == 3 || kind == "LTYPE" && (g.code == 70 || g.code == 72 || g.code == 74):
		case kind == "LAYER" && g.code == 62:
			if strings.HasPrefix(g.value, "-") {
				p["state"] = strings.TrimSpace(p["state"] + " off")
			}
			p["colour"] = strings.TrimPrefix(g.value, "-")
		case kind == "LAYER" && g.code == 70:
			// Of the flags 1 freezes and 4 locks it; others say how it is referred to.
			if n, err := g.integer(); err == nil && n&5 != 0 {
				p["state"] = strings.TrimSpace(p["state"] + map[int]string{1: " frozen", 4: " locked", 5: " frozen locked"}[n&5])
			}
		default:
			set(p, "", g)
		}
	}
	j.tables.Add(map[string]string{"LAYER": "layer ", "LTYPE": "line type "}[kind]+name, p)
	return nil
}

// block takes down the objects of a block.
func (j judge) block() error {
	groups, err := j.groups()
	if err != nil {
		return err
	}
	head := export.Properties{}
	name := ""
	for _, g := range groups {
		switch g.code {
		case 2:
			name = g.value
		case 10, 20:
			set(head, "BLOCK", g)
		}
	}
	if strings.HasPrefix(strings.ToLower(name), "*paper_space") {
		name = "layout"
	}
	head["group 10"], head["group 20"] = plainValue(head["group 10"]), plainValue(head["group 20"])
	if !strings.HasPrefix(name, "*") && name != "layout" {
		j.looks.Add("block "+name, head)
	}
	for {
		p, err := j.next()
		if err != nil {
			return err
		}
		if p.code != 0 {
			continue
		}
		if p.value == "ENDBLK" {
			return nil
		}
		if p.value == "ENDSEC" || p.value == "EOF" {
			j.back(p)
			return nil
		}
		if err := j.object(p.value, "in block "+name+" "); err != nil {
			return err
		}
	}
}

// Kinds that Read gives back with all their points.
const followed = " LINE LWPOLYLINE POLYLINE VERTEX SEQEND "

// object takes down an entity.
func (j judge) object(kind, in string) error {
	if kind == "ENDBLK" || kind == "VIEWPORT" {
		_, err := j.groups()
		return err
	}
	groups, err := j.groups()
	if err != nil {
		return err
	}
	name, layer, app := "", "", ""
	p := export.Properties{"kind": kind}
	for _, g := range groups {
		switch {
		case g.code == 1001:
			app = g.value
		case g.code >= 1000:
			if app == application && g.code == 1000 {
				name += g.value
			}
		case g.code == 8:
			layer = g.value
			p["layer"] = g.value
		case strings.Contains(followed, " "+kind+" ") && (g.code >= 10 && g.code < 38 || g.code == 42 || g.code == 90 || g.code == 66):
		default:
			set(p, kind, g)
		}
	}
	j.used["layer "+strings.ToLower(layer)], j.used["line type "+strings.ToLower(p["line type"])] = true, true
	if name = unescaped(name); name == "" {
		name = in + kind + " on layer " + layer
	}
	j.looks.Add(name, p)
	return nil
}

// set takes down a group under the name of what it is, unless it says what holds
// without it.
func set(p export.Properties, kind string, g pair) {
	v := plainValue(g.value)
	for _, d := range [...]struct {
		code  int
		value string
	}{{6, "BYLAYER"}, {62, "256"}, {370, "-1"}, {60, "0"}, {67, "0"}, {38, "0"}, {39, "0"}, {43, "0"}, {40, "0"}, {41, "0"}, {48, "1"},
		{210, "0"}, {220, "0"}, {230, "1"}, {440, "0"}, {30, "0"}, {31, "0"}, {50, "0"}, {290, "1"}, {410, "Model"}, {70, "0"},
		{71, "0"}, {72, "0"}, {73, "0"}, {7, "STANDARD"}, {51, "0"}, {284, "0"}} {
		if g.code == d.code && strings.EqualFold(v, d.value) && !(kind == "TEXT" && (g.code == 40 || g.code == 41)) {
			return
		}
	}
	if kind == "TEXT" && g.code == 41 && v == "1" {
		return
	}
	name := map[int]string{1: "text", 6: "line type", 48: "line type scale", 60: "invisibility", 62: "colour", 67: "paper space",
		370: "line weight",
		420: "true colour", 440: "transparency", 290: "plotting", 38: "elevation", 39: "thickness", 410: "layout"}[g.code]
	if name == "" {
		name = "group " + strconv.Itoa(g.code)
	}
	if g.code == 6 {
		v = strings.ToLower(v) // names count whatever their case
	}
	p[name] = strings.TrimSpace(p[name] + " " + v)
}

// plainValue returns a number in one way of writing it, and text as it is.
func plainValue(v string) string {
	if n, err := strconv.ParseFloat(v, 64); err == nil {
		v = strings.TrimRight(export.Fixed(n, decimals), "0")
		v = strings.TrimSuffix(v, ".")
		if v == "" || v == "-" {
			v = "0"
		}
	}
	return v
}
