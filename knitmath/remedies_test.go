package knitmath_test

import (
	"errors"
	"math/rand/v2"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// Every remedy that a refusal prints is asked of the planner just as it is printed, and planned: of
// questions far from what can be worked and near to it, of all planners of shaping, edges, short rows,
// yokes and gauges. A text that offers something and is not known here fails too.

// An offer is a remedy as refusals print it, and the questions it stands for, all of which are to be
// planned.
type offer[Q any] struct {
	says *regexp.Regexp
	asks func(q Q, field string, n []int) []Q
}

// offers is short for a table of them. A # stands for a number, which may have been written as a word.
func says[Q any](text string, asks func(q Q, field string, n []int) []Q) offer[Q] {
	return offer[Q]{says: regexp.MustCompile(strings.ReplaceAll(regexp.QuoteMeta(text), "#", `(\d+)`)), asks: asks}
}

// digits are what may differ in two refusals of one cause.
var digits = regexp.MustCompile(`\d+`)

// mends reports whether what was offered is planned, or where a refusal has several causes, at fields or
// points of their own, at least that one is gone.
func mends(again, before *fault.InputError, mended fault.Violation) bool {
	said := map[string]bool{}
	for _, v := range before.Violations {
		said[strconv.Itoa(placeOf(v.Field))+v.Detail] = true
	}
	return len(said) > 1 && !slices.ContainsFunc(again.Violations, func(v fault.Violation) bool {
		return v.Field == mended.Field && digits.ReplaceAllString(v.Detail, "") == digits.ReplaceAllString(mended.Detail, "")
	})
}

// offering are words that offer something.
var offering = regexp.MustCompile(`\b(use|give|would (do|fit)|may be|at least|rounding|leave out|end with|nearest|another)\b`)

// remediesWork asks a planner so many questions, and then whatever its refusals offer.
func remediesWork[Q any](t *testing.T, full, short int, some func(*rand.Rand) Q, ask func(Q) error, known []offer[Q],
	statements ...string) {
	t.Helper()
	r := rand.New(rand.NewPCG(27, 11))
	asked, refused, offered := knittest.Sweep(full, short), 0, 0
	kinds := map[string]int{}
	for range asked {
		q := some(r)
		var refusal *fault.InputError
		if !errors.As(ask(q), &refusal) {
			continue
		}
		refused++
		for _, v := range refusal.Violations {
			rest := v.Detail
			for _, o := range known {
				for _, m := range o.says.FindAllStringSubmatch(rest, -1) {
					for _, other := range o.asks(q, v.Field, numbers(t, m[1:])) {
						offered++
						kinds[o.says.String()]++
						if reflect.DeepEqual(q, other) {
							t.Fatalf("%+v: %q is what was asked", q, m[0])
						}
						var again *fault.InputError
						if err := ask(other); errors.As(err, &again) && !mends(again, refusal, v) {
							t.Errorf("%+v: %s: %s; asked so, %+v: %v", q, v.Field, v.Detail, other, err)
						}
					}
				}
				rest = o.says.ReplaceAllString(rest, "")
			}
			for _, s := range statements { // what offers nothing
				rest = regexp.MustCompile(strings.ReplaceAll(regexp.QuoteMeta(s), "#", `\d+`)).ReplaceAllString(rest, "")
			}
			if v.Reason == fault.ReasonInfeasible && offering.MatchString(rest) {
				t.Fatalf("%+v: %s: %q offers something that is not asked", q, v.Field, rest)
			}
		}
	}
	t.Logf("%d of %d asked refused, %d offers taken", refused, asked, offered)
	for _, o := range known {
		t.Logf("%6d times %s", kinds[o.says.String()], o.says)
	}
	if want := asked / 10; offered < want {
		t.Errorf("%d offers, want %d", offered, want)
	}
}

// placeOf is the index in a field: 2 of points[2].stitches.
func placeOf(field string) int {
	_, rest, _ := strings.Cut(field, "[")
	index, _, _ := strings.Cut(rest, "]")
	i, err := strconv.Atoi(index)
	if err != nil {
		return 0
	}
	return i
}

// numbers are what stood where a # stands, those that were there.
func numbers(t *testing.T, text []string) []int {
	t.Helper()
	var list []int
	for _, s := range text {
		n, err := strconv.Atoi(s)
		if err != nil && s != "" {
			t.Fatal(err)
		}
		if s != "" {
			list = append(list, n)
		}
	}
	return list
}

// nearEnds is a number of a range, often one near its ends.
func nearEnds(r *rand.Rand, least, most int) int {
	switch r.IntN(4) {
	case 0:
		return least + r.IntN(min(6, most-least+1))
	case 1:
		return most - r.IntN(min(6, most-least+1))
	}
	return least + r.IntN(most-least+1)
}

// sometimes is a value, or none: so many times of a hundred it is one.
func sometimes[T any](r *rand.Rand, percent int, v T) *T {
	if r.IntN(100) < percent {
		return &v
	}
	return nil
}

// someGauge is a gauge of knitting.
func someGauge(r *rand.Rand) *gauge.Gauge {
	return &gauge.Gauge{Stitches: float64(8 + r.IntN(30)), Rows: float64(10 + r.IntN(40))}
}

// tenths is a length up to most cm.
func tenths(r *rand.Rand, most int) *float64 { return new(float64(1+r.IntN(10*most)) / 10) }
