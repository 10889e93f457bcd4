package pattern

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/knittest"
)

// worded is a text put together from lists of words, with what it comes to: the sums are those of
// the lists, and not of this room. All words are common practice.
type worded struct {
	text           string
	start          []int
	round          bool
	stitches, rows []int // rows nil where they are open
}

// askWorded asks texts, at most so many of them at even distances, and wants so many of a hundred read
// right, none in silence wrong and at most so many called mistaken.
func askWorded(t *testing.T, texts []worded, floor, alarms int) {
	t.Helper()
	most := knittest.Sweep(1200, 200)
	step := max(1, len(texts)/most)
	for gcd(step, len(texts)) != 1 {
		step++ // so that every word of every list comes again and again
	}
	var counts [verdicts]int
	n := min(most, len(texts))
	for i := range n {
		w := &texts[i*step%len(texts)]
		p := corpusPiece{Text: w.text, Start: w.start, Round: w.round}
		p.Expect.Stitches, p.Expect.Rows = w.stitches, w.rows
		v, out := p.judge(t)
		counts[v]++
		if v == verdictSilent || v != verdictRight && testing.Verbose() {
			t.Logf("%s: %d stitches after %d rows, wanted %d after %d, found %s\n%s", verdictNames[v], out.EndStitches, out.WorkedRows,
				w.stitches, w.rows, judgedText(out.Findings), w.text)
		}
	}
	t.Logf("%d of %d texts: %v %v", n, len(texts), verdictNames, counts)
	if 100*counts[verdictRight] < floor*n || counts[verdictSilent] > 0 || counts[verdictAlarm] > alarms {
		t.Errorf("%v %v; %d %% right, %d alarms and nothing silent stood", verdictNames, counts, floor, alarms)
	}
}

