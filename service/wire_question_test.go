package service

import (
	"encoding/json"
	"net/url"
	"slices"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
)

// asQuery writes a question as a query string; ok is false when it has lists.
func asQuery(m proto.Message) (query string, ok bool) {
	values, ok := url.Values{}, true
	var walk func(prefix string, m protoreflect.Message)
	walk = func(prefix string, m protoreflect.Message) {
		m.Range(func(fd protoreflect.FieldDescriptor, v protoreflect.Value) bool {
			switch {
			case fd.IsList():
				ok = false
			case fd.Message() != nil:
				walk(prefix+string(fd.Name())+".", v.Message())
			case fd.Enum() != nil:
				values.Set(prefix+string(fd.Name()), string(fd.Enum().Values().ByNumber(v.Enum()).Name()))
			default:
				values.Set(prefix+string(fd.Name()), v.String())
			}
			return true
		})
	}
	walk("", m.ProtoReflect())
	return values.Encode(), ok
}

// spellOut writes out the lists that a table abbreviates.
func spellOut(v any) any {
	switch v := v.(type) {
	case map[string]any:
		if n, ok := v["repeat"].(json.Number); ok {
			times, _ := n.Int64()
			return slices.Repeat([]any{v["of"]}, int(times))
		}
		for k := range v {
			v[k] = spellOut(v[k])
		}
	case []any:
		for i := range v {
			v[i] = spellOut(v[i])
		}
	}
	return v
}

// merge is RFC 7396.
func merge(base, change map[string]any) map[string]any {
	out := map[string]any{}
	for k, v := range base {
		out[k] = v
	}
	for k, v := range change {
		below, isObject := v.(map[string]any)
		switch {
		case v == nil:
			delete(out, k)
		case isObject:
			old, _ := out[k].(map[string]any)
			out[k] = merge(old, below)
		default:
			out[k] = v
		}
	}
	return out
}
