package service

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	pb "example.com/knitmath/gen/knitmath/v1"
)

// A stretch is shaping rows that all do the same.
type stretch struct {
	rows   []*pb.ShapingRow
	change int32
	runs   int
}

func stretches(a *pb.PlanShapedSideResponse) []stretch {
	var all []stretch
	for _, s := range a.Stretches {
		if s.ShapingRows == 0 {
			continue
		}
		x := stretch{change: s.RowChangeStitches, runs: len(s.Intervals)}
		for _, r := range a.Rows {
			if r.RowNumber >= s.FirstRowNumber && r.RowNumber <= s.LastRowNumber {
				x.rows = append(x.rows, r)
			}
		}
		all = append(all, x)
	}
	return all
}

var (
	shapingLine = regexp.MustCompile(`(?i)(inc|dec) 1 st (each end of|at end of|each side of) (?:Row|Rnd) (\d+)((?:, then every [^,]*)*)$`)
	everyLine   = regexp.MustCompile(`then every (?:(\d+)(?:st|nd|rd|th) )?(?:row|rnd) (\d+) more times?`)
)

// shapingRows are the rows that a printed line of shaping names, what each changes at
// all its edges, and in how many runs it is said.
func shapingRows(line string) (rows []int, change, runs int, ok bool) {
	m := shapingLine.FindStringSubmatch(line)
	if m == nil {
		return nil, 0, 0, false
	}
	change = 2
	if m[2] == "at end of" {
		change = 1
	}
	if strings.EqualFold(m[1], "dec") {
		change = -change
	}
	row, _ := strconv.Atoi(m[3])
	rows = append(rows, row)
	for _, e := range everyLine.FindAllStringSubmatch(m[4], -1) {
		every, _ := strconv.Atoi("0" + e[1])
		times, _ := strconv.Atoi(e[2])
		for range times {
			row += max(every, 1)
			rows = append(rows, row)
		}
		runs++
	}
	return rows, change, runs, true
}

// sameShaping compares tapers: the same rows shape, by as much, in no more runs.
func sameShaping(got []stretch, lines []string) string {
	at := -1
	for _, line := range lines {
		rows, change, runs, ok := shapingRows(line)
		if !ok {
			if strings.HasSuffix(line, " sts") && at >= 0 && at < len(got) {
				if d := sameCount(got[at].rows[len(got[at].rows)-1].EndStitches, line); d != "" {
					return d
				}
			}
			continue // rows worked even follow from the others
		}
		if at++; at >= len(got) {
			return "fewer stretches than printed"
		}
		var numbers []int
		for _, r := range got[at].rows {
			numbers = append(numbers, int(r.RowNumber))
		}
		if !slices.Equal(numbers, rows) || got[at].change != int32(change) || got[at].runs > runs {
			return fmt.Sprintf("%d each on rows %v in %d runs for %s", got[at].change, numbers, got[at].runs, line)
		}
	}
	if at != len(got)-1 {
		return "more stretches than printed"
	}
	return ""
}

var roundLine = regexp.MustCompile(`^Rnd (\d+): (.*)$`)

// sameYoke compares the rounds that decrease, and the counts between.
func sameYoke(a *pb.PlanCircularYokeResponse, lines []string) string {
	if d := sameCount(a.JoinStitches, lines[0]); d != "" {
		return d
	}
	if 2*len(a.Rounds)+1 != len(lines) {
		return fmt.Sprintf("%d rounds decrease", len(a.Rounds))
	}
	for i, r := range a.Rounds {
		m := roundLine.FindStringSubmatch(lines[2*i+1])
		if m == nil || m[1] != strconv.Itoa(int(r.RoundNumber)) {
			return fmt.Sprintf("round %d for %s", r.RoundNumber, lines[2*i+1])
		}
		if d := firstOf(sameRow(r.Instruction.Text, m[2], true, false), sameCount(r.EndStitches, lines[2*i+2])); d != "" {
			return d
		}
	}
	return ""
}

// sameRaglan compares the rounds in which each part decreases, and the counts that are
// left. Other lines say what those leave.
func sameRaglan(a *pb.PlanRaglanResponse, lines []string) string {
	got := map[string][]int{}
	back, sleeve := a.Back.StartStitches, a.Sleeve.StartStitches
	for _, r := range a.Rounds {
		if r.BackStitches < back {
			got["Front and back"] = append(got["Front and back"], int(r.RoundNumber))
		}
		if r.SleeveStitches < sleeve {
			got["Sleeves"] = append(got["Sleeves"], int(r.RoundNumber))
		}
		back, sleeve = r.BackStitches, r.SleeveStitches
	}
	part, left := "", map[string]int32{"Front and back": a.Back.EndStitches, "Sleeves": a.Sleeve.EndStitches}
	for _, line := range lines {
		name, _, _ := strings.Cut(line, ":")
		if rows, _, _, ok := shapingRows(line); ok {
			if part = name; !slices.Equal(got[part], rows) {
				return fmt.Sprintf("rounds %v for %s", got[part], line)
			}
		} else if strings.HasSuffix(line, " each") {
			if d := sameCount(left[part], line); d != "" {
				return d
			}
		}
	}
	return firstOf(sameCount(a.JoinStitches, lines[0]), sameCount(a.NeckStitches, lines[len(lines)-1]))
}

// sameButtonholes compares the two rows of the holes.
func sameButtonholes(a *pb.PlanButtonholesResponse, lines []string) string {
	if len(a.Rows) != 2 {
		return fmt.Sprintf("%d rows", len(a.Rows))
	}
	for i, r := range a.Rows {
		label, row, _ := strings.Cut(lines[i], ": ")
		if label != fmt.Sprintf("Row %d", r.RowNumber) {
			return fmt.Sprintf("row %d for %s", r.RowNumber, lines[i])
		}
		if row == "cast on 2 over each gap" && strings.Contains(r.Instruction.Text, "CO 2") {
			continue
		}
		if d := sameRow(r.Instruction.Text, row, false, true); d != "" {
			return d
		}
	}
	return sameCount(a.Rows[1].Instruction.EndStitches, lines[2])
}

// sameWedge compares short rows, those that resolve the turns apart.
func sameWedge(a *pb.PlanWedgeResponse, lines []string) string {
	at := 0
	for _, r := range a.Rows {
		if r.Resolving {
			continue
		}
		want := fmt.Sprintf("Row %d: %s", r.RowNumber, r.Instruction.Text)
		if at == len(lines)-1 || lines[at] != want {
			return want + " for " + lines[at]
		}
		at++
	}
	if at != len(lines)-1 {
		return fmt.Sprintf("%d rows", at)
	}
	return ""
}
