// Package knitmath is the arithmetic of hand-knitting: counts from lengths,
// even shaping, short rows, yokes, yarn. Pure functions on plain structs,
// standard library only; everything that it writes down to be worked is a
// stitch.Row.
//
// A question flows one way,
//
//	input -> checks (all faults) -> lengths in whole micrometres
//	      -> counts -> places in the row -> stitch.Row -> answer
//
// Three small pieces carry it: fit turns a length into a legal count exactly,
// spread lays things over places as evenly as integers allow, and a profile of
// heights is turned into whole pairs of short rows.
//
// Every public function either answers or returns an *InputError that lists all
// faults found. Answers are finite, and bounded by the limits of this package.
package knitmath
