package garbage

import "testing"

func TestGrowthOf(t *testing.T) {
	for _, c := range []struct {
		inUse uint64
		want  int
	}{
		{0, 1500}, {1 << 20, 1500}, {4 << 20, 1500}, {8 << 20, 700}, {10 << 20, 500}, {16 << 20, 300},
		{32 << 20, 100}, {300 << 20, 100}, {1 << 40, 100},
	} {
		if got := growthOf(c.inUse); got != c.want {
			t.Errorf("of %d bytes: %d, want %d", c.inUse, got, c.want)
		}
	}
}
