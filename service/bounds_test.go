package service

import (
	"slices"
	"testing"

	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/fault"
)

// The .proto files say what every field may hold, for machines; the kernel's
// checks are written by hand. These tests walk the descriptors and hold the two
// together: a rule that is too wide or too narrow, on either side, is found.

// outside are the reasons with which a value outside its bounds is refused.
var outside = []fault.Reason{
	fault.ReasonRequired, fault.ReasonOutOfRange, fault.ReasonTooMany, fault.ReasonNotFinite, fault.ReasonUnknownValue,
}

// TestBounds asks every method, for every field at every depth, just inside and
// just outside each bound. Inside, the field may be refused together with others,
// but not for itself; outside, it must be. Every wire case serves as the rest of
// the question, so that no other fault hides what a bound does.
func TestBounds(t *testing.T) {
	server := start(t)
	for m, bases := range basesByMethod(t) {
		t.Run(string(m.desc.Name()), func(t *testing.T) {
			for _, at := range places(m.desc.Input()) {
				for _, probe := range probes(at.last()) {
					asked := 0
					for _, base := range bases {
						question := proto.CloneOf(base)
						at.set(question.ProtoReflect(), probe)
						st := server.refusal(t, m, question)
						if at.foreign(st, probe) {
							continue
						}
						asked++
						where := at.path() + probe.suffix
						got := reasonsAt(st, where)
						refused := slices.ContainsFunc(got, func(r fault.Reason) bool { return slices.Contains(outside, r) })
						if refused == probe.inside {
							t.Errorf("%s is %s, inside %v: %q\n%v", where, probe.name, probe.inside, violations(st), base)
						}
					}
					if asked == 0 {
						t.Errorf("%s is %s: never asked", at.path(), probe.name)
					}
				}
			}
		})
	}
}

// TestDefaults asks with every default left out and written out. Generated
// clients may send defaults, so that a written one must never make a difference.
func TestDefaults(t *testing.T) {
	server := start(t)
	for m, bases := range basesByMethod(t) {
		for _, at := range places(m.desc.Input()) {
			value := defaultOf(t, at.last())
			if !value.IsValid() {
				continue
			}
			compared := 0
			for _, base := range bases {
				left, written := proto.CloneOf(base), proto.CloneOf(base)
				at.parent(left.ProtoReflect()).Clear(at.last())
				at.parent(written.ProtoReflect()).Set(at.last(), value)
				want, got := newMessage(t, m.desc.Output()), newMessage(t, m.desc.Output())
				if server.conn.Invoke(t.Context(), m.full, left, want) != nil {
					continue // without it the question is another one, which has no answer
				}
				compared++
				if err := server.conn.Invoke(t.Context(), m.full, written, got); err != nil {
					t.Errorf("%s: %s written out as %v: %v %q", m.full, at.path(), value, err, violations(status.Convert(err)))
				} else if !proto.Equal(want, got) {
					t.Errorf("%s: %s is %v when left out? %s", m.full, at.path(), value, difference("", want.ProtoReflect(), got.ProtoReflect()))
				}
			}
			if compared == 0 {
				t.Errorf("%s: the default of %s was never asked for", m.full, at.path())
			}
		}
	}
}

// refusal asks over gRPC. An answer is a status without violations.
func (r *running) refusal(t *testing.T, m wireMethod, question proto.Message) *status.Status {
	t.Helper()
	st := status.Convert(r.conn.Invoke(t.Context(), m.full, question, newMessage(t, m.desc.Output())))
	if st.Code() != codes.OK && st.Code() != codes.InvalidArgument {
		t.Errorf("%s: %v for a question of %d bytes", m.full, st, proto.Size(question))
	}
	return st
}

// defaultOf is the default that the .proto file gives a field, if any.
func defaultOf(t *testing.T, fd protoreflect.FieldDescriptor) protoreflect.Value {
	t.Helper()
	said, _ := proto.GetExtension(fd.Options(), knitmathv1.E_DefaultValue).(*knitmathv1.DefaultValue)
	switch value := said.GetValue().(type) {
	case *knitmathv1.DefaultValue_Flag:
		return protoreflect.ValueOfBool(value.Flag)
	case *knitmathv1.DefaultValue_Number:
		if fd.Kind() == protoreflect.Int32Kind {
			return protoreflect.ValueOfInt32(int32(value.Number))
		}
		return protoreflect.ValueOfFloat64(value.Number)
	case *knitmathv1.DefaultValue_Text:
		if named := fd.Enum().Values().ByName(protoreflect.Name(value.Text)); named != nil {
			return protoreflect.ValueOfEnum(named.Number())
		}
		t.Errorf("%s: %q is no value of its enum", fd.FullName(), value.Text)
	}
	return protoreflect.Value{}
}
