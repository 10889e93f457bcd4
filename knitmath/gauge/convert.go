package gauge

import (
	"math/big"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// The most there may be in one conversion.
const (
	// MaxItems is the most pattern counts. More can be asked for in parts, since
	// no count depends on another.
	MaxItems = 350
	// MaxPrintedSizes is the most printed sizes.
	MaxPrintedSizes = 100
)

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
	DisplayUnit   measure.DisplayUnit
}

// A ConvertedCount is one count refitted.
type ConvertedCount struct {
	Name        string
	Kind        CountKind
	Printed     int
	Fitted      FittedCount
	AsWrittenCm float64
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
	FollowSizeNumber    *int
	Notices             []report.Notice

	unit measure.DisplayUnit
}

// convertedCited is the source of a refitted count.
var convertedCited = report.Source{Figure: "new counts", Status: report.SourceStatusOwnDerivation,
	Citation: "printed count * own gauge / pattern gauge, one exact fraction of whole numbers, rounded as the rule says"}

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
	var c fault.Checks
	patternSt, patternRw := Vet(&c, "pattern_gauge", in.PatternGauge)
	ownSt, ownRw := Vet(&c, "own_gauge", in.OwnGauge)
	width, length := Change(patternSt, ownSt), Change(patternRw, ownRw)
	known := c.Sound("pattern_gauge", "own_gauge")
	out := Conversion{unit: in.DisplayUnit}
	c.Items("", "items", len(in.Items), MaxItems)
	if c.Sound("items") {
		out.Items = make([]ConvertedCount, len(in.Items))
		for i, item := range in.Items {
			g := width
			if item.Kind == CountKindRows {
				g = length
			}
			out.Items[i] = vetConverted(&c, fault.Index("items", i), item, g, known)
		}
	}
	vetSizes(&c, "sizes", in.Sizes)
	c.OptionalNumber("", "wanted_width_cm", in.WantedWidthCm, measure.MinCm, measure.MaxCm)
	fault.Enum(&c, "", "display_unit", in.DisplayUnit, measure.DisplayUnitIn)
	c.Needs(len(in.Sizes) > 0, "sizes", in.WantedWidthCm != nil, "wanted_width_cm")
	c.Needs(in.WantedWidthCm != nil, "wanted_width_cm", len(in.Sizes) > 0, "sizes")
	if err := c.Err(); err != nil {
		return Conversion{}, err
	}
	out.WidthChangePercent, out.LengthChangePercent = width.changePercent(), length.changePercent()
	for i, item := range out.Items {
		if item.Fitted.Halfway {
			out.Notices = append(out.Notices, HalfwayNotice(fault.Join(fault.Index("items", i), "count"), item.Fitted.Count))
		}
	}
	if in.WantedWidthCm != nil {
		out.follow(in, width, length)
	}
	return out, nil
}

// vetSizes checks the printed sizes.
func vetSizes(c *fault.Checks, field string, sizes []PrintedSize) {
	c.Items("", field, len(sizes), MaxPrintedSizes)
	if !c.Sound(field) {
		return
	}
	for i, s := range sizes {
		path := fault.Index(field, i)
		c.Text(path, "name", s.Name)
		c.RequiredNumber(path, "width_cm", s.WidthCm, measure.MinCm, measure.MaxCm)
		c.OptionalNumber(path, "height_cm", s.HeightCm, measure.MinCm, measure.MaxCm)
	}
}

// vetConverted checks one item and, at gauges that are known, refits it.
func vetConverted(c *fault.Checks, path string, item PatternCount, g Regauge, known bool) ConvertedCount {
	c.Text(path, "name", item.Name)
	fault.RequiredEnum(c, path, "kind", item.Kind, CountKindRows)
	c.RequiredCount(path, "count", item.Count, 1, stitch.MaxStitches)
	r := VetRule(c, fault.Join(path, "rule"), item.Rule)
	if !known || !c.Sound(path) {
		return ConvertedCount{}
	}
	noun := "stitches"
	if item.Kind == CountKindRows {
		noun = "rows"
	}
	fields := []string{"own_gauge", fault.Join(path, "count")}
	if item.Rule != nil {
		fields = append(fields, fault.Join(path, "rule"))
	}
	f := g.VetFit(c, item.Count, r, noun, fields...)
	if f == nil {
		return ConvertedCount{}
	}
	return ConvertedCount{
		Name: item.Name, Kind: item.Kind, Printed: item.Count,
		Fitted: *f, AsWrittenCm: g.own.SizeCm(item.Count),
	}
}

// followCited is the source of the size to follow.
var followCited = report.Source{Figure: "size to follow", Status: report.SourceStatusOwnDerivation,
	Citation: "printed width * pattern gauge / own gauge, nearest to the wanted width; of two equally near, the wider"}

// follow works out every printed size at the knitter's gauge and chooses the one
// whose width is nearest to the wanted, of two equally near the wider, of two of
// one width the first. The comparison is exact. Every other size that is as near
// gets a notice.
func (o *Conversion) follow(in ConversionInput, width, length Regauge) {
	wanted := measure.Micrometres(*in.WantedWidthCm)
	printed, distances := make([]int64, len(in.Sizes)), make([]*big.Int, len(in.Sizes))
	chosen := 0
	for i, s := range in.Sizes {
		um := measure.Micrometres(s.WidthCm)
		out := SizeOutcome{Name: s.Name, WidthCm: width.outcomeCm(um), DifferenceCm: width.outcomeDifferenceCm(um, wanted)}
		if s.HeightCm != nil {
			h := length.outcomeCm(measure.Micrometres(*s.HeightCm))
			out.HeightCm = &h
		}
		o.Sizes = append(o.Sizes, out)

		printed[i], distances[i] = um, width.distance(um, wanted)
		if order := distances[i].CmpAbs(distances[chosen]); order < 0 || order == 0 && um > printed[chosen] {
			chosen = i
		}
	}
	o.FollowSizeNumber = new(chosen + 1)
	for i, distance := range distances {
		if i == chosen || distance.CmpAbs(distances[chosen]) != 0 {
			continue
		}
		why := ", the wider, which was chosen"
		if printed[i] == printed[chosen] {
			why = ", the first of the same width, which was chosen"
		}
		o.Notices = append(o.Notices, report.Notice{Reason: EquallyNear, Field: fault.Index("sizes", i),
			Description: "is exactly as near to wanted_width_cm as " + fault.Index("sizes", chosen) + why})
	}
}
