// Package yarn is what a yarn is: its count, put-ups, weight categories, metres and grams in
// words. How much of it some knitting takes is at home in package yardage.
package yarn
