package site

import (
	"strings"
	"testing"
)

// BenchmarkPages makes the week pages of the example year in three languages; its
// figures per page can be held beside those of another version.
func BenchmarkPages(b *testing.B) {
	p, _, problems := Plan(exampleInput(b, "en", "es", "ar"))
	if len(problems) > 0 {
		b.Fatal(problems)
	}
	var files []File
	for _, f := range p.Pages() {
		if strings.Contains(f.Path, "/20") {
			files = append(files, f)
		}
	}
	b.ReportAllocs()
	for b.Loop() {
		for _, f := range files {
			if _, err := f.Render(); err != nil {
				b.Fatal(err)
			}
		}
	}
	b.ReportMetric(float64(len(files)), "pages")
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N*len(files)), "ns/page")
}
