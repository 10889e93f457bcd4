package pattern

import (
	"math"
	"reflect"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/stitch"
)

func declared(name string, takes, leaves int) Abbreviation {
	return Abbreviation{Name: name, TakesStitches: takes, LeavesStitches: leaves}
}

func TestCheckInstructionsFaults(t *testing.T) {
	good := CheckInstructionsInput{Text: "k to end", StartStitches: []int{40}}
	cases := []struct {
		name   string
		change func(*CheckInstructionsInput)
		want   []string
	}{
		{"text missing", func(in *CheckInstructionsInput) { in.Text = "" }, []string{"text REQUIRED"}},
		{"text too long", func(in *CheckInstructionsInput) { in.Text = strings.Repeat(" ", MaxTextBytes+1) }, []string{"text TOO_MANY"}},
		{"no stitches", func(in *CheckInstructionsInput) { in.StartStitches = nil }, []string{"start_stitches REQUIRED"}},
		{"zero, negative, too many stitches", func(in *CheckInstructionsInput) { in.StartStitches = []int{0, -1, 10001, 40} },
			[]string{"start_stitches[0] OUT_OF_RANGE", "start_stitches[1] OUT_OF_RANGE", "start_stitches[2] OUT_OF_RANGE"}},
		{"too many sizes", func(in *CheckInstructionsInput) { in.StartStitches = make([]int, 21) }, []string{"start_stitches TOO_MANY"}},
		{"unknown construction", func(in *CheckInstructionsInput) { in.Construction = 9 }, []string{"construction UNKNOWN_VALUE"}},
		{"unknown side", func(in *CheckInstructionsInput) { in.FirstSide = -1 }, []string{"first_side UNKNOWN_VALUE"}},
		{"wrong side in the round", func(in *CheckInstructionsInput) {
			in.FirstSide, in.Construction = stitch.WrongSide, stitch.InTheRound
		},
			[]string{"first_side CONTRADICTORY"}},
		{"abbreviations", func(in *CheckInstructionsInput) {
			in.Abbreviations = []Abbreviation{declared("", 0, 0), declared("k2tog", 2, 1), declared("mb", -1, 101), declared("MB", 1, 1),
				declared("5 x", 1, 1)}
		}, []string{"abbreviations[0].name REQUIRED", "abbreviations[1].name UNREADABLE_TEXT", "abbreviations[2].takes_stitches OUT_OF_RANGE",
			"abbreviations[2].leaves_stitches OUT_OF_RANGE", "abbreviations[3].name CONTRADICTORY", "abbreviations[4].name UNREADABLE_TEXT"}},
		{"too many abbreviations", func(in *CheckInstructionsInput) { in.Abbreviations = make([]Abbreviation, 101) },
			[]string{"abbreviations TOO_MANY"}},
		{"several at once", func(in *CheckInstructionsInput) { *in = CheckInstructionsInput{Construction: 7, FirstSide: 3} },
			[]string{"text REQUIRED", "construction UNKNOWN_VALUE", "first_side UNKNOWN_VALUE"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			in := good
			c.change(&in)
			_, err := CheckInstructions(t.Context(), in)
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// ofSteps is a question with one row.
func ofSteps(steps ...Step) FormatInstructionsInput {
	return FormatInstructionsInput{Rows: []Row{{Steps: steps}}}
}

func TestFormatInstructionsFaults(t *testing.T) {
	k := Step{Operation: stitch.Knit}
	deep := k
	for range 5 {
		deep = Step{Steps: []Step{deep}, Times: []int{2}}
	}
	cases := []struct {
		name string
		in   FormatInstructionsInput
		want []string
	}{
		{"nothing", FormatInstructionsInput{}, []string{"text REQUIRED", "rows REQUIRED"}},
		{"both", FormatInstructionsInput{Text: "k", Rows: []Row{{Steps: []Step{k}}}}, []string{"text CONTRADICTORY", "rows CONTRADICTORY"}},
		{"too many rows", FormatInstructionsInput{Rows: make([]Row, 501)}, []string{"rows TOO_MANY"}},
		{"style", FormatInstructionsInput{Text: "k", RepeatStyle: 4}, []string{"repeat_style UNKNOWN_VALUE"}},
		{"empty row", FormatInstructionsInput{Rows: []Row{{}}}, []string{"rows[0].steps REQUIRED"}},
		{"direction and steps", FormatInstructionsInput{Rows: []Row{{Direction: "Knit 4 rows", Steps: []Step{k}}}},
			[]string{"rows[0].direction CONTRADICTORY"}},
		{"no direction", FormatInstructionsInput{Rows: []Row{{Direction: "k2, p2"}}}, []string{"rows[0].direction UNREADABLE_TEXT"}},
		{"unread direction", FormatInstructionsInput{Rows: []Row{{Direction: "once upon a time"}}},
			[]string{"rows[0].direction UNREADABLE_TEXT"}},
		{"no label", FormatInstructionsInput{Rows: []Row{{Label: "Hem", Steps: []Step{k}}}}, []string{"rows[0].label UNREADABLE_TEXT"}},
		{"a label with more in it", FormatInstructionsInput{Rows: []Row{{Label: "Row 1: k2. Row 2", Steps: []Step{k}}}},
			[]string{"rows[0].label UNREADABLE_TEXT"}},
		{"long label", FormatInstructionsInput{Rows: []Row{{Label: "Row " + strings.Repeat("1", 200), Steps: []Step{k}}}},
			[]string{"rows[0].label TOO_MANY", "rows[0].label UNREADABLE_TEXT"}},
		{"claims", FormatInstructionsInput{Rows: []Row{{Steps: []Step{k}, ClaimedStitches: []int{-2, 5},
			ClaimedChangeStitches: []int{1, 2, 3}}}},
			[]string{"rows[0].claimed_stitches[0] OUT_OF_RANGE", "rows[0].claimed_change_stitches CONTRADICTORY"}},
		{"changes both ways", FormatInstructionsInput{Rows: []Row{{Steps: []Step{k}, ClaimedChangeStitches: []int{1, -2}}}},
			[]string{"rows[0].claimed_change_stitches CONTRADICTORY"}},
		{"no step", ofSteps(Step{}), []string{"rows[0].steps[0].operation REQUIRED"}},
		{"unknown operation", ofSteps(Step{Operation: 255}), []string{"rows[0].steps[0].operation UNKNOWN_VALUE"}},
		{"unknown name", ofSteps(Step{Name: "foo"}), []string{"rows[0].steps[0].name UNKNOWN_VALUE"}},
		{"two kinds", ofSteps(Step{Name: "lt", Operation: stitch.Knit}), []string{"rows[0].steps[0] CONTRADICTORY"}},
		{"count and last", ofSteps(Step{Operation: stitch.Knit, Times: []int{1}, RemainingStitches: []int{1}}),
			[]string{"rows[0].steps[0].remaining_stitches CONTRADICTORY"}},
		{"counts out of range", ofSteps(Step{Operation: stitch.Knit, Times: []int{-1, 10001}},
			Step{Operation: stitch.Purl, RemainingStitches: []int{math.MinInt}}),
			[]string{"rows[0].steps[0].times[0] OUT_OF_RANGE", "rows[0].steps[0].times[1] OUT_OF_RANGE",
				"rows[0].steps[1].remaining_stitches[0] OUT_OF_RANGE"}},
		{"sizes disagree", ofSteps(Step{Operation: stitch.Knit, Times: []int{1, 2}},
			Step{Operation: stitch.Purl, RemainingStitches: []int{1, 2, 3}}),
			[]string{"rows[0].steps[1].remaining_stitches CONTRADICTORY"}},
		{"too many sizes", ofSteps(Step{Operation: stitch.Knit, Times: make([]int, 21)}), []string{"rows[0].steps[0].times TOO_MANY"}},
		{"into one", ofSteps(Step{Operation: stitch.Knit, IntoOneStitch: true}),
			[]string{"rows[0].steps[0].into_one_stitch CONTRADICTORY"}},
		{"into one does not fit", ofSteps(Step{Steps: []Step{{Operation: stitch.K2tog}}, IntoOneStitch: true}),
			[]string{"rows[0].steps INFEASIBLE"}},
		{"manner", ofSteps(Step{Operation: stitch.Knit, Manner: SlipMannerWyif}), []string{"rows[0].steps[0].manner CONTRADICTORY"}},
		{"unknown manner", ofSteps(Step{Operation: stitch.Slip, Manner: 9}), []string{"rows[0].steps[0].manner UNKNOWN_VALUE"}},
		{"turn inside", ofSteps(Step{Operation: stitch.Turn}, k), []string{"rows[0].steps INFEASIBLE"}},
		{"to end in a group", ofSteps(Step{Steps: []Step{{Operation: stitch.Knit, RemainingStitches: []int{0}}, k}, Times: []int{2}}),
			[]string{"rows[0].steps INFEASIBLE"}},
		{"too deep", ofSteps(deep), []string{"rows[0].steps[0].steps[0].steps[0].steps[0].steps[0].steps TOO_MANY"}},
		{"too many steps", ofSteps(make([]Step, MaxStepsGiven+1)...), []string{"rows[0].steps TOO_MANY"}},
		{"too many numbers", ofSteps(slices.Repeat([]Step{{Operation: stitch.Knit, Times: slices.Repeat([]int{1}, MaxSizes)}},
			MaxListedGiven/MaxSizes+1)...), []string{"rows[0].steps[300].times TOO_MANY"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			_, err := FormatInstructions(c.in)
			knittest.WantViolations(t, err, c.want...)
			_, err = MirrorInstructions(MirrorInstructionsInput(c.in))
			knittest.WantViolations(t, err, c.want...)
		})
	}
}

// TestFormatCompresses: written out stitch by stitch, and written as patterns do.
func TestFormatCompresses(t *testing.T) {
	steps := FromRow(stitch.RowOf(stitch.Do(stitch.Knit, 5)))
	for range 4 {
		steps = append(steps, FromRow(stitch.RowOf(stitch.Do(stitch.K2tog, 1), stitch.Do(stitch.Knit, 8)))...)
	}
	steps = append(steps, FromRow(stitch.RowOf(stitch.Do(stitch.Knit, 5), stitch.ToEnd(stitch.Purl)))...)
	for style, want := range map[RepeatStyle]string{
		0:                      "k5, [k2tog, k8] 4 times, k5, p to end",
		RepeatStyleParentheses: "k5, (k2tog, k8) 4 times, k5, p to end",
		RepeatStyleStars:       "k5, *k2tog, k8; rep from * 3 more times, k5, p to end",
	} {
		out, err := FormatInstructions(FormatInstructionsInput{Rows: []Row{{Steps: steps}}, RepeatStyle: style})
		if err != nil || out.Text != want {
			t.Errorf("%q, %v, want %q", out.Text, err, want)
		}
		again, err := FormatInstructions(FormatInstructionsInput{Text: out.Text, RepeatStyle: style})
		if err != nil || again.Text != want || len(again.Findings) != 0 || !reflect.DeepEqual(textOf(again.Rows), textOf(out.Rows)) {
			t.Errorf("%q is written again as %q, %v", want, again.Text, err)
		}
	}
}

func textOf(rows []Row) []string {
	out := make([]string, len(rows))
	for i, r := range rows {
		line := Line{Label: r.Label, Steps: r.Steps, ClaimedStitches: r.ClaimedStitches, ClaimedChangeStitches: r.ClaimedChangeStitches,
			Direction: r.Direction}
		out[i] = line.Text(0)
	}
	return out
}

// FuzzCheckInstructions: any question is answered or refused, within the limits.
func FuzzCheckInstructions(f *testing.F) {
	f.Add("k5 (6), [k2tog, k8] 4 times, k to end (96, 104 sts)", 50, 60, int32(1), int32(1), "mb", 1, 5)
	f.Add("CO 40 sts. Row 1 (RS): mb, k to end. Rep Row 1 twice", 0, 0, int32(2), int32(0), "MB", 0, 100)
	for _, text := range corpusTexts(f) {
		f.Add(text, 0, 0, int32(0), int32(0), "", 0, 0)
	}
	f.Fuzz(func(t *testing.T, text string, a, b int, construction, side int32, name string, takes, leaves int) {
		in := CheckInstructionsInput{Text: text, Construction: stitch.Construction(construction), FirstSide: stitch.Side(side)}
		if a != 0 {
			in.StartStitches = []int{a, b}
		}
		if name != "" {
			in.Abbreviations = []Abbreviation{declared(name, takes, leaves)}
		}
		out, err := CheckInstructions(t.Context(), in)
		if err != nil {
			if len(knittest.Reasons(err)) == 0 {
				t.Fatalf("%v", err)
			}
			return
		}
		if len(out.Findings) > MaxFindings || len(out.Lines) > MaxLines || out.Summary() == "" || len(out.EndStitches) != out.SizeCount {
			t.Fatalf("%+v", out)
		}
		written, err := FormatInstructions(FormatInstructionsInput{Text: text, Abbreviations: in.Abbreviations,
			RepeatStyle: RepeatStyle(1 + a&1)})
		if err != nil {
			t.Fatal(err)
		}
		if _, err := MirrorInstructions(MirrorInstructionsInput{Text: text, Abbreviations: in.Abbreviations}); err != nil {
			t.Fatal(err)
		}
		if len(written.Rows) > MaxLines {
			t.Fatalf("%d rows", len(written.Rows))
		}
	})
}

// FuzzFormatInstructions: any tree is written or refused; what is written reads
// back without a mistake.
func FuzzFormatInstructions(f *testing.F) {
	f.Add("Row 1", "", "c4f", uint8(1), 5, 4, 0, int32(0), false, int32(1))
	f.Add("", "Knit 4 rows", "", uint8(6), 1, 2, 3, int32(5), true, int32(3))
	f.Fuzz(func(t *testing.T, label, direction, name string, op uint8, n, times, last int, manner int32, into bool, style int32) {
		steps := []Step{{Operation: stitch.Op(op), Times: []int{n}, Manner: SlipManner(manner)},
			{Name: name, Times: []int{n, times}}, {Steps: []Step{{Operation: stitch.Knit, Times: []int{n}}, {Operation: stitch.YO}},
				Times: []int{times}, IntoOneStitch: into},
			{Operation: stitch.Purl, RemainingStitches: []int{last}}}
		in := FormatInstructionsInput{Rows: []Row{{Label: label, Steps: steps, ClaimedStitches: []int{n}}, {Direction: direction}},
			RepeatStyle: RepeatStyle(style)}
		out, err := FormatInstructions(in)
		if err != nil {
			if len(knittest.Reasons(err)) == 0 {
				t.Fatalf("%v", err)
			}
			return
		}
		again, err := FormatInstructions(FormatInstructionsInput{Text: out.Text, RepeatStyle: in.RepeatStyle})
		if err != nil || again.Text != out.Text || len(again.Rows) != 2 {
			t.Fatalf("%q is written again as %q, %v", out.Text, again.Text, err)
		}
		if _, err := MirrorInstructions(MirrorInstructionsInput(in)); err != nil {
			t.Fatal(err)
		}
	})
}

func BenchmarkCheckInstructions(b *testing.B) {
	in := CheckInstructionsInput{StartStitches: []int{400, 412, 424, 436, 448, 460, 472, 484, 496, 508},
		Text: strings.Repeat("k1, [k2tog, k2, yo] 33 (34, 35, 36, 37, 38, 39, 40, 41, 42) times, k to end\n", 100)}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := CheckInstructions(b.Context(), in); err != nil {
			b.Fatal(err)
		}
	}
}
