package sheet

import (
	"bytes"
	"encoding/xml"
	"github.com/stretchr/testify/require"
	"io"
	"strings"
	"testing"
)

func TestHTML(t *testing.T) {
	d := demo()
	d.Sections[0].Answer = []string{`<script>alert("x")</script>`}
	d.Sections[0].Pictures = []Picture{{"A drawing", "two lines cross", `<svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm"><path d="M0 0L1 1"/></svg>`}}
	d.Card = &Card{Title: "Wall card", Groups: []Group{{"Spark", []Line{{"drop", "4.76 mm", "3/16 in"}}}}, Foot: "Plug out."}
	var b bytes.Buffer
	require.NoError(t, d.WriteHTML(&b))
	page := b.String()
	if strings.Contains(page, "<script") {
		t.Error("a text of the sheet came out as a script")
	}
	for _, banned := range []string{"http://", "https://", "@import", "src="} {
		rest := strings.ReplaceAll(page, "http://www.w3.org/2000/svg", "")
		if strings.Contains(rest, banned) {
			t.Errorf("the page reaches outside itself: %s", banned)
		}
	}
	for _, want := range []string{`<html lang="en">`, `<title>An engine</title>`, `id="tdc"`, `<details open>`, "<svg", `aria-label="A drawing. two lines cross"`, "Wall card", "4.76 mm"} {
		if !strings.Contains(page, want) {
			t.Errorf("no %s in the page", want)
		}
	}
	// Every element that is opened is closed again.
	dec := xml.NewDecoder(strings.NewReader(strings.TrimPrefix(page, "<!DOCTYPE html>")))
	dec.Strict = false
	dec.AutoClose = []string{"meta", "link"}
	dec.Entity = xml.HTMLEntity
	for {
		_, err := dec.Token()
		if err == io.EOF {
			break
		}
		require.NoError(t, err)
	}
}
