package main

import (
	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	"example.com/knitmath/proto/bounds"
)

// A listing is a list of a question while it is changed.
type listing struct {
	*changer
	protoreflect.List
	field protoreflect.FieldDescriptor
	most  int           // items it may have
	items bounds.Bounds // of an item that is no message
}

// list changes a list: its length, one of its items, or all of them alike.
func (c *changer) list(m protoreflect.Message, fd protoreflect.FieldDescriptor) {
	b := c.boundsOf(fd)
	l := listing{changer: c, List: m.Mutable(fd).List(), field: fd, most: 10}
	if b.MaxItems != nil {
		l.most = int(*b.MaxItems)
	}
	if b.Items != nil {
		l.items = *b.Items
	}
	switch c.IntN(6) {
	case 0:
		l.Truncate(c.IntN(l.Len() + 1))
	case 1:
		l.fill()
	case 2, 3:
		if l.Len() < l.most {
			l.Append(l.item(l.NewElement()))
		}
	case 4:
		l.changeOne()
	case 5:
		l.alike()
	}
}

// item is another item in the place of what is there now.
func (l listing) item(now protoreflect.Value) protoreflect.Value {
	if l.field.Message() != nil {
		return l.filled(l.NewElement())
	}
	return l.value(l.field, l.items, now)
}

// fill makes the list as long as it may be, of what is there.
func (l listing) fill() {
	if l.Len() == 0 {
		l.Append(l.item(l.NewElement()))
	}
	for n := l.Len(); l.Len() < l.most; {
		v := l.Get(l.Len() % n)
		if l.field.Message() != nil {
			v = protoreflect.ValueOfMessage(proto.Clone(v.Message().Interface()).ProtoReflect())
		}
		l.Append(v)
	}
}

// changeOne changes one of the items.
func (l listing) changeOne() {
	if l.Len() == 0 {
		return
	}
	i := l.IntN(l.Len())
	if l.field.Message() != nil {
		l.message(l.Get(i).Message())
		return
	}
	l.Set(i, l.item(l.Get(i)))
}

// alike makes the items rise along the list, or every other number of them alike.
func (l listing) alike() {
	if l.field.Message() != nil {
		for i := range l.Len() {
			l.rise(l.Get(i).Message(), i+1, l.Len())
		}
		return
	}
	if l.Len() < 2 {
		return
	}
	low, high := l.item(l.Get(0)), l.item(l.Get(0))
	for i := range l.Len() {
		if l.Set(i, low); i%2 == 1 {
			l.Set(i, high)
		}
	}
}

// rise sets the numbers of an item so that they rise along its list: lists of
// places are refused if they do not.
func (c *changer) rise(m protoreflect.Message, i, n int) {
	m.Range(func(fd protoreflect.FieldDescriptor, v protoreflect.Value) bool {
		switch b := c.boundsOf(fd); {
		case b.Maximum == nil || fd.IsList():
		case fd.Kind() == protoreflect.DoubleKind:
			m.Set(fd, protoreflect.ValueOfFloat64(max(*b.Minimum, *b.Maximum*float64(i)/float64(n))))
		case fd.Kind() == protoreflect.Int32Kind:
			m.Set(fd, protoreflect.ValueOfInt32(int32(max(*b.Minimum, *b.Maximum*float64(i)/float64(n)))))
		}
		return true
	})
}
