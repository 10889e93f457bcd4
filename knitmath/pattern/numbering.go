package pattern

import (
	"math/bits"
	"sort"
)

// numbering is which row numbers are written on which lines.
type numbering struct {
	line   [MaxRows + 1]int16          // the last line of each row number, plus 1; 0 for none
	block  [(MaxRows + 64) / 64]uint64 // the numbers of the lines that stand together now
	others [2][]numbered               // rules, even and odd: and every other row after it
}

// numbered is a line and the row from which it stands for every other row.
type numbered struct {
	last int32
	line int
}

// forget forgets everything.
func (n *numbering) forget() {
	clear(n.line[:])
	n.begin()
	n.forgetRules()
}

// begin forgets the numbers of the lines that stood together before.
func (n *numbering) begin() { clear(n.block[:]) }

// write notes the line of a number.
func (n *numbering) write(number int32, line int) {
	n.line[number] = int16(line + 1)
	n.block[number/64] |= 1 << (number % 64)
}

// next is the first number from n on that is written on the lines that stand
// together, MaxRows+1 if there is none.
func (n *numbering) next(number int32) int32 {
	if number > MaxRows {
		return MaxRows + 1
	}
	i := number / 64
	word := n.block[i] >> (number % 64) << (number % 64)
	for word == 0 {
		if i++; int(i) == len(n.block) {
			return MaxRows + 1
		}
		word = n.block[i]
	}
	return 64*i + int32(bits.TrailingZeros64(word))
}

// every notes a line that stands for every other row after its last. Of the rules
// for a row the last one written counts, so that one before it that begins no
// earlier is no rule any more: those that remain lie in order.
func (n *numbering) every(last int32, line int) {
	list := n.others[last%2]
	for len(list) > 0 && list[len(list)-1].last >= last {
		list = list[:len(list)-1]
	}
	n.others[last%2] = append(list, numbered{last, line})
}

// forgetRules forgets what stands for every other row.
func (n *numbering) forgetRules() {
	n.others[0], n.others[1] = n.others[0][:0], n.others[1][:0]
}

// ruled is the line, among those from a line on, that stands for a row; -1 if
// there is none.
func (n *numbering) ruled(number int32, from int) int {
	list := n.others[number%2]
	i := sort.Search(len(list), func(i int) bool { return list[i].last >= number })
	if i == 0 || list[i-1].line < from {
		return -1
	}
	return list[i-1].line
}

// nextRuled is the first number from n on for which one of the lines from a line
// on stands, MaxRows+1 if there is none.
func (n *numbering) nextRuled(number int32, from int) int32 {
	first := int32(MaxRows + 1)
	for _, list := range n.others {
		i := sort.Search(len(list), func(i int) bool { return list[i].line >= from })
		if i == len(list) {
			continue
		}
		at := list[i].last + 2
		if at < number {
			at = number + (number+at)%2
		}
		first = min(first, at)
	}
	return first
}
