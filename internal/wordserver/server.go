// Package wordserver is the translator's evening: the pages of a week as families will
// see them, each sentence of them to be written in its place, with its note and its
// English beside it. It serves one person on her own computer, who knows the token,
// and writes into the language's file what she saves.
package wordserver

import (
	"bytes"
	"context"
	"crypto/sha256"
	"crypto/subtle"
	_ "embed"
	"encoding/base64"
	"fmt"
	"html/template"
	"net"
	"net/http"
	"net/url"
	"slices"
	"strings"
	"sync"

	"homebuild/internal/diag"
	"homebuild/internal/loopback"
	"homebuild/internal/school"
	"homebuild/internal/translate"
)

// mostSaved is how many bytes a saving may have.
const mostSaved = 1 << 16

// Options of Run.
type Options struct {
	Listener net.Listener // from loopback.Listen
	Token    string
	Tag      string // of the language
	File     string // the language's file, as a person knows it
	Open     func() (*school.Bench, diag.Diagnostics)
	// Save gives the file other bytes, unless it is no longer as it was before.
	Save func(before, after []byte) error
}

// Address is where a person finds what a listener serves.
func Address(listener net.Listener, token string) string {
	return fmt.Sprintf("http://%s/?token=%s", listener.Addr(), token)
}

// Run serves until the context ends.
func Run(ctx context.Context, o Options) error {
	return loopback.Serve(ctx, o.Listener, &handler{Options: o})
}

// handler answers one request at a time. It keeps what it opened for the page in the
// frame, which is asked for next.
type handler struct {
	Options
	mu    sync.Mutex
	bench *school.Bench
	made  map[string][]byte // pages of the bench by their paths
	queue []string          // what is written next, in order
	order map[string]int    // where the page that is worked at says a text
	fresh bool              // it was opened for the page that a saving leads to
}

//go:embed page.html
var pageHTML string

//go:embed page.js
var script string

var (
	page       = sync.OnceValue(func() *template.Template { return template.Must(template.New("page").Parse(pageHTML)) })
	pagePolicy = "default-src 'none'; style-src 'unsafe-inline'; script-src '" + hash(script) + "'; img-src data:; frame-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'"
)

// framePolicy lets the page in the frame run nothing and send nothing.
const framePolicy = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'self'"

func hash(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}

func (h *handler) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	h.mu.Lock()
	defer h.mu.Unlock()
	// A form tells where it comes from only when its page may say so at all.
	w.Header().Set("Referrer-Policy", "same-origin")
	switch at := r.Method + " " + r.URL.Path; {
	case at == "POST /save":
		h.save(w, r)
	case at != "GET /" && at != "GET /page":
		loopback.Refuse(w, http.StatusNotFound, "there is nothing here")
	case !h.admits(w, r.URL.Query().Get("token")):
	case at == "GET /page":
		h.frame(w, r.URL.Query())
	default:
		if !h.fresh {
			h.open()
		}
		h.fresh = false
		h.show(w, http.StatusOK, h.view(r.URL.Query()))
	}
}

// admits lets those in who know the token, and tells the others.
func (h *handler) admits(w http.ResponseWriter, token string) bool {
	if subtle.ConstantTimeCompare([]byte(token), []byte(h.Token)) == 1 {
		return true
	}
	loopback.Refuse(w, http.StatusForbidden, "open this at the whole address that homebuild language watch shows")
	return false
}

// open reads the files as they are now.
func (h *handler) open() diag.Diagnostics {
	bench, problems := h.Open()
	h.bench, h.made = bench, map[string][]byte{}
	return problems
}

func (h *handler) show(w http.ResponseWriter, code int, v view) {
	var html bytes.Buffer
	if err := page().Execute(&html, v); err != nil {
		panic(err) // the template is ours
	}
	send(w, pagePolicy, code, html.Bytes())
}

func send(w http.ResponseWriter, policy string, code int, html []byte) {
	w.Header().Set("Content-Security-Policy", policy)
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.WriteHeader(code)
	_, _ = w.Write(html) // whoever went away needs no answer
}

// link is the address of a message, on a page or on the first that says it.
func (h *handler) link(id, path string) string {
	q := url.Values{"token": {h.Token}, "at": {id}}
	if path != "" {
		q.Set("page", path)
	}
	return "/?" + q.Encode()
}

