// Package http takes the place of net/http in the engine of the desk, which runs in
// a browser and talks to nobody. The libraries that make and shorten pages have
// handlers for servers, which the engine never calls; with this package they
// compile, and the engine is a megabyte smaller. It has what they name, and a
// library that comes to name more no longer compiles.
package http

import (
	"context"
	"net/url"
)

// StatusInternalServerError is the code 500.
const StatusInternalServerError = 500

// Header is a header of HTTP.
type Header map[string][]string

// Get, Set and Del do nothing.
func (Header) Get(string) string  { return "" }
func (Header) Set(string, string) {}
func (Header) Del(string)         {}

// Request is a request to a server.
type Request struct {
	URL        *url.URL
	RequestURI string
}

// Context is that of nobody's request.
func (*Request) Context() context.Context { return context.Background() }

// WithContext is the same request.
func (r *Request) WithContext(context.Context) *Request { return r }

// ResponseWriter answers a request.
type ResponseWriter interface {
	Header() Header
	Write([]byte) (int, error)
	WriteHeader(status int)
}

// Flusher sends on what was written.
type Flusher interface{ Flush() }

// Handler answers requests.
type Handler interface {
	ServeHTTP(ResponseWriter, *Request)
}

// HandlerFunc is a function that answers requests.
type HandlerFunc func(ResponseWriter, *Request)

// ServeHTTP calls the function.
func (f HandlerFunc) ServeHTTP(w ResponseWriter, r *Request) { f(w, r) }

// Error answers nobody.
func Error(ResponseWriter, string, int) {}
