package mistake

import (
	"testing"

	"homebuild/internal/problem"
)

func BenchmarkOf(b *testing.B) {
	p, err := problem.New(problem.TakeFromResult, 503, 285)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		Of(p, 12)
	}
}

func BenchmarkHelp(b *testing.B) {
	p, err := problem.New(problem.TogetherTotal, 28, 17)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		Question{Problem: p}.Help(100, 0)
	}
}
