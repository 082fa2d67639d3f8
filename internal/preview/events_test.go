package preview

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"homebuild/internal/diag"
)

// listen reads the events of a preview.
func listen(t *testing.T, s started) <-chan state {
	t.Helper()
	answer, err := http.Get(s.url + "/events")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { answer.Body.Close() })
	if got, want := answer.Header.Get("Content-Type"), "text/event-stream"; got != want {
		t.Errorf("type of the events: want %q, got %q", want, got)
	}
	heard := make(chan state, 100)
	go func() {
		defer close(heard)
		lines := bufio.NewScanner(answer.Body)
		lines.Buffer(nil, 1<<20)
		for lines.Scan() {
			if data, ok := strings.CutPrefix(lines.Text(), "data: "); ok {
				var now state
				if json.Unmarshal([]byte(data), &now) == nil {
					heard <- now
				}
			}
		}
	}()
	return heard
}

// next waits for an event.
func next(t *testing.T, heard <-chan state) state {
	t.Helper()
	select {
	case now, open := <-heard:
		if !open {
			t.Fatal("the events have ended")
		}
		return now
	case <-time.After(5 * time.Second):
		t.Fatal("no event within five seconds")
	}
	panic("not reached")
}

// school is a folder whose only page is its week file.
func school(t *testing.T) (folder string, build func() Result) {
	t.Helper()
	folder = t.TempDir()
	save(t, folder, "weeks/2026-09-14.md", "one")
	return folder, func() Result {
		words, err := os.ReadFile(filepath.Join(folder, "weeks", "2026-09-14.md"))
		if err != nil || len(words) == 0 {
			return Result{Problems: diag.Diagnostics{{File: "weeks/2026-09-14.md", Line: 3, Text: "cannot be read", Hint: "write it"}}}
		}
		return fixed(text("en/2026-09-14.html", string(words)))()
	}
}

func save(t *testing.T, folder, name, words string) {
	t.Helper()
	full := filepath.Join(folder, filepath.FromSlash(name))
	if err := errors.Join(os.MkdirAll(filepath.Dir(full), 0o755), os.WriteFile(full, []byte(words), 0o644)); err != nil {
		t.Fatal(err)
	}
}

// The measure that counts: from saving a file to the event, and to the page.
func TestFollowsWithinAMoment(t *testing.T) {
	folder, build := school(t)
	s := start(t, folder, build)
	heard := listen(t, s)
	before := next(t, heard)
	var times []time.Duration
	for i := range 9 {
		words := fmt.Sprintf("words %d", i)
		saved := time.Now()
		save(t, folder, "weeks/2026-09-14.md", words)
		now := next(t, heard)
		for now.Good == before.Good || len(now.Problems) > 0 { // half of a save, perhaps
			now = next(t, heard)
		}
		times = append(times, time.Since(saved))
		before = now
		if _, _, body := get(t, "GET", s.url, "/pages/en/2026-09-14.html", ""); body != words {
			t.Errorf("page after the event: want %q, got %q", words, body)
		}
	}
	slices.Sort(times)
	t.Logf("from saving to the event: fastest %v, middle %v, slowest %v", times[0], times[len(times)/2], times[len(times)-1])
	// The fastest is the program's own; what comes on top is a busy machine.
	if times[0] > 100*time.Millisecond {
		t.Errorf("the fastest of nine is %v, want 100 ms at most", times[0])
	}
}

// However an editor saves, the page follows.
func TestWaysToSave(t *testing.T) {
	const name = "weeks/2026-09-14.md"
	at := func(folder, name string) string { return filepath.Join(folder, filepath.FromSlash(name)) }
	ways := []struct {
		name string
		save func(folder, words string) error
	}{
		{"in place", func(folder, words string) error { return os.WriteFile(at(folder, name), []byte(words), 0o644) }},
		{"a new file renamed into place", func(folder, words string) error {
			part := at(folder, "weeks/.2026-09-14.md.swp")
			return errors.Join(os.WriteFile(part, []byte(words), 0o644), os.Rename(part, at(folder, name)))
		}},
		{"the old file kept under another name", func(folder, words string) error {
			return errors.Join(os.Rename(at(folder, name), at(folder, name)+"~"), os.WriteFile(at(folder, name), []byte(words), 0o644))
		}},
		{"in pieces", func(folder, words string) error {
			file, err := os.Create(at(folder, name))
			if err != nil {
				return err
			}
			for _, c := range words {
				if _, err := file.WriteString(string(c)); err != nil {
					return err
				}
				time.Sleep(time.Millisecond)
			}
			return file.Close()
		}},
		{"the whole folder put in its place", func(folder, words string) error {
			return errors.Join(os.RemoveAll(at(folder, "weeks")), os.Mkdir(at(folder, "weeks"), 0o755), os.WriteFile(at(folder, name), []byte(words), 0o644))
		}},
		{"again in the new folder", func(folder, words string) error { return os.WriteFile(at(folder, name), []byte(words), 0o644) }},
	}
	folder, build := school(t)
	s := start(t, folder, build)
	for _, way := range ways {
		t.Run(way.name, func(t *testing.T) {
			if err := way.save(folder, way.name); err != nil {
				t.Fatal(err)
			}
			var body string
			for range 300 {
				if _, _, body = get(t, "GET", s.url, "/pages/en/2026-09-14.html", ""); body == way.name {
					return
				}
				time.Sleep(10 * time.Millisecond)
			}
			t.Errorf("want %q on the page within three seconds, got %q", way.name, body)
		})
	}
}

