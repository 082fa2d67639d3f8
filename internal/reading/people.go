package reading

import (
	"slices"
	"strings"
)

// scene knows who and what was met so far, to tell whom "she" means.
type scene struct {
	r       *Reader
	who     string   // whom the last sentence was about
	last    string   // who had or got an amount last
	people  []string // in the order of their coming
	she, he string   // once they are clear
	place   string
	noun    string
	doubt   string // the pronoun that could mean more than one
	lost    bool   // neither who gives nor who gets is clear
	owners  []string
	names   map[string]bool // that were used without an article
}

const (
	together = "+"       // all that were named
	ours     = "the one" // "I", "you"
	somebody = "?"       // it is not said who
)

// meet notes somebody.
func (s *scene) meet(who string) string {
	if who != "" && who != together && !slices.Contains(s.people, who) {
		s.people = append(s.people, who)
	}
	return who
}

// noun phrase that a sentence part is about: a name, a pronoun, "the red team",
// "Omar and Mei". The one who acts in the same sentence is never "her".
func (s *scene) phrase(tokens []token, other string) string {
	c := s.r.cues
	var words []string
	for i, t := range tokens {
		if t.mark && t.low != "," {
			break
		}
		switch {
		case t.mark, t.low == "":
		case len(words) == 0 && i == 0 && len(tokens) == 1 && (c.has("she", t.low) || c.has("he", t.low)):
			return s.pronoun(c.has("she", t.low), other)
		case len(words) == 0 && c.has("they", t.low):
			return s.they()
		case len(words) == 0 && len(tokens) == 1 && c.has("it", t.low):
			return s.it(other)
		case len(words) == 0 && len(tokens) == 1 && c.has("me", t.low):
			return s.meet(ours)
		case c.has("and", t.low) && len(words) > 0:
			first := s.meet(strings.Join(words, " "))
			if second := s.phrase(tokens[i+1:], other); second != "" && first != second {
				return together
			}
			return first
		case c.has("determiners", t.low), c.has("adverbs", t.low), c.has("joins", t.low):
		default:
			words = append(words, c.owner(t.low))
		}
	}
	if len(words) == 1 && tokens[0].capital && !c.has("determiners", tokens[0].low) {
		s.names[words[0]] = true
	}
	return s.meet(strings.Join(words, " "))
}

// pronoun tells whom "she" or "he" means.
func (s *scene) pronoun(female bool, other string) string {
	mine, theirs := &s.he, &s.she
	if female {
		mine, theirs = &s.she, &s.he
	}
	if *mine != "" && *mine != other {
		return *mine
	}
	var free []string
	for _, p := range s.people {
		if p != other && p != *theirs && p != ours {
			free = append(free, p)
		}
	}
	if len(free) == 0 {
		if other == "" {
			return s.meet(map[bool]string{true: "she", false: "he"}[female])
		}
		return ""
	}
	chosen := free[len(free)-1]
	if slices.Contains(free, s.who) {
		chosen = s.who
	}
	if owners := slices.DeleteFunc(slices.Clone(free), func(p string) bool { return !slices.Contains(s.owners, p) }); len(owners) == 1 {
		free, chosen = owners, owners[0] // not the aunt who gives
	}
	if *mine == "" {
		*mine = chosen
		if len(free) > 1 {
			s.doubt = map[bool]string{true: "she", false: "he"}[female]
		}
	}
	return chosen
}

func (s *scene) they() string {
	if len(s.people) == 1 && s.people[0] == s.who {
		return s.who
	}
	if s.who != "" && !s.names[s.who] && s.r.cues.several(s.who) {
		return s.who // the children
	}
	return together
}

func (s *scene) it(other string) string {
	if s.last != "" && s.last != other {
		return s.last
	}
	return s.who
}
