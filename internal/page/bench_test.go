package page

import (
	"io"
	"maps"
	"slices"
	"testing"
)

func BenchmarkRender(b *testing.B) {
	views := newStock(b).in("es").views()
	for _, name := range slices.Sorted(maps.Keys(views)) {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if err := Render(io.Discard, views[name]); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
