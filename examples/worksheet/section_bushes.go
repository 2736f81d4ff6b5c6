package main

import "example.com/benchsums/examples/internal/sheet"

// A bushesJob is what was measured for it.
type bushesJob struct{}

// bushesSection answers what to turn bushes to, how far they close in and what to ream to.
func (b *bench) bushesSection() (*sheet.Section, error) { return nil, nil }
