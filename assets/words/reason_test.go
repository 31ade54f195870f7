package words

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// What the system refuses is said in the language's words, without the operation and the
// file; what they are lacking for is kept as it is.
func TestTheSystemsReasons(t *testing.T) {
	_, missing := os.Open(filepath.Join(t.TempDir(), "none"))
	for _, row := range []struct {
		err        error
		en, de, fr string
	}{
		{missing, "no such file or directory", "Datei oder Ordner gibt es nicht", "il n’y a pas de tel fichier ou dossier"},
		{&os.LinkError{Op: "rename", Old: "a", New: "b", Err: syscall.EPERM}, "operation not permitted", "das ist nicht erlaubt", "ce n’est pas permis"},
		{errors.Join(&fs.PathError{Op: "write", Path: "a", Err: syscall.ENOSPC}, errors.New("more")), "no space left on device", "der Datenträger ist voll", "le disque est plein"},
		{os.NewSyscallError("fsync", syscall.EIO), "input/output error", "der Datenträger liest oder schreibt fehlerhaft", "le disque lit ou écrit mal"},
		{&fs.PathError{Err: elsewhere{fs.ErrPermission}}, "permission denied", "keine Berechtigung dafür", "l’autorisation manque"},
		{errors.New("odd thing"), "odd thing", "odd thing", "odd thing"},
		{nil, "", "", ""},
	} {
		for lang, want := range map[string]string{"en": row.en, "de": row.de, "fr": row.fr} {
			w, err := Load(lang)
			require.NoError(t, err)
			require.Equal(t, want, w.Reason(row.err))
			require.Contains(t, w.Say("told.unwritten", "file", "a.pdf", "reason", row.err), " "+want+".")
		}
	}
}

// elsewhere is an error as another system says it.
type elsewhere struct{ error }

func (elsewhere) Error() string   { return "Zugriff verweigert" }
func (e elsewhere) Unwrap() error { return e.error }
