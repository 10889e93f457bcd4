package pattern

import (
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// TestMirrorByHand: rows for the other edge, worked out by hand.
func TestMirrorByHand(t *testing.T) {
	cases := []struct{ text, want, found string }{
		{"k1, ssk, k to end", "k to last 3 sts, k2tog, k1", ""},
		{"k to last 3 sts, k2tog, k1", "k1, ssk, k to end", ""},
		{"k1, M1L, k to last st, M1R, k1", "k1, M1L, k to last st, M1R, k1", ""},
		{"k2, k3tog, p to last 6 sts, ssp, sssp, p1", "p1, p3tog, p2tog, p to last 5 sts, sssk, k2", ""},
		{"[k2tog, yo, k3] 4 times, k1 (2, 3)", "k1 (2, 3), [k3, yo, ssk] 4 times", ""},
		{"*c4f, p2, 2/1 rpc; rep from * to last 4 (5) sts, kll, lt, k2 (3)", "k2 (3), rt, krl, [2/1 lpc, p2, c4b] to end", ""},
		{"k3, p to last 8 sts, k to last 2 sts, ssk", "k2tog, k6, p to last 3 sts, k3", ""},
		{"k3, BO 4, k5 (8 sts)", "k5, BO 4, k3 (8 sts)", ""},
		{"CO 3, k to end", "k to end, CO 3", ""},
		{"CDD, (k1, yo, p1) in next st", "(p1, yo, k1) in next st, CDD", ""},
		{"skp, k5", "k5, k2tog", "1:1 MIRROR_REMARK"},
		{"kfb, k5", "k5, kfb", "1:1 MIRROR_REMARK"},
		{"BO 4, k to end", "BO 4, k to end", "1:1 NO_MIRROR"},
		{"Row 3: k5, w&t", "Row 3: k5, w&t", "1:12 NO_MIRROR"},
		{"k5, k DS, k3", "k5, k DS, k3", "1:5 NO_MIRROR"},
		{"k2tog tbl, k3", "k2tog tbl, k3", "1:1 NO_MIRROR"},
		{"k to last 5 sts, k3", "k to last 5 sts, k3", "1:1 NO_MIRROR"},
		{"Rep Row 1 twice more", "Rep Row 1 twice more", ""},
	}
	for _, c := range cases {
		m := Read(c.text, Options{}).Mirror()
		if got := Text(m.Lines, 0); got != c.want {
			t.Errorf("%q mirrored is %q, want %q", c.text, got, c.want)
		}
		if got := found(m.Findings); got != c.found {
			t.Errorf("%q: found %s, want %s", c.text, got, c.found)
		}
	}
}

// TestCrossingsLeanTheOtherWay: every crossing and lifted increase that is known by its name has a partner of
// another name, whose partner it is, on as many stitches.
func TestCrossingsLeanTheOtherWay(t *testing.T) {
	names := []string{"lt", "rt", "kll", "lli", "krli", "rlinc", "fc", "tw2l", "inc 1 left", "brssk",
		"2/2 lc", "2/1 rpc", "2/1/2 lpc", "1/1 lpt", "1/2 rkpc"}
	for _, head := range cableHeads {
		for tail := range leanings {
			names = append(names, head+"4"+tail, head+"12"+tail)
		}
	}
	for _, name := range names {
		other, ok := mirrorName(name)
		back, again := mirrorName(other)
		if !ok || !again || other == name || back != name {
			t.Errorf("%s mirrored is %s, that %s (%t, %t)", name, other, back, ok, again)
		}
		row := "k2, " + name + ", k6"
		m := Read(row, Options{}).Mirror()
		if got := Text(m.Lines, 0); got != "k6, "+other+", k2" || found(m.Findings) != "" {
			t.Errorf("%q mirrored is %q, found %s", row, got, found(m.Findings))
		}
	}
}

// TestSummaryOfMirror: it counts the rows that were turned round, and the lines that were not.
func TestSummaryOfMirror(t *testing.T) {
	for text, want := range map[string]string{
		"Row 1: k2, ssk, k to end.\nRow 2: k2, qqq, ssk, k to end.": "1 row mirrored, 1 line left as given.",
		"NaN": "0 rows mirrored, 1 line left as given.",
		"Row 1: k2, C4L, k6.\nRep Row 1 twice more.":        "1 row mirrored.",
		"Shape left neck: at right edge bind off 5 sts.":    "0 rows mirrored, 1 line left as given.",
		"Row 1: bind off 4 sts, k to end.\nRow 2: k5, w&t.": "0 rows mirrored, 2 lines left as given.",
	} {
		m, err := MirrorInstructions(MirrorInstructionsInput{Text: text})
		if err != nil || m.Summary() != want {
			t.Errorf("%q: %s (%v), want %s", text, m.Summary(), err, want)
		}
	}
	w, err := FormatInstructions(FormatInstructionsInput{Text: "Row 1: k2, ssk.\nRow 2: k2, qqq."})
	if want := "1 line written, 1 line left as given."; err != nil || w.Summary() != want {
		t.Errorf("%s (%v), want %s", w.Summary(), err, want)
	}
}

// leans are the operations with a partner, and some that are their own.
var leans = []stitch.Op{stitch.Knit, stitch.Purl, stitch.K2tog, stitch.SSK, stitch.P2tog, stitch.SSP, stitch.K3tog, stitch.SSSK,
	stitch.P3tog, stitch.SSSP, stitch.CDD, stitch.YO, stitch.Slip, stitch.M1L, stitch.M1R, stitch.M1LP, stitch.M1RP, stitch.CastOn}

// TestMirrorTwice: mirrored twice a row is itself; mirrored once, the machine
// knits it on the same stitches to the same count, and the operations are those
// of the row, backwards, with their partners.
func TestMirrorTwice(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 2))
	knit := 0
	for range 4000 {
		sizes := 1 + rng.IntN(3)
		row := Line{Steps: randomRow(rng, leans, sizes)}
		p := Read(row.Text(0), Options{SizeCount: sizes, Began: true})
		m := p.Mirror()
		if m.refused > 0 {
			if !strings.Contains(row.Text(0), " to ") {
				t.Fatalf("%q is refused: %+v", row.Text(0), m.Findings)
			}
			continue
		}
		text := m.Lines[0].Text(0)
		once := Read(text, Options{SizeCount: sizes, Began: true})
		twice := once.Mirror()
		if got := twice.Lines[0].Text(0); got != p.Lines[0].Text(0) ||
			!reflect.DeepEqual(plain(once.Lines[0].Steps), plain(m.Lines[0].Steps)) {
			t.Fatalf("%q mirrored is %q, twice %q", p.Lines[0].Text(0), text, got)
		}
		there, back := &runner{engine: &engine{piece: p}}, &runner{engine: &engine{piece: p}}
		for size := range sizes {
			there.size, back.size = size, size
			on := fixed(p.Lines[0].Steps, size).takes // a stretch counts once
			if on < 1 || on > 400 {
				continue
			}
			a, _, okA := there.rowOf(p.Lines[0].Steps, on)
			b, _, okB := back.rowOf(m.Lines[0].Steps, on)
			if !okA || !okB {
				continue
			}
			runsA, errA := stitch.Expand(a, int(on))
			runsB, errB := stitch.Expand(b, int(on))
			if errA != nil || errB != nil {
				t.Fatalf("%q on %d: %v; mirrored %q: %v", a.Text(), on, errA, b.Text(), errB)
			}
			slices.Reverse(runsA)
			for i, run := range runsA {
				if partner, ok := mirrorOps[run.Op]; ok {
					run.Op = partner
				}
				if i >= len(runsB) || run != runsB[i] {
					t.Fatalf("%q mirrored is %q", a.Text(), b.Text())
				}
			}
			if counts := work2(t, a, b, int(on)); counts[0] >= 0 && counts[1] >= 0 {
				if knit++; counts[0] != counts[1] {
					t.Fatalf("%q leaves %d stitches, mirrored %q %d", a.Text(), counts[0], b.Text(), counts[1])
				}
			}
		}
	}
	if knit < 1000 {
		t.Errorf("only %d rows were knit", knit)
	}
}

