package stitch

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"
)

func BenchmarkCompress(b *testing.B) {
	rng := rand.New(rand.NewPCG(3, 4))
	cases := []struct {
		name string
		runs []Run
	}{
		{"rib 20000 runs", times(5000, Run{Knit, 1}, Run{Purl, 1}, Run{Knit, 1}, Run{Purl, 1})},
		{"repeats 5000 runs", randomRuns(rng, 5000, 6, 3)},
		{"repeats 20000 runs", randomRuns(rng, 20000, 6, 3)},
		{"noise 20000 runs", func() (runs []Run) {
			for range 20000 {
				runs = append(runs, Run{Op(1 + rng.IntN(3)), 1 + rng.IntN(2)})
			}
			return
		}()},
		{"decreases 41 runs", slices.Concat([]Run{{Knit, 5}}, times(20, Run{K2tog, 1}, Run{Knit, 8}), []Run{{Knit, 5}})},
	}
	for _, c := range cases {
		b.Run(c.name, func(b *testing.B) {
			for b.Loop() {
				Compress(c.runs)
			}
		})
	}
}

// The machine's work grows with the stitches: compare the two sizes.
func BenchmarkMachine(b *testing.B) {
	for _, n := range []int{100, MaxStitches} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			m := NewMachine(Flat)
			must(b, m.CastOn(n))
			row := RowOf(Repeat(n/10, Do(Knit, 5), Do(K2tog, 1), Do(Knit, 1), Do(YO, 1), Do(Purl, 2)))
			for b.Loop() {
				if err := m.Work(row); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// Count's work does not grow with the stitches.
func BenchmarkCount(b *testing.B) {
	row := RowOf(Do(Knit, 5), Repeat(900, Do(K2tog, 1), Do(Knit, 8)), ToLast(Knit, 1), Do(M1R, 1), Do(Knit, 1))
	for b.Loop() {
		if _, _, err := row.Count(MaxStitches); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkText(b *testing.B) {
	row := RowOf(Do(Knit, 5), Repeat(900, Do(K2tog, 1), Do(Knit, 8)), ToLast(Knit, 1), Do(M1R, 1), Do(Knit, 1))
	for b.Loop() {
		row.Text()
	}
}
