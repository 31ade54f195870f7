package pdf

import (
	"bufio"
	"bytes"
	"compress/zlib"
	"crypto/sha256"
	"fmt"
	"hash"
	"io"
	"strconv"
	"strings"
	"unicode/utf16"
)

// object is the number of an object in the file; 0 is none.
type object int

// file writes numbered objects one after the other and the table of where they
// are. The first fault of the writer stays and is returned by finish.
type file struct {
	out     *bufio.Writer
	sum     hash.Hash
	at      int64
	offsets []int64 // of object i+1; 0 until begun
	packer  *zlib.Writer
	packed  bytes.Buffer
	err     error
}

// newFile begins a file of PDF 1.7, the first to know PrintScaling in every
// reader; the four odd bytes tell that it is not plain text.
func newFile(w io.Writer) *file {
	f := &file{out: bufio.NewWriterSize(w, 1<<16), sum: sha256.New()}
	f.packer, f.err = zlib.NewWriterLevel(&f.packed, zlib.BestSpeed)
	f.printf("%%PDF-1.7\n%%\xE2\xE3\xCF\xD3\n")
	return f
}

func (f *file) write(b []byte) {
	if f.err != nil {
		return
	}
	n, err := f.out.Write(b)
	f.at += int64(n)
	f.err = err
	f.sum.Write(b) // never fails
}

func (f *file) printf(format string, values ...any) { f.write(fmt.Appendf(nil, format, values...)) }

// reserve returns the number of an object that will be written later.
func (f *file) reserve() object {
	f.offsets = append(f.offsets, 0)
	return object(len(f.offsets))
}

func (f *file) begin(o object) {
	f.offsets[o-1] = f.at
	f.printf("%d 0 obj\n", o)
}

func (f *file) end() { f.printf("\nendobj\n") }

// stream writes compressed data with its dictionary, to which entries are added.
// Compression is the fast one: most of a packet's time would go into the other, for
// a sixth less.
func (f *file) stream(entries string, data []byte) {
	if f.err != nil {
		return
	}
	f.packed.Reset()
	f.packer.Reset(&f.packed)
	if _, f.err = f.packer.Write(data); f.err != nil {
		return
	}
	if f.err = f.packer.Close(); f.err != nil {
		return
	}
	f.printf("<</Filter/FlateDecode/Length %d%s>>\nstream\n", f.packed.Len(), entries)
	f.write(f.packed.Bytes())
	f.printf("\nendstream")
}

// finish writes the table of objects and the trailer. The file's identifier is
// the sum of its bytes, so that it changes only with them.
func (f *file) finish(catalog, information object) error {
	id := f.sum.Sum(nil)[:16]
	start := f.at
	f.printf("xref\n0 %d\n0000000000 65535 f \n", len(f.offsets)+1)
	for i, offset := range f.offsets {
		if offset == 0 && f.err == nil {
			f.err = fmt.Errorf("object %d was never written", i+1)
		}
		f.printf("%010d 00000 n \n", offset)
	}
	f.printf("trailer\n<</Size %d/Root %d 0 R/Info %d 0 R/ID[<%x><%x>]>>\nstartxref\n%d\n%%%%EOF\n",
		len(f.offsets)+1, catalog, information, id, id, start)
	if f.err != nil {
		return f.err
	}
	return f.out.Flush()
}

// references lists objects as PDF does.
func references(objects []object) string {
	var b strings.Builder
	b.WriteByte('[')
	for i, o := range objects {
		if i > 0 {
			b.WriteByte(' ')
		}
		fmt.Fprintf(&b, "%d 0 R", o)
	}
	b.WriteByte(']')
	return b.String()
}

// text writes a string for people, in UTF-16 as PDF wants it.
func text(s string) string {
	var b strings.Builder
	b.WriteString("<FEFF")
	for _, unit := range utf16.Encode([]rune(s)) {
		fmt.Fprintf(&b, "%04X", unit)
	}
	b.WriteByte('>')
	return b.String()
}

// decimals of a number: 0.01 µm where the unit is the millimetre.
const decimals = 5

// number writes v without needless zeros.
func number(v float64) string { return string(appendNumber(nil, v)) }

func appendNumber(b []byte, v float64) []byte {
	b = strconv.AppendFloat(b, v, 'f', decimals, 64)
	b = bytes.TrimRight(b, "0")
	b = bytes.TrimSuffix(b, []byte{'.'})
	if n := len(b); n >= 2 && b[n-1] == '0' && b[n-2] == '-' && (n == 2 || b[n-3] == ' ') {
		return append(b[:n-2], '0')
	}
	return b
}
