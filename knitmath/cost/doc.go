// Package cost prices a question before it is worked. It has the unit of all prices
// and the arithmetic that keeps a hostile question from turning one over; what a
// question takes is a formula of its own room, the method Cost of its input.
//
// The unit is a step: about what it takes to place one item of a row and to write
// it, near a microsecond on a slow core. It compares one question with another and
// promises no time.
//
// A value that is out of its range is refused before anything is worked, whatever
// it is. A price therefore takes it as the nearest value in range, so that a price
// is never more than that of a question that would be worked, unless it is several
// values together that come to too much.
package cost
