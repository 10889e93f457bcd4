package pattern

// spotted moves what was found on working from the beginning of its row or claim to the
// number or word that is wrong.
func (p *Piece) spotted(list []Finding) {
	for i := range list {
		f := &list[i]
		n := p.lineAt(f.at)
		if n < 0 {
			continue
		}
		at, ok := p.spotOf(f, &p.Lines[n])
		if !ok {
			continue
		}
		f.LineNumber, f.ColumnNumber, f.Text = int(at.line), int(at.column), snippet(p.source, at)
	}
}

// spotOf is the number or the word that a finding is about.
func (p *Piece) spotOf(f *Finding, l *Line) (span, bool) {
	switch f.Reason {
	case ReasonClaim:
		return p.claimSpot(f, l)
	case ReasonSide:
		if l.info.endSide == 0 {
			return sideSpot(p.source, l)
		}
	case ReasonRowNumber:
		label := l.info.at
		label.end = label.start + int32(len(l.Label))
		if label.end > label.start && int(label.end) <= len(p.source) {
			if spots := spotsIn(p.source, label); len(spots) > 0 {
				return spots[0].at, true
			}
		}
	}
	return span{}, false
}

// claimSpot is the numbers of a claim that are wrong, from the first to the last.
func (p *Piece) claimSpot(f *Finding, l *Line) (span, bool) {
	claimed, at := claimOf(f, l)
	spots := run(spotsIn(p.source, at), claimed, false)
	if len(claimed) == 0 || spots == nil {
		return span{}, false
	}
	if len(spots) == 1 || len(f.SizeNumbers) == 0 {
		return spots[0].at.to(spots[len(spots)-1].at), true
	}
	return spots[f.SizeNumbers[0]-1].at.to(spots[f.SizeNumbers[len(f.SizeNumbers)-1]-1].at), true
}

// claimOf is the claim of a line that a finding is about, and where it stands: of the whole count, or
// of a part of it.
func claimOf(f *Finding, l *Line) (numbers []int, at span) {
	info := &l.info
	at = info.claimAt
	if info.beside && f.at.start > at.start && f.at.end <= at.end {
		return info.partial, f.at
	}
	if info.beside && info.perSide != nil && f.at == info.partsAt {
		return info.perSide, f.at
	}
	if info.partsTold != nil && f.at == info.partsAt {
		return nil, f.at
	}
	if f.at == info.changeAt && len(l.ClaimedChangeStitches) > 0 {
		return claimedChange(l), f.at
	}
	if numbers = claimedNumbers(l); len(numbers) > 0 {
		return numbers, at
	}
	for _, part := range [...][]int{info.perNeedle, info.perSide, info.partial} {
		if part != nil {
			return part, at
		}
	}
	return nil, at
}

// claimedNumbers are the numbers that a claim is written with.
func claimedNumbers(l *Line) []int {
	if len(l.ClaimedStitches) > 0 || len(l.ClaimedChangeStitches) == 0 {
		return l.ClaimedStitches
	}
	return claimedChange(l)
}

// claimedChange are the numbers that a change is written with.
func claimedChange(l *Line) []int {
	numbers := make([]int, len(l.ClaimedChangeStitches))
	for i, n := range l.ClaimedChangeStitches {
		numbers[i] = max(n, -n)
	}
	return numbers
}

// lineAt is the line that a place of the text belongs to, -1 if none.
func (p *Piece) lineAt(at span) int {
	low, high := 0, len(p.Lines)
	for low < high {
		if mid := (low + high) / 2; p.Lines[mid].info.at.start <= at.start {
			low = mid + 1
		} else {
			high = mid
		}
	}
	return low - 1
}
