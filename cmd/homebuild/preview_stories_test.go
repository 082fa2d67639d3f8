package main

import (
	"bufio"
	"context"
	"encoding/json"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// shownState is what the preview's page draws: internal/preview sends it as
// JSON, and its script puts each text on the page as it stands.
type shownState struct {
	Good     int                                  `json:"good"`
	Problems []struct{ Place, Text, Hint string } `json:"problems"`
}

// waitForState reads what the page is told until it is what a test wants.
func waitForState(t *testing.T, url string, want func(shownState) bool) shownState {
	t.Helper()
	ctx, stop := context.WithTimeout(context.Background(), 30*time.Second)
	defer stop()
	request, err := http.NewRequestWithContext(ctx, http.MethodGet, url+"/events", nil)
	if err != nil {
		t.Fatal(err)
	}
	answer, err := http.DefaultClient.Do(request)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	var state shownState
	lines := bufio.NewScanner(answer.Body)
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		data, ok := strings.CutPrefix(lines.Text(), "data: ")
		if !ok {
			continue
		}
		state = shownState{}
		if err := json.Unmarshal([]byte(data), &state); err != nil {
			t.Fatal(err)
		}
		if want(state) {
			return state
		}
	}
	t.Fatalf("waited in vain; the last state was %+v", state)
	return state
}

// A story of the teacher's own while she writes it: the lines to paste, a
// wrong one, and the right one, each on the page with file and line, and the last
// good pages stay until all is right.
func TestPreviewOfOwnStories(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "my-class")
	if code, _, errs := asked(t, nil, "start", folder, "--yes", "--monday", "2026-09-14"); code != exitFine {
		t.Fatal(errs)
	}
	week := filepath.Join(folder, "weeks", "2026-09-14.toml")
	write := func(lines string) {
		text := "# ours\ntarget = \"add-within-20\"\n\n[[own-story]]\ntext = \"Lina has 8 shells. She finds 6 more. How many shells does she have now?\"\n" + lines + "[note]\nen = \"We tell stories.\"\n"
		if err := os.WriteFile(week, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	var out, errs heard
	ctx, cancel := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() {
		ended <- runUntil(ctx, testStreams(&out, &errs), "preview", folder)
	}()
	defer func() {
		cancel()
		if err := <-ended; err != nil {
			t.Error(err)
		}
	}()
	out.waitFor(t, "pages ready")
	url, _, _ := strings.Cut(strings.TrimPrefix(out.String(), "preview at "), "/\n")
	try := url + "/pages/en/2026-09-14-try.html"
	before := pageAt(t, try)

	tests := []struct{ name, lines, place, text, hint string }{
		{"nothing chosen", "", "2026-09-14.toml, line 5", "your own story waits for you to say what happens; numbers that count: 8 shells, 6 more",
			`happens = "joins"`},
		{"what happens", "happens = \"joins\"\n", "2026-09-14.toml, line 5", "your own story waits for you to say what it asks; numbers that count: 8 shells, 6 more",
			`kind = "add-to-result"`},
		{"a number that the story does not tell", "kind = \"add-to-result\"\nequation = \"8 + 7 = ?\"\n", "2026-09-14.toml, line 7", "the story does not tell what the equation needs: 7",
			`take the line away`},
		{"no kind of story", "kind = \"8 + 6 = ?\"\n", "2026-09-14.toml, line 6", `"8" is not a kind of story`, "take the line away"},
	}
	for _, test := range tests {
		write(test.lines)
		state := waitForState(t, url, func(s shownState) bool { return len(s.Problems) == 1 && s.Problems[0].Text == test.text })
		if p := state.Problems[0]; !strings.HasSuffix(p.Place, test.place) || !strings.Contains(p.Hint, test.hint) || state.Good != 1 {
			t.Errorf("%s: want %q with %q while the first good pages stay, got %+v", test.name, test.place, test.hint, state)
		}
		if pageAt(t, try) != before {
			t.Errorf("%s: want the last good page to stay", test.name)
		}
	}

	write("kind = \"add-to-result\"\n")
	waitForState(t, url, func(s shownState) bool { return len(s.Problems) == 0 && s.Good == 2 })
	if page := pageAt(t, try); !strings.Contains(page, "Lina has <b class=n>8</b> shells") {
		t.Error("want the story on the page once it was chosen")
	}
}
