// Package loopback serves pages to the browsers of this computer, and to nobody
// else: it listens on 127.0.0.1 alone and answers only to that name, so that no page
// elsewhere can reach it through a name of its own (DNS rebinding).
package loopback

import (
	"context"
	"errors"
	"fmt"
	"net"
	"net/http"
	"slices"
	"strings"
	"time"

	"golang.org/x/net/netutil"
)

// Limits that keep many clients, and slow ones, from doing harm.
const (
	mostConnections = 200
	headerTime      = 5 * time.Second
	requestTime     = 2 * time.Minute // the longest answer is all pages of a year
	goodbyeTime     = 2 * time.Second
	headerBytes     = 16 << 10
)

// Serve answers until the context ends, and then lets go of everything.
func Serve(ctx context.Context, listener net.Listener, handler http.Handler) error {
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	server := &http.Server{
		Handler: guard(listener.Addr(), handler), BaseContext: func(net.Listener) context.Context { return ctx },
		ReadHeaderTimeout: headerTime, ReadTimeout: requestTime, WriteTimeout: requestTime, IdleTimeout: time.Minute,
		MaxHeaderBytes: headerBytes,
	}
	failed := make(chan error, 1)
	go func() { failed <- server.Serve(netutil.LimitListener(listener, mostConnections)) }()
	select {
	case err := <-failed:
		return err
	case <-ctx.Done():
	}
	// Answers that are under way come to their end, for a moment.
	ctx, cancel := context.WithTimeout(context.Background(), goodbyeTime)
	defer cancel()
	if err := server.Shutdown(ctx); errors.Is(err, context.DeadlineExceeded) {
		return server.Close()
	}
	return nil
}

// guard refuses whoever calls us by another name than that of this computer, and
// keeps what is answered from other pages and from caches.
func guard(at net.Addr, next http.Handler) http.Handler {
	_, port, _ := net.SplitHostPort(at.String())
	hosts := []string{"127.0.0.1:" + port, "localhost:" + port}
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		head := w.Header()
		head.Set("X-Content-Type-Options", "nosniff")
		head.Set("Referrer-Policy", "no-referrer")
		head.Set("Cross-Origin-Resource-Policy", "same-origin")
		head.Set("Cross-Origin-Opener-Policy", "same-origin")
		head.Set("Cache-Control", "no-store")
		if !slices.Contains(hosts, strings.ToLower(r.Host)) {
			Refuse(w, http.StatusForbidden, "this page answers to http://"+hosts[0]+" alone")
			return
		}
		next.ServeHTTP(w, r)
	})
}

// Refuse says why there is no answer.
func Refuse(w http.ResponseWriter, code int, text string) {
	w.Header().Set("Content-Type", "text/plain; charset=utf-8")
	w.WriteHeader(code)
	fmt.Fprintln(w, text)
}
