package knitmath

// outline draws the circumference against the depth: straight up from the join to
// the round before each round that changes the count, and slanting to the count
// after it. Where the back is raised a second line goes up its centre: the
// short rows lie between the round before the one that they interrupt and that
// round itself, and all rounds from there on lie so much higher.
func (y yoke) outline(out CircularYoke) *Outline {
	count := y.join
	line := []corner{{count, 0}}
	for _, r := range out.DecreaseRounds {
		line = appendCorner(line, corner{count, r.RoundNumber - 1})
		count = r.EndCount
		line = appendCorner(line, corner{count, r.RoundNumber})
	}
	line = appendCorner(line, corner{count, y.rounds})
	round := func(stitches int) int { return 2 * stitches }
	o := &Outline{
		X: OutlineAxis{Measure: "circumference", Unit: OutlineUnitCm},
		Y: OutlineAxis{Measure: "depth from the join", Unit: OutlineUnitCm},
		Lines: []OutlineLine{
			{"circumference", sizedBy(line, y.st, y.rw, round)},
		},
	}
	if raise := out.BackRaise; raise != nil {
		back := make([]corner, len(line))
		for i, c := range line {
			if c.up >= raise.FirstRoundNumber {
				c.up += raise.RiseRows
			}
			back[i] = c
		}
		o.Lines = append(o.Lines, OutlineLine{"circumference, up the centre of the back", sizedBy(back, y.st, y.rw, round)})
	}
	return o.framed()
}
