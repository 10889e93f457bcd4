package service

import (
	"context"
	"errors"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"google.golang.org/genproto/googleapis/rpc/errdetails"
	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/protoadapt"
	"google.golang.org/protobuf/types/known/durationpb"

	"example.com/knitmath/knitmath/fault"
	"example.com/knitmath/service/admit"
	"example.com/knitmath/service/caller"
)

const (
	// errorDomain is the domain of every ErrorInfo.
	errorDomain = "knitmath.example.com"
	// reasonInvalidInput is the ErrorInfo reason of every refused question.
	reasonInvalidInput = "INVALID_INPUT"
	// internalText is all that a caller learns of a fault of ours.
	internalText = "internal error"
	// maxViolations bounds the faults one reply lists. The details of a gRPC
	// error travel in a trailer, and usual clients refuse trailers beyond 8 KiB;
	// the message says how many faults there were in all.
	maxViolations = 50
	// maxDetailBytes bounds what the listed faults take together, for the same
	// reason: in a trailer they are a third longer, in base64.
	maxDetailBytes = 5_600
	// maxFieldLength and maxDescriptionLength bound what a reply repeats of the
	// caller's own words, for the same reason.
	maxFieldLength = 120
	// The names of every enumeration but that of the operations of a pattern fit.
	maxDescriptionLength = 600
)

// failure is an error with the status the caller sees and the cause that only
// the log sees.
type failure struct {
	status *status.Status
	cause  error
}

func (f *failure) Error() string { return f.status.Message() + ": " + f.cause.Error() }

// GRPCStatus is what both faces send.
func (f *failure) GRPCStatus() *status.Status { return f.status }

func (f *failure) Unwrap() error { return f.cause }

// refuseUnary gives the error of a handler its status. A handler that knows no
// transport returns the kernel's errors as they are.
func refuseUnary(ctx context.Context, req any, info *grpc.UnaryServerInfo, handler grpc.UnaryHandler) (any, error) {
	resp, err := partUnary(ctx, req, info, handler)
	if _, ok := status.FromError(err); ok {
		return resp, err
	}
	var input *fault.InputError
	if question, ok := req.(proto.Message); ok && errors.As(err, &input) {
		faults := ofGiven(question.ProtoReflect(), input.Violations)
		return nil, &failure{invalidBeyond(faults, input.Unlisted), err}
	}
	return nil, asFailure(err)
}

// asFailure maps an error of the kernel to the wire: faults of the question are
// INVALID_ARGUMENT with every fault, what the gate turned away is
// RESOURCE_EXHAUSTED, whoever may not call is told why, and anything else is INTERNAL.
func asFailure(err error) error {
	var input *fault.InputError
	var refused *admit.Refusal
	var stranger *caller.Refusal
	switch {
	case errors.As(err, &input):
		return &failure{invalidBeyond(input.Violations, input.Unlisted), err}
	case errors.As(err, &refused):
		return &failure{refusedForLoad(refused), err}
	case errors.As(err, &stranger):
		return &failure{refusedCaller(stranger), err}
	case errors.Is(err, context.Canceled), errors.Is(err, context.DeadlineExceeded): // while it waited
		return &failure{status.FromContextError(err), err}
	}
	return internalFault(err)
}

// invalid is the status of a question with faults.
func invalid(violations []fault.Violation) *status.Status {
	return invalidBeyond(violations, 0)
}

