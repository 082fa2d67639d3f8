package main

import (
	"maps"
	"path"
	"regexp"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"golang.org/x/sync/errgroup"

	"homebuild/internal/recheck"
	"homebuild/internal/school"
	"homebuild/internal/site"
	"homebuild/internal/week"
)

// fault spoils a page, or returns it as it was when it finds nothing to spoil.
type fault func(html string) string

// more adds to the number that the first group of the pattern finds first.
func more(by int, pattern string) fault {
	re := regexp.MustCompile("(?s)" + pattern)
	return func(html string) string {
		at := re.FindStringSubmatchIndex(html)
		if at == nil {
			return html
		}
		n, err := strconv.Atoi(html[at[2]:at[3]])
		if err != nil {
			return html
		}
		return html[:at[2]] + strconv.Itoa(n+by) + html[at[3]:]
	}
}

// instead writes something else where the pattern is found first.
func instead(pattern, with string) fault {
	re := regexp.MustCompile("(?s)" + pattern)
	return func(html string) string {
		at := re.FindStringSubmatchIndex(html)
		if at == nil {
			return html
		}
		return html[:at[0]] + string(re.ExpandString(nil, with, html, at)) + html[at[1]:]
	}
}

// tellAnswer lets a reply that helps give the answer of its story away.
func tellAnswer(html string) string {
	answer := regexp.MustCompile(`(?s)class="whole">.*?<b class=n>(\d+)`).FindStringSubmatch(html)
	if answer == nil {
		return html
	}
	return instead(`(class="reply r1">.*?</p>)`, `$1<p>It is <b class=n>`+answer[1]+`</b>.</p>`)(html)
}

const (
	bars    = "2026-09-14"
	both    = "2026-10-05"
	frames  = "2026-10-12"
	line    = "2026-10-26"
	compare = "2026-11-09"
	blocks  = "2026-11-23"
	columns = "2027-02-01"
)

// planted is a fault with the page that it is planted in, and what must be said
// about it.
type planted struct {
	name, file string
	spoil      fault
	want       string
}

