package house

import (
	"go/ast"
	"go/doc"
	"slices"
	"strings"
	"testing"
)

// Every exported name of the library is explained, and every exported function
// and type is shown in an Example that runs.
func TestExportedNamesAreExplainedAndShown(t *testing.T) {
	fset, files := sources(t)
	for _, dir := range libraries {
		var code []*ast.File
		shown := map[string]bool{}
		for _, s := range files {
			switch {
			case s.dir() != dir:
			case s.isTest():
				for _, e := range doc.Examples(s.file) {
					if e.Output == "" && !e.EmptyOutput {
						t.Errorf("%s: Example%s has no Output and so never runs", s.path, e.Name)
					}
					shown[strings.Split(e.Name, "_")[0]] = true
				}
			default:
				code = append(code, s.file)
			}
		}
		if len(code) == 0 {
			t.Errorf("%s: no such package", dir)
			continue
		}
		p, err := doc.NewFromFiles(fset, code, module+"/"+dir)
		if err != nil {
			t.Fatal(err)
		}
		if len(p.Doc) < 1000 {
			t.Errorf("%s: doc.go is %d characters long: want a chapter", dir, len(p.Doc))
		}
		explained(t, dir, p)
		for _, f := range p.Funcs {
			if !shown[f.Name] {
				t.Errorf("%s.%s has no Example", dir, f.Name)
			}
		}
		for _, typ := range p.Types {
			if ast.IsExported(typ.Name) && !shown[typ.Name] && !slices.ContainsFunc(typ.Funcs, func(f *doc.Func) bool { return shown[f.Name] }) {
				t.Errorf("%s.%s has no Example", dir, typ.Name)
			}
			for _, f := range typ.Funcs {
				if !shown[f.Name] {
					t.Errorf("%s.%s has no Example", dir, f.Name)
				}
			}
		}
	}
}

func explained(t *testing.T, dir string, p *doc.Package) {
	t.Helper()
	want := func(name, text string) {
		if strings.TrimSpace(text) == "" {
			t.Errorf("%s.%s has no doc comment", dir, name)
		}
	}
	for _, f := range p.Funcs {
		want(f.Name, f.Doc)
	}
	for _, v := range append(slices.Clone(p.Consts), p.Vars...) {
		want(strings.Join(v.Names, ", "), v.Doc+comments(v.Decl))
	}
	for _, typ := range p.Types {
		want(typ.Name, typ.Doc)
		for _, v := range append(slices.Clone(typ.Consts), typ.Vars...) {
			want(strings.Join(v.Names, ", "), v.Doc+comments(v.Decl))
		}
		for _, f := range append(slices.Clone(typ.Funcs), typ.Methods...) {
			if f.Orig == "" || strings.TrimPrefix(f.Orig, "*") == typ.Name {
				want(typ.Name+"."+f.Name, f.Doc)
			}
		}
	}
}

// comments gathers what stands beside the single lines of a declaration.
func comments(d *ast.GenDecl) string {
	var b strings.Builder
	for _, s := range d.Specs {
		if v, ok := s.(*ast.ValueSpec); ok {
			b.WriteString(v.Doc.Text() + v.Comment.Text())
		}
	}
	return b.String()
}
