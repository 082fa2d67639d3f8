package main

import (
	"context"
	"html"
	"net/http"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// The page writes into the file that the command began, and builds take it from there;
// who does not know the whole address is sent away.
func TestWatchWritesTheFile(t *testing.T) {
	folder := schoolWith(t)
	ctx, stop := context.WithCancel(t.Context())
	var out heard
	done := make(chan error, 1)
	go func() {
		done <- runUntil(ctx, testStreams(&out, &out), "language", "watch", "pl", folder, "--closed")
	}()
	out.waitFor(t, "ctrl-c ends it")
	file := filepath.Join(folder, "locales", "pl.toml")
	if !strings.Contains(out.String(), file+" is begun") {
		t.Errorf("want the file to be begun: %s", out.String())
	}
	before, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	address := regexp.MustCompile(`http://127\.0\.0\.1:\d+/\?token=\w+`).FindString(out.String())
	page := shownAt(t, address+"&at=learn.next")
	form := url.Values{}
	for _, m := range regexp.MustCompile(`<input type="hidden" name="(\w+)" value="([^"]*)"`).FindAllStringSubmatch(page, -1) {
		form.Set(m[1], html.UnescapeString(m[2]))
	}
	form.Set("text.learn.next.other", "Dalej")
	origin, _, _ := strings.Cut(address, "/?")
	r, err := http.NewRequest(http.MethodPost, origin+"/save", strings.NewReader(form.Encode()))
	if err != nil {
		t.Fatal(err)
	}
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	r.Header.Set("Origin", origin)
	answer, err := http.DefaultClient.Do(r)
	if err != nil {
		t.Fatal(err)
	}
	answer.Body.Close()
	after, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if answer.StatusCode != http.StatusOK || len(after) != len(before)+len("Dalej") || !strings.Contains(string(after), "other = \"Dalej\"\n") {
		t.Errorf("saving: %s; the file grew by %d bytes", answer.Status, len(after)-len(before))
	}
	if got := shownAt(t, origin+"/"); !strings.Contains(got, "whole address") {
		t.Errorf("without the token: %s", got)
	}
	stop()
	if err := <-done; err != nil {
		t.Error(err)
	}
}
