package main

import (
	_ "embed"
	"html/template"
	"io"

	"example.com/benchsums/examples/internal/sheet"
)

//go:embed lessons.html.tmpl
var pageText string

var htmlPage = template.Must(template.New("lessons").Funcs(template.FuncMap{
	"lead":    sheet.Lead,
	"printed": printed.sentence,
	"slip":    slip.sentence,
	"wrong":   wrong.sentence,
}).Parse(pageText))

// A numbered lesson knows its place in the course.
type numbered struct {
	Number int
	lesson
}

// writeHTML writes lessons as one page that needs nothing else: no network, no
// script, drawings inside, the answers folded away.
func writeHTML(w io.Writer, title string, lessons []numbered) error {
	return htmlPage.Execute(w, struct {
		Title   string
		CSS     template.CSS
		Lessons []numbered
	}{title, sheet.CSS(), lessons})
}
