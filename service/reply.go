package service

import (
	"google.golang.org/grpc/encoding"
	protocodec "google.golang.org/grpc/encoding/proto"
	"google.golang.org/grpc/mem"

	"example.com/knitmath/service/admit"
)

// countedReply is an answer on its way to the codec, with the call whose work ends there.
type countedReply struct {
	message any
	call    *admit.Call
}

// replyCodec is the usual codec, which ends the work of a call when its answer has
// been made into bytes.
type replyCodec struct{ encoding.CodecV2 }

func newReplyCodec() replyCodec { return replyCodec{encoding.GetCodecV2(protocodec.Name)} }

func (c replyCodec) Marshal(v any) (mem.BufferSlice, error) {
	r, ok := v.(*countedReply)
	if !ok {
		return c.CodecV2.Marshal(v)
	}
	defer r.call.Leave()
	return c.CodecV2.Marshal(r.message)
}
