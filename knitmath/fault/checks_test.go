package fault

import (
	"math"
	"slices"
	"strings"
	"testing"
)

// found is what was found, a field and a reason each.
func found(c *Checks) []string {
	var s []string
	for _, v := range c.Violations {
		s = append(s, v.Field+" "+string(v.Reason))
		if v.Detail == "" {
			s = append(s, "without a detail")
		}
	}
	return s
}

// kind is an enumeration with the values 0, 1 and 2.
type kind int32

// What each check finds in values in range, at its ends, and just beyond them.
func TestEachCheck(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	below, above := math.Nextafter(2, 1), math.Nextafter(5, 6)
	number := func(v float64) func(*Checks) { return func(c *Checks) { c.Number("at", "x", v, 2, 5) } }
	required := func(v float64) func(*Checks) { return func(c *Checks) { c.RequiredNumber("at", "x", v, -1, 5) } }
	optional := func(v *float64) func(*Checks) { return func(c *Checks) { c.OptionalNumber("", "x", v, 2, 5) } }
	count := func(n int) func(*Checks) { return func(c *Checks) { c.Count("at", "n", n, 2, 5) } }
	requiredCount := func(n int) func(*Checks) { return func(c *Checks) { c.RequiredCount("at", "n", n, -1, 5) } }
	optionalCount := func(n *int) func(*Checks) { return func(c *Checks) { c.OptionalCount("", "n", n, 2, 5) } }
	enum := func(k kind) func(*Checks) { return func(c *Checks) { Enum(c, "at", "kind", k, 2) } }
	requiredEnum := func(k kind) func(*Checks) { return func(c *Checks) { RequiredEnum(c, "", "kind", k, 2) } }
	text := func(s string) func(*Checks) { return func(c *Checks) { c.Text("at", "name", s) } }
	items := func(n int) func(*Checks) { return func(c *Checks) { c.Items("", "items", n, 3) } }
	oneOf := func(a, b bool) func(*Checks) { return func(c *Checks) { c.OneOf(a, b, "a", "b") } }
	atMostOne := func(a, b bool) func(*Checks) { return func(c *Checks) { c.AtMostOne(a, b, "a", "b") } }
	needs := func(a, b bool) func(*Checks) { return func(c *Checks) { c.Needs(a, "a", b, "b") } }
	for _, c := range []struct {
		name  string
		check func(*Checks)
		want  string // reasons by field; empty for none
	}{
		{"number at the lower end", number(2), ""},
		{"number at the upper end", number(5), ""},
		{"number just below", number(below), "at.x OUT_OF_RANGE"},
		{"number just above", number(above), "at.x OUT_OF_RANGE"},
		{"not a number", number(nan), "at.x NOT_FINITE"},
		{"infinite", number(inf), "at.x NOT_FINITE"},
		{"infinite below", number(-inf), "at.x NOT_FINITE"},
		{"required number", required(5), ""},
		{"required number missing, though 0 is in range", required(0), "at.x REQUIRED"},
		{"required number beyond", required(5.5), "at.x OUT_OF_RANGE"},
		{"required number infinite", required(inf), "at.x NOT_FINITE"},
		{"optional number absent", optional(nil), ""},
		{"optional number in range", optional(new(3.0)), ""},
		{"optional number 0", optional(new(0.0)), "x OUT_OF_RANGE"},
		{"count at the lower end", count(2), ""},
		{"count at the upper end", count(5), ""},
		{"count just below", count(1), "at.n OUT_OF_RANGE"},
		{"count just above", count(6), "at.n OUT_OF_RANGE"},
		{"required count", requiredCount(-1), ""},
		{"required count missing", requiredCount(0), "at.n REQUIRED"},
		{"required count beyond", requiredCount(6), "at.n OUT_OF_RANGE"},
		{"optional count absent", optionalCount(nil), ""},
		{"optional count in range", optionalCount(new(2)), ""},
		{"optional count 0", optionalCount(new(0)), "n OUT_OF_RANGE"},
		{"enum unspecified", enum(0), ""},
		{"enum last", enum(2), ""},
		{"enum beyond", enum(3), "at.kind UNKNOWN_VALUE"},
		{"enum negative", enum(-1), "at.kind UNKNOWN_VALUE"},
		{"required enum first", requiredEnum(1), ""},
		{"required enum unspecified", requiredEnum(0), "kind REQUIRED"},
		{"required enum beyond", requiredEnum(3), "kind UNKNOWN_VALUE"},
		{"no text", text(""), ""},
		{"the longest text, in characters and not in bytes", text(strings.Repeat("é", MaxNameLength)), ""},
		{"text too long", text(strings.Repeat("x", MaxNameLength+1)), "at.name TOO_MANY"},
		{"most items", items(3), ""},
		{"too many items", items(4), "items TOO_MANY"},
		{"one of two, the first", oneOf(true, false), ""},
		{"one of two, the second", oneOf(false, true), ""},
		{"one of two, neither", oneOf(false, false), "a REQUIRED, b REQUIRED"},
		{"one of two, both", oneOf(true, true), "a CONTRADICTORY, b CONTRADICTORY"},
		{"at most one, neither", atMostOne(false, false), ""},
		{"at most one, the first", atMostOne(true, false), ""},
		{"at most one, the second", atMostOne(false, true), ""},
		{"at most one, both", atMostOne(true, true), "a CONTRADICTORY, b CONTRADICTORY"},
		{"needs, neither", needs(false, false), ""},
		{"needs, the other alone", needs(false, true), ""},
		{"needs, both", needs(true, true), ""},
		{"needs, without the other", needs(true, false), "a CONTRADICTORY"},
		{"infeasible together", func(c *Checks) { c.Infeasible("no", "a", "b[1].c") }, "a INFEASIBLE, b[1].c INFEASIBLE"},
	} {
		var checks Checks
		c.check(&checks)
		if got := strings.Join(found(&checks), ", "); got != c.want {
			t.Errorf("%s: got %q, want %q", c.name, got, c.want)
		}
		if (checks.Err() == nil) != (c.want == "") {
			t.Errorf("%s: error %v", c.name, checks.Err())
		}
	}
}

