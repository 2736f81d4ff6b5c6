package main

import "example.com/benchsums/examples/internal/sheet"

// A plugThread is what was measured for it.
type plugThread struct{}

// plugSection names the thread of the plug hole and judges a bush in it.
func (b *bench) plugSection() (*sheet.Section, error) { return nil, nil }
