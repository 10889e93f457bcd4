package pattern

import (
	"strconv"
	"strings"
	"testing"
)

// TestUntilWords: until when, in every place of the grammar.
func TestUntilWords(t *testing.T) {
	for i, kind := range []struct {
		name  string
		write func(*teller) toldCase
		floor int // of a hundred
	}{{"ends until", endsUntil, 97}, {"rows until", rowsUntil, 95}, {"crown until", crownUntil, 98}, {"length until", lengthUntil, 92},
		{"to a point", toAPoint, 98},
		{"worked off", workedOff, 48}, {"short until", shortUntil, 0}, {"gusset until", gussetUntil, 98}, {"rows told", rowsToldUntil, 96}} {
		t.Run(kind.name, func(t *testing.T) { sweepTold(t, kind.name, kind.floor, int64(i+1), kind.write) })
	}
}

// untilLeft is until so many stitches are left.
func (w *teller) untilLeft(n []int) string {
	s := w.shown(n)
	return w.one("until "+s+" sts rem", "until "+s+" sts remain", "until there are "+s+" sts", "until "+s+" sts are left", "to "+s+" sts",
		"until you have "+s+" sts", "until there are "+s+" sts left", "until "+s+" stitches remain on the needle", "till "+s+" sts remain",
		"until only "+s+" sts rem", "until "+s+" sts rem on needle", "until there are "+s+" sts remaining", "until you have "+s+" sts left",
		"until there are only "+s+" sts left", "until a total of "+s+" sts rem", "until the number of sts is reduced to "+s,
		"until "+s+" sts rem in total", "until you are left with "+s+" sts", "until "+s+" remain", "until there are "+s+" sts on needle")
}

// endsUntil shapes both ends until so many are left.
func endsUntil(w *teller) toldCase {
	times := w.each(func(i int) int { return 5 + i })
	start := w.each(func(i int) int { return 60 + 6*i + 2*w.Intn(3) })
	end := less(start, fold(2, times))
	end2 := less(end, w.constant(6))
	where := w.one("at each end of", "each end of", "at both ends of", "at each side of", "on each end of")
	u := w.untilLeft(end)
	ws, rws, step := w.one("every row", "each row", "every foll row"), times, 1
	if w.Intn(2) == 0 {
		ws, step = w.one("every other row", "every alt row", "every RS row", "alt rows", "every 2nd row", "every alternate row",
			"every right-side row"), 2
		rws = fold(step, times)
	}
	even := "\nKnit " + w.one("2 rows.", "2 rows even.", "two rows.")
	text := ""
	dec := w.one("Dec 1 st", "Decrease 1 st", "Dec one st", "Now dec 1 st", "Cont in St st, dec 1 st", "Keeping patt correct, dec 1 st",
		"Keeping continuity of patt, dec 1 st", "Cont in patt, decreasing 1 st", "Work in patt, dec 1 st", "Cont to dec 1 st")
	switch w.Intn(3) {
	case 0:
		text = dec + " " + where + " " + ws + " " + u + "."
	case 1:
		text = dec + " " + where + " next row and " + w.one("every foll ", "every following ", "each foll ") +
			map[int]string{1: "row ", 2: w.one("alt row ", "alternate row ", "2nd row ")}[step] + u + "."
		rws = less(rws, w.constant(step-1))
	default:
		text = w.one("At each end of next ", "Dec 1 st at each end of next ") + w.n(times) + " "
		if text[0] == 'A' {
			text += "rows, dec 1 st. " + w.shown(end) + " sts."
		} else {
			text += "rows. " + w.shown(end) + " sts."
		}
		rws = times
	}
	if step == 2 {
		rws = nil // where the last of two rows ends is left open
	} else {
		rws = plus(rws, w.constant(2))
	}
	if w.Intn(3) == 0 {
		text += even + " Dec 1 st at each end of next 3 rows. " + w.shown(end2) + " sts."
		if rws != nil {
			rws = plus(rws, w.constant(3))
		}
		end = end2
	} else {
		text += even + " " + w.shown(end) + " sts."
	}
	return toldCase{"CO " + w.n(start) + " sts.\n" + text, nil, end, rws, false}
}

