package stitch

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"
)

// The operations whose names are common practice and not on the published list.
// The value is what they must take and leave, from what the hands do.
var commonPractice = map[Op][2]int{
	KnitTbl:     {1, 1}, // a knit stitch, entered from behind
	PurlTbl:     {1, 1},
	Turn:        {0, 0},
	MakeDouble:  {1, 1}, // slipped, and pulled up
	KnitDouble:  {1, 1}, // both legs are one stitch
	PurlDouble:  {1, 1},
	KnitWrapped: {1, 1}, // the wrap is no stitch
	PurlWrapped: {1, 1},
	PickUp:      {1, 1}, // a row of the edge gives a stitch
	PickUpTwo:   {1, 2},
	SkipRow:     {1, 0},
	Hold:        {1, 0}, // it leaves the needle for a holder
}

func TestOpsAgreeWithPublishedList(t *testing.T) {
	file, err := os.Open("../../testdata/stitch/abbreviations.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	lines, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	listed := make(map[string][]string)
	for _, l := range lines[1:] {
		listed[strings.ToLower(l[0])] = l
	}
	for _, op := range Ops() {
		if want, ok := commonPractice[op]; ok {
			if _, ok := listed[strings.ToLower(op.Abbr())]; ok {
				t.Errorf("%s is on the list", op)
			}
			if op.Takes() != want[0] || op.Leaves() != want[1] {
				t.Errorf("%s is %d/%d, want %d/%d", op, op.Takes(), op.Leaves(), want[0], want[1])
			}
			continue
		}
		l, ok := listed[strings.ToLower(op.Abbr())]
		if !ok {
			t.Errorf("%q is not on the list", op.Abbr())
			continue
		}
		takes, err1 := strconv.Atoi(l[3])
		leaves, err2 := strconv.Atoi(l[4])
		if err1 != nil || err2 != nil || op.Takes() != takes || op.Leaves() != leaves {
			t.Errorf("%s is %d/%d, listed as %s/%s (%s)", op, op.Takes(), op.Leaves(), l[3], l[4], l[5])
		}
	}
}

// All operations are listed, in the order of their declaration.
func TestOpsAreAll(t *testing.T) {
	all := Ops()
	if len(all) != int(Hold) || all[0] != Knit || all[len(all)-1] != Hold {
		t.Fatalf("%d operations, want %d", len(all), Hold)
	}
	for i, op := range all {
		if int(op) != i+1 {
			t.Errorf("operation %d is %s", i, op)
		}
	}
}

func TestOpsAreDistinct(t *testing.T) {
	seen := make(map[string]Op)
	for _, op := range Ops() {
		if !op.Valid() || op.Net() != op.Leaves()-op.Takes() || op.String() != op.Abbr() {
			t.Errorf("op %d (%s) contradicts itself", op, op)
		}
		if op.EndsRow() != (op == Turn || op == WrapTurn) {
			t.Errorf("%s ends a row: %v", op, op.EndsRow())
		}
		if other, ok := seen[op.Abbr()]; ok && (other != YO || op != ShortRowYO) {
			t.Errorf("%q is written for two operations", op.Abbr())
		}
		seen[op.Abbr()] = op
	}
}

func TestWhatIsNoOp(t *testing.T) {
	for _, op := range []Op{0, opEnd, 255} {
		if op.Valid() || op.Abbr() != "?" || op.Takes() != 0 || op.Leaves() != 0 || op.EndsRow() {
			t.Errorf("op %d is known", uint8(op))
		}
	}
}

// Every operation is worked by hand in some way.
func TestEveryOperationHasHands(t *testing.T) {
	for _, op := range Ops() {
		if h := byHand[op]; (h.leaves > 0) == (h.work != nil) {
			t.Errorf("%s is worked in no way, or in two", op)
		}
	}
}
