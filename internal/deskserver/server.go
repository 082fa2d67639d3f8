// Package deskserver serves the desk on the teacher's own computer: its page, what
// the page asks of the engine, and word of what another program wrote into her
// folder. It answers only to pages of its own, and only to those who know the token,
// which stands in the address that the browser is opened at.
package deskserver

import (
	"context"
	"crypto/subtle"
	"fmt"
	"io"
	"mime"
	"net"
	"net/http"
	"strings"
	"sync"
	"time"

	"homebuild/internal/desk"
	"homebuild/internal/desk/page"
	"homebuild/internal/loopback"
	"homebuild/internal/watch"
)

// mostAsked is how many bytes a request may have: a copy to open, in base64.
const mostAsked = 96 << 20

// tokenHeader carries the token of a call.
const tokenHeader = "X-Desk"

// Options of Run.
type Options struct {
	Listener net.Listener // from loopback.Listen
	Desk     *desk.Desk
	Token    string
	Folder   string   // where the desk's files are
	Files    []string // files and folders in it that the desk reads
	// Alone is how long no page is open before Run ends; 0 for until the context does.
	Alone time.Duration
}

// Address is where a person finds the desk that a listener serves.
func Address(listener net.Listener, token string) string {
	return fmt.Sprintf("http://%s/?token=%s", listener.Addr(), token)
}

// Run serves a desk until the context ends, or nobody has it open any more.
func Run(ctx context.Context, o Options) error {
	ctx, stop := context.WithCancel(ctx)
	h := newHandler(o.Desk, o.Token)
	wait := watch.Folder(ctx, o.Folder, o.Files, func([]string) { h.look() })
	defer wait()
	defer stop()
	if o.Alone > 0 {
		go h.endAlone(ctx, o.Alone, stop)
	}
	return loopback.Serve(ctx, o.Listener, h)
}

// handler answers one call at a time.
type handler struct {
	mu    sync.Mutex
	desk  *desk.Desk
	token string
	news  *loopback.News
}

func newHandler(d *desk.Desk, token string) *handler {
	return &handler{desk: d, token: token, news: loopback.NewNews()}
}

// look tells the page when files are not as the desk wrote or read them.
func (h *handler) look() {
	h.mu.Lock()
	defer h.mu.Unlock()
	if h.desk.Behind() {
		h.news.Tell()
	}
}

// endAlone calls end when no page was open for a while. It counts its own ticks,
// since a computer that slept has not been left alone.
func (h *handler) endAlone(ctx context.Context, while time.Duration, end func()) {
	const looks = 10
	ticker := time.NewTicker(while / looks)
	defer ticker.Stop()
	for alone := 0; alone < looks; {
		select {
		case <-ctx.Done():
			return
		case <-ticker.C:
		}
		if alone++; h.news.Readers() > 0 {
			alone = 0
		}
	}
	end()
}

func (h *handler) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	switch at := r.Method + " " + r.URL.Path; at {
	case "GET /":
		h.page(w, r)
	case "GET /news":
		if h.admits(w, r.URL.Query().Get("token")) {
			h.news.ServeHTTP(w, r)
		}
	case "GET /running":
		_, _ = io.WriteString(w, proof(h.token, r.URL.Query().Get("asked")))
	case "POST /call":
		h.call(w, r)
	default:
		loopback.Refuse(w, http.StatusNotFound, "there is nothing here")
	}
}

// page gives the page to whoever has the address with the token.
func (h *handler) page(w http.ResponseWriter, r *http.Request) {
	if !h.admits(w, r.URL.Query().Get("token")) {
		return
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.Header().Set("Content-Security-Policy", "frame-ancestors 'none'") // the page has the rest
	_, _ = io.WriteString(w, page.Served(h.token))                      // whoever went away needs no answer
}

// call answers what our own page asks, and nobody else.
func (h *handler) call(w http.ResponseWriter, r *http.Request) {
	if r.Header.Get("Origin") != "http://"+strings.ToLower(r.Host) {
		loopback.Refuse(w, http.StatusForbidden, "this desk answers to its own page alone")
		return
	}
	if !h.admits(w, r.Header.Get(tokenHeader)) {
		return
	}
	if kind, _, _ := mime.ParseMediaType(r.Header.Get("Content-Type")); kind != "application/json" {
		loopback.Refuse(w, http.StatusUnsupportedMediaType, "a call is JSON")
		return
	}
	request, err := io.ReadAll(http.MaxBytesReader(w, r.Body, mostAsked))
	if err != nil {
		loopback.Refuse(w, http.StatusRequestEntityTooLarge, "the request cannot be read, or is too large")
		return
	}
	h.mu.Lock()
	reply := h.desk.Answer(request)
	h.mu.Unlock()
	w.Header().Set("Content-Type", "application/json")
	_, _ = w.Write(reply)
}

// admits lets those in who know the token, and tells the others.
func (h *handler) admits(w http.ResponseWriter, token string) bool {
	if subtle.ConstantTimeCompare([]byte(token), []byte(h.token)) == 1 {
		return true
	}
	loopback.Refuse(w, http.StatusForbidden, "open the desk at the whole address that homebuild desk shows")
	return false
}
