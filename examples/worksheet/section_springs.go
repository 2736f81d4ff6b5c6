package main

import (
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/examples/internal/springsheet"
)

// A springsJob is the room for return springs and what is on offer.
type springsJob = springsheet.Job

// springsSection chooses springs for the room there is.
func (b *bench) springsSection() (*sheet.Section, error) {
	if b.job.Springs == nil {
		return nil, nil
	}
	r, err := springsheet.WorkOut(b.file, "springs", b.job.Springs)
	if err != nil {
		return nil, err
	}
	b.springs = r
	return r.Section, nil
}
