package sheet

import (
	"bytes"
	"strings"
	"testing"
)

// A page of another build keeps the look of a sheet.
func TestShared(t *testing.T) {
	if !strings.Contains(string(CSS()), "summary") {
		t.Error("no style")
	}
	if got := strings.Join(Wrap("one two\u00a0three four", 10), "|"); got != "one|two\u00a0three|four" {
		t.Errorf("wrapped as %q", got)
	}
	var b bytes.Buffer
	if err := WriteSteps(&b, demo().Sections[0].Working); err != nil {
		t.Fatal(err)
	}
	var whole bytes.Buffer
	if err := demo().WriteText(&whole); err != nil {
		t.Fatal(err)
	}
	if b.Len() == 0 || !strings.Contains(whole.String(), b.String()) {
		t.Errorf("steps by themselves\n%s\nare not those of the sheet\n%s", b.String(), whole.String())
	}
	if Lead("a = 1") != "with " || Lead("1 + 2") != "= " {
		t.Error("lead")
	}
}
