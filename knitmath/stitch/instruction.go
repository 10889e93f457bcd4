package stitch

// An Instruction is one row with the stitches on the needle before and after
// it. The yarn overs of short rows are not counted.
type Instruction struct {
	Row           Row
	StartStitches int
	EndStitches   int
}
