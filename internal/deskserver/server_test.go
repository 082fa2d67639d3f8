package deskserver

import (
	"bufio"
	"bytes"
	"context"
	"io"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"homebuild/internal/desk"
)

const token = "the-token"

// onDisk is a folder for a desk that only reads.
type onDisk string

func (f onDisk) Name() string { return string(f) }
func (f onDisk) Read() (desk.Files, error) {
	text, err := os.ReadFile(filepath.Join(string(f), "site.toml"))
	return desk.Files{"site.toml": string(text)}, err
}
func (f onDisk) Write(changes, _ desk.Changes) error {
	return os.WriteFile(filepath.Join(string(f), "site.toml"), []byte(*changes["site.toml"]), 0o644)
}

// served is a desk that listens; ended gives what Run gave.
func served(t *testing.T, alone time.Duration) (host, folder string, ended <-chan error) {
	t.Helper()
	listener, err := net.Listen("tcp4", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	folder = t.TempDir()
	write(t, folder, "name = \"Pebble\"\n")
	ctx, stop := context.WithCancel(context.Background())
	done := make(chan error, 2)
	go func() {
		err := Run(ctx, Options{Listener: listener, Desk: desk.New(onDisk(folder)), Token: token, Folder: folder, Files: []string{"site.toml"}, Alone: alone})
		done <- err
		done <- err
	}()
	t.Cleanup(func() {
		stop()
		if err := <-done; err != nil {
			t.Error(err)
		}
	})
	return listener.Addr().String(), folder, done
}

func write(t *testing.T, folder, text string) {
	t.Helper()
	if err := os.WriteFile(filepath.Join(folder, "site.toml"), []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// asks sends a request as it stands, without mending its path on the way.
func asks(t *testing.T, host, method, path string, body io.Reader, head map[string]string) *http.Response {
	t.Helper()
	r, err := http.NewRequest(method, "http://"+host+"/", body)
	if err != nil {
		t.Fatal(err)
	}
	r.URL.Opaque, r.URL.RawQuery, _ = strings.Cut(path, "?")
	for name, value := range head {
		switch {
		case name == "Host" && value != "":
			r.Host = value
		case value != "":
			r.Header.Set(name, value)
		}
	}
	answer, err := http.DefaultTransport.RoundTrip(r)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { answer.Body.Close() })
	return answer
}

func calls(t *testing.T, host, body string) string {
	t.Helper()
	answer := asks(t, host, "POST", "/call", strings.NewReader(body), map[string]string{"Origin": "http://" + host, tokenHeader: token, "Content-Type": "application/json"})
	text, err := io.ReadAll(answer.Body)
	if err != nil || answer.StatusCode != http.StatusOK {
		t.Fatalf("%d %s, %v", answer.StatusCode, text, err)
	}
	return string(text)
}

const open = `{"id":1,"call":"open","args":{"today":"2026-09-10","words":"en"}}`

// TestWhoIsAnswered holds the door: our own page with the token, and nobody else.
func TestWhoIsAnswered(t *testing.T) {
	host, _, _ := served(t, 0)
	_, port, _ := net.SplitHostPort(host)
	const json = "application/json"
	own := "http://" + host
	for _, c := range []struct {
		name, method, path, host, origin, token, kind string
		want                                          int
	}{
		{"the page", "GET", "/?token=" + token, "", "", "", "", 200},
		{"the page by name", "GET", "/?token=" + token, "localhost:" + port, "", "", "", 200},
		{"the page without the token", "GET", "/", "", "", "", "", 403},
		{"the page with another token", "GET", "/?token=x", "", "", "", "", 403},
		{"the page with half of the token", "GET", "/?token=the", "", "", "", "", 403},
		{"the page with more than the token", "GET", "/?token=" + token + "x", "", "", "", "", 403},
		{"a name that leads here", "GET", "/?token=" + token, "evil.example:" + port, "", "", "", 403},
		{"another port", "GET", "/?token=" + token, "127.0.0.1:80", "", "", "", 403},
		{"news without the token", "GET", "/news", "", "", "", "", 403},
		{"news by a name that leads here", "GET", "/news?token=" + token, "evil.example:" + port, "", "", "", 403},
		{"a call", "POST", "/call", "", own, token, json, 200},
		{"a call with letters of its own", "POST", "/call", "", own, token, "application/json; charset=utf-8", 200},
		{"a call from another page", "POST", "/call", "", "https://evil.example", token, json, 403},
		{"a call from another port", "POST", "/call", "", "http://127.0.0.1:1", token, json, 403},
		{"a call from a name like ours", "POST", "/call", "", own + ".evil.example", token, json, 403},
		{"a call over https", "POST", "/call", "", "https://" + host, token, json, 403},
		{"a call from a file", "POST", "/call", "", "null", token, json, 403},
		{"a call from nowhere", "POST", "/call", "", "", token, json, 403},
		{"a call by a name that leads here", "POST", "/call", "evil.example:" + port, "http://evil.example:" + port, token, json, 403},
		{"a call without the token", "POST", "/call", "", own, "", json, 403},
		{"a call with the token in its path", "POST", "/call?token=" + token, "", own, "", json, 403},
		{"a form", "POST", "/call", "", own, token, "text/plain", 415},
		{"a form with a file", "POST", "/call", "", own, token, "multipart/form-data; boundary=x", 415},
		{"a call by a link", "GET", "/call", "", "", token, json, 404},
		{"what a browser asks before it calls", "OPTIONS", "/call", "", "https://evil.example", "", "", 404},
		{"to take away", "DELETE", "/site.toml", "", own, token, json, 404},
		{"a file", "GET", "/site.toml", "", "", token, "", 404},
		{"out of the folder", "GET", "/../../etc/passwd", "", "", token, "", 404},
		{"out, written otherwise", "GET", "/..%2f..%2fetc%2fpasswd", "", "", token, "", 404},
		{"out, in the manner of another system", "GET", `/..%5C..%5Cwindows%5Cwin.ini`, "", "", token, "", 404},
	} {
		answer := asks(t, host, c.method, c.path, strings.NewReader(open), map[string]string{"Host": c.host, "Origin": c.origin, tokenHeader: c.token, "Content-Type": c.kind})
		body, _ := io.ReadAll(answer.Body)
		if answer.StatusCode != c.want {
			t.Errorf("%s: want %d, got %d: %.100s", c.name, c.want, answer.StatusCode, body)
		}
		if answer.StatusCode != http.StatusOK && strings.Contains(string(body), token) {
			t.Errorf("%s: the token is told to whoever asks", c.name)
		}
		if answer.Header.Get("Access-Control-Allow-Origin") != "" {
			t.Errorf("%s: other pages may read the answer", c.name)
		}
	}
}

// A request that is too large, or no request at all, is answered with why.
func TestWhatIsNoCall(t *testing.T) {
	host, _, _ := served(t, 0)
	head := map[string]string{"Origin": "http://" + host, tokenHeader: token, "Content-Type": "application/json"}
	if answer := asks(t, host, "POST", "/call", io.LimitReader(zeros{}, mostAsked+1), head); answer.StatusCode != http.StatusRequestEntityTooLarge {
		t.Errorf("a large one: want it refused, got %d", answer.StatusCode)
	}
	for _, body := range []string{"", "[]", "{", `{"call":"open","args":[]}`, `{"call":"nothing"}`, strings.Repeat("[", 100_000), `{"id":1,"call":"put","args":{"changes":{"a":1}}}`} {
		if reply := calls(t, host, body); !strings.Contains(reply, `"fault":`) {
			t.Errorf("%.40q: want a fault, got %.100s", body, reply)
		}
	}
	if reply := calls(t, host, open); !strings.Contains(reply, "Pebble") {
		t.Errorf("after all that the desk answers %.100s", reply)
	}
}

type zeros struct{}

func (zeros) Read(p []byte) (int, error) { return copy(p, bytes.Repeat([]byte{'0'}, len(p))), nil }

// What another program writes is told; what the desk writes or has read is not.
func TestNews(t *testing.T) {
	host, folder, _ := served(t, 0)
	calls(t, host, open)
	answer := asks(t, host, "GET", "/news?token="+token, nil, nil)
	lines := bufio.NewScanner(answer.Body)
	next := func() string {
		for lines.Scan() {
			if data, ok := strings.CutPrefix(lines.Text(), "data: "); ok {
				return data
			}
		}
		return "the end"
	}
	if got := next(); got != "0" {
		t.Errorf("at first: %s", got)
	}
	calls(t, host, `{"id":1,"call":"put","args":{"changes":{"site.toml":"name = \"By the desk\"\n"}}}`)
	time.Sleep(300 * time.Millisecond) // it would be told by now
	write(t, folder, "name = \"By another\"\n")
	if got := next(); got != "1" {
		t.Errorf("after a write of the desk's and one of another program's: want 1, got %s", got)
	}
	if reply := calls(t, host, open); !strings.Contains(reply, "By another") {
		t.Errorf("the desk still has %.100s", reply)
	}
}

// A desk that was begun by a double click ends when its page was closed.
func TestEndsAlone(t *testing.T) {
	const alone = 400 * time.Millisecond
	host, _, ended := served(t, alone)
	ctx, leave := context.WithCancel(context.Background())
	r, err := http.NewRequestWithContext(ctx, http.MethodGet, "http://"+host+"/news?token="+token, nil)
	if err != nil {
		t.Fatal(err)
	}
	answer, err := http.DefaultClient.Do(r)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	select {
	case err := <-ended:
		t.Fatalf("it ended while its page was open: %v", err)
	case <-time.After(3 * alone):
	}
	leave()
	select {
	case err := <-ended:
		if err != nil {
			t.Error(err)
		}
	case <-time.After(10 * time.Second):
		t.Error("it goes on without its page")
	}
}
