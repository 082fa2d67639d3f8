package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"homebuild/internal/desk"
	"homebuild/internal/loopback"
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

// The desk of a folder from its first word to its last, as its page asks it, while
// the week's file is open in an editor, too.
func TestDeskWhileFilesChange(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	folder := filepath.Join(t.TempDir(), "my-class")
	if code, _, errs := asked(t, nil, "start", folder, "--yes", "--monday", "2026-09-14"); code != exitFine {
		t.Fatal(errs)
	}
	var out heard
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	ended := make(chan error, 1)
	go func() { ended <- runUntil(ctx, testStreams(&out, &out), "desk", folder, "--closed") }()
	out.waitFor(t, "ctrl-c ends it")
	address, _, _ := strings.Cut(strings.TrimPrefix(out.String(), "your desk is at "), "\n")
	if code, said, errs := asked(t, nil, "desk", folder, "--closed"); code != exitFine || said != "your desk is open already, at "+address+"\n" {
		t.Errorf("a second start: %d with %q and %q", code, said, errs)
	}
	d := openedDesk(t, address)
	if page := d.learn(t); !strings.Contains(page, "I can add two numbers") {
		t.Errorf("want the week's page, got %.200s", page)
	}
	week := filepath.Join(folder, "weeks", "2026-09-14.toml")
	save := func(text string) {
		if err := os.WriteFile(week, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		d.follow(t)
	}
	save("# ours\ntarget = \"add-within-20\"\n[note]\nen = \"Words of a new note.\"\n")
	if page := d.learn(t); !strings.Contains(page, "Words of a new note.") {
		t.Errorf("want the new note, got %.200s", page)
	}
	save("# ours\ntarget = \"ad-within-20\"\n[note]\nen = \"A slip.\"\n")
	wrong := d.ask(t, "page", desk.PageOf{Date: "2026-09-14", Tag: "en", Page: "learn"}, nil)
	if len(wrong) == 0 || wrong[0].File != "weeks/2026-09-14.toml" || wrong[0].Line != 2 || !strings.Contains(wrong[0].Hint, "add-within-20") {
		t.Errorf("a slip: %+v", wrong)
	}
	stop()
	if err := <-ended; err != nil {
		t.Errorf("the end: %v", err)
	}
	out.waitFor(t, "the desk has ended")
}

// servedDesk is a desk as its page asks it over loopback.
type servedDesk struct {
	origin, token string
	news          *json.Decoder
}

func openedDesk(t *testing.T, address string) *servedDesk {
	t.Helper()
	origin, token, _ := strings.Cut(address, "/?token=")
	answer, err := http.Get(origin + "/news?token=" + token)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { answer.Body.Close() })
	d := &servedDesk{origin: origin, token: token, news: json.NewDecoder(countsOf(answer.Body))}
	d.follow(t)
	return d
}

// countsOf are the numbers in the news.
func countsOf(events io.Reader) io.Reader {
	r, w := io.Pipe()
	go func() {
		buffer := make([]byte, 1<<10)
		for {
			n, err := events.Read(buffer)
			for line := range strings.Lines(string(buffer[:n])) {
				if data, ok := strings.CutPrefix(line, "data: "); ok {
					_, _ = io.WriteString(w, data)
				}
			}
			if err != nil {
				w.CloseWithError(err)
				return
			}
		}
	}()
	return r
}

// follow waits for news, and takes up the files as they are.
func (d *servedDesk) follow(t *testing.T) {
	t.Helper()
	var count int
	if err := d.news.Decode(&count); err != nil {
		t.Fatal(err)
	}
	d.ask(t, "open", desk.Open{Today: "2026-09-10", Words: "en"}, nil)
}

func (d *servedDesk) learn(t *testing.T) string {
	t.Helper()
	var page desk.Page
	if wrong := d.ask(t, "page", desk.PageOf{Date: "2026-09-14", Tag: "en", Page: "learn"}, &page); len(wrong) > 0 {
		t.Fatalf("%+v", wrong)
	}
	return page.HTML
}

func (d *servedDesk) ask(t *testing.T, call string, args, value any) (wrong []desk.Finding) {
	t.Helper()
	body, err := json.Marshal(desk.Request{ID: 1, Call: call, Args: args})
	if err != nil {
		t.Fatal(err)
	}
	r, err := http.NewRequest(http.MethodPost, d.origin+"/call", bytes.NewReader(body))
	if err != nil {
		t.Fatal(err)
	}
	for name, value := range map[string]string{"Origin": d.origin, "X-Desk": d.token, "Content-Type": "application/json"} {
		r.Header.Set(name, value)
	}
	answer, err := http.DefaultClient.Do(r)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	reply := desk.Reply{Value: value}
	if err := json.NewDecoder(answer.Body).Decode(&reply); err != nil || reply.Fault != "" {
		t.Fatalf("%s: %v %s", call, err, reply.Fault)
	}
	return reply.Wrong
}

// What cannot be served is told before a browser is opened.
func TestDeskWrongUse(t *testing.T) {
	taken, err := loopback.Listen(0)
	if err != nil {
		t.Fatal(err)
	}
	defer taken.Close()
	_, port, _ := strings.Cut(taken.Addr().String(), ":")
	for _, c := range []struct {
		args []string
		code int
		says string
	}{
		{[]string{"--port", port, t.TempDir()}, exitProblems, fmt.Sprintf("port %s is in use\n  hint: it may be another desk; port ", port)},
		{[]string{"nowhere/my-class"}, exitWrongUse, `there is no folder "nowhere/my-class"`},
		{[]string{"test-data"}, exitWrongUse, `did you mean "testdata"?`},
		{[]string{"--port", "70000"}, exitWrongUse, "--port cannot be 70000\n  hint: write a number from 1024 to 65535, or leave it out"},
		{[]string{"--port", "22"}, exitWrongUse, "--port cannot be 22\n"},
		{[]string{"--port", "-1"}, exitWrongUse, "--port cannot be -1\n"},
		{[]string{"--port", "eighty"}, exitWrongUse, `--port cannot be "eighty"`},
	} {
		var out, errs bytes.Buffer
		code := testStreams(&out, &errs).run(append([]string{"desk"}, c.args...))
		if code != c.code || !strings.Contains(errs.String(), c.says) || out.Len() > 0 {
			t.Errorf("%v: want %d with %q, got %d with %q and %q", c.args, c.code, c.says, code, errs.String(), out.String())
		}
	}
}

// A folder that is not there yet begins a new desk, and is gone again when nothing was
// done in it.
func TestDeskNewFolder(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	folder := filepath.Join(t.TempDir(), "my-class")
	var out heard
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	ended := make(chan error, 1)
	go func() { ended <- runUntil(ctx, testStreams(&out, &out), "desk", folder, "--closed") }()
	out.waitFor(t, "its files are in "+folder)
	stop()
	if err := <-ended; err != nil || isFolder(folder) {
		t.Errorf("the end: %v, and the folder is there: %t", err, isFolder(folder))
	}
}
