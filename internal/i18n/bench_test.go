package i18n

import (
	"bytes"
	"testing"
	"testing/fstest"

	"homebuild/locales"
)

func BenchmarkWord(b *testing.B) {
	es := in(b, fixtures(b), "es")
	b.ReportAllocs()
	for b.Loop() {
		es.Word("page.language")
	}
}

func TestWordDoesNotAllocate(t *testing.T) {
	es := in(t, fixtures(t), "es")
	if n := testing.AllocsPerRun(100, func() { es.Word("page.language") }); n != 0 {
		t.Errorf("Word: want 0 allocations, got %v", n)
	}
}

func BenchmarkCounted(b *testing.B) {
	ru := in(b, fixtures(b), "ru")
	line := soup("out", bowls("Change", 21))
	b.ReportAllocs()
	for b.Loop() {
		ru.Say(line)
	}
}

// Twelve languages as large as English is, with all its events.
func BenchmarkLoadTwelve(b *testing.B) {
	english, err := locales.Files.ReadFile("en.toml")
	if err != nil {
		b.Fatal(err)
	}
	folder := fstest.MapFS{"en.toml": {Data: english}}
	tags := []string{"es", "de", "it", "sw", "so", "nl", "sv", "da", "el", "bg", "et", "fi"} // all with one and other
	for _, tag := range tags {
		folder[tag+".toml"] = &fstest.MapFile{Data: bytes.Replace(english, []byte(`review = "source"`), []byte(`review = "draft"`), 1)}
	}
	b.ReportAllocs()
	for b.Loop() {
		c, problems := Load(tags, folder)
		if c == nil || len(c.Languages()) != len(tags) {
			b.Fatalf("Load: %v", problems)
		}
	}
}

// The files that come with the program, as one site with all of them loads
// them.
func BenchmarkLoadLocales(b *testing.B) {
	tags := Tags(locales.Files)
	b.ReportAllocs()
	for b.Loop() {
		if c, problems := Load(tags, locales.Files); len(problems) > 0 || len(c.Languages()) != len(tags) {
			b.Fatal(problems)
		}
	}
}
