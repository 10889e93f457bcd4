package service

import (
	"google.golang.org/grpc"
	"google.golang.org/grpc/encoding"
	"google.golang.org/grpc/mem"
	"google.golang.org/grpc/metadata"
	"google.golang.org/protobuf/proto"

	"example.com/knitmath/service/admit"
	"example.com/knitmath/service/conns"
)

// countedReply is an answer on its way to the codec, with the work that ends
// there and the connection that has to take it.
type countedReply struct {
	message any
	size    int // of the message as bytes
	work    *admit.Call
	conn    *conns.Conn
	stream  grpc.ServerTransportStream
	header  metadata.MD
}

// write makes the answer into bytes, in a buffer that the connection counts. gRPC
// says that an answer is sent when it is queued, whether or not the caller ever takes
// it; of such answers the interceptors see nothing.
func (r *countedReply) write(usual encoding.CodecV2) (mem.BufferSlice, error) {
	message, ok := r.message.(proto.Message)
	if !ok || r.conn == nil {
		return usual.Marshal(r.message)
	}
	buf := r.conn.Get(r.size)
	if _, err := (proto.MarshalOptions{UseCachedSize: true}).MarshalAppend((*buf)[:0], message); err != nil {
		r.conn.Put(buf)
		return nil, err
	}
	return mem.BufferSlice{mem.NewBuffer(buf, r.conn)}, nil
}
