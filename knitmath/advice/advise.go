package advice

import (
	"errors"
	"slices"
	"strconv"

	"example.com/knitmath/knitmath/fault"
)

// A Knob is a field of a question that may be turned to make it feasible: Count or Cm points at it in the
// question that Add asks.
//
// Optional says that the question may be asked without the field.
type Knob struct {
	Field       string
	Count       **int
	Cm          **float64
	Least, Most float64
	Optional    bool
}

// How a knob is turned: half of the tries go one step further each, the others thrice as far as the one before.
// There are fewTries of all knobs together to a side, fewer of a dear question.
const (
	// MaxSteps is the price of all questions that a refusal asks at most. What was asked is told as Sought, since
	// whoever is refused has had it worked.
	MaxSteps = 100_000

	fewTries  = 16
	dearPrice = 2000
	// A length is offered in so many parts of a centimetre, or finely where it is no larger than 1 cm.
	cmParts     = 2
	cmFineParts = 10
)

// Add adds to each refusal of a field that has a knob what would do there: the nearest values below and
// above, each of which it has asked, or else that the question does without the field. Where none does because
// other fields are refused too, values of all of them that do together are looked for. ask asks the question that
// the knobs turn, cost prices it, and size writes a length.
func Add(err error, cost func() int, ask func() error, size func(cm float64) string, knobs ...Knob) error {
	var refused *fault.InputError
	if !errors.As(err, &refused) || slices.ContainsFunc(refused.Violations, otherwise) {
		return err
	}
	turned := slices.DeleteFunc(slices.Clone(knobs), func(k Knob) bool { return !k.given() || !names(refused, k.Field) })
	if len(turned) == 0 {
		return err
	}
	price := cost()
	tries := fewTries * dearPrice / max(price, dearPrice) / len(turned)
	cheap := func() bool { return affords(refused, cost(), 2*price) }
	said := map[string]string{}
	does := func() bool { return cheap() && ask() == nil }
	for _, k := range turned {
		if found := k.near(tries, does); len(found) > 0 {
			k.words(said, found, size)
		} else if k.Optional && k.without(does) {
			said[k.Field] = "; leave it out, and what does is taken"
		}
	}
	if len(said) == 0 && len(turned) > 1 && !together(turned, tries/2, said, cheap, ask, size) {
		return err
	}
	for i, v := range refused.Violations {
		refused.Violations[i].Detail += said[v.Field]
	}
	return refused
}

// otherwise reports whether a field is refused for another reason than that the values have no answer together.
func otherwise(v fault.Violation) bool { return v.Reason != fault.ReasonInfeasible }

// affords reports whether a question of such a price may be asked still, and counts it.
func affords(e *fault.InputError, price, most int) bool {
	if price > most || e.Sought+price > MaxSteps {
		return false
	}
	e.Sought += price
	return true
}

// together turns one knob after the other to where its field is no longer refused, says where
// each of them then stands, and reports whether the question does so.
func together(turned []Knob, tries int, said map[string]string, cheap func() bool, ask func() error, size func(cm float64) string) bool {
	for _, k := range turned {
		found := k.near(tries, func() bool {
			if !cheap() {
				return false
			}
			var again *fault.InputError
			return !errors.As(ask(), &again) || !names(again, k.Field)
		})
		if len(found) > 0 {
			found = found[len(found)-1:]
			k.turn(found[0])
		}
		k.words(said, found, size)
	}
	return cheap() && ask() == nil
}

// names reports whether a field is refused.
func names(e *fault.InputError, field string) bool {
	return slices.ContainsFunc(e.Violations, func(v fault.Violation) bool { return v.Field == field })
}

func (k Knob) given() bool { return k.Count != nil && *k.Count != nil || k.Cm != nil && *k.Cm != nil }

// without reports whether the question does without the field, which stays as it is.
func (k Knob) without(does func() bool) bool {
	if k.Count != nil {
		was := *k.Count
		defer func() { *k.Count = was }()
		*k.Count = nil
		return does()
	}
	was := *k.Cm
	defer func() { *k.Cm = was }()
	*k.Cm = nil
	return does()
}

// parts are how many values that are tried lie in a stitch or a centimetre.
func (k Knob) parts() float64 {
	switch {
	case k.Count != nil:
		return 1
	case **k.Cm > 1:
		return cmParts
	}
	return cmFineParts
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
	asked, parts := 0.0, k.parts()
	if k.Count != nil {
		was := *k.Count
		defer func() { *k.Count = was }()
		asked = float64(*was)
	} else {
		was := *k.Cm
		defer func() { *k.Cm = was }()
		asked = *was * parts
	}
	below := int(asked) // no field with a knob is below 0
	above := below
	if float64(below) < asked {
		above++
	}
	try := func(place int) bool {
		k.turn(float64(place) / parts) // the number that is printed, to its last bit
		return does()
	}
	for _, way := range [2]struct{ start, side int }{{above, -1}, {below, 1}} {
		if place, ok := k.along(way.start, way.side, parts, tries, try); ok {
			found = append(found, float64(place)/parts)
		}
	}
	return found
}

// along goes from a place to one side until one does, and back to the nearest that does.
func (k Knob) along(start, side int, parts float64, tries int, try func(place int) bool) (int, bool) {
	last, least, most := start, int(k.Least*parts), int(k.Most*parts)
	if float64(least)/parts < k.Least {
		least++
	}
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
func (k Knob) words(said map[string]string, found []float64, size func(cm float64) string) {
	text := ""
	for i, v := range found {
		if i > 0 {
			text += " or "
		}
		if k.Count != nil {
			text += strconv.Itoa(int(v))
		} else {
			text += size(v)
		}
	}
	if text != "" {
		said[k.Field] = "; " + text + " would do"
	}
}
