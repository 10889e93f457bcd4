package pattern

import (
	"strings"

	"example.com/knitmath/knitmath/draft"
)

// What is told beside steps and directions is put together of a word that leads it in and of words up to the end of its
// clause: "as shown in the photo", "for the armholes", "pulling yarn firmly", "being careful not to twist sts", "neatly".
// It changes no count if none of its words can.

// besideLeads lead in how, with what or what for something is done.
var besideLeads = wordSet(`as for with using so in on`)

// mindings lead in what is minded meanwhile, which may name stitches and rows: it works none.
var mindings = wordSet(`making being taking keeping pulling changing maintaining carrying twisting stranding catching checking
	remembering allowing
	ensuring bearing paying letting stretching easing having trying switching giving leaning moving`)

// besideRows are words for stitches and rows, and pointing those that say which of them: both are understood, or asked about.
var (
	besideRows = wordSet(`st sts stitch stitches end wrap wraps needle needles`)
	pointing   = wordSet(`next foll following last first rem remaining only these those until till second size`)
)

// smallWords are other words of what is told that change nothing.
var smallWords = wordSet(`way all both go you do come so too fashion manner sizes`)

// besideEnd is the index after what is told beside at token i, 0 if that is not what stands there.
func (p *parser) besideEnd(i int) int {
	lead := &p.tokens[i]
	if end := p.degreeEnd(i + 1); end != 0 && lead.among("quite rather fairly very not too so") {
		return end
	}
	manner := strings.HasSuffix(lead.text, "ly") && draft.Manner(lead.text)
	if lead.kind != tokenWord || p.own[lead.text].name != "" || !manner && !mindings[lead.text] && !besideLeads[lead.text] || p.untold(i) {
		return 0
	}
	n := i + 1
	for ; !p.besideStops(n); n++ {
		if n == i+20 || !p.besideWord(lead, n) {
			return 0
		}
	}
	if n == i+1 && !manner {
		return 0
	}
	return n
}

// degreeEnd is the index after "loosely" behind "quite", "too loosely" behind "not" at token i; 0 if that is not what stands there.
func (p *parser) degreeEnd(i int) int {
	if p.tokens[i].is("too", "very", "so") {
		i++
	}
	if t := &p.tokens[i]; !strings.HasSuffix(t.text, "ly") || !draft.Manner(t.text) || !p.besideStops(i+1) {
		return 0
	}
	return i + 1
}

// besideStops reports whether no more belongs at token i to what is told.
func (p *parser) besideStops(i int) bool {
	t := &p.tokens[i]
	return p.endsAt(i) || t.kind == tokenStar || t.among(", ; : ( [ ) ] - =") || p.claimAt(i) ||
		t.is("and", "then") && (p.directionAt(i+1) || p.startsItem(i+1))
}

// besideWord reports whether the word at token n changes no count in what another leads in.
func (p *parser) besideWord(lead *token, n int) bool {
	t := &p.tokens[n]
	if t.kind == tokenNumber {
		return p.measured(n)
	}
	_, number := t.written()
	switch {
	case t.kind != tokenWord:
		return t.is("'", "/", "\"")
	case number, alarming(t.text), counting[t.text], p.patternWord(t.text), p.alarmingStitch(n, n, true):
		return false
	case t.row(), besideRows[t.text]:
		return mindings[lead.text]
	case pointing[t.text]:
		return false
	case lead.is("in", "on"), len(t.text) < 4, p.notation(t.text): // a stitch may be called so
		return draft.Manner(t.text) || draft.English(t.text) || smallWords[t.text]
	}
	return true
}

// toldBeside passes over what is told beside.
func (p *parser) toldBeside() bool {
	end := p.besideEnd(p.next)
	if end != 0 {
		p.passTail(end)
	}
	return end != 0
}

// tending are verbs of which a whole clause is passed over unless a word of it might change a count: those of yarn that ends
// a piece, and those that may lead in what is worked, are none.
var tending = wordSet(`weave block sew measure try wash steam press stuff darn attach secure tie adjust check read see count please
	use enjoy hide neaten trim lay pin dry soak fold mark tack carry remember ensure wind ease fit allow tighten`)

// calmEnd is the index after the clause of a verb, which was just read, that works no stitch; 0 if a word of it might change a
// count.
func (p *parser) calmEnd(verb *token) int {
	if !tending[verb.text] || p.inRow {
		return 0
	}
	i := p.next
	for ; !p.endsAt(i) && !p.tokens[i].among(", ; : (") && !(p.tokens[i].is("and", "then") && p.verbAt(i+1)); i++ {
		if p.tokens[i].kind == tokenNumber && !p.measured(i) {
			return 0
		}
	}
	if p.alarm(p.next, i, true) != 0 {
		return 0
	}
	return i
}

// patternBegins reports whether the "patt." of "Change to larger needles and patt." stands at token i, before the first of its
// numbered rows: it works none itself.
func (p *parser) patternBegins(i int) bool {
	if !p.tokens[i].is("patt", "pattern", "pat") || !p.endsAt(i+1) {
		return false
	}
	for i++; p.tokens[i].is(".", ":") || p.tokens[i].kind == tokenNewline && p.tokens[i].number <= 1; i++ {
	}
	if p.labelEnd(i) == 0 {
		return false
	}
	return p.tokens[i].is("first") || p.tokens[i].kind == tokenNumber && p.tokens[i].number == 1 ||
		p.tokens[i+1].kind == tokenNumber && p.tokens[i+1].number == 1
}
