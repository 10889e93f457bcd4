package knitmath_test

import (
	"fmt"
	"strings"
	"testing"

	"example.com/knitmath/knitmath/flat"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/shortrow"
	"example.com/knitmath/knitmath/solid"
	"example.com/knitmath/knitmath/stitch"
	"example.com/knitmath/knitmath/yoke"
)

// readPlans counts plans that are read back whole, and shows what is found in the others.
type readPlans struct {
	t     *testing.T
	all   int
	shown map[string]int
}

// read has printed directions checked, which begin a piece: nothing in them is asked about or disagrees.
func (r *readPlans) read(at string, directions []string, work stitch.Construction) {
	r.t.Helper()
	r.all++
	in := pattern.CheckInstructionsInput{Text: strings.Join(directions, "\n"), Construction: work}
	out, err := pattern.CheckInstructions(r.t.Context(), in)
	if err == nil && out.Agrees {
		return
	}
	if err != nil {
		r.t.Errorf("%s: %v\n%s", at, err, in.Text)
	}
	for _, f := range out.Findings {
		if f.Kind == pattern.KindReading {
			continue
		}
		key := string(f.Reason) + f.Text
		if r.shown[key]++; r.shown[key] == 1 && len(r.shown) < 40 {
			r.t.Errorf("%s, line %d: %s %q: %s\n%s", at, f.LineNumber, f.Reason, f.Text, f.Description, in.Text)
		}
	}
}

func (r *readPlans) done(least int) {
	r.t.Logf("%d plans read back", r.all)
	if r.all < least {
		r.t.Errorf("only %d plans", r.all)
	}
}

// Flat shapes of every form, at ordinary gauges, in each arrangement and direction.
func TestFlatShapesAreReadBack(t *testing.T) {
	r := readPlans{t: t, shown: map[string]int{}}
	for _, g := range usualGauges {
		for form := flat.FormDisc; form <= flat.FormStar; form++ {
			for way := flat.DirectionOutwards; way <= flat.DirectionInwards; way++ {
				for arranged := flat.ArrangementUnspecified; arranged <= flat.ArrangementShortRows; arranged++ {
					for _, cm := range []float64{8, 17, 32} {
						in := flat.Input{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, Form: form, Arrangement: arranged}
						if way == flat.DirectionInwards {
							in.Direction = way
						}
						sized(&in, cm)
						out, err := flat.PlanFlatShape(in)
						if err != nil {
							continue
						}
						work := stitch.InTheRound
						if out.Construction == stitch.Flat {
							work = stitch.Flat
						}
						r.read(planName("flat", g, int(form), int(way), int(arranged)), out.Directions(), work)
					}
				}
			}
		}
	}
	r.done(300)
}

// sized says how large a flat shape is to be.
func sized(in *flat.Input, cm float64) {
	switch in.Form {
	case flat.FormRing:
		in.AcrossCm, in.HoleCm = new(cm), new(cm/3)
	case flat.FormSector:
		in.AcrossCm, in.TurnDegrees = new(cm), new(180.0)
	case flat.FormMitredSquare:
		in.SideCm = new(cm)
	case flat.FormTriangleFromPoint, flat.FormTriangleFromSide, flat.FormTriangleFromTop:
		in.WidthCm, in.HeightCm = new(2*cm), new(cm)
	case flat.FormBiasStrip:
		in.WidthCm, in.LengthCm = new(cm/2), new(2*cm)
	case flat.FormPolygon:
		in.AcrossCm, in.CornerCount = new(cm), new(6)
	case flat.FormStar:
		in.AcrossCm, in.CornerCount, in.ValleyCm = new(cm), new(5), new(cm/2)
	default:
		in.AcrossCm = new(cm)
	}
}

func planName(what string, g [2]float64, choices ...int) string {
	return fmt.Sprint(what, " ", g[0], " ", choices)
}

// Solids: every form, from either end, in lines or staggered, with limbs, in rounds and in wedges.
func TestSolidsAreReadBack(t *testing.T) {
	r := readPlans{t: t, shown: map[string]int{}}
	for _, g := range usualGauges {
		for form := solid.FormSphere; form <= solid.FormProfile; form++ {
			for start := solid.StartBase; start <= solid.StartTop; start++ {
				for lines := solid.LinesStaggered; lines <= solid.LinesStacked; lines++ {
					for way := solid.WayRounds; way <= solid.WayWedges; way++ {
						for k := range 4 {
							in := solid.SolidInput{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, Form: form, Start: start, Lines: lines, Way: way,
								AcrossCm: new(10.0), HeightCm: new(14.0)}
							switch form {
							case solid.FormSphere:
								in.HeightCm = nil
							case solid.FormProfile:
								in.AcrossCm, in.HeightCm = nil, nil
								in.Points = []solid.ProfilePoint{{HeightCm: 0, AcrossCm: 6}, {HeightCm: 5, AcrossCm: 10}, {HeightCm: 11, AcrossCm: 4}}
							}
							if k == 1 {
								in.BaseOpeningCm = new(3.0)
							}
							if k == 2 {
								in.StuffOpeningCm = new(4.0)
							}
							if k == 3 {
								in.Limbs = []solid.LimbInput{{Stitches: 12, FromBaseCm: 5}, {Stitches: 12, FromBaseCm: 5, TurnDegrees: 180}}
							}
							if way == solid.WayWedges {
								in.TurnMethod = shortrow.TurnMethod(1 + k%3)
							}
							out, err := solid.PlanSolid(in)
							if err != nil {
								continue
							}
							work := stitch.InTheRound
							if way == solid.WayWedges {
								work = stitch.Flat
							}
							r.read(planName("solid", g, int(form), int(start), int(lines), int(way), k), out.Directions(), work)
						}
					}
				}
			}
		}
	}
	r.done(300)
}

