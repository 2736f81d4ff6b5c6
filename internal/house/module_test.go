package house

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

const module = "example.com/benchsums"

// root is the top of the module as seen from this package.
var root = filepath.Join("..", "..")

// libraries are the packages people import.
var libraries = []string{"units", "geometry", "ignition", "springs", "fits", "threads"}

// A source is one parsed Go file.
type source struct {
	path string // slash-separated, from the top of the module
	file *ast.File
}

func (s source) isTest() bool { return strings.HasSuffix(s.path, "_test.go") }

// dir is the folder the file is in.
func (s source) dir() string {
	if i := strings.LastIndexByte(s.path, '/'); i >= 0 {
		return s.path[:i]
	}
	return "."
}

// sources parses every Go file of the module.
func sources(t *testing.T) (*token.FileSet, []source) {
	t.Helper()
	fset := token.NewFileSet()
	var out []source
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && (d.Name() == ".git" || d.Name() == "testdata") {
			return filepath.SkipDir
		}
		if !strings.HasSuffix(path, ".go") {
			return nil
		}
		f, err := parser.ParseFile(fset, path, nil, parser.ParseComments)
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(root, path)
		if err != nil {
			return err
		}
		out = append(out, source{filepath.ToSlash(rel), f})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return fset, out
}

func imports(f *ast.File) []string {
	var out []string
	for _, i := range f.Imports {
		if p, err := strconv.Unquote(i.Path.Value); err == nil {
			out = append(out, p)
		}
	}
	return out
}

func read(t *testing.T, name string) string {
	t.Helper()
	b, err := os.ReadFile(filepath.Join(root, filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	return strings.ReplaceAll(string(b), "\r\n", "\n")
}
