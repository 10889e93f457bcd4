package body

import (
	"math"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// What the charts give twice agrees: cm are 2.54 x inches, which the charts round to half
// a centimetre and not always to the nearest.
func TestInchesAgreeWithCentimetres(t *testing.T) {
	twice := 0
	for _, r := range sizes {
		if (r.LowIn == nil) != (r.HighIn == nil) {
			t.Errorf("%+v has one end in inches", r)
		}
		if r.LowIn == nil {
			continue
		}
		twice++
		for _, end := range [][2]float64{{r.LowCm, *r.LowIn}, {r.HighCm, *r.HighIn}} {
			if math.Abs(end[0]-2.54*end[1]) > 0.62 {
				t.Errorf("%v %s %v: %v cm is not %v in", r.Group, r.Size, r.Measure, end[0], end[1])
			}
		}
	}
	if twice != 285+7 {
		t.Errorf("%d rows are given twice, want 292", twice)
	}
}

// No measure shrinks from one size of a chart to the next, and every row says where it
// comes from. A size and its measure stand there once.
func TestSizesGrow(t *testing.T) {
	type key struct {
		group   Group
		measure Measure
		from    string
	}
	last := map[key]SizeRow{}
	seen := map[[3]any]bool{}
	for _, r := range sizes {
		if r.Citation == "" || r.Status == 0 || r.Basis == "" || r.Size == "" || r.LowCm <= 0 || r.HighCm < r.LowCm {
			t.Errorf("%+v is not whole", r)
		}
		once := [3]any{r.Group, r.Size, r.Measure}
		if seen[once] {
			t.Errorf("%+v stands there twice", r)
		}
		seen[once] = true
		at := key{r.Group, r.Measure, r.Basis}
		before, ok := last[at]
		last[at] = r
		// Feet begin anew with each kind of shoe, heads with whose they are.
		if ok && r.Group != GroupFoot && r.LowCm < before.LowCm {
			t.Errorf("%s is smaller than %s: %v and %v cm of measure %d", r.Size, before.Size, r.LowCm, before.LowCm, r.Measure)
		}
	}
	if len(last) < 50 {
		t.Errorf("%d measures: the table has shrunk", len(last))
	}
}

// A chart's bust and the means of measured women lie in one range, and a wrist is a sixth
// of a chest (published means: 0.175 and 0.171).
func TestMeansAreWithinTheCharts(t *testing.T) {
	find := func(g Group, size string, m Measure) SizeRow {
		for _, r := range sizes {
			if r.Group == g && r.Size == size && r.Measure == m {
				return r
			}
		}
		t.Fatalf("no %s", size)
		return SizeRow{}
	}
	for g, ratio := range map[Group]float64{GroupWoman: 0.175, GroupMan: 0.171} {
		chest, wrist := find(g, "mean", MeasureChest), find(g, "mean", MeasureWrist)
		knittest.Near(t, "wrist to chest", wrist.LowCm/chest.LowCm, ratio, 0.001)
		if small, large := find(g, "S", MeasureChest), find(g, "L", MeasureChest); chest.LowCm < small.LowCm || chest.LowCm > large.HighCm {
			t.Errorf("a mean chest of %v cm is not from S to L", chest.LowCm)
		}
	}
}

// Centiles enclose their medians; heads grow with age, boys' are the larger; and the
// chart's heads of adults, which read like hat sizes, are smaller than the medians at 17.
func TestMeasuredHeads(t *testing.T) {
	cm := map[string]SizeRow{}
	for _, r := range sizes {
		if r.Group == GroupHead {
			cm[r.Size] = r
		}
	}
	before := 0.0
	for _, age := range []string{"2 weeks", "3 months", "6 months", "1 year", "2 years", "5 years", "10 years", "17 years"} {
		for _, who := range []string{"girls", "boys"} {
			median, range98 := cm[who+", "+age+", median"], cm[who+", "+age+", 2nd to 98th centile"]
			if median.LowCm != median.HighCm || median.LowCm <= range98.LowCm || median.HighCm >= range98.HighCm {
				t.Errorf("%s of %s: %+v is not in %+v", who, age, median, range98)
			}
		}
		girls, boys := cm["girls, "+age+", median"].LowCm, cm["boys, "+age+", median"].LowCm
		if girls <= before || boys <= girls {
			t.Errorf("%s: %v and %v after %v", age, girls, boys, before)
		}
		before = girls
	}
	if cm["woman"].HighCm >= cm["girls, 17 years, median"].LowCm || cm["man"].HighCm >= cm["boys, 17 years, median"].LowCm {
		t.Error("the chart is not of hats")
	}
}

// A glove size is the girth of the hand in inches: 25.4 mm of each, to the millimetre.
func TestGloveSizesAreInches(t *testing.T) {
	n := 0
	for _, r := range sizes {
		size, ok := strings.CutPrefix(r.Size, "glove size ")
		if !ok || r.Measure != MeasureHandCircumference {
			continue
		}
		n++
		knittest.Near(t, r.Size, r.LowCm, 2.54*knittest.Cell(t, size), 0.003)
	}
	if n != 6 {
		t.Errorf("%d glove sizes", n)
	}
}

func TestListBodySizes(t *testing.T) {
	for _, c := range []struct {
		in      ListInput
		rows    int
		notices int
	}{
		{ListInput{}, 331 + 32 + 12 + 7, 0},
		{ListInput{Group: GroupHead}, 6 + 32, 0},
		{ListInput{Group: GroupWoman, Measure: MeasureChest}, 9 + 8 + 10 + 1, 0},
		{ListInput{Measure: MeasureHandCircumference}, 2 + 6 + 7, 1},
		{ListInput{Group: GroupHand}, 12 + 7, 1},
		{ListInput{Group: GroupHand, Measure: MeasureHandLength}, 6, 1},
		{ListInput{Group: GroupBaby, Measure: MeasureSockHeight}, 0, 1},
		{ListInput{Group: GroupFoot, Measure: MeasureSockHeight}, 12, 0},
	} {
		out, err := ListBodySizes(c.in)
		if err != nil || len(out.Rows) != c.rows || len(out.Notices) != c.notices {
			t.Errorf("%+v: %d rows, %+v, %v; want %d rows", c.in, len(out.Rows), out.Notices, err, c.rows)
		}
	}
	_, err := ListBodySizes(ListInput{Group: -1, Measure: MeasureSockHeight + 1})
	knittest.WantViolations(t, err, "group UNKNOWN_VALUE", "measure UNKNOWN_VALUE")
}

// What is wrong in the table stops the program before it answers with it.
func TestTableIsRefused(t *testing.T) {
	const head = "h,h,h,h,h,h,h,h\n"
	for _, table := range []string{
		"a\n\"", "a,b",
		head + "BABY,S,CHEST,1,1,x,1,chart", head + "BABY,S,CHEST,1,1,1,x,chart", head + "BABY,S,CHEST,x,1,1,1,chart",
		head + "BABY,S,CHEST,1,x,1,1,chart", head + "BIRD,S,CHEST,1,1,1,1,chart", head + "BABY,S,TAIL,1,1,1,1,chart",
		head + "BABY,S,CHEST,1,1,1,1,x",
	} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%q is read", table)
				}
			}()
			mustRead(table)
		}()
	}
}

