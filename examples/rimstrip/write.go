package main

import (
	"io"
	"time"

	"codeberg.org/go-pdf/fpdf"
	"example.com/benchsums/examples/internal/picture"
)

// writePDF writes pages as a PDF that is the same to the byte every time.
func writePDF(w io.Writer, pages []page, sheet paper, title string) error {
	pdf := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: sheet.width, Ht: sheet.height}})
	when := time.Date(2000, time.January, 1, 0, 0, 0, 0, time.UTC)
	pdf.SetCreationDate(when)
	pdf.SetModificationDate(when)
	pdf.SetCatalogSort(true)
	pdf.SetTitle(title, true)
	pdf.SetMargins(0, 0, 0)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetFont("Helvetica", "", 8)
	latin := pdf.UnicodeTranslatorFromDescriptor("")
	for _, p := range pages {
		pdf.AddPage()
		for _, l := range p.lines {
			pdf.SetLineWidth(l.width)
			pdf.Line(l.x1, l.y1, l.x2, l.y2)
		}
		for _, t := range p.texts {
			pdf.SetFontUnitSize(t.size)
			text := latin(t.text)
			x := t.x - float64(t.align+1)/2*pdf.GetStringWidth(text)
			pdf.Text(x, t.y, text)
		}
	}
	return pdf.Output(w)
}

// svgOf writes one page as SVG, its size in millimetres.
func svgOf(p page, sheet paper) string {
	d := picture.NewDrawing(sheet.width, sheet.height)
	for _, l := range p.lines {
		d.Line(l.x1, l.y1, l.x2, l.y2, picture.Weight(l.width))
	}
	for _, t := range p.texts {
		d.Text(t.x, t.y, t.size, [...]picture.Align{picture.Left, picture.Centre, picture.Right}[t.align+1], t.turn, t.text)
	}
	return d.SVG()
}
