package pattern

import "math/bits"

// claimedNumbers reads the numbers of a claim and its "sts", which may be left out
// where nothing but the closer or the end follows; -1 stands for "-".
func (p *parser) claimedNumbers(closer string, tail *claimTail) ([]int, bool) {
	var numbers []int
	joined, inner := false, 0
	for {
		t := p.peek()
		switch {
		case len(numbers) > 0 && t.is("(", "[", "{"):
			inner++
		case inner > 0 && t.is(")", "]", "}"):
			inner--
			p.next++
			joined = false
			continue
		}
		if len(numbers) > 0 && inner == 0 {
			p.claimedPart(tail)
		}
		if p.acceptAmong("st sts stitch stitches loops") {
			return numbers, true
		}
		if t.is(closer) && closer != "" || p.endsAt(p.next) {
			return numbers, len(numbers) > 0
		}
		if t.kind == tokenNumber && t.number > MaxNumber {
			p.mistake(ReasonTooLarge, t.span, "a count here is at most 10000")
			return nil, false
		}
		n, ok := t.counts(joined)
		if joined = ok; ok {
			numbers = append(numbers, n)
		}
		p.next++
	}
}

// claimedPart notes the part that is named between a number and its stitches: "13 gusset sts" are some of those on the
// needles, "26 instep sts" may be half of them.
func (p *parser) claimedPart(tail *claimTail) {
	switch t := p.peek(); {
	case t.is("gusset", "thumb") && p.acceptEnd(p.ofPart(p.next)):
		tail.part, tail.named = true, true
	case t.among("instep sole palm front back") && p.ofPart(p.next) != 0:
		tail.half = true
	}
}

// counts is the number that a token stands for, -1 of a dash that does not join two of them.
func (t *token) counts(joined bool) (int, bool) {
	if t.kind == tokenNumber {
		return int(t.number), true
	}
	if t.is("-") && !joined {
		return -1, true
	}
	return t.written()
}

// ofSomeSizes are numbers for some sizes only, "Sizes M and L only: ... (64, 74) sts", as
// a list for all.
func (p *parser) ofSomeSizes(numbers []int) []int {
	if p.forSizes == 0 || len(numbers) < 2 || len(numbers) != bits.OnesCount32(p.forSizes) {
		return numbers
	}
	all := make([]int, p.sizes)
	next := 0
	for size := range all {
		all[size] = -1
		if p.forSizes>>size&1 == 1 {
			all[size] = numbers[next]
			next++
		}
	}
	return all
}

// signedBy are numbers with a sign, those that are left out as 0.
func signedBy(numbers []int, sign int) []int {
	changed := make([]int, len(numbers))
	for i, n := range numbers {
		changed[i] = max(n, 0) * sign
	}
	return tidy(changed)
}
