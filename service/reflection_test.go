package service

import (
	"os"
	"slices"
	"strings"
	"testing"

	"google.golang.org/grpc"
	reflectionv1 "google.golang.org/grpc/reflection/grpc_reflection_v1"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protodesc"
	"google.golang.org/protobuf/types/descriptorpb"
)

// askReflection returns what the service answers to one request of a reflecting client.
func askReflection(
	t *testing.T, conn grpc.ClientConnInterface, ask *reflectionv1.ServerReflectionRequest,
) *reflectionv1.ServerReflectionResponse {
	t.Helper()
	stream, err := reflectionv1.NewServerReflectionClient(conn).ServerReflectionInfo(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	if err := stream.Send(ask); err != nil {
		t.Fatal(err)
	}
	got, err := stream.Recv()
	if err != nil {
		t.Fatal(err)
	}
	if err := stream.CloseSend(); err != nil {
		t.Error(err)
	}
	return got
}

// Every file of the contract is served as gen/knitmath.binpb has it but for comments,
// with all that it imports, so that a client has whatever the options mean.
func TestReflectionServesTheWholeContract(t *testing.T) {
	data, err := os.ReadFile("../gen/knitmath.binpb")
	if err != nil {
		t.Fatal(err)
	}
	image := &descriptorpb.FileDescriptorSet{}
	if err := proto.Unmarshal(data, image); err != nil {
		t.Fatal(err)
	}
	want := map[string]*descriptorpb.FileDescriptorProto{}
	for _, file := range image.File {
		file.SourceCodeInfo = nil
		want[file.GetName()] = file
	}
	conn := start(t).conn
	got := askReflection(t, conn, &reflectionv1.ServerReflectionRequest{
		MessageRequest: &reflectionv1.ServerReflectionRequest_FileContainingSymbol{FileContainingSymbol: "knitmath.v1.YokeService"}})
	set := &descriptorpb.FileDescriptorSet{}
	for _, raw := range got.GetFileDescriptorResponse().GetFileDescriptorProto() {
		file := &descriptorpb.FileDescriptorProto{}
		if err := proto.Unmarshal(raw, file); err != nil {
			t.Fatal(err)
		}
		set.File = append(set.File, file)
		if !proto.Equal(file, want[file.GetName()]) {
			t.Errorf("%s is not what the image has", file.GetName())
		}
	}
	files, err := protodesc.NewFiles(set) // Refuses a set that lacks an import.
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range []string{"buf/validate/validate.proto", "google/api/annotations.proto", "knitmath/v1/report.proto"} {
		if _, err := files.FindFileByPath(path); err != nil {
			t.Error(err)
		}
	}
	for path := range want {
		got := askReflection(t, conn, &reflectionv1.ServerReflectionRequest{
			MessageRequest: &reflectionv1.ServerReflectionRequest_FileByFilename{FileByFilename: path}})
		if len(got.GetFileDescriptorResponse().GetFileDescriptorProto()) == 0 {
			t.Errorf("%s: %v", path, got.GetErrorResponse())
		}
	}
}

// What the options are is found by the message that they extend, too.
func TestReflectionKnowsTheOptions(t *testing.T) {
	conn := start(t).conn
	got := askReflection(t, conn, &reflectionv1.ServerReflectionRequest{
		MessageRequest: &reflectionv1.ServerReflectionRequest_AllExtensionNumbersOfType{
			AllExtensionNumbersOfType: "google.protobuf.FieldOptions"}})
	numbers := got.GetAllExtensionNumbersResponse().GetExtensionNumber()
	for _, want := range []int32{int32(rulesOption), 1052} { // google.api.field_behavior
		if !slices.Contains(numbers, want) {
			t.Errorf("%d is not among %v", want, numbers)
		}
	}
	got = askReflection(t, conn, &reflectionv1.ServerReflectionRequest{
		MessageRequest: &reflectionv1.ServerReflectionRequest_FileContainingExtension{FileContainingExtension: &reflectionv1.ExtensionRequest{
			ContainingType: "google.protobuf.MethodOptions", ExtensionNumber: int32(httpOption)}}})
	files := got.GetFileDescriptorResponse().GetFileDescriptorProto()
	if len(files) == 0 || !strings.Contains(string(files[0]), "google/api/annotations.proto") {
		t.Errorf("google.api.http: %v", got.GetErrorResponse())
	}
}
