package main

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"runtime"
	"runtime/coverage"
)

// counted runs f and counts the blocks and the bytes. The blocks are -1 in a program
// that is not built to count them.
func counted(f func()) (blocks, allocated int64, err error) {
	counts := coverage.ClearCounters() == nil
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	f()
	runtime.ReadMemStats(&after)
	allocated = int64(after.TotalAlloc - before.TotalAlloc)
	if !counts {
		return -1, allocated, nil
	}
	var data bytes.Buffer
	if err := coverage.WriteCounters(&data); err != nil {
		return 0, 0, err
	}
	blocks, err = sumOfCounters(data.Bytes())
	return blocks, allocated, err
}

// The layout of counter data, version 1, as internal/coverage/defs.go of the Go
// distribution describes it: a header, and a segment with a header of its own, a
// table of texts, and for every function that ran three numbers and its counters,
// as ULEB128.
const (
	fileHeader    = 32
	segmentHeader = 16
	layout        = 1
)

// sumOfCounters adds up all counters.
func sumOfCounters(data []byte) (int64, error) {
	if len(data) < fileHeader+segmentHeader || binary.LittleEndian.Uint32(data[4:]) != layout {
		return 0, errors.New("counter data of a layout that is not known")
	}
	segment := data[fileHeader:]
	functions := binary.LittleEndian.Uint64(segment)
	texts := binary.LittleEndian.Uint32(segment[8:]) + binary.LittleEndian.Uint32(segment[12:])
	r := bytes.NewReader(segment[segmentHeader+int(texts):])
	sum := int64(0)
	for range functions {
		counters, err := binary.ReadUvarint(r)
		for i := uint64(0); i < counters+2 && err == nil; i++ {
			var n uint64
			if n, err = binary.ReadUvarint(r); i >= 2 { // after the numbers of package and function
				sum += int64(n)
			}
		}
		if err != nil {
			return 0, fmt.Errorf("counter data: %w", err)
		}
	}
	return sum, nil
}
