package words

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestSayFillsPlaces(t *testing.T) {
	w := Words{"xx", map[string]string{"hub": "Hub {value} over {max}; {value} again", "odd": "{ and {value"}}
	require.Equal(t, "Hub 30 mm over 28 mm; 30 mm again", w.Say("hub", "value", "30 mm", "max", "28 mm"))
	require.Equal(t, "Hub 3 over {max}; 3 again", w.Say("hub", "value", 3))
	require.Equal(t, "Hub {value} over {max}; {value} again", w.Say("hub", "value"))
	require.Equal(t, "Hub {max} over 2; {max} again", w.Say("hub", "value", "{max}", "max", 2), "what was typed is no place")
	require.Equal(t, "{ and {value", w.Say("odd", "value", 3))
	require.Equal(t, "‹rim›", w.Say("rim"))
	require.False(t, w.Has("rim"))
}

func TestSayTakesTheFormOfTheCount(t *testing.T) {
	texts := func(single string) map[string]string {
		return map[string]string{"language.single": single, "teeth": "{n} {n|tooth|teeth} cut"}
	}
	w := Words{"xx", texts("1")}
	require.Equal(t, "1 tooth cut", w.Say("teeth", "n", 1))
	require.Equal(t, "0 teeth cut", w.Say("teeth", "n", 0))
	require.Equal(t, "11 teeth cut", w.Say("teeth", "n", "11"))
	require.Equal(t, "{n} {n|tooth|teeth} cut", w.Say("teeth"))
	require.Equal(t, "0 tooth cut", Words{"xx", texts("0 1")}.Say("teeth", "n", 0), "as French counts")
}

func TestSayWritesNumbersWithTheLanguagesMark(t *testing.T) {
	texts := func(mark string) map[string]string {
		return map[string]string{"language.decimal": mark, "scale": "from {min} to {max} in {file}"}
	}
	args := []any{"min", 0.1, "max", 100.0, "file", "a.pdf"}
	require.Equal(t, "from 0.1 to 100 in a.pdf", Words{"xx", texts(".")}.Say("scale", args...))
	require.Equal(t, "from 0,1 to 100 in a.pdf", Words{"xx", texts(",")}.Say("scale", args...))
}
