package pattern

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// found lists findings as "line:column REASON".
func found(list []Finding) string {
	parts := make([]string, len(list))
	for i, f := range list {
		parts[i] = fmt.Sprintf("%d:%d %s", f.LineNumber, f.ColumnNumber, f.Reason)
	}
	return strings.Join(parts, ", ")
}

// TestReadings: what is read, written back in the plainest way, and what is said
// about it. Expected texts and columns are counted by hand.
func TestReadings(t *testing.T) {
	cases := []struct {
		text, want, found string
	}{
		// Numbers and words of one stitch.
		{"K5", "k5", ""},
		{"k 5, p 2", "k5, p2", ""},
		{"knit 5 sts, purl 2 stitches", "k5, p2", ""},
		{"k, p", "k1, p1", "1:1 READING_TAKEN, 1:4 READING_TAKEN"},
		{"k", "k to end", "1:1 READING_TAKEN"},
		{"Row 2: Purl.", "Row 2: p to end", ""},
		{"k all sts", "k to end", ""},
		{"k across", "k to end", ""},
		{"Rnd 3: knit around", "Rnd 3: k to end", ""},
		{"k rem sts", "k to end", ""},
		{"Knit the knit sts and purl the purl sts", "work to end", ""},
		{"work sts as they appear", "work to end", ""},
		{"work in pattern to last 3 sts, k3", "work to last 3 sts, k3", ""},
		{"work 12 sts in patt, k2", "work 12, k2", ""},
		{"k2 tog, p 2 tog, k3tog tbl, k4tog", "k2tog, p2tog, k3tog tbl, k4tog", ""},
		{"K2TOG, SSK, M1L, Yo, KFB, S2KP, s2kp2, CDD, sk2p", "k2tog, ssk, M1L, yo, kfb, CDD, CDD, CDD, sk2p", ""},
		{"k5 tbl, p1tbl, k1 through the back loop", "k5 tbl, p1 tbl, k1 tbl", ""},
		{"sl1, slip 1 wyif, sl 2 purlwise with yarn in back, sl1k", "sl 1, sl 1 wyif, sl 2 pwise wyib, sl 1 kwise", ""},
		{"sl 1 wyif pwise", "sl 1 pwise wyif", ""},
		{"BO 4, CO 6, pm, sm, sl m, place marker", "BO 4, CO 6, pm, sm, sm, pm", ""},
		{"bind off 4 sts, cast on 3 sts", "BO 4, CO 3", ""},
		{"BO all sts", "BO all sts", ""},
		{"yo2, yo twice", "[yo] twice, [yo] twice", "1:6 READING_TAKEN"},
		{"m1, m1p, k1b", "M1, M1P, k1b", "1:1 READING_TAKEN, 1:5 READING_TAKEN, 1:10 READING_TAKEN"},
		{"sl 1, k1, psso, k3, sl 1, k2tog, psso, sl 2 tog, k1, p2sso", "skp, k3, sk2p, CDD", ""},
		{"sl1-k1-psso, sl1-k2tog-psso", "skp, sk2p", ""},
		{"c4f, 2/2 RC, lt, kll", "c4f, 2/2 rc, lt, kll", ""},
		// Turns and short rows.
		{"k16, w&t", "k16, w&t", ""},
		{"k16, wrap and turn", "k16, w&t", ""},
		{"p5, turn", "p5, turn", ""},
		{"make DS, k1 DS, k3, k1 tog with its wrap, p DS, turn work", "make DS, k DS, k3, k1 tog with its wrap, p DS, turn", ""},
		// Repeats.
		{"[k2tog, k8] 4 times", "[k2tog, k8] 4 times", ""},
		{"(k1, p1) twice, {k2} once", "[k1, p1] twice, [k2] once", ""},
		{"(k1, p1) x 3", "[k1, p1] 3 times", ""},
		{"(k1, p1) three times", "[k1, p1] 3 times", ""},
		{"[k2tog] 3 times, ssk twice", "[k2tog] 3 times, [ssk] twice", "1:18 READING_TAKEN"},
		{"k1, k2tog 3 times", "k1, [k2tog] 3 times", "1:5 READING_TAKEN"},
		{"[k2, p2] to last 3 sts, k3", "[k2, p2] to last 3 sts, k3", ""},
		{"[k1, p1]", "[k1, p1] once", "1:1 READING_TAKEN"},
		{"*k2, p2; rep from * 3 more times", "[k2, p2] 4 times", ""},
		{"*k2, p2; rep from * 3 times", "[k2, p2] 4 times", "1:21 READING_TAKEN"},
		{"*k2, p2; rep from * once more, k2", "[k2, p2] twice, k2", ""},
		{"*k2, p2, rep from * to last 3 sts, k3", "[k2, p2] to last 3 sts, k3", ""},
		{"*k2, p2; repeat from * across", "[k2, p2] to end", ""},
		{"*k2, p2* rep from * to * 4 more times", "[k2, p2] 5 times", ""},
		{"*k1, **p1, k2; rep from ** once more, p1; rep from * to end", "[k1, [p1, k2] twice, p1] to end", ""},
		{"*k2, p2; rep from *, end k2", "[k2, p2] to last 2 sts, k2", "1:20 READING_TAKEN"},
		{"*k2, p2; rep from *, end last rep k1", "[k2, p2] to last 3 sts, k2, k1", "1:20 READING_TAKEN"},
		{"k to last 3 sts, k to 2 sts before end, k until 1 st rem", "k to last 3 sts, k to last 2 sts, k to last st", ""},
		{"(k1, yo, k1) in next st, (k1, p1) into the same stitch twice", "(k1, yo, k1) in next st, (k1, p1) in next st twice", ""},
		{"[k1,\n p1] 4 times,\nk2", "[k1, p1] 4 times, k2", ""},
		// Sizes.
		{"k5 (6, 7, 8)", "k5 (6, 7, 8)", ""},
		{"k(5, 6, 7, 8)", "k5 (6, 7, 8)", ""},
		{"k5 (6, 7) [8, 9], p1", "k5 (6, 7, 8, 9), p1", ""},
		{"k5 (-, 7), [k2, p2] 3 (4, 0) times", "k5 (0, 7), [k2, p2] 3 (4, 0) times", ""},
		{"(k1, p1) 3 (4, 5) times, k to last 2 (2, 3) sts", "[k1, p1] 3 (4, 5) times, k to last 2 (2, 3) sts", ""},
		{"k5 (6, 7), p1 (2)", "k5 (6, 7), p1 (2)", "1:12 SIZES_DISAGREE"},
		{"k5 (5, 5)", "k5", ""},
		{"k2 (k1, p1) twice", "k2, [k1, p1] twice", "1:4 READING_TAKEN"},
		// Claims.
		{"k to end (96 sts)", "k to end (96 sts)", ""},
		{"k5 (6, 7), k to end (96, 104, 112 sts)", "k5 (6, 7), k to end (96, 104, 112 sts)", ""},
		{"k5 (6, 7), k to end — 96 (104, 112) sts", "k5 (6, 7), k to end (96, 104, 112 sts)", ""},
		{"k5 (6, 7). 96 (-, 112) sts.", "k5 (6, 7) (96, -, 112 sts)", ""},
		{"k1, k2tog, k to end (1 st dec'd)", "k1, k2tog, k to end (1 st dec)", ""},
		// Labels.
		{"Row 1 (RS): k5", "Row 1 (RS): k5", ""},
		{"Rows 1-8: k", "Rows 1-8: k to end", "1:11 READING_TAKEN"},
		{"Rows 1, 3 and 5: k to end", "Rows 1, 3 and 5: k to end", ""},
		{"Row 2 and all WS rows: p to end", "Row 2 and all WS rows: p to end", ""},
		{"Set-up row (WS): p5", "Set-up row (WS): p5", ""},
		{"Next rnd: k5. Rnd 2: p5", "Next rnd: k5\nRnd 2: p5", ""},
		// Directions.
		{"CO 96 (104, 112) sts", "CO 96 (104, 112) sts", ""},
		{"Work even until piece measures 12.5 cm", "Work even until piece measures 12.5 cm", ""},
		{"Knit 4 rows. Purl 1 row.", "Knit 4 rows\nPurl 1 row", ""},
		{"Change to larger needles", "Change to larger needles", "1:1 PASSED_OVER"},
		// What cannot be read, and where.
		{"k5, foo 3", "k5, foo 3", "1:5 UNKNOWN_ABBREVIATION"},
		{"k5, inc, k3", "k5, inc, k3", "1:5 READING_TAKEN"},
		{"k5, m, k2", "k5, m, k2", "1:5 AMBIGUOUS"},
		{"k1, yf, k2", "k1, yo, k2", "1:5 READING_TAKEN"},
		{"p1, yf, k2", "p1, yf, k2", "1:5 AMBIGUOUS"},
		{"k to marker", "k to m", ""},
		{"[k to 2 sts before m, k2tog, sm] 3 (4) times", "[k to 2 sts before m, k2tog, sm] 3 (4) times", ""},
		{"[k2, p2 4 times\nRow 2: k3", "[k2, p2 4 times\nRow 2: k3", "1:6 READING_TAKEN, 1:1 BRACKET_NOT_CLOSED"},
		{"[k2, p2) 4 times", "[k2, p2) 4 times", "1:1 BRACKET_NOT_CLOSED"},
		{"k2, p2] 4 times", "k2, p2] 4 times", "1:7 BRACKET_NOT_OPENED"},
		{"*k2, p2", "*k2, p2", "1:1 STAR_WITHOUT_REPEAT"},
		{"k2; rep from * to end", "k2; rep from * to end", "1:5 REPEAT_WITHOUT_STAR"},
		{"k5, turn, k5", "k5, turn\nk5", ""},
		{"[k5, turn, k5] twice", "[k5, turn, k5] twice", "1:6 TURN_NOT_LAST"},
		{"[k2, p to end] twice", "[k2, p to end] twice", "1:6 TO_LAST_IN_GROUP"},
		{"yo to end", "yo to end", "1:1 NEVER_GETS_THERE"},
		{"k10001", "k10001", "1:1 TOO_LARGE"},
		{"[[[[[k1] twice] twice] twice] twice] twice", "[[[[[k1] twice] twice] twice] twice] twice", "1:5 TOO_LARGE"},
		{"k3, ()", "k3, ()", "1:5 NOTHING_TO_WORK"},
		{"Row 1:", "Row 1:", "1:1 NOTHING_TO_WORK"},
		{"[k2] 3 more times", "[k2] 3 more times", "1:6 AMBIGUOUS"},
		{"é5, k2", "é5, k2", "1:1 UNKNOWN_ABBREVIATION"},
		{"Row 1: k5\n  Größe, k2", "Row 1: k5\nGröße, k2", "2:3 NOT_READ"},
	}
	for _, c := range cases {
		p := Read(c.text, Options{})
		if got := Text(p.Lines, RepeatStyleBrackets); got != c.want {
			t.Errorf("%q reads as %q, want %q", c.text, got, c.want)
		}
		if got := found(p.found.list); got != c.found {
			t.Errorf("%q: found %s, want %s", c.text, got, c.found)
		}
	}
}

