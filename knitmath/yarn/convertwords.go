package yarn

import (
	"strconv"

	"example.com/knitmath/knitmath/measure"
	"example.com/knitmath/knitmath/report"
)

var _ report.Answer = Conversion{}

// Summary says the yarn in the system it was asked in, in tex and by its length.
func (o Conversion) Summary() string {
	if o.yarn.Tex.IsZero() {
		return ""
	}
	tex := o.yarn.notation(CountSystemTex, o.Tex, o.SingleTex)
	switch said := o.yarn.In(o.System) + " is "; {
	case o.System == CountSystemMetresPer100G && o.unit != measure.DisplayUnitIn,
		o.System == CountSystemYardsPerPound && o.unit == measure.DisplayUnitIn:
		return said + tex + "."
	case o.System == CountSystemTex && o.Plies == 1:
		return said + o.bandWords() + "."
	case o.Plies == 1:
		return said + tex + ", " + o.bandWords() + "."
	}
	return strconv.Itoa(o.Plies) + " plies of " + spelled(o.System, significant(o.yarn.Single.number(o.System))) + " are " + tex +
		", " + o.bandWords() + "."
}

// bandWords are what a band would say.
func (o Conversion) bandWords() string {
	if o.unit == measure.DisplayUnitIn {
		return o.yarn.Tex.length().bandWords(o.unit)
	}
	return significant(o.MetresPer100G) + " m/100 g"
}

// bandWords are metres to 100 g or yards to the pound.
func (l length) bandWords(u measure.DisplayUnit) string {
	if u == measure.DisplayUnitIn {
		return significant(l.yardsPerPound) + " yd/lb"
	}
	return significant(l.metresPer100G) + " m/100 g"
}

// Directions are empty: there is nothing to work.
func (Conversion) Directions() []string { return nil }

// Sources says where the systems of the answer come from, each once.
func (o Conversion) Sources() []report.Source {
	sources := append(make([]report.Source, 0, 4+len(o.Counts)), exactCited)
	var seen [lastSystem + 1]bool
	add := func(s CountSystem) {
		if s.known() && !seen[s] {
			seen[s] = true
			sources = append(sources, countSources[s])
		}
	}
	add(o.System)
	for _, c := range o.Counts {
		add(c.System)
	}
	if o.Plies > 1 {
		sources = append(sources, pliedCited, ordersCited, writtenCited)
	}
	return sources
}
