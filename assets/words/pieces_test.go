package words

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestATextIsBrokenAtNoBlankThatIsFirm(t *testing.T) {
	require.Equal(t, []string{"Trop\u00a0:", "de", "0,3\u202fmm", "à", "2\u00a0mm\u00a0;", "non"}, Pieces(" Trop\u00a0: de\n0,3\u202fmm  à\t2\u00a0mm\u00a0; non "))
	require.Empty(t, Pieces(" \n"))
}
