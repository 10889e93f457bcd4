// Package schedule is when something is done again and again: "every 8th row 5
// times, then every 6th row twice". It knows counts of rows and how much of a plan
// there is to remember; what is done in the rows is said by the rooms above.
//
// A [Schedule] is a list of runs. [Easiest] looks among the schedules that lie near
// enough to a straight line for the one that hands like best to follow, [Nearest]
// finds the places nearest to the line whatever there is to remember. A [Nest] is
// several things over the same rows, each done only where a commoner one is done
// too, and a [Block] is how a choice of rows for them is told.
// [Grade] finds one form for several sizes, which share a sentence.
package schedule
