package site

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"homebuild/internal/translate"
)

// The hard sample of a language has every message to families that numbers can break:
// those with a place, and the replies, in its first part; the sentences of events with a
// place in one of its parts, none of which is longer than an hour. English is the
// source, Russian has most plural forms.
func TestHardSampleHasWhatNumbersBreak(t *testing.T) {
	for _, tag := range []string{"en", "ru"} {
		t.Run(tag, func(t *testing.T) {
			t.Parallel()
			in := sampleOf(t, tag, nil)
			said := map[string]bool{}
			parts := in.Hard()
			if tag == "en" {
				isHard(t, parts[0])
			}
			for _, r := range parts {
				if r.Size() > mostSentences {
					t.Errorf("part %d has %d sentences, want at most %d", r.Part, r.Size(), mostSentences)
				}
				for _, s := range sentencesOf(r) {
					for _, id := range s.IDs {
						said[id] = true
					}
				}
				if r.Part > 1 {
					continue
				}
				for _, f := range in.Draft.Language.Forms() {
					family, _, _ := strings.Cut(f.ID, ".")
					reply := family == "reply" || family == "mistake"
					read := slices.Contains([]string{"thing", "picture", "desk"}, family) // of the sample, or not by families
					if (len(f.Places) > 0 || reply) && !read && !aside(f.ID) && !said[f.ID] {
						t.Errorf("%s is not in the first part", f.ID)
					}
				}
			}
			for _, p := range in.Draft.Places() {
				if strings.HasPrefix(p.ID, "event.") && strings.Contains(p.Text, "{{") && !said[p.ID] && !seldom(p.ID) {
					t.Errorf("%s is in no part: %s", p.ID, p.Text)
				}
			}
		})
	}
}

// seldom reports whether a sentence of an event is in no sample: one of a group of
// stories is said in place of the one that the others have.
func seldom(id string) bool { return strings.Count(id, ".") > 3 }

func sentencesOf(r translate.Reading) (all []translate.Sentence) {
	for _, g := range r.Groups {
		all = append(all, g.Sentences...)
	}
	return all
}

// isHard reports what the first part lacks: every hard number is met in it, more than
// once, and every group is there.
func isHard(t *testing.T, r translate.Reading) {
	met := map[string]int{}
	for _, s := range sentencesOf(r) {
		for _, word := range strings.FieldsFunc(s.Said, func(c rune) bool { return c < '0' || c > '9' }) {
			met[word]++
		}
	}
	for _, n := range hardNumbers {
		if got := met[strconv.Itoa(n)]; got < 3 {
			t.Errorf("%d is met %d times, want 3 at least", n, got)
		}
	}
	if first := r.Groups[0].Title; first != "Stories" || len(r.Groups) != 8 {
		t.Errorf("the first part has %d groups and begins with %q", len(r.Groups), first)
	}
}
