// Package deskserver serves the desk on the teacher's own computer: its page, and
// what the page asks of the engine. It listens on 127.0.0.1 alone, answers only to
// that name (against DNS rebinding), only to pages of its own, and only to those
// who know the token, which stands in the address that the browser is opened at.
package deskserver

import (
	"context"
	"crypto/subtle"
	"errors"
	"fmt"
	"io"
	"mime"
	"net"
	"net/http"
	"slices"
	"strings"
	"sync"
	"time"

	"homebuild/internal/desk"
	"homebuild/internal/desk/page"
)

// Limits that keep one client from doing harm to the computer.
const (
	mostAsked   = 96 << 20 // bytes of a request: a copy to open, in base64
	headerTime  = 5 * time.Second
	requestTime = 2 * time.Minute // all pages of a year take a while
	goodbyeTime = 2 * time.Second
	headerBytes = 16 << 10
)

// tokenHeader carries the token of a call.
const tokenHeader = "X-Desk"

// Address is where a person finds the desk that a listener serves.
func Address(listener net.Listener, token string) string {
	return fmt.Sprintf("http://%s/?token=%s", listener.Addr(), token)
}

// Run serves a desk until the context ends.
func Run(ctx context.Context, listener net.Listener, d *desk.Desk, token string) error {
	server := &http.Server{
		Handler: New(d, listener.Addr(), token), MaxHeaderBytes: headerBytes,
		ReadHeaderTimeout: headerTime, ReadTimeout: requestTime, WriteTimeout: requestTime, IdleTimeout: time.Minute,
	}
	failed := make(chan error, 1)
	go func() { failed <- server.Serve(listener) }()
	select {
	case err := <-failed:
		return err
	case <-ctx.Done():
	}
	ctx, cancel := context.WithTimeout(context.Background(), goodbyeTime)
	defer cancel()
	if err := server.Shutdown(ctx); errors.Is(err, context.DeadlineExceeded) {
		return server.Close()
	}
	return nil
}

// handler answers one call at a time.
type handler struct {
	mu    sync.Mutex
	desk  *desk.Desk
	token string
	hosts []string // the names that we answer to
}

// New answers the requests to a desk at an address.
func New(d *desk.Desk, at net.Addr, token string) http.Handler {
	_, port, _ := net.SplitHostPort(at.String())
	return &handler{desk: d, token: token, hosts: []string{"127.0.0.1:" + port, "localhost:" + port}}
}

func (h *handler) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	head := w.Header()
	head.Set("X-Content-Type-Options", "nosniff")
	head.Set("Referrer-Policy", "no-referrer")
	head.Set("Cross-Origin-Resource-Policy", "same-origin")
	head.Set("Cross-Origin-Opener-Policy", "same-origin")
	head.Set("Cache-Control", "no-store")
	switch host := strings.ToLower(r.Host); {
	case !slices.Contains(h.hosts, host):
		refuse(w, http.StatusForbidden, "this desk answers to http://"+h.hosts[0]+" alone")
	case r.URL.Path == "/" && r.Method == http.MethodGet:
		h.page(w, r)
	case r.URL.Path == "/call" && r.Method == http.MethodPost:
		h.call(w, r, host)
	default:
		refuse(w, http.StatusNotFound, "there is nothing here")
	}
}

// page gives the page to whoever has the address with the token.
func (h *handler) page(w http.ResponseWriter, r *http.Request) {
	if !h.knows(r.URL.Query().Get("token")) {
		refuse(w, http.StatusForbidden, "open the desk at the whole address that homebuild desk shows")
		return
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.Header().Set("Content-Security-Policy", "frame-ancestors 'none'") // the page has the rest
	_, _ = io.WriteString(w, page.Served(h.token))                      // whoever went away needs no answer
}

// call answers what our own page asks, and nobody else.
func (h *handler) call(w http.ResponseWriter, r *http.Request, host string) {
	kind, _, _ := mime.ParseMediaType(r.Header.Get("Content-Type"))
	switch {
	case r.Header.Get("Origin") != "http://"+host:
		refuse(w, http.StatusForbidden, "this desk answers to its own page alone")
		return
	case !h.knows(r.Header.Get(tokenHeader)):
		refuse(w, http.StatusForbidden, "this is the page of another desk; open the one that homebuild desk shows")
		return
	case kind != "application/json":
		refuse(w, http.StatusUnsupportedMediaType, "a call is JSON")
		return
	}
	request, err := io.ReadAll(http.MaxBytesReader(w, r.Body, mostAsked))
	if err != nil {
		refuse(w, http.StatusRequestEntityTooLarge, "the request cannot be read, or is too large")
		return
	}
	h.mu.Lock()
	reply := h.desk.Answer(request)
	h.mu.Unlock()
	w.Header().Set("Content-Type", "application/json")
	_, _ = w.Write(reply)
}

func (h *handler) knows(token string) bool {
	return subtle.ConstantTimeCompare([]byte(token), []byte(h.token)) == 1
}

func refuse(w http.ResponseWriter, code int, text string) {
	w.Header().Set("Content-Type", "text/plain; charset=utf-8")
	w.WriteHeader(code)
	fmt.Fprintln(w, text)
}
