package job

import (
	"flag"
	"os"
	"testing"
)

// TestMain fixes the seed of the random jobs, so that every run draws the same.
func TestMain(m *testing.M) {
	for name, value := range map[string]string{"rapid.seed": "1871", "rapid.nofailfile": "true"} {
		if err := flag.Set(name, value); err != nil {
			panic(err)
		}
	}
	os.Exit(m.Run())
}
