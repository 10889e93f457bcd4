package neck

import (
	"strconv"

	"example.com/knitmath/knitmath/body"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// usualStretch is the most of what a ribbed edge commonly gives, 1.3 to 1.6 times its
// width at rest. From memory; common practice.
const usualStretch = 1.6

// Shares of the width across the shoulders between which the necks of published sweaters
// lie: 17 of 79 stitches (the open fronts of Needlecraft, Handbook of Wool Knitting and
// Crochet, 1918) and 38 of 78 (M. Hoyer's Colleen jerkin).
const leastShare, mostShare = 17.0 / 79, 38.0 / 78

// widthToBody is how many times a width across the shoulders a garment is round at the
// chest: in the trade's charts a chest with 5 cm of ease is 2.4 to 2.8 times the width of the
// back above the armholes, of a child as of a woman or a man (see ListBodySizes). Of a garment
// without armholes the body is less, and the head that is taken rather too large.
const widthToBody = 2.5

// armholeShare is how much of the width across the back an armhole goes straight up, at the
// least: its depth is 0.43 of it or more in the trade's charts (see ListBodySizes), and the
// upper two thirds of that are even by common practice.
// A step more or less says nothing.
const armholeShare, armholeSlack = 0.43 * 2 / 3, 2

// tapeCm is by how much a band may be shorter than the head: a millimetre, which no tape tells.
const tapeCm = 0.1

// head is the head that has to go through a neck of that width across the shoulders, nil if
// nobody's has.
func (in Input) head(widthCm float64) *float64 {
	if in.HeadCm != nil {
		return in.HeadCm
	}
	if who, ok := body.WearerOf(fault.Or(in.BodyCm, widthToBody*widthCm)); ok {
		return &who.HeadCm
	}
	return nil
}

// judge says whether the head goes through.
func (o *Neckline) judge() {
	o.HeadCm = o.in.head(o.WidthCm)
	if o.HeadCm != nil {
		o.GoesOverHead = new(o.StretchedCm >= *o.HeadCm-tapeCm)
	}
}

// senseNotices are the remarks on a neck that counts right and that bodies are not like.
func (o *Neckline) senseNotices() []report.Notice {
	var list []report.Notice
	if o.tooNarrow() {
		list = append(list, report.Notice{Reason: NeckBelowHead, Description: "the neck is " + o.in.DisplayUnit.Size(o.OpeningCm) +
			" round and stretches to " + o.in.DisplayUnit.Size(o.StretchedCm) + ", which does not go over a head of " +
			o.in.DisplayUnit.Size(*o.HeadCm) + o.boatWords() + "; " + o.remedies()})
	}
	for _, l := range []*layout{o.Front.layout, o.Back.layout} {
		if rows := max(0, l.firstSlope()); o.in.ArmholeRows == nil && o.rw.SizeCm(rows-armholeSlack) > armholeShare*o.WidthCm {
			list = append(list, report.Notice{Reason: NeckInArmhole, Field: "armhole_rows", Description: "the " + l.piece + " is divided " +
				o.in.DisplayUnit.Size(o.rw.SizeCm(rows)) + " below the shoulders, where an armhole may still be shaped: every row is written on the " +
				report.CountOf(l.width, "stitches") + " that are left above it. Give armhole_rows and armhole_steps, " +
				"as PlanArmhole has them, and they are worked along; of a drop shoulder the rows alone"})
		}
	}
	if o.in.Shape != ShapeBoat && o.Front.DepthRows <= o.Back.DepthRows {
		list = append(list, report.Notice{Reason: FrontNotBelowBack, Field: depthField(o.in.FrontDepthRows, "front"),
			Description: "the front is " + report.CountOf(o.Front.DepthRows, "rows") + " deep and the back " + strconv.Itoa(o.Back.DepthRows) +
				"; a neck lies lower in front, or the garment slides back"})
	}
	share := float64(o.NeckStitches) / float64(o.WidthStitches)
	if o.in.Shape != ShapeBoat && (share < leastShare || share > mostShare) {
		list = append(list, report.Notice{Reason: NeckShareUnusual, Field: o.Front.layout.neckField,
			Description: "the neck is " + measure.Decimal(100*share, 0) +
				" % of the width across the shoulders; of published sweaters it is 22 to 49 %"})
	}
	return list
}

func depthField(rows *int, piece string) string {
	if rows != nil {
		return piece + "_depth_rows"
	}
	return piece + "_depth_cm"
}

// remedies are what would let the head through, each asked of the planner.
func (o *Neckline) remedies() string {
	s := "it goes over with an opening"
	if o.in.Shape == ShapeBoat { // which deeper in front is none
		return s + o.widerNeck()
	}
	if !o.remedied() {
		return s
	}
	if rows := o.enough(o.Front.DepthRows, MaxDepthRows, func(in *Input, n int) {
		in.FrontDepthRows, in.FrontDepthCm = &n, nil
	}); rows > 0 {
		s += ", with a front " + report.CountOf(rows, "rows") + " deep (" + o.in.DisplayUnit.Size(o.rw.SizeCm(rows)) + ")"
	}
	return s + o.widerNeck()
}

// widerNeck is a wider neck that would let the head through, if one does that is not too wide.
func (o *Neckline) widerNeck() string {
	neck := o.enough(o.NeckStitches, o.in.widestNeck(o.WidthStitches), func(in *Input, n int) {
		in.WidthStitches, in.WidthCm, in.WidthRule = new(o.WidthStitches), nil, nil
		in.ShoulderStitches, in.ShoulderCm, in.NeckStitches, in.NeckCm = nil, nil, &n, nil
	})
	if neck == 0 {
		return ""
	}
	return ", or with a neck of " + report.CountOf(neck, "stitches")
}

// remedySteps is how many counts are asked for a remedy: each time twice as far, then
// half-way back.
const remedySteps = 6

// remedyMost is the largest neck, in rows and stitches together, that remedies are looked
// for: what a head does not go through is not larger, unless the yarn is a spider's.
const remedyMost = 200

// enough is the least count above from, by twos, with which the head goes through, as far
// as so many questions find it; 0 if there is none.
func (o *Neckline) enough(from, most int, change func(in *Input, n int)) int {
	goes := func(twos int) bool {
		in := o.in
		change(&in, from+2*twos)
		in.WithOutline = false
		out, err := plan(in)
		return err == nil && out.GoesOverHead != nil && *out.GoesOverHead
	}
	found := 0
	for twos := 1; twos < 1<<remedySteps && from+2*twos <= most; twos *= 2 {
		if goes(twos) {
			found = twos
			break
		}
	}
	if found == 0 {
		return 0
	}
	for low := found / 2; found-low > 1; {
		if half := (found + low) / 2; goes(half) {
			found = half
		} else {
			low = half
		}
	}
	return from + 2*found
}
