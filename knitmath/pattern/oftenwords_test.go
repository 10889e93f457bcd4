package pattern

import (
	"testing"
)

// TestOftenWords: on which rows, how often, and rows that go on.
func TestOftenWords(t *testing.T) {
	for i, kind := range []struct {
		name  string
		write func(*teller) toldCase
		floor int // of a hundred
	}{{"every so many rows", everySoMany, 98}, {"next and following", nextAndFollowing, 98}, {"two stretches", twoStretches, 98},
		{"dec row again", decRowAgain, 98}, {"pattern rows again", patternAgain, 90}, {"on for rows", onForRows, 98}} {
		t.Run(kind.name, func(t *testing.T) { sweepTold(t, kind.name, kind.floor, int64(100+i), kind.write) })
	}
}

// often is so many times.
func (w *teller) often(n []int) string {
	s := w.shown(n)
	if single(n, 1) {
		return "once"
	}
	return w.one(s+" times", s+" times in all", "a total of "+s+" times")
}

// shapes is a change at both ends, before or after on which rows it is made.
func (w *teller) shapes(when string) string {
	where := w.one("at each end of ", "each end of ", "at both ends of ", "each side of ", "at each side of ")
	dec := w.one("Dec 1 st ", "Decrease 1 st ", "Dec one st ", "Cont in patt, dec 1 st ", "Keeping patt correct, dec 1 st ",
		"Work in St st, dec 1 st ",
		"Cont in patt, AT THE SAME TIME dec 1 st ", "Shape sides by decreasing 1 st ", "Work in st st, decreasing 1 st ", "Now dec 1 st ",
		"Dec ", "Keeping continuity of patt, dec 1 st ", "Cont straight in patt, dec 1 st ", "Next, dec 1 st ")
	return dec + where + when
}

func (w *teller) nth(n int) string {
	if n == 2 {
		return w.one("other row", "alt row", "alternate row", "2nd row", "RS row", "second row")
	}
	return map[int]string{4: w.one("4th row", "fourth row", "4 rows"), 6: w.one("6th row", "sixth row", "6 rows"), 8: w.one("8th row",
		"8 rows"),
		10: w.one("10th row", "tenth row")}[n]
}

// decreased is a text of a piece that loses 2 stitches so many times, with its count told.
func (w *teller) decreased(text string, start, times, rows []int) toldCase {
	end := less(start, fold(2, times))
	return toldCase{"CO " + w.n(start) + " sts.\n" + text + w.count(end) + "\nNext row: K2tog, k to end. " + w.shown(less(end,
		w.constant(1))) + " sts.",
		nil, less(end, w.constant(1)), plus(rows, w.constant(1)), false}
}

func (w *teller) startTimes() (start, times []int) {
	start = w.each(func(i int) int { return 70 + 6*i })
	return start, w.each(func(i int) int { return 3 + w.Intn(4) + i })
}

func everySoMany(w *teller) toldCase {
	start, times := w.startTimes()
	n := []int{1, 2, 4, 6, 8, 10}[w.Intn(6)]
	when := w.one("every ", "each ", "every foll ", "every following ")
	if n == 1 {
		when += w.one("row ", "row ")
	} else {
		when += w.nth(n) + " "
	}
	return w.decreased(w.shapes(when)+w.often(times), start, times, nil).open()
}

// open is the case with its rows left out, where the first and the last row are counted in more than one way.
func (c toldCase) open() toldCase {
	c.rows = nil
	return c
}

