package activity

import (
	"cmp"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"homebuild/internal/diag"
	"homebuild/internal/problem"
)

// Find lists the targets that a teacher may mean, the likeliest first, by what she
// knows: a target's id, words of its sentences, the code of a published standard
// or its beginning ("2.OA.A.1", "1.oa"), a grade ("grade 2", "2", "kindergarten")
// or a range ("within 20", "100"). Grade, range and code must all agree; of the
// words the rare ones count most. The sentences of a target are for the caller to
// give, in any language; an empty query finds every target.
func Find(query string, targets []Target, sentences func(Target) string) []Target {
	q := newQuery(query, targets, sentences)
	type hit struct {
		target Target
		score  float64
	}
	var hits []hit
	best := 0.0
	for _, t := range targets {
		if !q.allows(t) {
			continue
		}
		h := hit{t, q.score(t)}
		best = max(best, h.score)
		hits = append(hits, h)
	}
	slices.SortStableFunc(hits, func(a, b hit) int { return cmp.Compare(b.score, a.score) })
	var out []Target
	for _, h := range hits {
		if h.score >= best/2 && (best > 0 || len(q.words) == 0 || q.binds()) {
			out = append(out, h.target)
		}
	}
	return out
}

// Named lists the targets that words name without doubt: one by its id or by the
// whole of what a child can say of it, which is for the caller to give; or all that
// have the code of a published standard.
func Named(typed string, targets []Target, can func(Target) string) []Target {
	words := strings.Join(wordsOf(typed), " ")
	is := func(t Target) bool {
		return t.ID == strings.ToLower(strings.TrimSpace(typed)) || words != "" && strings.Join(wordsOf(can(t)), " ") == words
	}
	if i := slices.IndexFunc(targets, is); i >= 0 {
		return targets[i : i+1]
	}
	return slices.DeleteFunc(slices.Clone(targets), func(t Target) bool {
		return !slices.ContainsFunc(t.Standards, func(s string) bool { return codeOf(s) == codeOf(typed) })
	})
}

// query is what was typed, taken apart.
type query struct {
	id     string
	grade  problem.Grade // -1 for any
	within int           // 0 for any
	codes  []string
	words  []string
	vocabulary
}

// vocabulary is the words of every target.
type vocabulary struct {
	of map[string][]string // by target
	in map[string]int      // in how many targets a word stands
}

func newQuery(typed string, targets []Target, sentences func(Target) string) query {
	q := query{id: strings.ToLower(strings.TrimSpace(typed)), grade: -1, vocabulary: vocabulary{map[string][]string{}, map[string]int{}}}
	for _, t := range targets {
		text := sentences(t) + " " + t.ID + " " + strings.Join(t.Standards, " ")
		words := slices.Compact(slices.Sorted(slices.Values(wordsOf(text))))
		q.of[t.ID] = words
		for _, w := range words {
			q.in[w]++
		}
	}
	for _, field := range strings.Fields(typed) {
		if code := codeOf(field); isCode(field) && slices.ContainsFunc(targets, func(t Target) bool { return t.names(code) }) {
			q.codes = append(q.codes, code)
			continue
		}
		for _, w := range wordsOf(field) {
			q.take(w, targets)
		}
	}
	return q
}

// take sorts a word into grade, range or the words to look for.
func (q *query) take(w string, targets []Target) {
	n, err := strconv.Atoi(w)
	switch {
	case w == "grade" || w == "within":
	case w == "k" || w == "kindergarten":
		q.grade = 0
	case err == nil && n <= HighestGrade:
		q.grade = problem.Grade(n)
	case err == nil && slices.ContainsFunc(targets, func(t Target) bool { return t.Within == n }):
		q.within = n
	default:
		q.words = append(q.words, w)
	}
}

// binds reports whether a grade, a range or a code was typed.
func (q query) binds() bool { return q.grade >= 0 || q.within > 0 || len(q.codes) > 0 }

func (q query) allows(t Target) bool {
	return (q.grade < 0 || t.Grade == q.grade) && (q.within == 0 || t.Within == q.within) &&
		!slices.ContainsFunc(q.codes, func(code string) bool { return !t.names(code) })
}

// score is how well the words fit a target: each counts by how few targets have
// it. A target's own id outweighs all.
func (q query) score(t Target) float64 {
	score := 0.0
	if t.ID == q.id {
		score = float64(len(q.of))
	}
	for _, w := range q.words {
		if known := q.known(w); slices.Contains(q.of[t.ID], known) {
			score += 1 / float64(q.in[known])
		}
	}
	return score
}

// known is the word of the targets that a typed one stands for: itself, another
// form of it, or the nearest spelling.
func (v vocabulary) known(typed string) string {
	if v.in[typed] > 0 {
		return typed
	}
	var all []string
	for w := range v.in {
		all = append(all, w)
	}
	slices.Sort(all)
	const stem = 4 // letters that forms of a word share
	for _, w := range all {
		if min(len(typed), len(w)) >= stem && (strings.HasPrefix(typed, w) || strings.HasPrefix(w, typed)) {
			return w
		}
	}
	return diag.Nearest(typed, all)
}

// names reports whether a standard of the target has a code, or one that begins
// with it.
func (t Target) names(code string) bool {
	return slices.ContainsFunc(t.Standards, func(s string) bool { return strings.HasPrefix(codeOf(s), code) })
}

// codeOf is a code without its points and spaces, in small letters.
func codeOf(s string) string {
	return strings.Join(wordsOf(s), "")
}

// isCode reports whether something typed may be a code: letters and digits.
func isCode(s string) bool {
	return strings.ContainsFunc(s, unicode.IsDigit) && strings.ContainsFunc(s, unicode.IsLetter) || strings.Contains(strings.Trim(s, "."), ".")
}

// wordsOf are the words and numbers of a text, in small letters.
func wordsOf(text string) []string {
	return strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) && !unicode.IsMark(r) })
}
