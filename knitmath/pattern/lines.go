package pattern

// finish appends a line that has been read.
func (p *parser) finish(line *Line, from span) {
	if line.info.kind == lineUnread {
		p.recover(line)
		line.info.speaksOfHeld = p.speaksOfHeld(from, line.info.matches)
	}
	line.info.at = from.to(p.last())
	p.unreadUnasked(line)
	p.holesClosed(line)
	p.placesNotSaid(line, from)
	line.info.ownLine = int(from.line)
	if line.info.forSizes == 0 {
		line.info.forSizes = p.forSizes
	}
	p.piece.forSome = p.piece.forSome || line.info.forSizes != 0
	line.info.defined = p.current > 0
	if line.info.kind != lineRow {
		said := p.found.source[from.start:max(from.start, line.info.at.end)]
		line.Direction = joined(said)
		if line.info.kind == lineUnread {
			line.Direction = asBroken(said)
		}
		if line.info.kind == linePassed {
			line.Direction = "passed over" // see tellPassed
		}
		line.Steps = nil
	}
	if line.info.kind == linePassed && p.joinPassed(line) {
		return
	}
	p.laidAfter(line)
	p.endsDefinition(line)
	p.noteBare(line)
	if line.info.kind == lineCastOn || line.info.kind == linePickUp || (line.info.brings || line.bringsFirst()) && !p.began {
		p.began = true
		line.info.defined = false
		p.endPattern()
	}
	p.piece.Lines = append(p.piece.Lines, *line)
}

// placesBelow reports whether a row follows after a colon that places markers one by one, "Place
// markers for the thumb: k23, pm, k2, pm, k to end": then the words before it place none.
func (p *parser) placesBelow() bool {
	if !p.peek().is(":") && !p.tokens[max(p.next-1, 0)].is(":") {
		return false
	}
	for i, end := p.next, p.sentenceEnd(p.next); i < end; i++ {
		if p.tokens[i].is("pm") || p.tokens[i].is("place") && p.tokens[i+1].is("marker") {
			return true
		}
	}
	return false
}

// tellPassed gives the lines that are passed over their text.
func (p *parser) tellPassed() {
	for i := range p.piece.Lines {
		if l := &p.piece.Lines[i]; l.info.kind == linePassed {
			l.Direction = asBroken(p.found.source[l.info.at.start:max(l.info.at.start, l.info.at.end)])
		}
	}
}

// joinPassed makes lines that are passed over one after the other one line.
func (p *parser) joinPassed(line *Line) bool {
	n := len(p.piece.Lines)
	if n == 0 || p.piece.Lines[n-1].info.kind != linePassed {
		return false
	}
	last := &p.piece.Lines[n-1]
	if last.info.forSizes != line.info.forSizes || last.info.at.end > line.info.at.start || last.standsAlone() || line.standsAlone() {
		return false
	}
	last.info.at = last.info.at.to(line.info.at)
	last.info.places = last.info.places || line.info.places
	last.info.eachSide = last.info.eachSide || line.info.eachSide
	last.info.allDone = last.info.allDone || line.info.allDone
	last.info.onThese = last.info.onThese || line.info.onThese
	last.info.turnsWork = last.info.turnsWork || line.info.turnsWork
	last.info.heading = last.info.heading || line.info.heading
	if line.info.turns != turningSame {
		last.info.turns = line.info.turns
	}
	return true
}

// standsAlone reports whether a line that works nothing tells a count, which is compared there, where markers lie, or over which
// stitches the work goes on: below a heading it is none of its words.
func (l *Line) standsAlone() bool {
	return l.info.tellsPart || l.info.centre != nil || len(l.ClaimedStitches) > 0 || l.info.perNeedle != nil ||
		l.info.joinsAside != joinsNone || l.info.only != nil
}

// recover passes over the rest of a line that could not be read. A claim at its
// end still says how many stitches there are.
func (p *parser) recover(line *Line) {
	for {
		p.looked++
		t := p.peek()
		if t.kind == tokenEnd || t.kind == tokenNewline {
			return
		}
		if t.is(".") {
			p.next++
			if line.ClaimedStitches == nil && p.peek().kind == tokenNumber && p.claimAhead() && p.claim(line) {
				continue
			}
			if p.startsLine() {
				return
			}
			continue
		}
		if line.ClaimedStitches == nil && line.ClaimedChangeStitches == nil && t.kind == tokenMark && p.claimAhead() {
			p.claim(line)
			continue
		}
		p.next++
	}
}

// startsLine reports whether a label or a direction begins with the next token.
func (p *parser) startsLine() bool {
	if p.inNeedles {
		if end, _ := p.needleHeader(p.next); end != 0 {
			return true
		}
	}
	return p.labelEnd(p.next) != 0 || p.directionAhead()
}

// oneLine reports whether a text that was written from a line was read as one
// line of that kind, in which nothing is wrong; if not, which part of it is to
// blame, "label", "steps" or "direction", and why.
func (p *Piece) oneLine(from *Line) (field, why string, ok bool) {
	field = "steps"
	if from.Direction != "" {
		field = "direction"
	}
	for _, f := range p.found.list {
		if f.Kind != KindReading {
			return field, f.Description, false
		}
	}
	switch {
	case len(p.Lines) != 1:
		return field, "it has several rows", false
	case from.Direction == "" && p.Lines[0].Label != joined(from.Label):
		return "label", "a label ends with row or rnd, and has a number, or at most four words before it", false
	case (p.Lines[0].Direction != "") != (from.Direction != ""):
		return field, "it is a row where a direction is wanted, or the other way round", false
	}
	return "", "", true
}

// isLabel reports whether a text reads as the label of a row.
func isLabel(text string) bool {
	p := parser{tokens: padded(text+":", nil), next: leading, sizes: 1, found: findings{source: text + ":"}, piece: &Piece{}}
	var line Line
	return p.label(&line) && p.peek().kind == tokenEnd && p.last().end == int32(len(text)+1) && len(p.found.list) == 0
}

// placesNotSaid notes whether words that are passed over place markers, and do not say where.
func (p *parser) placesNotSaid(line *Line, from span) {
	line.info.places = line.info.places || line.info.kind == linePassed && !p.placesBelow() &&
		placesMarkers(p.found.source[from.start:max(from.start, line.info.at.end)])
}

// unreadUnasked asks about a line that could not be read where nothing has been asked of it yet.
func (p *parser) unreadUnasked(line *Line) {
	at := line.info.at
	if line.info.kind != lineUnread || line.Label != "" || p.trying || p.onlyRows || p.found.more > 0 || at.start >= at.end {
		return
	}
	for _, f := range p.found.list {
		if f.Kind != KindReading && f.at.end >= at.start && f.at.start <= at.end {
			return
		}
	}
	p.ask(ReasonUnread, at, "what is to be done here? it may change the count, and cannot be read")
}
