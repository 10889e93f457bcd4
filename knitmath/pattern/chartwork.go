package pattern

import "example.com/knitmath/knitmath/stitch"

// chartSaid is what a sentence says of a chart whose rows are not in the text.
type chartSaid struct {
	named  bool  // a chart is named
	rows   []int // how many of its rows are worked, nil where that is not said
	repeat []int // stitches of its repeat
	over   []int // stitches that it is worked over, with those beside it
	times  []int // how often the repeat is worked
	part   bool  // the stitches are some of those there
}

// charted reads "Work the 8 rounds of Chart 1, repeating its 4 sts all round", "work Rows 1 to 8 of
// chart, working the 6-st patt rep 9 times across", "work 16 rows from chart, placing the motif on
// the centre 15 sts with 3 sts at each side": a chart of which it is said how many rows are worked
// on how many stitches keeps the count.
func (p *parser) charted(line *Line) bool {
	if !p.peek().among("work follow knit beg beginning reading working cont continue using") && !p.bandAt(p.next) ||
		p.onlyRows {
		return false
	}
	end := p.chartClause(p.next)
	if end == 0 {
		return false
	}
	save, found, listed, named := p.next, p.found.mark(), p.listed, p.named
	c := chartSaid{named: p.underChart(save)}
	ok := true
	for ok && p.next < end {
		ok = p.chartPart(&c)
	}
	labelled := p.inRow && c.rows == nil
	if !ok || !c.enough(labelled) {
		p.next, p.listed, p.named = save, listed, named
		p.found.rewind(found)
		return false
	}
	info := &line.info
	info.kind, info.op = lineEven, stitch.Knit
	if info.counts = c.rows; labelled {
		info.counts = nil
	}
	switch {
	case len(c.repeat) == 1:
		info.chartStitches, info.chartTimes = c.repeat[0], c.times
	case c.over != nil && !c.part:
		info.chartOver = c.over
	}
	p.reading(p.tokens[save].to(p.last()), "the chart is not in the text: read as if it kept the count of stitches")
	return true
}

// enough reports whether it is said on how many stitches how many rows of which chart are worked; a
// label may say the rows.
func (c *chartSaid) enough(labelled bool) bool {
	return c.named && (c.repeat != nil || c.over != nil) && (c.rows != nil || labelled)
}

// chartClause is the end of a sentence from token i in which a chart is named, 0 if none is.
func (p *parser) chartClause(i int) int {
	chart := p.underChart(i)
	for n := 0; n < 48; n++ {
		p.looked++
		t := &p.tokens[i]
		switch {
		case p.endsAt(i), t.kind == tokenMark && p.claimAt(i) && !p.timesAfterBracket(i):
			if !chart {
				return 0
			}
			return i
		case t.is("chart", "charts"), p.bandAt(i):
			chart = true
		case t.kind == tokenStar, t.kind == tokenWord && alarming(t.text) && !t.among("rep repeat times follow"):
			return 0
		}
		i++
	}
	return 0
}

// timesAfterBracket reports whether "(10 sts) 5 times" stands at token i: a repeat, and no count.
func (p *parser) timesAfterBracket(i int) bool {
	for n := i; n < i+5 && p.tokens[i].is("("); n++ {
		if p.tokens[n].is(")") {
			return p.tokens[n+1].kind == tokenNumber && p.tokens[n+2].is("times", "repeats", "reps")
		}
	}
	return false
}

// bandAt reports whether a band of a pattern is named at token i, "band 1", after the label of its rows.
func (p *parser) bandAt(i int) bool {
	return p.inRow && p.tokens[i].is("band", "motif") && p.tokens[i+1].kind == tokenNumber
}

// underChart reports whether a chart is named before the colon at which token i stands: "Chart A: work
// Rnds 1-9".
func (p *parser) underChart(i int) bool {
	if i < 2 || !p.tokens[i-1].is(":") {
		return false
	}
	for n := i - 2; n >= 0 && n > i-8 && !p.endsAt(n); n-- {
		if p.tokens[n].is("chart") {
			return true
		}
	}
	return false
}

// chartWords are words with which it is said how a chart is worked.
var chartWords = wordSet(`work follow knit beg beginning reading working cont continue using from of in the a its on over across around all
	round to at each end chart charts row rows rnd rnds rounds right left ws rs with starting as set and then patt pattern motif
	placing repeating repeat rep reps repeats between red black lines line marked side sides st sts stitch stitches centre center foll
	multiple throughout following next page only bottom top working every even odd thus through centered centred section main body`)

