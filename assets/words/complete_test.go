package words

import (
	"go/ast"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestEveryKeyTheProgramUsesHasItsText(t *testing.T) {
	w := English()
	var without []string
	for _, u := range uses(t) {
		if !w.Has(u.key) {
			without = append(without, u.key+" at "+u.at)
		}
	}
	require.Empty(t, without)
}

// Every text is asked for: by its whole key, or by a key put together from a
// literal that it begins with.
func TestEveryTextIsUsed(t *testing.T) {
	whole, starts := map[string]bool{}, []string{}
	walkSource(t, func(node ast.Node, _ string) {
		if e, ok := node.(*ast.BasicLit); ok {
			said := text(e)
			whole[said] = true
			if strings.HasSuffix(said, ".") || strings.HasSuffix(said, "-") {
				starts = append(starts, said)
			}
		}
	})
	var unused []string
	for _, key := range English().Keys() {
		used := whole[key]
		for _, s := range starts {
			used = used || (len(s) > 1 && strings.HasPrefix(key, s))
		}
		if !used {
			unused = append(unused, key)
		}
	}
	require.Empty(t, unused)
}
