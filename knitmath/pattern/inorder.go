package pattern

// inOrder sorts a short list, of markers, parts or letters. That of slices takes 5 kB of the program for each type it sorts.
func inOrder[T int32 | int64 | byte](list []T) {
	for i := 1; i < len(list); i++ {
		for k := i; k > 0 && list[k] < list[k-1]; k-- {
			list[k], list[k-1] = list[k-1], list[k]
		}
	}
}
