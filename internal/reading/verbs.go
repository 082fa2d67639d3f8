package reading

import (
	"maps"
	"slices"
	"strings"
)

// form is one form of a verb.
type form struct {
	class  class
	base   string
	own    bool // what is counted does it, wherever it stands: "llegan 4"
	noun   bool // "finds": after a number this is a noun
	person person
}

// person is who does it, where the form alone tells.
type person string

const (
	one  person = "one"
	they person = "they" // and we
	me   person = "me"
)

// persons stand in a verb's line in this order, parted by "|".
var persons = []person{one, they, me}

// own are the classes of verbs whose subject is what is counted, and what these
// verbs do otherwise.
var own = map[class]class{"stand": hold, "leave": lose, "arrive": come}

// conjugate lists the forms of all verbs.
func (c *cues) conjugate() map[string]form {
	out := map[string]form{}
	for _, kind := range slices.Sorted(maps.Keys(c.Verbs)) {
		f := form{class: kind}
		if as, ok := own[kind]; ok {
			f.class, f.own = as, true
		}
		for _, verb := range c.Verbs[kind] {
			plain, _, _ := strings.Cut(verb, " ")
			f.base = strings.ReplaceAll(plain, "-", "")
			for n, forms := range strings.Split(verb, "|") {
				for _, word := range strings.Fields(forms) {
					f.person = persons[n]
					c.add(out, f, word)
				}
			}
		}
	}
	return out
}

// add adds a form, or all that "compr-ar" stands for: the forms of the
// conjugation "ar".
func (c *cues) add(forms map[string]form, f form, word string) {
	stem, ending, _ := strings.Cut(word, "-")
	rows, regular := c.Conjugations[ending]
	if !regular {
		rows = map[person][]string{f.person: {ending}}
	}
	for _, who := range persons {
		f.person = who
		for _, end := range rows[who] {
			full := stem + end
			f.noun = full != f.base && c.ends("noun", full)
			forms[full] = f
		}
	}
}
