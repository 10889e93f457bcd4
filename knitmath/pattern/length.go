package pattern

// A length changes no count, and is printed in more ways than any of the rules that meet one should know: "2\"/5 cm",
// "2½ in. [6.5 cm]", "5-6 cm", "about 5 (6, 7) cm / 2 (2½, 2¾) in". So before the text is read each becomes one number and one
// unit, whose spot is that of all that is left out.

// unitSystem tells units of length apart by whose they are.
type unitSystem uint8

const (
	unitNone unitSystem = iota
	unitMetric
	unitImperial
)

// lengthUnits are the units in which work is measured.
var lengthUnits = map[string]unitSystem{"cm": unitMetric, "cms": unitMetric, "mm": unitMetric, "centimetre": unitMetric,
	"centimetres": unitMetric,
	"centimeter":  unitMetric, "centimeters": unitMetric, "in": unitImperial, "ins": unitImperial, "inch": unitImperial,
	"inches": unitImperial, "\"": unitImperial}

// length is a length as it is printed.
type length struct {
	end    int // the token after it
	count  int // how many there are, for as many sizes
	unit   int // the token of the first unit
	system unitSystem
	sure   bool // "in" and a quotation mark may be none
}

// plainLengths leaves one number and one unit of each length.
func (p *parser) plainLengths() {
	out, quoted := p.tokens[:0], false
	for i := 0; i < len(p.tokens); i++ {
		t := p.tokens[i]
		switch {
		case t.kind == tokenNewline:
			quoted = false
		case t.is("\""):
			quoted = !quoted
		case i >= leading && i+beyond < len(p.tokens) && p.lengthMayBegin(i):
			l, ok := p.wholeLength(i, quoted)
			if ok {
				out = append(withoutAbout(out), p.lengthAmount(i))
				t, i = p.lengthUnit(l), l.end-1
			} else if l.count > 1 { // for fewer or more sizes than there are, of which the reader complains
				out = append(out, p.tokens[i:l.end-1]...)
				i = l.end - 1
				t = p.tokens[i]
			}
		}
		out = append(out, t)
	}
	p.tokens = out
	p.lineSeen, p.sentenceSeen = [2]int{}, [2]int{} // of the tokens as they stood
}

// lengthUnit is the unit of a length, which stands for all that follows its number.
func (p *parser) lengthUnit(l length) token {
	t := p.tokens[l.unit]
	switch {
	case t.is("mm"):
	case t.system() == unitMetric:
		t.text = "cm"
	default:
		t.text = "inches"
	}
	t.kind, t.end = tokenWord, p.tokens[l.end-1].end
	return t
}

// system is whose unit of length a token is.
func (t *token) system() unitSystem { return lengthUnits[t.text] }

// lengthMayBegin reports whether a number at token i, or a bracket of numbers, may begin a length: it belongs to none before it.
func (p *parser) lengthMayBegin(i int) bool {
	if p.tokens[i].is("(") {
		return p.tokens[i+1].kind == tokenNumber
	}
	_, written := p.tokens[i].written()
	return p.tokens[i].kind == tokenNumber || written || p.tokens[i].is("a", "an") && p.tokens[i+1].is("inch")
}

// lengthAmount is the number at token i, of which only the whole units matter: a length is compared with nothing.
func (p *parser) lengthAmount(i int) token {
	t := p.tokens[i]
	if t.is("(") {
		t.text, t.span = p.tokens[i+1].text, t.to(p.tokens[i+1].span)
		t.number = p.tokens[i+1].number
	}
	if t.kind != tokenNumber || t.number > MaxNumber {
		t.number = 1
	}
	t.kind = tokenNumber
	return t
}

// withoutAbout leaves out the words before a length that say how exact it is.
func withoutAbout(before []token) []token {
	for n := len(before); n > leading; n = len(before) {
		switch last, lead := &before[n-1], &before[n-2]; {
		case last.among("about approx approximately roughly nearly almost"):
			before = before[:n-1]
		case last.is("around") && lead.among("for to measures measure is work knit further another"):
			before = before[:n-1]
		case last.is("least", "most") && lead.is("at"), last.is("scant", "generous") && lead.is("a"):
			before = before[:n-2]
		default:
			return before
		}
	}
	return before
}

// wholeLength reads a length at token i, with the same in other units, and reports whether it is one, for each size.
func (p *parser) wholeLength(i int, quoted bool) (length, bool) {
	l := p.lengthIn(i)
	if l.system == unitNone || quoted && p.tokens[l.unit].is("\"") || l.count == 1 && p.tokens[i].is("(") {
		return length{}, false
	}
	for {
		end := p.otherUnits(l)
		if end == 0 {
			break
		}
		l.end, l.sure = end, true
	}
	if end := p.desiredEnd(l.end); end != 0 {
		l.end, l.sure = end, true
	}
	return l, l.sure && (l.count == 1 || l.count == p.sizes)
}

// otherUnits is the index after the same length in the units of the other system, "/5 cm", "[5 (6, 7) cm]", "or 5 cm"; 0 if it does
// not follow.
func (p *parser) otherUnits(l length) int {
	i := l.end
	if p.tokens[i].is(".") && p.tokens[i].start == p.tokens[i-1].end {
		i++ // "2 in. [5 cm]"
	}
	t := &p.tokens[i]
	if !t.among("/ ( [ { or = ,") {
		return 0
	}
	other := p.lengthIn(i + 1)
	if other.system == unitNone || other.system == l.system || t.is(",") && !p.tokens[l.unit].is("\"") {
		return 0
	}
	end := other.end
	if closer, ok := closers[t.text]; ok {
		if p.tokens[end].is(".") {
			end++
		}
		if !p.tokens[end].is(closer) {
			return 0
		}
		end++
	}
	return end
}

// desiredEnd is the index after "or desired length", "[or to length required]" at token i; 0 if that is not what stands there.
func (p *parser) desiredEnd(i int) int {
	if p.tokens[i].is(".") && p.tokens[i+1].is("(", "[") {
		i++ // "2 in. [or desired length]"
	}
	closer := closers[p.tokens[i].text]
	if p.tokens[i].is(",", "(", "[") {
		i++
	}
	if !p.tokens[i].is("or") {
		return 0
	}
	for i++; p.tokens[i].among("to until the your"); i++ {
	}
	first, second := &p.tokens[i], &p.tokens[i+1]
	if !(first.is(lengthWanted...) && second.is("length")) && !(first.is("length") && second.is(lengthWanted...)) {
		return 0
	}
	if closer == "" {
		return i + 2
	}
	if !p.tokens[i+2].is(closer) {
		return 0
	}
	return i + 3
}

// lengthWanted are what a length is called that the knitter chooses.
var lengthWanted = []string{"desired", "required", "preferred", "wanted", "chosen"}
