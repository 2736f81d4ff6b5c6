package units

import (
	"go/ast"
	"go/doc"
	goparser "go/parser"
	"go/token"
	"os"
	"strings"
	"testing"
)

// Every exported function and type has an Example.
func TestEveryNameHasAnExample(t *testing.T) {
	entries, err := os.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	set := token.NewFileSet()
	var files []*ast.File
	for _, e := range entries {
		if !strings.HasSuffix(e.Name(), ".go") {
			continue
		}
		f, err := goparser.ParseFile(set, e.Name(), nil, goparser.ParseComments)
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, f)
	}
	p, err := doc.NewFromFiles(set, files, "example.com/benchsums/units")
	if err != nil {
		t.Fatal(err)
	}
	want := func(name string, examples []*doc.Example) {
		if len(examples) == 0 {
			t.Errorf("%s has no Example", name)
		}
		for _, e := range examples {
			if e.Output == "" && !e.EmptyOutput {
				t.Errorf("the Example of %s is not run: it has no output", name)
			}
		}
	}
	for _, f := range p.Funcs {
		want(f.Name, f.Examples)
	}
	for _, typ := range p.Types {
		want(typ.Name, typ.Examples)
		for _, f := range typ.Funcs {
			want(f.Name, f.Examples)
		}
		for _, f := range append(typ.Funcs, typ.Methods...) {
			if f.Doc == "" {
				t.Errorf("%s.%s has no doc comment", typ.Name, f.Name)
			}
		}
	}
}
