package desk

import (
	"testing"

	"github.com/adrg/xdg"
	"github.com/stretchr/testify/require"

	"tipline/app/printer"
	"tipline/render/sheet"
)

// own gives a test a config folder of its own.
func own(t *testing.T) {
	t.Setenv("XDG_CONFIG_HOME", t.TempDir())
	xdg.Reload()
	t.Cleanup(xdg.Reload)
}

// What shares sheets takes fewer of them, and punch points less ink.
func TestSheetsAreSharedAndLooksChosen(t *testing.T) {
	own(t)
	d, _ := opened(t)
	d.Go(Paper)
	usual, _ := d.Pages()
	d.Type("", sharedField, apart)
	alone, _ := d.Pages()
	require.Less(t, usual, alone)
	d.Type("", sharedField, together)
	shared, _ := d.Pages()
	require.Less(t, shared, usual)
	require.Equal(t, together, fieldOf(t, d, sharedField).Text)
	d.Type("", "printing.look", "punch")
	require.Equal(t, "punch", fieldOf(t, d, "printing.look").Text)
	punched, _ := d.Pages()
	require.LessOrEqual(t, punched, shared)
}

// A printer measured with the present paper is offered, and stretches the pages; with
// another paper it is said that it was not measured.
func TestAMeasuredPrinterShapesThePages(t *testing.T) {
	own(t)
	p, err := sheet.FromBars("Workshop", "a4", sheet.BarMillimetres, 100.5, 99.5)
	require.NoError(t, err)
	require.NoError(t, printer.Usual().Save(p))
	d, _ := opened(t)
	d.Go(Paper)
	require.Len(t, fieldOf(t, d, "printing.printer").Choices, 2)
	d.Type("", "printing.printer", "Workshop")
	require.Empty(t, fieldOf(t, d, "printing.printer").Refusal)
	d.Type("", "printing.paper", "a3")
	require.Contains(t, fieldOf(t, d, "printing.printer").Refusal, "Workshop")
}
