package service

import (
	"bytes"
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"buf.build/gen/go/bufbuild/protovalidate/protocolbuffers/go/buf/validate"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/knitmath/pattern"
	"example.com/knitmath/knitmath/stitch"
	"example.com/knitmath/knitmath/yardage"
)

// sharedLimits are the most items of lists that are bounded together, shared out
// evenly: that makes a question no shorter than any other way. All other limits
// are rules of the .proto files.
var sharedLimits = map[protoreflect.FullName]int{
	"RowwisePiece.row_stitches": yardage.MaxRowwiseRows / yardage.MaxPieces,   // in all pieces
	"RowsAhead.row_stitches":    stitch.MaxRows / yardage.MaxSections,         // in all items
	"PatternRow.steps":          pattern.MaxStepsGiven / pattern.MaxRowsGiven, // in all rows
	"PatternStep.times":         pattern.MaxListedGiven/pattern.MaxStepsGiven + 1,
	// in all lists of several numbers; and a step may have a single one
	"PatternRow.claimed_change_stitches": 1, // likewise
}

// leftOut are fields that cannot be given beside longer ones.
var leftOut = []protoreflect.FullName{
	"FormatInstructionsRequest.text", "MirrorInstructionsRequest.text", // beside rows
	"PatternRow.direction", "PatternRow.claimed_stitches", // beside steps, and a change
	"PatternStep.name", "PatternStep.steps", "PatternStep.into_one_stitch", // beside an operation
	"PatternStep.remaining_stitches", "PatternStep.before_marker_stitches", // beside times
	"Piece.counted", "Piece.trapezoid", // beside rows
}

// TestLongestQuestionsFit builds the longest question that the stated limits of
// each method allow, every list full and every text, name and number as long as it
// may be, and wants either face to read it. JSON is counted as it must be written:
// without white space, in UTF-8, and with backslashes only where JSON demands them.
func TestLongestQuestionsFit(t *testing.T) {
	server := start(t)
	for _, service := range wireServices() {
		for i := range service.Methods().Len() {
			m := findMethod(t, string(service.Name())+"/"+string(service.Methods().Get(i).Name()))
			question := newMessage(t, m.desc.Input())
			fillLongest(t, question.ProtoReflect())
			asJSON, err := protojson.MarshalOptions{UseProtoNames: true}.Marshal(question)
			if err != nil {
				t.Fatal(err)
			}
			var body bytes.Buffer
			if err := json.Compact(&body, asJSON); err != nil {
				t.Fatal(err)
			}
			t.Logf("%-45s %7d bytes as JSON, %7d over gRPC", m.full, body.Len(), proto.Size(question))
			if body.Len() > maxQuestionBytes || proto.Size(question) > maxQuestionBytes {
				t.Errorf("%s: the longest question has %d bytes as JSON and %d over gRPC; %d are read",
					m.full, body.Len(), proto.Size(question), maxQuestionBytes)
			}
			if got := server.send(t, "POST", m.path, body.String()); got.code != 200 && got.code != 400 {
				t.Errorf("%s: HTTP %d", m.full, got.code)
			}
			err = server.conn.Invoke(t.Context(), m.full, question, newMessage(t, m.desc.Output()))
			if code := status.Code(err); code != codes.OK && code != codes.InvalidArgument {
				t.Errorf("%s: %v", m.full, err)
			}
		}
	}
}

func fillLongest(t *testing.T, m protoreflect.Message) {
	t.Helper()
	for i := range m.Descriptor().Fields().Len() {
		fd := m.Descriptor().Fields().Get(i)
		switch {
		case slices.Contains(leftOut, nameOf(fd)):
		case fd.IsList():
			list := m.Mutable(fd).List()
			for range limitOf(t, fd) {
				list.Append(longestValue(t, fd, list.NewElement))
			}
		default:
			m.Set(fd, longestValue(t, fd, func() protoreflect.Value { return m.NewField(fd) }))
		}
	}
}

func longestValue(t *testing.T, fd protoreflect.FieldDescriptor, empty func() protoreflect.Value) protoreflect.Value {
	t.Helper()
	switch fd.Kind() {
	case protoreflect.MessageKind:
		v := empty()
		fillLongest(t, v.Message())
		return v
	case protoreflect.EnumKind:
		return protoreflect.ValueOfEnum(longestName(fd))
	case protoreflect.Int32Kind:
		if strings.Contains(string(fd.Name()), "change") {
			return protoreflect.ValueOfInt32(-10_000)
		}
		return protoreflect.ValueOfInt32(10_000)
	case protoreflect.DoubleKind:
		return protoreflect.ValueOfFloat64(1.2345678901234567e-06)
	case protoreflect.BoolKind:
		return protoreflect.ValueOfBool(true)
	}
	rules, _ := proto.GetExtension(fd.Options(), validate.E_Field).(*validate.FieldRules)
	switch {
	case fd.Name() == fieldsField: // paths, which are ASCII
		return protoreflect.ValueOfString(strings.Repeat("x", int(rules.GetRepeated().GetItems().GetString().GetMaxLen())))
	case rules.GetString().HasMaxBytes():
		return protoreflect.ValueOfString(strings.Repeat(`"`, limitOf(t, fd)))
	}
	return protoreflect.ValueOfString(strings.Repeat("🧶", limitOf(t, fd)))
}

func longestName(fd protoreflect.FieldDescriptor) protoreflect.EnumNumber {
	if nameOf(fd) == "PatternStep.operation" {
		return protoreflect.EnumNumber(knitmathv1.Operation_OPERATION_SLIP) // No other has a manner beside it.
	}
	values, longest := fd.Enum().Values(), 1 // 0 is not written
	for i := 1; i < values.Len(); i++ {
		if len(values.Get(i).Name()) > len(values.Get(longest).Name()) {
			longest = i
		}
	}
	return values.Get(longest).Number()
}

// nameOf is the name of a field with that of its message.
func nameOf(fd protoreflect.FieldDescriptor) protoreflect.FullName {
	return protoreflect.FullName(strings.TrimPrefix(string(fd.FullName()), wirePackage+"."))
}

// limitOf is the most items of a list, or characters of a text.
func limitOf(t *testing.T, fd protoreflect.FieldDescriptor) int {
	t.Helper()
	if limit, ok := sharedLimits[nameOf(fd)]; ok {
		return limit
	}
	rules, _ := proto.GetExtension(fd.Options(), validate.E_Field).(*validate.FieldRules)
	limit := rules.GetRepeated().GetMaxItems()
	if !fd.IsList() {
		limit = max(rules.GetString().GetMaxLen(), rules.GetString().GetMaxBytes())
	}
	if limit == 0 {
		t.Errorf("%s: no limit is stated", nameOf(fd))
	}
	return int(limit)
}
