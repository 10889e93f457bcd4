package pattern

// endingKnown reports whether what follows "until" says when that is: a length, or something of the work or
// the yarn that comes to an end. What nobody knows is asked, "until the moon is full".
func (p *parser) endingKnown() bool {
	if p.measureAhead(p.next + 1) {
		return true
	}
	for i := p.next + 1; !p.endsAt(i) && !p.tokens[i].is(",", ";", "-"); i++ {
		if p.tokens[i].is(endings...) {
			return true
		}
	}
	return false
}

var endings = []string{"worked", "used", "done", "complete", "completed", "finished", "gone", "yarn", "ball", "wool", "skein",
	"square", "enough", "tall", "wide", "big", "large", "size", "fit", "reach", "meet", "meets", "match", "cover", "covers", "chart", "like",
	"want", "wish", "runs", "out", "lies", "touches", "touch", "level", "even", "centre", "center", "middle",
	"decreased", "consumed", "joined"}
