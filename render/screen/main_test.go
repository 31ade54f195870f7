package screen

import (
	"flag"
	"os"
	"testing"
)

// Random inputs are the same in every run; another seed is given by -rapid.seed.
func TestMain(m *testing.M) {
	for name, value := range map[string]string{"rapid.seed": "1", "rapid.nofailfile": "true"} {
		if err := flag.Set(name, value); err != nil {
			panic(err)
		}
	}
	os.Exit(m.Run())
}
