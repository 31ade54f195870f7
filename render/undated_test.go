package render

import (
	"bytes"
	"encoding/binary"
	"testing"

	"github.com/stretchr/testify/require"
)

// A subset bears no date, and its sums are those the OpenType specification asks
// for: the file adds up to 0xB1B0AFBA with the adjustment in it.
func TestSubsetBearsNoDate(t *testing.T) {
	file, err := FaceOf(false).Subset([]uint16{0, FaceOf(false).Glyph('a')})
	require.NoError(t, err)
	entry := bytes.Index(file, []byte("head"))
	require.Positive(t, entry)
	head := file[binary.BigEndian.Uint32(file[entry+8:]):]
	require.Zero(t, binary.BigEndian.Uint64(head[modifiedAt:]))
	require.Equal(t, uint32(wholeSum), tableSum(file))
}
