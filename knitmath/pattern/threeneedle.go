package pattern

// mostWords is how many words of a sentence are looked through for what it is about: none that a person writes has more, and
// what is looked for is looked for again at each of its clauses.
const mostWords = 100

// threeNeedle reads "Place front and back with RS together and join 18 sts with a three-needle
// bind-off": both pieces leave the needles.
func (p *parser) threeNeedle(line *Line) bool {
	if p.onlyRows || p.inRow || !p.peek().among("place hold join with using holding put work turn") {
		return false
	}
	end := min(p.sentenceEnd(p.next), p.next+mostWords)
	at := p.threeNeedlesNamed(end)
	if at == 0 || !p.anyOf(p.next, end, "join", "together", "work") {
		return false
	}
	info, save := &line.info, p.next
	info.kind, info.all, info.bothNeedles = lineOff, true, true
	for i := save; i < end; i++ {
		to, _ := p.sizedEnd(i)
		if to == 0 || !p.tokens[p.ofPart(to)].stitches() {
			continue
		}
		p.next = i
		n := p.number()
		if n == nil || info.counts != nil {
			info.counts = nil // of each piece something else is said
			break
		}
		info.counts = without(n)
		i = to
	}
	p.next = at
	return true
}

// threeNeedlesNamed is the index after the name of the bind-off before token end, 0 where it does not stand there, or beyond a
// star or the label of a row.
func (p *parser) threeNeedlesNamed(end int) int {
	at := 0
	for i := p.next; i < end && at == 0 && p.tokens[i].kind != tokenStar; i++ {
		if p.tokens[i].among("three-needle three 3-needle 3") {
			at = p.phraseEnd(i, threeNeedles)
		}
	}
	for i := p.next; i < at; i++ {
		if p.labelEnd(i) != 0 {
			return 0
		}
	}
	return at
}

var threeNeedles = wordings("three-needle bind-off", "3-needle bind-off", "three-needle bo", "3-needle bo", "three-needle bind off",
	"3-needle bind off", "three-needle cast-off", "3-needle cast-off", "three-needle cast off", "3-needle cast off",
	"three needle bind-off", "3 needle bind-off", "three needle bind off", "3 needle bind off", "3 needle bo", "three needle bo",
	"3 - needle bind off", "3 - needle bind-off", "3 - needle cast off", "3 - needle bo")

// ontoNeedle reads "Knit the sts of N1 onto N3": where stitches are, which changes no count.
func (p *parser) ontoNeedle(line *Line) bool {
	i := p.next
	if p.onlyRows || p.inRow || !p.tokens[i].among("knit k work slip sl purl move") {
		return false
	}
	for i++; p.tokens[i].is("the", "all"); i++ {
	}
	if !p.tokens[i].stitches() || !p.tokens[i+1].is("of", "on", "from") {
		return false
	}
	if i = p.needleAt(i + 2); i == 0 || !p.tokens[i].is("onto", "to", "on") {
		return false
	}
	if i = p.needleAt(i + 1); i == 0 || !p.clauseStopsAt(i) {
		return false
	}
	p.passedTo(line, i)
	return true
}

// needleAt is the index after "N1", "Needle 3", "the first needle" at token i; 0 if that is not what
// stands there.
func (p *parser) needleAt(i int) int {
	for p.tokens[i].among("the first second third fourth 1st 2nd 3rd 4th last other") {
		i++
	}
	switch t := &p.tokens[i]; {
	case t.among("n1 n2 n3 n4"):
		return i + 1
	case t.is("needle", "n"):
		if p.tokens[i+1].kind == tokenNumber {
			i++
		}
		return i + 1
	}
	return 0
}
