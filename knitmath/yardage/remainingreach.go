package yardage

import (
	"math/bits"

	"example.com/knitmath/knitmath/measure"
)

// reach finds after how many rows at the latest the border has to be begun, for each
// yarn and for all. It looks at every row: where a shape narrows a later border takes
// less, so that what fits need not have fitted before.
func (q *remainder) reach() [3]int {
	all := [3]int{-1, -1, -1}
	for i := range q.supplies {
		q.supplies[i].main = all
	}
	for r := range len(q.counts) + 1 {
		for k := range all {
			fits := true
			for i := range q.supplies {
				s := &q.supplies[i]
				if s.spent[r]+q.border(i, r, high-k) <= s.budget[k] {
					s.main[k] = r
				} else {
					fits = false
				}
			}
			if fits {
				all[k] = r
			}
		}
	}
	return all
}

// mark finds after how many rows a share of a yarn is gone.
func (s *supply) mark(share float64) [3]int {
	var rows [3]int
	for k := range rows {
		rows[k] = reached(s.spent, s.budget[k], share)
	}
	return rows
}

// reached is the least r with spent[r] at least a share of the whole, exactly; -1 where
// there is none.
func reached(spent []int64, whole int64, share float64) int {
	wantHigh, wantLow := bits.Mul64(uint64(whole), uint64(measure.ToMillionths(share)))
	for r, n := range spent {
		if hi, lo := bits.Mul64(uint64(n), hundredParts); hi > wantHigh || hi == wantHigh && lo >= wantLow {
			return r
		}
	}
	return -1
}

// workMarks finds after how many rows shares of so many of them are worked.
func (q *remainder) workMarks(rows int) []WorkMark {
	if len(q.in.SharePercents) == 0 {
		return nil
	}
	done := make([]int64, rows+1)
	for r, w := range q.weights[:rows] {
		done[r+1] = done[r] + w
	}
	var marks []WorkMark
	for _, share := range q.in.SharePercents {
		marks = append(marks, WorkMark{share, reached(done, done[rows], share)})
	}
	return marks
}
