package service

import (
	"context"

	"google.golang.org/grpc"
	"google.golang.org/grpc/codes"
	"google.golang.org/grpc/status"
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// Tests dial the handlers of the process as they dial a server.
var _ grpc.ClientConnInterface = (*inProcess)(nil)

func (p *inProcess) Invoke(ctx context.Context, method string, args, reply any, _ ...grpc.CallOption) error {
	answer, err := p.ask(ctx, method, func(into proto.Message) error { handOver(into, args.(proto.Message)); return nil })
	if err != nil {
		return err
	}
	handOver(reply.(proto.Message), answer)
	return nil
}

func (p *inProcess) NewStream(context.Context, *grpc.StreamDesc, string, ...grpc.CallOption) (grpc.ClientStream, error) {
	return nil, status.Error(codes.Unimplemented, "no streams over JSON")
}

// handOver gives the fields of one message to another of its kind. What they hold is shared, not copied.
func handOver(to, from proto.Message) {
	m := to.ProtoReflect()
	from.ProtoReflect().Range(func(fd protoreflect.FieldDescriptor, v protoreflect.Value) bool {
		m.Set(fd, v)
		return true
	})
}
