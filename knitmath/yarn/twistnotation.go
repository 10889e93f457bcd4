package yarn

import (
	"math/big"
	"strings"
)

// A saidTwist is a twist as a notation says it, S400: its letter and turns to the metre.
type saidTwist struct {
	direction TwistDirection
	perMetre  *big.Rat
}

// leastTurns keeps the ending of "24s 2 ply" from being a twist: no yarn has fewer turns to
// the metre than this.
var leastTurns = big.NewRat(20, 1)

// perCm is the same to the cm.
func (s saidTwist) perCm() float64 {
	return nearest(new(big.Rat).Quo(s.perMetre, big.NewRat(100, 1)))
}

// letter writes it as it was read.
func (s saidTwist) letter() string { return s.direction.String() + significant(nearest(s.perMetre)) }

// takeTwists reads the twists of a notation, which leaves the rest, and gives that of the
// whole yarn; nil where only the singles' is said, or none. Turns of the plying stand behind
// the plies, 34 tex Z600 x 2 S400, or where the whole is written first, before them:
// R 69.3 tex S400/2 Z600.
//
// Source: what ISO 1139 has, from memory.
func takeTwists(all []mark) (whole *saidTwist, rest []mark) {
	var found, behind []saidTwist
	sign := ""
	for i := 0; i < len(all); i++ {
		m := all[i]
		if (m.word == "s" || m.word == "z") && i+1 < len(all) && all[i+1].number != nil && all[i+1].number.Cmp(leastTurns) >= 0 {
			t := saidTwist{TwistDirectionZ, all[i+1].number}
			if m.word == "s" {
				t.direction = TwistDirectionS
			}
			if found = append(found, t); sign != "" {
				behind = append(behind, t)
			}
			i++
			continue
		}
		if m.word == "x" || m.word == "/" {
			sign = m.word
		}
		rest = append(rest, m)
	}
	switch {
	case len(found) == 0:
		return nil, all
	case sign == "x" && len(behind) > 0:
		return &behind[0], rest
	case sign != "x":
		return &found[0], rest
	}
	return nil, rest
}

// readBoth reads a notation of two halves, of the plies and of what they come to:
// 34 tex Z600 x 2 S400; R 69.3 tex.
func readBoth(text string, beside CountSystem) (w written, wrong string) {
	first, second, _ := strings.Cut(text, ";")
	w, wrong = readNotation(first, beside)
	if wrong != "" {
		return w, wrong
	}
	v, wrong := readNotation(second, beside)
	if wrong != "" {
		return w, wrong
	}
	if w.of == NumberOfWhole {
		w, v = v, w
	}
	plies := max(w.plies, v.plies)
	if v.of != NumberOfWhole || w.of == NumberOfWhole || plies < 2 {
		return w, "has two halves; write the plies in one and what they come to in the other, as in 34 tex x 2; R 69.3 tex"
	}
	single := w.system.Tex(w.number)
	ratio := nearest(new(big.Rat).Quo(v.system.Tex(v.number).grams, single.Strands(plies).grams))
	if ratio < leastPlied || ratio > mostPlied {
		return w, "says " + significant(single.Float()) + " tex of a single and " + significant(v.system.Tex(v.number).Float()) +
			" of the yarn, which do not fit " + significant(float64(plies)) + " plies"
	}
	twist := w.twist
	if twist == nil || v.twist != nil && v.plies > 1 {
		twist = v.twist
	}
	return written{number: v.number, system: v.system, plies: plies, of: NumberOfWhole, single: single, twist: twist}, ""
}

// leastPlied and mostPlied bound what plying makes of the plies together: a little stretch to
// MaxContraction.
const leastPlied, mostPlied = 0.95, 2.0

// twistWords are the twist as it is written behind a count in tex; empty where none is known.
func (w written) twistWords(s CountSystem) string {
	if w.twist == nil || s != CountSystemTex {
		return ""
	}
	return " " + w.twist.letter()
}
