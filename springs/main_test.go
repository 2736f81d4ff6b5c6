package springs

import (
	"testing"

	"example.com/benchsums/internal/figures"
)

func TestMain(m *testing.M) { figures.Main(m) }
