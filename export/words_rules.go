package export

// englishRules returns what is wrong, by the rule that is broken.
func englishRules() map[Rule]string {
	all := map[Rule]string{}
	for _, some := range []map[Rule]string{
		englishPlacesRules(), englishBoundsRules(), englishBroughtRules(), englishSVGRules(),
		englishDXFRules(), englishOwnRules(), englishPDFRules(), englishWrittenRules(),
	} {
		for rule, text := range some {
			all[rule] = text
		}
	}
	return all
}

func englishPlacesRules() map[Rule]string {
	return map[Rule]string{
		InSVG:         "SVG: %v",
		InDXF:         "DXF: %v",
		InPDF:         "PDF: %v",
		InPlot:        "HP-GL: %v",
		InPicture:     "PNG: %v",
		InMachine:     "machine: %v",
		AtProgramLine: "G-code: line %d: %v",
		AtPage:        "PDF: page %d: %v",
		AtPDFKey:      "PDF: %s: %v",
		AtLine:        "line %d: %v",
		AtKey:         "%s: %v",
		AtEntity:      "line %d: %.40q: %v",
		AtHandle:      "line %d: %.40q %.20q: %v",
		AtElement:     "%s %.60q: %v",
		AtUse:         "use %.60q: %s: %v",
		AtSymbol:      "symbol %.60q: %v",
		AtTransform:   "transform %.20s: %v",
		AtLayer:       "layer %.60q: %v",
		AtLayerKey:    "layer %s: %v",
		AtBlock:       "block %.60q: %v",
		AtResources:   "resources: %v",
		AtInstruction: "%.2s%.30s: %v",
		AtDrawing:     "drawing %.60q: %v",
		AtDrawnLine:   "drawing %.60q: line %.60q: %v",
		AtDrawnLabel:  "drawing %.60q: %s %.60q: %v",
		AtStroke:      "stroke for %s: %v",
		WithLeftOut:   "%v (left out: %s)",
	}
}

func englishBoundsRules() map[Rule]string {
	return map[Rule]string{
		TooLarge:                "larger than %d MB",
		PlotTooLarge:            "HP-GL: larger than %d MB",
		TooManyPoints:           "too many points",
		TooManyLines:            "too many lines",
		TooManyProgramLines:     "G-code: too many lines",
		TooManyLinesAndPoints:   "too many lines and points",
		TooManyAtLine:           "line %d: too many lines and points",
		TooManyGroups:           "too many groups",
		TooManyObjects:          "too many objects",
		TooManyObjectsAndPoints: "too many objects and points",
		TooManyOperands:         "too many operands",
		TooManyOnPath:           "path of too many points",
		MoreNumbers:             "more than %d numbers",
		MoreRules:               "style sheets of more than %d rules",
		GroupsTooDeep:           "groups nested deeper than %d",
		BlocksTooDeep:           "blocks nested deeper than %d",
		ObjectsTooDeep:          "objects nested too deeply",
		StatesTooDeep:           "states nested too deeply",
		MarksTooDeep:            "marked content nested too deeply",
		EdgesTooMany:            "outlines of %d points: at most %d are read",
		PathsTooMany:            "%d paths: at most %d are read",
		OutlinesTooMany:         "%d outlines: at most %d are read",
		PathTooFine:             "%s has %d points: at most %d are read",
		SplineTooFine:           "spline through %d points: at most %d are read",
		PointNotFinite:          "a point is not finite",
		NamedPointNotFinite:     "%.60q: a point is not finite",
		ElementNotFinite:        "%s %.60q: a point is not finite",
	}
}

func englishBroughtRules() map[Rule]string {
	return map[Rule]string{
		NotDrawing:     "cannot be read as a drawing",
		Compressed:     "the file is compressed: save it as plain SVG",
		CompressedSVG:  "the file is compressed (gzip, as in .svgz): save it as plain SVG",
		EndingUnknown:  "the name does not end in .svg or .dxf",
		SVGWithoutUnit: "the file does not say how wide it is in a unit of length (%s %.20q)",
		DXFWithoutUnit: "the file names no unit of length ($INSUNITS)",
		NoClosedPath:   "no closed path",
		PathHuge:       "%s is %.0f × %.0f mm large: is the unit right?",
		PathEmpty:      "%s encloses nothing",
		PathSmall:      "%s encloses less than a square millimetre",
		PathOpen:       "%s is open by %.2f mm at %.1f, %.1f: close it, or take it out",
		PathEndsNear:   "%s ends %.2f mm from %s, at %.1f, %.1f: join them, or take them out",
		PathTouches:    "%s touches itself at %.1f, %.1f",
		PathCrosses:    "%s crosses itself at %.1f, %.1f, as a figure of eight does: part it there into outlines of their own",
		PathsCross:     "%s and %s cross or touch at %.1f, %.1f",
		LineOutside:    "the %s line %.40q lies in no outline",
		PathNumber:     "path %d",
		PathNamed:      "path %d (%.40s)",
	}
}

