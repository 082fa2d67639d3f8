// Package sampleserver shows a language on the translator's own computer while its
// file is being written: the sample, or the pages that families will see, as wide as
// a phone, and beside it what is still to mend. The page follows each saving.
//
// All that is served comes from memory: the path of a request is a word to look up,
// never a path of the disk.
package sampleserver

import (
	"bytes"
	"context"
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"html/template"
	"net"
	"net/http"
	"strings"
	"sync"

	"homebuild/internal/diag"
	"homebuild/internal/loopback"
	"homebuild/internal/output"
	"homebuild/internal/watch"
)

// Made is what came of reading the language file once.
type Made struct {
	Pages []output.File    // the sample first; none while the file cannot be understood
	Whole bool             // families' pages are among them
	Mend  diag.Diagnostics // what stands beside the page
}

// Options of Run.
type Options struct {
	Listener net.Listener // from loopback.Listen
	Folder   string
	Files    []string // files and folders in it that pages are made from
	Make     func() Made
}

// Run serves until the context ends.
func Run(ctx context.Context, o Options) error {
	ctx, stop := context.WithCancel(ctx)
	h := &handler{news: loopback.NewNews()}
	remake := func([]string) { h.take(o.Make()) }
	wait := watch.Folder(ctx, o.Folder, o.Files, remake)
	defer wait()
	defer stop()
	remake(nil)
	return loopback.Serve(ctx, o.Listener, h)
}

// handler has the last good pages, and what is to mend now.
type handler struct {
	mu    sync.Mutex
	first string
	pages map[string]output.File
	whole bool
	mend  diag.Diagnostics
	news  *loopback.News
}

// take takes in what was made. While the file cannot be understood the last good
// pages stay.
func (h *handler) take(made Made) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.mend = made.Mend
	if len(made.Pages) > 0 {
		h.first, h.whole, h.pages = made.Pages[0].Path, made.Whole, map[string]output.File{}
		for _, p := range made.Pages {
			p.Render = sync.OnceValues(p.Render)
			h.pages[p.Path] = p
		}
	}
	h.news.Tell()
}

//go:embed shell.html
var shellHTML string

// script is the only one there is: the policy names it by its hash (Content Security
// Policy Level 3).
const script = `let seen;
new EventSource("/news").onmessage = ({ data }) => {
  if (seen !== undefined && seen !== data) for (const f of document.querySelectorAll("iframe")) f.contentWindow.location.reload();
  seen = data;
};`

var (
	shell  = sync.OnceValue(func() *template.Template { return template.Must(template.New("shell").Parse(shellHTML)) })
	policy = "default-src 'none'; style-src 'unsafe-inline'; script-src '" + hash(script) + "'; connect-src 'self'; img-src data:; frame-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'"
)

func hash(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}

const pagesAt = "/pages/"

func (h *handler) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	path, isPage := strings.CutPrefix(r.URL.Path, pagesAt)
	switch {
	case r.Method != http.MethodGet:
		w.Header().Set("Allow", http.MethodGet)
		loopback.Refuse(w, http.StatusMethodNotAllowed, "a sample can only be looked at")
	case r.URL.Path == "/", r.URL.Path == "/mend":
		h.own(w, strings.TrimPrefix(r.URL.Path, "/"))
	case r.URL.Path == "/news":
		h.news.ServeHTTP(w, r)
	case isPage:
		h.page(w, path)
	default:
		loopback.Refuse(w, http.StatusNotFound, "there is nothing here")
	}
}

// own sends the page around the pages, or the list of what is to mend.
func (h *handler) own(w http.ResponseWriter, part string) {
	h.mu.Lock()
	data := struct {
		First  string
		Whole  bool
		Mend   diag.Diagnostics
		Script template.JS
	}{h.first, h.whole, h.mend, script}
	h.mu.Unlock()
	name := "shell"
	if part != "" {
		name = part
	}
	var html bytes.Buffer
	if err := shell().ExecuteTemplate(&html, name, data); err != nil {
		panic(err) // the template is ours
	}
	send(w, policy, html.Bytes())
}

// page sends one of the pages, which runs no script.
func (h *handler) page(w http.ResponseWriter, path string) {
	h.mu.Lock()
	page, known := h.pages[path]
	h.mu.Unlock()
	if !known {
		loopback.Refuse(w, http.StatusNotFound, "there is no such page")
		return
	}
	html, err := page.Render()
	if err != nil {
		loopback.Refuse(w, http.StatusInternalServerError, "this page cannot be made: "+err.Error())
		return
	}
	send(w, "script-src 'none'; frame-ancestors 'self'", html)
}

func send(w http.ResponseWriter, policy string, html []byte) {
	w.Header().Set("Content-Security-Policy", policy)
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	_, _ = w.Write(html) // whoever went away needs no answer
}
