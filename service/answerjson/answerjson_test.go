package answerjson

import (
	"bytes"
	"encoding/json"
	"math"
	"math/rand/v2"
	"testing"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"
	"google.golang.org/protobuf/types/known/durationpb"
	"google.golang.org/protobuf/types/known/structpb"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// floats and texts are those that are easily written wrong.
var (
	floats = []float64{0, math.Copysign(0, -1), 1, -2.5, 1.0 / 3, 1e-6, 9.99e-7, -1e-9, 1e-10, 5e-324, 1e20, 1e21, 1.5e22, 1e100,
		math.MaxFloat64, math.NaN(), math.Inf(1), math.Inf(-1), 100, 0.1}
	texts = []string{"", "k2, p2", `"quoted" \ back`, "\n\r\t\b\f\x00\x1f\x7f", "ä½𝄞", "<script>&amp;", "\u2028\u2029", "½ × ±"}
)

// filler fills messages at random, with values at the edges.
type filler struct{ *rand.Rand }

func (f filler) message(m protoreflect.Message, deep int) {
	fields := m.Descriptor().Fields()
	for i := range fields.Len() {
		fd := fields.Get(i)
		switch {
		case f.IntN(3) == 0 || fd.Message() != nil && deep == 0:
		case fd.IsList():
			list := m.Mutable(fd).List()
			for range f.IntN(3) {
				list.Append(f.value(fd, list.NewElement(), deep))
			}
		default:
			m.Set(fd, f.value(fd, m.NewField(fd), deep))
		}
	}
}

func (f filler) value(fd protoreflect.FieldDescriptor, v protoreflect.Value, deep int) protoreflect.Value {
	switch fd.Kind() {
	case protoreflect.MessageKind:
		f.message(v.Message(), deep-1)
		return v
	case protoreflect.EnumKind:
		return protoreflect.ValueOfEnum(protoreflect.EnumNumber(f.IntN(fd.Enum().Values().Len() + 2))) // also what is unknown
	case protoreflect.BoolKind:
		return protoreflect.ValueOfBool(f.IntN(2) == 0)
	case protoreflect.Int32Kind:
		return protoreflect.ValueOfInt32([]int32{0, 1, -1, math.MaxInt32, math.MinInt32, int32(f.IntN(1000))}[f.IntN(6)])
	case protoreflect.DoubleKind:
		return protoreflect.ValueOfFloat64(append(floats, f.NormFloat64()*math.Pow(10, f.Float64()*60-30))[f.IntN(len(floats)+1)])
	default:
		return protoreflect.ValueOfString(texts[f.IntN(len(texts))])
	}
}

// asUsual is how protojson writes a message, without its spaces.
func asUsual(t *testing.T, m proto.Message) string {
	t.Helper()
	data, err := usual.Marshal(m)
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	if err := json.Compact(&out, data); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

// Messages of every type of the wire, empty and full of odd values, are written byte by
// byte as protojson writes them.
func TestAppendIsAsUsual(t *testing.T) {
	f := filler{rand.New(rand.NewPCG(8, 0))}
	types := 0
	protoregistry.GlobalTypes.RangeMessages(func(mt protoreflect.MessageType) bool {
		if mt.Descriptor().ParentFile().Package() != "knitmath.v1" {
			return true
		}
		if types++; planOf(mt) == nil {
			t.Errorf("%s is left to protojson", mt.Descriptor().FullName())
		}
		for n := range 30 {
			m := mt.New()
			if n > 0 {
				f.message(m, 4)
			}
			got, err := Append([]byte("before "), m.Interface())
			if want := "before " + asUsual(t, m.Interface()); err != nil || string(got) != want {
				t.Errorf("%s: %v\n%s\nwant\n%s", mt.Descriptor().FullName(), err, got, want)
				return false
			}
		}
		return true
	})
	if types < 50 {
		t.Errorf("only %d types", types)
	}
}

// What is not planned protojson writes.
func TestOtherMessages(t *testing.T) {
	object, err := structpb.NewStruct(map[string]any{"rows": 3, "text": "k2"})
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range []proto.Message{object, durationpb.New(1500), (*knitmathv1.Gauge)(nil)} {
		got, err := Append(nil, m)
		if want := asUsual(t, m); err != nil || string(got) != want {
			t.Errorf("%T: %v\n%s\nwant\n%s", m, err, got, want)
		}
	}
}

// Text that is not UTF-8 is refused, as it is by protojson.
func TestNotUTF8(t *testing.T) {
	m := &knitmathv1.ComputeCastOnResponse{Summary: "k\xff"}
	if _, err := usual.Marshal(m); err == nil {
		t.Fatal("protojson takes it")
	}
	if _, err := Append(nil, m); err == nil {
		t.Error("it is written")
	}
}
