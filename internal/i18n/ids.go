package i18n

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
)

// checkIDs finds ids that are missing or that English does not have.
func (b *builder) checkIDs() {
	for _, id := range b.file.order {
		if b.full() {
			return
		}
		if why := b.extra(id); why != nil {
			b.problem(b.file.messages[id].line, why.text, why.hint)
		}
	}
	present := b.presentBlocks()
	for name := range present {
		b.lang.blocks[name] = true
	}
	for _, id := range b.source.file.order {
		in := block(id)
		if in != "" && !present[in] || !b.source.required(id) || b.hasMessage(id) {
			continue
		}
		b.problem(b.file.lineNear(id), id+" is missing", b.source.suggestion(id))
	}
}

// presentBlocks lists the blocks of which the file has something.
func (b *builder) presentBlocks() map[string]bool {
	present := map[string]bool{}
	for _, id := range b.file.order {
		base, _ := cutGender(id)
		if in := block(base); b.source.blocks[in] {
			present[in] = true
		}
	}
	return present
}

// hasMessage reports whether the file has the message, or gender forms of it.
func (b *builder) hasMessage(id string) bool {
	return b.file.messages[id] != nil || slices.ContainsFunc(genders, func(g string) bool {
		return b.file.messages[id+"."+g] != nil
	})
}

// extra says why the file may not have an id; nil when it may.
func (b *builder) extra(id string) *fault {
	src := b.source
	switch family(id) {
	case "language":
		if key := strings.TrimPrefix(id, "language."); !slices.Contains(headerKeys, key) {
			return &fault{fmt.Sprintf("[language] has no %q", key), "write " + oneOf(key, headerKeys)}
		}
		return nil
	case "words":
		return checkWordID(id)
	}
	if src.file.messages[id] != nil {
		return nil
	}
	if base, gender := cutGender(id); gender != "" && src.file.messages[base] != nil {
		if src.about(base) != "" {
			return nil
		}
		return &fault{fmt.Sprintf("%s is not about a person, so it has no %s form", base, gender), "write one text for it"}
	}
	if src.formID(id) {
		return nil
	}
	hint := "take it out, or look the name up in en.toml"
	if near := diag.Nearest(id, src.file.order); near != "" {
		hint = "write " + near
	}
	return &fault{fmt.Sprintf("%s is not a message of en.toml", id), hint}
}

// hasText reports whether a message, or a gender form of it, has a text.
func (b *builder) hasText(id string) bool {
	for _, form := range append([]string{""}, genders...) {
		m := b.file.messages[strings.TrimSuffix(id+"."+form, ".")]
		for c := zero; m != nil && c <= other; c++ {
			if m.text(c) != "" {
				return true
			}
		}
	}
	return false
}

// checkPlaces holds the places of a text against the English message.
func (b *builder) checkPlaces(id string, line int, t template, mayDropN bool) {
	want := b.source.places(id)
	got := t.places()
	for _, name := range got {
		if !slices.Contains(want, name) {
			b.problem(line, fmt.Sprintf("%s has no place {{.%s}}", id, name), placeHint(name, want))
		}
	}
	for _, name := range want {
		dropped := family(id) == "story" && slices.Contains(storyPeople, name) || name == "N" && mayDropN
		if !dropped && !slices.Contains(got, name) {
			b.problem(line, fmt.Sprintf("%s: the place {{.%s}} is missing", id, name), fmt.Sprintf("write {{.%s}} where it belongs in the sentence", name))
		}
	}
	if n, m := b.source.gaps(id), t.count(gapPlace); m > 0 && m != n {
		b.problem(line, fmt.Sprintf("%s has {{.%s}} %d times, the English %d times", id, gapPlace, m, n), "leave as many gaps as the English")
	}
}

func placeHint(name string, want []string) string {
	if len(want) == 0 {
		return "this message has no places"
	}
	if near := diag.Nearest(name, lower(want)); near != "" {
		return "write {{." + want[slices.Index(lower(want), near)] + "}}"
	}
	return "its places are {{." + strings.Join(want, "}}, {{.") + "}}"
}

func lower(words []string) []string {
	out := make([]string, len(words))
	for i, w := range words {
		out[i] = strings.ToLower(w)
	}
	return out
}
