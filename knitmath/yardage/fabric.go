package yardage

import "example.com/knitmath/knitmath/report"

// StitchPattern is a fabric, by how much yarn a stitch of it takes beside plain
// knitting at the same gauge.
type StitchPattern int32

// The stitch patterns.
const (
	StitchPatternUnspecified StitchPattern = iota // plain
	StitchPatternStockinette
	StitchPatternGarter
	StitchPatternRib
	StitchPatternCables
	StitchPatternSeed
	StitchPatternLace
	StitchPatternBrioche
	StitchPatternDouble
)

// patternNames say a fabric.
var patternNames = [...]string{
	StitchPatternUnspecified: "stockinette", StitchPatternStockinette: "stockinette", StitchPatternGarter: "garter stitch",
	StitchPatternRib: "rib", StitchPatternCables: "cables", StitchPatternSeed: "seed stitch", StitchPatternLace: "lace",
	StitchPatternBrioche: "brioche", StitchPatternDouble: "double knitting",
}

// patternFactors is the yarn of a stitch beside a plain one at the same stitches and rows,
// by StitchPattern. A factor f is a loop constant as well, that of the fabric being f*f*ks.
// Plain is 1 by definition, whichever side is out.
//
// Garter stitch (the mills' 1x1 purl, of which no constants were found in print) has a
// loop as long as stockinette's in the same yarn on the same needle, which lies wider and
// lower: 0.9 to 1 stitches where stockinette has 1 (common practice), so that kw is 3.8 to
// 4.2 and likely 4.0, and garterRatio rows to a stitch of width. With l = kw/w and
// S = rows*w*w
//
//	f = l / sqrt(ks/S) = kw * sqrt(rows / ks)
//
// which is 1.06 to 1.24, likely 1.17: ks of garter stitch 26 to 35.5, likely 31.6.
// Own derivation.
//
// Rib is 1 where it is stretched to the width of stockinette, and more the more it draws
// in: at 1.2 the loops are 1.44 times as dense. In the mills' papers on rib the two parts
// of its constant are not constant one by one, and their product is given of a repeat
// unit; no figure of it was found. So rib is common practice like the others, without an
// author: their ranges say how far the practice goes.
var patternFactors = [...]Range{
	StitchPatternUnspecified: {1, 1, 1},
	StitchPatternStockinette: {1, 1, 1},
	StitchPatternGarter:      {1.06, 1.17, 1.24},
	StitchPatternRib:         {1.00, 1.10, 1.20},
	StitchPatternCables:      {1.10, 1.20, 1.30},
	StitchPatternSeed:        {1.00, 1.07, 1.15},
	StitchPatternLace:        {0.85, 0.95, 1.05},
	StitchPatternBrioche:     {1.40, 1.60, 1.80},
	StitchPatternDouble:      {1.90, 2.00, 2.10}, // two fabrics of plain knitting
}

// garterRatio is the rows to a stitch of width of garter stitch: 2, a ridge to a stitch
// (E. Zimmermann, from memory); 1.82 is printed, 40 rows on 22 stitches.
var garterRatio = Range{40.0 / 22, 2, 2}

// usualRatios are the rows to a stitch of width beyond which a gauge is not that of the
// fabric; a fabric whose rows vary too much to tell has none. Plain wool lies at 1.2
// to 1.35 (from memory), most printed gauges at 1.3 to 1.4, garter stitch as in garterRatio;
// the bounds leave room on both sides.
var usualRatios = map[StitchPattern]usualRatio{
	StitchPatternStockinette: {1.1, 1.5, "stockinette", "1.2 to 1.4"},
	StitchPatternGarter:      {1.6, 2.2, "garter stitch", "1.8 to 2"},
}

// usualRatio is of one fabric, with its name and what is usual in words.
type usualRatio struct {
	low, high   float64
	name, usual string
}

// misfits reports whether a piece is of a fabric that does not have its gauge, as far as
// can be told.
func (p piece) misfits() bool {
	usual, known := usualRatios[p.fabric]
	ratio := p.courses / p.wales
	return known && !p.derived && (ratio < usual.low || ratio > usual.high)
}

// The sources of patternFactors.
var (
	garterCited = report.Source{Figure: "garter stitch: pattern factor 1.06 to 1.24, loop constant ks 26 to 35.5",
		Status: report.SourceStatusOwnDerivation,
		Citation: "the loop of stockinette lying wider and lower: kw 3.8 to 4.2, rows to a stitch of width 2 (E. Zimmermann, from memory) or " +
			"1.82 (40 rows on 22 stitches, Rowan, Bloom book 4); factor = kw * sqrt(rows / 23.1)"}
	factorsCited = report.Source{Figure: "pattern factors", Status: report.SourceStatusCommonPractice,
		Citation: "yarn of a stitch beside a plain one at the same gauge: rib 1.00 stretched to 1.20 drawn in, cables 1.10 to 1.30, " +
			"seed 1.00 to 1.15, lace 0.85 to 1.05, brioche 1.40 to 1.80, double knitting 1.90 to 2.10"}
)
