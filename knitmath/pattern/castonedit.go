package pattern

// castOns are other numbers of the last cast-on before a line: as many fewer as are over, or as
// many more as a repeat lacks.
func (c *corrector) castOns(f *Finding, i int) []candidate {
	if len(f.DifferenceStitches) == 0 || len(f.DifferenceStitches) != len(f.SizeNumbers) {
		return nil
	}
	for k := i; k >= 0; k-- {
		l := &c.piece.Lines[k]
		if l.info.until != nil && k < i {
			return c.until(f, l)
		}
		if l.info.kind != lineCastOn {
			continue
		}
		spots := run(c.spotsIn(l.info.at), l.info.counts, false)
		if spots == nil {
			return nil
		}
		out := c.castOn(f, spots, func(_, d int) int { return -d })
		switch f.Reason {
		case ReasonClaim:
			out = c.castOn(f, spots, func(_, d int) int { return d })
			if w := &c.worked.Lines[i]; k < i && w.StartStitches[0] > 0 && w.EndStitches[0] > 0 { // a row that doubles them
				out = append(c.castOn(f, spots, func(size, d int) int {
					n, _ := quotient(d*w.StartStitches[size], w.EndStitches[size])
					return n
				}), out...)
			}
		case ReasonUneven:
			if each := c.repeatTakes(f); each > 0 {
				out = append(c.castOn(f, spots, func(_, d int) int { return each - d }), out...)
			}
		}
		return out
	}
	return nil
}

// castOn is a cast-on with so many stitches more in the sizes of a finding.
func (c *corrector) castOn(f *Finding, spots []spot, more func(size, difference int) int) []candidate {
	e := renumbering{list: spots}
	for k, number := range f.SizeNumbers {
		s := &spots[0]
		if len(spots) > 1 {
			s = &spots[number-1]
		}
		if n := s.value + more(number-1, f.DifferenceStitches[k]); n < 1 || n < s.value/2 || !e.set(s, n) {
			return nil
		}
	}
	return e.candidate(c.piece.source, -1, " cast on")
}

// until are other counts up to which rows were worked before, as many fewer as are over or as many
// more as are missing.
func (c *corrector) until(f *Finding, l *Line) []candidate {
	spots := run(c.spotsIn(l.info.at), l.info.until, true)
	if spots == nil || f.Reason == ReasonClaim {
		return nil
	}
	e := renumbering{list: spots}
	for k, number := range f.SizeNumbers {
		s := &spots[0]
		if len(spots) > 1 {
			s = &spots[number-1]
		}
		if n := s.value - f.DifferenceStitches[k]; n < 1 || !e.set(s, n) {
			return nil
		}
	}
	return e.candidate(c.piece.source, -1, "")
}

// repeatTakes is how many stitches the repeat takes that does not come out, 0 if it is not known
// or the sizes differ.
func (c *corrector) repeatTakes(f *Finding) int {
	for i := range c.piece.Lines {
		for k := range c.piece.Lines[i].Steps {
			if s := &c.piece.Lines[i].Steps[k]; s.at.start == f.at.start && s.Steps != nil && !s.IntoOneStitch {
				return int(s.pass(max(f.SizeNumbers[0]-1, 0)).takes)
			}
		}
	}
	return 0
}
