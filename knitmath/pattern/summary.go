package pattern

import (
	"strconv"

	"example.com/knitmath/knitmath/report"
)

// Summary is the answer in one or two sentences.
func (o CheckedInstructions) Summary() string {
	text := "Checked: "
	if o.SizeCount > 1 {
		text = "Checked in " + strconv.Itoa(o.SizeCount) + " sizes: "
	}
	switch {
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
func (CheckedInstructions) Sources() []report.Source { return instructionSources() }

// Summary is the answer in a sentence.
func (o WrittenInstructions) Summary() string {
	text := report.CountOf(len(o.Rows), "lines") + " written"
	if o.SizeCount > 1 {
		text += " for " + strconv.Itoa(o.SizeCount) + " sizes"
	}
	return text + "."
}

// Directions are empty: there is nothing to work.
func (WrittenInstructions) Directions() []string { return nil }

// Sources says where the notation comes from.
func (WrittenInstructions) Sources() []report.Source { return instructionSources() }

// Summary is the answer in a sentence.
func (o MirroredInstructions) Summary() string {
	text := report.CountOf(len(o.Rows), "lines") + " mirrored"
	if o.refused > 0 {
		text += ", " + strconv.Itoa(o.refused) + " of them without a mirror image"
	}
	return text + "."
}

// Directions are empty: there is nothing to work.
func (MirroredInstructions) Directions() []string { return nil }

// Sources says where the notation comes from, and which stitch leans where.
func (MirroredInstructions) Sources() []report.Source {
	return append(instructionSources(), report.Source{Figure: "left- and right-leaning partners", Citation: "k2tog and ssk, p2tog and ssp, k3tog and sssk, m1l and m1r",
		Status: report.SourceStatusCommonPractice})
}

func instructionSources() []report.Source {
	return []report.Source{
		{Figure: "abbreviations", Citation: "the trade's published list of abbreviations, and common practice where it has none", Status: report.SourceStatusFromMemory},
		{Figure: "the words and marks of repeats", Citation: "as patterns are written", Status: report.SourceStatusCommonPractice},
		{Figure: "stitches taken and left", Citation: "by the definition of each operation; sums of them", Status: report.SourceStatusOwnDerivation},
	}
}
