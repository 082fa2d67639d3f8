package preview

import (
	"context"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"strings"
	"testing"
	"time"

	"homebuild/internal/diag"
)

// started is a preview of a site that a test makes.
type started struct {
	url     string
	changes chan Changed
	stop    func() error // ends it, and gives what Run gave
}

// start serves what make gives, watching a folder if there is one.
func start(t *testing.T, folder string, build func() Result) started {
	t.Helper()
	listener, err := net.Listen("tcp4", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(context.Background())
	s := started{url: "http://" + listener.Addr().String(), changes: make(chan Changed, 100)}
	ended := make(chan error, 1)
	go func() {
		ended <- Run(ctx, Options{Listener: listener, Folder: folder, Watch: []string{"site.toml", "weeks", "locales", "themes"}, Build: build, Notify: func(c Changed) { s.changes <- c }})
	}()
	<-s.changes // the first time
	once := false
	s.stop = func() error {
		if once {
			return nil
		}
		once = true
		cancel()
		select {
		case err := <-ended:
			return err
		case <-time.After(10 * time.Second):
			return errors.New("it did not end within ten seconds")
		}
	}
	t.Cleanup(func() {
		if err := s.stop(); err != nil {
			t.Error(err)
		}
	})
	return s
}

// text is a page with these words.
func text(path, words string) Page {
	return Page{Path: path, Render: func() ([]byte, error) { return []byte(words), nil }}
}

func fixed(pages ...Page) func() Result {
	return func() Result { return Result{Pages: pages, First: pages[0].Path} }
}

// get asks for a path as it stands, without mending it on the way.
func get(t *testing.T, method, url, path, host string) (int, http.Header, string) {
	t.Helper()
	ctx, cancel := context.WithTimeout(context.Background(), 10*time.Second)
	defer cancel()
	r, err := http.NewRequestWithContext(ctx, method, url+"/", nil)
	if err != nil {
		t.Fatal(err)
	}
	r.URL.Opaque = path
	if host != "" {
		r.Host = host
	}
	answer, err := http.DefaultTransport.RoundTrip(r)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	body, err := io.ReadAll(answer.Body)
	if err != nil {
		t.Fatal(err)
	}
	return answer.StatusCode, answer.Header, string(body)
}

func TestAnswers(t *testing.T) {
	broken := Page{Path: "broken.html", Render: func() ([]byte, error) { return nil, errors.New("no ink") }}
	s := start(t, "", fixed(text("index.html", "front"), text("en/index.html", "home"), text("en/feed.xml", "feed"), broken))
	port := s.url[strings.LastIndex(s.url, ":"):]
	tests := []struct {
		name, method, path, host string
		want                     int
		body                     string
	}{
		{"the shell", "GET", "/", "", 200, "<iframe"},
		{"a page", "GET", "/pages/en/index.html", "", 200, "home"},
		{"a folder is its index", "GET", "/pages/en/", "", 200, "home"},
		{"the site", "GET", "/pages/", "", 200, "front"},
		{"the head alone", "HEAD", "/pages/index.html", "", 200, ""},
		{"by the name localhost", "GET", "/pages/index.html", "localhost" + port, 200, "front"},
		{"by that name in capitals", "GET", "/pages/index.html", "LOCALHOST" + port, 200, "front"},
		{"by a name of a page elsewhere", "GET", "/pages/index.html", "evil.example" + port, 403, "alone"},
		{"by its address without the port", "GET", "/", "127.0.0.1", 403, "alone"},
		{"by another port", "GET", "/events", "127.0.0.1:1", 403, "alone"},
		{"by a name that only begins well", "GET", "/", "localhost" + port + ".evil.example", 403, "alone"},
		{"a page that is not there", "GET", "/pages/es/index.html", "", 404, "no such page"},
		{"a page that cannot be made", "GET", "/pages/broken.html", "", 500, "no ink"},
		{"to write", "POST", "/", "", 405, "looked at"},
		{"to take away", "DELETE", "/pages/index.html", "", 405, "looked at"},
		{"out of the site", "GET", "/../../etc/passwd", "", 404, "nothing here"},
		{"out of the pages", "GET", "/pages/../../etc/passwd", "", 404, "no such page"},
		{"out, written otherwise", "GET", "/pages/..%2f..%2fetc%2fpasswd", "", 404, "no such page"},
		{"out, in the manner of another system", "GET", "/pages/..%5C..%5Cwindows%5Cwin.ini", "", 404, "no such page"},
		{"an absolute path", "GET", "/pages//etc/passwd", "", 404, "no such page"},
		{"our own sources", "GET", "/pages/site.toml", "", 404, "no such page"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			code, _, body := get(t, test.method, s.url, test.path, test.host)
			if code != test.want || !strings.Contains(body, test.body) {
				t.Errorf("%s %s: want %d with %q, got %d with %.80q", test.method, test.path, test.want, test.body, code, body)
			}
		})
	}
}