// rowsUntil repeats two written rows until so many stitches are there.
func rowsUntil(w *teller) toldCase {
	times := w.each(func(i int) int { return 4 + w.Intn(3) + i })
	start := w.each(func(i int) int { return 7 + 2*i })
	end := plus(start, fold(2, times))
	first := w.one("Row 1 (RS): K1, M1, k to last st, M1, k1.", "1st row: Inc in first st, k to last st, inc in last st.",
		"Inc row: K2, yo, k to last 2 sts, yo, k2.", "Row 1: K1, yo, knit to last st, yo, k1.")
	second := w.one("Row 2: Knit.", "2nd row: K.", "Next row: Knit.", "Row 2 (WS): Purl.", "2nd row: Purl.")
	which := w.one("Rep these 2 rows", "Rep last 2 rows", "Repeat the last two rows", "Work these two rows", "Cont to rep these 2 rows",
		"Continue repeating these 2 rows", "Rep the last 2 rows as set", "Cont to work the last 2 rows", "Cont in this way",
		"Continue in this manner", "Continue as set", "Cont as est", "Rep these two rows in this way", "Continue to inc in this way",
		"Continue increasing in this manner", "Cont to inc as set", "Keep on repeating these 2 rows", "Go on in this way",
		"Proceed in this manner", "Work as set", "Keep increasing in this way", "Alternate these 2 rows")
	s := w.shown(end)
	u := w.one("until there are "+s+" sts", "until you have "+s+" sts", "until you have "+s+" sts on the needle", "to "+s+" sts",
		"until there are "+s+" stitches on your needle", "until "+s+" sts are on needle", "until there are "+s+" sts in all",
		"until st count is "+s, "until you have increased to "+s+" sts", "until there are "+s+" sts in total", "till you have "+s+" sts",
		"until there are "+s+" on the needle", "until you have a total of "+s+" sts", "until stitch count reaches "+s,
		"until "+s+" sts have been reached", "until there are "+s+" sts altogether")
	tail := w.one(".", ".", ", ending with a "+w.one("WS row", "wrong side row", "WS row worked")+".",
		", ending with RS facing for next row.",
		", ending with Row 2.", ". End with a WS row.")
	if w.Intn(3) == 0 && which[0] != 'A' {
		which = w.one("Keeping patt correct, ", "Changing to a longer needle when necessary, ", "Taking new sts into patt, ") +
			string(which[0]|32) + which[1:]
	}
	return toldCase{"CO " + w.n(start) + " sts.\n" + first + "\n" + second + "\n" + which + " " + u + tail + "\nNext row: Knit. " + s +
		" sts.",
		nil, end, plus(fold(2, times), w.constant(1)), false}
}