// work2 knits two rows, each on its own needles after a plain round; -1 for one
// that needs a strand where there is none.
func work2(t *testing.T, a, b stitch.Row, on int) [2]int {
	t.Helper()
	var counts [2]int
	for i, row := range []stitch.Row{a, b} {
		m := stitch.NewMachine(stitch.InTheRound)
		if err := m.CastOn(on); err != nil {
			t.Fatal(err)
		}
		if err := m.Work(stitch.RowOf(stitch.ToEnd(stitch.Knit))); err != nil {
			t.Fatal(err)
		}
		counts[i] = -1
		if m.Work(row) == nil {
			counts[i] = m.StitchCount()
		}
	}
	return counts
}

// What the remark on kfb says: a row read from its other end has every bar a stitch late, and worked one
// stitch earlier each bar lies where the mirror image has it. By hand, with - for a stitch, | for a bar.
func TestMirroredBarsLieOneStitchEarlier(t *testing.T) {
	seen := func(row string) string { return strings.ReplaceAll(row, "b", "-|") } // b is a kfb
	reversed := func(s string) string {
		r := []byte(s)
		slices.Reverse(r)
		return string(r)
	}
	for _, row := range []string{"--b------b---", "-b-b--b-", "---b---", "b----b-"} {
		asWritten := reversed(row)
		if seen(asWritten) == reversed(seen(row)) {
			t.Errorf("%s: nothing is to be said", row)
		}
		if earlier := strings.ReplaceAll(asWritten, "-b", "b-"); seen(earlier) != reversed(seen(row)) {
			t.Errorf("%s: %s and %s", row, seen(earlier), reversed(seen(row)))
		}
	}
}
