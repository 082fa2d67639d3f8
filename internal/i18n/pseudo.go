package i18n

import (
	"strings"
	"unicode"
)

// Pseudo makes a language out of another one that anybody can read, to test
// pages before there are translations: letters with accents, words about 40 %
// longer, every message in brackets. With rtl the letters become Arabic ones,
// to test the other direction; nobody can read that.
func Pseudo(source *Language, rtl bool) *Language {
	p := pseudo{letters: accented}
	l := *source
	l.tag, l.script = "en-XA", "Latn"
	if rtl {
		p.letters = mirrored
		l.tag, l.script, l.rtl = "ar-XB", "Arab", true
	}
	l.name = p.bracketed(source.name)
	l.reviewed, l.source, l.sum = "", false, source.sum+"."+l.tag
	l.messages = make(map[string]*ready, len(source.messages))
	for id, m := range source.messages {
		l.messages[id] = p.ready(m)
	}
	l.things = make(map[string]*thing, len(source.things))
	for id, t := range source.things {
		l.things[id] = p.thing(t)
	}
	l.people = make(map[string]*person, len(source.people))
	for id, who := range source.people {
		l.people[id] = &person{gender: who.gender, forms: p.texts(who.forms)}
	}
	l.words = make(map[string]numberWords, len(source.words))
	for name, table := range source.words {
		l.words[name] = p.words(table)
	}
	return &l
}

// Letters of pseudo-languages. Vowels are doubled, which makes English about
// 40 % longer.
var (
	accented = strings.NewReplacer(
		"a", "áá", "e", "éé", "i", "íí", "o", "óó", "u", "úú", "y", "ýý", "A", "Áá", "E", "Éé", "I", "Íí", "O", "Óó", "U", "Úú", "Y", "Ýý",
		"b", "ƀ", "c", "ç", "d", "đ", "g", "ĝ", "h", "ĥ", "j", "ĵ", "k", "ķ", "l", "ļ", "n", "ñ", "r", "ŕ", "s", "š", "t", "ţ", "w", "ŵ", "z", "ž",
		"C", "Ç", "D", "Đ", "G", "Ĝ", "H", "Ĥ", "J", "Ĵ", "K", "Ķ", "L", "Ļ", "N", "Ñ", "R", "Ŕ", "S", "Š", "T", "Ţ", "W", "Ŵ", "Z", "Ž")
	mirrored = mirror("abcdefghijklmnopqrstuvwxyz", "ابچدهفگحيجكلمنوپقرستعڤؤخيز", "aeiouy")
)

// mirror replaces letters, small or big, by those of another alphabet, and
// doubles some.
func mirror(from, to, doubled string) *strings.Replacer {
	var pairs []string
	letters := []rune(to)
	for i, c := range from {
		letter := string(letters[i])
		if strings.ContainsRune(doubled, c) {
			letter += letter
		}
		pairs = append(pairs, string(c), letter, string(unicode.ToUpper(c)), letter)
	}
	return strings.NewReplacer(append(pairs, "?", "؟", ",", "،")...)
}

type pseudo struct{ letters *strings.Replacer }

func (p pseudo) bracketed(text string) string { return "[" + p.letters.Replace(text) + "]" }

func (p pseudo) template(t template) template {
	out := template{{text: "["}}
	for _, s := range t {
		s.text = p.letters.Replace(s.text)
		out = append(out, s)
	}
	return append(out, segment{text: "]"})
}

func (p pseudo) ready(m *ready) *ready {
	out := &ready{}
	if m.word != "" {
		out.word = p.bracketed(m.word)
	}
	if m.text != nil {
		out.text = p.template(m.text)
	}
	if m.plural != nil {
		out.plural = &[other + 1]template{}
		for c, t := range m.plural {
			out.plural[c] = p.template(t)
		}
	}
	if m.byGender != nil {
		out.byGender = map[string]*ready{}
		for g, form := range m.byGender {
			out.byGender[g] = p.ready(form)
		}
	}
	return out
}

func (p pseudo) thing(t *thing) *thing {
	out := &thing{gender: t.gender, counts: map[string]*counted{}, asks: p.texts(t.asks), blanks: map[string]around{}}
	for form, a := range t.blanks {
		out.blanks[form] = p.around(a)
	}
	for form, c := range t.counts {
		d := &counted{}
		for i, a := range c.forms {
			d.forms[i] = p.around(a)
		}
		for _, table := range c.words {
			d.words = append(d.words, p.words(table))
		}
		out.counts[form] = d
	}
	return out
}

func (p pseudo) around(a around) around {
	a.before, a.after = p.letters.Replace(a.before), p.letters.Replace(a.after)
	return a
}

func (p pseudo) texts(in map[string]string) map[string]string {
	out := make(map[string]string, len(in))
	for key, text := range in {
		out[key] = p.letters.Replace(text)
	}
	return out
}

func (p pseudo) words(in numberWords) numberWords {
	out := make(numberWords, len(in))
	for n, word := range in {
		out[n] = p.letters.Replace(word)
	}
	return out
}
