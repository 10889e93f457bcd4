package armhole

import "example.com/knitmath/knitmath/report"

// buss is a scan that was read in parts, without its title page.
const buss = "thought to be K. Buss, Big Book of Knitting, read in a poor scan"

// Where the figures of this package come from.
var (
	easeCited = report.Source{Figure: "5 cm of ease at the chest", Status: report.SourceStatusSecondHand,
		Citation: "Craft Yarn Council, Standards & Guidelines, fit, in a reprint: 2 to 4 inches are standard; " +
			"at the arm common practice, 0.18 of a thin arm own choice"}
	underarmCited = report.Source{Figure: "half of an edge's stitches bound off at once, or an inch",
		Status: report.SourceStatusCommonPractice, Citation: "common practice"}
	thirdCited = report.Source{Figure: "shaping in the lower third of the armhole", Status: report.SourceStatusCommonPractice,
		Citation: "common practice", Uncertain: true}
	fitCited = report.Source{Figure: "a cap's edge as long as the armhole's or slightly longer", Status: report.SourceStatusCommonPractice,
		Citation: "common practice: up to an inch more; 0 to 5 % and 2.5 % are own choices within it"}
	sameCited = report.Source{Figure: "the same bind-off at the cap's foot", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	topCited = report.Source{Figure: "a top of 3 inches, or a quarter of a narrow sleeve", Status: report.SourceStatusCommonPractice,
		Citation: "common practice: 3 inches in all; the quarter is own choice"}
	curveCited = report.Source{Figure: "the curves, and edges measured along the line that a seam takes from step to step",
		Citation: "own derivation",
		Status:   report.SourceStatusOwnDerivation}
	bindOffCited = report.Source{Figure: "a tenth of the width bound off at each edge of a modified drop, 3 inches at most",
		Status: report.SourceStatusSecondHand,
		Citation: buss + ": 1.5 to 3 inches straight, and the sleeve longer by as much; the tenth is own choice: " +
			"2 inches of a common woman's size, less of a child's", Uncertain: true}
	twiceCited = report.Source{Figure: "a straight sleeve as wide as twice the armhole's depth", Status: report.SourceStatusPublished,
		Citation: "Hugur og hönd, June 1986, p. 47: 26 cm and 52 cm"}
	strapCited = report.Source{Figure: "half of the strap's width off the front and half off the back", Status: report.SourceStatusSecondHand,
		Citation: buss + "; a width of 2 to 4 inches from memory", Uncertain: true}
	neckCited = report.Source{Figure: "a neck of a third of the width across", Status: report.SourceStatusSecondHand,
		Citation: buss, Uncertain: true}
	heightCited = map[CapHeightRule]report.Source{
		CapHeightRuleLessByChest: {Figure: "a cap 2, 3 or 4 inches lower than the armhole", Status: report.SourceStatusCommonPractice,
			Citation: "common practice"},
		CapHeightRuleTwoThirds: {Figure: "a cap of two thirds of the armhole", Status: report.SourceStatusFromMemory, Citation: "from memory"},
		CapHeightRuleLessTop: {Figure: "a cap lower by 1.5 inches and half of its top", Status: report.SourceStatusCommonPractice,
			Citation: "common practice"},
	}
)

// Sources says where the figures come from.
func (o Armhole) Sources() []report.Source {
	switch o.set.style {
	case StyleDrop:
		return []report.Source{easeCited, twiceCited, fitCited}
	case StyleModifiedDrop:
		return []report.Source{easeCited, bindOffCited, twiceCited, fitCited}
	}
	list := []report.Source{easeCited, underarmCited, thirdCited, fitCited, sameCited, topCited, curveCited}
	if o.set.style == StyleSaddle {
		list = append(list, strapCited, neckCited)
	}
	if s, ok := heightCited[o.set.rule]; ok {
		list = append(list, s)
	}
	return list
}
