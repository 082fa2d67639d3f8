package main

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"time"
)

// A week that is saved again and again while builds read it: each build makes
// whole pages or names the file, and the last one makes those of the file as it
// then is.
func TestFilesChangeWhileRead(t *testing.T) {
	school := ownSchool(t, 5, "en")
	week := filepath.Join(school, "weeks/2026-09-14.toml")
	stop := make(chan bool)
	var saving sync.WaitGroup
	saving.Go(func() {
		for i := 0; ; i++ {
			select {
			case <-stop:
				return
			default:
			}
			// As some editors do: empty the file, then write it in pieces.
			file, err := os.Create(week)
			if err != nil {
				t.Error(err)
				return
			}
			for _, piece := range []string{"# ours\ntarget = \"add-wi", "thin-20\"\n[not", "e]\nen = \"\"\"\nDear families,\n", strings.Repeat("one more word ", 50+i%50), "\n\"\"\"\n"} {
				_, _ = file.WriteString(piece)
				time.Sleep(3 * time.Millisecond)
			}
			file.Close()
			time.Sleep(20 * time.Millisecond)
		}
	})
	placed := regexp.MustCompile(`(?m)^\S*weeks/2026-09-14\.toml(:\d+)?: `)
	made, named := 0, 0
	for i := range 15 {
		var errs bytes.Buffer
		if code := testStreams(&bytes.Buffer{}, &errs).run([]string{"build", school, "--quiet"}); code == exitFine {
			made++
		} else if named++; !placed.MatchString(errs.String()) {
			t.Errorf("build %d: the file is not named: %s", i, errs.String())
		}
		if _, err := os.Stat(filepath.Join(school, publicFolder)); err == nil {
			for name, page := range tree(t, school) {
				if strings.HasSuffix(name, ".html") && !strings.HasSuffix(strings.TrimSpace(page), "</html>") {
					t.Errorf("build %d: %s is not whole", i, name)
				}
			}
		}
	}
	close(stop)
	saving.Wait()
	t.Logf("%d builds made pages, %d named the file", made, named)
	if made == 0 || named == 0 {
		t.Errorf("want builds that read the file whole and others that read it half written, got %d and %d", made, named)
	}
	homebuild(t, "build", school, "--quiet")
	fresh := copied(t, school)
	homebuild(t, "build", fresh, "--quiet")
	want, got := tree(t, fresh), tree(t, school)
	for name := range want {
		if want[name] != got[name] {
			t.Errorf("%s is not as in a first build", name)
		}
	}
}
