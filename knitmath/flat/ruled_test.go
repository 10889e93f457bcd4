package flat

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// follow works a rule as a knitter reads it, over so many stitches of which one is the marked centre, and gives
// one operation after the other.
func follow(t *testing.T, rule string, stitches int) []string {
	t.Helper()
	takes := map[string]int{"M1L": 0, "M1R": 0, "M1LP": 0, "M1RP": 0, "p2tog": 2, "ssp": 2, "CDD": 3}
	to := regexp.MustCompile(`^([kp]) to (?:(\d) sts? before )?(centre st|last st|end)$`)
	var ops []string
	at := 0
	for _, words := range strings.Split(rule, ", ") {
		plain, upTo := "", at+1
		if found := to.FindStringSubmatch(words); found != nil {
			plain = found[1]
			upTo = map[string]int{"centre st": stitches / 2, "last st": stitches - 1, "end": stitches}[found[3]]
			if found[2] != "" {
				before, _ := strconv.Atoi(found[2])
				upTo -= before
			}
		} else if words == "k1" || words == "p1" {
			plain = words[:1]
		} else if n, ok := takes[words]; ok {
			ops, at = append(ops, words), at+n
			continue
		} else {
			t.Fatalf("%q in %q", words, rule)
		}
		for ; at < upTo; at++ {
			ops = append(ops, plain)
		}
	}
	if at != stitches {
		t.Fatalf("%q takes %d of %d stitches", rule, at, stitches)
	}
	return ops
}

// written are the operations of a row, one after the other.
func written(steps []stitch.Step) (ops []string) {
	for _, s := range steps {
		for range max(s.Count, s.Times) {
			if s.Group != nil {
				ops = append(ops, written(s.Group)...)
				continue
			}
			ops = append(ops, strings.ToLower(stitch.RowOf(stitch.Do(s.Op, 1)).Text()))
		}
	}
	return ops
}

// unfolded has what is in brackets as often as it is to come.
func unfolded(line string) string {
	inTurn := regexp.MustCompile(`\[([^]]*)\] (\d+|twice)( more)?( times)?`)
	return inTurn.ReplaceAllStringFunc(line, func(s string) string {
		part := inTurn.FindStringSubmatch(s)
		n, err := strconv.Atoi(part[2])
		if err != nil {
			n = 2
		}
		return strings.TrimSuffix(strings.Repeat(part[1]+", then ", n), ", then ")
	})
}

// rowsTold are the rows that the directions give for a rule.
func rowsTold(t *testing.T, lines []string) map[int]bool {
	told := map[int]bool{}
	last := 0
	row := func(n int) { told[n], last = true, n }
	number := func(s string) int { n, _ := strconv.Atoi(s); return n }
	for _, line := range lines {
		if first := regexp.MustCompile(`^Row (\d+) \([RW]S, (?:in|de)crease row\)`).FindStringSubmatch(line); first != nil {
			row(number(first[1]))
		}
		if list := regexp.MustCompile(` on rows (.*) too, `).FindStringSubmatch(line); list != nil {
			for _, part := range regexp.MustCompile(`, | and `).Split(list[1], -1) {
				from, to, found := strings.Cut(part, "-")
				if !found {
					to = from
				}
				for n := number(from); n <= number(to); n++ {
					row(n)
				}
			}
		}
		if !strings.HasPrefix(line, "Work the ") || strings.Contains(line, " on rows ") {
			continue
		}
		for _, run := range strings.Split(regexp.MustCompile(`(on the |every ).*`).FindString(unfolded(line)), ", then ") {
			times := 1
			if many := regexp.MustCompile(`(\d+) (?:more )?times`).FindStringSubmatch(run); many != nil {
				times = number(many[1])
			} else if strings.Contains(run, "twice") {
				times = 2
			}
			var every []int
			for _, interval := range regexp.MustCompile(`every row|next row|(\d+)(?:st|nd|rd|th)`).FindAllStringSubmatch(run, -1) {
				every = append(every, max(number(interval[1]), 1))
			}
			for range times {
				for _, n := range every {
					row(last + n)
				}
			}
		}
	}
	return told
}

