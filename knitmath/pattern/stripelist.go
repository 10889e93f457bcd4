package pattern

// stripesFar is how many words may lead stripes in.
const stripesFar = 14

// rowsColoured reports whether "4 rows blue" stands at token i, or a bracket or a star before it.
func (p *parser) rowsColoured(i int) bool {
	for p.tokens[i].kind == tokenNewline || p.tokens[i].among("work knit then [ ( {") || p.tokens[i].kind == tokenStar {
		i++
	}
	end, _ := p.sizedEnd(i)
	return end != 0 && p.tokens[end].row()
}

// rowsInColours reports whether two numbers of rows with their colours stand at token i, "2 rows A, 2 rows B", "[2 rows A and 2 rows B]".
func (p *parser) rowsInColours(i int) bool {
	for range 2 {
		if !p.rowsColoured(i) {
			return false
		}
		for p.tokens[i].kind != tokenNumber {
			i++
		}
		end, _ := p.sizedEnd(i)
		if i = p.colourEnd(end + 1); i == 0 {
			return false
		}
		for p.tokens[i].among(", ; and then with") {
			i++
		}
	}
	return true
}

// colouredRows reads "4 rows blue, [2 rows white and 2 rows A] 3 times": how many they are together;
// nil if their number is not the same in all sizes, or cannot be told.
func (p *parser) colouredRows() []int {
	sum := 0
	for more := true; more; more = p.stripeAfter() {
		n := p.stripeGroup()
		if n == nil {
			return nil
		}
		sum = min(sum+max(n[0], 0), MaxRows)
	}
	if sum == 0 || sum > 500 {
		return nil
	}
	return []int{sum}
}

// stripeGroup reads one stripe, or several in brackets or after a star with how often they are worked.
func (p *parser) stripeGroup() []int {
	for p.accept("then") || p.peek().kind == tokenNewline && p.peek().number == 1 {
		if p.peek().kind == tokenNewline {
			p.next++
		}
	}
	open := p.peek()
	closer := closers[open.text]
	if open.kind == tokenWord || closer == "" && open.kind != tokenStar {
		return p.oneStripe()
	}
	p.next++
	sum := 0
	for more := true; more; more = p.stripeAfter() {
		n := p.oneStripe()
		if n == nil {
			return nil
		}
		sum += max(n[0], 0)
	}
	if open.kind != tokenStar && !p.accept(closer) {
		return nil
	}
	times := p.stripeTimes(open)
	if times == 0 {
		return nil
	}
	return []int{min(sum*times, MaxRows)}
}

// stripeTimes reads how often the stripes in a bracket or after a star are worked; 0 if that is not said.
func (p *parser) stripeTimes(open *token) int {
	again := open.kind == tokenStar
	if again {
		p.acceptAmong(", ; .")
		if !p.accept("rep", "repeat") || !p.accept("from") || p.peek().kind != tokenStar || p.peek().text != open.text {
			return 0
		}
		p.next++
	}
	if p.accept("x") {
		n := p.number()
		if len(n) != 1 {
			return 0
		}
		return n[0]
	}
	n, total, more := p.manyTimes()
	if len(n) != 1 || more && !again {
		return 0
	}
	return n[0] + bit(again && !total)
}

// oneStripe reads "2 rows blue", "2 rows in A": how many rows they are; nil if that is not what
// comes next, or differs between the sizes.
func (p *parser) oneStripe() []int {
	for p.peek().kind == tokenNewline && p.peek().number == 1 {
		p.next++
	}
	p.acceptAmong("work knit purl")
	n := p.number()
	if len(n) != 1 || !p.acceptRow() {
		return nil
	}
	if end := p.colourEnd(p.next); end != 0 {
		p.next = end
		return n
	}
	for words := 0; words < 4 && p.peek().kind == tokenWord && !p.peek().among("and then in for until throughout"); words++ {
		p.next++
	}
	if p.peek().is("in") {
		p.acceptEnd(p.colourEnd(p.next))
	}
	return n
}

// stripeAfter reports whether the rows of another colour follow, and goes on to them.
func (p *parser) stripeAfter() bool {
	save := p.next
	for p.peek().among(", ; and then with ending finishing") ||
		p.peek().kind == tokenNewline && p.peek().number == 1 && p.rowsColoured(p.next) {
		p.next++
	}
	if save == p.next && p.peek().kind != tokenNewline || !p.rowsColoured(p.next) {
		p.next = save
		return false
	}
	return true
}

// stripesHere reads "[work 2 rows A, 2 rows B] 5 times, then work 6 rows A" and "*2 rnds A, 3 rnds B; rep from * 5 more times".
func (p *parser) stripesHere(line *Line) bool {
	if !p.stripesAt(p.next) {
		return false
	}
	sum := p.colouredRows()
	if sum == nil {
		return false
	}
	line.info.kind, line.info.counts = lineEven, sum
	p.rowsSaid = sum[0]
	return true
}

// stripesAt reports whether such words stand at token i.
func (p *parser) stripesAt(i int) bool {
	return !p.onlyRows && (p.tokens[i].kind == tokenStar || p.tokens[i].is("[", "(", "{")) && p.rowsInColours(i)
}

// stripesInTail reads "in stripes of 2 rows A and 2 rows B", ", alternating 2 rows A and 2 rows B" after rows that are worked even:
// how many rows there are, where nothing else says it.
func (p *parser) stripesInTail(info *lineInfo) bool {
	if info.kind != lineEven {
		return false
	}
	save, i := p.next, p.next
	for n := 0; n < 8 && p.tokens[i].among(stripeWords); n++ {
		i++
	}
	bracket := p.tokens[i].is("(")
	if i == save || !p.rowsInColours(i) {
		return false
	}
	p.next = i
	sum := p.colouredRows()
	if sum == nil && bracket { // the list is told beside "stripes"
		p.next = i + 1
		sum = p.colouredRows()
		p.acceptAmong("throughout alternately")
		if !p.accept(")") {
			sum = nil
		}
	}
	if sum == nil {
		p.next = save
		return false
	}
	p.stripesCounted(info, sum)
	return true
}

// stripeWords are words before a list of stripes.
const stripeWords = "in the following foll stripe stripes striped pattern patt sequence of as follows thus working work alternating " +
	"alternately with :"

// stripesCounted says how many rows of stripes are worked: those that are listed, unless it is said otherwise.
func (p *parser) stripesCounted(info *lineInfo, sum []int) {
	p.acceptAmong("throughout alternately")
	i := p.next
	if p.tokens[i].is(",") {
		i++
	}
	if p.rowsSaid = sum[0]; info.counts != nil {
		return
	}
	if p.tokens[i].among("for until till to") {
		info.open, p.next = true, i
		return
	}
	info.counts, info.open = sum, false
}
