package spread

// Palindrome orders n gaps that sum to plain so that they read the same from
// both ends. It fails when an even number of gaps would need an odd number of
// larger ones, or when there is no gap to hold what is left.
func Palindrome(n, plain int) ([]GapRun, bool) {
	if n == 0 {
		return nil, plain == 0
	}
	small, larger := plain/n, plain%n
	if n%2 == 0 && larger%2 != 0 {
		return nil, false
	}
	half := larger / 2
	middle := n - 2*half // all smaller, or with one larger in the very middle
	runs := AppendGap(nil, small+1, half)
	if larger%2 == 0 {
		runs = AppendGap(runs, small, middle)
	} else {
		runs = AppendGap(runs, small, (middle-1)/2)
		runs = AppendGap(runs, small+1, 1)
		runs = AppendGap(runs, small, (middle-1)/2)
	}
	return AppendGap(runs, small+1, half), true
}

// Gcd is the greatest common divisor of a and b, neither of them negative; of 0
// and n it is n.
func Gcd(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}
