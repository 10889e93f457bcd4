package pattern

import (
	"go/ast"
	goparser "go/parser"
	gotoken "go/token"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/report"
)

// whyCases are texts that a reason is found in, alone, with its place, on so many
// stitches.
var whyCases = []struct {
	reason report.Reason
	kind   Kind
	text   string
	on     int
	place  string
}{
	{ReasonUnworked, KindMistake, "k5", 6, "1:1"},
	{ReasonMissing, KindMistake, "k5", 4, "1:1"},
	{ReasonMissing, KindMistake, "BO 6 sts at beg of next 2 rows", 9, "1:1"}, // 9 - 6 leaves 3
	{ReasonUneven, KindMistake, "[k2] to end", 5, "1:1"},
	{ReasonClaim, KindMistake, "k5 (6 sts)", 5, "1:5"},
	{ReasonClaim, KindMistake, "kfb, k4 (2 sts inc)", 5, "1:10"},
	{ReasonClaim, KindMistake, "CO 6 sts at beg of next 2 rows (20 sts)", 9, "1:33"}, // 9 + 12
	{ReasonRows, KindMistake, "Knit 4 rows (6 rows)", 5, "1:14"},
	{ReasonSizes, KindMistake, "k5 (-, 5 sts)", 5, "1:4"},
	{ReasonSide, KindMistake, "Row 1 (RS): knit\nRow 2 (RS): knit", 5, "2:8"},
	{ReasonRowNumber, KindMistake, "Row 1: knit\nRow 3: knit", 5, "2:5"},
	{ReasonRowNumber, KindMistake, "Rows 4-2: knit", 5, "1:6"},
	{ReasonNoRow, KindMistake, "Rep Rows 1 and 2 twice more", 5, "1:1"},
	{ReasonOpenBracket, KindMistake, "[k2, p1", 3, "1:1"},
	{ReasonOpenBracket, KindMistake, "[k2)", 2, "1:1"},
	{ReasonOpenBracket, KindMistake, "k5 (5 sts", 5, "1:4"},
	{ReasonStray, KindMistake, "k2], p1", 3, "1:3"},
	{ReasonOpenStar, KindMistake, "*k2, p2", 4, "1:1"},
	{ReasonNoStar, KindMistake, "k4; rep from * to end", 4, "1:5"},
	{ReasonNoStar, KindMistake, "*k2; rep from ** to end", 4, "1:15"},
	{ReasonEmpty, KindMistake, "[] twice", 4, "1:1"},
	{ReasonEmpty, KindMistake, "Row 1:", 4, "1:1"},
	{ReasonTurnInside, KindMistake, "[k2, turn] twice", 4, "1:6"},
	{ReasonStretch, KindMistake, "[k to end] twice", 4, "1:2"},
	{ReasonNever, KindMistake, "yo to end", 4, "1:1"},
	{ReasonHands, KindQuestion, "k2, M1L", 2, "1:5"}, // no strand after the last stitch
	{ReasonTooLarge, KindMistake, "k10001", 4, "1:1"},
	{ReasonTooLarge, KindMistake, "Row 10001: knit", 4, "1:5"},
	{ReasonTooLarge, KindMistake, "k5 (10001 sts)", 5, "1:5"},
	{ReasonTooLarge, KindMistake, strings.Repeat("[", 7) + "k1, p1" + strings.Repeat("] twice", 7), 4, "1:6"}, // five deep is the most
	{ReasonTooLarge, KindMistake, "Row " + strings.Repeat("1, ", 70) + "1: knit", 4, "1:1"},                   // a label of 214 characters
	{ReasonTooLarge, KindMistake, "CO 6000 sts at beg of next row", 5_000, "1:1"},
	{ReasonMarker, KindMistake, "Row 1: k2, pm, k2\nRow 2: p1, sm, p3", 4, "2:12"},
	{ReasonSizesUnknown, KindQuestion, "The larger sizes: knit 2 rows", 4, "1:1"},
	{ReasonNoMarker, KindQuestion, "k to m, k2", 4, "1:1"},
	{ReasonTooMany, KindMistake, "Row 1: knit\nRep Row 1 10000 more times", 4, "1:1"},
	{ReasonTooMany, KindMistake, strings.Repeat("k1, ", MaxSteps) + "k1", 4, "1:20001"},
	{ReasonTooMany, KindMistake, strings.Repeat("Knit 1 row\n", MaxLines+1), 4, "501:1"},
	{ReasonTooMany, KindMistake, strings.Repeat("Rep last 9999 rows\n", 11), 0, "11:10"}, // beyond 100 000 rows named
	{ReasonUnknown, KindQuestion, "k2, foo", 4, "1:5"},
	{ReasonUnread, KindQuestion, "k2, 5, p1", 4, "1:5"},
	{ReasonAmbiguous, KindQuestion, "m, k3", 4, "1:1"},
	{ReasonAmbiguous, KindQuestion, "[k1] 3 more times", 4, "1:6"},
	{ReasonOpenRows, KindQuestion, "Row 1: ssk, k to end\nRep Row 1 until 9 cm", 9, "2:1"},
	{ReasonReading, KindReading, "k2, m1, k2", 4, "1:5"},
	{ReasonOpenLength, KindReading, "Work even until 9 cm", 4, "1:1"},
	{ReasonCountTaken, KindReading, "foo, k3 (3 sts)", 4, "1:9"},
	{ReasonPassedOver, KindReading, "Break yarn", 4, "1:1"},
	// The machine works 200 000 stitches of one text, at 3 each and 100 a row: 33 rows
	// of 2 000.
	{ReasonCountedOnly, KindReading, "Row 1: k1, M1L, k to last 3 sts, k2tog, k1\nRep Row 1 40 more times", 2_000, "1:1"},
}

