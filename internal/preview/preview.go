package preview

import (
	"context"
	"errors"
	"net"
	"net/http"
	"time"

	"golang.org/x/net/netutil"

	"homebuild/internal/diag"
	"homebuild/internal/output"
)

// Page is a page of the site, rendered when somebody asks for it.
type Page = output.File

// Result is what came of making the site once.
type Result struct {
	Pages    []Page // none when there are problems
	First    string // the path to show first
	Problems diag.Diagnostics
	Notices  diag.Diagnostics
}

// Options of Run.
type Options struct {
	Listener net.Listener  // from Listen
	Folder   string        // watched for changes; empty for none
	Watch    []string      // files and folders in it that the site is made from
	Build    func() Result // makes the site from the files as they are now
	Notify   func(Changed) // hears of every time the site was made, the first time too; may be nil
}

// Changed says that the site was made anew.
type Changed struct {
	Result
	Files []string // that changed, within the folder; none the first time
	Took  time.Duration
}

// Limits that keep many clients, and slow ones, from doing harm.
const (
	mostConnections = 2000
	headerTime      = 5 * time.Second
	requestTime     = 20 * time.Second
	goodbyeTime     = 2 * time.Second
)

// Run serves until the context ends, and then lets go of everything.
func Run(ctx context.Context, o Options) error {
	s := newSite()
	remake := func(files []string) {
		start := time.Now()
		made := o.Build()
		s.update(made)
		if o.Notify != nil {
			o.Notify(Changed{Result: made, Files: files, Took: time.Since(start)})
		}
	}
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	watched := make(chan struct{})
	w := newWatcher(o.Folder, o.Watch) // before the first look at the files, so that no change is missed
	remake(nil)
	go func() {
		defer close(watched)
		w.run(ctx, remake)
	}()
	failed := make(chan error, 1)
	server := &http.Server{
		Handler:           newHandler(s, o.Listener.Addr()),
		BaseContext:       func(net.Listener) context.Context { return ctx },
		ReadHeaderTimeout: headerTime, ReadTimeout: requestTime, WriteTimeout: requestTime, IdleTimeout: time.Minute,
		MaxHeaderBytes: 16 << 10,
	}
	go func() { failed <- server.Serve(netutil.LimitListener(o.Listener, mostConnections)) }()
	var err error
	select {
	case err = <-failed:
	case <-ctx.Done():
		err = goodbye(server)
	}
	stop()
	<-watched
	return err
}

// goodbye lets answers that are under way come to their end, for a moment.
func goodbye(server *http.Server) error {
	ctx, cancel := context.WithTimeout(context.Background(), goodbyeTime)
	defer cancel()
	err := server.Shutdown(ctx)
	if errors.Is(err, context.DeadlineExceeded) {
		return server.Close()
	}
	return err
}
