package house

import (
	"go/ast"
	"go/token"
	"slices"
	"strings"
	"testing"
)

// The library promises no panics, no work at start-up, no goroutines and no
// logging.
func TestLibraryKeepsItsPromises(t *testing.T) {
	fset, files := sources(t)
	for _, s := range files {
		if s.isTest() || !slices.Contains(libraries, s.dir()) && !strings.HasPrefix(s.path, "internal/") || s.dir() == "internal/figures" {
			continue
		}
		ast.Inspect(s.file, func(n ast.Node) bool {
			where := func() string { return s.path + ":" + line(fset, n) }
			switch n := n.(type) {
			case *ast.GoStmt:
				t.Errorf("%s: a goroutine inside the library", where())
			case *ast.FuncDecl:
				if n.Name.Name == "init" && n.Recv == nil {
					t.Errorf("%s: init work", where())
				}
			case *ast.CallExpr:
				if f, ok := n.Fun.(*ast.Ident); ok && (f.Name == "panic" || f.Name == "print" || f.Name == "println") {
					t.Errorf("%s: %s", where(), f.Name)
				}
			}
			return true
		})
		for _, path := range imports(s.file) {
			if path == "log" || path == "log/slog" || path == "os" {
				t.Errorf("%s imports %s: the library neither logs nor touches the system", s.path, path)
			}
		}
	}
}

func line(fset *token.FileSet, n ast.Node) string {
	p := fset.Position(n.Pos()).String()
	return p[strings.LastIndexByte(p[:strings.LastIndexByte(p, ':')], ':')+1:]
}
