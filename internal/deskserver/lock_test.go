package deskserver

import (
	"context"
	"os"
	"path/filepath"
	"sync"
	"testing"
	"time"
)

// Two starts in one instant: the second waits until the first has noted where it runs,
// and finds it.
func TestTwoStartsAreOneDesk(t *testing.T) {
	cache := t.TempDir()
	host, folder, _ := served(t, 0)
	address := "http://" + host + "/?token=" + token
	var mu sync.Mutex
	var began, found int
	start := func() {
		defer Lock(t.Context(), cache, folder)()
		at := Running(t.Context(), cache, folder)
		if at == "" {
			time.Sleep(50 * time.Millisecond) // as a program takes to open a port and to read its page
			if _, err := Register(cache, folder, address); err != nil {
				t.Error(err)
			}
		}
		mu.Lock()
		defer mu.Unlock()
		if at == "" {
			began++
		} else {
			found++
		}
	}
	const starts = 4
	var all sync.WaitGroup
	for range starts {
		all.Go(start)
	}
	all.Wait()
	if began != 1 || found != starts-1 {
		t.Errorf("%d desks began and %d were found, want 1 and %d", began, found, starts-1)
	}
}

// A start that cannot wait any longer, or has no place for a lock, goes on.
func TestStartWithoutALock(t *testing.T) {
	cache, folder := t.TempDir(), t.TempDir()
	defer Lock(t.Context(), cache, folder)()
	file := filepath.Join(cache, "file")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	ctx, stop := context.WithCancel(t.Context())
	stop()
	began := make(chan bool)
	go func() {
		Lock(ctx, cache, folder)()
		Lock(t.Context(), file, folder)()
		Lock(t.Context(), cache, t.TempDir())() // another folder's
		close(began)
	}()
	select {
	case <-began:
	case <-time.After(2 * time.Second):
		t.Error("it waits")
	}
}
