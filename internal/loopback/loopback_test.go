package loopback

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"strings"
	"sync"
	"testing"
	"time"
)

// served is a handler that listens, and the end of it.
func served(t *testing.T, handler http.Handler) (host string, stop func() error) {
	t.Helper()
	listener, err := net.Listen("tcp4", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() { ended <- Serve(ctx, listener, handler) }()
	stop = sync.OnceValue(func() error {
		cancel()
		select {
		case err := <-ended:
			return err
		case <-time.After(10 * time.Second):
			return errors.New("it did not end within ten seconds")
		}
	})
	t.Cleanup(func() {
		if err := stop(); err != nil {
			t.Error(err)
		}
	})
	return listener.Addr().String(), stop
}

// By whatever name we are called, we answer to those of this computer alone.
func TestNames(t *testing.T) {
	host, _ := served(t, http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) { fmt.Fprint(w, "here") }))
	_, port, _ := net.SplitHostPort(host)
	for name, want := range map[string]int{
		host: 200, "localhost:" + port: 200, "LOCALHOST:" + port: 200,
		"evil.example:" + port: 403, "127.0.0.1": 403, "127.0.0.1:1": 403, "localhost:" + port + ".evil.example": 403,
		"localhost." + port: 403, "127.0.0.1.evil.example:" + port: 403, "0.0.0.0:" + port: 403, "[::1]:" + port: 403, "2130706433:" + port: 403,
	} {
		r, err := http.NewRequest(http.MethodGet, "http://"+host+"/", nil)
		if err != nil {
			t.Fatal(err)
		}
		r.Host = name
		answer, err := http.DefaultClient.Do(r)
		if err != nil {
			t.Fatal(err)
		}
		body, _ := io.ReadAll(answer.Body)
		answer.Body.Close()
		if answer.StatusCode != want || (want != 200) == strings.Contains(string(body), "here") {
			t.Errorf("%s: want %d, got %d with %q", name, want, answer.StatusCode, body)
		}
		for header, want := range map[string]string{
			"Cache-Control": "no-store", "X-Content-Type-Options": "nosniff", "Referrer-Policy": "no-referrer",
			"Cross-Origin-Resource-Policy": "same-origin", "Cross-Origin-Opener-Policy": "same-origin", "Access-Control-Allow-Origin": "",
		} {
			if got := answer.Header.Get(header); got != want {
				t.Errorf("%s: %s: want %q, got %q", name, header, want, got)
			}
		}
	}
}

// One who sends no end of headers, or none at all, is let go.
func TestEndlessHeaders(t *testing.T) {
	host, _ := served(t, http.NotFoundHandler())
	conn, err := net.Dial("tcp", host)
	if err != nil {
		t.Fatal(err)
	}
	defer conn.Close()
	_ = conn.SetDeadline(time.Now().Add(20 * time.Second))
	fmt.Fprintf(conn, "GET / HTTP/1.1\r\nHost: %s\r\n", host)
	for range 1000 { // the server may hang up on the way
		if _, err := fmt.Fprintf(conn, "X: %s\r\n", strings.Repeat("x", 1000)); err != nil {
			break
		}
	}
	answer, err := io.ReadAll(conn)
	if text := string(answer); !strings.Contains(text, "431") && err == nil {
		t.Errorf("want the headers to be refused, got %.100q", text)
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
}

// heard reads what is told, until it ends.
func heard(t *testing.T, host string) <-chan string {
	t.Helper()
	answer, err := http.Get("http://" + host + "/")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { answer.Body.Close() })
	if got, want := answer.Header.Get("Content-Type"), "text/event-stream"; got != want {
		t.Errorf("type: want %q, got %q", want, got)
	}
	out := make(chan string, 10)
	go func() {
		defer close(out)
		for lines := bufio.NewScanner(answer.Body); lines.Scan(); {
			if data, ok := strings.CutPrefix(lines.Text(), "data: "); ok {
				out <- data
			}
		}
	}()
	return out
}

func wants(t *testing.T, told <-chan string, want string, open bool) {
	t.Helper()
	select {
	case got, stays := <-told:
		if got != want || stays != open {
			t.Errorf("want %q, got %q", want, got)
		}
	case <-time.After(5 * time.Second):
		t.Fatal("nothing was told within five seconds")
	}
}

// Pages hear where we are and what comes, are counted, and are let go at the end;
// some that connect and never say a word keep nobody from hearing.
func TestNews(t *testing.T) {
	news := NewNews()
	host, stop := served(t, news)
	for range 50 {
		conn, err := net.Dial("tcp", host)
		if err != nil {
			t.Fatal(err)
		}
		defer conn.Close()
	}
	var all []<-chan string
	for range 20 {
		told := heard(t, host)
		wants(t, told, "0", true)
		all = append(all, told)
	}
	if news.Readers() != len(all) {
		t.Errorf("%d pages read, want %d", news.Readers(), len(all))
	}
	news.Tell()
	for _, told := range all {
		wants(t, told, "1", true)
	}
	late := heard(t, host)
	wants(t, late, "1", true)
	began := time.Now()
	if err := stop(); err != nil {
		t.Fatal(err)
	}
	if took := time.Since(began); took > goodbyeTime+time.Second {
		t.Errorf("the end took %v", took)
	}
	wants(t, late, "", false)
	for end := time.Now().Add(5 * time.Second); news.Readers() > 0 && time.Now().Before(end); {
		time.Sleep(10 * time.Millisecond)
	}
	if news.Readers() > 0 {
		t.Errorf("%d pages are left", news.Readers())
	}
	if conn, err := net.Dial("tcp", host); err == nil {
		conn.Close()
		t.Error("want the port free again")
	}
}
