package solid

import (
	"math"
	"strconv"

	"example.com/knitmath/knitmath/outline"
)

// limbOutlinePieces is how many strokes half a ring is drawn with.
const limbOutlinePieces = 12

// limbLines are the rings of the limbs as one sees them from where the rounds begin: work
// goes from there to the left. What lies on the far side is said to be behind.
func (b *revolved) limbLines() []outline.Line {
	var lines []outline.Line
	for i, limb := range b.in.Limbs {
		r := b.ringOf(limb)
		r.radius = b.limbs[i].AcrossCm / 2
		name := "limb " + strconv.Itoa(i+1)
		if math.Cos(r.turn) < 0 {
			name += ", behind"
		}
		line := outline.Line{Name: name}
		for k := range 2*limbOutlinePieces + 1 {
			angle := math.Pi * float64(min(k, 2*limbOutlinePieces-k)) / limbOutlinePieces
			s, ok := r.at(angle, r.mid.along-r.radius*math.Cos(angle))
			if !ok {
				continue // the ring was found before, finer than it is drawn
			}
			if k > limbOutlinePieces {
				s.turn = -s.turn
			}
			line.Points = append(line.Points, outline.Point{X: -s.radius * math.Sin(s.turn+r.turn), Y: s.height})
		}
		lines = append(lines, line)
	}
	return lines
}