func FuzzListBodySizes(f *testing.F) {
	f.Add(int32(4), int32(1))
	f.Fuzz(func(t *testing.T, group, measure int32) {
		out, err := ListBodySizes(ListInput{Group(group), Measure(measure)})
		if (err != nil) != (group < 0 || group > int32(GroupHand) || measure < 0 || measure > int32(MeasureSockHeight)) {
			t.Fatal(err)
		}
		if err == nil && (out.Summary() == "" || len(out.Sources()) == 0) {
			t.Fatal("no words")
		}
	})
}

func BenchmarkListBodySizes(b *testing.B) {
	for b.Loop() {
		if out, err := ListBodySizes(ListInput{Group: GroupWoman}); err != nil || len(out.Sources()) == 0 {
			b.Fatal(err)
		}
	}
}

// A measure that a group does not have is looked for where it stands, and named with whom
// the chart has it of; what stands nowhere else is pointed nowhere.
func TestEmptyListsPointElsewhere(t *testing.T) {
	for _, c := range []struct {
		in   ListInput
		want string
	}{
		{ListInput{Group: GroupMan, Measure: MeasureSockHeight}, `the group FOOT has it, as of "man shoe 6-8";`},
		{ListInput{Group: GroupWoman, Measure: MeasureSockHeight}, `the group FOOT has it, as of "woman shoe 3-6";`},
		{ListInput{Group: GroupBaby, Measure: MeasureHeadCircumference}, `the group HEAD has it, as of "baby";`},
		{ListInput{Group: GroupBaby, Measure: MeasureHandLength}, "the group HAND has it;"},
		{ListInput{Group: GroupFoot, Measure: MeasureChest}, "of this group; measure"},
	} {
		out, err := ListBodySizes(c.in)
		if err != nil || len(out.Notices) == 0 || !strings.Contains(out.Notices[0].Description, c.want) {
			t.Errorf("%+v: %+v, want %q", c.in, out.Notices, c.want)
		}
	}
}
