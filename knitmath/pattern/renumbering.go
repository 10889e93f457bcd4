package pattern

import (
	"slices"
	"strings"
)

// renumbering is numbers of the text with others in their place.
type renumbering struct {
	spots   []*spot
	numbers []int
	list    []spot // all that stand together, one for each size
}

// set puts a number in the place of another; false if there is a different one already.
func (e *renumbering) set(s *spot, n int) bool {
	for i := range e.spots {
		if e.spots[i] == s {
			return e.numbers[i] == n
		}
	}
	e.spots, e.numbers = append(e.spots, s), append(e.numbers, n)
	return n <= MaxNumber
}

// candidate is one change from the first number that is another to the last.
func (e *renumbering) candidate(source string, row int, where string) []candidate {
	first, last := -1, -1
	for i, s := range e.spots {
		if s.value == e.numbers[i] {
			continue
		}
		if first < 0 || s.at.start < e.spots[first].at.start {
			first = i
		}
		if last < 0 || s.at.start > e.spots[last].at.start {
			last = i
		}
	}
	if first < 0 {
		return nil
	}
	whole := e.spots[first].at.to(e.spots[last].at)
	whole.end = closedList(source, whole)
	var b strings.Builder
	from := whole.start
	for i, s := range e.spots { // they are set in the order of the text
		if s.at.start < from || s.at.end > whole.end {
			continue
		}
		b.WriteString(source[from:s.at.start])
		b.WriteString(s.rewritten(e.numbers[i]))
		from = s.at.end
	}
	b.WriteString(source[from:whole.end])
	put := b.String()
	if where == "" {
		where = wordsAfter(source[whole.end:])
	}
	if len(e.spots) == 1 && len(e.list) < 2 {
		if agreeing, taken := e.spots[0].agreeing(e.numbers[0], source[whole.end:min(len(source), int(whole.end)+40)]); taken > 0 {
			put, where = agreeing, ""
			whole.end += int32(taken)
		}
	}
	says := joined(put) + where + " instead of " + joined(source[whole.start:whole.end])
	return []candidate{{at: whole, put: put, says: says, row: row, rougher: e.rougher(), far: e.far()}}
}

// closedList is the end of numbers with the bracket of their list, where it was opened among them.
func closedList(source string, numbers span) int32 {
	rest := source[numbers.end:]
	i := strings.IndexByte(rest, ')')
	if i < 0 || strings.Trim(rest[:i], "0123456789, ") != "" || !strings.Contains(source[numbers.start:numbers.end], "(") {
		return numbers.end
	}
	return numbers.end + int32(i) + 1
}

// far is by how much one of the numbers differs at most.
func (e *renumbering) far() int {
	most := 0
	for i, s := range e.spots {
		most = max(most, s.value-e.numbers[i], e.numbers[i]-s.value)
	}
	return most
}

// rougher is by how much less evenly the numbers of the sizes grow with the others.
func (e *renumbering) rougher() int {
	was, now := make([]int, len(e.list)), make([]int, len(e.list))
	for i := range e.list {
		was[i] = e.list[i].value
		now[i] = was[i]
		if k := slices.Index(e.spots, &e.list[i]); k >= 0 {
			now[i] = e.numbers[k]
		}
	}
	return roughness(now) - roughness(was)
}

// wordsAfter are the one or two words that say what a number before them counts.
func wordsAfter(text string) string {
	words := ""
	if !strings.HasPrefix(text, " ") {
		return "" // it stands in a list
	}
	line, _, _ := strings.Cut(text[:min(len(text), 40)], "\n")
	for _, word := range strings.Fields(line) {
		plain := strings.TrimRight(word, ".,;:)]}")
		if plain == "" || plain == "and" || plain == "until" || strings.ContainsAny(plain, "0123456789([{*=-\n") {
			break
		}
		words += " " + plain
		if plain != word || words != " "+plain || plain == "sts" || plain == "times" || plain == "rows" {
			break
		}
	}
	return words
}
