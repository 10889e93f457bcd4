package sock

import "example.com/knitmath/knitmath/report"

// Where the figures of this package come from.
var (
	halfCited = report.Source{Figure: "heel over half of the stitches", Status: report.SourceStatusPublished,
		Citation: "Th. de Dillmont, Encyclopedia of Needlework (c. 1886)"}
	flapCited = report.Source{Figure: "as many flap rows as stitches, every 2nd slipped at the edge",
		Citation: "common practice", Status: report.SourceStatusCommonPractice}
	toeUpCited = report.Source{Figure: "from the toe up, gussets half of the heel wide, taken up by a flap of two rows a stitch",
		Citation: "common practice: a slip-stitch heel of 33 stitches is widened to 63, and back in 30 rows",
		Status:   report.SourceStatusCommonPractice}
	toeUpTurnCited = report.Source{Figure: "a turn of short rows down to a third of the heel", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	toeUpHeartCited = report.Source{Figure: "gussets that a heart turn takes up", Status: report.SourceStatusOwnDerivation,
		Citation: "own derivation, from the stitches that the turn leaves"}
	slippedCited = report.Source{Figure: "slipped stitches within the flap", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	roundCited = report.Source{Figure: "rows of the turn", Status: report.SourceStatusPublished,
		Citation: "as H. P. Ryder, Cycling and Shooting Knickerbocker Stockings (1896), turns flaps of 28 and 29 stitches; for other counts " +
			"own derivation"}
	heartCited = report.Source{Figure: "a turn that begins at 2 or 3 stitches", Citation: "from memory",
		Status: report.SourceStatusFromMemory}
	squareCited = report.Source{Figure: "a third of the heel at each side of its turn", Status: report.SourceStatusPublished,
		Citation: "H. Stiebner, Socken Nuorgam (2015): 10, 10 and 10"}
	pickUpCited = report.Source{Figure: "stitches along the flap: half its rows and one for the corner",
		Status:   report.SourceStatusCommonPractice,
		Citation: "common practice; published heels take 1 to 4 more than half"}
	gussetCited = report.Source{Figure: "gussets shaped every 2nd round", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	thirdsCited = report.Source{Figure: "short rows over half of the sock down to a third of them", Status: report.SourceStatusCommonPractice,
		Citation: "common practice"}
	turningCited = report.Source{Figure: "ways of turning and closing the gap", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	afterCited = report.Source{Figure: "a heel knit in afterwards, and the stitches in its corners", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	easeCited = report.Source{Figure: "a sock a tenth narrower than the foot", Status: report.SourceStatusFromMemory,
		Citation: "from memory: A. Budd; P. Gibson-Roberts, Simple Socks"}
	lengthCited = report.Source{Figure: "a sock a centimetre shorter than the foot", Citation: "from memory: a quarter to half an inch",
		Status: report.SourceStatusFromMemory}
	footToHeelCited = report.Source{Figure: "where on the foot the heel begins", Status: report.SourceStatusOwnDerivation,
		Citation: "own derivation: the length of the sock less that of the gussets and of the turn, or of the heel's depth"}
	wedgeCited = report.Source{Figure: "4 fewer every 2nd round to half, then every round, to about a quarter",
		Citation: "common practice", Status: report.SourceStatusCommonPractice}
	roundToeCited = report.Source{Figure: "sections, and as many even rounds as plain stitches between decreases",
		Citation: "Th. de Dillmont, Encyclopedia of Needlework (c. 1886)", Status: report.SourceStatusPublished}
	quarterCited = report.Source{Figure: "a toe a quarter of the foot long", Status: report.SourceStatusPublished,
		Citation: "Th. de Dillmont, Encyclopedia of Needlework (c. 1886); that its sections follow from the gauge, own derivation"}
	asLongCited = report.Source{Figure: "a foot about as long as it is around", Status: report.SourceStatusSecondHand,
		Citation: "a list of shoe sizes (Friendly Shoes 2021): of women 22.2 to 27.2 cm and 23.0 to 26.6 around, of men 25.5 to 30.5 and " +
			"25.4 to 29.0; which of its columns is which inferred", Uncertain: true}
	starCited = report.Source{Figure: "4 fewer every 2nd round to half, then every round, to 8", Status: report.SourceStatusCommonPractice,
		Citation: "common practice"}
	shortToeCited = report.Source{Figure: "short rows down to half of the stitches", Status: report.SourceStatusCommonPractice,
		Citation: "common practice"}
)

// sources are those of what is taken.
type sources []report.Source

// taken adds a source of what is taken, unless it was given.
func (l *sources) taken(given bool, s report.Source) {
	if !given {
		*l = append(*l, s)
	}
}

// Sources says where the figures come from.
func (o Heel) Sources() []report.Source {
	var l sources
	in := o.asked
	l.taken(in.HeelStitches != nil, halfCited)
	if o.FootToHeelCm != nil {
		l = append(l, footToHeelCited)
		l.taken(in.LengthEaseCm != nil, lengthCited)
	}
	switch {
	case o.kind == HeelKindShortRows:
		l.taken(in.CentreStitches != nil, thirdsCited)
		l = append(l, turningCited)
	case o.kind == HeelKindWasteYarn:
		l = append(l, afterCited, wedgeCited)
	case o.toeUp:
		o.citeToeUp(&l)
	default:
		l.taken(in.FlapRows != nil, flapCited)
		l.taken(in.FlapStitch != FlapStitchUnspecified, slippedCited)
		o.citeTurn(&l)
		l.taken(in.PickUpStitches != nil, pickUpCited)
		l.taken(in.GussetEveryRounds != nil, gussetCited)
	}
	l.taken(o.Stitches == nil || in.EasePercent != nil, easeCited)
	return l
}

// citeTurn cites the turn of a flap.
func (o Heel) citeTurn(l *sources) {
	switch o.kind {
	case HeelKindRound:
		*l = append(*l, roundCited)
	case HeelKindHeart:
		*l = append(*l, heartCited)
	default:
		l.taken(o.asked.CentreStitches != nil, squareCited)
	}
}

// citeToeUp cites what a heel of gussets takes that is worked from the toe up.
func (o Heel) citeToeUp(l *sources) {
	if o.kind == HeelKindHeart {
		*l = append(*l, heartCited, toeUpHeartCited)
	} else {
		if o.kind == HeelKindRound {
			l.taken(o.asked.CentreStitches != nil, toeUpTurnCited)
			*l = append(*l, turningCited)
		}
		*l = append(*l, toeUpCited)
		l.taken(o.asked.FlapStitch != FlapStitchUnspecified, slippedCited)
	}
	l.taken(o.asked.GussetEveryRounds != nil, gussetCited)
}

// Sources says where the figures come from.
func (o Toe) Sources() []report.Source {
	var l sources
	in := o.asked
	switch o.kind {
	case ToeKindRound:
		l = append(l, roundToeCited)
		l.taken(in.WedgeCount != nil, quarterCited)
		l.taken(in.WedgeCount != nil || in.FootLengthCm != nil, asLongCited)
	case ToeKindStar:
		l = append(l, starCited)
	case ToeKindShortRows:
		l.taken(in.CentreStitches != nil, shortToeCited)
		l = append(l, turningCited)
	default:
		l = append(l, wedgeCited)
	}
	l.taken(o.Stitches == nil || in.EasePercent != nil, easeCited)
	l.taken(o.FootToToeCm == nil || in.LengthEaseCm != nil, lengthCited)
	return l
}
