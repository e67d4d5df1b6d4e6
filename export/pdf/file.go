package pdf

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"io"
	"strconv"
	"unicode/utf16"

	"slingloft/export"
)

// What is read at most.
const (
	maxBytes   = 256 << 20
	maxObjects = 1_000_000
	maxPages   = 10_000
)

// file is a PDF file with the place of each object.
type file struct {
	data    []byte
	offsets map[ref]int
	trailer dict
	left    int64 // bytes of streams that may still be unpacked
}

// open reads the cross-reference table at the end of the file.
func open(r io.Reader) (*file, error) {
	data, err := io.ReadAll(io.LimitReader(r, maxBytes+1))
	if err != nil {
		return nil, err
	}
	if len(data) > maxBytes {
		return nil, export.Refuse(export.TooLarge, maxBytes>>20)
	}
	f := &file{data: data, offsets: map[ref]int{}, left: maxBytes}
	at := bytes.LastIndex(data, []byte("startxref"))
	if !bytes.HasPrefix(data, []byte("%PDF-")) || at < 0 {
		return nil, export.Refuse(export.NoPDF)
	}
	l := &lexer{text: data, pos: at + len("startxref")}
	start, err := l.integer()
	if err != nil || start >= len(data) {
		return nil, export.Refuse(export.TableMissing)
	}
	return f, f.readTable(start)
}

// integer reads a number that is not negative.
func (l *lexer) integer() (int, error) {
	v, err := l.next()
	if err != nil {
		return 0, err
	}
	n, ok := v.(float64)
	if !ok || n < 0 || n != float64(int(n)) {
		return 0, export.Refuse(export.NumberDue, fmt.Sprint(v))
	}
	return int(n), nil
}

// readTable reads one plain cross-reference table and the trailer behind it.
// Files that another program has changed have further tables or packed ones,
// and are refused.
func (f *file) readTable(start int) error {
	l := &lexer{text: f.data, pos: start}
	if v, err := l.next(); err != nil || v != any(keyword("xref")) {
		return export.Refuse(export.TableStrange)
	}
	for {
		v, err := l.next()
		if err != nil {
			return err
		}
		if v == any(keyword("trailer")) {
			break
		}
		first, ok := v.(float64)
		count, err := l.integer()
		if !ok || err != nil || first < 0 || first > maxObjects || count > maxObjects {
			return export.Refuse(export.TableBroken)
		}
		for i := range count {
			offset, err := l.integer()
			if err != nil {
				return err
			}
			l.skip()
			l.word() // generation
			if kind, err := l.next(); err != nil {
				return err
			} else if kind == any(keyword("n")) && offset < len(f.data) {
				f.offsets[ref(int(first)+i)] = offset
			}
		}
	}
	v, err := l.next()
	trailer, ok := v.(dict)
	if err != nil || !ok {
		return export.Refuse(export.TrailerMissing)
	}
	if _, ok := trailer["Prev"]; ok {
		return export.Refuse(export.ChangedLater)
	}
	f.trailer = trailer
	return nil
}

// get returns what v is or refers to.
func (f *file) get(v any) (any, error) {
	r, ok := v.(ref)
	if !ok {
		return v, nil
	}
	l, err := f.object(r)
	if err != nil {
		return nil, err
	}
	return l.next()
}

// object returns a lexer that stands behind "N 0 obj".
func (f *file) object(r ref) (*lexer, error) {
	offset, ok := f.offsets[r]
	if !ok {
		return nil, export.Refuse(export.ObjectGone, r)
	}
	l := &lexer{text: f.data, pos: offset}
	number, err := l.integer()
	if err != nil || ref(number) != r {
		return nil, export.Refuse(export.ObjectElsewhere, r)
	}
	l.skip()
	l.word()
	if v, err := l.next(); err != nil || v != any(keyword("obj")) {
		return nil, export.Refuse(export.ObjectBroken, r)
	}
	return l, nil
}

// dict returns the dictionary that v is or refers to.
func (f *file) dict(v any) (dict, error) {
	got, err := f.get(v)
	if err != nil {
		return nil, err
	}
	d, ok := got.(dict)
	if !ok {
		return nil, export.Refuse(export.DictionaryMissing)
	}
	return d, nil
}

// stream returns the unpacked stream of an object.
func (f *file) stream(v any) ([]byte, error) {
	r, ok := v.(ref)
	if !ok {
		return nil, export.Refuse(export.StreamMissing)
	}
	l, err := f.object(r)
	if err != nil {
		return nil, err
	}
	head, err := l.next()
	d, ok := head.(dict)
	if err != nil || !ok {
		return nil, export.Refuse(export.ObjectNoStream, r)
	}
	length, err := f.get(d["Length"])
	n, ok := length.(float64)
	if w, _ := l.next(); err != nil || !ok || w != any(keyword("stream")) {
		return nil, export.Refuse(export.ObjectNoStream, r)
	}
	body := bytes.TrimPrefix(bytes.TrimPrefix(l.text[l.pos:], []byte("\r")), []byte("\n"))
	if n < 0 || int(n) > len(body) {
		return nil, export.Refuse(export.ObjectCutOff, r)
	}
	return f.unpacked(body[:int(n)], d["Filter"])
}

func (f *file) unpacked(body []byte, filter any) ([]byte, error) {
	switch filter {
	case nil:
		return body, nil
	case any(name("FlateDecode")):
	default:
		return nil, export.Refuse(export.PackedStrange)
	}
	z, err := zlib.NewReader(bytes.NewReader(body))
	if err != nil {
		return nil, err
	}
	out, err := io.ReadAll(io.LimitReader(z, f.left+1))
	if err != nil {
		return nil, err
	}
	if f.left -= int64(len(out)); f.left < 0 {
		return nil, export.Refuse(export.UnpackedTooLarge)
	}
	return out, nil
}

// text returns a text string in UTF-16 or in bytes.
func text(v any) string {
	b, ok := v.([]byte)
	if !ok {
		return ""
	}
	if !bytes.HasPrefix(b, []byte{0xFE, 0xFF}) {
		return export.OneLine(string(b))
	}
	var units []uint16
	for i := 2; i+1 < len(b); i += 2 {
		units = append(units, uint16(b[i])<<8|uint16(b[i+1]))
	}
	return export.OneLine(string(utf16.Decode(units)))
}

// layers returns the names of the optional content groups by the names under
// which a page's content knows them.
func (f *file) layers(page dict) (map[name]string, error) {
	resources, err := f.dict(page["Resources"])
	if err != nil {
		return nil, export.Refuse(export.AtResources, err)
	}
	out := map[name]string{}
	properties, err := f.dict(resources["Properties"])
	if err != nil {
		return out, nil // a page without layers
	}
	for i := range len(properties) {
		key := name("OC" + strconv.Itoa(i))
		group, err := f.dict(properties[key])
		if err != nil {
			return nil, export.Refuse(export.AtLayerKey, key, err)
		}
		out[key] = text(group["Name"])
	}
	return out, nil
}
