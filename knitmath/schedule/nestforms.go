package schedule

// appendForms adds all forms of so many short intervals and so many that are one
// longer.
func appendForms(forms []form, short, shorts, longs int) []form {
	long := short + 1
	switch {
	case longs == 0:
		return append(forms, form{{short, 0, shorts, 0}})
	case shorts == 0:
		return append(forms, form{{long, 0, longs, 0}})
	}
	forms = append(forms, form{{short, 0, shorts, 0}, {long, 0, longs, 0}}, form{{long, 0, longs, 0}, {short, 0, shorts, 0}})
	pairs := min(shorts, longs)
	rest := turn{short, 0, shorts - pairs, 0}
	if longs > pairs {
		rest = turn{long, 0, longs - pairs, 0}
	}
	for _, pair := range [2]turn{{short, long, pairs, 0}, {long, short, pairs, 0}} {
		forms = append(forms, form{pair, rest})
		if rest.times > 0 {
			forms = append(forms, form{rest, pair})
		}
	}
	return forms
}
