// Package handspun is yarn that its knitter spins: singles and plies, their twist and
// its balance, the wheel, and the fibre to begin with. How thick a yarn is in the
// trade's words stands in package yarn, how much of it some knitting takes in yardage.
package handspun
