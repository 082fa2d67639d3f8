package preview

import (
	"fmt"
	"net"
	"net/http"
	"slices"
	"strings"
	"time"
)

// pagesAt is where the site's pages are; the shell has the first page.
const pagesAt = "/pages/"

// writeTime is how long a client may take for one message.
const writeTime = 5 * time.Second

// beat is how often a waiting client hears that we are there.
const beat = 15 * time.Second

// handler answers requests from memory.
type handler struct {
	site  *site
	shell shell
	hosts []string // the names that we answer to
}

func newHandler(s *site, at net.Addr) *handler {
	_, port, _ := net.SplitHostPort(at.String())
	return &handler{site: s, shell: newShell(), hosts: []string{"127.0.0.1:" + port, "localhost:" + port}}
}

func (h *handler) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	head := w.Header()
	head.Set("X-Content-Type-Options", "nosniff")
	head.Set("Referrer-Policy", "no-referrer")
	head.Set("Cross-Origin-Resource-Policy", "same-origin")
	head.Set("Cache-Control", "no-cache")
	switch {
	case !slices.Contains(h.hosts, strings.ToLower(r.Host)):
		refuse(w, http.StatusForbidden, fmt.Sprintf("this preview answers to http://%s alone", h.hosts[0]))
	case r.Method != http.MethodGet && r.Method != http.MethodHead:
		head.Set("Allow", "GET, HEAD")
		refuse(w, http.StatusMethodNotAllowed, "a preview can only be looked at")
	case r.URL.Path == "/":
		head.Set("Content-Security-Policy", h.shell.policy)
		send(w, r, "text/html; charset=utf-8", h.shell.html)
	case r.URL.Path == "/events":
		h.events(w, r)
	case strings.HasPrefix(r.URL.Path, pagesAt):
		h.page(w, r, strings.TrimPrefix(r.URL.Path, pagesAt))
	default:
		refuse(w, http.StatusNotFound, "there is nothing here; the preview is at http://"+h.hosts[0]+"/")
	}
}

// page sends a page of the site. The path is a word to look up, never a path
// of the disk.
func (h *handler) page(w http.ResponseWriter, r *http.Request, path string) {
	if path == "" || strings.HasSuffix(path, "/") {
		path += "index.html"
	}
	page, ok := h.site.page(path)
	switch {
	case !ok:
		refuse(w, http.StatusNotFound, "the site has no such page; choose one from the list")
		return
	case page.err != nil:
		refuse(w, http.StatusInternalServerError, "this page cannot be made: "+page.err.Error())
		return
	}
	w.Header().Set("ETag", page.tag)
	// The page keeps the policy of its own; here it may stand in our frame.
	w.Header().Set("Content-Security-Policy", "script-src 'none'; frame-ancestors 'self'")
	if r.Header.Get("If-None-Match") == page.tag {
		w.WriteHeader(http.StatusNotModified)
		return
	}
	send(w, r, contentType(path), page.html)
}

func contentType(path string) string {
	switch {
	case strings.HasSuffix(path, ".html"):
		return "text/html; charset=utf-8"
	case strings.HasSuffix(path, ".xml"):
		return "application/xml; charset=utf-8"
	case strings.HasSuffix(path, ".svg"):
		return "image/svg+xml"
	}
	return "application/octet-stream"
}

func send(w http.ResponseWriter, r *http.Request, kind string, body []byte) {
	w.Header().Set("Content-Type", kind)
	w.Header().Set("Content-Length", fmt.Sprint(len(body)))
	if r.Method != http.MethodHead {
		_, _ = w.Write(body) // whoever went away needs no answer
	}
}

func refuse(w http.ResponseWriter, code int, text string) {
	w.Header().Set("Content-Type", "text/plain; charset=utf-8")
	w.WriteHeader(code)
	fmt.Fprintln(w, text)
}

// events tells a shell the state, and every new one, as server-sent events
// (HTML Living Standard, section 9.2). A client that is behind gets the newest
// state only; one that does not read is let go.
func (h *handler) events(w http.ResponseWriter, r *http.Request) {
	w.Header().Set("Content-Type", "text/event-stream")
	if r.Method == http.MethodHead {
		return
	}
	control := http.NewResponseController(w)
	tell := func(format string, args ...any) bool {
		if control.SetWriteDeadline(time.Now().Add(writeTime)) != nil {
			return false
		}
		_, err := fmt.Fprintf(w, format, args...)
		return err == nil && control.Flush() == nil
	}
	alive := time.NewTicker(beat)
	defer alive.Stop()
	// The request is read; what comes now may take as long as the lesson does.
	if control.SetReadDeadline(time.Time{}) != nil || !tell("retry: 500\n\n") {
		return
	}
	for {
		state, next := h.site.now()
		if !tell("data: %s\n\n", state) {
			return
		}
		for waiting := true; waiting; {
			select {
			case <-next:
				waiting = false
			case <-alive.C:
				if !tell(": still here\n\n") {
					return
				}
			case <-r.Context().Done():
				return
			}
		}
	}
}
