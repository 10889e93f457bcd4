package pattern

// RowRun is rows of the piece in one size that follow one another: lines worked in their
// turn, once or several times, each with the same change of the count every time. It
// mirrors the message of the same name.
type RowRun struct {
	SizeNumber, FirstRowNumber int
	LinePlaces                 []int
	Times                      int
	StartStitches              int
	ChangeStitches             []int
}
