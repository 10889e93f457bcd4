package pattern

import (
	"strconv"
	"unicode/utf8"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/knitmath/report"
	"example.com/knitmath/knitmath/stitch"
)

// vetText checks the length of a text.
func vetText(c *fault.Checks, text string) {
	switch {
	case text == "":
		c.Add("text", fault.ReasonRequired, "is missing")
	case len(text) > MaxTextBytes:
		c.Add("text", fault.ReasonTooMany, "has %d bytes; at most %d are read", len(text), MaxTextBytes)
	}
}

// vetStart checks the stitches on the needle and how they are worked.
func vetStart(c *fault.Checks, in CheckInstructionsInput) {
	c.Items("", "start_stitches", len(in.StartStitches), MaxSizes)
	if c.Sound("start_stitches") {
		for i, n := range in.StartStitches {
			c.Count("", fault.Index("start_stitches", i), n, 1, stitch.MaxStitches)
		}
	}
	fault.Enum(c, "", "construction", in.Construction, stitch.InTheRound)
	fault.Enum(c, "", "first_side", in.FirstSide, stitch.WrongSide)
	if in.FirstSide == stitch.WrongSide && in.Construction == stitch.InTheRound {
		c.Add("first_side", fault.ReasonContradictory, "in the round every round is on the right side")
	}
}

// vetAbbreviations checks the caller's own abbreviations.
func vetAbbreviations(c *fault.Checks, own []Abbreviation) {
	c.Items("", "abbreviations", len(own), MaxAbbreviations)
	if !c.Sound("abbreviations") {
		return
	}
	seen := map[string]bool{}
	for i, a := range own {
		at := fault.Index("abbreviations", i)
		name := folded(a.Name)
		switch text, ok := declarable(a.Name); {
		case a.Name == "":
			c.Add(fault.Join(at, "name"), fault.ReasonRequired, "is missing")
		case utf8.RuneCountInString(a.Name) > MaxAbbreviationLength:
			c.Add(fault.Join(at, "name"), fault.ReasonTooMany, "has %d characters; at most %d are allowed",
				utf8.RuneCountInString(a.Name), MaxAbbreviationLength)
		case !ok:
			c.Add(fault.Join(at, "name"), fault.ReasonUnreadable, "%q %s", shorten(a.Name, fault.MaxNameLength), text)
		case seen[name]:
			c.Add(fault.Join(at, "name"), fault.ReasonContradictory, "%q is declared twice", a.Name)
		}
		seen[name] = true
		c.Count(at, "takes_stitches", a.TakesStitches, 0, MaxTakes)
		c.Count(at, "leaves_stitches", a.LeavesStitches, 0, MaxTakes)
	}
}

// moreNotices says that, beside those listed, findings in a field are left out.
func moreNotices(field string, listed, more int) []report.Notice {
	if more == 0 {
		return nil
	}
	return []report.Notice{{Reason: ReasonTooManyFindings, Field: field, Description: "the first " + strconv.Itoa(listed) +
		" findings are listed; " + strconv.Itoa(more) + " more are not: mend these and ask again"}}
}
