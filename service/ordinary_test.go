package service

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"

	pb "example.com/knitmath/gen/knitmath/v1"
)

// wantAsPrinted is how many of the thirty plans come out as a designer prints them today;
// the aim is 27.
const wantAsPrinted = 28

// An ordinaryPlan is a question and what a designer would print, written down by
// somebody who had seen no answer: testdata/ordinary.
type ordinaryPlan struct {
	ID, Method string
	Question   json.RawMessage
	printing
	Or []printing
}

// A printing is the working lines of a plan. Starts are other first rows that are as
// usual, a list for every run of shaping.
type printing struct {
	Printed []string
	Starts  [][]int
}

// The answers are those that a designer would print, by the rules of
// testdata/ordinary/README.md.
func TestOrdinaryPlansAreAsPrinted(t *testing.T) {
	server := start(t)
	var file struct{ Plans []ordinaryPlan }
	data, err := os.ReadFile(filepath.Join("..", "testdata", "ordinary", "plans.json"))
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(data, &file); err != nil {
		t.Fatal(err)
	}
	same := 0
	for _, p := range file.Plans {
		got := server.send(t, "POST", "/v1/"+p.Method, string(p.Question))
		if got.code != 200 {
			t.Errorf("%s: HTTP %d, %s", p.ID, got.code, got.body)
			continue
		}
		var why []string
		for _, alternative := range append([]printing{p.printing}, p.Or...) {
			for _, lines := range alternative.begun() {
				why = append(why, differs(t, p, got.body, lines))
			}
		}
		if slices.Contains(why, "") {
			same++
			continue
		}
		t.Logf("%s: %s; and of what else is printed: %q", p.ID, why[0], why[1:])
	}
	t.Logf("%d of %d come out as printed", same, len(file.Plans))
	if len(file.Plans) != 30 || same < wantAsPrinted {
		t.Errorf("%d of %d plans come out as a designer prints them; at least %d should", same, len(file.Plans), wantAsPrinted)
	}
}

var beginning = regexp.MustCompile(`(Row|Rnd) (\d+),`)

// begun is the plan, and the same with its runs of shaping begun in another row. Runs
// of a raglan's parts begin together: there are more lines than lists.
func (p printing) begun() [][]string {
	all := [][]string{p.Printed}
	for list, starts := range p.Starts {
		for _, lines := range slices.Clone(all) {
			for _, row := range starts {
				moved, at, by := slices.Clone(lines), 0, 0
				for i, line := range moved {
					m := beginning.FindStringSubmatch(line)
					if m == nil {
						continue
					}
					if at++; at-1 != list && len(p.Starts) > 1 {
						continue
					}
					from, _ := strconv.Atoi(m[2])
					if by == 0 {
						by = row - from
					}
					moved[i] = beginning.ReplaceAllString(line, "$1 "+strconv.Itoa(from+by)+",")
				}
				all = append(all, moved)
			}
		}
	}
	return all
}

