package pattern

import "example.com/knitmath/knitmath/stitch"

// firstRowTold is the index after "1st row is wrong side", "the first row being a RS row" beside rows; 0 if that is not what comes
// next.
func (p *parser) firstRowTold() int {
	i := p.next
	if p.tokens[i].is("the") {
		i++
	}
	if i = p.ordinalEnd(i); i == 0 || !p.tokens[i].row() {
		return 0
	}
	for i++; p.tokens[i].among("is being a an on the"); i++ {
	}
	if p.sideOf(i) == stitch.SideUnspecified {
		return 0
	}
	for i++; p.tokens[i].is("side", "row", "rows"); i++ {
	}
	if !p.clauseStopsAt(i) {
		return 0
	}
	return i
}
