package handspun

import (
	"math"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yardage"
	"example.com/knitmath/knitmath/yarn"
)

// work answers a checked question, or says why it has no answer.
func (q *spinning) work(c *fault.Checks) Plan {
	in := q.in
	out := Plan{
		unit: in.DisplayUnit, count: q.count, spun: q.in.Spinning, plyAsked: in.PlyTwistPerCm != nil || in.PlyTreadlesPerDraft != nil,
		asbestos: q.asbestos,
		raw:      in.Losses != nil && in.Losses.ScouringPercent > 0,
	}
	turns := q.singles(c, &out)
	if c.Err() != nil {
		return out
	}
	perCm := q.ply(c, &out, math.Abs(turns))
	q.contract(c, perCm)
	if c.Err() != nil {
		return out
	}
	tex := q.together().Contracted(q.contraction).Float()
	d := q.spun().DiameterCm(tex)
	if q.count > 1 {
		field := q.plyField()
		if field == "" {
			field = "plies"
		}
		yarn.VetTurns(c, field, perCm, d)
		if c.Err() != nil {
			return out
		}
	}
	out.Tex, out.MetresPer100G, out.YardsPerPound, out.DiameterMm = tex, 1e5/tex, yarn.TexYards/tex, 10*d
	wraps := math.Sqrt(out.YardsPerPound) / measure.CmPerInch
	out.WrapsPerCm = yardage.Range{Low: wraps * yarn.LowWraps, Likely: wraps * yarn.LikelyWraps, High: wraps * yarn.HighWraps}
	q.twist(&out, turns, perCm, d)
	out.GaugeStitches = usualGauge(tex)
	if !q.st.IsZero() {
		f := fitting(q.st.PerCm())
		out.FittingMetresPer100G, out.Fits = &f, fit(out.GaugeStitches, 10*q.st.PerCm())
	}
	q.amount(&out)
	q.wheel(&out)
	out.Samples, out.Cautions = out.samples(), out.cautions()
	if in.WithOutline {
		out.Outline = yarn.Helix(d, out.Twist)
	}
	q.remark(&out)
	return out
}

// spun is how the fibre is spun: woollen, as most do who spin for knitting, unless said.
func (q *spinning) spun() yarn.Spinning { return q.in.Spinning.Or(yarn.SpinningWoollen) }

// singles works out each ply and gives all their turns to the cm together, those spun S
// counting below 0.
func (q *spinning) singles(c *fault.Checks, out *Plan) (turns float64) {
	for i, p := range q.in.Plies {
		tex := q.tex[i].Float()
		d := q.spun().DiameterCm(tex)
		perCm := yarn.TurnsFor(fault.Or(q.in.TwistAngleDegrees, softAngleOf(q.count)), d)
		switch {
		case p.TwistPerCm != nil:
			perCm = *p.TwistPerCm
			yarn.VetTurns(c, fault.Join(fault.Index("plies", i), "twist_per_cm"), perCm, d)
		case p.TreadlesPerDraft != nil:
			perCm = *p.TreadlesPerDraft * q.in.Wheel.perTreadle()
			yarn.VetTurns(c, fault.Join(fault.Index("plies", i), "treadles_per_draft"), perCm, d)
		default:
			out.angled = true
		}
		direction, times := p.Direction, fault.Or(p.Times, 1)
		if direction == yarn.TwistDirectionUnspecified {
			direction = yarn.TwistDirectionZ
		}
		if direction == yarn.TwistDirectionS {
			turns -= float64(times) * perCm
		} else {
			turns += float64(times) * perCm
		}
		out.mixed = out.mixed || i > 0 && direction != out.Plies[0].Twist.Direction
		out.Plies = append(
			out.Plies,
			PliedSingle{Name: p.Name, Times: times, Tex: tex, DiameterMm: 10 * d, Twist: yarn.TwistOf(perCm, tex, d, direction)},
		)
	}
	return turns
}

// ply works out the turns to the cm of the plying, none of a single.
func (q *spinning) ply(c *fault.Checks, out *Plan, turns float64) float64 {
	if q.count == 1 {
		return 0
	}
	balanced := balancedPly(turns, q.count)
	out.BalancedPerCm = &balanced
	asked := q.in.PlyTwistPerCm
	if n := q.in.PlyTreadlesPerDraft; n != nil {
		perCm := *n * q.in.Wheel.perTreadle()
		asked = &perCm
	}
	if balanced.Likely < MinTwist && asked == nil {
		c.Infeasible("leave "+measure.Decimal(balanced.Likely, 3)+" turns to the cm to ply with, which hold nothing "+
			"together; spin them with more twist and the same way, or give ply_twist_per_cm", "plies")
	}
	return fault.Or(asked, balanced.Likely)
}

// twist works out the twist of the yarn, that of the single where it is knit as it is.
func (q *spinning) twist(out *Plan, turns, perCm, diameterCm float64) {
	if q.count == 1 {
		out.Twist = out.Plies[0].Twist
		return
	}
	percent, _ := q.contraction.Float64()
	out.PlyContractionPercent = &percent
	direction := yarn.TwistDirectionS
	if turns < 0 {
		direction = yarn.TwistDirectionZ
	}
	out.Twist = yarn.TwistOf(perCm, out.Tex, diameterCm, direction)
	for i := range out.Plies {
		p := &out.Plies[i]
		left := p.Twist.PerCm - out.Twist.PerCm
		if p.Twist.Direction == direction { // plied the way it was spun
			left = p.Twist.PerCm + out.Twist.PerCm
		}
		p.LeftPerCm = &left
	}
}

// amount works out what is wanted, and the fibre it takes.
func (q *spinning) amount(out *Plan) {
	in := q.in
	var m float64
	switch {
	case in.WantedM != nil:
		m = *in.WantedM
	case in.WantedG != nil:
		m = *in.WantedG / out.Tex * 1000
	default:
		return
	}
	g, bobbin := m*out.Tex/1000, fault.Or(in.BobbinG, DefaultBobbinG)
	if in.WantedG != nil {
		g = *in.WantedG
	}
	bobbins := measure.CeilQuotient(g, bobbin)
	out.YarnM, out.YarnG, out.BobbinCount = &m, &g, &bobbins
	contraction, _ := q.contraction.Float64()
	for i := range out.Plies {
		p := &out.Plies[i]
		length := m / (1 - contraction/100) * float64(p.Times)
		mass := length * p.Tex / 1000
		n := p.Times * measure.CeilQuotient(mass/float64(p.Times), bobbin) // each ply has bobbins of its own
		p.LengthM, p.MassG, p.BobbinCount = &length, &mass, &n
	}
	l := fault.Or(in.Losses, Losses{})
	fibre := func(part float64) float64 {
		kept := 1.0
		for _, percent := range []float64{
			l.ScouringPercent, fault.Or(l.PreparingPercent, DefaultPreparing), fault.Or(l.SpinningPercent, DefaultSpinning)} {
			kept *= 1 - min(part*percent, mostLost)/100
		}
		return g / kept
	}
	out.FibreG = &yardage.Range{Low: fibre(0.5), Likely: fibre(1), High: fibre(1.5)}
	out.losses = true
}

// mostLost bounds half as much loss again: a tenth is always left.
const mostLost = 90.0

// lossesCited is the source of the losses.
var lossesCited = report.Source{Figure: "losses", Status: report.SourceStatusCommonPractice,
	Citation: "raw fleece 20 to 50 % in scouring, carding 10 %, spinning and washing 5 % unless the question says otherwise; " +
		"the range is half of them to half as much again"}
