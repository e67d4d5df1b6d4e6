package design

import (
	"fmt"
	"strings"
)

// Key is the full name of a value in a design file, such as "bed.span", or of a table.
// Values of a list carry their number, as in "extra[2].file".
type Key string

// Item returns the key of the element number i, from 1, of the list k.
func (k Key) Item(i int) Key { return Key(fmt.Sprintf("%s[%d]", k, i)) }

// In returns the key of that name in the table k; the top of the file is "".
func (k Key) In(name string) Key {
	if k == "" {
		return Key(name)
	}
	return k + "." + Key(name)
}

// Table returns the table that the key stands in, "" for the top of the file.
func (k Key) Table() Key { return k[:max(strings.LastIndexByte(string(k), '.'), 0)] }

// Name returns the key without its table.
func (k Key) Name() string { return string(k[strings.LastIndexByte(string(k), '.')+1:]) }

// Unnumbered returns the key without the number of an element of a list.
func (k Key) Unnumbered() Key {
	before, rest, numbered := strings.Cut(string(k), "[")
	_, after, _ := strings.Cut(rest, "]")
	if !numbered {
		return k
	}
	return Key(before + after)
}

// Listed returns keys one behind the other with a separator between them.
func Listed(keys []Key, separator string) string {
	words := make([]string, len(keys))
	for i, k := range keys {
		words[i] = string(k)
	}
	return strings.Join(words, separator)
}

