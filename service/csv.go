package service

import (
	"bytes"
	"encoding/csv"
	"errors"
	"strconv"
	"strings"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/reflect/protoreflect"
)

const csvType = "text/csv"

// csvTable writes answers that are tables as CSV, for spreadsheets: a header with the names
// of the fields of a row, and a line for each row, by RFC 4180. Everything else of the
// answer is JSON's alone.
type csvTable struct{ strictJSON }

func (csvTable) ContentType(any) string { return csvType + "; charset=utf-8; header=present" }

// Marshal writes the columns that are asked for, all where none are named.
func (csvTable) Marshal(v any) ([]byte, error) {
	switch v := v.(type) {
	case proto.Message:
		return writeTable(v.ProtoReflect(), nil)
	case partialAnswer:
		return writeTable(v.message.ProtoReflect(), v.part)
	}
	return nil, errors.New("only messages are written")
}

// writeTable writes the rows of an answer, those columns of them that part asks for. With
// no part it is all of them; where a part has nothing of the rows there are none.
func writeTable(answer protoreflect.Message, part mask) ([]byte, error) {
	rows := tableOf(answer.Descriptor())
	if rows == nil {
		return nil, errors.New("the answer is no table")
	}
	within, asked := part[rows.Number()]
	if part != nil && !asked {
		return nil, nil
	}
	columns := columnsOf(rows.Message(), within)
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