// A text that shows one thing shows it alone, with the kind that its reason has.
func TestWhy(t *testing.T) {
	for _, c := range whyCases {
		var start Start
		if c.on > 0 {
			start.Counts = []int{c.on}
		}
		w := Read(c.text, Options{}).Work(start)
		if want := c.place + " " + string(c.reason); !slices.Contains(strings.Split(found(w.Findings), ", "), want) {
			t.Errorf("%.60q: found %.200s; want %s", c.text, found(w.Findings), want)
			continue
		}
		for _, f := range w.Findings {
			if f.Reason == c.reason && f.Kind != c.kind {
				t.Errorf("%.60q: %s is of kind %d, want %d", c.text, f.Reason, f.Kind, c.kind)
			}
		}
	}
}

// Every reason of the room is shown by a text: those above, and the others here.
func TestEveryReasonIsSent(t *testing.T) {
	// These have tests of their own, TestLeftAsGiven and below.
	shown := map[report.Reason]bool{ReasonNoMirror: true, ReasonMirrorNote: true, ReasonTooManyFindings: true, ReasonLeftAsGiven: true}
	for _, c := range whyCases {
		shown[c.reason] = true
	}
	file, err := goparser.ParseFile(gotoken.NewFileSet(), "reasons.go", nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	ast.Inspect(file, func(n ast.Node) bool {
		spec, ok := n.(*ast.ValueSpec)
		if !ok {
			return true
		}
		value, err := strconv.Unquote(spec.Values[0].(*ast.BasicLit).Value)
		if err != nil || !shown[report.Reason(value)] {
			t.Errorf("%s = %q is shown by no text, %v", spec.Names[0].Name, value, err)
		}
		return true
	})
}

// Mirroring has reasons of its own.
func TestWhyMirrored(t *testing.T) {
	out, err := MirrorInstructions(MirrorInstructionsInput{Text: "k4, turn\nkfb, k3"})
	if err != nil || found(out.Findings) != "1:5 NO_MIRROR, 2:1 MIRROR_REMARK" {
		t.Errorf("found %s, %v", found(out.Findings), err)
	}
	if want := "1 row mirrored, 1 line left as given."; out.Summary() != want {
		t.Errorf("%q, want %q", out.Summary(), want)
	}
}

// More findings than are listed are counted, and the notice names the field that
// they were found in.
func TestTooManyFindings(t *testing.T) {
	many := strings.Repeat("kfb, ", MaxFindings+50) + "kfb"
	in := CheckInstructionsInput{Text: strings.Repeat("foo\n", MaxFindings+50), StartStitches: []int{9}}
	checked, err := CheckInstructions(t.Context(), in)
	if err != nil || checked.Agrees || len(checked.Findings) != MaxFindings {
		t.Fatalf("%d findings, %v", len(checked.Findings), err)
	}
	text, err := MirrorInstructions(MirrorInstructionsInput{Text: many})
	if err != nil {
		t.Fatal(err)
	}
	rows, err := MirrorInstructions(MirrorInstructionsInput{Rows: text.Rows})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		field   string
		notices []report.Notice
	}{{"text", checked.Notices}, {"text", text.Notices}, {"rows", rows.Notices}} {
		if len(c.notices) != 1 || c.notices[0].Reason != ReasonTooManyFindings || c.notices[0].Field != c.field {
			t.Errorf("%+v, want one in %s", c.notices, c.field)
		}
	}
	if want := "50 more are not"; !strings.Contains(checked.Notices[0].Description, want) {
		t.Errorf("%q, want %q in it", checked.Notices[0].Description, want)
	}
}
