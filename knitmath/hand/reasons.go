package hand

import (
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/solid"
)

// The reasons of the notices. A count that was exactly half-way is told by the reason of
// package gauge.
const (
	// BabyCare: the mitten is for a baby or a small child: loops and ends inside, cords.
	// Field is that of the size.
	BabyCare = solid.BabyCare
	// NeedsEase: a thumb without a gusset pulls at the palm unless the mitten is wider than the
	// hand. Field is gusset.
	NeedsEase report.Reason = "NEEDS_EASE"
	// ThumbUnlikeHands: the thumb has fewer than 28 % or more than 50 % of the stitches of the
	// hand. Field is gusset_stitches, hold_stitches, or that of the height which settles the width.
	ThumbUnlikeHands report.Reason = "THUMB_UNLIKE_HANDS"
	// GussetUnlikeHands: the gusset is higher than three quarters of the hand's circumference. Field is every_rounds, or
	// that of the height.
	GussetUnlikeHands report.Reason = "GUSSET_UNLIKE_HANDS"
)

// CountAdjusted says that the top does not divide the stitches of the mitten, and a round of its own
// decreases the rest. Field is that of the size.
const CountAdjusted report.Reason = "COUNT_ADJUSTED"

// EndUnmet says that more stitches are left than end_stitches allows. Field is end_stitches.
const EndUnmet = solid.EndUnmet

// TopUnlikeHands says that a round top is over a third higher or lower than a quarter of the hand's
// circumference. Field is kind.
const TopUnlikeHands report.Reason = "TOP_UNLIKE_HANDS"

// Where the figures come from.
var (
	easeCited = report.Source{Figure: "ease of 3 %", Citation: "from memory: 0 to half an inch round the palm",
		Status: report.SourceStatusFromMemory, Uncertain: true}
	wedgeTopCited = report.Source{Figure: "two sides, every 2nd round to half the stitches, then every round, as a sock's toe",
		Citation: "J. Gibson, Generic mittens (2002)", Status: report.SourceStatusSecondHand}
	starTopCited = report.Source{Figure: "four stacks, every 2nd round to half the stitches, then every round to 8",
		Citation: "common practice", Status: report.SourceStatusCommonPractice}
	roundTopCited = report.Source{Figure: "every 5th stitch, 5 rounds even, every 4th, 4 rounds, and so on",
		Citation: "Handbook of Wool Knitting and Crochet (Needlecraft Publishing Co. 1918)", Status: report.SourceStatusPublished}
	scaledTopCited = report.Source{Figure: "sections and even rounds that make the round top about a quarter of the hand's circumference high",
		Citation: "own choice, as high as half a ball; the rounds are those of the book, fewer or more", Status: report.SourceStatusOwnDerivation}
	shortTopCited = report.Source{Figure: "two sides, every round to 8 stitches", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	gussetCited = report.Source{Figure: "gusset of 37 % of the hand", Status: report.SourceStatusOwnDerivation,
		Citation: "between 14 of 36 and 15 of 42 in two published mittens"}
	rateCited = report.Source{Figure: "two increases every 3rd round", Status: report.SourceStatusPublished,
		Citation: "Handbook of Wool Knitting and Crochet (Needlecraft Publishing Co. 1918); also every 2nd, and every 5th in fine gloves"}
	heldCited = report.Source{Figure: "thumb held and taken up, stitches cast on over the gap", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	thumbLengthCited = report.Source{Figure: "length of the thumb, 0.3 of the hand round the palm", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
	noGussetCited = report.Source{Figure: "without a gusset a fifth of the hand is held", Citation: "common practice",
		Status: report.SourceStatusCommonPractice}
)
