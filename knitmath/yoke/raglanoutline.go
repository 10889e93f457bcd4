package yoke

import "example.com/knitmath/knitmath/outline"

// outline draws where the lines run: for each part of the raglan the middle of
// the line on either side of it, from the part's own centre line. A part keeps its
// width up to the round before each decrease round, and slants from there to the
// count after it.
func (r raglan) outline(rounds []RaglanRound) *outline.Outline {
	out := &outline.Outline{
		X: outline.Axis{Measure: "from the centre line of the part", Unit: outline.UnitCm},
		Y: outline.Axis{Measure: "above the join", Unit: outline.UnitCm},
	}
	right := func(stitches int) int { return stitches + r.line } // in half stitches
	left := func(stitches int) int { return -stitches - r.line }
	for part, name := range [...]string{"back", "front", "sleeve"} {
		count := r.parts[part].start
		line := []outline.Corner{{Across: count, Up: 0}}
		for _, round := range rounds {
			after := counts{round.BackStitches, round.FrontStitches, round.SleeveStitches}[part]
			if after != count {
				line = outline.AppendCorner(line, outline.Corner{Across: count, Up: round.RoundNumber - 1})
				line = outline.AppendCorner(line, outline.Corner{Across: after, Up: round.RoundNumber})
			}
			count = after
		}
		line = outline.AppendCorner(line, outline.Corner{Across: count, Up: r.rounds})
		out.Lines = append(out.Lines,
			outline.Line{Name: "line at the right of the " + name, Points: outline.SizedBy(line, r.st, r.rw, right)},
			outline.Line{Name: "line at the left of the " + name, Points: outline.SizedBy(line, r.st, r.rw, left)})
	}
	return out.Framed()
}