// crownUntil goes on with the rounds of a crown.
func crownUntil(w *teller) toldCase {
	k := w.each(func(i int) int { return 7 + i + w.Intn(2) })
	t := 6 + 2*w.Intn(3)
	start := fold(t, plus(k, w.constant(2)))
	m := 3
	steps := less(plus(k, w.constant(2)), w.constant(m)) // decreases in all
	end := w.constant(t * m)
	dec := func(n []int) string {
		return w.one("*K"+w.n(n)+", k2tog; rep from * to end.", "[K"+w.n(n)+", k2tog] "+strconv.Itoa(t)+" times.",
			"(K"+w.n(n)+", k2tog) around.", "*K"+w.n(n)+", k2tog, rep from * around.")
	}
	at2 := less(start, w.constant(t))
	at3 := less(at2, w.constant(t))
	text := w.one("Rnd 1: ", "1st rnd: ", "Dec rnd: ") + dec(k) + " " + w.shown(at2) + " sts.\n" +
		w.one("Rnd 2: Knit.", "2nd rnd: K.", "Next rnd: Knit.", "Knit 1 rnd.") + "\n" +
		w.one("Rnd 3: ", "3rd rnd: ", "Next rnd: ") + dec(less(k, w.constant(1))) + " " + w.shown(at3) + " sts.\n"
	go1 := w.one("Cont in this way", "Continue in this manner", "Continue to dec in this way", "Cont dec as set",
		"Continue decreasing as est",
		"Cont in this way, dec "+strconv.Itoa(t)+" sts on every other rnd,",
		"Continue decreasing "+strconv.Itoa(t)+" sts every other rnd in this manner",
		"Continue as set, working 1 st fewer between decs,", "Cont as est, working one less st between decreases each time,",
		"Cont to dec "+strconv.Itoa(t)+" sts every alt rnd in this way", "Cont dec in this manner on every alt rnd",
		"Continue in this manner, decreasing on every other round,", "Cont to dec on every alt round as set")
	s := "«" + strconv.Itoa(t*m) + "»"
	u := w.one("until "+s+" sts rem", "until "+s+" sts remain", "until there are "+s+" sts left", "to "+s+" sts",
		"until there are "+s+" sts",
		"until you have "+s+" sts", "until only "+s+" sts remain", "until you have "+s+" sts left")
	tail, rows := ".", less(fold(2, steps), w.constant(1))
	switch w.Intn(3) {
	case 0:
		tail = w.one(", ending with a dec rnd.", ", ending with a decrease round.", ", ending on a dec rnd.", ", ending after a dec rnd.",
			". End with a dec rnd.")
	case 1:
		tail = w.one(", ending with a plain rnd.", ", ending with a knit rnd.", ", ending with a plain round.")
		rows = plus(rows, w.constant(1))
	default:
		rows = nil
	}
	if w.Intn(3) == 0 {
		go1 = strings.TrimSuffix(go1, ",") + ", " + w.one("changing to dpns when necessary", "changing to double-pointed needles when needed",
			"changing to dpns when sts no longer fit around needle") + ","
	}
	if rows != nil {
		rows = plus(rows, w.constant(1))
	}
	return toldCase{"CO " + w.n(start) + " sts and join in the rnd.\n" + text + go1 + " " + u + tail + "\nNext rnd: K2tog around. " +
		"«" + strconv.Itoa(t*m/2) + "» sts.", nil, fold(1, w.constant(end[0]/2)), rows, true}
}

// lengthUntil goes on to a length, which no count tells; the count stays.
func lengthUntil(w *teller) toldCase {
	start := w.each(func(i int) int { return 40 + 4*i })
	cm := w.n(w.each(func(i int) int { return 12 + i }))
	go1 := w.one("Cont in St st", "Work even", "Work straight", "Cont straight", "Cont in garter st", "Work in patt",
		"Cont without shaping",
		"Work in k2, p2 rib", "Continue in stocking stitch", "Proceed in st st", "Keep working in rib", "Cont as set", "Cont in patt as set",
		"Work even in patt", "Rep last 2 rows", "Knit every row", "Rep these 2 rows", "Cont in patt, keeping continuity,", "Continue even")
	u := w.one("until work measures "+cm+" cm", "until piece measures "+cm+" cm from beg", "until armhole measures "+cm+" cm",
		"until armhole measures same as back", "until work measures same as back to armholes",
		"until back measures "+cm+" cm from cast-on edge",
		"until piece is same length as back to shoulder", "until work is "+cm+" cm long", "until sleeve measures "+cm+" cm or desired length",
		"until front matches back to start of armhole shaping", "until the work measures "+cm+" cm", "until total length is "+cm+" cm",
		"for "+cm+" cm", "until the same length as the back to the armholes", "until piece measures same length as back to underarm",
		"until work from beg measures "+cm+" cm", "until length from cast-on is "+cm+" cm", "until strip fits along front edge",
		"until the armhole is as deep as that of the back", "until same number of rows have been worked as on back to armhole")
	tail := w.one("", "", ", ending with a WS row", ", ending with RS facing for next row", ", ending after a WS row",
		", ending on a WS row",
		", ending with a purl row", ", finishing with a wrong side row", ", RS facing for next row", ", end with a WS row")
	return toldCase{"CO " + w.n(start) + " sts.\nRow 1 (RS): Knit.\nRow 2: Purl.\n" + go1 + " " + u + tail +
		".\nNext row: Knit, dec 2 sts evenly across. " +
		w.shown(less(start, w.constant(2))) + " sts.", nil, less(start, w.constant(2)), nil, false}
}