// Circular yokes, with a band too.
func TestYokesAreReadBack(t *testing.T) {
	r := readPlans{t: t, shown: map[string]int{}}
	for _, g := range usualGauges {
		for chest := 60.0; chest <= 120; chest += 12 {
			body := int(chest*g[0]/10/4) * 4
			gg := &gauge.Gauge{Stitches: g[0], Rows: g[1]}
			for schedule := yoke.SchedulePercentage; schedule <= yoke.ScheduleCone; schedule++ {
				for k := range 2 {
					in := yoke.CircularInput{Gauge: gg, BodyStitches: body, Schedule: schedule}
					if schedule == yoke.ScheduleCone {
						in.DecreaseRounds = new(5)
					}
					if k == 1 {
						in.Bands = []yoke.Band{{HeightRounds: 9, RepeatStitches: 8}}
					}
					if out, err := yoke.PlanCircularYoke(in); err == nil {
						r.read(planName("yoke", g, int(schedule), k), out.Directions(), stitch.InTheRound)
					}
				}
			}
		}
	}
	r.done(100)
}

// Circular yokes whose back is raised in the first round, by wraps and German short rows. Lacks: yarn overs, which the
// round after them closes in a way that is not followed there, and a raise further up, after which the
// reader does not know the number of the round.
func TestRaisedYokesAreReadBack(t *testing.T) {
	r := readPlans{t: t, shown: map[string]int{}}
	for _, g := range usualGauges {
		for chest := 60.0; chest <= 120; chest += 12 {
			for turn := shortrow.TurnMethodWrapAndTurn; turn <= shortrow.TurnMethodGerman; turn++ {
				in := yoke.CircularInput{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, BodyStitches: int(chest*g[0]/10/4) * 4,
					BackRaise: &yoke.BackRaise{Place: yoke.RaisePlaceBeforeBands, TurnMethod: turn}}
				if out, err := yoke.PlanCircularYoke(in); err == nil && out.BackRaise.FirstRoundNumber == 1 {
					r.read(planName("raised yoke", g, int(chest), int(turn)), out.Directions(), stitch.InTheRound)
				}
			}
		}
	}
	r.done(40)
}

// Raglans: with round necks and low fronts, any round or every second, lines of none to five stitches,
// a depth by default or so shallow that the round that joins decreases, and the nearest rounds of all.
func TestRaglansAreReadBack(t *testing.T) {
	r := readPlans{t: t, shown: map[string]int{}}
	for _, g := range usualGauges {
		for chest := 60; chest <= 120; chest += knittest.Sweep(10, 30) {
			in := yoke.RaglanInput{Gauge: &gauge.Gauge{Stitches: g[0], Rows: g[1]}, BodyStitches: chest * int(g[0]) / 10}
			for choice := yoke.RoundChoiceAny; choice <= yoke.RoundChoiceEverySecond; choice++ {
				for line := range 6 {
					in.RoundChoice, in.LineStitches = choice, &line
					r.raglan(in, planName("raglan", g, chest, int(choice), line))
				}
			}
		}
	}
	r.done(knittest.Sweep(2000, 500))
}

// raglan reads a raglan, and others like it.
func (r *readPlans) raglan(in yoke.RaglanInput, at string) {
	r.t.Helper()
	round, err := yoke.PlanRaglan(in)
	if err != nil {
		return
	}
	ask := func(in yoke.RaglanInput, what string) {
		if out, err := yoke.PlanRaglan(in); err == nil {
			r.read(at+what, out.Directions(), stitch.InTheRound)
		}
	}
	ask(in, "")
	for _, low := range []int{4, 6, 12} {
		lower := in
		lower.FrontNeckStitches, lower.BackNeckStitches = new(round.Front.EndStitches-low), new(round.Back.EndStitches)
		ask(lower, " low")
		lower.SleeveTopStitches = new(round.Sleeve.EndStitches + low)
		ask(lower, " low, wide sleeves")
		lower.ToleranceStitches = new(0.0)
		ask(lower, " low, nearest")
	}
	in.DepthRounds = new(max(round.Back.DecreaseRounds, round.Sleeve.DecreaseRounds))
	ask(in, " shallow")
}
