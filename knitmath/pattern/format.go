package pattern

import "example.com/knitmath/knitmath/report"

// A Row is a row with its label and claim, or a direction. It mirrors the
// message of the same name.
type Row struct {
	Label           string
	Steps           []Step
	ClaimedStitches []int
	// ClaimedChangeStitches are claims such as "(2 sts dec)", below 0.
	ClaimedChangeStitches []int
	Direction             string
}

// FormatInstructionsInput asks for rows to be written, or for a text to be
// rewritten. It mirrors FormatInstructionsRequest.
type FormatInstructionsInput struct {
	Text          string
	Rows          []Row
	Abbreviations []Abbreviation
	RepeatStyle   RepeatStyle
}

// MirrorInstructionsInput asks for the same rows for the other edge. It mirrors
// MirrorInstructionsRequest.
type MirrorInstructionsInput struct {
	Text          string
	Rows          []Row
	Abbreviations []Abbreviation
	RepeatStyle   RepeatStyle
}

// WrittenInstructions is a text with its rows. It mirrors FormatInstructionsResponse.
type WrittenInstructions struct {
	SizeCount int
	Text      string
	Rows      []Row
	Findings  []Finding
	Notices   []report.Notice
	unread    int // lines that stay as they are, since they could not be read
}

// MirroredInstructions is a text for the other edge, with its rows. It mirrors
// MirrorInstructionsResponse.
type MirroredInstructions struct {
	SizeCount int
	Text      string
	Rows      []Row
	Findings  []Finding
	Notices   []report.Notice
	mirrored  int // rows
	left      int // lines that stay as they are: not read, or without a mirror image
}

// FormatInstructions writes rows as patterns do, in the shortest honest form: see
// stitch.Compress. Numbers that differ between sizes stay as they are grouped. A
// text may be given in place of rows: its rows are written anew where they stand, and
// all else stays as it was, which is how to change the style of its repeats. Reading
// what is written gives rows that mean the same, and writing that again gives the same
// text; a text of which that is not true is left as given, with a notice.
//
// Source: own derivation; the notation is common practice.
func FormatInstructions(in FormatInstructionsInput) (WrittenInstructions, error) {
	piece, err := readQuestion(in.Text, in.Rows, in.Abbreviations, in.RepeatStyle)
	if err != nil {
		return WrittenInstructions{}, err
	}
	out := WrittenInstructions{SizeCount: piece.SizeCount, unread: unread(piece.Lines)}
	var lines []Line
	if len(in.Rows) > 0 {
		lines = Compress(piece.Lines)
		out.Text = Text(lines, in.RepeatStyle)
	} else {
		var same bool
		if lines, out.Text, same = piece.anew(in.RepeatStyle, in.Abbreviations); !same {
			out.Text, out.Notices = in.Text, []report.Notice{leftAsGiven}
		}
	}
	findings, more := piece.Findings()
	out.Rows, out.Findings = rowsOf(lines), findings
	out.Notices = append(out.Notices, moreNotices(askedIn(in.Rows), len(findings), more)...)
	return out, nil
}

// MirrorInstructions writes every row for the other edge: from its end to its
// beginning, with right- and left-leaning decreases and increases exchanged. The
// counts stay. A row that has no mirror image, such as a short row, comes back as it
// was written, with a finding that says why. Of a text all that is no row stays where
// and as it was. Rows are not compressed, so that each step can be found again.
//
// Mirroring twice gives the row again, except that what has no partner of its own
// kind, skp or sk2p, comes back as its equal, ssk or sssk; a finding says so.
//
// Source: own derivation; which operation leans which way is common practice.
func MirrorInstructions(in MirrorInstructionsInput) (MirroredInstructions, error) {
	piece, err := readQuestion(in.Text, in.Rows, in.Abbreviations, in.RepeatStyle)
	if err != nil {
		return MirroredInstructions{}, err
	}
	work := piece.mirrored()
	text := ""
	if len(in.Rows) == 0 {
		text = work.text(in.RepeatStyle, in.Abbreviations)
	} else {
		text = Text(work.lines, in.RepeatStyle)
	}
	m := work.result()
	return MirroredInstructions{SizeCount: piece.SizeCount, Text: text, Rows: rowsOf(m.Lines), mirrored: m.rows,
		left: m.refused + unread(m.Lines), Findings: m.Findings, Notices: moreNotices(askedIn(in.Rows), len(m.Findings), m.MoreCount)}, nil
}

// askedIn is the field that the lines come from.
func askedIn(rows []Row) string {
	if len(rows) > 0 {
		return "rows"
	}
	return "text"
}

// rowsOf are lines as rows of an answer.
func rowsOf(lines []Line) []Row {
	rows := make([]Row, len(lines))
	for i, l := range lines {
		if l.Direction != "" {
			rows[i].Direction = l.Direction
			continue
		}
		rows[i] = Row{l.Label, l.Steps, l.ClaimedStitches, l.ClaimedChangeStitches, l.Direction}
	}
	return rows
}

// unread is how many lines could not be read.
func unread(lines []Line) (n int) {
	for i := range lines {
		if lines[i].info.kind == lineUnread {
			n++
		}
	}
	return n
}
