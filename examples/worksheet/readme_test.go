package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"github.com/stretchr/testify/require"
)

//go:generate go test -count=1 -run TestReadmeExcerpt -update .

// The excerpt in the README is what the program prints.
func TestReadmeExcerpt(t *testing.T) {
	name := filepath.Join("..", "..", "README.md")
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	readme := strings.ReplaceAll(string(data), "\r\n", "\n")
	head, rest, ok := strings.Cut(readme, "```text\n")
	_, tail, ok2 := strings.Cut(rest, "```")
	require.True(t, ok && ok2, "no excerpt in the README")

	var out bytes.Buffer
	require.NoError(t, demoSheet(t).WriteText(&out))
	want := head + "```text\n" + excerpt(t, out.String()) + "```" + tail
	if *figures.Update {
		require.NoError(t, os.WriteFile(name, []byte(want), 0o644))
		return
	}
	if readme != want {
		t.Error("the README's excerpt is not what the program prints: run go generate ./examples/worksheet")
	}
}

// excerpt takes the answer and figures of top dead centre, and the whole of the
// card but its working.
func excerpt(t *testing.T, text string) string {
	t.Helper()
	_, tdc, ok := strings.Cut(text, "\n1. TOP DEAD CENTRE")
	tdc, _, ok2 := strings.Cut(tdc, "  The ways, side by side")
	_, card, ok3 := strings.Cut(text, "\n3. WHAT THE CARD SAYS")
	card, _, ok4 := strings.Cut(card, "\nWORKING")
	require.True(t, ok && ok2 && ok3 && ok4, "the sheet has changed its shape")
	return "1. TOP DEAD CENTRE" + strings.TrimRight(tdc, "\n") + "\n...\n3. WHAT THE CARD SAYS" + strings.TrimRight(card, "\n") + "\n"
}
