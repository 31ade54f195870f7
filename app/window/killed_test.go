package window

import (
	"bufio"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"sync/atomic"
	"testing"

	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/geometry/trial"
)

// typingIn names the folder in which this program, started again by its test, remembers
// what it types until it is killed.
const typingIn = "TIPLINE_TEST_TYPING_IN"

func TestMain(m *testing.M) {
	if folder := os.Getenv(typingIn); folder != "" {
		typeOnAndOn(folder)
	}
	os.Exit(m.Run())
}

// letter is what is typed at a place of the text.
func letter(at int) rune { return 'a' + rune(at%26) }

// typeOnAndOn types into the sample job's first name, letter by letter, and says after
// each copy how much was typed before the copy was begun.
func typeOnAndOn(folder string) {
	d := desk.New(words.English(), desk.Recent{File: filepath.Join(folder, "recent")})
	if err := d.Take(desk.FromSample(samples.First)); err != nil {
		fmt.Println(err)
		return
	}
	var typed atomic.Int64
	d.Later = func(do func()) {
		go func() {
			n := typed.Load()
			do()
			fmt.Println(n)
		}()
	}
	w := New(test.NewApp(), d)
	w.desk.Go(desk.Blank)
	entry := w.column.row("name").entry
	w.Canvas().Focus(entry)
	entry.SetText("")
	for n := 0; ; n++ {
		typed.Store(int64(n))
		entry.TypedRune(letter(n))
	}
}

// What was typed before a copy was begun is offered back by the window that is started
// after its program was killed in the middle of typing.
func TestKilledWhileTyping(t *testing.T) {
	random := trial.Rand(t, 22)
	for range trial.Count(100) {
		folder := t.TempDir()
		kept := killedTyping(t, folder, 1+random.IntN(12))
		app := test.NewApp()
		w := New(app, desk.New(words.English(), desk.Recent{File: filepath.Join(folder, "recent")}))
		w.offerLost(w.desk.Lost())
		test.Tap(button(t, w, "Open it"))
		text, _ := w.desk.Job().Text("great", "name")
		require.GreaterOrEqual(t, len(text), kept)
		for i, r := range text {
			require.Equal(t, letter(i), r)
		}
		rim, _ := w.desk.Job().Text("great", "crossing.rim")
		require.NotEmpty(t, rim, "the rest of the job is there")
		w.all.quit()
		test.Tap(button(t, w, "Do not save"))
		left, err := os.ReadDir(filepath.Join(folder, "unsaved"))
		require.NoError(t, err)
		require.Empty(t, left)
		app.Quit()
	}
}

// killedTyping has a program type and kills it when it has said so many times that a
// copy is kept; it returns how much it said last was in it.
func killedTyping(t *testing.T, folder string, times int) (kept int) {
	again := exec.Command(os.Args[0])
	again.Env = append(os.Environ(), typingIn+"="+folder)
	out, err := again.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, again.Start())
	heard := bufio.NewScanner(out)
	for range times {
		require.True(t, heard.Scan())
		_, err := fmt.Sscan(heard.Text(), &kept)
		require.NoError(t, err, heard.Text())
	}
	require.NoError(t, again.Process.Kill())
	require.Error(t, again.Wait(), "it was killed")
	return kept
}
