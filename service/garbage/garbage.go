// Package garbage says how often it is collected. It knows nothing of what is asked.
package garbage

import (
	"os"
	"runtime"
	"runtime/debug"
	"runtime/metrics"
)

const (
	// worthCollecting is how much memory it is worth to look through for what is no longer
	// in use.
	worthCollecting = 64 << 20
	// usualGrowth is Go's own rule: when there is as much again as was in use, in per
	// cent. Where much is in use it stays.
	usualGrowth = 100
)

// CollectSeldom has garbage collected less often while little is in use, unless GOGC
// says how often. The service holds some ten MiB, so that by Go's rule every thousandth
// short call was followed by a collection, a sixth of what calls took of the processor.
func CollectSeldom() {
	if _, told := os.LookupEnv("GOGC"); told {
		return
	}
	(&collections{growth: usualGrowth}).another(nil)
}

// collections are told after each when the next is due.
type collections struct{ growth int }

// notice is held by nobody, and so tells when there was a collection.
type notice struct{ _ *byte }

func (c *collections) another(*notice) {
	inUse := []metrics.Sample{{Name: "/gc/heap/live:bytes"}}
	metrics.Read(inUse)
	if growth := growthOf(inUse[0].Value.Uint64()); growth != c.growth { // To say it stops everything for a moment.
		c.growth = growth
		debug.SetGCPercent(growth)
	}
	runtime.SetFinalizer(&notice{}, c.another)
}

// growthOf is how much may come to what is in use before the next collection, in per cent
// and in steps of fifty.
func growthOf(inUse uint64) int {
	inUse = max(inUse, worthCollecting/16)
	return max(usualGrowth, int(worthCollecting*100/inUse-100)/50*50)
}
