package reading

import "slices"

// leftOut tells who does something where no subject is said: the one whom the
// last sentence was about, or whom the verb's form tells.
func (s *scene) leftOut(f form, p parts) string {
	if !s.r.cues.Order.LeftOut {
		return s.who
	}
	switch f.person {
	case me:
		return s.meet(ours)
	case they:
		if p.clitic != "" { // "le dan 3": it is not said who
			return ""
		}
		return s.they()
	}
	if s.several("") {
		s.doubt = f.base
	}
	return s.who
}

// several reports whether more than one has some, besides one of them.
func (s *scene) several(besides string) bool {
	n := len(s.owners)
	if slices.Contains(s.owners, besides) {
		n--
	}
	return n > 1
}

// owns notes who has some.
func (s *scene) owns(f fact) {
	has := f.sort == state || f.sort == versus || f.class == gain && f.to == ""
	if has && f.who != "" && f.who != together && !slices.Contains(s.owners, f.who) {
		s.owners = append(s.owners, f.who)
	}
}

// indirect is whom a small word at the verb means: somebody who is named beside
// it, "le da 3 a Omar", or the one whom the story is about.
func (s *scene) indirect(p parts, subject string) string {
	if p.clitic == "" {
		return ""
	}
	for _, at := range p.places {
		if s.r.cues.has("to", at.word) {
			return s.phrase(at.tokens, subject)
		}
	}
	switch {
	case s.r.cues.has("me", p.clitic):
		return s.meet(ours)
	case s.r.cues.has("they", p.clitic):
		return s.they()
	case s.several(subject):
		s.doubt = p.clitic
	}
	if s.who != "" && s.who != subject {
		return s.who
	}
	for _, who := range slices.Backward(s.people) {
		if who != subject {
			return who
		}
	}
	return ""
}

// known reports whether words name somebody who was met.
func (s *scene) known(tokens []token) bool {
	words := slices.DeleteFunc(lows(tokens), func(w string) bool { return s.r.cues.has("determiners", w) })
	return len(words) == 1 && slices.Contains(s.people, words[0])
}
