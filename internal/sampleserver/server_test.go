package sampleserver

import (
	"errors"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"homebuild/internal/diag"
	"homebuild/internal/loopback"
	"homebuild/internal/output"
)

func asked(h http.Handler, method, path string) *httptest.ResponseRecorder {
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest(method, "http://127.0.0.1:8017"+path, nil))
	return w
}

// What is served is what was made, and nothing of the disk.
func TestAnswers(t *testing.T) {
	h := &handler{news: loopback.NewNews()}
	broken := output.File{Path: "broken.html", Render: func() ([]byte, error) { return nil, errors.New("no ink") }}
	h.take(Made{Pages: []output.File{output.Text("sample-vi.html", "the sample"), output.Text("vi/index.html", "home"), broken}, Whole: true,
		Mend: diag.Diagnostics{{File: "locales/vi.toml", Line: 3, Text: "<b>bold</b>", Hint: "write\nit"}}})
	for _, c := range []struct {
		method, path string
		want         int
		body         string
	}{
		{"GET", "/", 200, `src="/pages/sample-vi.html"`},
		{"GET", "/", 200, `href="/pages/index.html"`},
		{"GET", "/", 200, "<script>" + script + "</script>"},
		{"GET", "/mend", 200, "<b>locales/vi.toml, line 3</b>"},
		{"GET", "/mend", 200, "&lt;b&gt;bold&lt;/b&gt;"},
		{"GET", "/pages/sample-vi.html", 200, "the sample"},
		{"GET", "/pages/vi/index.html", 200, "home"},
		{"GET", "/pages/broken.html", 500, "no ink"},
		{"GET", "/pages/vi/", 404, "no such page"},
		{"GET", "/pages/../../etc/passwd", 404, "no such page"},
		{"GET", "/pages//etc/passwd", 404, "no such page"},
		{"GET", "/locales/vi.toml", 404, "nothing here"},
		{"POST", "/", 405, "looked at"},
	} {
		if w := asked(h, c.method, c.path); w.Code != c.want || !strings.Contains(w.Body.String(), c.body) {
			t.Errorf("%s %s: want %d with %q, got %d with\n%s", c.method, c.path, c.want, c.body, w.Code, w.Body)
		}
	}
	if policy := asked(h, "GET", "/").Header().Get("Content-Security-Policy"); !strings.Contains(policy, "script-src '"+hash(script)+"'") {
		t.Errorf("the policy does not name the script: %s", policy)
	}
	if policy := asked(h, "GET", "/pages/sample-vi.html").Header().Get("Content-Security-Policy"); !strings.Contains(policy, "script-src 'none'") {
		t.Errorf("a page may run scripts: %s", policy)
	}
}

// While the file cannot be understood, the last good pages stay.
func TestLastGoodPagesStay(t *testing.T) {
	h := &handler{news: loopback.NewNews()}
	h.take(Made{Pages: []output.File{output.Text("sample-vi.html", "the sample")}})
	h.take(Made{Mend: diag.Diagnostics{{Text: "a quote is missing"}}})
	if got := asked(h, "GET", "/pages/sample-vi.html").Body.String(); got != "the sample" {
		t.Errorf("the page is now %q", got)
	}
	if got := asked(h, "GET", "/mend").Body.String(); !strings.Contains(got, "a quote is missing") {
		t.Errorf("what is to mend: %s", got)
	}
	h.take(Made{Pages: []output.File{output.Text("sample-vi.html", "mended")}})
	if got := asked(h, "GET", "/mend").Body.String(); !strings.Contains(got, "Nothing to mend.") {
		t.Errorf("what is to mend: %s", got)
	}
}
