package main

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"

	"example.com/knitmath/proto/bounds"
)

// changer changes questions at random, within the bounds that their fields state:
// what is outside of one is refused before anything is worked.
type changer struct {
	*rand.Rand
	reader bounds.Reader
	known  map[protoreflect.FullName]bounds.Bounds
}

func newChanger(seed uint64) *changer {
	return &changer{rand.New(rand.NewPCG(seed, 0)), bounds.NewReader(protoregistry.GlobalFiles), map[protoreflect.FullName]bounds.Bounds{}}
}

// boundsOf are the bounds of a field.
func (c *changer) boundsOf(fd protoreflect.FieldDescriptor) bounds.Bounds {
	b, ok := c.known[fd.FullName()]
	if !ok {
		var err error
		if b, err = c.reader.Field(fd); err != nil {
			panic(err) // the generator refuses such a field
		}
		c.known[fd.FullName()] = b
	}
	return b
}

// changed is a copy of a question with a few fields changed.
func (c *changer) changed(question proto.Message) proto.Message {
	next := proto.CloneOf(question)
	for range 1 + c.IntN(3) {
		c.message(next.ProtoReflect())
	}
	return next
}

// message changes one field of a message, or of one within it.
func (c *changer) message(m protoreflect.Message) {
	fields := m.Descriptor().Fields()
	fd := fields.Get(c.IntN(fields.Len()))
	switch {
	case fd.Name() == "fields": // what to leave out of the answer
	case fd.IsList():
		c.list(m, fd)
	case fd.Message() != nil:
		c.within(m, fd)
	case fd.HasPresence() && c.IntN(4) == 0 || c.IntN(20) == 0:
		m.Clear(fd)
	default:
		c.alone(m, fd)
		m.Set(fd, c.value(fd, c.boundsOf(fd), m.Get(fd)))
	}
}

// within changes a message in a field, puts one there or takes it away.
func (c *changer) within(m protoreflect.Message, fd protoreflect.FieldDescriptor) {
	switch {
	case !m.Has(fd):
		c.alone(m, fd)
		m.Set(fd, c.filled(m.NewField(fd)))
	case c.IntN(5) == 0:
		m.Clear(fd)
	default:
		c.message(m.Mutable(fd).Message())
	}
}

// filled is a message with something in every field of its own.
func (c *changer) filled(v protoreflect.Value) protoreflect.Value {
	for range 2 * v.Message().Descriptor().Fields().Len() {
		c.message(v.Message())
	}
	return v
}

// alone takes away what a field excludes.
func (c *changer) alone(m protoreflect.Message, fd protoreflect.FieldDescriptor) {
	choices, err := c.reader.Choices(m.Descriptor())
	if err != nil {
		panic(err) // the generator refuses such a message
	}
	for _, choice := range choices {
		if slices.Contains(choice.Fields, string(fd.Name())) {
			for _, other := range choice.Fields {
				m.Clear(m.Descriptor().Fields().ByName(protoreflect.Name(other)))
			}
		}
	}
}

// value is another value of a field, or of an item.
func (c *changer) value(fd protoreflect.FieldDescriptor, b bounds.Bounds, now protoreflect.Value) protoreflect.Value {
	switch fd.Kind() {
	case protoreflect.BoolKind:
		return protoreflect.ValueOfBool(!now.Bool())
	case protoreflect.EnumKind:
		return protoreflect.ValueOfEnum(protoreflect.EnumNumber(c.IntN(fd.Enum().Values().Len())))
	case protoreflect.Int32Kind:
		return protoreflect.ValueOfInt32(int32(c.number(b, float64(now.Int()), 1) + 0.5))
	case protoreflect.DoubleKind:
		return protoreflect.ValueOfFloat64(c.number(b, now.Float(), 0.1))
	case protoreflect.StringKind:
		length := 0
		if b.MaxLength != nil {
			length = int(*b.MaxLength)
		}
		return protoreflect.ValueOfString(strings.Repeat("x", c.IntN(length+1)))
	}
	panic(fmt.Sprintf("no question has a field like %s", fd.FullName()))
}

// number is another number within bounds: one of the two, any between, by size or
// by its logarithm, or one near to what it is now.
func (c *changer) number(b bounds.Bounds, now, step float64) float64 {
	low, high := 0.0, 100.0
	if b.Minimum != nil {
		low = *b.Minimum
	}
	if b.Maximum != nil {
		high = *b.Maximum
	}
	n := now
	switch c.IntN(8) {
	case 0:
		n = low
	case 1:
		n = high
	case 2:
		n = low + c.Float64()*(high-low)
	case 3:
		least := max(low, step)
		n = least * math.Pow(max(high, least)/least, c.Float64())
	case 4:
		n = now * (0.9 + 0.2*c.Float64())
	case 5:
		n = now * (0.5 + 1.5*c.Float64())
	case 6:
		n = now + step
	case 7:
		n = now - step
	}
	return min(max(n, low), high)
}
