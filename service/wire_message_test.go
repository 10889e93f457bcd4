package service

import (
	"fmt"
	"strings"

	"google.golang.org/genproto/googleapis/rpc/errdetails"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// violations are the faults a status lists, "field REASON".
func violations(st *status.Status) []string {
	var out []string
	for _, d := range st.Details() {
		if bad, ok := d.(*errdetails.BadRequest); ok {
			for _, v := range bad.FieldViolations {
				if v.Description == "" {
					out = append(out, v.Field+" has no description")
				}
				out = append(out, strings.TrimSpace(v.Field+" "+v.Reason))
			}
		}
	}
	return out
}

func errorInfo(st *status.Status) string {
	for _, d := range st.Details() {
		if info, ok := d.(*errdetails.ErrorInfo); ok && info.Domain == errorDomain {
			return info.Reason
		}
	}
	return ""
}

// difference names the first field in which two messages differ. Floats may
// differ by a few units of the last place: not every machine fuses the same
// operations.
func difference(path string, want, got protoreflect.Message) string {
	fields := want.Descriptor().Fields()
	for i := range fields.Len() {
		fd := fields.Get(i)
		at := joinPath(path, string(fd.Name()))
		if want.Has(fd) != got.Has(fd) {
			return fmt.Sprintf("%s: want present %v, got %v", at, want.Has(fd), got.Has(fd))
		}
		if !want.Has(fd) {
			continue
		}
		if !fd.IsList() {
			if where := differentValue(at, fd, want.Get(fd), got.Get(fd)); where != "" {
				return where
			}
			continue
		}
		a, b := want.Get(fd).List(), got.Get(fd).List()
		if a.Len() != b.Len() {
			return fmt.Sprintf("%s: want %d items, got %d", at, a.Len(), b.Len())
		}
		for j := range a.Len() {
			if where := differentValue(fmt.Sprintf("%s[%d]", at, j), fd, a.Get(j), b.Get(j)); where != "" {
				return where
			}
		}
	}
	return ""
}

func differentValue(at string, fd protoreflect.FieldDescriptor, want, got protoreflect.Value) string {
	same := want.Equal(got)
	switch {
	case fd.Message() != nil:
		return difference(at, want.Message(), got.Message())
	case fd.Kind() == protoreflect.DoubleKind:
		a, b := want.Float(), got.Float()
		same = same || max(a-b, b-a) <= 1e-12*max(a, -a)
	}
	if same {
		return ""
	}
	return fmt.Sprintf("%s: want %v, got %v", at, want, got)
}
