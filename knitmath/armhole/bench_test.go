package armhole

import (
	"fmt"
	"syscall"
	"testing"

	"example.com/knitmath/knitmath/gauge"
)

// ordinary are set-in pullovers of children, women and men at common gauges: chest, across the back, armhole depth and
// upper arm in cm (the Standards & Guidelines of testdata/body), stitches and rows to 10 cm.
var ordinary = [][6]float64{
	{58.5, 25, 12, 19, 22, 30}, {63.5, 26, 12.5, 20.5, 28, 36}, {71, 28.5, 15.5, 22, 18, 24}, {76, 30.5, 16.5, 23, 22, 30},
	{81, 37, 16.5, 26, 22, 30}, {91.5, 40.5, 17.5, 28, 22, 30}, {101.5, 43, 19, 30.5, 18, 24}, {111.5, 44.5, 20.5, 34.5, 20, 28},
	{96.5, 42, 23, 33, 18, 24}, {106.5, 44.5, 24, 38, 22, 30}, {116.5, 45.5, 25.5, 40.5, 20, 28}, {127, 47, 26.5, 43, 18, 24},
}

// processor is what the process has taken so far, in nanoseconds.
func processor(b *testing.B) float64 {
	var r syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &r); err != nil {
		b.Fatal(err)
	}
	return float64(r.Utime.Nano() + r.Stime.Nano())
}

// BenchmarkPlan plans the pullover of the other tests, and each ordinary one by itself, in time of the processor too, which a
// busy machine does not lengthen.
func BenchmarkPlan(b *testing.B) {
	one := func(name string, in Input) {
		b.Run(name, func(b *testing.B) {
			was := processor(b)
			for b.Loop() {
				if _, err := Plan(in); err != nil {
					b.Fatal(err)
				}
			}
			b.ReportMetric((processor(b)-was)/float64(b.N), "processor-ns/op")
		})
	}
	one("pullover", pullover())
	for _, who := range ordinary {
		one(fmt.Sprintf("chest %v", who[0]), Input{Gauge: &gauge.Gauge{Stitches: who[4], Rows: who[5]}, ChestCm: &who[0],
			AcrossBackCm: &who[1], ArmholeDepthCm: &who[2], UpperArmCm: &who[3]})
	}
}
