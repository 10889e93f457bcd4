package abuse

import (
	"context"
	"encoding/json"
	"errors"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"

	"google.golang.org/genproto/googleapis/api/annotations"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

// dearestOfAll are the questions of every method that take most, as climbs have found
// them (service/dearest/testdata), so that a new method is among the attackers as soon as
// it has been climbed for.
var dearestOfAll = sync.OnceValues(func() ([]question, error) {
	dir, err := exec.Command("go", "list", "-f", "{{.Dir}}", "example.com/knitmath/service/dearest").Output()
	if err != nil {
		return nil, err
	}
	var all []question
	for _, file := range []protoreflect.FileDescriptor{
		knitmathv1.File_knitmath_v1_gauge_proto, knitmathv1.File_knitmath_v1_shaping_proto, knitmathv1.File_knitmath_v1_short_row_proto,
		knitmathv1.File_knitmath_v1_yoke_proto, knitmathv1.File_knitmath_v1_edge_proto, knitmathv1.File_knitmath_v1_yarn_proto,
		knitmathv1.File_knitmath_v1_body_proto, knitmathv1.File_knitmath_v1_pattern_proto,
	} {
		for i := range file.Services().Len() {
			methods := file.Services().Get(i).Methods()
			for k := range methods.Len() {
				known, err := knownOf(methods.Get(k), filepath.Join(strings.TrimSpace(string(dir)), "testdata"))
				if err != nil {
					return nil, err
				}
				all = append(all, known...)
			}
		}
	}
	return all, nil
})

// knownOf are the known questions of a method; none of those that are asked in text.
func knownOf(method protoreflect.MethodDescriptor, folder string) ([]question, error) {
	data, err := os.ReadFile(filepath.Join(folder, string(method.Name())+".json"))
	if errors.Is(err, os.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	var list []struct{ Question json.RawMessage }
	if err := json.Unmarshal(data, &list); err != nil {
		return nil, err
	}
	kind, err := protoregistry.GlobalTypes.FindMessageByName(method.Input().FullName())
	if err != nil {
		return nil, err
	}
	var known []question
	for _, k := range list {
		q := question{method: "/" + string(method.Parent().FullName()) + "/" + string(method.Name()), path: pathOf(method),
			json: string(k.Question), message: kind.New().Interface()}
		if err := protojson.Unmarshal(k.Question, q.message); err != nil {
			return nil, err
		}
		known = append(known, q)
	}
	return known, nil
}

// pathOf is where a method is asked by POST.
func pathOf(method protoreflect.MethodDescriptor) string {
	rule, _ := proto.GetExtension(method.Options(), annotations.E_Http).(*annotations.HttpRule)
	for _, binding := range append([]*annotations.HttpRule{rule}, rule.GetAdditionalBindings()...) {
		if path := binding.GetPost(); path != "" {
			return path
		}
	}
	panic(method.FullName() + " is not asked by POST")
}

// allDearCallers ask the dearest questions of all methods in turn, each caller beginning
// with another one.
func allDearCallers(face string) func(context.Context, Addresses, int) Beside {
	return func(ctx context.Context, at Addresses, size int) Beside {
		all, err := dearestOfAll()
		if err != nil || len(all) == 0 {
			panic(err) // They lie in the project.
		}
		next := make([]int, size)
		return callersOf(face, func(i int) question {
			next[i]++
			return all[(i*len(all)/size+next[i])%len(all)]
		})(ctx, at, size)
	}
}

// isWrong says whether a question was refused because it is wrong, as some of the dearest
// are: that is an answer.
func isWrong(err error) bool {
	var code refusedError
	if errors.As(err, &code) {
		return code == http.StatusBadRequest
	}
	return status.Code(err) == codes.InvalidArgument
}
