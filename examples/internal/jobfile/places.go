package jobfile

import (
	"encoding"
	"errors"
	"reflect"
	"strconv"
	"strings"

	"example.com/benchsums/units"
	toml "github.com/pelletier/go-toml/v2"
	"github.com/pelletier/go-toml/v2/unstable"
)

// A place is where a key stands and what is written there.
type place struct {
	line    int
	numbers []string // values that are no text, as written
	block   bool     // a text of several lines that begins on the next line
}

// locate finds the place of every key: "crank.rod", and "dial.2.readings" for
// the third of an array of tables.
func locate(name string, data []byte) (map[string]place, error) {
	places := map[string]place{}
	counts := map[string]int{}
	var p unstable.Parser
	p.Reset(data)
	table := ""
	for p.NextExpression() {
		e := p.Expression()
		switch e.Kind {
		case unstable.Table, unstable.ArrayTable:
			var line int
			table, line = keyOf(&p, e, counts)
			if e.Kind == unstable.ArrayTable {
				n := counts[table]
				counts[table]++
				table += "." + strconv.Itoa(n)
			}
			places[table] = place{line: line}
		case unstable.KeyValue:
			keyValue(&p, e, table, places)
		}
	}
	if err := p.Error(); err != nil {
		line, msg := 0, plain(err.Error())
		var parse *unstable.ParserError
		if errors.As(err, &parse) {
			line = p.Shape(p.Range(parse.Highlight)).Start.Line
			msg = parse.Message
		}
		var decode *toml.DecodeError
		if errors.As(err, &decode) {
			line, _ = decode.Position()
		}
		return nil, &Error{File: name, Line: line, Msg: msg}
	}
	return places, nil
}

// keyOf joins a dotted key; a part that names an array of tables stands for
// the last of them.
func keyOf(p *unstable.Parser, e *unstable.Node, counts map[string]int) (string, int) {
	var key string
	line := 0
	for it := e.Key(); it.Next(); {
		part := it.Node()
		if line == 0 {
			line = p.Shape(part.Raw).Start.Line
		}
		if n, ok := counts[key]; ok && key != "" {
			key += "." + strconv.Itoa(n-1)
		}
		if key != "" {
			key += "."
		}
		key += string(part.Data)
	}
	return key, line
}

func keyValue(p *unstable.Parser, e *unstable.Node, table string, places map[string]place) {
	key, line := keyOf(p, e, nil)
	if table != "" {
		key = table + "." + key
	}
	v := e.Value()
	if v.Kind == unstable.InlineTable {
		places[key] = place{line: line}
		for it := v.Children(); it.Next(); {
			keyValue(p, it.Node(), key, places)
		}
		return
	}
	at := place{line: line}
	if v.Kind == unstable.String {
		raw := string(p.Raw(v.Raw))
		at.block = strings.HasPrefix(raw, "\"\"\"\n") || strings.HasPrefix(raw, "'''\n") ||
			strings.HasPrefix(raw, "\"\"\"\r\n") || strings.HasPrefix(raw, "'''\r\n")
	}
	bareNumbers(v, &at.numbers)
	places[key] = at
}

func bareNumbers(v *unstable.Node, to *[]string) {
	switch v.Kind {
	case unstable.Integer, unstable.Float, unstable.Bool, unstable.LocalDate, unstable.LocalTime, unstable.LocalDateTime, unstable.DateTime:
		*to = append(*to, string(v.Data))
	case unstable.Array:
		for it := v.Children(); it.Next(); {
			bareNumbers(it.Node(), to)
		}
	}
}

var textUnmarshaler = reflect.TypeFor[encoding.TextUnmarshaler]()

// refuseBareNumbers looks for numbers without a unit, for true and false and
// for dates where a quantity belongs: the decoder would put some of them
// straight into the float64 underneath.
func (f *File) refuseBareNumbers(job any) error {
	for key, at := range f.places {
		if len(at.numbers) == 0 {
			continue
		}
		t := fieldType(reflect.TypeOf(job), strings.Split(key, "."))
		if t == nil || !reflect.PointerTo(t).Implements(textUnmarshaler) {
			continue
		}
		v := reflect.New(t).Interface().(encoding.TextUnmarshaler)
		err := v.UnmarshalText([]byte(at.numbers[0]))
		var parse *units.ParseError
		if errors.As(err, &parse) {
			return f.Errorf(key, "%s", parse.Msg)
		}
		return f.Errorf(key, "%s: a bare number: write it as text, with its unit", at.numbers[0])
	}
	return nil
}

// fieldType follows the toml names of key through the struct type t and
// returns the type at its end, without slices; nil if there is none.
func fieldType(t reflect.Type, key []string) reflect.Type {
	for t != nil && (t.Kind() == reflect.Pointer || t.Kind() == reflect.Slice) {
		t = t.Elem()
	}
	if len(key) == 0 || t == nil {
		return t
	}
	if _, err := strconv.Atoi(key[0]); err == nil {
		return fieldType(t, key[1:])
	}
	if t.Kind() != reflect.Struct {
		return nil
	}
	for i := range t.NumField() {
		name, _, _ := strings.Cut(t.Field(i).Tag.Get("toml"), ",")
		if name == key[0] {
			return fieldType(t.Field(i).Type, key[1:])
		}
	}
	return nil
}
