package knitmath

// outline draws where the lines run: for each part of the raglan the middle of
// the line on either side of it, from the part's own centre line. A part keeps its
// width up to the round before each decrease round, and slants from there to the
// count after it.
func (r raglan) outline(rounds []RaglanRound) *Outline {
	out := &Outline{
		X: OutlineAxis{Measure: "from the centre line of the part", Unit: OutlineUnitCm},
		Y: OutlineAxis{Measure: "above the join", Unit: OutlineUnitCm},
	}
	right := func(stitches int) int { return stitches + r.line } // in half stitches
	left := func(stitches int) int { return -stitches - r.line }
	for part, name := range [...]string{"back", "front", "sleeve"} {
		count := r.parts[part].start
		line := []corner{{count, 0}}
		for _, round := range rounds {
			after := counts{round.BackCount, round.FrontCount, round.SleeveCount}[part]
			if after != count {
				line = appendCorner(line, corner{count, round.RoundNumber - 1})
				line = appendCorner(line, corner{after, round.RoundNumber})
			}
			count = after
		}
		line = appendCorner(line, corner{count, r.rounds})
		out.Lines = append(out.Lines,
			OutlineLine{"line at the right of the " + name, sizedBy(line, r.st, r.rw, right)},
			OutlineLine{"line at the left of the " + name, sizedBy(line, r.st, r.rw, left)})
	}
	return out.framed()
}
