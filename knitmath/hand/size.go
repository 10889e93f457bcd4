package hand

import (
	"strconv"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

// Ranges of a hand.
const (
	MinHandStitches = 16
	// MaxHandStitches is three times those of the largest hand at the finest gauge.
	MaxHandStitches = 600
	MinHandCm       = 5 // a doll's
	MaxHandCm       = 60
	MinHandEase     = -30.0
	MaxHandEase     = 60.0
	// DefaultHandEase is 0 to half an inch round a palm of 7 or 8, from memory.
	DefaultHandEase = 3.0
	MaxHandRounds   = 1_000
	// smallHandCm is above the hands of three-year-olds, by a list of uncertain worth.
	smallHandCm = 14.5
)

// size is how wide the mitten is: its stitches, or the hand at the gauge.
type size struct {
	gauge        *gauge.Gauge
	handStitches *int
	handCm       *float64
	handSize     Size
	easePercent  *float64
	stitchRule   *gauge.CountRule
}

// mitten is a settled size.
type mitten struct {
	st, rw   gauge.Density
	rule     gauge.Rule
	stitches int
	field    string
	given    bool // in the question
	notices  []report.Notice
	sources  []report.Source

	section, more int // of a round top
}

// vetSize checks the fields of a size.
func (m *mitten) vetSize(c *fault.Checks, in size) {
	m.st, m.rw = gauge.Vet(c, "gauge", in.gauge)
	c.OptionalCount("", "hand_stitches", in.handStitches, MinHandStitches, MaxHandStitches)
	c.OptionalNumber("", "hand_cm", in.handCm, MinHandCm, MaxHandCm)
	fault.Enum(c, "", "hand_size", in.handSize, SizeMan)
	in.vetGiven(c)
	c.OptionalNumber("", "ease_percent", in.easePercent, MinHandEase, MaxHandEase)
	measured := in.handStitches == nil
	c.Needs(in.easePercent != nil, "ease_percent", measured, "a hand instead of hand_stitches")
	m.rule = gauge.VetRule(c, "stitch_rule", in.stitchRule)
	c.Needs(in.stitchRule != nil, "stitch_rule", measured, "a hand instead of hand_stitches")
}

// settleSize works the stitches out. Without a rule they are a multiple of 4, on which ribs
// and both sides come out.
func (m *mitten) settleSize(c *fault.Checks, in size) {
	if in.handStitches != nil {
		m.field, m.given, m.stitches = "hand_stitches", true, *in.handStitches
		m.careful(m.st.SizeCm(m.stitches) / (1 + DefaultHandEase/100))
		return
	}
	cm := fault.Or(in.handCm, 0)
	if m.field = "hand_cm"; in.handCm == nil {
		var source report.Source
		m.field = "hand_size"
		cm, source = in.handSize.cm()
		m.sources = append(m.sources, source)
	}
	fields := []string{"gauge"}
	if in.handCm != nil || in.handSize != SizeUnspecified {
		m.given, fields = true, []string{m.field, "gauge"}
	}
	rule := m.rule
	if in.stitchRule == nil {
		rule = gauge.VetRule(c, "stitch_rule", &gauge.CountRule{Multiple: new(4)})
	} else {
		fields = append(fields, "stitch_rule")
	}
	if in.easePercent == nil {
		m.sources = append(m.sources, easeCited)
	}
	f := m.st.VetFit(c, measure.Micrometres(cm*(1+fault.Or(in.easePercent, DefaultHandEase)/100)), rule, "stitches", fields...)
	if f == nil {
		return
	}
	if f.Halfway {
		m.notices = append(m.notices, gauge.HalfwayNotice(m.field, f.Count))
	}
	if m.stitches = f.Count; m.stitches < MinHandStitches || m.stitches > MaxHandStitches {
		c.Infeasible("the mitten has "+report.CountOf(m.stitches, "stitches")+" at this gauge; it must have from "+
			strconv.Itoa(MinHandStitches)+" to "+strconv.Itoa(MaxHandStitches), fields...)
	}
	m.careful(cm)
}

// careful minds small hands.
func (m *mitten) careful(handCm float64) {
	if handCm < smallHandCm {
		m.notices = append(m.notices, report.Notice{Reason: BabyCare, Field: m.field,
			Description: "in mittens for babies and small children leave no loops, floats or long ends inside, which wind round fingers, and no " +
				"cords or small parts; follow the advice of the local health service, and where they are sold the rules of the place"})
	}
}

// rounds is a length as rounds: given so, in cm, or a default in cm.
func (m *mitten) rounds(c *fault.Checks, count *int, cm *float64, standard float64, noun, countField, cmField string) int {
	field, n := m.field, 0
	switch {
	case count != nil:
		field, n = countField, *count
	case cm != nil:
		field, n = cmField, m.rw.Nearest(measure.Micrometres(*cm))
	default:
		n = m.rw.Nearest(measure.Micrometres(standard))
	}
	if n < 1 || n > MaxHandRounds {
		c.Infeasible("the "+noun+" has "+report.CountOf(n, "rounds")+" at this gauge; it must have from 1 to "+strconv.Itoa(MaxHandRounds),
			field, "gauge")
	}
	return n
}
