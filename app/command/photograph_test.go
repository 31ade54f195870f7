package command

import (
	"bytes"
	"encoding/json"
	"fmt"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

const photographed = `{"tipline": 1, "wheels": [{"id": "w", "name": "Going", "teeth": {"form": "cycloidal", "count": 60, "module": 1, "leaves": 8},
	"cutter": {"bit": {"photograph": {"file": "%s", "points": [[0, 0], [100, 0]], "distance": 5, "edge": [[0, 9], [0, 0]]}}}}]}`

// onePixel is a PNG of one black pixel.
func onePixel(t *testing.T) string {
	var file bytes.Buffer
	require.NoError(t, png.Encode(&file, image.NewGray(image.Rect(0, 0, 1, 1))))
	return file.String()
}

// A photograph that is missing or is none is a finding of every command that tells
// findings; one that can be shown is none.
func TestPhotographsAreLookedFor(t *testing.T) {
	for _, row := range []struct{ file, holds, code, says string }{
		{"bit.png", onePixel(t), "", ""},
		{"gone.png", "", "picture.missing", `"gone.png" is not beside the job`},
		{"words.png", "a letter", "picture.neither", "must be a PNG or a JPEG"},
		{"torn.png", onePixel(t)[:40], "picture.damaged", "is damaged"},
		{"../bit.png", "", "picture.not-bare", "is no name of a picture"},
	} {
		t.Run(row.file, func(t *testing.T) {
			name := jobFile(t, fmt.Sprintf(photographed, row.file))
			if row.holds != "" {
				require.NoError(t, os.WriteFile(filepath.Join(filepath.Dir(name), row.file), []byte(row.holds), 0o644))
			}
			figures := run("figures", name, "-json")
			require.Equal(t, Done, figures.code, figures.err)
			var read Figures
			require.NoError(t, json.Unmarshal([]byte(figures.out), &read))
			var codes []string
			for _, f := range read.Findings {
				if f.Field == "cutter.bit.photograph.file" {
					codes = append(codes, f.Code)
				}
			}
			findings := run("findings", name)
			packet := run("packet", name, "-out", filepath.Join(t.TempDir(), "packet.pdf"), "-wheel", "w")
			if row.code == "" {
				require.Empty(t, codes)
				require.Equal(t, Done, findings.code)
				require.Equal(t, Done, packet.code, packet.err)
				return
			}
			require.Equal(t, []string{row.code}, codes)
			require.Contains(t, findings.out, "w cutter.bit.photograph.file: ")
			require.Contains(t, findings.out, row.says)
			require.Equal(t, Faulty, findings.code)
			require.Equal(t, Faulty, packet.code, packet.err)
		})
	}
}
