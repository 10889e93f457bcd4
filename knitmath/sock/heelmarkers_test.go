package sock

import (
	"fmt"
	"testing"

	"example.com/knitmath/knitmath/stitch"
)

// markedNeedles are the stitches of a round, tips at their ends, with the markers among them.
type markedNeedles struct{ left, right []bool } // true is a marker

// work works a step that is no group, and says what is wrong with it.
func (n *markedNeedles) work(s stitch.Step) string {
	if s.ToLast != nil {
		for last := len(n.left) - 1; last >= 0; last-- { // to the end is over every marker
			n.right = append(n.right, n.left[last])
		}
		n.left = nil
		return ""
	}
	for range s.Count {
		last := len(n.left) - 1
		switch s.Op {
		case stitch.PlaceMarker:
			n.right = append(n.right, true)
			continue
		case stitch.SlipMarker:
			if last < 0 || !n.left[last] {
				return "no marker is there to slip"
			}
			n.left, n.right = n.left[:last], append(n.right, true)
			continue
		case stitch.Turn, stitch.WrapTurn:
			n.left, n.right = n.right, n.left
			continue
		case stitch.PickUp: // from an edge that is no needle's
			n.right = append(n.right, false)
			continue
		}
		for range s.Op.Takes() {
			if last = len(n.left) - 1; last < 0 || n.left[last] {
				return fmt.Sprintf("%v goes over a marker that is not slipped", s.Op)
			}
			n.left = n.left[:last]
		}
		for range s.Op.Leaves() {
			n.right = append(n.right, false)
		}
	}
	return ""
}

// row works a row of a round, and begins the next where it goes to the end.
func (n *markedNeedles) row(steps []stitch.Step) string {
	for _, s := range steps {
		if s.Group == nil {
			if wrong := n.work(s); wrong != "" {
				return wrong
			}
			continue
		}
		for range s.Times {
			if wrong := n.row(s.Group); wrong != "" {
				return wrong
			}
		}
	}
	return ""
}

// rounded begins the round again where its last stitch has been worked.
func (n *markedNeedles) rounded() {
	if len(n.left) > 0 {
		return
	}
	for last := len(n.right) - 1; last >= 0; last-- {
		n.left = append(n.left, n.right[last])
	}
	n.right = nil
}

// A row of a heel says of every marker that it slips it, unless it goes to the end over all of them.
func TestHeelsSlipTheirMarkers(t *testing.T) {
	toeUpHeels(t, func(at string, o Heel) {
		if o.asked.TurnMethod == 3 {
			return // yarn overs come and go, and the rows are those of wrapped stitches
		}
		n := markedNeedles{left: make([]bool, o.RoundStitches)}
		for _, r := range o.Rows {
			if r.Part == HeelPartClosing {
				break // of an opening, which is another round
			}
			if wrong := n.row(r.Instruction.Row.Steps); wrong != "" {
				t.Fatalf("%s: row %d of part %d, %q: %s", at, r.RowNumber, r.Part, r.Instruction.Row.Text(), wrong)
			}
			n.rounded()
		}
	})
	flapHeels(t, func(at string, _ HeelInput, o Heel) {
		n := markedNeedles{left: make([]bool, o.RoundStitches)}
		for _, r := range o.Rows {
			if wrong := n.row(r.Instruction.Row.Steps); wrong != "" {
				t.Fatalf("%s: row %d of part %d, %q: %s", at, r.RowNumber, r.Part, r.Instruction.Row.Text(), wrong)
			}
			n.rounded()
		}
	})
}
