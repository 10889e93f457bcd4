package neck

import "example.com/knitmath/knitmath/report"

// textbook is a scan that was read in parts, without its title page.
const textbook = "thought to be K. Buss, Big Book of Knitting, read in a poor scan"

// Where the figures of this package come from.
var (
	thirdCited = report.Source{Figure: "neck a third of the width, wider if the head wants it, if nobody says",
		Citation: textbook + "; at most 38 of 78 stitches, M. Hoyer, Juvenile Styles, Colleen jerkin",
		Status:   report.SourceStatusSecondHand, Uncertain: true}
	boatWidthCited = report.Source{
		Figure:   "the narrowest boat neck that goes over the head, from a third to two thirds of the width, if nobody says",
		Citation: "the head decides; a third as of other necks, two thirds from memory, beyond which it slips off the shoulders",
		Status:   report.SourceStatusFromMemory,
	}
	strapCited = report.Source{Figure: "no depth behind and half a strap less in front between the straps of saddles, if nobody says",
		Citation: textbook, Status: report.SourceStatusSecondHand, Uncertain: true}
	depthCited = report.Source{Figure: "depth of the neck, 5 to 7.5 cm in front and 1.3 to 3.8 cm behind, if nobody says",
		Citation: textbook + "; between them by the width of the neck and the head, own choice",
		Status:   report.SourceStatusSecondHand, Uncertain: true}
	curveCited = report.Source{Figure: "curve of the neck", Status: report.SourceStatusOwnDerivation,
		Citation: "a quarter of an ellipse from the middle of the neck to its depth; the middle as wide as it is flat, at least a third"}
	slantCited = report.Source{Figure: "slant of a V: one stitch on a pin of an odd neck, two of an even one; every 4th row, if nobody says",
		Citation: textbook, Status: report.SourceStatusSecondHand, Uncertain: true}
	pointCited = report.Source{Figure: "two decreases at the point of a V's band", Citation: textbook, Status: report.SourceStatusSecondHand,
		Uncertain: true}
	boatCited = report.Source{Figure: "a boat neck is bound off straight", Citation: textbook, Status: report.SourceStatusSecondHand,
		Uncertain: true}
	slopeCited = report.Source{Figure: "slope of the shoulder, 2.5 cm and no more than 20 degrees, if nobody says",
		Citation: "common practice; the degrees from memory", Status: report.SourceStatusCommonPractice}
	stepsCited = report.Source{Figure: "one step of the shoulder every 2 rows", Status: report.SourceStatusCommonPractice,
		Citation: "common practice"}
	aroundCited = report.Source{Figure: "stitches to pick up", Status: report.SourceStatusOwnDerivation,
		Citation: "length of the edge, from step to step, × stitches of the band in a cm; one for each stitch bound off"}
	stretchCited = report.Source{Figure: "a ribbed edge gives 1.3 to 1.6 times its width", Citation: "from memory",
		Status: report.SourceStatusFromMemory}
	headCited = report.Source{Figure: "the head that goes through", Status: report.SourceStatusSecondHand,
		Citation: "median of boys by age, UK-WHO and UK90 growth references read off a library of growth charts, for a body " +
			"5 cm wider than the chest; the body, if nobody says, 2.5 times the width across the shoulders, as in the trade's charts"}
)

// widthByDefault reports whether nothing says how wide the neck is.
func (in Input) widthByDefault() bool {
	return in.NeckStitches == nil && in.NeckCm == nil && in.ShoulderStitches == nil && in.ShoulderCm == nil
}

// Sources says where the figures come from.
func (o Neckline) Sources() []report.Source {
	var list []report.Source
	in := o.in
	if in.isBoatByDefault() {
		list = append(list, boatWidthCited)
	} else if in.widthByDefault() {
		list = append(list, thirdCited)
	}
	switch in.Shape {
	case ShapeBoat:
		list = append(list, boatCited)
	case ShapeV:
		list = append(list, slantCited, pointCited)
	}
	if in.Shape != ShapeBoat {
		list = append(list, depthCited)
		if in.Shape != ShapeSquare {
			list = append(list, curveCited)
		}
	}
	if in.strap() > 0 {
		list = append(list, strapCited)
	} else if in.ShoulderSlopeRows == nil && in.ShoulderSlopeCm == nil && in.ShoulderSlopeDegrees == nil {
		list = append(list, slopeCited)
	}
	list = append(list, stepsCited, aroundCited)
	if o.HeadCm != nil {
		list = append(list, stretchCited)
		if in.HeadCm == nil {
			list = append(list, headCited)
		}
	}
	return list
}