// faults are planted one at a time in good pages. Numbers are found by pattern,
// so that the table does not depend on which ones the stories get.
var faults = []planted{
	// Equations.
	{"a chain is not true", "en/" + bars + ".html", more(1, `<p class="chain"><bdi[^>]*>[^<]*= (\d+)<`), "is not true"},
	{"a hyphen for a minus sign", "en/" + line + ".html", instead(`(<bdi[^>]*>\d+) − `, `$1 - `), "cannot stand there"},
	{"an equation stops early", "en/" + bars + ".html", instead(`(<p class="big"><bdi[^>]*>)[^<]*`, `${1}9 +`), "stops too early"},
	{"no whole number solves", "en/" + line + ".html", instead(`(<p class="big"><bdi[^>]*>)[^<]*`, `${1}9 + ? = 4`), "no whole number solves"},
	{"the way ends elsewhere", "en/" + bars + "-try.html", instead(`(</ol>\s*<p class="chain"><bdi[^>]*>).*?</bdi>`, `${1}90 + 1 = 91</bdi>`), "not to the answer"},
	// Stories to try.
	{"the equation has another number", "en/" + bars + "-try.html", more(1, `<p class="big"><bdi[^>]*>(\d+) \+`), "do not tell"},
	{"a sentence tells another number", "en/" + bars + "-try.html", more(1, `<p class="say">.*?<b class=n>\d+.*?<b class=n>(\d+)`), "do not tell"},
	{"a wrong number is called right", "en/" + bars + "-try.html", instead(`class="reply r1"`, `class="reply r1 right"`), "is called right: true; by the equation: false"},
	{"a pair is not called right", "en/" + both + "-try.html", instead(`class="reply ([^"]*) right`, `class="reply $1`), "is called right: false; by the equation: true"},
	{"an answer gets no reply", "en/" + bars + "-try.html", instead(`class="reply large"`, `class="reply"`), "gets 0 replies"},
	{"a reply is headed by another number", "en/" + bars + "-try.html", more(50, `class="reply r1"><p class="for">\s*(\d+)`), "is shown to"},
	{"a reply gives the answer away", "en/" + bars + "-try.html", tellAnswer, "tells the answer"},
	{"the right reply says another sum", "en/" + bars + "-try.html", instead(`(class="reply right.*?<bdi[^>]*>)[^<]*`, `${1}90 + 9 = 99`), "the right reply says"},
	{"the answer sentence says another number", "en/" + bars + "-try.html", more(1, `class="whole">.*?<b class=n>(\d+)`), "says another answer"},
	{"the open picture shows the answer", "en/" + bars + "-try.html", instead(`(class="fold">.*?)<text([^>]*)>\?<`, `$1<rect x="145" y="4" width="31" height="28" class="plate found"></rect><text$2>99<`), "should still ask"},
	// The worked story.
	{"the story is told twice in two ways", "en/" + bars + ".html", more(1, `class="again">.*?<b class=n>(\d+)`), "not told again"},
	{"a known number is not used", "en/" + bars + ".html", more(1, `class="said known">.*?<b class=n>(\d+)`), "which the equation does not have"},
	// Estimates.
	{"the friendly number is not in the middle", "en/" + bars + ".html", more(1, `<p>[^/]*<b class=n>\d+</b>[^/]*<b class=n>\d+</b>[^/]*<b class=n>(\d+)</b>\.</p>\s*<p>Yes`), "not in the middle"},
	{"the answer is out of bounds", "en/" + bars + ".html", instead(`from <b class=n>\d+</b> to <b class=n>\d+</b>`, `from <b class=n>15</b> to <b class=n>15</b>`), "is not from 15 to 15"},
	{"another friendly sum is said", "en/" + bars + ".html", more(1, `close to <bdi[^>]*>(\d+)`), "not that of the equation below"},
	// Pictures.
	{"a bar's parts do not make its whole", "en/" + bars + ".html", more(1, `in-back.*?class="part-a" />\s*<rect[^>]*>\s*<text[^>]*>(\d+)`), "the parts make"},
	{"a bar is too long", "en/" + bars + ".html", more(20, `<rect x="8" y="50" width="(\d+)"`), "there is a gap"},
	{"a description says another number", "en/" + bars + ".html", more(40, `<title id="picture[^>]*>[^<]*?(\d+)`), "description"},
	{"a dot is missing in a frame", "en/" + frames + ".html", instead(`(<path d="M\d+ \d+a11[^z]*z)M[^z]*z`, `$1`), "dots"},
	{"two dots lie in one place", "en/" + frames + ".html", instead(`(.*)d="(M\d+ \d+a11[^z]*z)M[^z]*z`, `${1}d="$2$2`), "two dots lie in one place"},
	{"a hop is too long", "en/" + line + ".html", more(1, `class="small" >[+−](\d+)`), "a hop ends at"},
	{"a hop goes the wrong way", "en/" + line + ".html", instead(`class="small" >−`, `class="small" >+`), "goes the wrong way"},
	{"a stick is missing", "en/" + blocks + ".html", instead(`M\d+ \d+h9v44h-9z`, ``), "is drawn as"},
	{"a column is wrong", "en/" + columns + ".html", more(10, `<text x="208"[^>]*>(\d+)`), "is split into"},
	// Check pages and paper.
	{"a check is of other numbers", "en/check/7.html", more(1, `<h2><b class=n>7</b> and <b class=n>(\d+)`), "is not about these numbers"},
	{"a number leads to another page", "en/check/index.html", more(1, `href="(\d+)\.html"`), "leads to"},
	{"the paper has another story", "en/" + bars + "-print.html", more(1, `class="tasks">.*?<b class=n>(\d+)`), "on paper is not that"},
	{"the paper has another answer", "en/" + bars + "-print.html", more(1, `class="turned">.*?<b class=n>(\d+)`), "answers on paper"},
	// Links.
	{"a dead link", "en/" + bars + ".html", instead(`href="`+bars+`-try.html"`, `href="nowhere.html"`), "leads to no file"},
	{"a dead place", "en/" + bars + ".html", instead(`href="#main"`, `href="#mine"`), "leads to no place"},
	{"a link that needs a server", "en/" + bars + ".html", instead(`href="check/index.html"`, `href="check/"`), "works only on a server"},
	{"a link out of the site", "en/" + bars + ".html", instead(`href="check/index.html"`, `href="https://example.org/"`), "leads out of the site"},
	{"an id twice", "en/" + bars + ".html", instead(`id="gap"`, `id="show"`), "is not there once"},
	{"a picture without its name", "en/" + bars + ".html", instead(`aria-labelledby="picture-1-t"`, `aria-labelledby="picture-x"`), "which is not there"},
	// What stands around.
	{"another style than allowed", "en/" + bars + ".html", instead(`<style>`, `<style>b{color:red}`), "the security policy allows"},
	{"no security policy", "en/" + bars + ".html", instead(`<meta http-equiv[^>]*>`, ``), "security policy says"},
	{"a script", "en/" + bars + ".html", instead(`</main>`, `<script>1</script></main>`), "there is a <script>"},
	{"a form", "en/" + bars + ".html", instead(`</main>`, `<form></form></main>`), "there is a <form>"},
	{"a picture from elsewhere", "en/" + bars + ".html", instead(`</main>`, `<img src="x.png" alt=""></main>`), "there is a <img>"},
	{"something that runs", "en/" + bars + ".html", instead(`<main`, `<main onclick="x()"`), "runs something"},
	{"two headings", "en/" + bars + ".html", instead(`<h2>[^<]*</h2>`, `<h1>Again</h1>`), "2 <h1>"},
	{"no description", "en/" + bars + ".html", instead(`<meta name="description"[^>]*>`, ``), "no description"},
	{"another language than its folder", "es/" + bars + ".html", instead(`<html lang="es"`, `<html lang="en"`), "in the folder"},
	{"the wrong direction", "es/" + bars + ".html", instead(`dir="ltr"`, `dir="rtl"`), "its letters run ltr"},
	{"another address", "es/" + bars + ".html", instead(`(rel="canonical" href="[^"]*)`+bars, `${1}2000-01-01`), "the canonical address"},
	{"a version does not name this page", "es/" + bars + ".html", instead(`<link rel="alternate" hreflang="en"[^>]*>`, ``), "does not name this page in turn"},
	{"nowhere to pick a language", "es/" + bars + ".html", instead(`<link rel="alternate" hreflang="x-default"[^>]*>`, ``), "x-default"},
	{"a page too heavy", "en/" + bars + ".html", func(html string) string { return strings.Replace(html, "</main>", noise()+"</main>", 1) }, "it weighs"},
	// Languages.
	{"another number in another language", "es/" + bars + "-try.html", more(100, `<p class="say"><span>.*?<b class=n>(\d+)`), "is not as in"},
	{"a page is missing in a language", "es/" + bars + "-try.html", func(string) string { return "" }, "no such page in es"},
}

