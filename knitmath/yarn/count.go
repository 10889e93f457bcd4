package yarn

import (
	"math/big"

	"example.com/knitmath/knitmath/fault"
)

// NumberOf says which yarn the number of a plied count is of.
type NumberOf int32

// What a number is of.
const (
	NumberOfUnspecified NumberOf = iota // as the trade of the system writes it
	NumberOfSingle
	NumberOfWhole
)

// A Count is how thick a yarn is, as it is written on a band or a cone, or as a number
// in a system. It mirrors the message of the same name.
type Count struct {
	Notation string
	Number   *float64
	System   CountSystem
	Plies    *int
	NumberOf NumberOf
	// ContractionPercent is how much shorter the ply twist has made the singles.
	ContractionPercent *float64
}

// Ranges of a count.
const (
	MaxNotation = 60 // characters
	MinNumber   = 1e-6
	MaxNumber   = 100_000_000.0
	MaxPlies    = 100
	// MaxContraction is beyond any ply: such a yarn would be a spring.
	MaxContraction = 50.0
)

// A Thickness is a count that has been read: a yarn of so many equal singles.
type Thickness struct {
	// Tex is the yarn as it is, plied and contracted.
	Tex Tex
	// Single is one of its singles before they were plied; the yarn itself where it
	// has one.
	Single Tex
	Plies  int
	System CountSystem
	// Contracted reports whether a contraction was given.
	Contracted bool

	read written
}

// VetCount checks a count that must be there and reads it; ok is false when it is not
// sound.
func VetCount(c *fault.Checks, field string, in *Count) (t Thickness, ok bool) {
	if in == nil {
		c.Add(field, fault.ReasonRequired, "is missing; give a notation, or a number in a system")
		return t, false
	}
	notation, number := fault.Join(field, "notation"), fault.Join(field, "number")
	c.OneOf(in.Notation != "", in.Number != nil, notation, number)
	vetNumber(c, field, in)
	fault.Enum(c, field, "system", in.System, lastSystem)
	c.OptionalCount(field, "plies", in.Plies, 1, MaxPlies)
	c.Needs(in.Plies != nil, fault.Join(field, "plies"), in.Number != nil || in.Notation == "", number)
	fault.Enum(c, field, "number_of", in.NumberOf, NumberOfWhole)
	c.Needs(in.NumberOf != NumberOfUnspecified, fault.Join(field, "number_of"), in.Number != nil || in.Notation == "", number)
	c.OptionalNumber(field, "contraction_percent", in.ContractionPercent, 0, MaxContraction)
	w := written{number: DecimalOf(finite(fault.Or(in.Number, 0))), system: in.System, plies: fault.Or(in.Plies, 1), of: in.NumberOf}
	if in.Notation != "" {
		w = vetNotation(c, field, in)
	}
	if !c.Sound(field) {
		return t, false
	}
	c.Needs(in.ContractionPercent != nil, fault.Join(field, "contraction_percent"), w.plies > 1 && w.single.IsZero(),
		"a count of several plies, and no notation that says what they come to")
	if !c.Sound(field) {
		return t, false
	}
	t = w.thickness(contraction(in.ContractionPercent))
	t.Contracted = t.Contracted || in.ContractionPercent != nil
	if !t.Tex.inRange() || !t.Single.inRange() {
		at := number
		if in.Notation != "" {
			at = notation
		}
		c.Infeasible("is "+significant(t.Tex.Float())+" tex, or its singles are finer; yarns from 0.01 to 1000000 tex are counted", at)
		return t, false
	}
	return t, true
}

// vetNumber checks a number, which needs a system.
func vetNumber(c *fault.Checks, field string, in *Count) {
	if in.Number == nil {
		return
	}
	c.Number(field, "number", *in.Number, MinNumber, MaxNumber)
	if in.Notation == "" && in.System == CountSystemUnspecified {
		c.Add(fault.Join(field, "system"), fault.ReasonRequired, "is missing; say what the number counts, as in COUNT_SYSTEM_TEX")
	}
}

// vetNotation reads a notation, which may leave the system to be said beside it.
func vetNotation(c *fault.Checks, field string, in *Count) written {
	at := fault.Join(field, "notation")
	if n := len([]rune(in.Notation)); n > MaxNotation {
		c.Add(at, fault.ReasonTooMany, "has %d characters; at most %d are allowed", n, MaxNotation)
		return written{}
	}
	w, wrong := readNotation(in.Notation, in.System)
	switch {
	case wrong != "":
		c.Add(at, fault.ReasonUnreadable, "%s", wrong)
	case in.System.known() && in.System != w.system:
		c.Add(fault.Join(field, "system"), fault.ReasonContradictory, "is %s, and the notation says %s; leave one out",
			countSystems[in.System].name, countSystems[w.system].name)
	}
	return w
}

// contraction is a percentage as an exact number, 0 when it is not given.
func contraction(percent *float64) *big.Rat { return DecimalOf(fault.Or(percent, 0)) }

// finite is x where it is a number, for what is refused anyway where it is not.
func finite(x float64) float64 {
	if x-x != 0 {
		return 0
	}
	return x
}

// written is what a count says, before it is made a yarn.
type written struct {
	number *big.Rat
	system CountSystem
	plies  int
	of     NumberOf

	other     *written // how else the same text is read by some
	filaments bool     // a number behind a stroke is of filaments
	ranged    bool     // the middle of a range of reeled silk
	// single is one ply, where the notation has it beside the whole.
	single Tex
	twist  *saidTwist // of the whole yarn
}

// of is what the number is of: where nothing is said, what the trade writes.
func (w written) ofWhole() bool {
	if w.of != NumberOfUnspecified {
		return w.of == NumberOfWhole
	}
	style := countSystems[w.system].style
	return style == plyWhole || style == plyNone
}

// thickness is the yarn.
func (w written) thickness(contraction *big.Rat) Thickness {
	t := Thickness{Plies: w.plies, System: w.system, read: w}
	said := w.system.Tex(w.number)
	if !w.single.IsZero() {
		t.Tex, t.Single, t.Contracted = said, w.single, true
		return t
	}
	switch {
	case w.plies == 1:
		t.Tex, t.Single = said, said
	case w.ofWhole():
		t.Tex, t.Single = said, said.Drawn(contraction).Share(w.plies)
	default:
		t.Tex, t.Single = said.Strands(w.plies).Contracted(contraction), said
	}
	return t
}
