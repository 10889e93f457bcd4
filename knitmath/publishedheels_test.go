package knitmath_test

import (
	"fmt"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/sock"
	"example.com/knitmath/knitmath/stitch"
)

// publishedHeels are heels, their turns and gussets.
var publishedHeels = map[string]printed{
	"ryder1_heelsplit": {work: func(t *testing.T) string {
		o := heel(t, sock.HeelInput{Kind: sock.HeelKindRound, RoundStitches: new(57)})
		return fmt.Sprintf("heel %d; instep %d (%d+%d)", o.HeelStitches, o.InstepStitches, (o.InstepStitches+1)/2, o.InstepStitches/2)
	}},
	"ryder1_turn": {work: func(t *testing.T) string {
		return turned(t, ryder1(t)) + fmt.Sprintf("; %d unworked after row 1", unworked(ryder1(t)))
	}},
	"ryder1_gusset": {work: func(t *testing.T) string {
		o := ryder1(t)
		quick, rounds := 0, gussetRounds(o)
		for quick < len(rounds) && rounds[quick] == quick+1 {
			quick++
		}
		return fmt.Sprintf("%s; %d decrease rounds; %d+%d=%d rounds", needles(o), len(rounds), quick, rounds[len(rounds)-1]-quick,
			*o.GussetRounds)
	}},
	"ryder2_turn": {work: func(t *testing.T) string { return turned(t, ryder2(t)) }},
	"ryder2_gusset": {work: func(t *testing.T) string {
		o := ryder2(t)
		last := o.Rows[len(o.Rows)-1].Instruction.EndStitches
		return fmt.Sprintf("%s; back to %d in %d decrease rounds", needles(o), last, *o.GussetDecreaseRounds)
	}},
	"rc1918_turn": {
		work: func(t *testing.T) string {
			o := heel(t, sock.HeelInput{Kind: sock.HeelKindRound, RoundStitches: new(62), HeelStitches: new(31), CentreStitches: new(3)})
			return fmt.Sprintf("%d after %d rows", *o.TurnedStitches, len(part(o, sock.HeelPartTurn)))
		},
		ours: "17 after 14 rows", why: "all are worked after 14 rows. The book's 15th goes across the heel and decreases once more, " +
			"to 16; here that row is the first part of the round that picks up, and the stitch goes with those of the gussets"},
	"dillmont_heelthird": {work: func(t *testing.T) string {
		o := heel(t, sock.HeelInput{Kind: sock.HeelKindSquare, RoundStitches: new(2 * 48)}) // 24 on each of two needles
		before := part(o, sock.HeelPartTurn)[0].Row.Steps
		plain := before[0].Count + before[1].Count // sl 1, k30: the decrease takes the next, the last of the third, and one beyond it
		return fmt.Sprintf("knit off %d (a third) past the centre before the first intake", plain+1-24)
	}},
	"whitby_turn_start": {work: func(t *testing.T) string {
		o := heel(t, sock.HeelInput{Kind: sock.HeelKindRound, RoundStitches: new(68)})
		return fmt.Sprintf("%d unworked after row 1; %d left at the end", unworked(o), *o.TurnedStitches)
	}},
	"fil_gusset": {work: func(t *testing.T) string {
		o := heel(t, sock.HeelInput{Kind: sock.HeelKindSquare, RoundStitches: new(60), FlapRows: new(24), GussetEveryRounds: new(3)})
		if len(gussetRounds(o)) != 3 || *o.PickUpStitches != 13 || *o.TurnedStitches != 10 || o.InstepStitches != 30 {
			t.Errorf("%d, %d picked up, %d decrease rounds", *o.TurnedStitches, *o.PickUpStitches, len(gussetRounds(o)))
		}
		return fmt.Sprintf("%d;%d", *o.GreatestRoundStitches, o.Rows[len(o.Rows)-1].Instruction.EndStitches)
	}},
	"sna_heel": {work: func(t *testing.T) string { // the letters stand in the flap's rows, by own reading
		o := heel(t, sock.HeelInput{Kind: sock.HeelKindSquare, Direction: sock.DirectionToeUp, RoundStitches: new(66)})
		rows := part(o, sock.HeelPartFlap)
		if widened := *o.GreatestRoundStitches - o.InstepStitches; widened != 63 {
			t.Errorf("widened to %d", widened)
		}
		knit, purled, slipped := rows[0].Row.Steps[0].Count, rows[1].Row.Steps[1].Count, rows[2].Row.Steps[0].Times
		return fmt.Sprintf("C=%d; D=%d; E=%d", knit, purled, slipped)
	}},
}

func heel(t *testing.T, in sock.HeelInput) sock.Heel {
	t.Helper()
	out, err := sock.PlanHeel(in)
	return must(t, out, err)
}

// ryder1 and ryder2 are the heels of two stockings, of which the first 4 decrease rounds follow one another.
func ryder1(t *testing.T) sock.Heel {
	t.Helper()
	return heel(t, sock.HeelInput{Kind: sock.HeelKindRound, RoundStitches: new(57), FlapRows: new(30), PickUpStitches: new(17),
		SuccessiveRounds: new(4)})
}

func ryder2(t *testing.T) sock.Heel {
	t.Helper()
	return heel(t, sock.HeelInput{Kind: sock.HeelKindRound, RoundStitches: new(56), HeelStitches: new(29), FlapRows: new(30),
		PickUpStitches: new(17), SuccessiveRounds: new(4)})
}

// turned is what a turn of 12 rows leaves.
func turned(t *testing.T, o sock.Heel) string {
	t.Helper()
	if n := len(part(o, sock.HeelPartTurn)); n != 12 {
		t.Errorf("%d rows of the turn", n)
	}
	return fmt.Sprintf("%d left", *o.TurnedStitches)
}

// unworked is how many stitches of the heel wait after the first row of its turn.
func unworked(o sock.Heel) int {
	return o.HeelStitches - takes(part(o, sock.HeelPartTurn)[0].Row.Steps)
}

// needles are the stitches of the three needles of a stocking as the book counts them: half the heel with an edge, and two
// stitches of the instep moved there for the while.
func needles(o sock.Heel) string {
	const moved = 2
	half, edge := *o.TurnedStitches/2, *o.PickUpStitches+moved
	instep := o.InstepStitches - 2*moved
	return fmt.Sprintf("%d+%d+%d=%d", half+edge, instep, *o.TurnedStitches-half+edge, *o.GreatestRoundStitches)
}

// part are the rows of a part of a heel.
func part(o sock.Heel, part sock.HeelPart) (rows []stitch.Instruction) {
	for _, r := range o.Rows {
		if r.Part == part {
			rows = append(rows, r.Instruction)
		}
	}
	return rows
}

// gussetRounds are the numbers of the rounds of a gusset that change the count.
func gussetRounds(o sock.Heel) (numbers []int) {
	for _, r := range o.Rows {
		if r.Part == sock.HeelPartGusset && r.Instruction.EndStitches != r.Instruction.StartStitches {
			numbers = append(numbers, r.RowNumber)
		}
	}
	return slices.Clip(numbers)
}
