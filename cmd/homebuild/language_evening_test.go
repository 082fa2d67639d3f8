package main

import (
	"encoding/json"
	"hash/fnv"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"homebuild/internal/school"
)

// A thirteenth language goes page by page: each evening's texts bring the pages that
// need them, and nothing that is not whole is made or led to. Its words are invented,
// in letters of Polish; Polish has three plural forms for whole numbers (Unicode CLDR
// 48, plural rules of pl).
func TestEveningsBringPages(t *testing.T) {
	folder := schoolWith(t)
	addToSite(t, folder, "pl")
	said(t, exitFine, "language", "new", "pl", folder)
	week := "pl/2026-09-14"
	pages := func() map[string]bool {
		got := said(t, exitFine, "build", folder)
		there := map[string]bool{}
		for _, page := range []string{week + ".html", week + "-try.html", week + "-story.html", week + "-print.html", "pl/index.html", "pl/check/index.html"} {
			html, err := os.ReadFile(filepath.Join(folder, "public", page))
			if there[page] = err == nil; err == nil {
				ledTo(t, folder, page, string(html))
			}
		}
		if waits := strings.Contains(got, "pages wait"); waits == there["pl/check/index.html"] {
			t.Errorf("want a note about pages that wait until all are there, got %s", got)
		}
		return there
	}
	evenings := []struct {
		name           string
		texts, words   int // at most, of English
		page, notYet   string
		inClass, after bool
	}{
		{name: "the page of the week 2026-09-14", texts: 100, words: 800, page: week + ".html", notYet: week + "-try.html"},
		{name: "its stories to try", texts: 100, words: 800, page: week + "-try.html", notYet: week + "-print.html"},
		{name: "its sheet of paper, the child's own story, the list of weeks", texts: 100, words: 600, page: week + "-print.html", notYet: "pl/check/index.html"},
		{name: "the check pages", texts: 200, words: 1500, page: "pl/check/index.html"},
	}
	if there := pages(); there[week+".html"] {
		t.Fatal("a page of an empty file is made")
	}
	for _, e := range evenings {
		texts, words := 0, 0
		for range 4 { // a text that is written may ask for forms of its own
			l := layer(t, folder, e.name)
			if l.Made == l.Pages {
				break
			}
			texts, words = texts+len(l.Wanted), words+l.Words()
			writeAll(t, folder, l)
		}
		there := pages()
		if !there[e.page] || there[e.notYet] {
			t.Fatalf("%s: want %s and not yet %s, got %v", e.name, e.page, e.notYet, there)
		}
		if texts == 0 || texts > e.texts || words > e.words {
			t.Errorf("%s took %d texts, %d words; want at most %d and %d", e.name, texts, words, e.texts, e.words)
		}
		t.Logf("%s: %d texts, %d words", e.name, texts, words)
	}
	said(t, exitFine, "language", "check", "pl", folder)
}

// layer is one of those that are told.
func layer(t *testing.T, folder, name string) school.Layer {
	t.Helper()
	var layers []school.Layer
	if err := json.Unmarshal([]byte(said(t, exitFine, "language", "next", "pl", folder, "--json")), &layers); err != nil {
		t.Fatal(err)
	}
	for _, l := range layers {
		if l.Name == name {
			return l
		}
	}
	t.Fatalf("there is no layer %q in %v", name, layers)
	return school.Layer{}
}

var (
	emptyText = regexp.MustCompile(`^([a-z0-9.-]+ = )""`)
	places    = regexp.MustCompile(`\{\{\.\w+(\.\w+)?\}\}`)
)

// word is an invented word for a message, so that no two read alike.
func word(id string) string {
	sum := fnv.New32a()
	sum.Write([]byte(id))
	return strings.NewReplacer("0", "ą", "1", "ć", "2", "ę", "3", "ł", "4", "ń", "5", "ó", "6", "ś", "7", "ź", "8", "ż", "9", "w").Replace(strconv.Itoa(int(sum.Sum32())))
}

// writeAll fills the texts that a layer waits for.
func writeAll(t *testing.T, folder string, l school.Layer) {
	t.Helper()
	path := filepath.Join(folder, "locales", "pl.toml")
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(string(data), "\n")
	for _, w := range l.Wanted {
		text := "Żółw " + word(w.ID) + " " + strings.Join(places.FindAllString(w.English, -1), " ")
		text = strings.TrimSpace(regexp.MustCompile(`(\{\{\.\w+)\.\w+`).ReplaceAllString(text, "$1"))
		if end := w.English[len(w.English)-1:]; strings.Contains(".?!", end) {
			text += end
		}
		for i := w.Line - 1; ; i++ {
			if i >= w.Line && (lines[i] == "" || lines[i][0] == '[' || strings.HasPrefix(w.ID, "event.")) {
				break
			}
			lines[i] = emptyText.ReplaceAllString(lines[i], `${1}"`+strings.ReplaceAll(text, "$", "$$")+`"`)
		}
	}
	if err := os.WriteFile(path, []byte(strings.Join(lines, "\n")), 0o644); err != nil {
		t.Fatal(err)
	}
}

// ledTo wants every link of a page to lead somewhere, and no text of another language
// around it.
func ledTo(t *testing.T, folder, page, html string) {
	t.Helper()
	for _, m := range regexp.MustCompile(`href="([^"#:]+)[^"]*"`).FindAllStringSubmatch(html, -1) {
		if _, err := os.Stat(filepath.Join(folder, "public", filepath.Dir(page), filepath.FromSlash(m[1]))); err != nil {
			t.Errorf("%s leads to %s, which is not there", page, m[1])
		}
	}
	if !strings.Contains(html, "Żółw") || strings.Contains(html, "Skip to the main part") {
		t.Errorf("%s is not in one language", page)
	}
}