// TestEveryOperationReadsBack: what package stitch writes is read as the same
// operation with the same number.
func TestEveryOperationReadsBack(t *testing.T) {
	for _, op := range stitch.Ops() {
		for n := 1; n <= 3; n++ {
			if op.EndsRow() && n > 1 {
				continue
			}
			text := stitch.RowOf(stitch.Do(op, n)).Text()
			p := readRow(text, 1, nil)
			if op == stitch.Hold { // alone it is a direction, as designers write it
				if info := p.Lines[0].info; info.kind != lineHold || len(info.counts) != 1 || info.counts[0] != n {
					t.Errorf("%q reads as %+v", text, p.Lines)
				}
				continue
			}
			if len(p.Lines) != 1 || len(p.Lines[0].Steps) != 1 {
				t.Errorf("%q: %+v", text, p.Lines)
				continue
			}
			s := p.Lines[0].Steps[0]
			want := op
			if op == stitch.ShortRowYO { // written like any other
				want = stitch.YO
			}
			if s.Operation != want || len(s.Times) != 1 || s.Times[0] != n {
				t.Errorf("%q reads as %d times %s", text, s.Times, s.Operation)
			}
			if op.Takes() == 0 {
				continue
			}
			for _, last := range []int{0, 1, 5} {
				text := stitch.RowOf(stitch.ToLast(op, last)).Text()
				s := Read(text, Options{}).Lines[0].Steps
				if len(s) != 1 || s[0].Operation != op || len(s[0].RemainingStitches) != 1 || s[0].RemainingStitches[0] != last {
					t.Errorf("%q reads as %+v", text, s)
				}
			}
		}
	}
}

// TestDeclared: the caller's own abbreviations.
func TestDeclared(t *testing.T) {
	own := []Abbreviation{{"MB", 1, 1}, {"sh", 5, 7}, {"yf", 0, 1}}
	p := Read("k2, mb, [sh] 3 times, yf, k to end", Options{Abbreviations: own})
	w := p.Work(Start{Counts: []int{20}}) // 2 + 1 + 15 taken, 2 left for k: 2 + 1 + 21 + 1 + 2 left
	if len(w.Findings) != 0 || w.EndStitches[0] != 27 {
		t.Errorf("%+v", w)
	}
	for name, want := range map[string]bool{"MB": true, "sh": true, "inc": true, "k1b": true, "M1": true, "k2tog": false, "k5": false,
		"": false, "two words": false, "5x": false, "rep": false, "K": false, strings.Repeat("n", 21): false, "a-": false} {
		if why, ok := declarable(name); ok != want {
			t.Errorf("%q can be declared: %v, %s", name, ok, why)
		}
	}
}
