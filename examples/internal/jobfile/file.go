package jobfile

import (
	"bytes"
	"errors"
	"fmt"
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
		b.WriteString(": " + e.Key)
	}
	return b.String() + ": " + e.Msg
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
	return &Error{File: f.Name, Line: f.Line(key), Key: key, Msg: fmt.Sprintf(format, args...)}
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
		return &Error{File: f.Name, Line: line, Key: strings.Join(decode.Key(), "."), Msg: plain(decode.Error())}
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
		{"cannot decode TOML string into", "text, where a list, a table or a number belongs"},
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
