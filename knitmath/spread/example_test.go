package spread_test

import (
	"fmt"
	"strings"

	"example.com/knitmath/knitmath/spread"
)

// Seven beads over a round of 24 stitches, half a gap before the first and after
// the last.
func Example() {
	round := []byte(strings.Repeat("-", 24))
	for i := range 7 {
		round[spread.Place(i, 7, 24, spread.Centred)] = 'o'
	}
	fmt.Println(string(round))
	// Output: -o---o--o---o--o--o---o-
}

// 13 plain stitches in 5 gaps, so that a front reads the same from both edges;
// in 4 gaps there is no such way.
func ExamplePalindrome() {
	gaps, ok := spread.Palindrome(5, 13)
	fmt.Println(gaps, ok)
	gaps, ok = spread.Palindrome(4, 13)
	fmt.Println(gaps, ok)
	// Output:
	// [{3 1} {2 1} {3 1} {2 1} {3 1}] true
	// [] false
}

// Along an edge of 30 rows to 10 cm, at 22 stitches to 10 cm: the ratio itself,
// and as a knitter remembers it.
func ExampleFraction_NearestSmall() {
	exact := spread.Fraction{Num: 22, Den: 30}
	for _, limit := range []int64{20, 8} {
		r := exact.NearestSmall(limit)
		fmt.Printf("%d stitches for every %d rows\n", r.Num, r.Den)
	}
	// Output:
	// 11 stitches for every 15 rows
	// 3 stitches for every 4 rows
}
