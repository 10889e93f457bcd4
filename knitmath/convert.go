package knitmath

import "math/big"

// CountKind says what an item of a pattern counts.
type CountKind int32

// The kinds of count.
const (
	CountKindUnspecified CountKind = iota // refused
	CountKindStitches
	CountKindRows
)

// A PatternCount is one count printed in a pattern.
type PatternCount struct {
	Name  string
	Kind  CountKind
	Count int
	Rule  *CountRule
}

// A PrintedSize is one size that a pattern prints.
type PrintedSize struct {
	Name     string
	WidthCm  float64
	HeightCm *float64
}

// ConversionInput asks for a pattern refitted to another gauge. It mirrors
// ConvertGaugeRequest.
type ConversionInput struct {
	PatternGauge  *Gauge
	OwnGauge      *Gauge
	Items         []PatternCount
	Sizes         []PrintedSize
	WantedWidthCm *float64
	DisplayUnit   DisplayUnit
}

// A ConvertedCount is one count refitted.
type ConvertedCount struct {
	Name         string
	Kind         CountKind
	PrintedCount int
	Fitted       FittedCount
	AsWrittenCm  float64
}

// A SizeOutcome is one printed size as it comes out at the knitter's gauge.
type SizeOutcome struct {
	Name         string
	WidthCm      float64
	DifferenceCm float64
	HeightCm     *float64
}

// A Conversion is the answer to ConversionInput.
type Conversion struct {
	Items               []ConvertedCount
	WidthChangePercent  float64
	LengthChangePercent float64
	Sizes               []SizeOutcome
	FollowIndex         *int
	Notices             []Notice

	unit DisplayUnit
}

// ConvertGauge refits a pattern to the knitter's gauge,
//
//	new count = printed count * own gauge / pattern gauge
//
// rounded to the nearest count the item's rule allows, exactly half-way up. The
// size a count meant is never rounded on the way: the new count is one rational
// number of integers. Printed counts must be in [1, 10000], widths and heights in
// [0.1, 1000].
//
// Source: own derivation; the size meant is printed count / pattern gauge, by the
// definition of gauge.
func ConvertGauge(in ConversionInput) (Conversion, error) {
	var c checks
	patternSt, patternRw, okPattern := c.gauge("pattern_gauge", in.PatternGauge)
	ownSt, ownRw, okOwn := c.gauge("own_gauge", in.OwnGauge)
	width, length := regauge{patternSt, ownSt}, regauge{patternRw, ownRw}
	out := Conversion{unit: in.DisplayUnit}
	if c.items("", "items", len(in.Items), MaxItems) {
		out.Items = make([]ConvertedCount, len(in.Items))
		for i, item := range in.Items {
			g := width
			if item.Kind == CountKindRows {
				g = length
			}
			out.Items[i] = c.converted(index("items", i), item, g, okPattern && okOwn)
		}
	}
	if c.items("", "sizes", len(in.Sizes), MaxSizes) {
		for i, s := range in.Sizes {
			path := index("sizes", i)
			c.text(path, "name", s.Name)
			c.requiredNumber(path, "width_cm", s.WidthCm, MinCm, MaxCm)
			c.optionalNumber(path, "height_cm", s.HeightCm, MinCm, MaxCm)
		}
	}
	c.optionalNumber("", "wanted_width_cm", in.WantedWidthCm, MinCm, MaxCm)
	enum(&c, "", "display_unit", in.DisplayUnit, DisplayUnitIn)
	if len(in.Sizes) > 0 && in.WantedWidthCm == nil {
		c.add("sizes", ReasonContradictory, "needs wanted_width_cm")
	}
	if len(in.Sizes) == 0 && in.WantedWidthCm != nil {
		c.add("wanted_width_cm", ReasonContradictory, "needs sizes")
	}
	if err := c.err(); err != nil {
		return Conversion{}, err
	}
	out.WidthChangePercent, out.LengthChangePercent = width.changePercent(), length.changePercent()
	for i, item := range out.Items {
		if item.Fitted.Halfway {
			out.Notices = append(out.Notices, halfwayNotice(join(index("items", i), "count"), item.Fitted.Count))
		}
	}
	if in.WantedWidthCm != nil {
		out.follow(in, width, length)
	}
	return out, nil
}

// converted checks one item and refits it.
func (c *checks) converted(path string, item PatternCount, g regauge, okGauges bool) ConvertedCount {
	ok := c.text(path, "name", item.Name)
	ok = requiredEnum(c, path, "kind", item.Kind, CountKindRows) && ok
	ok = c.requiredCount(path, "count", item.Count, 1, MaxStitches) && ok
	r, okRule := c.rule(join(path, "rule"), item.Rule)
	if !ok || !okRule || !okGauges {
		return ConvertedCount{}
	}
	noun := "stitches"
	if item.Kind == CountKindRows {
		noun = "rows"
	}
	out := ConvertedCount{
		Name: item.Name, Kind: item.Kind, PrintedCount: item.Count,
		AsWrittenCm: g.own.sizeCm(item.Count),
	}
	q := g.convert(item.Count)
	if out.Fitted, ok = g.fit(item.Count, r); !ok {
		fields := []string{"own_gauge", join(path, "count")}
		if item.Rule != nil {
			fields = append(fields, join(path, "rule"))
		}
		c.misfit(q, r, noun, fields...)
	}
	return out
}

// follow works out every printed size at the knitter's gauge and chooses the one
// whose width is nearest to the wanted, of two equally near the wider. The
// comparison is exact.
func (o *Conversion) follow(in ConversionInput, width, length regauge) {
	wanted := micrometres(*in.WantedWidthCm)
	var best *big.Int
	follow, tied := 0, -1
	for i, s := range in.Sizes {
		um := micrometres(s.WidthCm)
		out := SizeOutcome{Name: s.Name, WidthCm: width.outcomeCm(um), DifferenceCm: width.outcomeDifferenceCm(um, wanted)}
		if s.HeightCm != nil {
			h := length.outcomeCm(micrometres(*s.HeightCm))
			out.HeightCm = &h
		}
		o.Sizes = append(o.Sizes, out)

		distance := width.distance(um, wanted)
		order := -1
		if best != nil {
			order = distance.CmpAbs(best)
		}
		wider := um > micrometres(in.Sizes[follow].WidthCm)
		switch {
		case order < 0:
			best, follow, tied = distance, i, -1
		case order == 0 && wider:
			follow, tied = i, follow
		case order == 0 && um < micrometres(in.Sizes[follow].WidthCm):
			tied = i
		}
	}
	o.FollowIndex = &follow
	if tied >= 0 {
		o.Notices = append(o.Notices, Notice{"EQUALLY_NEAR", index("sizes", tied),
			"is exactly as near to wanted_width_cm as " + index("sizes", follow) + ", the wider, which was chosen"})
	}
}
