package pattern

// sizesIn guesses the number of sizes: the one that most lists of numbers have,
// among those that follow a number or stand where one is due; 1 if there is none.
func (p *parser) sizesIn() int {
	var v sizeVotes
	for i := 1; i < len(p.tokens); i++ {
		if p.tokens[i].kind == tokenNumber {
			i = p.voteNumber(&v, i)
		} else {
			i = p.voteList(&v, i)
		}
	}
	if n := p.sizesNamed(); n > 1 {
		v.votes[n] += 3
	}
	for n := range v.votes {
		if v.votes[n] > 0 {
			v.votes[n] += v.weak[n]
		}
	}
	best := 1
	for n := 2; n <= MaxSizes; n++ {
		if v.votes[n] > 0 && (best == 1 || v.votes[n] >= v.votes[best]) {
			best = n
		}
	}
	return best
}

// sizeVotes are how much speaks for each number of sizes.
type sizeVotes struct {
	votes  [MaxSizes + 1]int
	weak   [MaxSizes + 1]int // that count only beside others: "(14-28-14 sts)" may be how stitches lie
	single bool              // a count of stitches of one size came before
}

func (v *sizeVotes) give(sizes, weight int) { v.votes[min(sizes, MaxSizes)] += weight }

// voteNumber lets a number at token i vote, "80 (88, 96)", and is the last token that belongs
// to it. How stitches lie on needles, "18-36-18 on three needles", says nothing of sizes.
func (p *parser) voteNumber(v *sizeVotes, i int) int {
	end, n := p.sizedEnd(i)
	switch {
	case n == 2 && p.endsAt(end) && (p.tokens[i-1].among("x × as like") || p.tokens[i-1].row()):
		return end - 1 // "(k6, k2tog) x 12 (84)": the count after the row
	case n > 1 && p.tokens[i-1].is("(") && p.tokens[i+1].is("-"):
		v.weak[min(n, MaxSizes)] += 2
	case n <= 1:
		return p.voteAlone(v, i, end)
	case p.tokens[i+1].is("-") && p.tokens[end].is("on", "onto"):
		return end
	case !p.partsByDash(i):
		v.give(n, 2)
	}
	return end - 1
}

// voteAlone lets a number at token i vote that no list follows, and is the last token that belongs to it: two parted by a
// stroke after "CO" are those of two sizes.
func (p *parser) voteAlone(v *sizeVotes, i, end int) int {
	cast := p.castOnBefore(i)
	if cast && p.tokens[i+1].is("/") && p.tokens[i+2].kind == tokenNumber && p.tokens[i+3].stitches() {
		v.give(2, 2)
		return i + 2
	}
	v.single = v.single || end != 0 && (cast || p.tokens[end].stitches())
	return i
}

// castOnBefore reports whether "CO" or "cast on" stands before token i.
func (p *parser) castOnBefore(i int) bool {
	if i > 0 && p.tokens[i-1].is(":") {
		i--
	}
	return i > 0 && p.tokens[i-1].is("co") || i > 1 && p.tokens[i-1].is("on") && p.tokens[i-2].is("cast")
}

// voteList lets a list at token i vote that follows no number, "(88, 96)" or the rest of "k5 (6,
// 7)", and is the last token that belongs to it.
func (p *parser) voteList(v *sizeVotes, i int) int {
	end, n := p.listEnd(i)
	if end == 0 {
		return i
	}
	if n > 1 && p.tokens[i-1].is("needles", "dpns") { // "over 3 needles (22, 24, 22)"
		v.weak[min(n, MaxSizes)]++
		return end - 1
	}
	if _, _, _, ok := split(p.tokens[i-1].text); ok && p.tokens[i-1].kind == tokenWord {
		if n == 1 && v.single && p.endsAt(end) { // "k1 (26)": the count after the row
			return end - 1
		}
		end, n = p.sizedMore(i, 1)
		v.give(n, 1)
	}
	if n > 1 && p.tokens[i+2].is("-") && p.tokens[i+1].kind == tokenNumber {
		v.weak[n]++
		return end - 1
	}
	if n > 1 && !p.tokens[i-1].is("-") { // "- (40, 66) rows": the first size may have none, or a dash lead a count in
		v.give(n, 1)
	}
	return end - 1
}
