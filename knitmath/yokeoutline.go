package knitmath

// outline draws the circumference against the depth: straight up from the join to
// the round before each round that changes the count, and slanting to the count
// after it.
func (y yoke) outline(out CircularYoke) *Outline {
	count := y.join
	line := []corner{{count, 0}}
	for _, r := range out.DecreaseRounds {
		line = appendCorner(line, corner{count, r.RoundNumber - 1})
		count = r.EndCount
		line = appendCorner(line, corner{count, r.RoundNumber})
	}
	line = appendCorner(line, corner{count, y.rounds})
	o := &Outline{
		X: OutlineAxis{Measure: "circumference", Unit: OutlineUnitCm},
		Y: OutlineAxis{Measure: "depth from the join", Unit: OutlineUnitCm},
		Lines: []OutlineLine{
			{"circumference", sizedBy(line, y.st, y.rw, func(stitches int) int { return 2 * stitches })},
		},
	}
	return o.framed()
}
