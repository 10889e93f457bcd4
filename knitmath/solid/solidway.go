package solid

import (
	"example.com/knitmath/knitmath/fault"
	"math"
)

// settleMeridian settles the way from the first round to the last.
func settleMeridian(c *fault.Checks, b *revolved, in SolidInput) {
	if in.Form == FormDrop && *in.HeightCm <= *in.AcrossCm {
		c.Infeasible("a drop is higher than it is wide", "height_cm", "across_cm")
		return
	}
	m := meridianOf(in)
	base, top := fault.Or(in.BaseOpeningCm, 0), fault.Or(in.TopOpeningCm, 0)
	if len(m) > 1 {
		m = m.opened(base / 2)
	}
	if len(m) > 1 {
		if m = m.turned().opened(top / 2); len(m) > 1 {
			m = m.turned()
		}
	}
	if len(m) < 2 {
		c.Infeasible("nothing is left between openings so wide", fieldsOf(in)...)
		return
	}
	if in.Start == StartTop {
		m = m.turned()
	}
	first, last := base, top
	if in.Start == StartTop {
		first, last = top, base
	}
	b.way, b.sewn = m, last == 0 && (first == 0 || in.PickedUp)
	b.flat = 2 * math.Pi * b.st.PerCm() / b.rw.PerCm()
	b.surface = m.area() * b.st.PerCm() * b.rw.PerCm()
}

// fieldsOf are the fields that give the size.
func fieldsOf(in SolidInput) []string {
	fields := make([]string, 0, 5)
	add := func(field string, given bool) {
		if given {
			fields = append(fields, field)
		}
	}
	add("points", in.Form == FormProfile)
	add("across_cm", in.AcrossCm != nil)
	add("height_cm", in.HeightCm != nil)
	add("base_opening_cm", fault.Or(in.BaseOpeningCm, 0) > 0)
	add("top_opening_cm", fault.Or(in.TopOpeningCm, 0) > 0)
	return fields
}
