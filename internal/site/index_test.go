package site

import (
	"encoding/xml"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"
)

// rendered gives one file of a site.
func rendered(t *testing.T, in Input, path string) string {
	t.Helper()
	files, _, problems := Assemble(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	i := slices.IndexFunc(files, func(f File) bool { return f.Path == path })
	if i < 0 {
		return ""
	}
	data, err := files[i].Render()
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// What RFC 4287 asks of a feed (sections 4.1.1 and 4.1.2, from memory): one id,
// title and updated on the feed and on each entry, an author on the feed, times
// as RFC 3339 has them, ids that differ.
func TestFeed(t *testing.T) {
	for _, tag := range []string{"en", "ar"} {
		raw := rendered(t, exampleInput(t, "en", "ar"), tag+"/feed.xml")
		var feed struct {
			XMLName xml.Name `xml:"http://www.w3.org/2005/Atom feed"`
			ID      []string `xml:"id"`
			Title   []string `xml:"title"`
			Updated []string `xml:"updated"`
			Author  []struct {
				Name string `xml:"name"`
			} `xml:"author"`
			Entries []struct {
				ID      []string `xml:"id"`
				Title   []string `xml:"title"`
				Updated []string `xml:"updated"`
				Links   []struct {
					Href string `xml:"href,attr"`
				} `xml:"link"`
			} `xml:"entry"`
		}
		if err := xml.Unmarshal([]byte(raw), &feed); err != nil {
			t.Fatal(err)
		}
		if len(feed.ID) != 1 || len(feed.Title) != 1 || len(feed.Updated) != 1 || len(feed.Author) != 1 || feed.Author[0].Name == "" {
			t.Errorf("%s: feed %+v lacks a part or has it twice", tag, feed)
		}
		times := slices.Clone(feed.Updated)
		ids := slices.Clone(feed.ID)
		if len(feed.Entries) < 12 {
			t.Fatalf("%s: %d entries", tag, len(feed.Entries))
		}
		for _, e := range feed.Entries {
			if len(e.ID) != 1 || len(e.Title) != 1 || len(e.Updated) != 1 || len(e.Links) != 1 || e.Title[0] == "" {
				t.Fatalf("%s: entry %+v lacks a part or has it twice", tag, e)
			}
			if !strings.HasPrefix(e.Links[0].Href, "https://") {
				t.Errorf("%s: link %q is not a full address", tag, e.Links[0].Href)
			}
			times, ids = append(times, e.Updated...), append(ids, e.ID...)
		}
		for _, at := range times {
			if _, err := time.Parse(time.RFC3339, at); err != nil {
				t.Errorf("%s: %v", tag, err)
			}
		}
		slices.Sort(ids)
		if len(slices.Compact(ids)) != len(feed.Entries)+1 {
			t.Errorf("%s: an id stands twice", tag)
		}
	}
}

func TestSitemapOnlyWhereWanted(t *testing.T) {
	in := exampleInput(t, "en")
	if got := rendered(t, in, "sitemap.xml"); got != "" {
		t.Errorf("a site that is not to be listed has a sitemap: %.80s", got)
	}
	in.Site.Index = true
	got := rendered(t, in, "sitemap.xml")
	found := regexp.MustCompile(`<loc>([^<]*)</loc>`).FindAllStringSubmatch(got, -1)
	files, _, _ := Assemble(in)
	pages := 0
	for _, f := range files {
		if strings.HasSuffix(f.Path, ".html") && f.Path != "404.html" {
			pages++
		}
	}
	if len(found) != pages {
		t.Errorf("the sitemap lists %d of %d pages", len(found), pages)
	}
	in.Site.Address = ""
	if got := rendered(t, in, "sitemap.xml"); got != "" {
		t.Error("a site without an address has a sitemap")
	}
}

// The earlier weeks stand under the range of their numbers, in the order of the list
// of targets, which goes from kindergarten up, each once. A few stay as they were.
func TestTopics(t *testing.T) {
	p, _, problems := Plan(exampleInput(t, "en"))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	c := p.calendar()
	var sorted calendar
	within := 0
	for _, topic := range c.topics() {
		last := -1
		for _, w := range topic.weeks {
			if w.within <= within || w.place < last {
				t.Errorf("%s %s stands after a later target", w.date, w.target.ID)
			}
			last = w.place
		}
		within = topic.weeks[0].within
		sorted = append(sorted, topic.weeks...)
	}
	if got, want := slices.Sorted(slices.Values(datesOf(sorted))), slices.Sorted(slices.Values(datesOf(c))); !slices.Equal(got, want) {
		t.Errorf("the topics list %v, want %v", got, want)
	}
	if got := c[:fewWeeks].topics(); len(got) != 1 || !slices.Equal(datesOf(got[0].weeks), datesOf(c[:fewWeeks])) {
		t.Errorf("a few weeks are sorted by topic: %v", got)
	}
}

// manyWeeks are those of the example over and over, newest first.
func manyWeeks(t *testing.T, in Input, n int) (all calendar) {
	t.Helper()
	p, _, problems := Plan(in)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	few, monday := p.calendar(), time.Date(1930, 12, 29, 0, 0, 0, 0, time.UTC)
	for i := range n {
		w := few[i%len(few)]
		w.date = monday.AddDate(0, 0, 7*(n-i)).Format(time.DateOnly)
		all = append(all, w)
	}
	return all
}

// However many weeks there are, the first page of a language stays small, and leads to
// each of them; a school of one long year has no other list.
func TestEveryWeekIsOnAList(t *testing.T) {
	in := exampleInput(t, "en", "ar")
	const small = 30_000 // bytes; 5,000 weeks were a million
	for _, n := range []int{1, 4, onIndex, onIndex + 1, 150, 5000} {
		weeks := manyWeeks(t, in, n)
		l := &lister{common: newCommon(in)}
		for _, lang := range l.languages {
			l.index(lang, weeks, weeks.years())
		}
		l.page(frontPage{l.languages, weeks})
		pages := map[string]string{}
		for _, f := range l.files {
			data, err := f.Render()
			if err != nil {
				t.Fatal(err)
			}
			pages[f.Path] = string(data)
			if len(data) > small {
				t.Errorf("%d weeks: %s has %d bytes, want at most %d", n, f.Path, len(data), small)
			}
		}
		if n <= onIndex && len(pages) != 3 {
			t.Errorf("%d weeks need %d lists", n, len(pages))
		}
		for _, tag := range in.Site.Languages {
			listed := map[string]int{}
			for _, m := range hrefs.FindAllStringSubmatch(pages[indexPath(tag)], -1) {
				listed[m[1]]++
				for _, m := range hrefs.FindAllStringSubmatch(pages[tag+"/"+m[1]], -1) {
					listed[m[1]]++
				}
			}
			for _, w := range weeks {
				if listed[w.date+".html"] == 0 {
					t.Fatalf("%d weeks: no list of %s leads to %s", n, tag, w.date)
				}
			}
		}
	}
}

var hrefs = regexp.MustCompile(`href="((?:weeks-)?[0-9-]+\.html)"`)

func datesOf(c calendar) (out []string) {
	for _, w := range c {
		out = append(out, w.date)
	}
	return out
}
