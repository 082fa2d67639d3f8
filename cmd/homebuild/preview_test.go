package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"homebuild/internal/preview"
)

// heard is a buffer that is written and read at the same time.
type heard struct {
	mu sync.Mutex
	b  bytes.Buffer
}

func (h *heard) Write(p []byte) (int, error) {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.b.Write(p)
}

func (h *heard) String() string {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.b.String()
}

// waitFor waits until a text was said.
func (h *heard) waitFor(t *testing.T, text string) {
	t.Helper()
	for range 500 {
		if strings.Contains(h.String(), text) {
			return
		}
		time.Sleep(10 * time.Millisecond)
	}
	t.Fatalf("waited in vain for %q, heard\n%s", text, h)
}

// runUntil runs a command until the context ends.
func runUntil(ctx context.Context, s *streams, args ...string) error {
	root := newRootCmd(s)
	root.SetArgs(args)
	return root.ExecuteContext(ctx)
}

// The whole preview of a real school: its words, its pages, a slip and its end.
func TestPreview(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "my-class")
	if code, _, errs := asked(t, nil, "start", folder, "--yes", "--monday", "2026-09-14"); code != exitFine {
		t.Fatal(errs)
	}
	var out, errs heard
	ctx, cancel := context.WithCancel(context.Background())
	defer cancel()
	ended := make(chan error, 1)
	go func() {
		ended <- runUntil(ctx, testStreams(&out, &errs), "preview", folder)
	}()
	out.waitFor(t, "pages ready")
	url, _, _ := strings.Cut(strings.TrimPrefix(out.String(), "preview at "), "/\n")
	if page := pageAt(t, url+"/pages/en/2026-09-14.html"); !strings.Contains(page, "I can add two numbers") {
		t.Errorf("want the week's page, got %.200s", page)
	}
	week := filepath.Join(folder, "weeks", "2026-09-14.toml")
	write := func(text string) {
		if err := os.WriteFile(week, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	write("# ours\ntarget = \"add-within-20\"\n[note]\nen = \"Words of a new note.\"\n")
	out.waitFor(t, "weeks/2026-09-14.toml: made anew in")
	if page := pageAt(t, url+"/pages/en/2026-09-14.html"); !strings.Contains(page, "Words of a new note.") {
		t.Errorf("want the new note, got %.200s", page)
	}
	write("# ours\ntarget = \"ad-within-20\"\n[note]\nen = \"A slip.\"\n")
	errs.waitFor(t, `2026-09-14.toml:2: "ad-within-20" is not a target`)
	errs.waitFor(t, "1 thing to mend; the last good pages stay")
	if page := pageAt(t, url+"/pages/en/2026-09-14.html"); !strings.Contains(page, "Words of a new note.") {
		t.Errorf("want the last good page, got %.200s", page)
	}
	if _, err := os.Stat(filepath.Join(folder, "public")); err == nil {
		t.Error("want nothing written")
	}
	cancel()
	if err := <-ended; err != nil {
		t.Errorf("the end: %v", err)
	}
	out.waitFor(t, "the preview has ended")
}

func pageAt(t *testing.T, url string) string {
	t.Helper()
	answer, err := http.Get(url)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	body, err := io.ReadAll(answer.Body)
	if err != nil {
		t.Fatal(err)
	}
	return string(body)
}

// A port that is in use is told, with the next one that is free.
func TestPreviewPortInUse(t *testing.T) {
	taken, err := preview.Listen(0)
	if err != nil {
		t.Fatal(err)
	}
	defer taken.Close()
	_, port, _ := strings.Cut(taken.Addr().String(), ":")
	var out, errs bytes.Buffer
	code := testStreams(&out, &errs).run([]string{"preview", "--port", port})
	if want := fmt.Sprintf("port %s is in use\n  hint: it may be another preview; port ", port); code != exitProblems || !strings.Contains(errs.String(), want) {
		t.Errorf("want %q and exit code %d, got %q and %d", want, exitProblems, errs.String(), code)
	}
	if !strings.Contains(errs.String(), "is free: homebuild preview --port ") || out.Len() > 0 {
		t.Errorf("want the free port as a command, got %q and %q", errs.String(), out.String())
	}
}