// differs says in what an answer is not what is printed; nothing if it is.
func differs(t *testing.T, p ordinaryPlan, body []byte, lines []string) string {
	read := func(m proto.Message) {
		if err := protojson.Unmarshal(body, m); err != nil {
			t.Fatal(err)
		}
	}
	var round struct{ Construction string }
	if err := json.Unmarshal(p.Question, &round); err != nil {
		t.Fatal(err)
	}
	switch p.Method {
	case "shaping:planEvenSpacing":
		var a pb.PlanEvenSpacingResponse
		read(&a)
		return firstOf(sameRow(a.Instruction.Text, lines[0], round.Construction == "CONSTRUCTION_ROUND", true),
			sameCount(a.Instruction.EndStitches, lines[1]))
	case "shaping:planTaper":
		var a pb.PlanTaperResponse
		read(&a)
		return sameShaping([]stretch{{a.Rows, a.RowChangeStitches, len(a.Intervals)}}, lines)
	case "shaping:planShapedSide":
		var a pb.PlanShapedSideResponse
		read(&a)
		return sameShaping(stretches(&a), lines)
	case "yoke:planCircularYoke":
		var a pb.PlanCircularYokeResponse
		read(&a)
		return sameYoke(&a, lines)
	case "yoke:planRaglan":
		var a pb.PlanRaglanResponse
		read(&a)
		return sameRaglan(&a, lines)
	case "edge:planPickUp":
		var a pb.PlanPickUpResponse
		read(&a)
		// Where in the repeat the skipped rows lie may differ, as if it were a round.
		return firstOf(sameRow(a.Instruction.Text, lines[1], true, true), sameCount(a.Stitches.Count, lines[2]))
	case "edge:planButtonholes":
		var a pb.PlanButtonholesResponse
		read(&a)
		return sameButtonholes(&a, lines)
	case "short-row:planWedge":
		var a pb.PlanWedgeResponse
		read(&a)
		return sameWedge(&a, lines)
	case "gauge:computeCastOn":
		var a pb.ComputeCastOnResponse
		read(&a)
		if want := fmt.Sprintf("Cast on %d sts", a.Stitches.Count); lines[0] != want {
			return want
		}
		return ""
	}
	t.Fatalf("nothing compares the answers of %s", p.Method)
	return ""
}

// firstOf is the first difference of several.
func firstOf(differences ...string) string {
	for _, d := range differences {
		if d != "" {
			return d
		}
	}
	return ""
}

func sameCount(got int32, line string) string {
	if want := fmt.Sprintf("%d sts", got); want != line && want+" each" != line {
		return want + " for " + line
	}
	return ""
}

// sameRow compares two rows stitch by stitch, and that the first has no more words to
// remember. In the round the order may begin anywhere; what is flat may be read from
// its other end.
func sameRow(got, want string, round, turned bool) string {
	a, words := expanded(got)
	b, most := expanded(want)
	switch {
	case len(a) != len(b):
	case words > most:
		return got + " has more words than " + want
	case slices.Equal(a, b), round && rotated(a, b):
		return ""
	case turned:
		slices.Reverse(b)
		if slices.Equal(a, b) || round && rotated(a, b) {
			return ""
		}
	}
	return got + " for " + want
}

func rotated(a, b []string) bool {
	for i := range a {
		if slices.Equal(slices.Concat(a[i:], a[:i]), b) {
			return true
		}
	}
	return false
}

var (
	rowItem = regexp.MustCompile(`^(?:\[|\]( twice| once| (\d+) times)?|` +
		`(work|pick up and knit|pick up|skip|BO|CO|[kp]) ?(\d+)|([A-Za-z0-9&]+))`)
	rowMarks = strings.NewReplacer("pick up and knit", "pick up", "work", "k", "p ", "p ")
)

// expanded writes a row out, stitch by stitch, and counts its words.
func expanded(row string) (stitches []string, words int) {
	type open struct{ from int }
	var groups []open
	rest := row
	for rest = strings.TrimLeft(rest, " ,"); rest != ""; rest = strings.TrimLeft(rest, " ,") {
		m := rowItem.FindStringSubmatch(rest)
		if m == nil {
			return []string{"unread: " + rest}, 0
		}
		rest = rest[len(m[0]):]
		switch {
		case m[0] == "[":
			groups = append(groups, open{len(stitches)})
		case m[0][0] == ']':
			times := 2
			if m[2] != "" {
				times, _ = strconv.Atoi(m[2])
			}
			once := slices.Clone(stitches[groups[len(groups)-1].from:])
			groups = groups[:len(groups)-1]
			for range times - 1 {
				stitches = append(stitches, once...)
			}
		case m[3] != "":
			words++
			n, _ := strconv.Atoi(m[4])
			for range n {
				stitches = append(stitches, rowMarks.Replace(m[3]))
			}
		default:
			words++
			stitches = append(stitches, m[5])
		}
	}
	return stitches, words
}
