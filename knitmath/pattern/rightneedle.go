package pattern

import "example.com/knitmath/knitmath/stitch"

// rightNeedle reads "there are 12 sts on right needle", "7 sts on right needle after
// bound-off sts", up to which stitches are worked: so many less those that are there already
// since the last that were bound off. ok is false, and nothing taken, if that is not what
// follows; n is nil if it cannot be known.
func (p *parser) rightNeedle() (n []int, ok bool) {
	if !p.rightNeedleAhead() {
		return nil, false
	}
	from := p.peek().span
	for p.acceptAmong("there are you have") {
	}
	want := p.number()
	if want == nil {
		return nil, true
	}
	for !p.endsAt(p.next) && !p.peek().among(", ; ) ]") && !(p.peek().is("and") && p.startsItem(p.next+1)) {
		p.next++
	}
	steps := sinceBindingOff(p.sofar)
	for i := range steps {
		if steps[i].stretch() {
			p.ask(ReasonUnread, from.to(p.last()), "how many stitches is that? some before it are not counted")
			return nil, true
		}
	}
	n = make([]int, p.sizes)
	for size := range n {
		n[size] = max(at1(want, size)-int(min(fixed(steps, size).leaves, MaxNumber)), -1)
		if n[size] < 0 {
			p.mistake(ReasonMissing, from.to(p.last()), "more stitches than that are on the right needle already")
			return nil, true
		}
	}
	return tidy(n), true
}

// rightNeedleAhead reports whether so many stitches "on the right needle" come next.
func (p *parser) rightNeedleAhead() bool {
	i := p.next
	for p.tokens[i].among("there are you have") {
		i++
	}
	end, _ := p.sizedEnd(i)
	if end == 0 || !p.tokens[end].stitches() {
		return false
	}
	if p.phraseEnd(end+1, sinceTheBindOff) != 0 {
		return true
	}
	if !p.tokens[end+1].is("on") {
		return false
	}
	end += 2
	if p.tokens[end].is("the") {
		end++
	}
	return p.tokens[end].is("right", "right-hand", "rh")
}

// sinceTheBindOff are words for the stitches that are on the right needle since some were bound off.
var sinceTheBindOff = wordings("after the bind-off", "after bind-off", "after the bind off", "after bind off", "after the bound-off",
	"after the cast-off", "after cast-off", "after the cast off", "after those bound off", "after the gap", "since the bind-off",
	"after the bo", "after bo", "after the bound off", "after bound-off", "past the bind-off", "from the bind-off")

// sinceBindingOff are the steps after the last that binds off.
func sinceBindingOff(steps []Step) []Step {
	for i := len(steps) - 1; i >= 0; i-- {
		if steps[i].Operation == stitch.BindOff {
			return steps[i+1:]
		}
	}
	return steps
}

// at1 is the number for a size, of which "-" is none.
func at1(numbers []int, size int) int { return max(at(numbers, size), 0) }
