package deskserver

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"testing"
)

// A desk is found by its folder while it runs, under any of the folder's names, and
// by nothing else.
func TestRunning(t *testing.T) {
	host, folder, _ := served(t, 0)
	cache := t.TempDir()
	address := "http://" + host + "/?token=" + token
	if at := Running(t.Context(), cache, folder); at != "" {
		t.Errorf("before it was noted: %q", at)
	}
	remove, err := Register(cache, folder, address)
	if err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(t.TempDir(), "link")
	if err := os.Symlink(folder, link); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{folder, folder + "/weeks/..", link} {
		if at := Running(t.Context(), cache, name); at != address {
			t.Errorf("%s: want %s, got %q", name, address, at)
		}
	}
	if at := Running(t.Context(), cache, t.TempDir()); at != "" {
		t.Errorf("another folder: %q", at)
	}
	remove()
	if at := Running(t.Context(), cache, folder); at != "" {
		t.Errorf("after its end: %q", at)
	}
}

// A note that is old or not ours leads nowhere.
func TestRunningOldNotes(t *testing.T) {
	host, _, _ := served(t, 0)
	stranger := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) { fmt.Fprint(w, r.URL.Query()) }))
	defer stranger.Close()
	cache, folder := t.TempDir(), t.TempDir()
	for _, address := range []string{
		"http://127.0.0.1:1/?token=" + token,
		"http://" + host + "/?token=another",
		stranger.URL + "/?token=" + token,
		"http://example.org/?token=" + token,
		"file:///etc/hosts", "", "%",
	} {
		if _, err := Register(cache, folder, address); err != nil {
			t.Fatal(err)
		}
		if at := Running(t.Context(), cache, folder); at != "" {
			t.Errorf("%q was taken for a desk", address)
		}
	}
}

// Only the note of a desk's own is removed: another may have begun since.
func TestNoteOfAnother(t *testing.T) {
	cache, folder := t.TempDir(), t.TempDir()
	remove, err := Register(cache, folder, "http://127.0.0.1:1/?token=one")
	if err != nil {
		t.Fatal(err)
	}
	if _, err := Register(cache, folder, "http://127.0.0.1:2/?token=two"); err != nil {
		t.Fatal(err)
	}
	remove()
	if left, err := filepath.Glob(filepath.Join(cache, "homebuild", "desk-*")); err != nil || len(left) != 1 {
		t.Errorf("left are %v, %v", left, err)
	}
}
