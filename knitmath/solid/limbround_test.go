package solid

import (
	"cmp"
	"math"
	"slices"
	"testing"

	"example.com/knitmath/knitmath/gauge"
	"example.com/knitmath/knitmath/knittest"
)

// A drawn ring is one that was picked up, as it lies on the surface laid flat: its points in cm, in the order in which they are picked up.
type drawn [][2]float64

// flat draws a ring from the places of the answer and the counts of its rounds alone: a body that can be unrolled is, any other is
// looked at along the axis of the limb.
func flat(out Solid, limb Limb) drawn {
	b := out.of
	round, x, y := 0.0, 0.0, 0.0 // of its own middle
	for _, p := range limb.Places {
		round += float64(p.RoundNumber) / float64(len(limb.Places))
		sin, cos := math.Sincos(2 * math.Pi * (float64(p.StitchNumber) - 0.5) / float64(b.counts[p.RoundNumber-1]))
		x, y = x+cos, y+sin
	}
	along, turn := (round-0.5)*b.high, math.Atan2(y, x)
	slope, rise := b.way.direction(along)
	middle := b.way.at(along)
	list := make(drawn, len(limb.Places))
	for i, p := range limb.Places {
		at := b.way.at((float64(p.RoundNumber) - 0.5) * b.high)
		angle := math.Remainder(2*math.Pi*(float64(p.StitchNumber)-0.5)/float64(b.counts[p.RoundNumber-1])-turn, 2*math.Pi)
		switch {
		case b.in.Form != FormCone && b.in.Form != FormCylinder:
			list[i] = [2]float64{at.radius * math.Sin(angle), (at.radius*math.Cos(angle)-middle.radius)*slope + (at.height-middle.height)*rise}
		case math.Abs(slope) < 1e-6: // the strip of a tube
			list[i] = [2]float64{at.radius * angle, at.along - along}
		default: // the sector of a cone, or a flat base, about its point
			list[i] = [2]float64{at.radius / slope * math.Sin(angle*slope), at.radius / slope * math.Cos(angle*slope)}
		}
	}
	return list
}

// surfaceLength is how long a ring is from stitch to stitch, each in the middle of its part of its round on the surface.
func surfaceLength(out Solid, limb Limb) float64 {
	b := out.of
	at := func(p RingPlace) spot {
		s := b.way.at((float64(p.RoundNumber) - 0.5) * b.high)
		return spot{s.along, 2 * math.Pi * (float64(p.StitchNumber) - 0.5) / float64(b.counts[p.RoundNumber-1]), s.radius, s.height}
	}
	length, last := 0.0, at(limb.Places[len(limb.Places)-1])
	for _, p := range limb.Places {
		length += at(p).apart(last)
		last = at(p)
	}
	return length
}

// middle is that of the area within.
func (d drawn) middle() (x, y float64) {
	area := 0.0
	for i, p := range d {
		q := d[(i+1)%len(d)]
		cross := p[0]*q[1] - q[0]*p[1]
		area += cross
		x, y = x+cross*(p[0]+q[0]), y+cross*(p[1]+q[1])
	}
	return x / 3 / area, y / 3 / area
}

// radii are the least and the greatest distance from its middle, as parts of the mean.
func (d drawn) radii() (least, greatest float64) {
	x, y := d.middle()
	least = math.Inf(1)
	mean := 0.0
	for _, p := range d {
		far := math.Hypot(p[0]-x, p[1]-y)
		least, greatest, mean = min(least, far), max(greatest, far), mean+far/float64(len(d))
	}
	return least / mean, greatest / mean
}

// dent is how far a place lies within the line that a thread pulled tight around the ring would take, at the most: 0 where it
// always turns one way.
func (d drawn) dent() float64 {
	tight := d.tight()
	worst := 0.0
	for _, p := range d {
		depth := math.Inf(1)
		for i, q := range tight {
			r := tight[(i+1)%len(tight)]
			depth = min(depth, math.Abs(turning(q, r, p))/math.Hypot(r[0]-q[0], r[1]-q[1]))
		}
		worst = max(worst, depth)
	}
	return worst
}

// tight are the corners of the line that a thread pulled tight takes: the places from left to right, those left out at which it
// would turn the wrong way, and back in the same way.
func (d drawn) tight() drawn {
	sorted := slices.Clone(d)
	slices.SortFunc(sorted, func(p, q [2]float64) int { return cmp.Or(cmp.Compare(p[0], q[0]), cmp.Compare(p[1], q[1])) })
	var line drawn
	for range 2 {
		from := len(line)
		for _, p := range sorted {
			for len(line) >= from+2 && turning(line[len(line)-2], line[len(line)-1], p) <= 0 {
				line = line[:len(line)-1]
			}
			line = append(line, p)
		}
		line = line[:len(line)-1] // it begins the way back
		slices.Reverse(sorted)
	}
	return line
}

