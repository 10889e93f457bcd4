package yoke

import (
	"math/big"
	"testing"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// The default depth is a quarter of the body's circumference and 30 cm at the most, to the
// nearest round, half-way up: 133 stitches at 18 stitches and 36 rows are as long as 266
// rounds, a quarter of which is 66.5. In centimetres the same is 18.472222...,
// which no decimal holds.
func TestDefaultDepthIsExact(t *testing.T) {
	half := big.NewRat(1, 2)
	halves := 0
	for stitches := 10; stitches <= 40; stitches += 3 {
		for rows := 12; rows <= 60; rows += 4 {
			for body := 60; body <= 400; body += knittest.Sweep(1, 3) {
				quarter := big.NewRat(int64(body*rows), int64(4*stitches))
				if new(big.Rat).Mul(quarter, big.NewRat(2, 1)).IsInt() && !quarter.IsInt() {
					halves++
				}
				// 30 cm have three times the rows of the gauge.
				want := min(floor(new(big.Rat).Add(quarter, half)), 3*rows)
				g := &gauge.Gauge{Stitches: float64(stitches), Rows: float64(rows)}
				if got := defaultRounds(t, g, body); got != want {
					t.Fatalf("%d stitches at %d and %d: %d rounds, want %d", body, stitches, rows, got, want)
				}
			}
		}
	}
	if halves < knittest.Sweep(1_000, 300) {
		t.Errorf("%d depths were half-way: the sweep has shrunk", halves)
	}
	g := &gauge.Gauge{Stitches: 18, Rows: 36}
	yoke, err := PlanCircularYoke(CircularInput{Gauge: g, BodyStitches: 133})
	if err != nil || yoke.DepthRounds != 67 {
		t.Errorf("a yoke of %d rounds, %v; want 67", yoke.DepthRounds, err)
	}
	raglan, err := PlanRaglan(RaglanInput{Gauge: g, BodyStitches: 133})
	if err != nil || raglan.DepthRounds != 67 {
		t.Errorf("a raglan of %d rounds, %v; want 67", raglan.DepthRounds, err)
	}
	// A body of 150 cm: not 37.5 cm deep but 30, which are 84 rows at 28.
	if got := defaultRounds(t, &gauge.Gauge{Stitches: 20, Rows: 28}, 300); got != 84 {
		t.Errorf("%d rounds for a body of 150 cm, want 84", got)
	}
}

// floor is a number down to the next whole one.
func floor(x *big.Rat) int { return int(new(big.Int).Div(x.Num(), x.Denom()).Int64()) }

// defaultRounds is the depth that a body has by default.
func defaultRounds(t *testing.T, g *gauge.Gauge, body int) int {
	t.Helper()
	var c fault.Checks
	st, rw := gauge.Vet(&c, "gauge", g)
	rounds, _ := settleDepth(&c, st, rw, body, nil, nil)
	if err := c.Err(); err != nil {
		t.Fatal(err)
	}
	return rounds
}
