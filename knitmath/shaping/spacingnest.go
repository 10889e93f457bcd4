package shaping

import "example.com/knitmath/knitmath/spread"

// nests tries repeats of some equal gaps and one of the other length, of gaps that
// long and one longer: all alike with gaps of the commoner length over, or, as so
// many gaps can always be told, of two kinds one after the other.
//
// With a of the commoner length and b of the other, q = a div b and r = a mod b, these
// are b repeats of q and one, and r gaps over; or r repeats of q + 1 and one, and
// b - r of q and one. Source: own derivation, two steps of Euclid's algorithm.
func (f *layoutFinder) nests(n, gap int) {
	rest := f.endRest()
	for over := f.leastOver(); over <= mostOver; over++ {
		sum := f.plain() - rest - over
		longer := sum - gap*n
		if longer <= 0 || longer >= n {
			continue
		}
		common, other := spread.GapRun{Stitches: gap, Times: n - longer}, spread.GapRun{Stitches: gap + 1, Times: longer}
		if common.Times < other.Times {
			common, other = other, common
		}
		f.nested(common, other, sum)
	}
}

func (f *layoutFinder) nested(common, other spread.GapRun, sum int) {
	if each := common.Times / (other.Times + 1); common.Times%(other.Times+1) == 0 {
		f.nest[0] = [2]spread.GapRun{{Stitches: common.Stitches, Times: each}, {Stitches: other.Stitches, Times: 1}}
		f.closed(block{gaps: f.nest[0][:], times: other.Times}, sum)
	}
	each, over := common.Times/other.Times, common.Times%other.Times
	for i := range f.nest {
		equal, lone := spread.GapRun{Stitches: common.Stitches, Times: each + i}, spread.GapRun{Stitches: other.Stitches, Times: 1}
		f.nest[i] = [2]spread.GapRun{equal, lone}
		if common.Stitches == 0 { // a repeat begins with stitches, not with the second of two changes
			f.nest[i] = [2]spread.GapRun{lone, equal}
		}
	}
	if over == 0 {
		f.blocks[0] = block{gaps: f.nest[0][:], times: other.Times}
		f.ends(f.blocks[:1], sum)
		return
	}
	f.extra[0] = spread.GapRun{Stitches: common.Stitches, Times: 1}
	f.pair(block{gaps: f.nest[0][:], times: other.Times}, block{gaps: f.extra[:], times: over}, sum)
	f.pair(block{gaps: f.nest[1][:], times: over}, block{gaps: f.nest[0][:], times: other.Times - over}, sum)
}
