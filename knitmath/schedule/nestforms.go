package schedule

// appendForms adds all forms of so many short intervals and so many that are one
// longer.
func appendForms(forms []form, short, shorts, longs int) []form {
	long := short + 1
	switch {
	case longs == 0:
		return append(forms, form{{short, 0, shorts}})
	case shorts == 0:
		return append(forms, form{{long, 0, longs}})
	}
	forms = append(forms, form{{short, 0, shorts}, {long, 0, longs}}, form{{long, 0, longs}, {short, 0, shorts}})
	pairs := min(shorts, longs)
	rest := turn{short, 0, shorts - pairs}
	if longs > pairs {
		rest = turn{long, 0, longs - pairs}
	}
	for _, pair := range [2]turn{{short, long, pairs}, {long, short, pairs}} {
		forms = append(forms, form{pair, rest})
		if rest.times > 0 {
			forms = append(forms, form{rest, pair})
		}
	}
	return forms
}
