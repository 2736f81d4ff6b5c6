package main

import (
	"bytes"
	"github.com/stretchr/testify/require"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The excerpt in the README is what the program prints.
func TestReadmeExcerpt(t *testing.T) {
	readme, err := os.ReadFile(filepath.Join("..", "..", "README.md"))
	require.NoError(t, err)
	_, rest, ok := strings.Cut(strings.ReplaceAll(string(readme), "\r\n", "\n"), "```text\n")
	excerpt, _, ok2 := strings.Cut(rest, "```")
	if !ok || !ok2 {
		t.Fatal("no excerpt in the README")
	}
	var out bytes.Buffer
	require.NoError(t, demoSheet(t).WriteText(&out))
	for _, part := range strings.Split(excerpt, "...\n") {
		if strings.TrimSpace(part) == "" || !strings.Contains(out.String(), part) {
			t.Errorf("the program does not print this part of the README's excerpt any more:\n%s", part)
		}
	}
}
