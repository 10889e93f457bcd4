package pattern

// Of several numbers that would do, the likelier is one that the line has once more, as the two
// fronts of a neck and the two sleeves of a yoke have.

// twinned is how many more numbers of a line have a like one beside them after a change than
// before.
func (c *corrector) twinned(q *candidate, i int) int {
	l := &c.piece.Lines[i]
	region := c.before(i)
	region.start = min(region.start+int32(len(l.Label)), region.end)
	if q.at.start < region.start || q.at.end > region.end || l.info.at.end-l.info.at.start > longestTwinned {
		return 0
	}
	source := c.piece.source
	was := source[region.start:region.end]
	now := source[region.start:q.at.start] + q.put + source[q.at.end:region.end]
	return twins(was, now)
}

// longestTwinned is how long a line is at most in which like numbers are looked for.
const longestTwinned = 2000

func twins(was, now string) int { return max(likeNumbers(now)-likeNumbers(was), 0) }

// likeNumbers is how many numbers of a text have a like one in it.
func likeNumbers(text string) int {
	count := map[int]int{}
	for _, s := range spotsIn(text, span{end: int32(len(text)), line: 1, column: 1}) {
		if s.value > 1 && s.head == "" {
			count[s.value]++
		}
	}
	n := 0
	for _, k := range count {
		if k > 1 {
			n += k
		}
	}
	return n
}