// chartPart reads one part of such a sentence.
func (p *parser) chartPart(c *chartSaid) bool {
	t := p.peek()
	switch {
	case t.is("chart"), p.bandAt(p.next):
		c.named = true
		p.next++
		if n := p.peek(); n.kind == tokenNumber || n.kind == tokenWord && len(n.text) == 1 && !p.ahead(1).is("-") {
			p.next++ // its name
		}
		return true
	case p.rowNumberNext():
		return p.chartRowsNamed(c)
	case t.kind == tokenNumber, t.is("(", "["):
		return p.chartNumber(c)
	case t.kind == tokenMark:
		p.next++
		return t.among(", ; : ) ] -")
	case t.is("st", "stocking", "garter") && p.acceptEnd(p.fabricEnd(p.next)):
		return true
	case t.kind == tokenWord && chartWords[t.text]:
		p.next++
		if t.is("with") && p.rowNumberNext() { // "beg with Row 1"
			p.next += 2
		}
		return true
	}
	return false
}

// rowNumberNext reports whether "Row 1" comes next.
func (p *parser) rowNumberNext() bool { return p.peek().row() && p.ahead(1).kind == tokenNumber }

// chartRowsNamed reads "Rows 1 to 8": how many rows of a chart are worked. "With Row 1" is none
// of its parts.
func (p *parser) chartRowsNamed(c *chartSaid) bool {
	var info lineInfo
	p.next++
	if c.rows != nil || !p.rowNumbers(&info) {
		return false
	}
	c.rows = []int{labelRows(&info, 0)}
	return !p.tokens[p.next-2].is("with")
}

// chartNumber reads a number of rows, of stitches or of times.
func (p *parser) chartNumber(c *chartSaid) bool {
	if p.peek().is("(", "[") {
		p.next++
		return true
	}
	some := p.last1().among("centre center next first last foll following")
	n := p.number()
	if n == nil {
		return false
	}
	n = without(n)
	dash := p.accept("-")
	for p.accept("more") {
	}
	switch {
	case p.acceptRow():
		if c.rows == nil {
			c.rows = n
		}
	case p.peek().stitches():
		return p.chartStitches(c, n, dash, some)
	case p.acceptAmong("times time repeats reps"):
		c.times = n
		if c.over != nil && c.repeat == nil && p.peek().is("around", "across") && len(c.over) == 1 { // "chart (10 sts) 5 times around"
			c.repeat, c.over = c.over, nil
		}
	case p.tokens[p.next-2].is("of") && p.tokens[p.next-3].is("repeats", "reps") && c.repeat == nil: // "13 repeats of 8"
		c.repeat = n
	default:
		return false
	}
	return true
}

// chartStitches reads the "sts" after a number: they are those of the repeat, "12-st rep",
// "repeating its 4 sts", those that the chart is worked over, of which some says that they are not
// all there are, or those beside it.
func (p *parser) chartStitches(c *chartSaid, n []int, dash, some bool) bool {
	from := max(p.next-4, 0)
	repeats := dash || p.anyOf(from, p.next, "multiple") ||
		p.tokens[p.next-2].is("its", "the") && p.anyOf(from, p.next, "repeating", "rep", "repeat")
	p.next++
	switch {
	case repeats && c.repeat == nil:
		c.repeat = n
	case c.over == nil:
		c.over, c.part = n, some
	case p.peek().is("in", "at", "on") && p.anyOf(p.next, p.next+6, "each", "both"): // those beside it
		c.part = false
		c.over = added(added(c.over, n, p.sizes), n, p.sizes)
	default:
		return false
	}
	return true
}

// untilChartRow reads "until Row 10 of chart is complete" after rows that have numbers: so many
// more.
func (p *parser) untilChartRow(info *lineInfo) bool {
	last := p.rowBefore()
	if last == 0 || !p.ahead(1).row() || p.ahead(2).kind != tokenNumber || p.ahead(2).number <= last || p.ahead(2).number > MaxRows {
		return false
	}
	i := p.next + 3
	for p.tokens[i].among("of the chart has been is complete completed worked pattern patt") {
		i++
	}
	if !p.endsAt(i) && !p.tokens[i].is(",", ";") || i == p.next+3 {
		return false
	}
	info.counts = []int{int(p.ahead(2).number - last)}
	p.next = i
	return true
}
