package yoke

import (
	"fmt"
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// bandNotices remarks on bands far from the schedule, and on the neck.
func (y *circular) bandNotices() []report.Notice {
	var notices []report.Notice
	for i, b := range y.bands {
		if off := math.Abs(b.DepartureStitches); off*100 > farPercent*b.WantedStitches {
			than := "more"
			if b.DepartureStitches < 0 {
				than = "fewer"
			}
			notices = append(notices, report.Notice{Reason: FarFromSchedule,
				Field: fault.Join(fault.Index("bands", i), "repeat_stitches"),
				Description: fmt.Sprintf("gives %d stitches, %s %% %s than the %s that the schedule wants there", b.Stitches,
					measure.Decimal(100*off/b.WantedStitches, 1), than, measure.Decimal(b.WantedStitches, 1))})
		}
	}
	if len(y.bands) > 0 && y.neck != y.wantedNeck {
		notices = append(notices, report.Notice{Reason: NeckInTolerance, Field: "neck_tolerance_stitches",
			Description: fmt.Sprintf("was used: the neck has %d stitches where %d were wanted", y.neck, y.wantedNeck)})
	}
	return notices
}