// What is written beside the school's own files makes nothing anew.
func TestOtherFilesAreNoMatter(t *testing.T) {
	folder, build := school(t)
	s := start(t, folder, build)
	for _, name := range []string{"public/index.html", "desk/plan.html", ".homebuild/public.lock", "README.txt", "weeks/.hidden", "weeks/2026-09-14.md~"} {
		save(t, folder, name, "x")
	}
	time.Sleep(300 * time.Millisecond)
	if len(s.changes) > 0 {
		t.Errorf("made anew because of %v, want it left", (<-s.changes).Files)
	}
	save(t, folder, "weeks/2026-09-14.md", "two")
	select {
	case c := <-s.changes:
		if !slices.Equal(c.Files, []string{"weeks/2026-09-14.md"}) {
			t.Errorf("files that changed: want the week, got %v", c.Files)
		}
	case <-time.After(5 * time.Second):
		t.Error("the week was saved and nothing made anew")
	}
}

// A slip is told with its place, and the last good page stays.
func TestSlip(t *testing.T) {
	folder, build := school(t)
	s := start(t, folder, build)
	heard := listen(t, s)
	next(t, heard)
	save(t, folder, "weeks/2026-09-14.md", "")
	now := next(t, heard)
	want := problem{Place: "weeks/2026-09-14.md, line 3", Text: "cannot be read", Hint: "write it"}
	if len(now.Problems) != 1 || now.Problems[0] != want || now.Good != 1 {
		t.Errorf("want %+v and the first site still good, got %+v", want, now)
	}
	if _, _, body := get(t, "GET", s.url, "/pages/en/2026-09-14.html", ""); body != "one" {
		t.Errorf("want the last good page, got %q", body)
	}
}

// A link in the school's folder leads nowhere: no path reaches the disk.
func TestLinkLeadsNowhere(t *testing.T) {
	folder, build := school(t)
	secret := filepath.Join(t.TempDir(), "secret.txt")
	if err := errors.Join(os.WriteFile(secret, []byte("nobody's business"), 0o644), os.Symlink(secret, filepath.Join(folder, "weeks", "secret.html"))); err != nil {
		t.Skip(err)
	}
	s := start(t, folder, build)
	for _, path := range []string{"/pages/weeks/secret.html", "/weeks/secret.html", "/pages/secret.html", "/pages" + secret} {
		if code, _, body := get(t, "GET", s.url, path, ""); code != http.StatusNotFound || strings.Contains(body, "business") {
			t.Errorf("%s: want %d, got %d with %q", path, http.StatusNotFound, code, body)
		}
	}
}

// Five hundred listen at once, some of them asleep, and all the others hear.
func TestManyClients(t *testing.T) {
	const clients, asleep = 500, 50
	folder, build := school(t)
	s := start(t, folder, build)
	host := strings.TrimPrefix(s.url, "http://")
	for range asleep { // connected, and never a word more
		conn, err := net.Dial("tcp", host)
		if err != nil {
			t.Fatal(err)
		}
		defer conn.Close()
	}
	transport := &http.Transport{MaxIdleConns: clients}
	defer transport.CloseIdleConnections()
	var ready, heard sync.WaitGroup
	ready.Add(clients)
	errs := make(chan error, clients)
	for range clients {
		heard.Go(func() { errs <- hears(transport, s.url, ready.Done) })
	}
	ready.Wait()
	saved := time.Now()
	save(t, folder, "weeks/2026-09-14.md", "two")
	heard.Wait()
	t.Logf("from saving until all %d have heard: %v", clients, time.Since(saved))
	for range clients {
		if err := <-errs; err != nil {
			t.Error(err)
		}
	}
	if code, _, _ := get(t, "GET", s.url, "/pages/en/2026-09-14.html", ""); code != http.StatusOK {
		t.Errorf("a page after all that: want %d, got %d", http.StatusOK, code)
	}
}

// hears waits for the second good site.
func hears(transport *http.Transport, url string, ready func()) error {
	answer, err := (&http.Client{Transport: transport, Timeout: 30 * time.Second}).Get(url + "/events")
	if err != nil {
		ready()
		return err
	}
	defer answer.Body.Close()
	lines, first := bufio.NewScanner(answer.Body), true
	for lines.Scan() {
		if !strings.HasPrefix(lines.Text(), "data: ") {
			continue
		}
		if first {
			ready()
			first = false
		}
		if strings.HasPrefix(lines.Text(), `data: {"good":2,`) {
			return nil
		}
	}
	return fmt.Errorf("the events ended before the second site: %w", lines.Err())
}

// Ctrl-c lets go of everything, also of those who still listen.
func TestEndsCleanly(t *testing.T) {
	folder, build := school(t)
	s := start(t, folder, build)
	heard := listen(t, s)
	next(t, heard)
	began := time.Now()
	if err := s.stop(); err != nil {
		t.Fatal(err)
	}
	if took := time.Since(began); took > goodbyeTime+time.Second {
		t.Errorf("the end took %v", took)
	}
	if _, open := <-heard; open {
		t.Error("want the listener to be let go")
	}
	if conn, err := net.Dial("tcp", strings.TrimPrefix(s.url, "http://")); err == nil {
		conn.Close()
		t.Error("want the port free again")
	}
}
