package dxf

import (
	"slingloft/export"
	"slingloft/export/style"
	"slingloft/outline/geom"
	"slingloft/outline/piece"
)

// table opens a table that will hold n records.
func (w *writer) table(name string, handle, n int) {
	w.all("0", "TABLE", "2", name)
	w.handle(5, handle)
	w.all("330", "0", "100", "AcDbSymbolTable")
	w.int(70, n)
}

// record opens a record of a table.
func (w *writer) record(kind string, owner int, class, name string) {
	w.raw(0, kind)
	if kind == "DIMSTYLE" {
		w.handle(105, w.next())
	} else {
		w.handle(5, w.next())
	}
	w.handle(330, owner)
	w.all("100", "AcDbSymbolTableRecord", "100", class)
	w.raw(2, name)
}

func (w *writer) tables(s style.Scheme, d export.Drawing) {
	w.all("0", "SECTION", "2", "TABLES")
	w.viewport(d)
	w.lineTypes(s)
	w.layers(s)
	w.table("STYLE", handleStyles, 1)
	w.record("STYLE", handleStyles, "AcDbTextStyleTableRecord", "Standard")
	w.all("70", "0", "40", "0.0", "41", "1.0", "50", "0.0", "71", "0", "42", "2.5", "3", "txt", "4", "", "0", "ENDTAB")
	w.table("VIEW", handleViews, 0)
	w.all("0", "ENDTAB")
	w.table("UCS", handleUCS, 0)
	w.all("0", "ENDTAB")
	w.table("APPID", handleApps, 2)
	w.record("APPID", handleApps, "AcDbRegAppTableRecord", "ACAD")
	w.int(70, 0)
	w.record("APPID", handleApps, "AcDbRegAppTableRecord", application)
	w.int(70, 0)
	w.all("0", "ENDTAB")
	w.table("DIMSTYLE", handleDims, 1)
	w.all("100", "AcDbDimStyleTable", "71", "1")
	w.record("DIMSTYLE", handleDims, "AcDbDimStyleTableRecord", "Standard")
	w.all("70", "0", "0", "ENDTAB")
	w.blockRecords()
	w.all("0", "ENDSEC")
}

// viewport shows the whole sheet when the file is opened.
func (w *writer) viewport(d export.Drawing) {
	w.table("VPORT", handleViewports, 1)
	w.record("VPORT", handleViewports, "AcDbViewportTableRecord", "*Active")
	w.all("70", "0", "10", "0.0", "20", "0.0", "11", "1.0", "21", "1.0")
	w.num(12, d.Width/2)
	w.num(22, d.Height/2)
	w.all("13", "0.0", "23", "0.0", "14", "10.0", "24", "10.0", "15", "10.0", "25", "10.0",
		"16", "0.0", "26", "0.0", "36", "1.0", "17", "0.0", "27", "0.0", "37", "0.0")
	w.num(40, d.Height*1.05)
	w.num(41, d.Width/d.Height)
	w.all("42", "50.0", "43", "0.0", "44", "0.0", "50", "0.0", "51", "0.0", "71", "0", "72", "100", "73", "1", "74", "3",
		"75", "0", "76", "0", "77", "0", "78", "0", "0", "ENDTAB")
}

// lineTypes writes the three types that every file has and one for each kind of
// work with dashes.
func (w *writer) lineTypes(s style.Scheme) {
	const fixed = 3
	w.table("LTYPE", handleTypes, fixed+len(piece.Works()))
	for _, name := range []string{"ByBlock", "ByLayer", "Continuous"} {
		w.record("LTYPE", handleTypes, "AcDbLinetypeTableRecord", name)
		w.all("70", "0", "3", "", "72", "65", "73", "0", "40", "0.0")
	}
	for _, work := range piece.Works() {
		stroke := s.Of(work)
		if len(stroke.Dash) == 0 {
			continue
		}
		total := 0.0
		for _, d := range stroke.Dash {
			total += d
		}
		w.record("LTYPE", handleTypes, "AcDbLinetypeTableRecord", typeName(stroke, work))
		w.all("70", "0", "3", "", "72", "65")
		w.int(73, len(stroke.Dash))
		w.num(40, total)
		for i, d := range stroke.Dash {
			if i%2 == 1 {
				d = -d // a gap
			}
			w.num(49, d)
			w.int(74, 0)
		}
	}
	w.all("0", "ENDTAB")
}

// layers writes the layer 0, which every file has, and one for each kind of work.
func (w *writer) layers(s style.Scheme) {
	works := piece.Works()
	w.table("LAYER", handleLayers, 1+len(works))
	w.record("LAYER", handleLayers, "AcDbLayerTableRecord", "0")
	w.all("70", "0", "62", "7", "6", "Continuous", "370", "25")
	for _, work := range works {
		stroke := s.Of(work)
		c := stroke.Colour
		w.record("LAYER", handleLayers, "AcDbLayerTableRecord", work.String())
		w.int(70, 0)
		w.int(62, aci(c))
		w.int(420, int(c.R)<<16|int(c.G)<<8|int(c.B))
		w.raw(6, typeName(stroke, work))
		w.int(370, lineWeight(stroke.Width))
	}
	w.all("0", "ENDTAB")
}

func (w *writer) blockRecords() {
	w.table("BLOCK_RECORD", handleBlocks, 2)
	for i, name := range []string{"*Model_Space", "*Paper_Space"} {
		w.all("0", "BLOCK_RECORD")
		w.handle(5, [...]int{handleModel, handlePaper}[i])
		w.handle(330, handleBlocks)
		w.all("100", "AcDbSymbolTableRecord", "100", "AcDbBlockTableRecord")
		w.raw(2, name)
	}
	w.all("0", "ENDTAB")
}

func (w *writer) blocks() {
	w.all("0", "SECTION", "2", "BLOCKS")
	for i, name := range []string{"*Model_Space", "*Paper_Space"} {
		record := [...]int{handleModel, handlePaper}[i]
		w.raw(0, "BLOCK")
		w.handle(5, w.next())
		w.handle(330, record)
		w.all("100", "AcDbEntity", "8", "0", "100", "AcDbBlockBegin", "2", name, "70", "0")
		w.point(geom.Point{})
		w.num(30, 0)
		w.all("3", name, "1", "")
		w.raw(0, "ENDBLK")
		w.handle(5, w.next())
		w.handle(330, record)
		w.all("100", "AcDbEntity", "8", "0", "100", "AcDbBlockEnd")
	}
	w.all("0", "ENDSEC")
}

// objects writes the root dictionary, which every file has, with an empty
// dictionary of groups.
func (w *writer) objects() {
	w.all("0", "SECTION", "2", "OBJECTS", "0", "DICTIONARY")
	w.handle(5, handleRoot)
	w.all("330", "0", "100", "AcDbDictionary", "281", "1", "3", "ACAD_GROUP")
	w.handle(350, handleGroups)
	w.raw(0, "DICTIONARY")
	w.handle(5, handleGroups)
	w.handle(330, handleRoot)
	w.all("100", "AcDbDictionary", "281", "1", "0", "ENDSEC")
}