// The detail of a fault names the limit that was passed, or the other field.
func TestDetails(t *testing.T) {
	var c Checks
	c.Number("", "x", 7.5, 2, 5)
	c.Count("", "n", 7, 2, 5)
	c.RequiredCount("", "n", 0, 2, 5)
	c.Items("", "items", 4, 3)
	c.Text("", "name", strings.Repeat("x", 101))
	Enum(&c, "", "kind", kind(9), 2)
	c.OneOf(false, false, "a", "b")
	c.AtMostOne(true, true, "a", "b")
	c.Needs(true, "a", false, "b")
	c.Add("y", ReasonInfeasible, "of %d, at most %d", 3, 2)
	want := []string{
		"x: is 7.5; must be from 2 to 5",
		"n: is 7; must be from 2 to 5",
		"n: is missing or 0; must be from 2 to 5",
		"items: has 4 items; at most 3 are allowed",
		"name: has 101 characters; at most 100 are allowed",
		"kind: is 9; the known values are 0 to 2",
		"a: is missing, and so is b; give one of them", "b: is missing, and so is a; give one of them",
		"a: excludes b; give one of them", "b: excludes a; give one of them",
		"a: needs b",
		"y: of 3, at most 2",
	}
	if got := c.Err().Error(); got != strings.Join(want, "; ") {
		t.Errorf("got\n%s\nwant\n%s", got, strings.Join(want, "; "))
	}
}

