package stitch

// AppendStep adds op worked n times to a row; worked no times it is left out, and beside the
// same operation it is one with it.
func AppendStep(steps []Step, op Op, n int) []Step {
	if last := len(steps) - 1; n > 0 && last >= 0 && steps[last].Op == op && steps[last].Count > 0 {
		steps[last].Count += n
		return steps
	}
	if n > 0 {
		steps = append(steps, Do(op, n))
	}
	return steps
}

// An Instruction is one row with the stitches on the needle before and after
// it. The yarn overs of short rows are not counted.
type Instruction struct {
	Row           Row
	StartStitches int
	EndStitches   int
}
