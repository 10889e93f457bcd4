package gauge

import (
	"example.com/knitmath/knitmath/advice"
	"example.com/knitmath/knitmath/fault"
)

// RemainderKnob is how a rule is turned in search of what would do: by its remainder, of a copy, since the caller
// has the rule itself. A rule that is not given is not turned.
func RemainderKnob(field string, rule **CountRule) advice.Knob {
	k := advice.Knob{Field: field}
	if *rule != nil {
		own := **rule
		own.Remainder = new(fault.Or(own.Remainder, 0))
		*rule = &own
		k.Count, k.What, k.Most = &own.Remainder, "a remainder of ", float64(fault.Or(own.Multiple, 1)-1)
	}
	return k
}
