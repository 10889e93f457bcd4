package yoke

import (
	"math"

	"example.com/knitmath/knitmath/advice"
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/outline"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/shaping"
	"example.com/knitmath/knitmath/stitch"
)

// Ranges of a circular yoke.
const (
	// MaxSteps is the most decrease rounds in a yoke: each comes back written out.
	MaxSteps = 200
	// MaxMixedChanges is the most stitches that all rounds together take away, or add,
	// where they may be mixed evenly: a short way to write them has to be found.
	MaxMixedChanges = 3_700
	// MinNeck is the fewest stitches of a neck.
	MinNeck = 4
)

// Schedule says where the decrease rounds lie and how much each takes.
type Schedule int32

// The schedules.
const (
	ScheduleUnspecified Schedule = iota // percentage
	SchedulePercentage                  // at a half, three quarters and the end of the depth
	ScheduleCone                        // evenly, as many stitches each time
	ScheduleOwn                         // the caller's own steps
)

// A Step is one decrease round of the caller's own schedule.
type Step struct {
	DepthFraction   float64
	RemovedFraction float64
}

// CircularInput asks for a yoke. It mirrors PlanCircularYokeRequest.
type CircularInput struct {
	Gauge                 *gauge.Gauge
	BodyStitches          int
	SleeveStitches        *int
	UnderarmStitches      *int
	NeckStitches          *int
	NeckCm                *float64
	DepthCm               *float64
	DepthRounds           *int
	Schedule              Schedule
	DecreaseRounds        *int
	Steps                 []Step
	Spread                shaping.GapSpread
	DisplayUnit           measure.DisplayUnit
	Bands                 []Band
	NeckToleranceStitches *int
	BackRaise             *BackRaise
	WithOutline           bool
	TolerancePercent      *float64
	LargestLossPercent    *float64
}

// A Round is one decrease round.
type Round struct {
	RoundNumber     int
	DepthCm         float64
	StartStitches   int
	EndStitches     int
	WantedStitches  float64
	Instruction     stitch.Instruction
	Steepness       float64
	CircumferenceCm float64
	// DepartureStitches is the count less the wanted one.
	DepartureStitches float64
	// Effort is the items of the written round.
	Effort int
	// Adjusts says that the round adjusts the count directly above the join.
	Adjusts bool
}

// Circular is the answer to CircularInput.
type Circular struct {
	BodyStitches     int
	SleeveStitches   int
	UnderarmStitches int
	JoinStitches     int
	NeckStitches     int
	DepthRounds      int
	DepthCm          float64
	JoinCm           float64
	NeckCm           float64
	Rounds           []Round
	Steepness        float64
	Notices          []report.Notice
	Bands            []BandPlan
	BackRaise        *BackRaisePlan
	// GreatestDeparturePercent is how far the count of a round lies from the wanted one at
	// most, in percent of that.
	GreatestDeparturePercent float64
	// Effort is that of all rounds, and one for each of them.
	Effort int
	// Outline is nil unless asked for.
	Outline *outline.Outline

	unit measure.DisplayUnit
}

// PlanCircularYoke joins body and sleeves,
//
//	T = body + 2*sleeve - 4*underarm
//
// and narrows them to the neck. A schedule is a list of steps, each at a part f
// of the depth and removing a part of the stitches then on the needle. With p
// the part of T that is left after a step and q the part left after the last,
//
//	round  = f * rounds                    nearest, half-way up, at least 1
//	wanted = T - (T - neck) * (1 - p) / (1 - q)
//
// so that a schedule keeps its proportions and lands on any neck; with the neck
// it implies itself (q = neck/T) nothing is changed. A neck that is narrower than the
// percentage system's has more rounds in its last quarter instead, see percentageStepsTo. The counts are the easiest to work
// that lie within TolerancePercent of the wanted ones, see easiest; at 0 percent each
// is the nearest, half-way up, and the last the neck exactly. They are worked with k2tog
// spaced evenly in the round.
//
// With bands of pattern the counts divide in every band; where none of these lie near
// enough to the schedule, those are taken that depart least: see settleBands and
// bandCounts. Short rows that raise the back neck: see settleRaise.
//
// Source: percentage system, see percentageCited; the scaling to another
// neck is an own derivation, stated above.
func PlanCircularYoke(in CircularInput) (Circular, error) {
	y, err := in.settled(false)
	if err != nil {
		return Circular{}, in.advised(err, y.mostNeck())
	}
	return y.answer(in), nil
}

