package pattern

import "example.com/knitmath/knitmath/report"

// Reasons of findings that are mistakes: the pattern cannot be right as it
// stands. A finding has its place in the text in place of a field.
const (
	// ReasonUnworked: a row ends, without a turn, while stitches are left on the
	// left needle. The difference is how many, above 0.
	ReasonUnworked report.Reason = "STITCHES_UNWORKED"
	// ReasonMissing: a row, or binding off, needs more stitches than there are. The
	// difference is how many, below 0.
	ReasonMissing report.Reason = "STITCHES_MISSING"
	// ReasonUneven: a repeat to the last stitches does not come out on the stitches
	// there are, or rows repeated until so many stitches remain never come to that
	// count. The description says what would fit.
	ReasonUneven report.Reason = "DOES_NOT_COME_OUT"
	// ReasonClaim: the count, or the change of it, that the text claims after a row
	// is not what the row comes to; or the text casts on another count than the
	// question says is on the needle. The difference is the claim less the count.
	ReasonClaim report.Reason = "COUNT_DISAGREES"
	// ReasonRows: the text tells another number of rows than are worked, there or since
	// anything began from which they can be counted.
	ReasonRows report.Reason = "ROWS_DISAGREE"
	// ReasonSizes: a list has more or fewer numbers than there are sizes, or stands
	// where it cannot be told what it counts.
	ReasonSizes report.Reason = "SIZES_DISAGREE"
	// ReasonSide: a row that the text calls RS or WS is worked on the other side.
	ReasonSide report.Reason = "SIDE_DISAGREES"
	// ReasonRowNumber: a row number is out of order: written twice, left out, or the
	// last of a span before its first.
	ReasonRowNumber report.Reason = "ROW_NUMBER"
	// ReasonNoRow: rows are to be repeated that were not written before.
	ReasonNoRow report.Reason = "ROW_NOT_WRITTEN"
	// ReasonOpenBracket: a bracket is not closed before the end of its row, or by
	// one of another kind.
	ReasonOpenBracket report.Reason = "BRACKET_NOT_CLOSED"
	// ReasonStray: a closing bracket stands where none is open.
	ReasonStray report.Reason = "BRACKET_NOT_OPENED"
	// ReasonOpenStar: no "rep from" follows a star in its row.
	ReasonOpenStar report.Reason = "STAR_WITHOUT_REPEAT"
	// ReasonNoStar: "rep from" names a star that is not the open one, or none is
	// open.
	ReasonNoStar report.Reason = "REPEAT_WITHOUT_STAR"
	// ReasonEmpty: a row, a bracket or a starred repeat has no steps.
	ReasonEmpty report.Reason = "NOTHING_TO_WORK"
	// ReasonTurnInside: a turn stands in a repeat, or, of rows that are given, steps follow it.
	ReasonTurnInside report.Reason = "TURN_NOT_LAST"
	// ReasonStretch: "to end" or "to last n sts" stands within a repeat, where it
	// would find no stitches the second time.
	ReasonStretch report.Reason = "TO_LAST_IN_GROUP"
	// ReasonNever: what is to be worked to the last stitches takes none from the left
	// needle, such as "yo to end".
	ReasonNever report.Reason = "NEVER_GETS_THERE"
	// ReasonHands: the counts agree, and still it cannot be done with needles: a
	// row on the wrong side in the round that does not end with a turn, a decrease
	// beside the gap of a turn that leaves it open. As a
	// question: the stitches of a short row, or a make one, are not there to be
	// worked as written.
	ReasonHands report.Reason = "CANNOT_BE_WORKED"
	// ReasonTooLarge: a number, a row number, the length of a label, the depth of
	// repeats or a count of stitches is beyond the limits.
	ReasonTooLarge report.Reason = "TOO_LARGE"
	// ReasonMarker: a marker is to be slipped or removed where none is, or the sleeves
	// that are put aside do not lie between theirs.
	ReasonMarker report.Reason = "MARKER_NOT_THERE"
	// ReasonTooMany: a text has more lines, steps, numbers in lists, row numbers or
	// worked rows than the limits, or costs more to work than its price. What comes
	// after it is not read, or not worked.
	ReasonTooMany report.Reason = "TOO_MANY"
)

// Reasons of findings that are questions: the text cannot be read or judged
// without an answer.
const (
	// ReasonUnknown: an abbreviation is neither known nor declared.
	ReasonUnknown report.Reason = "UNKNOWN_ABBREVIATION"
	// ReasonUnread: words make no sense where they stand, or say what is not
	// followed, such as a row that picks up along an edge.
	ReasonUnread report.Reason = "NOT_READ"
	// ReasonAmbiguous: the count depends on what is meant, such as yf, or brackets
	// and "3 more times".
	ReasonAmbiguous report.Reason = "AMBIGUOUS"
	// ReasonOpenRows: rows that change the count are repeated an open number of
	// times, "until it measures", and no count is claimed after them.
	ReasonOpenRows report.Reason = "ROWS_OPEN"
	// ReasonSizesUnknown: something is for some sizes, and the text does not say which these
	// are.
	ReasonSizesUnknown report.Reason = "SIZES_UNKNOWN"
	// ReasonNoMarker: something is worked up to a marker, and where that is the text does
	// not say.
	ReasonNoMarker report.Reason = "MARKER_NOT_KNOWN"
	// ReasonNoMirror: a step or a row has no mirror image, such as a short row. Only
	// when mirroring; the row comes back as it was.
	ReasonNoMirror report.Reason = "NO_MIRROR"
)

// Reasons of findings that are readings: the text can be read, and this says how
// it was. They leave the text in agreement.
const (
	// ReasonReading: it can be read in several ways, all of one count or one of them
	// usual; the description says which was taken.
	ReasonReading report.Reason = "READING_TAKEN"
	// ReasonOpenLength: rows that do not change the count are worked until a length;
	// how many they are is not counted.
	ReasonOpenLength report.Reason = "LENGTH_OPEN"
	// ReasonCountTaken: what comes before could not be followed, and the counts go on as
	// the text has them from here on.
	ReasonCountTaken report.Reason = "COUNT_TAKEN"
	// ReasonPassedOver: words that change no count were passed over: a heading,
	// "break yarn", a wrap that is not picked up.
	ReasonPassedOver report.Reason = "PASSED_OVER"
	// ReasonMirrorNote: a mirror image has a catch, such as the bar of kfb, which
	// lies on the same side of its stitch. Only when mirroring.
	ReasonMirrorNote report.Reason = "MIRROR_REMARK"
	// ReasonCountedOnly: from this row on rows are counted and no longer worked
	// stitch by stitch by the machine: the text has too many stitches for that.
	ReasonCountedOnly report.Reason = "COUNTED_ONLY"
)

// ReasonTooManyFindings is of a notice: there are more findings than are listed.
// Field is what they were found in, "text" or "rows".
const ReasonTooManyFindings report.Reason = "TOO_MANY_FINDINGS"

// ReasonLeftAsGiven is of a notice: a text came back as it was given. Its rows written
// anew, it would be read otherwise, or there are more findings in it than are listed.
const ReasonLeftAsGiven report.Reason = "LEFT_AS_GIVEN"
