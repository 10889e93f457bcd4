package yardage

import (
	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// EdgeKind is a way to begin, end or join edges.
type EdgeKind int32

// The kinds of edges.
const (
	EdgeKindUnspecified EdgeKind = iota
	EdgeKindLongTailCastOn
	EdgeKindBindOff
	EdgeKindGrafting
	EdgeKindPickUp
	EdgeKindSeam
	EdgeKindHem
)

// edgeFactors is the yarn of an edge beside its length, by EdgeKind. What is worked as a
// row of loops takes kw times its width, 4.0 to 4.4 and likely 4.2 as in loopConstants:
// own derivation. The others are common practice, without an author.
var edgeFactors = [...]Range{
	EdgeKindUnspecified:    {},
	EdgeKindLongTailCastOn: {3, 3.5, 4},
	EdgeKindBindOff:        {3, 4, 5},
	EdgeKindGrafting:       {3, 4.2, 4.4},
	EdgeKindPickUp:         {4, 4.2, 4.4},
	EdgeKindSeam:           {1.5, 2, 2.5},
	EdgeKindHem:            {1.5, 2, 3},
}

var (
	edgesCited = report.Source{Figure: "edges", Status: report.SourceStatusCommonPractice,
		Citation: "yarn beside the length of the edge: tail of a cast-on 3 to 4 and 15 cm for its end, bind-off 3 to 5, " +
			"seam 1.5 to 2.5, hem 1.5 to 3; grafting and picking up are a row of loops, 4.2 (own derivation)"}
	fringeCited = report.Source{Figure: "fringe", Status: report.SourceStatusOwnDerivation,
		Citation: "tassels * strands * (2 * length + knot)"}
	pompomCited = report.Source{Figure: "pompoms", Status: report.SourceStatusOwnDerivation,
		Citation: "windings * 2 * diameter, around a card as wide as the pompom"}
)

// An EdgeWork is the yarn of an edge, which the pieces do not have. Exactly one of
// Stitches and LengthCm must be given.
type EdgeWork struct {
	Name     string
	Kind     EdgeKind
	Stitches *int
	LengthCm *float64
	Times    *int
}

// A Fringe is strands folded in two and knotted in.
type Fringe struct {
	Tassels    int
	Strands    *int
	FinishedCm float64
	KnotCm     *float64
}

// Pompoms are wound around a card.
type Pompoms struct {
	Times      *int
	DiameterCm float64
	Windings   int
}

// EdgeYarn is the yarn of one edge, all its copies together, reserve not included.
type EdgeYarn struct {
	Name     string
	LengthCm float64
	LengthM  Range
	TailCm   *float64
}

// Ranges of edges and trimmings.
const (
	MaxEdges      = 50
	MaxEdgeCm     = 10_000.0
	MaxTassels    = 10_000
	MaxStrands    = 100
	MaxKnotCm     = 100.0
	MaxPompoms    = 1_000
	MaxDiameterCm = 100.0
	MaxWindings   = 10_000
	// DefaultKnotCm is what the knot of a fringe takes and is trimmed off. Common
	// practice.
	DefaultKnotCm = 3.0
	// tailEndCm is what is left of a tail to weave in. Common practice.
	tailEndCm = 15.0
)

// vetTrimmings checks edges, fringe and pompoms.
func vetTrimmings(c *fault.Checks, in EstimateInput) {
	c.Items("", "edges", len(in.Edges), MaxEdges)
	if c.Sound("edges") {
		for i, e := range in.Edges {
			path := fault.Index("edges", i)
			c.Text(path, "name", e.Name)
			fault.RequiredEnum(c, path, "kind", e.Kind, EdgeKindHem)
			c.OneOf(e.Stitches != nil, e.LengthCm != nil, fault.Join(path, "stitches"), fault.Join(path, "length_cm"))
			c.OptionalCount(path, "stitches", e.Stitches, 1, stitch.MaxStitches)
			c.OptionalNumber(path, "length_cm", e.LengthCm, measure.MinCm, MaxEdgeCm)
			c.OptionalCount(path, "times", e.Times, 1, MaxQuantity)
		}
	}
	if f := in.Fringe; f != nil {
		c.RequiredCount("fringe", "tassels", f.Tassels, 1, MaxTassels)
		c.OptionalCount("fringe", "strands", f.Strands, 1, MaxStrands)
		c.RequiredNumber("fringe", "finished_cm", f.FinishedCm, measure.MinCm, measure.MaxCm)
		c.OptionalNumber("fringe", "knot_cm", f.KnotCm, 0, MaxKnotCm)
	}
	if p := in.Pompoms; p != nil {
		c.OptionalCount("pompoms", "times", p.Times, 1, MaxPompoms)
		c.RequiredNumber("pompoms", "diameter_cm", p.DiameterCm, measure.MinCm, MaxDiameterCm)
		c.RequiredCount("pompoms", "windings", p.Windings, 1, MaxWindings)
	}
}

// edge works out one edge at the stitches of a gauge.
func (e EdgeWork) edge(stitches gauge.Density) EdgeYarn {
	cm := 0.0
	if e.LengthCm != nil {
		cm = *e.LengthCm
	} else {
		cm = float64(*e.Stitches) / stitches.PerCm()
	}
	factor := edgeFactors[e.Kind]
	out := EdgeYarn{Name: e.Name, LengthCm: cm, LengthM: factor.times(cm / 100 * float64(fault.Or(e.Times, 1)))}
	if e.Kind == EdgeKindLongTailCastOn {
		tail := cm*factor.High + tailEndCm
		out.TailCm = &tail
	}
	return out
}

func (f *Fringe) metres() float64 {
	return float64(f.Tassels) * float64(fault.Or(f.Strands, 1)) * (2*f.FinishedCm + fault.Or(f.KnotCm, DefaultKnotCm)) / 100
}

func (p *Pompoms) metres() float64 {
	return float64(fault.Or(p.Times, 1)) * float64(p.Windings) * 2 * p.DiameterCm / 100
}

// trim works out edges, fringe and pompoms.
func (q *question) trim(out *Estimate) {
	var all Range
	for _, e := range q.in.Edges {
		edge := e.edge(q.st)
		all = all.plus(edge.LengthM)
		out.Edges = append(out.Edges, edge)
	}
	exact := 0.0
	if q.in.Fringe != nil {
		exact += q.in.Fringe.metres()
	}
	if q.in.Pompoms != nil {
		exact += q.in.Pompoms.metres()
	}
	all = all.plus(Range{exact, exact, exact})
	if all.High > 0 {
		out.TrimmingsM = &all
	}
	out.fringe, out.pompoms, q.trimmings = q.in.Fringe != nil, q.in.Pompoms != nil, all
}

// plus is the sum of two ranges, which may both be at their worst at once.
func (r Range) plus(s Range) Range { return Range{r.Low + s.Low, r.Likely + s.Likely, r.High + s.High} }
