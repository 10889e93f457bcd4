package advice

import (
	"errors"
	"slices"
	"strconv"
	"strings"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/measure"
)

// A Knob is a field of a question that may be turned to make it feasible: Count or Cm points at it in the
// question that Add asks.
//
// Of is what a Cm that is no length is counted in, What is said before a Count that is a part of its field. Optional says
// that the question may be asked without the field.
type Knob struct {
	Field       string
	Count       **int
	Cm          **float64
	Of, What    string
	Least, Most float64
	Optional    bool

	scale scale
	undo  func() // puts it back to what was asked
}

// A scale is the numbers that are tried: so many parts of a whole, which is so many centimetres.
type scale struct{ parts, cm float64 }

// of is a number of parts, to the last bit as its print is read.
func (s scale) of(place int) float64 { return float64(place) / s.parts * s.cm }

// How a knob is turned: half of the tries go one step further each, the others thrice as far as the one before.
// There are fewTries of all knobs together to a side, fewer of a dear question.
const (
	// MaxSteps is the price of a refused question and all that its refusal asks at most. What was asked is told as
	// Sought, since whoever is refused has had it worked.
	MaxSteps = 75_000

	fewTries  = 16
	dearPrice = 2000
	// A length is offered in so many parts of a centimetre or an inch, or finely where it is no larger than 1 cm: numbers that
	// are printed whole.
	cmParts     = 2
	cmFineParts = 10
	inParts     = 4
	inFineParts = 20
)

// Add adds to each refusal of a field that has a knob what would do there: the nearest values below and
// above, each of which it has asked, or else that the question does without the field. Where none does because
// other fields are refused too, values of all of them that do together are looked for. ask asks the question that
// the knobs turn, cost prices it, and lengths are told in the unit.
func Add(err error, cost func() int, ask func() error, unit measure.DisplayUnit, knobs ...Knob) error {
	return add(err, cost, ask, unit, func(k Knob) bool { return k.What != "" }, knobs)
}

// AddOrMend is Add and says, where nothing does, of each field with which values at least its own fault is gone. It is for
// questions that take little to ask.
func AddOrMend(err error, cost func() int, ask func() error, unit measure.DisplayUnit, knobs ...Knob) error {
	return add(err, cost, ask, unit, func(Knob) bool { return true }, knobs)
}

// add is both; of the knobs that mend is true for what mends their field alone is looked for.
func add(err error, cost func() int, ask func() error, unit measure.DisplayUnit, mend func(Knob) bool, knobs []Knob) error {
	var refused *fault.InputError
	if !errors.As(err, &refused) || slices.ContainsFunc(refused.Violations, otherwise) {
		return err
	}
	turned := turnable(refused, unit, knobs)
	if len(turned) == 0 {
		return err
	}
	price := cost()
	most := max(1, fewTries*dearPrice/max(price, dearPrice))
	tries := max(1, most/len(turned))
	cheap := func() bool { return affords(refused, price, cost()) }
	said := map[string]string{}
	does := func() bool { return cheap() && ask() == nil }
	for _, k := range turned {
		if found := k.near(tries, does); len(found) > 0 {
			k.words(said, found, unit, would)
		} else if k.Optional && k.without(does) {
			said[k.Field] = leftOut
		}
	}
	if len(said) == 0 && (len(turned) < 2 || !together(turned, most, said, cheap, ask, unit)) {
		said = mends(turned, mend, tries, cheap, ask, unit)
	}
	tell(refused, said)
	return refused
}

// turnable are the knobs of fields that are refused.
func turnable(refused *fault.InputError, unit measure.DisplayUnit, knobs []Knob) (turned []Knob) {
	for _, k := range knobs {
		if k.given() && names(refused, k.Field) {
			k.scale, k.undo = k.in(unit), k.kept()
			turned = append(turned, k)
		}
	}
	return turned
}

// tell adds what would do to the refusals, unless that of one field ends with it, as all that there can be or that it takes.
func tell(refused *fault.InputError, said map[string]string) {
	for i, v := range refused.Violations {
		number := strings.TrimSuffix(strings.TrimPrefix(said[v.Field], "; "), would)
		if len(said) > 1 || !strings.HasSuffix(v.Detail, " only have "+number) && !strings.HasSuffix(v.Detail, " take "+number) {
			refused.Violations[i].Detail += said[v.Field]
		}
	}
}

// would ends the words of what would do, mend those of what leaves other faults, withOthers those of what would do only
// with what others are told.
const would, mend, withOthers = " would do", " would mend this", " together with the others"

// leftOut is what is said of a field that the question does without.
const leftOut = "; leave it out, and what does is taken"

// otherwise reports whether a field is refused for another reason than that the values have no answer together.
func otherwise(v fault.Violation) bool { return v.Reason != fault.ReasonInfeasible }

// affords reports whether a question of such a price may be asked still for one that has cost so much, and counts it.
func affords(e *fault.InputError, spent, price int) bool {
	if price > 2*spent || spent+e.Sought+price > MaxSteps {
		return false
	}
	e.Sought += price
	return true
}

// together turns one knob after the other to where its field is no longer refused, says where
// each of them then stands, and reports whether the question does so.
func together(turned []Knob, tries int, said map[string]string, cheap func() bool, ask func() error, unit measure.DisplayUnit) bool {
	for _, k := range turned {
		sound := func() bool {
			var again *fault.InputError
			return cheap() && (!errors.As(ask(), &again) || !names(again, k.Field))
		}
		if sound() {
			continue // what was turned before it does for it
		}
		if found := k.near(tries, sound); len(found) > 0 {
			k.turn(found[len(found)-1])
			k.words(said, found[len(found)-1:], unit, would)
		} else if k.Optional && k.without(sound) {
			k.clear()
			said[k.Field] = leftOut
		}
	}
	if len(said) > 1 {
		for field := range said {
			said[field] += withOthers
		}
	}
	return len(said) > 0 && cheap() && ask() == nil
}

