package publish

import (
	"fmt"
	"os"
	"path/filepath"
	"sync"
	"testing"
)

const (
	benchPages = 2000
	benchSize  = 25_000 // bytes, the size of a page
)

// benchFiles are pages that cost nothing to render, ten to a folder.
func benchFiles(version byte) []File {
	files := make([]File, benchPages)
	for i := range files {
		files[i] = File{Path: fmt.Sprintf("%d/%d.html", i/10, i), Render: func() ([]byte, error) {
			data := make([]byte, benchSize)
			for j := range data {
				data[j] = version + byte((i+j)%40)
			}
			return data, nil
		}}
	}
	return files
}

// benchDir is a fresh folder; HOMEBUILD_BENCH_DIR names a disk to measure.
func benchDir(b *testing.B) string {
	dir, err := os.MkdirTemp(os.Getenv("HOMEBUILD_BENCH_DIR"), "publish")
	if err != nil {
		b.Fatal(err)
	}
	b.Cleanup(func() { os.RemoveAll(dir) })
	return dir
}

func pagesPerSecond(b *testing.B) {
	b.ReportMetric(float64(b.N*benchPages)/b.Elapsed().Seconds(), "pages/s")
}

// BenchmarkPlainLoop is what Write is measured against: the same bytes written
// by as many goroutines, with no care at all.
func BenchmarkPlainLoop(b *testing.B) {
	files := benchFiles('A')
	for b.Loop() {
		dir := benchDir(b)
		next := make(chan File)
		var workers sync.WaitGroup
		for range 2 {
			workers.Go(func() {
				for f := range next {
					name := filepath.Join(dir, f.Path)
					data, _ := f.Render()
					_ = os.MkdirAll(filepath.Dir(name), 0o755)
					if err := os.WriteFile(name, data, 0o644); err != nil {
						b.Error(err)
					}
				}
			})
		}
		for _, f := range files {
			next <- f
		}
		close(next)
		workers.Wait()
	}
	pagesPerSecond(b)
}

func BenchmarkWriteNew(b *testing.B) {
	files := benchFiles('A')
	for b.Loop() {
		if _, err := Write(filepath.Join(benchDir(b), "public"), files, Options{Workers: 2}); err != nil {
			b.Fatal(err)
		}
	}
	pagesPerSecond(b)
}

func BenchmarkWriteUnchanged(b *testing.B) {
	files := benchFiles('A')
	dir := filepath.Join(benchDir(b), "public")
	if _, err := Write(dir, files, Options{}); err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		if r, err := Write(dir, files, Options{Workers: 2}); err != nil || r.Unchanged != benchPages {
			b.Fatal(r, err)
		}
	}
	pagesPerSecond(b)
}