func gcd(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// asPrinted is a number for each size as a text has it.
func asPrinted(n []int) string {
	if len(n) == 1 {
		return fmt.Sprint(n[0])
	}
	more := make([]string, len(n)-1)
	for i := range more {
		more[i] = fmt.Sprint(n[i+1])
	}
	return fmt.Sprintf("%d (%s)", n[0], strings.Join(more, ", "))
}

// each is what a number of every size becomes.
func each(n []int, f func(int) int) []int {
	out := make([]int, len(n))
	for i, k := range n {
		out[i] = f(k)
	}
	return out
}

// howManyTimes are the ways to say that rows are worked so many times more, after they were worked once, and until
// how many stitches that is. N is the number, T the number and one, S the stitches at the end.
var howManyTimes = []string{
	"N more times", "N times more", "a further N times", "another N times", "N additional times", "for N more times",
	"an additional N times",
	"T times in all", "T times in total", "for a total of T times", "T times altogether", "until S sts rem", "until S sts remain",
	"till S sts rem", "until there are S sts", "until S stitches remain on needle", "until S sts are left", "to S sts",
	"until only S sts remain", "until you have S sts", "until S sts remain on the needle", "until S sts are on the needle",
	"until there are S stitches left", "until S sts are left on needles", "until you have S sts left",
	"N further times", "until there are S sts remaining", "until a total of S sts remain", "until you are left with S sts",
	"until S sts remain in total",
}

func saidTimes(form string, n, end []int) string {
	t := each(n, func(k int) int { return k + 1 })
	return strings.NewReplacer("N ", asPrinted(n)+" ", "T ", asPrinted(t)+" ", "S s", asPrinted(end)+" s").Replace(form)
}

func lowered(s string) string {
	if s == "BO" {
		return s
	}
	return strings.ToLower(s[:1]) + s[1:]
}

// TestChangesInManyWords: decreases and increases of which it is said how many, where, on which rows and how often.
func TestChangesInManyWords(t *testing.T) {
	verbs := []struct {
		said string
		sign int
	}{{"Dec", -1}, {"Decrease", -1}, {"Inc", 1}, {"Increase", 1}, {"Cont to dec", -1}, {"Continue increasing",
		1}, {"Keep decreasing", -1},
		{"Continue to increase", 1}, {"Work even, decreasing", -1}, {"Continue in St st, increasing", 1}, {"Work in patt, dec", -1},
		{"Keeping pattern correct, dec", -1}, {"Cont in patt, inc", 1}, {"Shape sleeve by increasing",
			1}, {"Continue in pattern as established, decreasing", -1},
		{"Working new sts in patt, increase", 1}, {"Continuing in St st, inc", 1}}
	amounts := []string{"1 st", "one st", "1 stitch", "a stitch", "one stitch"}
	places := []string{"each end of", "at each end of", "at both ends of", "at each side", "each side", "at each edge",
		"at beg and end of", "on each side",
		"at both edges of", "at each side of", "at either end of", "at each end", "at the beginning and end of",
		"each edge", "at both sides"}
	type schedule struct {
		said       string
		rows, more func(n int) int // rows worked, and changes, of n
	}
	times := func(k int) func(int) int { return func(n int) int { return k * n } }
	plain := func(n int) int { return n }
	when := []schedule{{"every 4th row N times", times(4), plain}, {"every foll 6th row N times",
		times(6), plain}, {"every 4 rows N times", times(4), plain},
		{"next and every foll 4th row N times more", nil, nil}, {"next N rows", plain, plain}, {"every row N times", plain, plain},
		{"every other row N times", times(2), plain}, {"every fourth row N times", times(4), plain},
		{"next row and foll N alt rows", func(n int) int { return 2*n + 1 }, func(n int) int { return n + 1 }},
		{"next 3 rows, then every alt row N times", func(n int) int { return 3 + 2*n }, func(n int) int { return n + 3 }},
		{"every 6th row N times, then every 4th row twice", func(n int) int { return 6*n + 8 }, func(n int) int { return n + 2 }},
		{"every 4th row N times and then every other row 3 times",
			func(n int) int { return 4*n + 6 }, func(n int) int { return n + 3 }},
		{"every 2nd row N times, every 4th row 2 times", func(n int) int { return 2*n + 8 }, func(n int) int { return n + 2 }},
		{"the next row, then every foll 8th row N times", func(n int) int { return 8*n + 1 }, func(n int) int { return n + 1 }},
		{"every row until S sts are on the needle", plain, plain}, {"every 8th row until there are S sts", times(8), plain},
		{"next 5 rows, then 1 st at each end of foll N alt rows", func(n int) int { return 5 + 2*n }, func(n int) int { return n + 5 }},
		{"every alternate row a total of N times", times(2), plain}, {"EOR N times", times(2), plain},
		{"every 8th row N times in all", times(8), plain}, {"every 4th row to S sts", times(4), plain},
		{"next and every foll 6th row until there are S sts", func(n int) int { return 6*n - 5 }, plain},
		{"the 5th row and then every foll 6th row N times", func(n int) int { return 5 + 6*n }, func(n int) int { return n + 1 }},
		{"the next 4 rows, followed by every other row N times", func(n int) int { return 4 + 2*n }, func(n int) int { return n + 4 }},
		{"[every 4th row, then every 6th row] N times", times(10), times(2)},
		{"next row, then N foll 4th rows", func(n int) int { return 1 + 4*n }, func(n int) int { return n + 1 }},
	}
	forms := []string{"V A P W.", "V A P of W.", "V A W P.", "W, v A P.", "V A P, W.", "V A P on W.", "P W, v A."}
	var texts []worded
	for _, v := range verbs {
		for _, a := range amounts {
			for _, p := range places {
				for _, w := range when {
					for i, f := range forms {
						if w.rows == nil || !fits(f, p, w.said, v.said) {
							continue
						}
						n := [][]int{{3}, {4, 6}, {7}, {2, 3, 5}}[(i+len(w.said)+len(p))%4]
						start := each(n, func(k int) int { return 80 - 2*v.sign*w.more(k) })
						end := each(n, func(int) int { return 80 })
						said := saidTimes(w.said, n, end)
						text := strings.NewReplacer("V", v.said, "A", a, "P", p, "W", said, "v", lowered(v.said)).Replace(f)
						text = strings.ToUpper(text[:1]) + text[1:]
						texts = append(texts, worded{text, start, false, end, each(n, w.rows)})
					}
				}
			}
		}
	}
	askWorded(t, texts, 99, 0)
}

// fits reports whether a place, which may end with "of", stands well with a schedule in a form.
func fits(form, place, when, verb string) bool {
	of := strings.HasSuffix(place, " of")
	lone := !strings.Contains(verb, ",") && !strings.Contains(verb, "by ")
	if strings.HasPrefix(form, "P W") && place[:3] != "at " && place[:3] != "on " {
		return false
	}
	switch form {
	case "V A P W.":
		return true
	case "V A P of W.":
		return !of && !strings.Contains(place, "side") && !strings.HasPrefix(when, "[") && when[:3] != "EOR"
	case "V A W P.":
		return !of && !strings.Contains(when, ",") && !strings.Contains(when, "then")
	case "W, v A P.":
		return !of && lone && !strings.Contains(when, ",") && !strings.Contains(when, "then") && !strings.Contains(when, "S")
	case "V A P, W.":
		return !of
	case "V A P on W.":
		return !of && when[:3] != "EOR" && when[0] != '['
	case "P W, v A.":
		return lone && !strings.Contains(when, ",") && !strings.Contains(when, "then")
	}
	return false
}

// TestBindingOffInManyWords: stitches bound off at the beginnings of rows, in one step or in several.
func TestBindingOffInManyWords(t *testing.T) {
	verbs := []string{"BO", "Bind off", "Cast off", "Shape armholes: BO", "Armhole shaping: cast off", "Shape shoulders by binding off",
		"Next row: BO"}
	begs := []string{"at beg of", "at the beg of", "at the beginning of", "at beginning of", "at start of",
		"at the start of", "at the beginning of each of"}
	nexts := []string{"next 2 rows", "the next 2 rows", "next two rows", "the following 2 rows", "foll 2 rows",
		"the next two rows", "each of the next 2 rows"}
	chains := []struct {
		said   string
		n, row int
	}{{"", 0, 0}, {", then 3 sts B N", 6, 2}, {", 3 sts B N", 6, 2}, {" and 3 sts B foll 4 rows", 12, 4}, {", then BO 2 sts B N", 4, 2},
		{", then cast off 2 sts B following 4 rows", 8, 4}, {", 4 sts B N and 2 sts B foll 2 rows", 12, 4}, {". BO 3 sts B N", 6, 2},
		{", then dec 1 st each end of next 3 rows", 6, 3}, {", then dec 1 st at each end of every other row 3 times", 6, 6},
		{" and then 3 sts B following 2 rows", 6, 2}, {"; BO 3 sts B N", 6, 2}, {", followed by 3 sts B N", 6, 2},
		{". Dec 1 st at each end of foll 4 rows", 8, 4}, {", then 1 st B next 6 rows", 6, 6}}
	forms := []string{"V A sts B N C.", "B N, v A sts C.", "V A stitches B N C - S sts.",
		"V A sts loosely B N C (S sts).", "V A sts B N, work to end C."}
	var texts []worded
	for _, v := range verbs {
		for _, b := range begs {
			for _, n := range nexts {
				for ci, c := range chains {
					for i, f := range forms {
						if strings.Contains(b, "each of") && (strings.Contains(n, "each") || !strings.HasPrefix(n, "the")) ||
							strings.HasPrefix(f, "B N,") && (len(v) > 8 ||
								c.said != "" && c.said[0] != '.' && !strings.Contains(c.said, "then ")) ||
							strings.HasSuffix(v, "row: BO") || strings.HasSuffix(f, "work to end C.") && c.said != "" {
							continue
						}
						a := [][]int{{5}, {4, 6}, {7, 8}, {2, 3, 5}}[(i+ci+len(n)+len(b))%4]
						start := each(a, func(k int) int { return 90 + 2*k + c.n })
						end := each(a, func(int) int { return 90 })
						then := strings.NewReplacer("B", b, "N", "next 2 rows").Replace(strings.ReplaceAll(c.said, "BO", "bind off"))
						if strings.Contains(b, "each of") {
							then = strings.ReplaceAll(strings.ReplaceAll(then, "each of ", ""), "beginning of next",
								"beginning of the next")
						}
						text := strings.NewReplacer("V", v, "A", asPrinted(a), "B", b, "N", n, " C", then, "S", asPrinted(end), "v",
							lowered(v)).Replace(f)
						text = strings.ToUpper(text[:1]) + text[1:]
						texts = append(texts, worded{text, start, false, end, each(a, func(int) int { return 2 + c.row })})
					}
				}
			}
		}
	}
	askWorded(t, texts, 99, 0)
}

// TestAsidesChangeNothing: words that change no count, before, within and after directions and rows that do.
func TestAsidesChangeNothing(t *testing.T) {
	bases := []worded{
		{"Row 1 (RS): K2, ssk, k to last 4 sts, k2tog, k2.\nRow 2: Purl.\nRep Rows 1 and 2 3 more times. 62 sts.",
			[]int{70}, false, []int{62}, []int{8}},
		{"Next row (RS): K30, k2tog, k to end. 69 sts.\nNext row: Purl.", []int{70}, false, []int{69}, []int{2}},
		{"BO 5 (6) sts at beg of next 2 rows. 60 (64) sts.", []int{70, 76}, false, []int{60, 64}, []int{2, 2}},
		{"Dec 1 st at each end of every 4th row 5 (6) times. 60 (64) sts.", []int{70, 76}, false, []int{60, 64}, []int{20, 24}},
		{"CO 70 (76) sts.\nWork 10 rows in St st.", nil, false, []int{70, 76}, []int{10, 10}},
		{"Next row (RS): K10, BO 20 sts, k to end. 50 sts.", []int{70}, false, []int{50}, []int{1}},
		{"Inc row (RS): K1, M1L, k to last st, M1R, k1. 72 sts.\nWork 3 rows even.", []int{70}, false, []int{72}, []int{4}},
		{"Rnd 1: [K5, k2tog] 10 times. 60 sts.\nKnit 4 rnds.", []int{70}, true, []int{60}, []int{5}},
		{"Next rnd: K30, slip next 10 sts to waste yarn, CO 10 sts, k to end. 70 sts.", []int{70}, true, []int{70}, []int{1}},
	}
	before := []string{"Using larger needles, ", "With RS facing, ", "With MC, ", "With smaller needle and A, ",
		"Keeping patt correct, ",
		"Continuing in pattern, ", "At the same time as keeping the pattern, ", "Working loosely, ", "As before, "}
	after := []string{" as before", " loosely", " (or desired length)", " for the armholes", " for the sleeve",
		", being careful not to twist sts",
		", keeping continuity of pattern", ", working in pattern as established", " in the usual way",
		", keeping good tension", ", changing to dpns when necessary",
		", slipping markers as you come to them", " for all sizes", " on all sizes", " with A", " using MC",
		", pulling yarn firmly", " neatly",
		" and mark this row with a thread", " for underarm", ", maintaining the edge stitches",
		", taking care not to work too tightly", ", removing markers as you go",
		" (this is the right side)", " - note that this is a WS row", " for the left side of neck", " in the same way",
		" evenly and firmly",
		" (see Special Stitches)", " as shown in the photo", " as you go"}
	sentences := []string{"Try on for fit. ", "Mark each end of last row. ", "Check your gauge here. ",
		"Place a marker at each end of this row. ", "Change to larger needles. ",
		"The piece should now measure about 10 cm. ", "This completes the armhole shaping. ",
		"Armholes are now complete. ", "Read ahead before you go on. ",
		"Take care not to twist. ", "Slip markers as you come to them. ",
		"The rest of the body is worked in stockinette. ",
		"Remember to keep the edge stitches neat. ", "You may wish to use a lifeline. ",
		"It helps to count your stitches now. ", "From here on the sizes differ. ",
		"Switch to dpns when needed. ", "The neck begins here. ", "Proceed as follows. "}
	var texts []worded
	put := func(b worded, text string) {
		b.text = text
		texts = append(texts, b)
	}
	for _, b := range bases {
		for _, a := range after { // before the first full stop that ends a direction
			at := strings.Index(b.text, ".")
			put(b, b.text[:at]+a+b.text[at:])
		}
		for _, w := range before {
			at := slices.Index([]byte(b.text), ':') + 2
			if at == 1 {
				at = 0
			}
			verb := b.text[at:]
			put(b, b.text[:at]+w+lowered(verb))
		}
		for _, s := range sentences {
			put(b, s+b.text)
			put(b, strings.TrimSuffix(b.text, ".")+". "+strings.TrimSpace(s))
			at := strings.Index(b.text, "\n") + 1
			if at > 0 {
				put(b, b.text[:at]+s+"\n"+b.text[at:])
			}
		}
	}
	askWorded(t, texts, knittest.Sweep(97, 93), 1) // a short sweep is of other sentences
}
