package service

import (
	"bytes"
	"encoding/csv"
	"errors"
	"net/http"
	"strconv"
	"strings"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
)

const csvType = "text/csv"

// noticesHeader says beside a table what its notices are, which CSV has no place for: a list
// of reasons, each with its field, as RFC 9651 writes lists.
const noticesHeader = "Knitmath-Notices"

// csvKind is what a table is said to be.
const csvKind = csvType + "; charset=utf-8; header=present"

// hasRows reports whether a part of an answer has anything of the rows of a table.
func (m mask) hasRows(answer proto.Message) bool {
	rows := tableOf(answer.ProtoReflect().Descriptor())
	if rows == nil {
		return false
	}
	_, asked := m[rows.Number()]
	return asked
}

// besideTable says in the header of a table what its notices are.
func besideTable(h http.Header, answer proto.Message) {
	noticed, ok := answer.(interface{ GetNotices() []*knitmathv1.Notice })
	if !ok || len(noticed.GetNotices()) == 0 {
		return
	}
	list := make([]string, len(noticed.GetNotices()))
	for i, n := range noticed.GetNotices() {
		list[i] = n.Reason + `;field="` + n.Field + `"`
	}
	h.Set(noticesHeader, strings.Join(list, ", "))
}

// writeTable writes an answer that is a table as CSV, for spreadsheets: a header with the names
// of the fields of a row, and a line for each row, by RFC 4180; those columns that part asks for,
// all where there is no part. Everything else of the answer is JSON's alone, but for the notices,
// and where nothing of the rows is asked for there is no table: then it is JSON, whatever is
// accepted.
func writeTable(answer protoreflect.Message, part mask) ([]byte, error) {
	rows := tableOf(answer.Descriptor())
	if rows == nil {
		return nil, errors.New("the answer is no table")
	}
	columns := columnsOf(rows.Message(), part[rows.Number()])
	var out bytes.Buffer
	w := csv.NewWriter(&out)
	w.UseCRLF = true
	line := make([]string, len(columns))
	for i, fd := range columns {
		line[i] = string(fd.Name())
	}
	if err := w.Write(line); err != nil {
		return nil, err
	}
	list := answer.Get(rows).List()
	for i := range list.Len() {
		row := list.Get(i).Message()
		for k, fd := range columns {
			line[k] = cellOf(row, fd)
		}
		if err := w.Write(line); err != nil {
			return nil, err
		}
	}
	w.Flush()
	return out.Bytes(), w.Error()
}

// columnsOf are the fields of a row that are asked for, in the order of the proto file.
func columnsOf(row protoreflect.MessageDescriptor, asked mask) []protoreflect.FieldDescriptor {
	var columns []protoreflect.FieldDescriptor
	for i := range row.Fields().Len() {
		fd := row.Fields().Get(i)
		if _, ok := asked[fd.Number()]; ok || asked == nil {
			columns = append(columns, fd)
		}
	}
	return columns
}

// cellOf writes a value as JSON would have it, without quotes, and nothing where it is
// absent.
func cellOf(row protoreflect.Message, fd protoreflect.FieldDescriptor) string {
	if fd.HasPresence() && !row.Has(fd) {
		return ""
	}
	v := row.Get(fd)
	switch fd.Kind() {
	case protoreflect.EnumKind:
		if value := fd.Enum().Values().ByNumber(v.Enum()); value != nil {
			return string(value.Name())
		}
		return strconv.Itoa(int(v.Enum()))
	case protoreflect.DoubleKind:
		return strconv.FormatFloat(v.Float(), 'f', -1, 64)
	case protoreflect.StringKind:
		return inert(v.String())
	}
	return v.String() // whole numbers, true and false
}

// inert keeps a text from being taken for a formula by a spreadsheet that opens it, the way
// that is usual: an apostrophe before what would begin one. Numbers are left alone.
func inert(text string) string {
	if text != "" && strings.ContainsRune("=+-@\t\r", rune(text[0])) {
		return "'" + text
	}
	return text
}

// tableOf is the field that holds the rows of an answer, nil where it is no table. A table
// is what a method gives that lists something: all its rows are alike and made of scalars.
func tableOf(answer protoreflect.MessageDescriptor) protoreflect.FieldDescriptor {
	rows := answer.Fields().ByName("rows")
	if rows == nil || !rows.IsList() || rows.Message() == nil || !strings.HasPrefix(string(answer.Name()), "List") {
		return nil
	}
	return rows
}
