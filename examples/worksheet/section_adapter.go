package main

import (
	"example.com/benchsums/examples/internal/adaptersheet"
	"example.com/benchsums/examples/internal/sheet"
)

// An adapterJob is what was measured for an adapter; the program adapter works
// out the same by itself.
type adapterJob = adaptersheet.Readings

// adapterSection works out an adapter between a flange and a split collar.
func (b *bench) adapterSection() (*sheet.Section, error) {
	if b.job.Adapter == nil {
		return nil, nil
	}
	return adaptersheet.Section(b.file, b.job.Adapter)
}