// toAPoint decreases to the last stitches and fastens off.
func toAPoint(w *teller) toldCase {
	start := 11 + 2*w.Intn(5)
	first := w.one("Row 1: K1, k2tog, k to end.", "Dec row: K1, k2tog, k to end.", "Next row: Ssk, k to end.", "1st row: K2tog, k to end.")
	rep := w.one("Rep this row", "Repeat this row", "Cont in this way", "Rep last row", "Rep Row 1", "Work this row")
	if rep == "Rep Row 1" && first[:5] != "Row 1" {
		rep = "Rep last row"
	}
	left := 3
	if first[4] != '1' || first[:3] == "1st" {
		left = 2
	}
	if first == "Dec row: K1, k2tog, k to end." {
		left = 3
	}
	u := w.one("until "+strconv.Itoa(left)+" sts rem", "until "+strconv.Itoa(left)+" sts remain",
		"until there are "+strconv.Itoa(left)+" sts left", "until only "+strconv.Itoa(left)+" sts rem")
	last := map[int]string{3: w.one("K3tog", "Sl 1, k2tog, psso", "Sk2p", "P3tog"), 2: w.one("K2tog", "P2tog")}[left]
	end := w.one(". "+last+" and fasten off.", ". Next row: "+last+". Fasten off.", ". "+last+". Fasten off.",
		"; "+strings.ToLower(last)+" and fasten off.",
		".\nNext row: "+last+". Fasten off rem st.", ". Next row: "+last+". Fasten off last st.", ". Next row: "+last+", fasten off.")
	return toldCase{"CO " + strconv.Itoa(start) + " sts.\n" + first + "\n" + rep + " " + u + end, nil, []int{0}, nil, false}
}

// workedOff is an edging that takes the stitches of an edge one by one.
func workedOff(w *teller) toldCase {
	n := 4 + w.Intn(4)
	k := strconv.Itoa(n)
	co := w.one("CO "+k+" sts onto left needle.", "Using the knitted method, cast on "+k+" sts onto left needle.",
		"Cast on "+k+" sts at beg of needle.")
	gloss := w.one("", "", " (last st of edging tog with next st of shawl)", " (1 edging st and 1 shawl st)")
	first := "Row 1: K" + strconv.Itoa(n-1) + ", k2tog" + gloss + ", turn.\n"
	second := w.one("Row 2: Sl 1, k"+strconv.Itoa(n-1)+".", "Row 2: Sl 1, k to end.", "Row 2: K"+k+".")
	if second == "Row 2: Sl 1, k to end." {
		second = "Row 2: Sl 1, k" + strconv.Itoa(n-1) + "."
	}
	rep := w.one("Rep these 2 rows", "Rep Rows 1 and 2", "Repeat the last 2 rows", "Cont in this way", "Rep last 2 rows")
	u := w.one("until all sts have been worked off", "until all shawl sts have been worked",
		"until all the shawl sts have been worked off",
		"until no shawl sts remain", "until all sts of the shawl are worked off", "until all sts of body are used",
		"until every shawl st has been worked",
		"until all live sts have been worked", "until all sts from edge have been used up", "until all shawl sts are bound off",
		"until all the sts of shawl have been consumed", "until all border sts have been used", "until only edging sts remain",
		"until the shawl sts are used up")
	edge := 20 + 2*w.Intn(4)
	return toldCase{"CO " + strconv.Itoa(edge) + " sts. Knit 4 rows.\n" + co + "\n" + first + second + "\n" + rep + " " + u + ". «" + k +
		"» sts.", nil,
		[]int{n}, []int{4 + 2*edge}, false}
}

