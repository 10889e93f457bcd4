package yardage

import (
	"math"

	"example.com/knitmath/knitmath/report"
)

// FabricState is the state a fabric is measured in.
type FabricState int32

// The states.
const (
	FabricStateUnspecified FabricState = iota // not known
	FabricStateDryRelaxed
	FabricStateWetRelaxed
	FabricStateFullyRelaxed
)

// loopConstants is the loop constant ks by FabricState: the pure number in
//
//	stitches to the cm2 = ks / (loop length in cm)^2
//
// ks is kc*kw, courses and wales to a loop length. Sources:
//
//	dry relaxed    kc 5.0, kw 3.8: 19.0. Munden, J. Text. Inst. 50 (1959) T448 (from
//	               memory); not re-read, so good to 3 %.
//	wet relaxed    21.6, likewise (the product of kc 5.3 and kw 4.1 is 21.73).
//	fully relaxed  kc 5.5, kw 4.2: 23.1. GATE Textile Engineering 2015, question 54.
//	               Later papers have kc 5.3 to 5.8 and kw 4.0 to 4.4 (from memory):
//	               21.2 to 25.52.
//
// A state that is not known has the likely figure of fully relaxed, as a washed
// swatch would have, and the range of all three.
var loopConstants = [...]Range{
	FabricStateUnspecified:  {19.0 * 0.97, 5.5 * 4.2, 5.8 * 4.4},
	FabricStateDryRelaxed:   {19.0 * 0.97, 19.0, 19.0 * 1.03},
	FabricStateWetRelaxed:   {21.6 * 0.97, 21.6, 21.6 * 1.03},
	FabricStateFullyRelaxed: {5.3 * 4.0, 5.5 * 4.2, 5.8 * 4.4},
}

// munden is the paper on plain knitting that its geometry starts from.
const munden = "D. L. Munden, J. Text. Inst. 50 (1959) T448"

// The sources of loopConstants.
var (
	unwashedCited = report.Source{Figure: "loop constant ks 19.0 dry relaxed, 21.6 wet relaxed",
		Citation: munden + "; taken as good to 3 %", Status: report.SourceStatusFromMemory}
	relaxedCited = report.Source{Figure: "loop constant ks 23.1 fully relaxed",
		Citation: "kc 5.5, kw 4.2: GATE Textile Engineering 2015, question 54", Status: report.SourceStatusPublished}
	relaxedRangeCited = report.Source{Figure: "range of ks fully relaxed, 21.2 to 25.52",
		Citation: "kc 5.3 to 5.8 and kw 4.0 to 4.4 over the later literature", Status: report.SourceStatusFromMemory, Uncertain: true}
)

// sources are those of the loop constant of a state.
func (s FabricState) sources() []report.Source {
	switch s {
	case FabricStateDryRelaxed, FabricStateWetRelaxed:
		return []report.Source{unwashedCited}
	case FabricStateFullyRelaxed:
		return []report.Source{relaxedCited, relaxedRangeCited}
	}
	return []report.Source{unwashedCited, relaxedCited, relaxedRangeCited}
}

// String names the state in words.
func (s FabricState) String() string {
	switch s {
	case FabricStateDryRelaxed:
		return "dry relaxed, unwashed"
	case FabricStateWetRelaxed:
		return "wet relaxed, wet-blocked"
	case FabricStateFullyRelaxed:
		return "fully relaxed, washed repeatedly"
	}
	return "any state from dry relaxed, unwashed, to fully relaxed, washed repeatedly"
}

// loopCited is the source of loopLength.
var loopCited = report.Source{Figure: "loop length", Citation: "l = sqrt(ks / stitches to the cm2): " + munden,
	Status: report.SourceStatusFromMemory}

// loopLength is the yarn in one plain stitch, in cm, of a fabric with so many
// stitches to the cm2:
//
//	l = sqrt(ks / S)
//
// Source: D. L. Munden, The geometry and dimensional properties of plain-knit
// fabrics, J. Text. Inst. 50 (1959) T448 (from memory). That stitch density goes
// by loop length alone is Doyle, J. Text. Inst. 44 (1953) P561, as quoted in
// Gravas, Kiekens & Van Langenhove, AUTEX Res. J. 6(4), 2006.
func loopLength(ks, density float64) float64 { return math.Sqrt(ks / density) }

// Tightness, sqrt(tex) to the cm of loop, beyond which the loop is not that of relaxed
// knitting. Tighter than 16 its loops touch: they are then 16.67 diameters long
// (Chamberlain's loop, read in Text. Res. J. 2016, doi 10.1177/0040517516641358), a
// diameter being 0.0037329 cm * sqrt(tex) (Peirce), and 1/(16.67*0.0037329) is 16.07.
// Below 7, two thirds of what is usual by hand, the fabric is as open as lace and takes
// whatever size it is blocked to. Own derivation.
const (
	leastTightness = 7.0
	mostTightness  = 16.0
)
