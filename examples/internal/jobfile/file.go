package jobfile

import (
	"bytes"
	"errors"
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"example.com/benchsums/units"
	toml "github.com/pelletier/go-toml/v2"
)

// A File is a job file that has been read: its name, and where each key stands.
type File struct {
	Name   string
	places map[string]place
}

// An Error is something wrong in a job file.
type Error struct {
	File string
	Line int    // from 1; 0 when it is not in one place
	Key  string // "crank.rod"; empty for faults of the whole file
	Msg  string // what is wrong and what to write
}

// Error writes file, line, key and what to do, on one line.
func (e *Error) Error() string {
	var b strings.Builder
	b.WriteString(e.File)
	if e.Line > 0 {
		fmt.Fprintf(&b, ":%d", e.Line)
	}
	if e.Key != "" {
		b.WriteString(": " + people(e.Key))
	}
	return b.String() + ": " + e.Msg
}

// people writes a key as people count: dial.series.2 is the second series,
// which is number 1 to the machine.
func people(key string) string {
	parts := strings.Split(key, ".")
	for i, p := range parts {
		if n, err := strconv.Atoi(p); err == nil {
			parts[i] = strconv.Itoa(n + 1)
		}
	}
	return strings.Join(parts, ".")
}

// Decode reads data into job, a pointer to a struct, and refuses whatever the
// struct has no field for. Errors are of type *Error, several of them joined
// when several keys are unknown.
func Decode(name string, data []byte, job any) (*File, error) {
	data = bytes.TrimPrefix(data, []byte("\xef\xbb\xbf")) // the mark some editors put in front
	if !utf8.Valid(data) {
		return nil, &Error{File: name, Msg: "not a text file in UTF-8: save it as UTF-8"}
	}
	places, err := locate(name, data)
	if err != nil {
		return nil, err
	}
	f := &File{Name: name, places: places}
	if err := f.refuseBareNumbers(job); err != nil {
		return nil, err
	}
	d := toml.NewDecoder(bytes.NewReader(data))
	d.DisallowUnknownFields()
	if err := d.Decode(job); err != nil {
		return nil, f.explain(err)
	}
	return f, nil
}

// Errorf makes an error about key, which may be one that is not in the file.
func (f *File) Errorf(key, format string, args ...any) error {
	return &Error{File: f.Name, Line: f.Line(key), Key: key, Msg: withoutKind(fmt.Sprintf(format, args...))}
}

// withoutKind takes off the end of a message the kind of error that the library
// puts there for programs: it says nothing to people that the rest does not.
func withoutKind(msg string) string {
	for _, kind := range [...]error{units.ErrDomain, units.ErrNotFinite} {
		msg = strings.TrimSuffix(msg, ": "+kind.Error())
	}
	return msg
}

// Line returns the line on which key stands, or that of the table it would
// stand in, or 0.
func (f *File) Line(key string) int {
	for key != "" {
		if p, ok := f.places[key]; ok {
			return p.line
		}
		i := strings.LastIndexAny(key, ".")
		if i < 0 {
			return 0
		}
		key = key[:i]
	}
	return 0
}

// Has reports whether key is in the file.
func (f *File) Has(key string) bool {
	_, ok := f.places[key]
	return ok
}

// keyAt returns the whole key that stands on a line and ends in key: inside a
// table in braces the decoder leaves out the table.
func (f *File) keyAt(line int, key string) string {
	best := key
	for k, p := range f.places {
		if p.line == line && strings.HasSuffix(k, "."+last(key)) && len(k) > len(best) {
			best = k
		}
	}
	return best
}

func last(key string) string { return key[strings.LastIndexByte(key, '.')+1:] }

// explain turns an error of the decoder into one of ours.
func (f *File) explain(err error) error {
	var strict *toml.StrictMissingError
	if errors.As(err, &strict) {
		var all []error
		for i := range strict.Errors {
			e := &strict.Errors[i]
			line, _ := e.Position()
			all = append(all, &Error{File: f.Name, Line: line, Key: strings.Join(e.Key(), "."),
				Msg: "no such key here: see -template for the keys there are"})
		}
		return errors.Join(all...)
	}
	var decode *toml.DecodeError
	if errors.As(err, &decode) {
		line, _ := decode.Position()
		key := f.keyAt(line, strings.Join(decode.Key(), "."))
		return &Error{File: f.Name, Line: line, Key: key, Msg: plain(decode.Error())}
	}
	var parse *units.ParseError
	if errors.As(err, &parse) {
		return &Error{File: f.Name, Msg: parse.Error()}
	}
	return &Error{File: f.Name, Msg: plain(err.Error())}
}

// plain takes the decoder's talk of Go types out of a message.
func plain(msg string) string {
	msg = strings.TrimPrefix(msg, "toml: ")
	for _, w := range [...]struct{ has, say string }{
		{"cannot decode TOML string into", "text, where a list (in square brackets, as in [\"60 mm\"]), a table or a number belongs"},
		{"cannot decode TOML integer into", "a number, where text or a table belongs"},
		{"cannot decode TOML float into", "a number, where text, a whole number or a table belongs"},
		{"cannot decode TOML array into", "a list, where one value belongs"},
		{"cannot decode TOML inline table into", "a table, where one value belongs"},
		{"cannot decode TOML boolean into", "true or false, where something else belongs"},
	} {
		if strings.Contains(msg, w.has) {
			return w.say
		}
	}
	if strings.Contains(msg, "cannot decode") || strings.Contains(msg, "cannot store") || strings.Contains(msg, "expected a") {
		return "not the sort of value that belongs here: see -template"
	}
	return msg
}
