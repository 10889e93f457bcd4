package handspun

import (
	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/yarn"
)

var _ report.Answer = Plan{}

// Summary says the answer in words.
func (o Plan) Summary() string {
	kind := "A single"
	if o.count > 1 {
		kind = "A "
		if o.count == 8 || o.count == 11 || o.count == 18 {
			kind = "An "
		}
		kind += measure.Decimal(float64(o.count), 0) + "-ply"
	}
	s := kind + " of " + o.thickness(o.MetresPer100G) + " (R " + measure.Decimal(o.Tex, 0) + " tex), "
	if o.count > 1 {
		s += "plied " + o.Twist.Direction.String() + " with " + o.turns(o.Twist) + "."
	} else {
		s += "spun " + o.Twist.Direction.String() + " with " + o.turns(o.Twist) + "."
	}
	if o.Fits != FitUnspecified {
		fits := o.fitWords()
		s += " It " + fits + "."
	}
	if o.FibreG != nil {
		s += " For " + yarn.LengthWords(o.unit, *o.YarnM) + ", " + yarn.MassWords(o.unit, *o.YarnG) + ", begin with " +
			yarn.MassWords(o.unit, o.FibreG.Likely) + " of fibre (" + yarn.MassWords(o.unit, o.FibreG.Low) + " to " +
			yarn.MassWords(o.unit, o.FibreG.High) + ")."
	}
	return s
}

// thickness writes metres to 100 g, or from one figure to another, in the unit of the words.
func (o Plan) thickness(metres ...float64) string {
	s := ""
	for i, m := range metres {
		if i > 0 {
			s += " to "
		}
		if o.unit == measure.DisplayUnitIn {
			m *= yarn.TexYards / 1e5
		}
		s += measure.Decimal(m, 0)
	}
	if o.unit == measure.DisplayUnitIn {
		return s + " yd to the pound"
	}
	return s + " m to 100 g"
}

// turns writes a twist.
func (o Plan) turns(t yarn.Twist) string {
	if o.unit == measure.DisplayUnitIn {
		return measure.Decimal(t.PerInch, 1) + " turns to the inch"
	}
	return measure.Decimal(t.PerCm, 1) + " turns to the cm"
}

// fitWords says whether it fits, as of "it".
func (o Plan) fitWords() string {
	usual := "is usually knit at " + yarn.GaugeWords(o.unit, o.GaugeStitches.Low, o.GaugeStitches.High)
	wanted := o.thickness(o.FittingMetresPer100G.Low, o.FittingMetresPer100G.High)
	switch o.Fits {
	case FitFits:
		return "fits the pattern's gauge: it " + usual
	case FitNearly:
		return "may do for the pattern's gauge: it " + usual + "; swatch it, or spin " + wanted
	case FitTooThick:
		return "is too thick for the pattern's gauge: it " + usual + "; spin " + wanted
	}
	return "is too thin for the pattern's gauge: it " + usual + "; spin " + wanted
}

// Directions say how to spin it.
func (o Plan) Directions() []string {
	d := []string{"Spin, wash and dry a sample first, and measure it as the samples say."}
	if o.count > 1 {
		d[0] = "Spin, ply, wash and dry a sample first, and measure it as the samples say."
	}
	for i, p := range o.Plies {
		s := "Spin " + o.nameOf(i) + " " + p.Twist.Direction.String() + ", " + o.turns(p.Twist)
		if p.TreadlesPerDraft != nil {
			s += ": " + treadles(*p.TreadlesPerDraft) + " for each draft"
		}
		if p.LengthM != nil {
			s += "; " + yarn.LengthWords(o.unit, *p.LengthM) + " in all, on " + report.CountOf(*p.BobbinCount, "bobbins")
		}
		d = append(d, s+".")
	}
	if o.count > 1 {
		s := "Let the singles rest, then ply them " + o.Twist.Direction.String() + ", " + o.turns(o.Twist)
		if o.TreadlesPerDraft != nil {
			s += ": " + treadles(*o.TreadlesPerDraft) + " for each draft"
		}
		d = append(d, s+". "+o.loopWords())
	}
	return append(d, "By spindle: draw out a fixed length, count the turns that its twist needs, and feel for the same bounce every time; "+
		"a card with the wraps of the sample keeps the thickness.")
}

// nameOf names the singles of one kind: which they are only where there are others.
func (o Plan) nameOf(i int) string {
	p := o.Plies[i]
	name := p.Name
	switch {
	case name != "":
	case len(o.Plies) > 1:
		name = "the " + report.Ordinal(i+1) + " single"
	case p.Times > 1:
		name = "the singles"
	default:
		name = "the single"
	}
	if p.Times > 1 {
		name += " (" + report.CountOf(p.Times, "plies") + ")"
	}
	return name
}

func treadles(n float64) string { return report.AmountOf(measure.Decimal(n, 1), "treadles") }

// cautions are the trade's short ones.
func (o Plan) cautions() []string {
	c := []string{
		"Fibre and dust: card and pick in fresh air, with a mask if you are sensitive; local rules on dust at work come first.",
		"A turning wheel and flyer: keep hair, sleeves and children's fingers away, and stop it before you reach in.",
	}
	if o.asbestos {
		c = append(c, "Old yarn that was counted in this system may be asbestos, and glass fibre hurts skin and lungs: "+
			"do not spin, ply, cut or burn "+
			"what is not known, and follow your local rules for having it looked at.")
	}
	if o.raw {
		c = append(
			c,
			"Raw fleece carries dirt and germs, some dangerous: gloves, clean hands, no food beside it; mind hot water, and "+
				"where it may be poured away by local rules.",
		)
	}
	return append(
		c,
		"If you dye: mordants and dyes are chemicals with their own data sheets; keep their pots apart from the kitchen's, "+
			"and follow local rules for use and waste.",
	)
}

// Sources say where the figures come from.
func (o Plan) Sources() []report.Source {
	sources := []report.Source{countCited, o.spun.DiameterCited(yarn.SpinningWoollen, "most who spin for knitting do so"),
		yarn.ExpectedWrapsCited, yarn.TwistCited}
	if o.angled {
		sources = append(sources, angleCited)
	}
	if o.count > 1 {
		sources = append(sources, balanceCited, contractionCited)
	}
	sources = append(sources, yarn.UsualGaugeCited)
	if o.losses {
		sources = append(sources, lossesCited)
	}
	return sources
}

var countCited = report.Source{Figure: "count of the yarn", Status: report.SourceStatusPublished,
	Citation: "tex of the plies together, over what contraction leaves: tex system, ISO 1144"}
