package answerjson

import (
	"errors"
	"math"
	"strconv"
	"unicode/utf8"

	"google.golang.org/protobuf/reflect/protoreflect"
)

// An enum has the names of its values, quoted.
type enum struct{ names map[int32]string }

func newEnum(of protoreflect.EnumDescriptor) *enum {
	e := &enum{names: map[int32]string{}}
	for i := of.Values().Len() - 1; i >= 0; i-- { // Of two names for one value the first is kept.
		v := of.Values().Get(i)
		e.names[int32(v.Number())] = strconv.Quote(string(v.Name()))
	}
	return e
}

// append writes the name, or the number of a value that has none.
func (e *enum) append(b []byte, n int32) []byte {
	if name, ok := e.names[n]; ok {
		return append(b, name...)
	}
	return appendInt(b, int64(n))
}

func appendBool(b []byte, v bool) []byte { return strconv.AppendBool(b, v) }

func appendInt(b []byte, n int64) []byte { return strconv.AppendInt(b, n, 10) }

// Numbers of ordinary size are written without an exponent, as JavaScript writes them.
const (
	leastPlain = 1e-6
	firstLarge = 1e21
)

func appendFloat(b []byte, n float64) []byte {
	switch {
	case math.IsNaN(n):
		return append(b, `"NaN"`...)
	case math.IsInf(n, 1):
		return append(b, `"Infinity"`...)
	case math.IsInf(n, -1):
		return append(b, `"-Infinity"`...)
	}
	if size := math.Abs(n); size != 0 && (size < leastPlain || size >= firstLarge) {
		begin := len(b)
		b = strconv.AppendFloat(b, n, 'e', -1, 64)
		// An exponent of one digit has a zero before it, which JSON's writers leave out.
		if last := len(b) - 1; last-begin >= 3 && b[last-1] == '0' && b[last-2] == '-' {
			b[last-1] = b[last]
			b = b[:last]
		}
		return b
	}
	return strconv.AppendFloat(b, n, 'f', -1, 64)
}

const hexDigits = "0123456789abcdef"

var errNotUTF8 = errors.New("text that is not UTF-8")

// appendText writes a text in quotes. Most have nothing to escape.
func appendText(b []byte, s string) ([]byte, error) {
	if !utf8.ValidString(s) {
		return b, errNotUTF8
	}
	b = append(b, '"')
	from := 0
	for i := range len(s) {
		c := s[i]
		if c >= ' ' && c != '"' && c != '\\' {
			continue
		}
		b = append(b, s[from:i]...)
		from = i + 1
		b = appendEscaped(b, c)
	}
	b = append(b, s[from:]...)
	return append(b, '"'), nil
}

func appendEscaped(b []byte, c byte) []byte {
	switch c {
	case '"', '\\':
		return append(b, '\\', c)
	case '\b':
		return append(b, '\\', 'b')
	case '\f':
		return append(b, '\\', 'f')
	case '\n':
		return append(b, '\\', 'n')
	case '\r':
		return append(b, '\\', 'r')
	case '\t':
		return append(b, '\\', 't')
	}
	return append(b, '\\', 'u', '0', '0', hexDigits[c>>4], hexDigits[c&15])
}
