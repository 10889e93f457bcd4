package main

import (
	"encoding/json"
	"errors"
	"os"

	"google.golang.org/protobuf/proto"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/service/carry"
)

// found is a question with what it took.
type found struct {
	Method   string `json:"method"`
	Aim      string `json:"aim"`
	Climbed  bool   `json:"climbed"` // and not known before
	Price    int    `json:"price"`
	Sought   int    `json:"sought"` // the price of what its refusal asked beside
	Refused  bool   `json:"refused"`
	Blocks   int64  `json:"blocks"`
	Bytes    int64  `json:"bytes"`
	question proto.Message
}

// steps are all that is paid for.
func (f found) steps() int { return f.Price + f.Sought + Ground }

// measured asks a question and counts.
func measured(m method, question proto.Message) (found, error) {
	f := found{Method: m.name, question: question}
	f.Price, _ = carry.Price(question)
	var err error
	f.Blocks, f.Bytes, err = counted(func() {
		_, refusal := m.ask(question)
		f.Refused = refusal != nil
		var faults *fault.InputError
		if errors.As(refusal, &faults) {
			f.Sought = faults.Sought
		}
	})
	return f, err
}

// aim is what a climb makes as great as it can.
type aim struct {
	name string
	of   func(found) float64
}

// aims are the ways in which a question can be dear: it is worked long, it takes
// memory, or it takes either for less than its price says. A refusal is no better
// than an answer, and has aims of its own since most questions that take much are
// accepted.
var aims = []aim{
	{"blocks", func(f found) float64 { return float64(f.Blocks) }},
	{"bytes", func(f found) float64 { return float64(f.Bytes) }},
	{"blocks for its price", func(f found) float64 { return float64(f.Blocks) / float64(f.steps()) }},
	{"bytes for its price", func(f found) float64 { return float64(f.Bytes) / float64(f.steps()) }},
	{"blocks of a refusal", func(f found) float64 { return ifRefused(f, f.Blocks) }},
	{"bytes of a refusal", func(f found) float64 { return ifRefused(f, f.Bytes) }},
}

func ifRefused(f found, n int64) float64 {
	if f.Refused {
		return float64(n)
	}
	return 0
}

// dearest climbs for every aim, prints what it began with and what it found, and
// returns the dearer of both.
func dearest(m method, known map[string]proto.Message, steps int, seed uint64) (map[string]proto.Message, error) {
	out := json.NewEncoder(os.Stdout)
	best := map[string]proto.Message{}
	for _, by := range aims {
		from, err := measured(m, known[by.name])
		if err != nil {
			return nil, err
		}
		from.Aim = by.name
		to, err := climb(m, from, by, steps, seed)
		if err != nil {
			return nil, err
		}
		best[by.name] = to.question
		for _, f := range []found{from, to} {
			if err := out.Encode(f); err != nil {
				return nil, err
			}
		}
	}
	return best, nil
}

// climb changes a question again and again, and goes on from what takes more or as
// much.
func climb(m method, from found, by aim, steps int, seed uint64) (found, error) {
	c, at := newChanger(seed), from
	for range steps {
		next, err := measured(m, c.changed(at.question))
		if err != nil {
			return at, err
		}
		if by.of(next) >= by.of(at) {
			at = next
		}
	}
	at.Aim, at.Climbed = by.name, true
	return at, nil
}