func englishSVGRules() map[Rule]string {
	return map[Rule]string{
		NoSVG:            "no svg element at the root",
		SheetElsewhere:   "a style sheet in a file of its own is not read: save the drawing with its styles inside",
		ElementUnread:    "%s %.60q is not read: take it out, or turn it into paths",
		PartHidden:       "%s hides a part of it: cut the outlines themselves",
		OneLanguage:      "it is drawn for one language alone: take the condition out",
		Moving:           "%s moves it: take it out",
		UseOfNothing:     "use %.60q: there is no %.60q in the file",
		UseOfUses:        "use %.60q: clones within clones, more than %d",
		UseOfViewBox:     "use %.60q: a symbol with a viewBox is not read, unlink it first",
		MediumUnread:     "a style sheet for the medium %.20q is not read: write its rules into the objects",
		StylesUnread:     "the style sheet at %.30q is not read: write its rules into the objects",
		SelectorUnread:   "the style sheet's selector %.30q is not read: write its rule into the objects",
		SelectorMissing:  "a style sheet has a rule without a selector",
		StyleUnread:      "%s in a style is not read: %q",
		TransformOrigin:  "transform-origin %q is not read",
		TransformUnread:  "transform %.40q",
		TransformNumbers: "transform %.20q with %d numbers",
		PathNoMove:       "path does not begin with a move",
		NumberAt:         "number %.20q at position %d",
		ArcFlagAt:        "arc flag at position %d",
		CommandAt:        "command %q at position %d",
		PointsUnread:     "points %.30q",
		LengthUnread:     "length %.30q",
		NumberUnread:     "number %.20q",
		ViewBoxUnread:    "viewBox %.60q",
		ViewBoxSize:      "viewBox of %g × %g units",
		SizeMissing:      "neither %s nor viewBox",
		SizeOff:          "%s of the sheet is %g mm",
		RatioUnread:      "preserveAspectRatio %.30q",
		RatioSlices: "preserveAspectRatio slice cuts off a part of the drawing: give width and height the shape of " +
			"the viewBox",
	}
}

func englishDXFRules() map[Rule]string {
	return map[Rule]string{
		UnitOff:       "unit of %g mm",
		BlockMissing:  "block %.60q is inserted but not there",
		BlockRows:     "a block in rows and columns is not read, explode it first",
		CurveUnread:   "this kind of curve is not read, turn it into polylines first",
		MeshUnread:    "a mesh is no outline",
		NoVertex:      "%.20q among the vertices",
		SplineEmpty:   "a spline without points",
		SplineDegree:  "spline of degree %d: want 1 to %d",
		SplineKnots:   "spline of degree %d with %d control points and %d knots",
		SplineWeights: "spline with %d weights for %d control points",
		SplineFalls:   "knots that do not rise",
		SplineWeight:  "weight %g",
		SplineParted: "a closed spline whose points do not come back to the first is not read, turn it into " +
			"polylines first",
		SplineLoose: "%.60s is a spline of points alone, whose ends other programs may draw otherwise: give it " +
			"directions there, or turn it into a polyline",
		GroupNumber:  "group %d: number %.20q",
		GroupInteger: "group %d: integer %.20q",
		GroupBare:    "line %d: group code without value",
		GroupCode:    "line %d: group code %.20q",
		EndMissing:   "file ends before EOF",
	}
}

func englishOwnRules() map[Rule]string {
	return map[Rule]string{
		ProgramNameless:    "G-code: no comment that names the sheet",
		CommentOpen:        "comment without an end",
		CommentSheet:       "sheet %.40q",
		WordMissing:        "%.20q where a word is due",
		WordUnread:         "word %.20q",
		WordP:              "P without G4",
		WordStrange:        "word %c: not as we write it",
		GStrange:           "G%g: not as we write it",
		MStrange:           "M%g: not as we write it",
		PlotSizeMissing:    "HP-GL: no plot size",
		PlotSizeBroken:     "plot size of two numbers is due",
		InstructionUnread:  "instruction %q",
		InstructionStrange: "not as we write it",
		CoordinatesOdd:     "odd number of coordinates",
		PictureSize:        "picture of %d × %d pixels",
		PictureScale:       "PNG: names no resolution",
	}
}