// settled settles the question, stage after stage, as far as it goes. Where it is only tried, nothing
// is looked for that would do instead.
func (in CircularInput) settled(tried bool) (*circular, error) {
	var c fault.Checks
	y := circular{tried: tried}
	for _, stage := range [...]func(*fault.Checks, *circular, CircularInput){
		vetCircular, settleCounts, settleChanges, settleWorked,
	} {
		stage(&c, &y, in)
		if err := c.Err(); err != nil {
			return &y, err
		}
	}
	return &y, nil
}

// mostNeck is the most stitches that a neck may have.
func (y *circular) mostNeck() int { return max(MinNeck, y.join-1) }

// advised is a refusal with the necks, of so many stitches at the most, depths and numbers of decrease
// rounds that would do.
func (in CircularInput) advised(err error, mostNeck int) error {
	if in.tooDearToTry() {
		return err
	}
	widest := float64(measure.MaxCm)
	if in.NeckCm != nil && in.Gauge != nil && in.Gauge.Stitches > 0 {
		widest = min(widest, float64(mostNeck)*fault.Or(in.Gauge.OverCm, 10)/in.Gauge.Stitches)
	}
	return advice.Add(err, func() int { return in.Cost() }, func() error {
		_, err := in.settled(true)
		return err
	}, in.DisplayUnit,
		advice.Knob{Field: "underarm_stitches", Count: &in.UnderarmStitches, Least: 0, Most: MaxUnderarm},
		advice.Knob{Field: "neck_stitches", Count: &in.NeckStitches, Least: MinNeck, Most: float64(mostNeck)},
		advice.Knob{Field: "neck_cm", Cm: &in.NeckCm, Least: measure.MinCm, Most: widest},
		advice.Knob{Field: "depth_cm", Cm: &in.DepthCm, Least: measure.MinCm, Most: MaxDepthCm},
		advice.Knob{Field: "depth_rounds", Count: &in.DepthRounds, Least: 1, Most: MaxRounds},
		advice.Knob{Field: "decrease_rounds", Count: &in.DecreaseRounds, Least: 1, Most: MaxSteps},
	)
}

// circular is a question as the stages settle it.
type circular struct {
	st, rw gauge.Density
	joining
	neck                  int
	wantedNeck            int // before its tolerance was used
	settledNeck           int
	tolerance             int     // of the neck
	percent               float64 // that counts may depart
	rounds                int
	neckField, depthField string
	scheduleField         string // what says how many decrease rounds there are
	changes               []change
	bands                 []BandPlan
	raise                 *BackRaisePlan
	written               []Round
	placeCount            int      // where the count may change, with bands
	tried                 bool     // by a remedy: nothing would be read
	remedies              []string // what would do instead, in words
}

// change is one round in which the count changes, as planned.
type change struct {
	round  int
	wanted float64
	count  int
	// adjusts: the round above the join, see mostAdjusted.
	adjusts bool
	said    float64 // the part of the stitches that the schedule itself says it takes
}

// steepness is the circumference lost over what a flat disc would lose on the
// same depth, 2*pi*depth. A flat ring is 1; a cone of half-angle a is sin(a);
// above 1 there is more edge than any smooth surface holds, and it ruffles.
func (y *circular) steepness(lost, rounds int) float64 {
	return y.st.SizeCm(lost) / (2 * math.Pi * y.rw.SizeCm(rounds))
}

// steepnessCited is the source of a circular yoke's steepness.
var steepnessCited = report.Source{Figure: "steepness", Status: report.SourceStatusOwnDerivation,
	Citation: "own derivation: a circle's circumference grows by 2 pi for every unit of radius"}