// The shell's own script is named by its hash; the pages run none, and stand in
// no frame but ours.
func TestPolicies(t *testing.T) {
	s := start(t, "", fixed(text("index.html", "front")))
	_, head, body := get(t, "GET", s.url, "/", "")
	policy := head.Get("Content-Security-Policy")
	for _, part := range []string{"default-src 'none'", "script-src '" + hash(shellJS) + "'", "style-src '" + hash(shellCSS) + "'", "frame-ancestors 'none'"} {
		if !strings.Contains(policy, part) {
			t.Errorf("policy of the shell: want %q in it, got %q", part, policy)
		}
	}
	if strings.Contains(policy, "unsafe") {
		t.Errorf("policy of the shell: %q allows what is unsafe", policy)
	}
	if !strings.Contains(body, "<script>"+shellJS+"</script>") || !strings.Contains(body, "<style>"+shellCSS+"</style>") {
		t.Error("want script and style on the shell as they were hashed")
	}
	if !strings.Contains(body, `sandbox="allow-same-origin"`) {
		t.Error("want the frame to run no script")
	}
	_, head, _ = get(t, "GET", s.url, "/pages/index.html", "")
	if got, want := head.Get("Content-Security-Policy"), "script-src 'none'; frame-ancestors 'self'"; got != want {
		t.Errorf("policy of a page: want %q, got %q", want, got)
	}
}

func TestUnchangedPageIsNotSentAgain(t *testing.T) {
	s := start(t, "", fixed(text("index.html", "front")))
	_, head, _ := get(t, "GET", s.url, "/pages/index.html", "")
	r, err := http.NewRequest("GET", s.url+"/pages/index.html", nil)
	if err != nil {
		t.Fatal(err)
	}
	r.Header.Set("If-None-Match", head.Get("ETag"))
	answer, err := http.DefaultClient.Do(r)
	if err != nil {
		t.Fatal(err)
	}
	answer.Body.Close()
	if answer.StatusCode != http.StatusNotModified {
		t.Errorf("want %d, got %d", http.StatusNotModified, answer.StatusCode)
	}
}

func TestPortInUse(t *testing.T) {
	taken, err := Listen(0)
	if err != nil {
		t.Fatal(err)
	}
	defer taken.Close()
	port := taken.Addr().(*net.TCPAddr).Port
	if ip := taken.Addr().(*net.TCPAddr).IP; !ip.IsLoopback() {
		t.Errorf("listens on %v, want this computer alone", ip)
	}
	_, err = Listen(port)
	var inUse *InUse
	if !errors.As(err, &inUse) || inUse.Port != port || inUse.Free <= port {
		t.Fatalf("Listen(%d): want it in use and a free port after it, got %v", port, err)
	}
	free, err := Listen(inUse.Free)
	if err != nil {
		t.Fatalf("the port %d that was said to be free: %v", inUse.Free, err)
	}
	free.Close()
	other, err := Listen(0)
	if err != nil {
		t.Fatal(err)
	}
	defer other.Close()
	if got := other.Addr().(*net.TCPAddr).Port; got == port {
		t.Errorf("want another port than %d", port)
	}
}

// Rendered once for each good site, and only when asked for.
func TestRendersWhatIsAskedFor(t *testing.T) {
	times := map[string]int{}
	count := func(path string) Page {
		return Page{Path: path, Render: func() ([]byte, error) { times[path]++; return []byte(path), nil }}
	}
	s := newSite()
	made := Result{Pages: []Page{count("a.html"), count("b.html")}}
	s.update(made)
	for range 3 {
		s.page("a.html")
	}
	s.update(Result{Problems: diag.Diagnostics{{Text: "a slip"}}})
	if page, ok := s.page("a.html"); !ok || string(page.html) != "a.html" {
		t.Error("want the last good page to stay while there is a slip")
	}
	s.update(made)
	s.page("a.html")
	if got, want := fmt.Sprint(times), "map[a.html:2]"; got != want {
		t.Errorf("renderings: want %s, got %s", want, got)
	}
}