// noise is text that cannot be compressed well.
func noise() string {
	var b strings.Builder
	n := uint32(1)
	for range 30_000 {
		n = n*1664525 + 1013904223 // Numerical Recipes, from memory
		b.WriteByte('a' + byte(n>>24)%26)
	}
	return b.String()
}

// A checker that finds nothing proves nothing: each planted fault is found.
func TestPlantedFaultsAreFound(t *testing.T) {
	t.Parallel()
	tried := 0
	for _, date := range []string{bars, both, frames, line, compare, blocks, columns} {
		// The second language is there for the faults of languages alone.
		for _, languages := range [][]string{{"en"}, {"en", "es"}} {
			planted := slices.DeleteFunc(slices.Clone(faults), func(f planted) bool {
				// A fault in a page of no week is planted among those of the first.
				ofWeek := strings.Contains(f.file, date) || date == bars && strings.Contains(f.file, "check/")
				return !ofWeek || strings.HasPrefix(f.file, "es/") != (len(languages) > 1)
			})
			if len(planted) == 0 {
				continue
			}
			good := oneWeek(t, date, languages)
			if _, problems := recheck.Site(good); len(problems) > 0 {
				t.Fatalf("the good pages of %s have problems:\n%v", date, problems)
			}
			for _, f := range planted {
				t.Run(f.name, func(t *testing.T) { plant(t, good, f) })
				tried++
			}
		}
	}
	if tried != len(faults) {
		t.Errorf("%d faults were planted, want %d: a fault names a page of no week", tried, len(faults))
	}
}

// plant spoils one page and wants that to be seen.
func plant(t *testing.T, good fstest.MapFS, f planted) {
	html := string(good[f.file].Data)
	spoiled := f.spoil(html)
	if spoiled == html {
		t.Fatalf("the fault could not be planted in %s", f.file)
	}
	bad := maps.Clone(good)
	bad[f.file] = &fstest.MapFile{Data: []byte(spoiled)}
	if spoiled == "" {
		delete(bad, f.file)
	}
	_, problems := recheck.Site(bad)
	for _, p := range problems {
		if strings.Contains(p.Text, f.want) {
			return
		}
	}
	t.Errorf("want a problem that says %q, got %d:\n%v", f.want, len(problems), problems)
}

// oneWeek is a week of the example school. Its check pages know the numbers to
// seven and two pairs of each, to keep the test quick.
func oneWeek(t *testing.T, date string, languages []string) fstest.MapFS {
	t.Helper()
	in, problems := school.Example().Load()
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	in.Site.Languages = languages
	in.Site.Weeks = slices.DeleteFunc(in.Site.Weeks, func(w week.Week) bool { return w.Date != date })
	pages := rendered(t, in)
	for name, file := range pages {
		if tooLarge.MatchString(path.Base(name)) {
			delete(pages, name)
		} else {
			file.Data = tooMany.ReplaceAll(file.Data, nil)
		}
	}
	return pages
}

// tooMany are the pairs of a check page from the third on, the links to them, and
// the links to the pages of numbers that are too large.
var (
	tooLarge = regexp.MustCompile(`^([89]|\d\d)\.html$`)
	tooMany  = regexp.MustCompile(`(?s)<section class="reply" id="with-([2-9]|\d\d)">.*?</section>|<a [^>]*href="(#with-([2-9]|\d\d)|(check/)?([89]|\d\d)\.html)"[^>]*>.*?</a>`)
)

// rendered makes the pages of a site in memory.
func rendered(t *testing.T, in site.Input) fstest.MapFS {
	t.Helper()
	files, _, problems := site.Assemble(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	out := fstest.MapFS{}
	for _, f := range files {
		out[f.Path] = &fstest.MapFile{}
	}
	var workers errgroup.Group
	workers.SetLimit(runtime.GOMAXPROCS(0))
	for _, f := range files {
		workers.Go(func() (err error) {
			out[f.Path].Data, err = f.Render()
			return err
		})
	}
	if err := workers.Wait(); err != nil {
		t.Fatal(err)
	}
	return out
}
