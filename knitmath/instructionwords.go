package knitmath

import "strconv"

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
		return text + countOf(o.mistakes, "mistakes") + "."
	}
	return text + countOf(o.mistakes, "mistakes") + " and " + countOf(o.questions, "open questions") + "."
}

// Sources says where the reading and the counting come from.
func (CheckedInstructions) Sources() []Source { return instructionSources() }

// Summary is the answer in a sentence.
func (o WrittenInstructions) Summary() string {
	text := countOf(len(o.Rows), "lines") + " written"
	if o.SizeCount > 1 {
		text += " for " + strconv.Itoa(o.SizeCount) + " sizes"
	}
	return text + "."
}

// Sources says where the notation comes from.
func (WrittenInstructions) Sources() []Source { return instructionSources() }

// Summary is the answer in a sentence.
func (o MirroredInstructions) Summary() string {
	text := countOf(len(o.Rows), "lines") + " mirrored"
	if o.refused > 0 {
		text += ", " + strconv.Itoa(o.refused) + " of them without a mirror image"
	}
	return text + "."
}

// Sources says where the notation comes from, and which stitch leans where.
func (MirroredInstructions) Sources() []Source {
	return append(instructionSources(), Source{"left- and right-leaning partners", "k2tog and ssk, p2tog and ssp, k3tog and sssk, m1l and m1r",
		SourceStatusCommonPractice})
}

func instructionSources() []Source {
	return []Source{
		{"abbreviations", "the trade's published list of abbreviations, and common practice where it has none", SourceStatusFromMemory},
		{"the words and marks of repeats", "as patterns are written", SourceStatusCommonPractice},
		{"stitches taken and left", "by the definition of each operation; sums of them", SourceStatusOwnDerivation},
	}
}
