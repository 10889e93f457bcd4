package carry

import (
	"math"
	"testing"

	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/knitmath/cost"
)

// A price is a number from 0 to the greatest, whatever the fields hold.
func TestPricesOfHostileQuestions(t *testing.T) {
	for _, c := range carriers {
		for _, whole := range []int32{math.MinInt32, -1, 0, 1, math.MaxInt32} {
			for _, float := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), -1, 0, 5e-324, math.MaxFloat64} {
				m := c.question.ProtoReflect().New()
				hostile(m, whole, float, 2)
				if steps, ok := Price(m.Interface()); !ok || steps < 0 || steps > cost.Most {
					t.Errorf("%s of %d and %v costs %d, %v", m.Descriptor().Name(), whole, float, steps, ok)
				}
			}
		}
	}
	if steps, ok := Price(nil); ok || steps != 0 {
		t.Errorf("nothing costs %d, %v", steps, ok)
	}
}

// hostile fills every field, lists with two items, messages so deep.
func hostile(m protoreflect.Message, whole int32, float float64, depth int) {
	for i := range m.Descriptor().Fields().Len() {
		fd := m.Descriptor().Fields().Get(i)
		if fd.Message() != nil && depth == 0 {
			continue
		}
		value := func(v protoreflect.Value) protoreflect.Value {
			switch fd.Kind() {
			case protoreflect.MessageKind:
				hostile(v.Message(), whole, float, depth-1)
			case protoreflect.Int32Kind:
				return protoreflect.ValueOfInt32(whole)
			case protoreflect.DoubleKind:
				return protoreflect.ValueOfFloat64(float)
			case protoreflect.EnumKind:
				return protoreflect.ValueOfEnum(protoreflect.EnumNumber(whole))
			}
			return v
		}
		if fd.IsList() {
			list := m.Mutable(fd).List()
			list.Append(value(list.NewElement()))
			list.Append(value(list.NewElement()))
			continue
		}
		m.Set(fd, value(m.NewField(fd)))
	}
}