// frame sends one of families' pages, to write on.
func (h *handler) frame(w http.ResponseWriter, q url.Values) {
	if h.bench == nil {
		h.open()
	}
	p := h.preview(q.Get("page"), q.Get("at"))
	if p == nil {
		loopback.Refuse(w, http.StatusNotFound, "there is no such page")
		return
	}
	send(w, framePolicy, http.StatusOK, []byte(p.out.String()))
}

// preview makes a page to write on; nil where there is none.
func (h *handler) preview(path, now string) *preview {
	if h.bench == nil {
		return nil
	}
	for _, f := range h.bench.Pages {
		if f.Path != path {
			continue
		}
		if h.made[path] == nil {
			html, err := f.Render()
			if err != nil {
				return nil
			}
			h.made[path] = html
		}
		p := &preview{marks: h.bench.Marks, now: now, link: func(id string) string { return h.link(id, path) }}
		p.make(h.made[path])
		return p
	}
	return nil
}

// find is the page that says a message: that one if it does, or the one that waits for
// it, or else one of the first week; nil for none.
func (h *handler) find(id, path string) (string, *preview) {
	paths := []string{path}
	for _, l := range h.bench.Layers {
		for _, w := range l.Wanted {
			if w.ID == id {
				paths = append(paths, w.Page)
			}
		}
	}
	for _, f := range h.bench.Pages {
		if nameOf(f.Path, h.bench.Pages[0].Path) != "" {
			paths = append(paths, f.Path)
		}
	}
	if id == "" || id == translate.Head {
		return "", nil
	}
	for _, path := range paths {
		if p := h.preview(path, id); p != nil {
			if _, says := p.context[id]; says {
				return path, p
			}
		}
	}
	return "", nil
}

// save writes what was typed, and goes on to the next text.
func (h *handler) save(w http.ResponseWriter, r *http.Request) {
	if r.Header.Get("Origin") != "http://"+strings.ToLower(r.Host) {
		loopback.Refuse(w, http.StatusForbidden, "this page answers to itself alone")
		return
	}
	r.Body = http.MaxBytesReader(w, r.Body, mostSaved)
	if err := r.ParseForm(); err != nil {
		loopback.Refuse(w, http.StatusRequestEntityTooLarge, "this cannot be read, or is too large")
		return
	}
	if !h.admits(w, r.PostForm.Get("token")) {
		return
	}
	h.open()
	form := r.PostForm
	if h.bench == nil || form.Get("use") != "" {
		h.show(w, http.StatusOK, h.again(form))
		return
	}
	code, v, to := h.write(form)
	if to == "" {
		h.show(w, code, v)
		return
	}
	w.Header().Set("Location", to)
	w.WriteHeader(http.StatusSeeOther)
}

// write writes what was typed into the file. It gives where to go on, or what to show
// again and why.
func (h *handler) write(form url.Values) (code int, v view, to string) {
	id, draft := form.Get("at"), h.bench.Draft
	q, known := draft.Ask(id)
	if !known {
		v = h.view(form)
		v.Wrong = diag.Diagnostics{{Text: "the file no longer has " + id, Hint: "go on with the next text"}}
		return http.StatusConflict, v, ""
	}
	if form.Get("was") != was(q) {
		v = h.again(form)
		v.Meanwhile = true
		return http.StatusConflict, v, ""
	}
	typed := map[string]string{}
	for _, ask := range q.Asks {
		if texts := form["text."+ask.Name]; len(texts) == 1 {
			typed[ask.Name] = texts[0]
		}
	}
	after, wrong := draft.Write(q, typed)
	if len(wrong) > 0 {
		v = h.again(form)
		v.Wrong = each(wrong, func(d diag.Diagnostic) diag.Diagnostic { return ofThis(d, id) })
		// What is wrong with several texts of a form alike is said once.
		v.Wrong = slices.CompactFunc(v.Wrong, func(a, b diag.Diagnostic) bool { return a.Text == b.Text && a.Hint == b.Hint })
		return http.StatusUnprocessableEntity, v, ""
	}
	if before := draft.Text(); string(after) != before {
		if err := h.Save([]byte(before), after); err != nil {
			v = h.again(form)
			v.Wrong = diag.Diagnostics{{Text: err.Error()}}
			return http.StatusConflict, v, ""
		}
	}
	old := h.bench
	h.open()
	h.fresh = true
	return 0, v, h.goOn(old, id, form.Get("page"))
}