// Shapes with a centre stitch are told by one row for each side and by when it is worked: read as a knitter reads them,
// these are the rows of the answer, stitch by stitch, and no others.
func TestRulesAreTheRows(t *testing.T) {
	ruled, listed := 0, 0
	for _, g := range []gauge.Gauge{{Stitches: 12, Rows: 17}, {Stitches: 18, Rows: 24}, {Stitches: 20, Rows: 28}, {Stitches: 22, Rows: 30},
		{Stitches: 20, Rows: 39}, {Stitches: 16, Rows: 32}, {Stitches: 20, Rows: 36}} {
		for cm := 4.0; cm <= 120; cm += float64(knittest.Sweep(4, 19)) {
			for _, in := range []Input{{Form: FormTriangleFromTop, WidthCm: &cm}, {Form: FormMitredSquare, SideCm: &cm},
				{Form: FormMitredSquare, SideCm: &cm, Direction: DirectionInwards}, {Form: FormMitredSquare, SideCm: &cm, ToleranceRows: new(0.0)}} {
				in.Gauge = &g
				out, err := PlanFlatShape(in)
				if err != nil || len(out.Rows) < leastRuled {
					continue
				}
				at, lines := fmt.Sprintf("%v by %v, form %d of %v cm", g.Stitches, g.Rows, in.Form, cm), out.Directions()
				r := out.rule()
				all := strings.Join(lines, "\n")
				told := rowsTold(t, lines)
				before, ruledRows, after := out.parts()
				for _, row := range slices.Concat(before, after) {
					if one := fmt.Sprintf("Row %d (%v): %s (", row.RowNumber, row.Side, row.Instruction.Row.Text()); !strings.Contains(all, one) {
						t.Fatalf("%s: no %q:\n%s", at, one, all)
					}
				}
				for _, row := range ruledRows {
					if !strings.Contains(all, r.of(row.Side)) {
						t.Fatalf("%s: no rule for %v rows:\n%s", at, row.Side, all)
					}
					var got []string
					for _, op := range follow(t, r.of(row.Side), row.Instruction.StartStitches) {
						if len(op) == 1 {
							op += "1"
						}
						got = append(got, strings.ToLower(op))
					}
					if want := written(row.Instruction.Row.Steps); strings.Join(got, " ") != strings.Join(want, " ") {
						t.Fatalf("%s, row %d: the rule is\n%v, the row\n%v", at, row.RowNumber, got, want)
					}
					if !told[row.RowNumber] {
						t.Fatalf("%s: row %d is not told:\n%s", at, row.RowNumber, all)
					}
				}
				if len(told) != len(ruledRows) || len(lines) > 11 {
					t.Fatalf("%s: %d rows told of %d:\n%s", at, len(told), len(ruledRows), all)
				}
				ruled++
				if strings.Contains(all, " on rows ") { // where no more than the least departure is allowed
					listed++
					if in.ToleranceRows == nil {
						t.Errorf("%s: %s", at, all)
					}
				}
			}
		}
	}
	if ruled < knittest.Sweep(400, 100) || listed == 0 {
		t.Errorf("%d ruled, %d of them listed", ruled, listed)
	}
}

// told gives a notice of a reason.
func noticed(list []report.Notice, reason report.Reason) string {
	for _, n := range list {
		if n.Reason == reason {
			return n.Description
		}
	}
	return ""
}

// In garter stitch, of 1.9 to 2 rows to a stitch, right-side rows are enough, and nothing is said of both sides. A triangle
// that is as high as its notice says needs right-side rows alone too.
func TestBothSidesAreToldWhereTheyShape(t *testing.T) {
	for rows := 38.0; rows <= 44; rows += 0.2 {
		for _, in := range []Input{{Form: FormTriangleFromTop, WidthCm: new(60.0)}, {Form: FormMitredSquare, SideCm: new(20.0)}} {
			in.Gauge = &gauge.Gauge{Stitches: 20, Rows: rows}
			out, err := PlanFlatShape(in)
			if err != nil || noticed(out.Notices, ShapedOnBothSides) != "" {
				t.Errorf("%v rows: %v, %v", rows, err, out.Notices)
			}
		}
	}
	size := regexp.MustCompile(`from about ([0-9.]+) cm high`)
	offered := 0
	for _, form := range []Form{FormTriangleFromPoint, FormTriangleFromSide} {
		for wide := 10.0; wide < 80; wide += 7 {
			for high := 5.0; high < 60; high += 5 {
				in := Input{Form: form, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthCm: &wide, HeightCm: &high}
				out, err := PlanFlatShape(in)
				if err != nil || noticed(out.Notices, ShapedOnBothSides) == "" {
					continue
				}
				cm, _ := strconv.ParseFloat(size.FindStringSubmatch(noticed(out.Notices, ShapedOnBothSides))[1], 64)
				in.HeightCm = &cm
				again, err := PlanFlatShape(in)
				offered++
				if each := out.Rows[0].Instruction.EndStitches - out.Rows[0].Instruction.StartStitches; each*each == 4 &&
					(err != nil || noticed(again.Notices, ShapedOnBothSides) != "") {
					t.Errorf("%v by %v cm: %v was offered: %v, %v", wide, high, cm, err, again.Notices)
				}
			}
		}
	}
	if offered < 20 {
		t.Errorf("%d offered", offered)
	}
}

// A triangle may lie further off its sides where that is asked, for rows that are easier to remember.
func TestTrianglesTakeATolerance(t *testing.T) {
	for _, form := range []Form{FormTriangleFromPoint, FormTriangleFromSide} {
		in := Input{Form: form, Gauge: &gauge.Gauge{Stitches: 22, Rows: 30}, WidthCm: new(60.0), HeightCm: new(40.0)}
		usual, err := PlanFlatShape(in)
		if err != nil {
			t.Fatal(err)
		}
		in.ToleranceRows = new(8.0)
		easy, err := PlanFlatShape(in)
		if err != nil || easy.Effort >= usual.Effort || easy.GreatestDepartureStitches <= usual.GreatestDepartureStitches {
			t.Errorf("form %d: effort %d after %d: %v", form, easy.Effort, usual.Effort, err)
		}
	}
}