// invalidBeyond is the status of a question with faults, of which some more have
// been counted than are listed. Where the list is cut, the text says so for people
// and the metadata of the ErrorInfo for machines.
func invalidBeyond(violations []fault.Violation, unlisted int) *status.Status {
	all := len(violations) + unlisted
	bad := &errdetails.BadRequest{}
	for _, v := range violations[:min(len(violations), maxViolations)] {
		bad.FieldViolations = append(bad.FieldViolations, &errdetails.BadRequest_FieldViolation{
			Field:       shorten(v.Field, maxFieldLength),
			Reason:      string(v.Reason),
			Description: shortenWords(v.Detail, maxDescriptionLength),
		})
		if last := len(bad.FieldViolations) - 1; last > 0 && proto.Size(bad) > maxDetailBytes {
			bad.FieldViolations = bad.FieldViolations[:last]
			break
		}
	}
	listed := len(bad.FieldViolations)
	info := &errdetails.ErrorInfo{Reason: reasonInvalidInput, Domain: errorDomain}
	text := fmt.Sprintf("the question has %d faults", all)
	if all == 1 {
		text = "the question has 1 fault"
	}
	if listed < all {
		text += fmt.Sprintf("; the first %d are listed", listed)
		info.Metadata = map[string]string{"faults": strconv.Itoa(all), "listed": strconv.Itoa(listed)}
	}
	return detailed(codes.InvalidArgument, text, info, bad)
}

// refusal is a status with an ErrorInfo and no further details.
func refusal(code codes.Code, reason, text string) *status.Status {
	return detailed(code, text, &errdetails.ErrorInfo{Reason: reason, Domain: errorDomain})
}

// overloaded is the status of a call that is refused because of what else is going
// on: the same call may well be answered after a while. It says how long to wait,
// over gRPC as RetryInfo and over JSON as Retry-After (writeStatus).
func overloaded(reason, text string, after time.Duration) *status.Status {
	return detailed(codes.ResourceExhausted, text, &errdetails.ErrorInfo{Reason: reason, Domain: errorDomain},
		&errdetails.RetryInfo{RetryDelay: durationpb.New(after)})
}

// retryAfter is the Retry-After header of a status, in whole seconds rounded up;
// "" when the status says nothing of trying again.
func retryAfter(st *status.Status) string {
	if after, told := retryDelay(st); told {
		return strconv.Itoa(int((after + time.Second - 1) / time.Second))
	}
	return ""
}

// retryDelay is when a status says to try again, if it does.
func retryDelay(st *status.Status) (after time.Duration, told bool) {
	for _, d := range st.Details() {
		if info, ok := d.(*errdetails.RetryInfo); ok {
			return info.GetRetryDelay().AsDuration(), true
		}
	}
	return 0, false
}

func detailed(code codes.Code, text string, details ...protoadapt.MessageV1) *status.Status {
	st, err := status.New(code, text).WithDetails(details...)
	if err != nil {
		// Only an OK code, or details that cannot be serialised, come here; a
		// status without details is still the right code.
		return status.New(code, text)
	}
	return st
}

// violatedFields lists the fields a status complains of, for the log.
func violatedFields(st *status.Status) []string {
	var fields []string
	for _, d := range st.Details() {
		if bad, ok := d.(*errdetails.BadRequest); ok {
			for _, v := range bad.GetFieldViolations() {
				fields = append(fields, loggedField(v)+" "+v.GetReason())
			}
		}
	}
	return fields
}

// loggedField is the path of a violation for the log, which holds none of the
// caller's words: a field that does not exist has a name of the caller's own.
func loggedField(v *errdetails.BadRequest_FieldViolation) string {
	if v.GetReason() == string(reasonUnknown) && !askedField.MatchString(v.GetField()) {
		return "?"
	}
	return v.GetField()
}

// askedField is the place of a path in the fields that a question asks for.
var askedField = regexp.MustCompile(`^fields\[\d+\]$`)

// shortenWords cuts s likewise, but between words where it has any: half a name is none.
func shortenWords(s string, limit int) string {
	cut := shorten(s, limit)
	if len(s) <= limit {
		return cut
	}
	if end := strings.LastIndexByte(cut, ' '); end > limit/2 {
		return cut[:end] + " ..."
	}
	return cut
}

// shorten cuts s to at most limit bytes of valid UTF-8; protobuf strings allow
// nothing else.
func shorten(s string, limit int) string {
	s = strings.ToValidUTF8(s, "\uFFFD")
	if len(s) <= limit {
		return s
	}
	for limit > 0 && !utf8.RuneStart(s[limit]) {
		limit--
	}
	return s[:limit] + "..."
}
