package main

import (
	"bytes"
	"reflect"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/adaptersheet"
	"example.com/benchsums/examples/internal/jobfile"
	"github.com/rogpeppe/go-internal/testscript"
	"github.com/stretchr/testify/require"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"adapter": main})
}

// The program as a user runs it.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{Dir: "testdata/script"})
}

// With all its lines in force the template is a file that is worked out, and it
// has every key there is.
func TestTemplate(t *testing.T) {
	_, lines, ok := strings.Cut(string(template), "# title")
	require.True(t, ok)
	text := strings.ReplaceAll("title"+lines, "\n# ", "\n")
	var j job
	file, err := jobfile.Decode("template.toml", []byte(text), &j)
	require.NoError(t, err)
	typ := reflect.TypeFor[adaptersheet.Readings]()
	for i := range typ.NumField() {
		key := typ.Field(i).Tag.Get("toml")
		require.True(t, file.Has("adapter."+key), "the template has no %s", key)
	}
	_, err = workOut("template.toml", []byte(text))
	require.NoError(t, err)

	var blank job
	_, err = jobfile.Decode("template.toml", template, &blank)
	require.NoError(t, err)
	require.Equal(t, job{}, blank, "as it comes, the template is not empty")
}

// A page or text that cannot be written is told, with status 1.
func TestCannotWrite(t *testing.T) {
	var stderr bytes.Buffer
	require.Equal(t, 1, run(nil, nil, full{}, &stderr))
	require.Contains(t, stderr.String(), "adapter: cannot write: full")
	require.Equal(t, 1, run([]string{"-template"}, nil, full{}, &stderr))
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, errFull }

var errFull = fullError{}

type fullError struct{}

func (fullError) Error() string { return "full" }