// A field is sound when nothing was found at it or inside it; what begins with the
// same letters is another field.
func TestSound(t *testing.T) {
	for _, c := range []struct {
		found string
		field string
		want  bool
	}{
		{"gauge", "gauge", false},
		{"gauge.rows", "gauge", false},
		{"gauge", "gauge.rows", true}, // the gauge is missing: nothing was said of its rows
		{"gauge.rows", "gauge.rows", false},
		{"gauge.rows", "gauge.row", true},
		{"gauge_cm", "gauge", true},
		{"own_gauge", "gauge", true},
		{"items[1].rule.edge", "items", false},
		{"items[1].rule.edge", "items[1]", false},
		{"items[1].rule.edge", "items[1].rule", false},
		{"items[1].rule.edge", "items[10]", true},
		{"items[10]", "items[1]", true},
		{"items[1][2]", "items[1]", false},
	} {
		var checks Checks
		checks.Add("something_else", ReasonRequired, "is missing")
		checks.Add(c.found, ReasonRequired, "is missing")
		checks.Add("another", ReasonRequired, "is missing")
		if got := checks.Sound(c.field); got != c.want {
			t.Errorf("with a fault at %s, %s is sound: %v", c.found, c.field, got)
		}
		if checks.Sound("width_cm", "another") || checks.Sound("another", "width_cm") {
			t.Error("of two fields, one with a fault, both are sound")
		}
		if !checks.Sound("width_cm", "height_cm") || !checks.Sound() || !new(Checks).Sound(c.field) {
			t.Error("fields without a fault are not sound")
		}
	}
}

func TestPaths(t *testing.T) {
	for _, c := range [][2]string{
		{Join("", "gauge"), "gauge"},
		{Join("gauge", "over_cm"), "gauge.over_cm"},
		{Index("items", 0), "items[0]"},
		{Join(Index(Join("pieces", "rows"), 12), "count"), "pieces.rows[12].count"},
	} {
		if c[0] != c[1] {
			t.Errorf("got %s, want %s", c[0], c[1])
		}
	}
}

func TestOr(t *testing.T) {
	if Or(nil, 7) != 7 || Or(new(0), 7) != 0 || *new("a") != Or(new("a"), "b") {
		t.Error("a value given gives way to the default, or the other way round")
	}
}

// Violations come in the order in which they were found, whatever Err has said in
// between.
func TestOrder(t *testing.T) {
	var c Checks
	c.Add("b", ReasonRequired, "is missing")
	_ = c.Err()
	c.Infeasible("no", "a")
	c.Count("", "c", 9, 1, 2)
	if got, want := found(&c), []string{"b REQUIRED", "a INFEASIBLE", "c OUT_OF_RANGE"}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

// Nothing is allocated while all is well, whatever is asked.
func TestSoundQuestionsAllocateNothing(t *testing.T) {
	x, n := 3.0, 3
	if allocs := testing.AllocsPerRun(100, func() {
		var c Checks
		c.Number("at", "x", x, 2, 5)
		c.RequiredNumber("at", "x", x, 2, 5)
		c.OptionalNumber("at", "x", &x, 2, 5)
		c.Count("at", "n", n, 2, 5)
		c.RequiredCount("at", "n", n, 2, 5)
		c.OptionalCount("at", "n", &n, 2, 5)
		Enum(&c, "at", "kind", kind(1), 2)
		RequiredEnum(&c, "at", "kind", kind(1), 2)
		c.Text("at", "name", "hem")
		c.Items("at", "items", n, 5)
		c.OneOf(true, false, "a", "b")
		c.AtMostOne(false, true, "a", "b")
		c.Needs(true, "a", true, "b")
		if !c.Sound("at", "a", "b") || c.Err() != nil || Or(&n, 4) != n {
			t.Error("a fault in a sound question")
		}
	}); allocs != 0 {
		t.Errorf("%v allocations in a sound question, want none", allocs)
	}
}

// Words of the caller's are one line that can be seen, in any script; the joiners of Persian and Hindi
// are part of theirs.
func TestTextIsOneLine(t *testing.T) {
	for text, want := range map[string]Reason{
		"": "", "Back & front, size 2": "", "Ärmel für Zoë 🧶": "", "می\u200cخواهم": "", "क्\u200dष": "", "袖": "",
		"a\nb": ReasonUnreadable, "a\x00": ReasonUnreadable, "\u202eab": ReasonUnreadable, "a\u2028b": ReasonUnreadable,
		"\ufeffa": ReasonUnreadable, "  ": ReasonUnreadable, "\u00a0": ReasonUnreadable,
		strings.Repeat("x", MaxNameLength): "", strings.Repeat("\n", MaxNameLength+1): ReasonTooMany,
	} {
		var c Checks
		c.Text("", "name", text)
		if (want == "") != (len(c.Violations) == 0) || want != "" && c.Violations[0].Reason != want {
			t.Errorf("%q: %v, want %q", text, c.Violations, want)
		}
	}
}
