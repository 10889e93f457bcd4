package yoke

import "example.com/knitmath/knitmath/outline"

// outline draws the circumference against the depth: straight up from the join to
// the round before each round that changes the count, and slanting to the count
// after it. Where the back is raised a second line goes up its centre: the
// short rows lie between the round before the one that they interrupt and that
// round itself, and all rounds from there on lie so much higher.
func (y *circular) outline(out Circular) *outline.Outline {
	count := y.join
	line := []outline.Corner{{Across: count, Up: 0}}
	for _, r := range out.Rounds {
		line = outline.AppendCorner(line, outline.Corner{Across: count, Up: r.RoundNumber - 1})
		count = r.EndStitches
		line = outline.AppendCorner(line, outline.Corner{Across: count, Up: r.RoundNumber})
	}
	line = outline.AppendCorner(line, outline.Corner{Across: count, Up: y.rounds})
	round := func(stitches int) int { return 2 * stitches }
	o := &outline.Outline{
		X: outline.Axis{Measure: "circumference", Unit: outline.UnitCm},
		Y: outline.Axis{Measure: "depth from the join", Unit: outline.UnitCm},
		Lines: []outline.Line{
			{Name: "circumference", Points: outline.SizedBy(line, y.st, y.rw, round)},
		},
	}
	if raise := out.BackRaise; raise != nil {
		back := make([]outline.Corner, len(line))
		for i, c := range line {
			if c.Up >= raise.FirstRoundNumber {
				c.Up += raise.RiseRows
			}
			back[i] = c
		}
		o.Lines = append(o.Lines, outline.Line{Name: "circumference, up the centre of the back",
			Points: outline.SizedBy(back, y.st, y.rw, round)})
	}
	return o.Framed()
}
