package deskserver

import (
	"context"
	"crypto/hmac"
	"crypto/rand"
	"crypto/sha256"
	"encoding/hex"
	"io"
	"net"
	"net/http"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/gofrs/flock"
)

// A desk that runs notes its address in the person's own cache, by its folder, so
// that a second start finds it in place of serving the same files twice.

// noteOf is the file with the address of the desk of a folder.
func noteOf(cache, folder string) (string, error) {
	whole, err := filepath.Abs(folder)
	if err != nil {
		return "", err
	}
	if real, err := filepath.EvalSymlinks(whole); err == nil {
		whole = real
	}
	sum := sha256.Sum256([]byte(whole))
	return filepath.Join(cache, "homebuild", "desk-"+hex.EncodeToString(sum[:8])), nil
}

// Register writes into a cache folder at which address the desk of a folder is to be
// found, for [Running]. The file can be read by its owner alone; remove takes it away
// again.
func Register(cache, folder, address string) (remove func(), err error) {
	name, err := noteOf(cache, folder)
	if err != nil {
		return nil, err
	}
	if err := os.MkdirAll(filepath.Dir(name), 0o700); err != nil {
		return nil, err
	}
	if err := os.WriteFile(name, []byte(address), 0o600); err != nil {
		return nil, err
	}
	return func() {
		if now, err := os.ReadFile(name); err == nil && string(now) == address {
			_ = os.Remove(name) // a note that stays is found to be old
		}
	}, nil
}

// Lock keeps other starts of the desk of a folder waiting: from before one asks whether
// a desk runs, [Running], until it has registered its own, [Register], when it calls
// unlock. The system lets go of the lock when a process ends, however it ends. A start
// that gets no lock within five seconds goes on without.
func Lock(ctx context.Context, cache, folder string) (unlock func()) {
	name, err := noteOf(cache, folder)
	if err != nil || os.MkdirAll(filepath.Dir(name), 0o700) != nil {
		return func() {}
	}
	const longest, between = 5 * time.Second, 20 * time.Millisecond
	ctx, stop := context.WithTimeout(ctx, longest)
	defer stop()
	lock := flock.New(name+".lock", flock.SetPermissions(0o600))
	_, _ = lock.TryLockContext(ctx, between)
	return func() { _ = lock.Close() }
}

// Running is the address of the desk of a folder that runs already; empty for none.
// A note may be older than its desk: what listens there now has to prove that it
// knows the token, which it is not told.
func Running(ctx context.Context, cache, folder string) string {
	name, err := noteOf(cache, folder)
	if err != nil {
		return ""
	}
	note, err := os.ReadFile(name)
	if err != nil {
		return ""
	}
	address := string(note)
	at, err := url.Parse(address)
	if err != nil || at.Scheme != "http" || !net.ParseIP(at.Hostname()).IsLoopback() {
		return ""
	}
	asked := rand.Text()
	if answer(ctx, "http://"+at.Host+"/running?asked="+asked) != proof(at.Query().Get("token"), asked) {
		return ""
	}
	return address
}

// answer is what a server on this computer says at once.
func answer(ctx context.Context, address string) string {
	ctx, stop := context.WithTimeout(ctx, 2*time.Second)
	defer stop()
	request, err := http.NewRequestWithContext(ctx, http.MethodGet, address, nil)
	if err != nil {
		return ""
	}
	client := http.Client{Transport: &http.Transport{Proxy: nil, DisableKeepAlives: true}, CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse }}
	reply, err := client.Do(request)
	if err != nil {
		return ""
	}
	defer reply.Body.Close()
	text, err := io.ReadAll(io.LimitReader(reply.Body, 1<<10))
	if err != nil || reply.StatusCode != http.StatusOK {
		return ""
	}
	return strings.TrimSpace(string(text))
}

// proof shows that whoever made it knows the token, without telling it.
func proof(token, asked string) string {
	sum := hmac.New(sha256.New, []byte(token))
	_, _ = io.WriteString(sum, asked)
	return hex.EncodeToString(sum.Sum(nil))
}