// mends says of each field that is looked at alone with which values it is not refused any more, though others are, or, of
// those whose parts are turned, that there is none, or not in the time: what was turned before is as it was asked.
func mends(turned []Knob, alone func(Knob) bool, tries int, cheap func() bool, ask func() error,
	unit measure.DisplayUnit) map[string]string {
	said := map[string]string{}
	for _, k := range turned {
		k.undo()
	}
	for _, k := range turned {
		if !alone(k) {
			continue
		}
		sound := func() bool {
			var then *fault.InputError
			return cheap() && errors.As(ask(), &then) && !names(then, k.Field)
		}
		switch found := k.near(tries, sound); {
		case len(found) > 0 && k.What != "":
			k.words(said, found[:1], unit, mend)
		case len(found) > 0:
			k.words(said, found, unit, mend)
		case k.What == "":
		case cheap():
			said[k.Field] = "; no remainder" + mend
		default:
			said[k.Field] = "; what would do takes too long to look for"
		}
	}
	return said
}

// names reports whether a field is refused.
func names(e *fault.InputError, field string) bool {
	return slices.ContainsFunc(e.Violations, func(v fault.Violation) bool { return v.Field == field })
}

func (k Knob) given() bool { return k.Count != nil && *k.Count != nil || k.Cm != nil && *k.Cm != nil }

// kept puts the field back to what it is now.
func (k Knob) kept() func() {
	if k.Count != nil {
		was := *k.Count
		return func() { *k.Count = was }
	}
	was := *k.Cm
	return func() { *k.Cm = was }
}

// without reports whether the question does without the field, which stays as it is.
func (k Knob) without(does func() bool) bool {
	defer k.kept()()
	k.clear()
	return does()
}

// clear leaves the field out.
func (k Knob) clear() {
	if k.Count != nil {
		*k.Count = nil
	} else {
		*k.Cm = nil
	}
}

// in is the scale of a field that is told in a unit.
func (k Knob) in(unit measure.DisplayUnit) scale {
	switch fine := k.Cm != nil && **k.Cm <= 1; {
	case k.Cm == nil:
		return scale{1, 1}
	case k.Of != "":
		return scale{cmParts, 1}
	case unit == measure.DisplayUnitIn && fine:
		return scale{inFineParts, measure.CmPerInch}
	case unit == measure.DisplayUnitIn:
		return scale{inParts, measure.CmPerInch}
	case fine:
		return scale{cmFineParts, 1}
	}
	return scale{cmParts, 1}
}

// turn sets the field.
func (k Knob) turn(to float64) {
	if k.Count != nil {
		n := int(to)
		*k.Count = &n
		return
	}
	*k.Cm = &to
}

// near are the nearest values below and above that do, if there are any; the field stays as it is.
func (k Knob) near(tries int, does func() bool) (found []float64) {
	defer k.kept()()
	asked := 0.0
	if k.Count != nil {
		asked = float64(**k.Count)
	} else {
		asked = **k.Cm
	}
	if k.What != "" { // a part with few values, of which only one may do
		tries = max(tries, min(2*int(k.Most)+2, 4*fewTries))
	}
	below := int(asked * k.scale.parts / k.scale.cm) // no field with a knob is below 0
	for k.scale.of(below) > asked {
		below--
	}
	above := below
	if k.scale.of(below) < asked {
		above++
	}
	try := func(place int) bool {
		k.turn(k.scale.of(place))
		return does()
	}
	for _, way := range [2]struct{ start, side int }{{above, -1}, {below, 1}} {
		if place, ok := k.along(way.start, way.side, tries, try); ok {
			found = append(found, k.scale.of(place))
		}
	}
	return found
}

// along goes along the numbers that are tried.
func (k Knob) along(start, side, tries int, try func(place int) bool) (int, bool) {
	least := int(k.Least * k.scale.parts / k.scale.cm)
	if k.scale.of(least) < k.Least {
		least++
	}
	return Along(start, side, tries, least, int(k.Most*k.scale.parts/k.scale.cm), try)
}

// Along goes from a place to one side until one from least to most does, and back to the nearest that does.
func Along(start, side, tries, least, most int, try func(place int) bool) (int, bool) {
	last := start
	for far, tried := 1, 1; tried <= tries; tried++ {
		if tried > 1 {
			far++
		}
		if tried > (tries+1)/2 {
			far = 3*far - 2
		}
		place := min(max(start+side*far, least), most)
		if (place-last)*side <= 0 {
			return 0, false
		}
		if try(place) {
			for (place-last)*side > 1 {
				if middle := (last + place) / 2; try(middle) {
					place = middle
				} else {
					last = middle
				}
			}
			return place, true
		}
		last = place
	}
	return 0, false
}

// words are what a refusal of the field says more.
func (k Knob) words(said map[string]string, found []float64, unit measure.DisplayUnit, do string) {
	text := k.What
	for i, v := range found {
		if i > 0 {
			text += " or "
		}
		switch {
		case k.Count != nil:
			text += strconv.Itoa(int(v))
		case k.Of != "":
			text += measure.Decimal(v, 1) + " " + k.Of
		default:
			text += unit.Size(v)
		}
	}
	if len(found) > 0 {
		said[k.Field] = "; " + text + do
	}
}
