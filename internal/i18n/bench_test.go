package i18n

import (
	"fmt"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/phrase"
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
	line := phrase.Say("story.add-to-result.1.change",
		phrase.Person("A", "person.lina"), phrase.Counted("Change", "thing.shell", 21)).About("person.lina")
	b.ReportAllocs()
	for b.Loop() {
		ru.Say(line)
	}
}

// manyLanguages makes a folder of languages with about 600 messages each.
func manyLanguages(tb testing.TB, tags []string) fstest.MapFS {
	tb.Helper()
	folder := fstest.MapFS{}
	for _, tag := range append([]string{"en"}, tags...) {
		from := "es"
		if tag == "en" {
			from = "en"
		}
		data, err := os.ReadFile("testdata/locales/" + from + ".toml")
		if err != nil {
			tb.Fatal(err)
		}
		var b strings.Builder
		b.Write(data)
		for i := range 550 {
			fmt.Fprintf(&b, "\n[help.generated.m%d]\ndescription = \"Where this stands, and what its places hold.\"\nother = \"Pon {{.Need}} con {{.A}} para formar diez, y di cuántas conchas hay ahora.\"\n", i)
		}
		folder[tag+".toml"] = &fstest.MapFile{Data: []byte(b.String())}
	}
	return folder
}

func BenchmarkLoadTwelve(b *testing.B) {
	tags := []string{"es", "de", "it", "sw", "so", "nl", "sv", "da", "el", "bg", "et", "fi"} // all with one and other
	folder := manyLanguages(b, tags)
	b.ReportAllocs()
	for b.Loop() {
		c, problems := Load(tags, folder)
		if c == nil || len(c.Languages()) != 12 {
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
