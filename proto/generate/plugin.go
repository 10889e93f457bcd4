package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/types/descriptorpb"
	"google.golang.org/protobuf/types/pluginpb"
)

// pluginDocument is the document as the OpenAPI plugin makes it. It makes one
// for each .proto file that has a service; they are merged into one, because that
// is what pages and client generators read.
func pluginDocument(files *descriptorpb.FileDescriptorSet) ([]byte, error) {
	response, err := runPlugin(openAPIRequest(files))
	if err != nil {
		return nil, err
	}
	dir, err := os.MkdirTemp("", "openapi")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	merge := []string{"tool", "openapiv3-merge"}
	for _, part := range response.File {
		name := filepath.Join(dir, filepath.Base(part.GetName()))
		if err := os.WriteFile(name, []byte(part.GetContent()), 0o600); err != nil {
			return nil, err
		}
		merge = append(merge, name)
	}
	return output(exec.Command("go", merge...))
}

// openAPIRequest asks the plugin for the project's own files. The plugin has no
// setting for field names and always takes the JSON name of the descriptor;
// since the service speaks the proto names, these are put in its place, in a
// copy.
func openAPIRequest(files *descriptorpb.FileDescriptorSet) *pluginpb.CodeGeneratorRequest {
	files = proto.CloneOf(files)
	request := &pluginpb.CodeGeneratorRequest{ProtoFile: files.File}
	for _, file := range files.File {
		if isOwn(file) {
			request.FileToGenerate = append(request.FileToGenerate, file.GetName())
			useProtoNames(file.MessageType)
		}
	}
	return request
}

// useProtoNames makes the JSON name of every field its proto name.
func useProtoNames(messages []*descriptorpb.DescriptorProto) {
	for _, message := range messages {
		for _, field := range message.Field {
			field.JsonName = field.Name
		}
		useProtoNames(message.NestedType)
	}
}

// runPlugin hands the request to the plugin, over the protocol that protoc
// speaks with its plugins.
func runPlugin(request *pluginpb.CodeGeneratorRequest) (*pluginpb.CodeGeneratorResponse, error) {
	in, err := proto.Marshal(request)
	if err != nil {
		return nil, err
	}
	cmd := exec.Command("go", "tool", "protoc-gen-openapiv3")
	cmd.Stdin = bytes.NewReader(in)
	out, err := output(cmd)
	if err != nil {
		return nil, err
	}
	response := &pluginpb.CodeGeneratorResponse{}
	if err := proto.Unmarshal(out, response); err != nil {
		return nil, err
	}
	// A plugin reports a fault in its reply and exits with success.
	if response.Error != nil {
		return nil, fmt.Errorf("protoc-gen-openapiv3: %s", response.GetError())
	}
	return response, nil
}

// output runs the command and returns what it printed, its complaints going
// straight to the terminal.
func output(cmd *exec.Cmd) ([]byte, error) {
	cmd.Stderr = os.Stderr
	out, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("%s: %w", strings.Join(cmd.Args, " "), err)
	}
	return out, nil
}
