package yoke

import (
	"fmt"
	"math"
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
)

// farBand reports whether the count of a band is far from the schedule. Both are read as
// easiest reads them.
func (y *circular) farBand(band int) bool {
	wanted := thousandths(y.bands[band].WantedStitches)
	off := int64(y.bands[band].Stitches)*1000 - wanted
	return max(off, -off) > wanted*thousandths(max(farPercent, y.percent))/100_000
}

// far reports whether that of any band is.
func (y *circular) far() bool {
	for i := range y.bands {
		if y.farBand(i) {
			return true
		}
	}
	return false
}

// keepsWithin reports whether no round takes more than a share of its stitches.
func (y *circular) keepsWithin(takes share) bool {
	before := y.join
	for _, s := range y.changes {
		if before-s.count > takes.of(before) {
			return false
		}
		before = s.count
	}
	return true
}

// bandNotices remarks on bands far from the schedule, and on rounds between them that
// take much. The first of these says what would do instead.
func (y *circular) bandNotices() []report.Notice {
	var notices []report.Notice
	for i, b := range y.bands {
		if !y.farBand(i) {
			continue
		}
		than := "more"
		if b.DepartureStitches < 0 {
			than = "fewer"
		}
		off := math.Abs(b.DepartureStitches)
		notices = append(notices, report.Notice{Reason: FarFromSchedule,
			Field: fault.Join(fault.Index("bands", i), "repeat_stitches"),
			Description: fmt.Sprintf("gives %d stitches, %s %% %s than the %s that the schedule wants there", b.Stitches,
				measure.Decimal(100*off/b.WantedStitches, 1), than, measure.Decimal(b.WantedStitches, 1))})
	}
	for _, r := range y.written {
		if lost := r.StartStitches - r.EndStitches; len(y.bands) > 0 && lost > third.of(r.StartStitches) {
			notices = append(notices, report.Notice{Reason: MoreThanAThird, Field: "bands",
				Description: fmt.Sprintf("leave round %d to take %d of %s, more than a third", r.RoundNumber, lost,
					report.CountOf(r.StartStitches, "stitches"))})
		}
	}
	if len(notices) > 0 {
		notices[0].Description += wouldDo(y.remedies)
	}
	return notices
}

// countNotices remarks on rounds that are hard to remember, and on the neck.
func (y *circular) countNotices() []report.Notice {
	var notices []report.Notice
	for _, r := range y.written {
		if r.Effort > fewItems {
			notices = append(notices, report.Notice{Reason: shaping.ManyItems, Field: "tolerance_percent",
				Description: fmt.Sprintf("allows no easier round %d, from %d to %s", r.RoundNumber, r.StartStitches,
					report.CountOf(r.EndStitches, "stitches"))})
		}
	}
	if measure.Abs(y.neck-y.wantedNeck) > DefaultNeckTolerance {
		notices = append(notices, report.Notice{Reason: NeckInTolerance, Field: "neck_tolerance_stitches",
			Description: fmt.Sprintf("the neck has %d stitches where %d were wanted, as the tolerance allows", y.neck, y.wantedNeck)})
	}
	return notices
}

// eased is how many stitches a round may lie off own steps without a word: no count is
// nearer than half a stitch.
const eased = 1

// easedNotice says that own steps are not kept to, where nobody said that they need not be.
func (y *circular) easedNotice() []report.Notice {
	var counts, wanted []string
	far := 0.0
	for _, r := range y.written {
		if r.Adjusts {
			continue
		}
		counts = append(counts, strconv.Itoa(r.EndStitches))
		wanted = append(wanted, measure.Decimal(r.WantedStitches, 1))
		far = max(far, math.Abs(r.DepartureStitches))
	}
	if far < eased {
		return nil
	}
	return []report.Notice{{Reason: StepsEased, Field: "tolerance_percent",
		Description: "the rounds leave " + report.Listed(counts) + " stitches where the steps want " + report.Listed(wanted) +
			", so that they are easy to work; 0 keeps to the steps, to the nearest stitch"}}
}
