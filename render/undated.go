package render

import (
	"bytes"
	"encoding/binary"
)

// Places in a font file, by the OpenType specification: the table directory and
// the head table.
const (
	directoryStart = 12
	entrySize      = 16
	adjustmentAt   = 8  // checkSumAdjustment in head
	modifiedAt     = 28 // eight bytes of head
	wholeSum       = 0xB1B0AFBA
)

// undated takes the time of writing out of a font file, so that the same letters
// give the same bytes: head's modification date becomes zero, and the sums that
// cover it are made again. A file without a head table is left as it is.
func undated(file []byte) []byte {
	be := binary.BigEndian
	count := int(be.Uint16(file[4:]))
	for i := range count {
		entry := file[directoryStart+entrySize*i:]
		if !bytes.Equal(entry[:4], []byte("head")) {
			continue
		}
		head := file[be.Uint32(entry[8:]):][:be.Uint32(entry[12:])]
		clear(head[modifiedAt : modifiedAt+8])
		clear(head[adjustmentAt : adjustmentAt+4])
		be.PutUint32(entry[4:], tableSum(head))
		be.PutUint32(head[adjustmentAt:], wholeSum-tableSum(file))
	}
	return file
}

// tableSum adds a table up as big-endian words, the last one filled with zeros.
func tableSum(table []byte) uint32 {
	sum := uint32(0)
	for len(table) >= 4 {
		sum += binary.BigEndian.Uint32(table)
		table = table[4:]
	}
	last := [4]byte{}
	copy(last[:], table)
	return sum + binary.BigEndian.Uint32(last[:])
}
