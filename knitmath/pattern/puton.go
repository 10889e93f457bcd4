package pattern

// putOn passes over a sentence about things that are put on the fabric and are not knit, with all its numbers, "insert
// safety eyes between rnds 2 and 3, 8 sts apart": it works no stitch. One that speaks of bands or needles is read elsewhere.
func (p *parser) putOn(line *Line) bool {
	if p.onlyRows || p.inRow || !p.peek().among("insert attach add place position fix sew embroider stitch put "+
		"apply set work glue") {
		return false
	}
	thing, end := false, p.sentenceEnd(p.next)
	for i := p.next + 1; i < end; i++ {
		t := &p.tokens[i]
		if i < p.next+7 {
			thing = thing || thingsPutOn[t.text]
		}
		if t.among("knit purl k p bind bo co pick dec inc decrease increase k2tog then join turn "+
			"buttonhole buttonholes buttonband band bands holder holders hold needle needles") ||
			t.is("cast") && p.tokens[i+1].is("on", "off") || t.kind == tokenStar {
			return false
		}
	}
	if !thing {
		return false
	}
	p.passedTo(line, end)
	return true
}

// thingsPutOn are things that are put on a fabric: eyes, buttons, a zip. Common practice.
var thingsPutOn = wordSet(`eye eyes nose nostrils mouth smile face whiskers eyebrows button buttons snap snaps zip zipper ribbon elastic
	pompom pompoms pom-pom pom-poms label lining cheeks safety-eyes toggle toggles`)
