package deskserver

import (
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"homebuild/internal/desk"
)

const token = "the-token"

var at = &net.TCPAddr{IP: net.IPv4(127, 0, 0, 1), Port: 8017}

// TestWhoIsAnswered holds the door: our own page with the token, and nobody else.
func TestWhoIsAnswered(t *testing.T) {
	const ask, json = `{"id":1,"call":"open","args":{"today":"2026-09-10","words":"en"}}`, "application/json"
	for _, c := range []struct {
		name, method, path, host, origin, token, kind string
		want                                          int
	}{
		{"the page", "GET", "/?token=" + token, "127.0.0.1:8017", "", "", "", 200},
		{"the page by name", "GET", "/?token=" + token, "localhost:8017", "", "", "", 200},
		{"the page without the token", "GET", "/", "127.0.0.1:8017", "", "", "", 403},
		{"the page with another token", "GET", "/?token=x", "127.0.0.1:8017", "", "", "", 403},
		{"a name that leads here", "GET", "/?token=" + token, "evil.example:8017", "", "", "", 403},
		{"another port", "GET", "/?token=" + token, "127.0.0.1:80", "", "", "", 403},
		{"a call", "POST", "/call", "127.0.0.1:8017", "http://127.0.0.1:8017", token, json, 200},
		{"a call from another page", "POST", "/call", "127.0.0.1:8017", "https://evil.example", token, json, 403},
		{"a call from a file", "POST", "/call", "127.0.0.1:8017", "null", token, json, 403},
		{"a call from nowhere", "POST", "/call", "127.0.0.1:8017", "", token, json, 403},
		{"a call without the token", "POST", "/call", "127.0.0.1:8017", "http://127.0.0.1:8017", "", json, 403},
		{"a form", "POST", "/call", "127.0.0.1:8017", "http://127.0.0.1:8017", token, "text/plain", 415},
		{"a call by a link", "GET", "/call", "127.0.0.1:8017", "", token, json, 404},
		{"a file", "GET", "/../../etc/passwd", "127.0.0.1:8017", "", token, "", 404},
	} {
		r := httptest.NewRequest(c.method, "http://127.0.0.1:8017"+c.path, strings.NewReader(ask))
		r.Host = c.host
		for name, value := range map[string]string{"Origin": c.origin, tokenHeader: c.token, "Content-Type": c.kind} {
			if value != "" {
				r.Header.Set(name, value)
			}
		}
		w := httptest.NewRecorder()
		New(desk.New(nil), at, token).ServeHTTP(w, r)
		body, _ := io.ReadAll(w.Body)
		if w.Code != c.want {
			t.Errorf("%s: want %d, got %d: %s", c.name, c.want, w.Code, body)
		}
		if w.Code != http.StatusOK && strings.Contains(string(body), token) {
			t.Errorf("%s: the token is told to whoever asks", c.name)
		}
		if w.Header().Get("Access-Control-Allow-Origin") != "" {
			t.Errorf("%s: other pages may read the answer", c.name)
		}
	}
}
