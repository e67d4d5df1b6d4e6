package design

import "reflect"

// OtherStock returns the first key by which the cloths and sheets of a design are not
// those of another, with the value that each has, – where one has none; no key where
// they are alike.
func OtherStock(a, b Design) (key Key, mine, other string) {
	k := allKeys()
	for _, table := range []Key{KeyCloth, KeySackCloth, KeyTarpCloth, KeyLiningCloth, KeyCoverCloth, KeySheet} {
		for _, r := range k.in(table) {
			if _, isList := k.list(r.table()); isList {
				continue
			}
			x, y := r.get(&a), r.get(&b)
			if !reflect.DeepEqual(x, y) {
				return r.key, r.told(x), r.told(y)
			}
		}
	}
	if !reflect.DeepEqual(a.Cloth.Flaws, b.Cloth.Flaws) {
		return KeyClothFlaw, "–", "–"
	}
	return "", "", ""
}

// told returns a value as a file has it, – for one that is not given.
func (r row) told(v any) string {
	if v == nil || r.absent(v) {
		return "–"
	}
	return r.written(v)
}