// The keys of a design file and the tables that later stages ask for. Each has its row
// in the schema; a test holds that.
const (
	KeySheet               Key = "sheet"
	KeyMachine             Key = "machine"
	KeyExtra               Key = "extra"
	KeyAccuracyLevel       Key = "accuracy.level"
	KeyAccuracyMarking     Key = "accuracy.marking"
	KeyAccuracyReading     Key = "accuracy.reading"
	KeyAccuracyScatter     Key = "accuracy.scatter"
	KeyAccuracySet         Key = "accuracy.set"
	KeyBarDensity          Key = "bar.density"
	KeyBarEccentricity     Key = "bar.eccentricity"
	KeyBarMaterial         Key = "bar.material"
	KeyBarModulus          Key = "bar.modulus"
	KeyBarName             Key = "bar.name"
	KeyBarOuterDiameter    Key = "bar.outer_diameter"
	KeyBarPrice            Key = "bar.price"
	KeyBarStock            Key = "bar.stock"
	KeyBarTipDiameter      Key = "bar.tip_diameter"
	KeyBarTipReach         Key = "bar.tip_reach"
	KeyBarWall             Key = "bar.wall"
	KeyBarYield            Key = "bar.yield"
	KeyBedCompensate       Key = "bed.compensate"
	KeyBedCut              Key = "bed.cut"
	KeyBedEndGirth         Key = "bed.end_girth"
	KeyBedFootBar          Key = "bed.foot_bar"
	KeyBedFootDrop         Key = "bed.foot_drop"
	KeyBedFootGirth        Key = "bed.foot_girth"
	KeyBedFootHangAngle    Key = "bed.foot_hang_angle"
	KeyBedFootLeg          Key = "bed.foot_leg"
	KeyBedFootRadius       Key = "bed.foot_radius"
	KeyBedFootTail         Key = "bed.foot_tail"
	KeyBedHangAngle        Key = "bed.hang_angle"
	KeyBedHeadBar          Key = "bed.head_bar"
	KeyBedHeadDrop         Key = "bed.head_drop"
	KeyBedHeadGirth        Key = "bed.head_girth"
	KeyBedHeadLeg          Key = "bed.head_leg"
	KeyBedHeadRadius       Key = "bed.head_radius"
	KeyBedHeadTail         Key = "bed.head_tail"
	KeyBedLevelHooks       Key = "bed.level_hooks"
	KeyBedLift             Key = "bed.lift"
	KeyBedSameWallAngle    Key = "bed.same_wall_angle"
	KeyBedSeatRadius       Key = "bed.seat_radius"
	KeyBedSideCurve        Key = "bed.side_curve"
	KeyBedSideDepth        Key = "bed.side_depth"
	KeyBedSpan             Key = "bed.span"
	KeyBedThrust           Key = "bed.thrust"
	KeyBedUnderbodyRadius  Key = "bed.underbody_radius"
	KeyCapHem              Key = "cap.hem"
	KeyCapHollow           Key = "cap.hollow"
	KeyCapKind             Key = "cap.kind"
	KeyChannelDepth        Key = "channel.depth"
	KeyChannelKind         Key = "channel.kind"
	KeyChannelOpening      Key = "channel.opening"
	KeyChannelPresserFoot  Key = "channel.presser_foot"
	KeyChannelTurnUnder    Key = "channel.turn_under"
	KeyClothArealDensity   Key = "cloth.areal_density"
	KeyClothFlaw           Key = "cloth.flaw"
	KeyClothGap            Key = "cloth.gap"
	KeyClothJoins          Key = "cloth.joins"
	KeyClothLockingAngle   Key = "cloth.locking_angle"
	KeyClothMargin         Key = "cloth.margin"
	KeyClothName           Key = "cloth.name"
	KeyClothOneWay         Key = "cloth.one_way"
	KeyClothPrice          Key = "cloth.price"
	KeyClothStripStrength  Key = "cloth.strip_strength"
	KeyClothWarpStiffness  Key = "cloth.warp_stiffness"
	KeyClothWeftStiffness  Key = "cloth.weft_stiffness"
	KeyClothWidth          Key = "cloth.width"
	KeyCordLeg             Key = "cord.leg"
	KeyCordLegDiameter     Key = "cord.leg.diameter"
	KeyCordSide            Key = "cord.side"
	KeyCordSideDiameter    Key = "cord.side.diameter"
	KeyExtraAs             Key = "extra.as"
	KeyExtraCount          Key = "extra.count"
	KeyExtraFile           Key = "extra.file"
	KeyExtraFreeGrain      Key = "extra.free_grain"
	KeyExtraName           Key = "extra.name"
	KeyExtraStock          Key = "extra.stock"
	KeyHangBed             Key = "hang.bed"
	KeyHangDistance        Key = "hang.distance"
	KeyHangHeight          Key = "hang.height"
	KeyHangHookDiameter    Key = "hang.hook_diameter"
	KeyHangHookStrength    Key = "hang.hook_strength"
	KeyHangLine            Key = "hang.line"
	KeyHangLineDiameter    Key = "hang.line.diameter"
	KeyHangLineName        Key = "hang.line.name"
	KeyHangShelter         Key = "hang.shelter"
	KeyHangSpare           Key = "hang.spare"
	KeyLoadFrom            Key = "load.from"
	KeyLoadModel           Key = "load.model"
	KeyLoadTo              Key = "load.to"
	KeyMachineCalibrationX Key = "machine.calibration_x"
	KeyMachineCalibrationY Key = "machine.calibration_y"
	KeyMachineAir          Key = "machine.air"
	KeyMachineController   Key = "machine.controller"
	KeyMachineCutter       Key = "machine.cutter"
	KeyMachineDynamicPower Key = "machine.dynamic_power"
	KeyMachineExample      Key = "machine.example"
	KeyMachineFooter       Key = "machine.footer"
	KeyMachineFor          Key = "machine.for"
	KeyMachineFrame        Key = "machine.frame"
	KeyMachineHeader       Key = "machine.header"
	KeyMachineHeight       Key = "machine.height"
	KeyMachineInWaste      Key = "machine.in_waste"
	KeyMachineJob          Key = "machine.job"
	KeyMachineJobDepth     Key = "machine.job.depth"
	KeyMachineJobFeed      Key = "machine.job.feed"
	KeyMachineJobMaterial  Key = "machine.job.material"
	KeyMachineJobPasses    Key = "machine.job.passes"
	KeyMachineJobPen       Key = "machine.job.pen"
	KeyMachineJobPower     Key = "machine.job.power"
	KeyMachineJobSkip      Key = "machine.job.skip"
	KeyMachineJobWork      Key = "machine.job.work"
	KeyMachineOrigin       Key = "machine.origin"
	KeyMachinePaper        Key = "machine.paper"
	KeyMachinePause        Key = "machine.pause"
	KeyMachinePenChange    Key = "machine.pen_change"
	KeyMachinePlunge       Key = "machine.plunge"
	KeyMachineSafeHeight   Key = "machine.safe_height"
	KeyMachineSpinUp       Key = "machine.spin_up"
	KeyMachineStroke       Key = "machine.stroke"
	KeyMachineStrokeColour Key = "machine.stroke.colour"
	KeyMachineStrokeDash   Key = "machine.stroke.dash"
	KeyMachineStrokeSolid  Key = "machine.stroke.solid"
	KeyMachineStrokeWidth  Key = "machine.stroke.width"
	KeyMachineStrokeWork   Key = "machine.stroke.work"
	KeyMachineSwapAxes     Key = "machine.swap_axes"
	KeyMachineSwivel       Key = "machine.swivel"
	KeyMachineTabHeight    Key = "machine.tab_height"
	KeyMachineTabWidth     Key = "machine.tab_width"
	KeyMachineTabs         Key = "machine.tabs"
	KeyMachineThrough      Key = "machine.through"
	KeyMachineTool         Key = "machine.tool"
	KeyMachineTrail        Key = "machine.trail"
	KeyMachineWidth        Key = "machine.width"
	KeyMachineXLeft        Key = "machine.x_left"
	KeyMachineYDown        Key = "machine.y_down"
	KeyMarginBar           Key = "margin.bar"
	KeyMarginCloth         Key = "margin.cloth"
	KeyMarginCord          Key = "margin.cord"
	KeyMarginDynamic       Key = "margin.dynamic"
	KeyMarginSeam          Key = "margin.seam"
	KeyMarginWaived        Key = "margin.waived"
	KeyOutputFraction      Key = "output.fraction"
	KeyOutputScale         Key = "output.scale"
	KeyOutputUnits         Key = "output.units"
	KeySeamCapAllowance    Key = "seam.cap_allowance"
	KeySeamEndAllowance    Key = "seam.end_allowance"
	KeySeamFactor          Key = "seam.factor"
	KeySeamJoinAllowance   Key = "seam.join_allowance"
	KeySeamRowSpacing      Key = "seam.row_spacing"
	KeySeamRows            Key = "seam.rows"
	KeySeamSideAllowance   Key = "seam.side_allowance"
	KeySeamStitchLength    Key = "seam.stitch_length"
	KeySeamThread          Key = "seam.thread"
	KeySeamThreadStrength  Key = "seam.thread_strength"
	KeySeamTolerance       Key = "seam.tolerance"
	KeySeamToleranceRatio  Key = "seam.tolerance_ratio"
	KeySheetGap            Key = "sheet.gap"
	KeySheetHeight         Key = "sheet.height"
	KeySheetKerf           Key = "sheet.kerf"
	KeySheetMargin         Key = "sheet.margin"
	KeySheetName           Key = "sheet.name"
	KeySheetOrigin         Key = "sheet.origin"
	KeySheetPrice          Key = "sheet.price"
	KeySheetThickness      Key = "sheet.thickness"
	KeySheetWidth          Key = "sheet.width"
	KeySleeperCrown        Key = "sleeper.crown"
	KeySleeperLies         Key = "sleeper.lies"
	KeySleeperMass         Key = "sleeper.mass"
	KeySleeperShoulders    Key = "sleeper.shoulders"
	KeySleeperStature      Key = "sleeper.stature"
	KeySpliceBury          Key = "splice.bury"
	KeySpliceContraction   Key = "splice.contraction"
	KeySpliceEfficiency    Key = "splice.efficiency"
	KeySpliceEye           Key = "splice.eye"
	KeySpliceEyeBury       Key = "splice.eye_bury"
	KeySpliceEyeLoss       Key = "splice.eye_loss"
	KeySpliceTaper         Key = "splice.taper"
	KeySpliceTipGap        Key = "splice.tip_gap"
	KeySpliceTrial         Key = "splice.trial"
	KeySpliceTrialCrossing Key = "splice.trial.crossing"
	KeySpliceWaste         Key = "splice.waste"
	KeySpliceWholeLoop     Key = "splice.whole_loop"
	KeyTemplateBacking     Key = "template.backing"
	KeyTemplateLetter      Key = "template.letter"
	KeyTemplateTick        Key = "template.tick"
	KeyTemplateWhole       Key = "template.whole"
)
