package program

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
)

// read returns the file to work out.
func (p *Program) read(in string, stdin io.Reader) (File, error) {
	switch in {
	case "":
		return p.Default, nil
	case "-":
		text, err := io.ReadAll(stdin)
		return File{"standard input", text}, err
	}
	text, err := os.ReadFile(in)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return File{}, fmt.Errorf("%s: no such file; write one with -template", in)
	case err != nil:
		return File{}, fmt.Errorf("%s: cannot be read", in)
	}
	return File{filepath.Base(in), text}, nil
}

// write writes the drawings that are asked for, and the sheet.
func (o *Options) write(out Output, stdout io.Writer) error {
	if o.SVG != "" {
		say := stdout
		if o.JSON || o.HTML == "-" {
			say = io.Discard
		}
		if err := out.Draw(o.SVG, say); err != nil {
			return err
		}
	}
	switch {
	case o.JSON:
		return out.WriteJSON(stdout)
	case o.HTML == "-":
		return out.WriteHTML(stdout)
	case o.HTML != "":
		var page bytes.Buffer // so that no half page is left
		if err := out.WriteHTML(&page); err != nil {
			return err
		}
		return os.WriteFile(o.HTML, page.Bytes(), 0o644)
	}
	return out.WriteText(stdout)
}

// A Sheet is the Output of a program that writes a sheet as it is.
type Sheet struct{ *sheet.Sheet }

// Draw writes the pictures of all sections, named by [Numbered]. It says
// nothing.
func (s Sheet) Draw(file string, _ io.Writer) error {
	n := 0
	for _, sec := range s.Sections {
		for _, p := range sec.Pictures {
			if err := os.WriteFile(Numbered(file, n), []byte(p.SVG), 0o644); err != nil {
				return err
			}
			n++
		}
	}
	return nil
}

// Numbered names the file of drawing i, from 0: drawing.svg, drawing-2.svg.
func Numbered(name string, i int) string {
	if i == 0 {
		return name
	}
	base, svg := strings.CutSuffix(name, ".svg")
	if !svg {
		return fmt.Sprintf("%s-%d", name, i+1)
	}
	return fmt.Sprintf("%s-%d.svg", base, i+1)
}
