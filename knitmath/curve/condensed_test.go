package curve

import (
	"context"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/stitch"
)

// What is condensed is read by the checker of written patterns, which finds the same
// counts and as many rows.
func TestCondensedIsReadBack(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 44))
	read := 0
	for range 1_500 {
		c := randomCourse(r, 30, 60)
		s := randomSettings(r)
		c.Gains = r.IntN(3) == 0
		c.RowsBefore = r.IntN(4)
		p, ok := Follow(c, s)
		if !ok {
			continue
		}
		start, sides := 100, 1
		if p.Right != nil && p.Left != nil {
			sides = 2
		}
		w := Wording{FirstRow: c.RowsBefore + 1, LastRow: c.RowsBefore + c.Rows, FirstSide: s.FirstSide, Start: start}
		if r.IntN(2) == 0 {
			w.Edge = "neck edge"
		}
		lines := p.Condensed(w)
		text, before := fmt.Sprintf("CO %d sts.\n", start), 0
		if SideOf(w.FirstRow, s.FirstSide) == stitch.WrongSide {
			text, before = text+"Work 1 row even.\n", 1
		}
		text += strings.Join(lines, "\n")
		out, err := pattern.CheckInstructions(context.Background(), pattern.CheckInstructionsInput{Text: text})
		if err != nil {
			t.Fatalf("%s\n%v", text, err)
		}
		end := start - sides*c.Stitches
		if c.Gains {
			end = start + sides*c.Stitches
		}
		if !out.Agrees || len(out.Findings) > 0 || out.EndStitches[0] != end || out.WorkedRows[0] != before+c.Rows {
			t.Fatalf("%s\n%s: %d stitches after %d rows, want %d after %d: %+v\n%+v", text, out.Summary(), out.EndStitches[0],
				out.WorkedRows[0], end, before+c.Rows, out.Findings, p)
		}
		read++
	}
	if read < 1_000 {
		t.Errorf("only %d read", read)
	}
}

// How the trade prints what comes often.
func TestCondensedWords(t *testing.T) {
	both := Settings{}
	right, left := Settings{Edges: EdgesRight}, Settings{Edges: EdgesLeft}
	for _, c := range []struct {
		name string
		path Path
		s    Settings
		want []string
	}{
		{"an armhole", From(Point{}).Ellipse(At(20, 56, dk, dkRows), LeavingAcross), both, []string{
			"BO 3 sts at beg of next 6 rows: 82 stitches.",
			"Dec 1 st each end of every RS row 7 times: 68 stitches.",
			"Dec 1 st each end of every 6th row 4 times: 60 stitches.",
			"Work 13 rows even."}},
		{"a neck, right", From(Point{}).Ellipse(At(10, 16, dk, dkRows), LeavingAcross), right, []string{
			"BO 3 sts at beg of next RS row and foll alt row: 94 stitches.",
			"Dec 1 st at beg of every RS row 4 times: 90 stitches.",
			"Work 5 rows even."}},
		{"a neck, left", From(Point{}).Ellipse(At(10, 16, dk, dkRows), LeavingAcross), left, []string{
			"Work 1 row even.",
			"BO 5 sts at beg of next WS row: 95 stitches.",
			"Dec 1 st at end of every RS row 5 times: 90 stitches.",
			"Work 5 rows even."}},
		{"a slope", From(Point{}).Line(At(10, 40, dk, dkRows)), both, []string{
			"Dec 1 st each end of next row, then every 4th row 9 times: 80 stitches.",
			"Work 3 rows even."}},
	} {
		course := c.path.Courses(dk, dkRows)[0]
		p, ok := Follow(course, Settings{Edges: c.s.Edges, Tolerance: 0.5})
		if !ok {
			t.Fatalf("%s: no plan", c.name)
		}
		got := p.Condensed(Wording{FirstRow: 1, LastRow: course.Rows, Start: 100})
		if strings.Join(got, "\n") != strings.Join(c.want, "\n") {
			t.Errorf("%s:\n%s\n%+v", c.name, strings.Join(got, "\n"), p)
		}
	}
}
