package pattern

import (
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// stitches is "1 stitch", "2 stitches".
func stitches(n int) string { return report.CountOf(n, "stitches") }

// Summary is the answer in one or two sentences.
func (o CheckedInstructions) Summary() string {
	text := "Checked: "
	if o.SizeCount > 1 {
		text = "Checked in " + strconv.Itoa(o.SizeCount) + " sizes: "
	}
	switch {
	case o.mistakes == 0 && o.questions == 0 && len(o.Lines) == 0:
		return text + "there is no row in it."
	case o.mistakes == 0 && o.questions == 0:
		return text + "every row fits and every count agrees."
	case o.questions == 0:
		return text + report.CountOf(o.mistakes, "mistakes") + "."
	}
	return text + report.CountOf(o.mistakes, "mistakes") + " and " + report.CountOf(o.questions, "open questions") + "."
}

// Directions are empty: there is nothing to work.
func (CheckedInstructions) Directions() []string { return nil }

// Sources says where the reading and the counting come from.
func (CheckedInstructions) Sources() []report.Source { return slices.Clone(notationCited) }

// Summary is the answer in a sentence.
func (o WrittenInstructions) Summary() string {
	done := " written"
	if len(o.Notices) > 0 && o.Notices[0].Reason == ReasonLeftAsGiven {
		done, o.unread = " read, and left as given", 0
	}
	text := report.CountOf(len(o.Rows)-o.unread, "lines") + done
	if o.SizeCount > 1 {
		text += " for " + strconv.Itoa(o.SizeCount) + " sizes"
	}
	return text + leftOver(o.unread) + "."
}

// leftOver says of how many lines nothing was made.
func leftOver(n int) string {
	if n == 0 {
		return ""
	}
	return ", " + report.CountOf(n, "lines") + " left as given"
}

// Directions are empty: there is nothing to work.
func (WrittenInstructions) Directions() []string { return nil }

// Sources says where the notation comes from.
func (WrittenInstructions) Sources() []report.Source { return slices.Clone(notationCited) }

// Summary is the answer in a sentence.
func (o MirroredInstructions) Summary() string {
	return report.CountOf(o.mirrored, "rows") + " mirrored" + leftOver(o.left) + "."
}

// Directions are empty: there is nothing to work.
func (MirroredInstructions) Directions() []string { return nil }

// Sources says where the notation comes from, and which stitch leans where.
func (MirroredInstructions) Sources() []report.Source {
	return append(slices.Clone(notationCited), partnersCited)
}

// notationCited are the sources of what a text means.
var notationCited = []report.Source{
	{Figure: "abbreviations", Status: report.SourceStatusFromMemory,
		Citation: "the trade's published list of abbreviations, and common practice where it has none"},
	{Figure: "the words and marks of repeats", Citation: "as patterns are written", Status: report.SourceStatusCommonPractice},
	{Figure: "stitches taken and left", Status: report.SourceStatusOwnDerivation,
		Citation: "by the definition of each operation; sums of them"},
}