func englishPDFRules() map[Rule]string {
	return map[Rule]string{
		NoPDF:             "no PDF file",
		TableMissing:      "no cross-reference table",
		TableStrange:      "no plain cross-reference table: not as we write it",
		TableBroken:       "cross-reference table is broken",
		TrailerMissing:    "no trailer",
		ChangedLater:      "changed after it was written",
		NumberDue:         "%.40q where a number is due",
		ObjectGone:        "object %d is missing",
		ObjectElsewhere:   "object %d is not where the table says",
		ObjectBroken:      "object %d is broken",
		ObjectNoStream:    "object %d is no stream",
		ObjectCutOff:      "object %d is cut off",
		DictionaryMissing: "a dictionary is missing",
		StreamMissing:     "a stream is missing",
		PackedStrange:     "packed in a way we do not write",
		UnpackedTooLarge:  "too large when unpacked",
		ReferenceBroken:   "reference without a number",
		KeyNoName:         "dictionary key is no name",
		HexUnread:         "hexadecimal string %.20q",
		EndUnexpected:     "unexpected end",
		OnePageDue:        "PDF: %d pages where one is due",
		PagesMissing:      "no list of pages",
		PagesGrouped:      "pages in groups: not as we write them",
		PageNoSize:        "no page size",
		PageSize:          "page of %g × %g mm",
		OperandsOff:       "%d operands where %d are due",
		OperandNoNumber:   "operand is no number",
		OperatorStrange:   "operator %s: not as we write it",
		ContentEnds:       "marked content ends that never began",
		LineNoStart:       "line without a start",
	}
}

func englishWrittenRules() map[Rule]string {
	return map[Rule]string{
		NoDrawings:    "PDF: no drawings",
		PagesFound:    "PDF: %d pages found of %d",
		OriginUnknown: "origin %d is no corner",
		WorkUnknown:   "kind of work %d is not known",
		ToolUnknown:   "tool %d is not known",
		JobsOff:       "jobs for %d kinds of work, want %d",
		SettingOff:    "%s %g: want %g to %g %s",
		TabsByKnife:   "holding tabs: a drag knife cannot leave any, it would lose its direction",
		KerfTooWide:   "%.60q is too narrow for a kerf of %g mm",
		SheetScale:    "sheet %.60q: scale %g: want %g to %g",
		SheetSize:     "drawing %.60q: sheet of %g × %g mm, want 1 to %g mm",
		SheetLines:    "drawing %.60q: %d lines and labels, want at most %d",
		SheetPoints:   "drawing %.60q: %d points, want at most %d",
		LineTooShort:  "%d points are no line",
		LabelOff:      "height %g mm, turn %g at %v cannot be lettered",
		LabelLong:     "text of %d bytes, want at most %d",
		PointNumber:   "point %d is not finite",
		PointOutside:  "point %d at %v lies outside the sheet",
		ScaleUnread:   "scale %.20q: want one such as 1:1, 1:5 or 2:1",
		ScaleOff:      "scale %g: want %g to %g",
		CorrectionOff: "correction %g along %s: want %g to %g",
		ThinOff:       "points left out within %g mm: want 0 to %g mm",
		ArcsOff:       "arcs within %g mm: want 0 to %g mm",
		BarsUnread: "measured bars %.30q: want what the 100 mm bars measure along x and y, such as 99.6x100.2, or " +
			"the 4 in bars in inches, such as 3.98x4.01",
		BarOffByTenth: "a bar of %.6g %[3]s measured as %.6[2]g %[3]s: more than a tenth off, measure again",
		WidthOff:      "width %g mm: want %g to %g mm",
		DashesOff:     "%d dash lengths: want pairs of line and gap, at most %d lengths",
		DashOff:       "dash %g mm: want more than 0, at most %g mm",
		ColourUnread:  "colour %.20q: want # and six hex digits, such as #d55e00",
		FormatUnknown: "format %.30q: want one of %s",
		PaperUnknown:  "paper %.30q: want one of %s",
		PaperSmall:    "paper %.30q of %g × %g mm is too small for the check bars",
		OverlapOff:    "overlap of %g mm between pages: want 6 to 50 mm",
		PagesTooMany:  "drawing %.60q: %d pages of %s, want at most %d: take a smaller scale or larger paper",
		CombSlots:     "comb of %d slots: want 1 to 100",
		CombBoard:     "comb of a board %g mm thick: want 0.2 to 50 mm",
		CombKerfs:     "comb for kerfs of %g to %g mm: want less than the board's thickness of %g mm",
		FileExists:    "file exists already",
		PipeEmpty:     "a pipe that nobody writes into",
		Unread:        "cannot be read",
		NotPlain:      "%s: not a plain file, left alone: %v",
		FolderShut:    "%s: the folder cannot be written into: %v",
		FolderBusy:    "%s: another run has been writing into this folder for ten seconds; wait for it, or name another place",
		NotOfDesign:   "%s: %v and was not written for this design; name another place, or allow it to be replaced",
	}
}
