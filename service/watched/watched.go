// Package watched holds what is read from files and read again when they change:
// a certificate and its key, the list of keys that may call. It does not know what
// the files mean.
//
// The files are looked at now and then and compared by what is in them. That sees
// every way in which they are replaced, a link that is pointed elsewhere (which is
// how a cluster mounts secrets) as well as a file written in its place, and needs no
// library: notifications of the system miss changes on network mounts and have to be
// set up anew with every link. The readers of certificates that come with gRPC look
// in the same way, but say neither that a new pair was refused nor that it was taken.
package watched

import (
	"context"
	"crypto/sha256"
	"fmt"
	"io"
	"os"
	"sync"
	"sync/atomic"
	"time"
)

// Every is how often files are looked at. A change is taken with the second look
// that finds it, so within twice as long.
const Every = 5 * time.Second

// maxBytes bounds what is read of a file.
const maxBytes = 1 << 20

// Value is what the files held when they were last found in order.
type Value[T any] struct {
	what  string
	paths []string
	read  func(contents [][]byte) (T, error)
	tell  teller

	current atomic.Pointer[T]

	mu    sync.Mutex // guards what follows: looks do not overlap
	taken look       // what current was read from
	last  look       // the look before
	tried look       // what was last refused
}

// look is what a look found: a digest of all files, or why they cannot be read.
type look string

// Open reads the files for the first time; what is wrong with them is an error.
// read is given the contents of the files in order and must not keep them.
func Open[T any](what string, told *Reports, read func(contents [][]byte) (T, error), paths ...string) (*Value[T], error) {
	v := &Value[T]{what: what, paths: paths, read: read, tell: told.of(what)}
	contents, found := v.look()
	if contents == nil {
		return nil, fmt.Errorf("%s: %s", what, found)
	}
	value, err := read(contents)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", what, err)
	}
	v.current.Store(&value)
	v.taken, v.last = found, found
	return v, nil
}

// Get is the value. It may be replaced by another, but never changes.
func (v *Value[T]) Get() T { return *v.current.Load() }

// Look takes what is in the files by now, if it has changed and is in order. What
// is not in order leaves the value as it is, and is told once.
//
// It is taken when two looks in a row have found the same: of a file that is being
// written the first half may well be in order, and a certificate may be replaced a
// moment before its key.
func (v *Value[T]) Look() {
	v.mu.Lock()
	defer v.mu.Unlock()
	contents, found := v.look()
	settled := found == v.last
	v.last = found
	switch {
	case found == v.taken:
		v.tried = ""
		v.tell.current()
		return
	case !settled, found == v.tried:
		return
	}
	value, err := *new(T), fmt.Errorf("%s", found)
	if contents != nil {
		value, err = v.read(contents)
	}
	if err != nil {
		v.tried = found
		v.tell.refused(err)
		return
	}
	v.current.Store(&value)
	v.taken, v.tried = found, ""
	v.tell.taken()
}

// look reads all files. Without contents the look says why.
func (v *Value[T]) look() (contents [][]byte, found look) {
	digest := sha256.New()
	for _, path := range v.paths {
		data, err := readFile(path)
		if err != nil {
			return nil, look(err.Error())
		}
		sum := sha256.Sum256(data)
		digest.Write(sum[:])
		contents = append(contents, data)
	}
	return contents, look(digest.Sum(nil))
}

func readFile(path string) ([]byte, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer func() { _ = file.Close() }() // It was only read.
	data, err := io.ReadAll(io.LimitReader(file, maxBytes+1))
	if err == nil && len(data) > maxBytes {
		err = fmt.Errorf("%s has more than %d bytes", path, maxBytes)
	}
	return data, err
}

// Looker is a Value of any kind.
type Looker interface{ Look() }

// Watch looks at all of them now and then until ctx is done.
func Watch(ctx context.Context, every time.Duration, all ...Looker) {
	if len(all) == 0 {
		return
	}
	ticks := time.NewTicker(every)
	defer ticks.Stop()
	for {
		select {
		case <-ctx.Done():
			return
		case <-ticks.C:
			for _, l := range all {
				l.Look()
			}
		}
	}
}