func nextAndFollowing(w *teller) toldCase {
	start, more := w.startTimes()
	n := []int{2, 4, 6}[w.Intn(3)]
	times := plus(more, w.constant(1))
	m := w.shown(more)
	text := ""
	switch w.Intn(3) {
	case 0: // "next and foll 5 alt rows"
		n = 2
		text = w.one("next and foll "+m+" alt rows", "next row and foll "+m+" alternate rows", "next and following "+m+" alt rows",
			"the next and foll "+m+" alt rows", "next row and the foll "+m+" alt rows", "next and "+m+" foll alt rows",
			"next and foll "+m+" RS rows",
			"next RS row and foll "+m+" alt rows", "this row and foll "+m+" alt rows")
	case 1:
		text = w.one("next "+m+" rows", "the next "+m+" rows", "each of next "+m+" rows", "foll "+m+" rows", "every one of next "+m+" rows")
		times, n = more, 1
	default:
		text = w.one("next row, then every foll ", "next row and then every ", "next row, and then on every foll ",
			"next row then on every foll ") +
			w.nth(n) + " " + w.one(m+" times", m+" times more", m+" more times", "another "+m+" times")
	}
	rows := plus(fold(n, less(times, w.constant(1))), w.constant(1))
	return w.decreased(w.shapes(text), start, times, rows)
}

func twoStretches(w *teller) toldCase {
	start, a := w.startTimes()
	b := w.each(func(int) int { return 2 + w.Intn(3) })
	n := []int{4, 6, 8}[w.Intn(3)]
	then := w.one(", then every ", ", then on every ", " and then every ", ", then every foll ", ", then at each end of every ",
		" then every ",
		" and every ", "; then every ", ", followed by every ", ", and then each end of every ")
	text := "every " + w.nth(n) + " " + w.shown(a) + " times" + then + w.nth(2) + " " + w.shown(b) + " times"
	if w.Intn(4) == 0 {
		text = w.one("every ", "on every ") + w.nth(n) + " " + w.shown(a) + " times" + w.one("; ", ", ") + "then every row " + w.shown(b) +
			" times"
	}
	return w.decreased(w.shapes(text), start, plus(a, b), nil).open()
}

func decRowAgain(w *teller) toldCase {
	start, more := w.startTimes()
	n := []int{2, 4, 6, 8}[w.Intn(4)]
	m := w.shown(more)
	label := w.one("Dec row (RS): ", "Dec row: ", "Decrease row: ", "Next row (dec): ", "Next row (dec row): ", "Next row (RS): ")
	verb := w.one("Rep dec row ", "Repeat this row ", "Rep this dec row ", "Work dec row ", "Rep the dec row ", "Repeat dec row ",
		"Rep last row ")
	if label == "Next row (RS): " || label == "Next row (dec): " {
		verb = w.one("Rep this row ", "Repeat this dec ", "Rep last row ", "Rep this dec ")
	}
	when := w.one("every ", "on every ", "every foll ", "on every foll ") + w.nth(n) + " "
	text := label + w.one("K1, k2tog, k to last 3 sts, ssk, k1.", "K2, ssk, k to last 4 sts, k2tog, k2.",
		"Ssk, knit to last 2 sts, k2tog.") + " " +
		w.shown(less(start, w.constant(2))) + " sts.\n" + w.one("Cont in St st. ", "", "Working in st st, ") + verb
	if s := verb; text[len(text)-len(verb)-2] == ',' {
		text = text[:len(text)-len(verb)] + string(s[0]|32) + s[1:]
	}
	text += when + w.one(m+" times more", m+" more times", "another "+m+" times", "a further "+m+" times", m+" more times")
	return w.decreased(text, start, plus(more, w.constant(1)), plus(fold(n, more), w.constant(1)))
}

