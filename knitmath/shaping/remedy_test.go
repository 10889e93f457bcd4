package shaping

import (
	"errors"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

// Every remedy that a refused taper names is asked, and planned.
func TestRemediesOfTapersWork(t *testing.T) {
	offered := map[string]int{}
	for _, start := range []int{6, 9, 20, 41, 60} {
		for end := 2; end <= 80; end += knittest.Sweep(3, 9) {
			for rows := 1; rows <= 25; rows += knittest.Sweep(3, 6) {
				for variant := range 2 * 2 * 3 * 4 {
					kept := [][2]int{{0, 0}, {3, 0}, {2, 5}, {1, 30}}[variant/12]
					in := TaperInput{StartStitches: start, EndStitches: end, HeightRows: &rows, EdgeChangeStitches: knittest.Ptr(1 + variant%2),
						RowChoice: RowChoice(1 + variant/2%2), Edges: ShapedEdges(1 + variant/4%3),
						EvenBeforeRows: &kept[0], EvenAfterRows: &kept[1]}
					_, err := PlanTaper(in)
					for _, o := range remediesIn(t, err, offered) {
						if _, again := PlanTaper(in.with(o.change)); again != nil {
							t.Fatalf("%s: %v; asked so: %v", describeTaper(in), err, again)
						}
					}
				}
			}
		}
	}
	for _, kind := range []string{"any row", "double", "both", "even", "end"} {
		if offered[kind] < knittest.Sweep(20, 3) {
			t.Errorf("%q was offered %d times", kind, offered[kind])
		}
	}
}

// And every remedy of a refused side.
func TestRemediesOfSidesWork(t *testing.T) {
	offered := map[string]int{}
	for middle := 8; middle <= 40; middle += knittest.Sweep(1, 3) {
		for end := 8; end <= 40; end += 3 {
			for _, at := range [][2]int{{4, 20}, {12, 18}, {9, 14}} {
				for _, first := range []stitch.Side{stitch.RightSide, stitch.WrongSide} {
					in := sideOf(24, [2]int{at[0], middle}, [2]int{at[1], end})
					in.FirstSide = first
					_, err := PlanShapedSide(in)
					for _, o := range remediesIn(t, err, offered) {
						if _, again := PlanShapedSide(in.with(o.point, o.change)); again != nil {
							t.Fatalf("%s: %v; asked so: %v", describeSide(in), err, again)
						}
					}
				}
			}
		}
	}
	for _, kind := range []string{"any row", "double", "end"} {
		if offered[kind] < knittest.Sweep(5, 2) {
			t.Errorf("%q was offered %d times", kind, offered[kind])
		}
	}
}

var (
	endCounts = regexp.MustCompile(`stitches of (\d+)(?: or (\d+))? would do`)
	atPoint   = regexp.MustCompile(`^points\[(\d+)\]`)
	keptEven  = regexp.MustCompile(`or (no|\d+) rows? kept even( at the end| at the start)?`)
)

// An offer is a remedy, and the last point that the refusal names.
type offer struct {
	change
	point int
}

// remediesIn reads what a refusal offers, and counts it by kind.
func remediesIn(t *testing.T, err error, offered map[string]int) (found []offer) {
	t.Helper()
	var input *fault.InputError
	if !errors.As(err, &input) {
		return nil
	}
	point := map[string]int{}
	for _, v := range input.Violations {
		if m := atPoint.FindStringSubmatch(v.Field); m != nil {
			n, _ := strconv.Atoi(m[1])
			point[v.Detail] = max(point[v.Detail], n)
		}
	}
	said := map[string]bool{}
	for _, v := range input.Violations {
		if said[v.Detail] {
			continue
		}
		said[v.Detail] = true
		for kind, changes := range offersIn(v.Detail) {
			for _, ch := range changes {
				offered[kind]++
				found = append(found, offer{ch, point[v.Detail]})
			}
		}
	}
	return found
}

// offersIn reads the remedies of one refusal, by kind.
func offersIn(detail string) map[string][]change {
	found := map[string][]change{}
	add := func(kind string, ch change) { found[kind] = append(found[kind], ch) }
	switch {
	case strings.Contains(detail, "shaping on any row and 2 stitches"):
		add("both", change{anyRow: true, double: true})
	case strings.Contains(detail, "shaping on any row"):
		add("any row", change{anyRow: true})
	}
	if strings.Contains(detail, "or 2 stitches at each edge") {
		add("double", change{double: true})
	}
	if m := keptEven.FindStringSubmatch(detail); m != nil {
		n, _ := strconv.Atoi(m[1]) // "no" is 0
		ch := change{before: &n, after: &n}
		switch m[2] {
		case " at the end":
			ch.before = nil
		case " at the start":
			ch.after = nil
		}
		add("even", ch)
	}
	for _, count := range endCounts.FindStringSubmatch(detail) {
		if n, err := strconv.Atoi(count); err == nil {
			add("end", change{end: &n})
		}
	}
	return found
}
