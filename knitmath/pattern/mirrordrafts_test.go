package pattern

import (
	"strings"
	"testing"
)

// unpartnered are what comes back as its equal when it is mirrored twice: what has no partner of its
// own kind, and the rest of a row that is as many stitches as remained of it.
var unpartnered = strings.NewReplacer("sk2p", "sssk", "skp", "ssk", "last 0 (4, 2) sts, k to end", "last 0 (4, 2) sts, k0 (4, 2)",
	"last 0 (0, 2) sts, k to end", "last 0 (0, 2) sts, k0 (0, 2)")

// TestDraftsForTheOtherEdge: of every whole draft each row is mirrored where it stands, or stands as it
// was and is named; all else is as it was; mirrored twice it is the draft again. Written anew, it
// is left as given nowhere.
func TestDraftsForTheOtherEdge(t *testing.T) {
	rows, kept := 0, 0
	for _, text := range wholeDrafts(t) {
		name, _, _ := strings.Cut(text, "\n")
		if f, err := FormatInstructions(FormatInstructionsInput{Text: text}); err != nil || len(f.Notices) > 0 {
			t.Errorf("%s is left as given: %v, %v", name, err, f.Notices)
		}
		m, err := MirrorInstructions(MirrorInstructionsInput{Text: text})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		named := map[int]bool{}
		for _, f := range m.Findings {
			named[f.LineNumber] = named[f.LineNumber] || f.Reason == ReasonNoMirror
		}
		before, after := Read(text, Options{}), Read(m.Text, Options{})
		if len(before.Lines) != len(after.Lines) || len(m.Rows) != len(before.Lines) {
			t.Errorf("%s: %d lines, mirrored %d, %d rows", name, len(before.Lines), len(after.Lines), len(m.Rows))
			continue
		}
		for i := range before.Lines {
			was, is := &before.Lines[i], &after.Lines[i]
			if was.info.kind == lineRow {
				rows++
			}
			if line := strings.Count(text[:was.info.at.start], "\n") + 1; mirroredOrNamed(t, was, is, named[line]) {
				kept++
			}
		}
		twice, err := MirrorInstructions(MirrorInstructionsInput{Text: m.Text})
		if err != nil {
			t.Errorf("%s mirrored: %v", name, err)
		}
		if a, b := unpartnered.Replace(Text(before.Lines, 0)), unpartnered.Replace(Text(Read(twice.Text, Options{}).Lines, 0)); a != b {
			t.Errorf("%s mirrored twice is\n%s", name, b)
		}
	}
	t.Logf("%d rows, %d of them left as they were", rows, kept)
}

// mirroredOrNamed holds a line to the one that has become of it, and reports whether it is a row that is
// left as it was.
func mirroredOrNamed(t *testing.T, was, is *Line, named bool) bool {
	t.Helper()
	same := is.Text(0) == was.Text(0)
	switch {
	case was.info.kind != lineRow && !same:
		t.Errorf("%q has become %q", was.Text(0), is.Text(0))
	case was.info.kind != lineRow:
	case len(is.Steps) == 0:
		t.Errorf("%q is left empty", was.Text(0))
	case same && named:
		return true
	case same && !ownMirrorImage(was):
		t.Errorf("line %d: %q stands as it was, and is not named", was.info.at.line, was.Text(0))
	}
	return false
}

// ownMirrorImage reports whether a row is its own mirror image.
func ownMirrorImage(l *Line) bool {
	p := readRow((&Line{Steps: l.Steps}).Text(0), max(1, sizesOf(l)), nil)
	m := p.Mirror()
	return Text(m.Lines, 0) == Text(p.Lines, 0)
}

func sizesOf(l *Line) int {
	n := len(l.ClaimedStitches)
	for i := range l.Steps {
		n = max(n, len(l.Steps[i].Times), len(l.Steps[i].RemainingStitches))
		for k := range l.Steps[i].Steps {
			n = max(n, len(l.Steps[i].Steps[k].Times))
		}
	}
	return n
}

// TestRowsForTheOtherEdgeWhereTheyStand: words that lead a row in, bold, and rows that are written as
// others stay; colours and edges are for a person.
func TestRowsForTheOtherEdgeWhereTheyStand(t *testing.T) {
	for text, want := range map[string]string{
		"CO 40 sts and join.\nRnd 1: With MC, k1, ssk, k to end.\n**Rnd 2:** K2, *k2tog, yo; rep from * to last st, k1.":// bold
		"CO 40 sts and join.\nRnd 1: With MC, k to last 3 sts, k2tog, k1.\n**Rnd 2:** k1, [yo, ssk] to last 2 sts, k2.",
		"LEFT FRONT\n\nCO 40 sts.\nRow 1: K1, ssk, k to end. 39 sts\nRow 2: Purl.\nRow 3: Rep Row 1. [38 sts]\n\nMake another.":// copied
		"LEFT FRONT\n\nCO 40 sts.\nRow 1: k to last 3 sts, k2tog, k1 (39 sts)\nRow 2: p to end.\nRow 3: Rep Row 1. [38 sts]\n\nMake another.",
		"CO 40 sts.\nRow 1: K1 MC, k2tog MC, k to end.":// colours
		"CO 40 sts.\nRow 1: K1 MC, k2tog MC, k to end.",
		"Pick up and knit 16 sts along left front, pick up and knit 3 sts along right front. 19 sts":// edges
		"Pick up and knit 16 sts along left front, pick up and knit 3 sts along right front. 19 sts",
	} {
		m, err := MirrorInstructions(MirrorInstructionsInput{Text: text})
		if err != nil || m.Text != want {
			t.Errorf("%v\n%s\nwant\n%s", err, m.Text, want)
		}
	}
}
