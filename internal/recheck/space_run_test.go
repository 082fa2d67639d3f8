package recheck_test

import (
	"flag"
	"fmt"
	"slices"
	"strings"
	"sync"
	"testing"

	"homebuild/internal/recheck"
)

var allOfSpace = flag.Bool("space", false, "read every page of the whole space again (long)")

// keys choose other numbers and people.
var keys = []string{"puddle", "harbour", "thimble", "seven", "lantern"}

// schools are the sites over the space. Without -space they are a sample that
// is done in seconds.
func (w *workshop) schools() []school {
	var out []school
	everywhere := append([]string{"en"}, slices.DeleteFunc(slices.Clone(w.allowed.Languages), func(tag string) bool { return tag == "en" })...)
	three := [][]string{{"en", "ar", "ru"}, {"en", "es", "zh-Hans"}, {"en", "so", "vi"}, {"en", "ko", "ht"}, {"en", "fr", "uk"}}
	for i, target := range w.base.Targets {
		for mode := range 4 {
			words, extra := mode&1 == 1, mode&2 == 2
			k := (i + mode) % len(keys)
			weeks := w.weeksOf(target, words, extra)
			out = append(out, school{
				name: fmt.Sprintf("%s, words %t, extra %t", target.ID, words, extra), key: keys[k],
				languages: three[k], weeks: order(weeks, i+7*mode),
			})
			if words == extra { // every language for a few weeks of each
				out = append(out, school{
					name: fmt.Sprintf("%s in all languages, words %t, extra %t", target.ID, words, extra), key: keys[(k+1)%len(keys)],
					languages: everywhere, weeks: order(weeks, 5*i+3*mode)[:2],
				})
			}
		}
	}
	for k, key := range keys {
		out = append(out, school{name: "own targets, " + key, key: key, languages: three[k], weeks: order(ownTargets(), 11*k)})
	}
	return out
}

// sample is a small part of the schools, with one week of each.
func sample(schools []school) []school {
	var out []school
	for i := 0; i < len(schools); i += 17 {
		s := schools[i]
		s.weeks = s.weeks[:1]
		s.languages = s.languages[:min(len(s.languages), 3)]
		out = append(out, s)
	}
	return out
}

// reported are faults of the pages that are known and not mended yet. They are
// counted, and do not fail the test.
var reported = []string{
	"bytes compressed", // eight stories in some languages outgrow the first round trip
}

// Over the whole space of what a week can ask for, every number on every page
// is read again and worked out again.
func TestSpace(t *testing.T) {
	if testing.Short() {
		t.Skip("builds and reads some thousand pages")
	}
	w := newWorkshop(t)
	schools := w.schools()
	if !*allOfSpace {
		schools = sample(schools)
	}
	var lock sync.Mutex
	var sum recheck.Report
	weeks, heavy, told := 0, 0, map[string]int{}
	t.Run("schools", func(t *testing.T) {
		for _, s := range schools {
			t.Run(s.name, func(t *testing.T) {
				t.Parallel()
				report, problems := recheck.Site(w.build(t, s))
				lock.Lock()
				defer lock.Unlock()
				weeks += len(s.weeks) * len(s.languages)
				sum.Add(report)
				for _, p := range problems {
					sort := plain(p.Text)
					isKnown := slices.ContainsFunc(reported, func(text string) bool { return strings.Contains(p.Text, text) })
					if told[sort]++; isKnown {
						heavy = max(heavy, weight(p.Text))
						t.Logf("%s, of the week with key %q, %s", p, s.key, s.weekOf(p.File))
					} else if told[sort] <= 3 {
						t.Errorf("%s\nlanguages %q, key %q, %s", p, s.languages, s.key, s.weekOf(p.File))
					} else {
						t.Fail()
					}
				}
			})
		}
	})
	for _, sort := range sortedKeys(told) {
		t.Logf("%d times: %s", told[sort], sort)
	}
	t.Logf("the heaviest page above the limit: %d bytes", heavy)
	t.Logf("%d schools, %d weeks (each language counted), %d pages, %d equations, %d stories, %d choices, %d pictures, %d dots, %d estimates, %d links",
		len(schools), weeks, sum.Pages, sum.Equations, sum.Stories, sum.Choices, sum.Pictures, sum.Dots, sum.Estimates, sum.Links)
}

// weekOf is the week file that a page was made from.
func (s school) weekOf(path string) string {
	for i, settings := range s.weeks {
		if strings.Contains(path, dateOf(i)) {
			return fmt.Sprintf("week %d:\n%s", i+1, settings)
		}
	}
	return "no week"
}

// weight reads a page's weight from the problem about it.
func weight(text string) int {
	n := 0
	fmt.Sscanf(text, "it weighs %d", &n)
	return n
}

// plain is a problem without its numbers, to count it.
func plain(text string) string {
	return strings.Join(strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune("0123456789[]", r) }), "#")
}
