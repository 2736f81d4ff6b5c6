package sheet

import (
	_ "embed"
	"html/template"
	"io"
)

//go:embed sheet.html.tmpl
var pageText string

//go:embed sheet.css
var css string

var page = template.Must(template.New("sheet").Funcs(template.FuncMap{"lead": lead}).Parse(pageText))

// WriteHTML writes the sheet as one page that needs nothing else: no network,
// no script, drawings inside. It prints on A4 and Letter, and the working
// folds away.
func (s *Sheet) WriteHTML(w io.Writer) error {
	return page.Execute(w, struct {
		*Sheet
		CSS template.CSS
	}{s, template.CSS(css)})
}

// Safe is the drawing for the page. Drawings come from our own code and never
// from a file that was read; what stands in them as text has been escaped.
func (p Picture) Safe() template.HTML { return template.HTML(p.SVG) }

// Head is the heading row of the table.
func (t Table) Head() []string {
	if len(t.Rows) == 0 {
		return nil
	}
	return t.Rows[0]
}

// Body is the rows below the heading.
func (t Table) Body() [][]string {
	if len(t.Rows) == 0 {
		return nil
	}
	return t.Rows[1:]
}
