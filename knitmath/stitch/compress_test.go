package stitch

import (
	"math/rand/v2"
	"slices"
	"testing"
)

// runsOf builds runs from ops worked once each, joined.
func runsOf(ops ...Op) []Run {
	var runs []Run
	for _, op := range ops {
		runs = AppendRun(runs, op, 1)
	}
	return runs
}

// times repeats a stretch of runs, unjoined.
func times(n int, runs ...Run) []Run { return slices.Repeat(runs, n) }

func TestCompressTexts(t *testing.T) {
	kDec := []Run{{K2tog, 1}, {Knit, 8}}
	feather := slices.Concat(times(1, Run{K2tog, 3}), times(6, Run{YO, 1}, Run{Knit, 1}), times(1, Run{K2tog, 3}))
	cases := []struct {
		name string
		runs []Run
		want string
	}{
		{"nothing", nil, ""},
		{"plain", []Run{{Knit, 5}}, "k5"},
		{"joined", []Run{{Knit, 2}, {Knit, 3}}, "k5"},
		{"count below one is nothing", []Run{{Knit, 2}, {Purl, 0}, {Slip, -3}, {Knit, 3}}, "k5"},
		// 5 + 4*(2+8) + 5 stitches: the last k8 and the k5 are one run of 13.
		{"last run shared out", slices.Concat([]Run{{Knit, 5}}, times(4, kDec...), []Run{{Knit, 5}}), "k5, [k2tog, k8] 4 times, k5"},
		// The same row mirrored: the first run, 5 + 8, is shared out.
		{"first run shared out", slices.Concat([]Run{{Knit, 5}}, times(4, Run{Knit, 8}, Run{K2tog, 1}), []Run{{Knit, 5}}),
			"k5, [k8, k2tog] 4 times, k5"},
		// Half a gap at either end: the repeat is a palindrome.
		{"end meets beginning", slices.Concat([]Run{{Knit, 4}}, times(3, kDec...), []Run{{K2tog, 1}, {Knit, 4}}), "[k4, k2tog, k4] 4 times"},
		{"rib", times(20, Run{Knit, 2}, Run{Purl, 2}), "[k2, p2] 20 times"},
		{"rib to balance", append(times(20, Run{Knit, 2}, Run{Purl, 2}), Run{Knit, 2}), "[k2, p2] 20 times, k2"},
		// "[k1, p1] twice" and "k1, p1, k1, p1" have 14 characters each: a tie is grouped.
		{"a tie is grouped", times(2, Run{Knit, 1}, Run{Purl, 1}), "[k1, p1] twice"},
		{"twice", times(2, Run{Knit, 1}, Run{Purl, 1}, Run{YO, 1}), "[k1, p1, yo] twice"},
		// Two brackets are the most: the run of decreases already has one.
		{"nested once", times(4, feather...), "[[k2tog] 3 times, [yo, k1] 6 times, [k2tog] 3 times] 4 times"},
		// Found only where the bound on groups is short: the long one sees 7 runs, 4 times.
		{"short groups within long ones", slices.Concat([]Run{{Knit, 1}, {PurlTbl, 2}},
			times(4, Run{Knit, 1}, Run{PurlTbl, 1}, Run{Knit, 2}, Run{PurlTbl, 1}, Run{Knit, 1}, Run{PurlTbl, 2}), []Run{{Knit, 1}}),
			"k1, p2 tbl, [[k1, p1 tbl, k1] twice, p2 tbl] 4 times, k1"},
		// The same in a row too short for groups of 12 runs: bounded by 4, the threes are
		// found first and then the whole twice; bounded by 24, six runs twice and no more.
		{"short groups in a short row", slices.Concat([]Run{{Knit, 2}, {Slip, 3}, {Knit, 2}, {Slip, 2}, {Knit, 2}, {Slip, 2}, {Knit, 2}},
			[]Run{{Slip, 3}, {Knit, 2}, {Slip, 2}, {Knit, 2}, {Slip, 2}, {Knit, 2}}), "k2, [sl 1, [sl 2, k2] 3 times] twice"},
		// Found only by looking for groups within a group that is there already: without,
		// "[yo, k2tog, yo, [k2tog] twice] twice" has two characters more.
		{"groups found within a group", []Run{{YO, 2}, {K2tog, 1}, {YO, 1}, {K2tog, 2}, {YO, 1}, {K2tog, 1}, {YO, 1}, {K2tog, 4}},
			"yo, [[yo, k2tog] twice, k2tog] twice, [k2tog] twice"},
		// Where the end of a group meets its beginning, brackets are spared if one of
		// both is a single working: 3 = 2 + 1. Or both together use up the last run:
		// 12 = 2 + 10.
		{"a single working spares brackets", []Run{{YO, 3}, {SSK, 3}, {YO, 3}, {SSK, 3}, {YO, 2}},
			"yo, [[yo] twice, [ssk] 3 times, yo] twice, yo"},
		{"the last run used up", []Run{{K2tog, 6}, {SSK, 3}, {K2tog, 12}, {SSK, 3}, {K2tog, 10}},
			"[k2tog] 4 times, [[k2tog] twice, [ssk] 3 times, [k2tog] 10 times] twice"},
		// The third k1 would begin a third time that has no end.
		{"fewer times than there are beginnings", []Run{{SSK, 1}, {Knit, 1}, {SSK, 2}, {Knit, 1}, {SSK, 2}, {Knit, 1}},
			"[ssk, k1, ssk] twice, ssk, k1"},
		{"turns stay outside groups", times(5, Run{Knit, 3}, Run{Turn, 1}), "k3, turn, k3, turn, k3, turn, k3, turn, k3, turn"},
		// Brackets within brackets only where they shorten: here they would not.
		{"a tie within a group stays plain", times(5, Run{Knit, 1}, Run{Purl, 1}, Run{Knit, 1}, Run{Purl, 1}, Run{YO, 1}),
			"[k1, p1, k1, p1, yo] 5 times"},
		{"wrap and turn", []Run{{Knit, 16}, {WrapTurn, 1}}, "k16, w&t"},
		{"double stitch", []Run{{MakeDouble, 1}, {Purl, 11}, {Turn, 1}}, "make DS, p11, turn"},
	}
	for _, c := range cases {
		if got := Compress(c.runs).Text(); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// mustRoundTrip compresses the runs and checks what must hold for every row:
// the same is knit, the text is no longer, brackets are at most two deep.
func mustRoundTrip(t *testing.T, runs []Run) Row {
	t.Helper()
	var joined []Run
	for _, r := range runs {
		joined = AppendRun(joined, r.Op, r.Count)
	}
	row := Compress(runs)
	onNeedle := 0
	for _, r := range joined {
		onNeedle += r.Count * r.Op.Takes()
	}
	got, err := Expand(row, onNeedle)
	if err != nil {
		t.Fatalf("%v compressed to %q: %v", joined, row.Text(), err)
	}
	if !slices.Equal(got, joined) {
		t.Fatalf("%v compressed to %q, which expands to %v", joined, row.Text(), got)
	}
	text, plain := row.Text(), plainRow(joined).Text()
	if len(text) > len(plain) {
		t.Fatalf("%q is longer than %q", text, plain)
	}
	if w := stepsWidth(row.Steps); len(joined) > 0 && w != len(text)+2 {
		t.Fatalf("width %d of %q", w, text)
	}
	depth, deepest := 0, 0
	for _, c := range text {
		switch c {
		case '[':
			depth++
			deepest = max(deepest, depth)
		case ']':
			depth--
		}
	}
	if deepest > 2 {
		t.Fatalf("%q nests more than one deep", text)
	}
	return row
}

func plainRow(runs []Run) Row {
	var row Row
	for _, r := range runs {
		row.Steps = append(row.Steps, Do(r.Op, r.Count))
	}
	return row
}

// shortest returns the length of the shortest text for the ops, and of the ", "
// after it, with groups at most one level deep and with neighbouring plain runs
// of one operation joined. It tries every group at every place and shares
// nothing with Compress but the writing of a single run.
func shortest(ops []Op) int {
	n := len(ops)
	// best[i] is for ops[i:]; after[i] the same where a plain run of ops[i] has
	// just been written and may not be followed by another.
	best, after := make([]int, n+1), make([]int, n+1)
	for i := n - 1; i >= 0; i-- {
		after[i] = 1 << 30
		for size := 2; i+2*size <= n; size++ {
			word := ops[i : i+size]
			inner := len(plainRow(runsOf(word...)).Text()) + 2
			for k := 2; i+k*size <= n && slices.Equal(word, ops[i+(k-1)*size:i+k*size]); k++ {
				after[i] = min(after[i], inner+len(timesText(k))+2+best[i+k*size])
			}
		}
		best[i] = after[i]
		for j := i + 1; j <= n && ops[j-1] == ops[i]; j++ {
			rest := best[j]
			if j < n && ops[j] == ops[i] {
				rest = after[j]
			}
			best[i] = min(best[i], len(runText(ops[i], j-i))+2+rest)
		}
	}
	return best[0]
}

func TestCompressAllSmallWords(t *testing.T) {
	alphabets := []struct {
		ops    []Op
		length int
	}{
		{[]Op{Knit, Purl}, sweep(13, 10)},
		{[]Op{Knit, K2tog, YO}, sweep(9, 7)},
		{[]Op{Slip, SSK, Knit, KnitTbl}, sweep(7, 5)},
	}
	for _, a := range alphabets {
		words := 0
		var word []Op
		var walk func()
		walk = func() {
			if len(word) > 0 {
				runs := runsOf(word...)
				tokens := make([]token, len(runs))
				for i, r := range runs {
					tokens[i] = runToken(r)
				}
				// One level is compared with the optimum, both levels are
				// checked to be no longer than one.
				one := stepsWidth(folded(tokens))
				words++
				if want := shortest(word); one != want {
					t.Fatalf("%v: width %d, the shortest %d", word, one, want)
				}
				if two := stepsWidth(mustRoundTrip(t, runs).Steps); two > one {
					t.Fatalf("two levels are longer than one: %v", word)
				}
			}
			if len(word) == a.length {
				return
			}
			for _, op := range a.ops {
				word = append(word, op)
				walk()
				word = word[:len(word)-1]
			}
		}
		walk()
		t.Logf("%v to %d ops: %d words", a.ops, a.length, words)
	}
}

// randomRuns returns a sequence with much repetition in it: pieces of text
// copied from earlier on, and counts from a small range.
func randomRuns(rng *rand.Rand, n, ops, counts int) []Run {
	runs := make([]Run, 0, n)
	for len(runs) < n {
		if k := len(runs); k > 2 && rng.IntN(3) > 0 {
			from := rng.IntN(k)
			size := 1 + rng.IntN(min(k-from, 8))
			for range 1 + rng.IntN(6) {
				runs = append(runs, runs[from:from+size]...)
			}
			continue
		}
		runs = append(runs, Run{Op(1 + rng.IntN(ops)), 1 + rng.IntN(counts)})
	}
	return runs[:n]
}

func TestCompressRandom(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for i := range sweep(3000, 300) {
		mustRoundTrip(t, randomRuns(rng, 1+i%200, 2+i%9, 1+i%5))
	}
	for i := range sweep(2000, 200) {
		runs := randomRuns(rng, 1+i%40, 2+i%6, 1+i%4)
		var ops []Op
		for _, r := range runs {
			ops = append(ops, slices.Repeat([]Op{r.Op}, r.Count)...)
		}
		var tokens []token
		for _, r := range runsOf(ops...) {
			tokens = append(tokens, runToken(r))
		}
		steps := folded(tokens)
		if got, want := stepsWidth(steps), shortest(ops); got != want {
			t.Errorf("%q has width %d, the shortest %d", Row{steps}.Text(), got, want)
		}
	}
}

// Two different groups, and a run of the last operation of all: neither is taken
// for another when groups of groups are looked for.
func TestGroupsAreNoOperations(t *testing.T) {
	last := Ops()[len(Ops())-1]
	runs := slices.Concat(times(4, Run{K2tog, 1}, Run{Knit, 3}), []Run{{YO, 1}}, times(4, Run{SSK, 1}, Run{Knit, 4}),
		[]Run{{Purl, 5}, {last, 1}, {Purl, 5}})
	row := mustRoundTrip(t, runs)
	if got, want := row.Text(), "[k2tog, k3] 4 times, yo, [ssk, k4] 4 times, p5, place 1 st on hold, p5"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// folded is tokens with groups one deep.
func folded(tokens []token) []Step {
	f := newFolder(len(tokens))
	f.load(tokens)
	return f.fold(maxPeriod, true)
}
