package conns

import (
	"bytes"
	"fmt"
	"slices"
	"testing"

	"golang.org/x/net/http2"
)

// The heads of frames are found however the bytes are cut, as a library that writes
// them has written them.
func TestFramesHoweverCut(t *testing.T) {
	var sent bytes.Buffer
	framer := http2.NewFramer(&sent, nil)
	for _, err := range []error{
		framer.WriteSettings(http2.Setting{ID: http2.SettingMaxFrameSize, Val: 1 << 14}),
		framer.WriteHeaders(http2.HeadersFrameParam{StreamID: 1, BlockFragment: []byte("abc"), EndHeaders: true}),
		framer.WriteData(1, true, make([]byte, 700)),
		framer.WriteData(3, false, nil),
		framer.WriteRSTStream(1<<31-1, http2.ErrCodeCancel),
		framer.WriteHeaders(http2.HeadersFrameParam{StreamID: 5, EndStream: true}),
	} {
		if err != nil {
			t.Fatal(err)
		}
	}
	want := []string{"4 0 0 6", "1 4 1 3", "0 1 1 700", "0 0 3 0", "3 0 2147483647 4", "1 1 5 0"}
	for size := 1; size <= sent.Len(); size++ {
		var got []string
		s := scanner{skip: 5}
		for part := range slices.Chunk(append(make([]byte, 5), sent.Bytes()...), size) {
			s.scan(part, func(kind, flags byte, id uint32, length int) {
				got = append(got, fmt.Sprint(kind, flags, id, length))
			})
		}
		if !slices.Equal(got, want) {
			t.Fatalf("in pieces of %d: %q, want %q", size, got, want)
		}
	}
}