// shortUntil turns earlier and earlier.
func shortUntil(w *teller) toldCase {
	n := 24 + 2*w.Intn(4)
	left := 4 + w.Intn(4)
	wrap := w.one("w&t", "wrap and turn", "W&T", "wrap next st, turn")
	text := "Row 1 (RS): K" + strconv.Itoa(n-1) + ", " + wrap + ".\nRow 2: P" + strconv.Itoa(n-2) + ", " + wrap + ".\nRow 3: K" +
		strconv.Itoa(n-3) + ", " + wrap + ".\nRow 4: P" + strconv.Itoa(n-4) +
		", " + wrap + ".\n"
	go1 := w.one("Continue as set, working 1 st fewer before each wrap,", "Cont in this way, working one st less each row,",
		"Cont in this manner",
		"Continue in this way, working 1 st less before each turn,", "Cont as set",
		"Continue in this manner, working 1 st fewer on each row,",
		"Cont working 1 st less on each row")
	last := n - 2*left // the last row works so many
	u := w.one("until "+strconv.Itoa(left)+" sts rem unworked at each end",
		"until there are "+strconv.Itoa(left)+" sts unworked at each end",
		"until "+strconv.Itoa(left)+" sts are wrapped on each side", "until there are "+strconv.Itoa(left)+" wrapped sts at each side",
		"until "+strconv.Itoa(left)+" sts remain unworked on each side", "until you have "+strconv.Itoa(left)+" wrapped sts on each side",
		"until the row \"P"+strconv.Itoa(last)+", "+wrap+"\" has been completed",
		"until you have worked \"P"+strconv.Itoa(last)+", "+wrap+"\"",
		"until "+strconv.Itoa(last)+" sts rem unwrapped", "until "+strconv.Itoa(last)+" sts remain between the wraps",
		"until "+strconv.Itoa(left)+" sts at each end have been wrapped",
		"until "+strconv.Itoa(last)+" sts rem unwrapped in the centre")
	return toldCase{w.one("CO ", "The heel is worked over ", "Heel is worked over ") + strconv.Itoa(n) + " sts.\n" + text + go1 + " " + u +
		".\nNext row: K to end, picking up the wraps. «" + strconv.Itoa(n) + "» sts.", []int{n},
		[]int{n}, []int{2*left + 1}, false}
}

// gussetUntil widens between markers.
func gussetUntil(w *teller) toldCase {
	half := 12 + w.Intn(5)
	start := 2 * half
	reps := 3 + w.Intn(3)
	between := 1 + 2*reps
	end := start + 1 + 2*(reps)
	text := "Set-up rnd: K" + strconv.Itoa(half) + ", pm, M1, pm, k to end. «" + strconv.Itoa(start+1) + "» sts.\n" +
		"Inc rnd: K to m, sm, M1L, k to m, M1R, sm, k to end. «" + strconv.Itoa(start+3) + "» sts.\n" + w.one("Next rnd: Knit.",
		"Knit 1 rnd.") + "\n"
	rep := w.one("Rep last 2 rnds", "Rep these 2 rnds", "Repeat the last two rounds", "Work the last 2 rnds")
	b := "«" + strconv.Itoa(between) + "»"
	u := w.one("until there are "+b+" sts between markers", "until you have "+b+" sts between the markers",
		"until "+b+" sts lie between markers",
		"until there are "+b+" sts between the two markers", "until "+b+" sts are between markers",
		"until there are "+b+" gusset sts between markers",
		"until there are "+b+" gusset sts", "until you have "+b+" thumb sts between markers", "until there are "+b+" sts for thumb",
		"until "+b+" thumb gusset sts have been made", "until gusset has "+b+" sts", "until "+b+" sts between markers",
		"until there are "+b+" thumb sts")
	return toldCase{"CO " + strconv.Itoa(start) + " sts and join in the rnd.\n" + text + rep + " " + u + ". «" + strconv.Itoa(end) +
		"» sts.", nil,
		[]int{end}, []int{1 + 2*reps}, true}
}

// rowsToldUntil goes on until so many rows are worked.
func rowsToldUntil(w *teller) toldCase {
	start := w.each(func(i int) int { return 20 + 4*i })
	n := w.each(func(i int) int { return 16 + 2*i })
	s := w.n(n)
	u := w.one("until "+s+" rows have been worked", "until "+s+" rows are complete", "until you have worked "+s+" rows",
		"until "+s+" rows have been completed",
		"until "+s+" rows in all have been worked", "for "+s+" rows in all", "until a total of "+s+" rows has been worked",
		"until there are "+s+" rows",
		"until "+s+" rows are done", "until you have completed "+s+" rows", "until "+s+" rows in total have been worked",
		"till "+s+" rows have been worked")
	rep := w.one("Rep these 2 rows", "Rep Rows 1 and 2", "Repeat last 2 rows", "Cont in this way", "Work these two rows",
		"Cont to rep these 2 rows")
	return toldCase{"CO " + w.n(start) + " sts.\nRow 1 (RS): Sl 1, k to end.\nRow 2: Sl 1, p to end.\n" + rep + " " + u +
		".\nNext row: K2tog, k to end. " +
		w.shown(less(start, w.constant(1))) + " sts.", nil, less(start, w.constant(1)), plus(n, w.constant(1)), false}
}
