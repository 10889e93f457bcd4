package service

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"google.golang.org/grpc"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"

	"example.com/knitmath/knitmath/fault"
)

// A question may ask for a part of its answer only: fields lists the paths that
// it wants. All methods have the field, and none knows of it: what is left out
// is taken away between the method and the wire.

const (
	// fieldsField is the field's name, in every question.
	fieldsField = "fields"
	// maxPaths and maxPathLength bound what has to be followed. The longest
	// answer has about two hundred fields in all.
	maxPaths      = 50
	maxPathLength = 200
)

// partUnary leaves out of an answer what was not asked for. Whoever does not say
// what he wants gets everything, and pays for no more than this question.
//
// A wrong path is refused together with everything else that is wrong, so the
// method is asked even then. That is no more work than the right path would have
// been.
func partUnary(ctx context.Context, req any, info *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (any, error) {
	question, ok := req.(interface{ GetFields() []string })
	if !ok || len(question.GetFields()) == 0 {
		return handler(ctx, req)
	}
	md, err := answerDescriptor(info.FullMethod)
	if err != nil {
		return nil, err
	}
	part, faults := readMask(question.GetFields(), md)
	resp, err := handler(ctx, req)
	if len(faults) > 0 {
		return nil, withFaults(err, faults)
	}
	if err != nil {
		return nil, err
	}
	answer, ok := resp.(proto.Message)
	if !ok || answer.ProtoReflect().Descriptor() != md {
		return nil, fmt.Errorf("%s answers with a %T", info.FullMethod, resp)
	}
	part.prune(answer.ProtoReflect())
	if kept, ok := ctx.Value(maskKey{}).(*mask); ok {
		*kept = part
	}
	return answer, nil
}

// answerDescriptor finds the answer of "/package.Service/Method".
func answerDescriptor(fullMethod string) (protoreflect.MessageDescriptor, error) {
	name := strings.ReplaceAll(strings.TrimPrefix(fullMethod, "/"), "/", ".")
	found, err := protoregistry.GlobalFiles.FindDescriptorByName(protoreflect.FullName(name))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", fullMethod, err)
	}
	method, ok := found.(protoreflect.MethodDescriptor)
	if !ok {
		return nil, fmt.Errorf("%s is no method", fullMethod)
	}
	return method.Output(), nil
}

// readMask reads the paths of a question, with every fault in them.
func readMask(paths []string, answer protoreflect.MessageDescriptor) (mask, []fault.Violation) {
	checks := &fault.Checks{}
	checks.Items("", fieldsField, len(paths), maxPaths)
	if !checks.Sound(fieldsField) {
		return nil, checks.Violations
	}
	part := mask{}
	for i, path := range paths {
		at := fault.Index(fieldsField, i)
		if n := utf8.RuneCountInString(path); n > maxPathLength {
			checks.Add(at, fault.ReasonTooMany, "has %d characters; at most %d are allowed", n, maxPathLength)
			continue
		}
		along, wrong := followPath(answer, path)
		if wrong != "" {
			checks.Add(at, reasonUnknown, "is no path of the answer: %s", wrong)
			continue
		}
		part.add(along)
	}
	return part, checks.Violations
}

// withFaults adds faults to those that a method found, if it got so far as to
// look for them.
func withFaults(err error, faults []fault.Violation) error {
	all := fault.InputError{}
	var found *fault.InputError
	switch {
	case errors.As(err, &found):
		all = *found
	case err != nil:
		return err
	}
	all.Violations = append(slices.Clip(all.Violations), faults...)
	return &all
}

// maskKey is the place in the context of a JSON call where the mask is kept for
// the writer of the answer, which sees neither the question nor the method.
type maskKey struct{}