func patternAgain(w *teller) toldCase {
	start := w.each(func(i int) int { return 42 + 8*i })
	times := w.each(func(i int) int { return 5 + w.Intn(3) + i })
	again := w.each(func(int) int { return 1 + w.Intn(2) })
	rows := "Row 1 (RS): Knit.\nRow 2: Purl.\nRow 3: *K2, p2; rep from * to last 2 sts, k2.\nRow 4: *P2, k2; rep from * to last 2 sts, p2.\n"
	n, m := w.n(times), w.n(less(times, w.constant(1)))
	text := w.one("Work Rows 1-4 a total of "+n+" times", "Rep these 4 rows "+m+" more times", "Rep Rows 1-4 "+m+" times more",
		"Rep these four rows until they have been worked "+n+" times in all", "Repeat Rows 1 to 4 another "+m+" times",
		"Rep Rows 1-4 for patt until "+n+" patt reps have been worked", "Work these 4 rows "+n+" times in all",
		"Rep last 4 rows "+m+" more times",
		"Rep Rows 1 to 4 inclusive "+m+" times more", "Repeat rows 1 through 4 "+m+" more times",
		"Cont to rep these 4 rows a further "+m+" times",
		"Rep 1st to 4th rows "+m+" times more", "These 4 rows form patt. Rep them "+m+" times more", "Work 4-row patt rep "+n+" times in all")
	all := fold(4, times)
	switch w.Intn(3) {
	case 0:
		text += w.one(", then work Rows 1 and 2 once more", ", then rep Rows 1 and 2 once more", ", then Rows 1 and 2 again",
			", then Rows 1-2 once more",
			" then first 2 rows again", ", ending with Row 2 of another rep", ", then work Rows 1 and 2 again", " and then Rows 1 and 2 once")
		if text[len(text)-11:] == "another rep" {
			text = text[:len(text)-len(", ending with Row 2 of another rep")] + ", then first 2 rows once more"
		}
		all = plus(all, w.constant(2))
	case 1:
		text += ", then " + w.one("work ", "rep ", "") + "Rows 1 and 2 " + w.one("another ", "a further ") + w.n(again) + " " +
			w.one("times", "times", "time(s)")
		all = plus(all, fold(2, again))
	}
	return toldCase{"CO " + w.n(start) + " sts.\n" + rows + text + ".\nNext row: K2tog, k to end. " + w.shown(less(start, w.constant(1))) +
		" sts.", nil,
		less(start, w.constant(1)), plus(all, w.constant(1)), false}
}

func onForRows(w *teller) toldCase {
	start := w.each(func(i int) int { return 41 + 8*i })
	n := w.each(func(i int) int { return 20 + 2*w.Intn(5) + 2*i })
	text := w.one("1st row (RS): K1, *p1, k1; rep from * to end.\n2nd row: K1, *p1, k1; rep from * to end.\n",
		"Row 1 (RS): Moss st 5, k to last 5 sts, moss st 5.\nRow 2: Moss st 5, p to last 5 sts, moss st 5.\n",
		"Next row (RS): K3, p to last 3 sts, k3.\nNext row: Knit.\n", "Row 1 (RS): Sl 1, k to end.\nRow 2: Sl 1, p to end.\n")
	s := w.n(n)
	set := w.one("", "", "These 2 rows set the borders. ", "These two rows form the patt. ", "Last 2 rows set position of patt. ",
		"These 2 rows establish the pattern. ", "These 2 rows form rib. ")
	on := w.one("Cont in this way for ", "Continue in this manner for ", "Work as set for ", "Cont as set for ", "Rep these 2 rows for ",
		"Cont in patt for ",
		"Continue as established for ", "Keep working in this way for ", "Proceed in this way for ", "Cont in patt as set for ",
		"Cont thus for ")
	howMany := w.one("a further "+s+" rows", s+" more rows", s+" rows more", "another "+s+" rows", s+" further rows",
		"the next "+s+" rows",
		"an additional "+s+" rows")
	if w.Intn(4) == 0 {
		on, howMany = w.one("Work a further "+s+" rows", "Work "+s+" more rows", "Work another "+s+" rows"), w.one(" in this way", " as set",
			" in patt",
			" in patt as set", " in the same way", " as now set", " in patt as est")
	}
	return toldCase{"CO " + w.n(start) + " sts.\n" + text + set + on + howMany + ".\nNext row: K2tog, k to end. " + w.shown(less(start,
		w.constant(1))) +
		" sts.", nil, less(start, w.constant(1)), plus(n, w.constant(3)), false}
}