// turning is twice the area of a triangle, more than 0 where its corners turn to the left.
func turning(p, q, r [2]float64) float64 {
	return (q[0]-p[0])*(r[1]-p[1]) - (q[1]-p[1])*(r[0]-p[0])
}

// roundBodies are those of which rings are measured.
func roundBodies() map[string]SolidInput {
	cm := func(v float64) *float64 { return &v }
	return map[string]SolidInput{
		"ball of 8 cm":       {Form: FormSphere, AcrossCm: cm(8)},
		"ball of 14 cm":      {Form: FormSphere, AcrossCm: cm(14)},
		"egg":                {Form: FormEgg, AcrossCm: cm(9), HeightCm: cm(12)},
		"steep cone":         {Form: FormCone, AcrossCm: cm(9), HeightCm: cm(16)},
		"blunt cone":         {Form: FormCone, AcrossCm: cm(14), HeightCm: cm(10)},
		"cylinder":           {Form: FormCylinder, AcrossCm: cm(9), HeightCm: cm(12)},
		"drop":               {Form: FormDrop, AcrossCm: cm(9), HeightCm: cm(15)},
		"pear":               {Form: FormProfile, Points: []ProfilePoint{{0, 4}, {3, 10}, {7, 11}, {12, 6}, {15, 3}}},
		"from the top, pear": {Form: FormProfile, Start: StartTop, Points: []ProfilePoint{{0, 4}, {3, 10}, {7, 11}, {12, 6}, {15, 3}}},
	}
}

// A tally of rings: how many there are, and how many of them are round, have no dents and are as long as their stitches.
type tally struct{ all, round, even, long int }

func (c *tally) add(out Solid, limb Limb) {
	d, stitch := flat(out, limb), 10/out.of.in.Gauge.Stitches
	least, greatest := d.radii()
	off := math.Abs(surfaceLength(out, limb)/stitch - float64(limb.Stitches))
	for count, is := range map[*int]bool{&c.all: true, &c.round: least >= 0.8 && greatest <= 1.25, &c.even: d.dent() <= stitch/2,
		&c.long: off < max(0.1*float64(limb.Stitches), 1.5)} {
		if is {
			*count++
		}
	}
}

func (c *tally) share(part int) float64 { return 100 * float64(part) / float64(c.all) }

// Rings of limbs of 8 to 40 stitches on bodies of all forms at three gauges, measured as they lie: how many are round, with all places
// within 0.8 and 1.25 of their mean distance from the middle; turn one way, within half a stitch; and are as long as their stitches
// within a tenth, or a stitch and a half. The few that are not round are narrow.
func TestLimbRingsAreRound(t *testing.T) {
	tallies := map[string]*tally{}
	for name, in := range roundBodies() {
		tallies[name] = &tally{}
		for _, g := range []gauge.Gauge{{Stitches: 20, Rows: 24}, {Stitches: 22, Rows: 30}, {Stitches: 28, Rows: 42}} {
			in.Gauge, in.Limbs = &g, nil
			whole, err := PlanSolid(in)
			if err != nil {
				t.Fatal(err)
			}
			for n := 8; n <= 40; n += knittest.Sweep(1, 5) {
				narrow := [2]string{"from 13 stitches on", "up to 12 stitches"}[min(12/n, 1)]
				for place := range 36 {
					in.Limbs = []LimbInput{{n, (0.1 + 0.1*float64(place/4)) * whole.MeridianCm, [4]float64{0, 40, 90, 200}[place%4]}}
					out, err := PlanSolid(in)
					if err != nil {
						continue
					}
					for _, key := range [2]string{name, narrow} {
						if tallies[key] == nil {
							tallies[key] = &tally{}
						}
						tallies[key].add(out, out.Limbs[0])
					}
				}
			}
		}
	}
	for name, c := range tallies {
		t.Logf("%-20s %5d rings: %.1f %% round, %.1f %% without dents, %.1f %% as long as their stitches", name, c.all,
			c.share(c.round), c.share(c.even), c.share(c.long))
		least := [3]float64{98, 95, 98}
		switch name {
		case "from 13 stitches on":
			least = [3]float64{99.5, 96, 99.5}
		case "up to 12 stitches":
			least = [3]float64{98.5, 99.5, 96}
		}
		if c.all < knittest.Sweep(1500, 300) || c.share(c.round) < least[0] || c.share(c.even) < least[1] || c.share(c.long) < least[2] {
			t.Errorf("%s: %v %% at the least are wanted", name, least)
		}
	}
}
