package stitch

// Expand returns what the row comes to with onNeedle stitches on the left
// needle, as runs in the order they are worked; neighbours of one operation are
// joined into one run. It refuses what Count refuses. There are never more runs
// than MaxOperations.
func Expand(r Row, onNeedle int) ([]Run, error) {
	if _, _, err := r.Count(onNeedle); err != nil {
		return nil, err
	}
	left := onNeedle
	return appendRuns(nil, r.Steps, &left), nil
}

func appendRuns(runs []Run, steps []Step, left *int) []Run {
	for _, s := range steps {
		switch s.kind() {
		case kindGroup:
			for range s.Times {
				runs = appendRuns(runs, s.Group, left)
			}
		case kindToLast:
			n := (*left - *s.ToLast) / s.Op.Takes()
			*left -= n * s.Op.Takes()
			runs = AppendRun(runs, s.Op, n)
		case kindCount:
			*left -= s.Count * s.Op.Takes()
			runs = AppendRun(runs, s.Op, s.Count)
		}
	}
	return runs
}

// AppendRun adds n workings of op, joining them to the last run if it is of op too.
func AppendRun(runs []Run, op Op, n int) []Run {
	if n < 1 {
		return runs
	}
	if k := len(runs); k > 0 && runs[k-1].Op == op && runs[k-1].Count <= maxInt-n {
		runs[k-1].Count += n
		return runs
	}
	return append(runs, Run{op, n})
}

const maxInt = int(^uint(0) >> 1)
