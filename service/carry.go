package service

// What every carrier needs: the same thing done to a value that may be absent,
// and to every item of a list. How each message is carried is written out by
// hand in the file of its noun.

// optional carries a value that may be absent.
func optional[From, To any](from *From, carry func(From) To) *To {
	if from == nil {
		return nil
	}
	to := carry(*from)
	return &to
}

// message carries a value that may be absent into a message.
func message[From, To any](from *From, carry func(From) *To) *To {
	if from == nil {
		return nil
	}
	return carry(*from)
}

// present carries a value into a message when has says that there is one.
func present[From, To any](has bool, from From, carry func(From) *To) *To {
	if !has {
		return nil
	}
	return carry(from)
}

// each carries every item of a list.
func each[From, To any](from []From, carry func(From) To) []To {
	if len(from) == 0 {
		return nil
	}
	to := make([]To, len(from))
	for i, v := range from {
		to[i] = carry(v)
	}
	return to
}

// countIn and countOut carry whole numbers. Answers are counts within the limits
// of the kernel, far inside 32 bits.
func countIn(n int32) int  { return int(n) }
func countOut(n int) int32 { return int32(n) }
