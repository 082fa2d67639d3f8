package i18n

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
)

// askedForm is a place that asks for a form: {{.Start.accusative}}.
type askedForm struct {
	by          *Message
	place, form string
	line        int
}

// stem is what forms are forms of: the names of characters are {"character",
// "name"}; the key is empty for blocks as a whole.
type stem struct{ family, key string }

// form is the id of a form of a message; not ok when the stem is not its own.
func (s stem) form(m *Message, form string) (id string, ok bool) {
	switch {
	case s.family != m.Family:
	case s.key == "" && m.Block != "":
		return m.Block + "." + form, true
	case s.key == m.Key && People(m.Family):
		return m.Block + "." + form, true
	case s.key == m.Key:
		return m.ID + "-" + form, true
	}
	return "", false
}

// checkForms proves that every form that a sentence asks for is there,
// whichever thing or person will stand in its place, and that every form that
// is there is asked for.
func (b *builder) checkForms() {
	asked := map[string]bool{} // ids of forms
	type need struct {
		kind  PlaceKind
		about string
		form  string
	}
	done := map[need]bool{}
	for _, a := range b.asked {
		n := need{KindOf(a.place), a.by.about(), a.form}
		if done[n] || b.full() {
			continue
		}
		done[n] = true
		for _, stems := range b.stemsOf(a) {
			b.ask(a, stems, asked)
		}
	}
	for w := range b.wanted {
		asked[w.id()] = true
	}
	b.unasked(asked)
}

// stemsOf are the stems of which all must have the form that a place asks for. In
// each group one of them must have it at all.
func (b *builder) stemsOf(a askedForm) [][]stem {
	if KindOf(a.place) == PlacePerson {
		return [][]stem{{{a.by.about(), "name"}}}
	}
	// Any message may stand there: those that have the form somewhere must have
	// it everywhere.
	var stems [][]stem
	for _, m := range b.file.Messages {
		s := stem{m.Family, strings.TrimSuffix(m.Key, "-"+a.form)}
		if m.Key == a.form {
			s.key = ""
		}
		if s.key != m.Key && !People(m.Family) && !slices.ContainsFunc(stems, func(have []stem) bool { return have[0] == s }) {
			stems = append(stems, []stem{s})
		}
	}
	if len(stems) == 0 {
		b.problem(a.line, fmt.Sprintf("%s asks for {{.%s.%s}}, and no message has the form %s", a.by.ID, a.place, a.form, a.form), "write {{."+a.place+"}}, or add the form to every message that may stand there")
	}
	return stems
}

// missingForm is a form that a message lacks.
type missingForm struct {
	beside *Message
	id     string
}

// ask requires a form of every message of the stems.
func (b *builder) ask(a askedForm, stems []stem, asked map[string]bool) {
	var missing []missingForm
	found := false
	for _, m := range b.file.Messages {
		for _, s := range stems {
			id, ok := s.form(m, a.form)
			if !ok {
				continue
			}
			if b.file.byID[id] != nil {
				found = true
			} else if !asked[id] {
				missing = append(missing, missingForm{m, id})
			}
			asked[id] = true
		}
	}
	if !found && len(missing) > 0 {
		b.newForm(a, missing, b.formsOfStem(stems[0]))
		return
	}
	for _, f := range missing {
		b.missing(f.id, f.beside.Block, f.beside.Line, fmt.Sprintf("%s is missing; %s asks for it in line %d", f.id, a.by.ID, a.line), "add it here, or say the sentence without the form")
	}
}

// newForm tells of a form that nothing has: a slip in the name of another one, or the
// first sentence that asks for it. That keeps back no more than the pages that say it.
func (b *builder) newForm(a askedForm, missing []missingForm, others []string) {
	first := missing[0]
	text := fmt.Sprintf("%s asks for {{.%s.%s}}, and nothing has %q", a.by.ID, a.place, a.form, strings.TrimPrefix(first.id, first.beside.Block+"."))
	hint := fmt.Sprintf("add %s and the like, %d in all, or ask for a form that is there", first.id, len(missing))
	if diag.Nearest(a.form, others) != "" {
		b.problem(a.line, text, diag.Suggest(a.form, others, hint))
		return
	}
	b.missing(first.id, "", a.line, text, hint)
}

// formsOfStem lists the forms that messages of a stem have.
func (b *builder) formsOfStem(s stem) []string {
	var forms []string
	for _, m := range b.file.Messages {
		form, ok := strings.CutPrefix(m.Key, s.key+"-")
		if People(s.family) {
			form, ok = m.Key, m.Key != "name" && m.Key != "gender"
		}
		if ok && m.Family == s.family && !slices.Contains(forms, form) {
			forms = append(forms, form)
		}
	}
	return forms
}

// unasked finds forms that no sentence asks for: ahead of their story, or a slip in a
// name. While texts are missing nobody knows which forms they will ask for.
func (b *builder) unasked(asked map[string]bool) {
	if len(b.proof.Missing) > 0 {
		return
	}
	var forms []string
	for _, a := range b.asked {
		if !slices.Contains(forms, a.form) {
			forms = append(forms, a.form)
		}
	}
	for w := range b.wanted {
		if !slices.Contains(forms, w.form) {
			forms = append(forms, w.form)
		}
	}
	slices.Sort(forms)
	for _, m := range b.file.Messages {
		if asked[m.ID] || m.gone || m.Gender != "" || m.Key == "gender" || m.English.ID == m.ID || !b.source.mayForm(m) || b.full() {
			continue
		}
		_, form := formOf(m.Key)
		if form == "" {
			form = m.Key
		}
		b.unused(m.Line, "no sentence asks for the form "+m.ID, func() string {
			return diag.Suggest(form, forms, "leave it for a story to come, or take it out")
		})
	}
}

// checkGenders proves that a sentence with gender forms has one for everybody
// it may be about.
func (b *builder) checkGenders() {
	needed := map[string][]string{} // by family of people
	checked := map[string]bool{}    // sentences
	for _, m := range b.file.Messages {
		id, about := m.sentence(), m.about()
		if m.Gender == "" || about == "" || checked[id] || b.full() {
			continue
		}
		checked[id] = true
		if needed[about] == nil {
			needed[about] = b.gendersOf(about, m.ID)
		}
		for _, g := range needed[about] {
			if b.lang.messages[id].byGender[g] == nil {
				b.missing(id+"."+g, "", m.Line, fmt.Sprintf("%s has no %s form", id, g), fmt.Sprintf("write %s.%s", id, g))
			}
		}
	}
}

// gendersOf lists the genders of a family of people, and asks for those that
// are missing now that a sentence needs them.
func (b *builder) gendersOf(family, asking string) []string {
	needed := []string{}
	for _, m := range b.file.Messages {
		if m.Family != family || m.Key != "name" {
			continue
		}
		stated := b.file.byID[m.Block+".gender"]
		switch {
		case stated == nil || stated.Other == "":
			b.missing(m.Block+".gender", m.Block, m.Line, fmt.Sprintf("%s has no gender, and %s needs one", m.Block, asking), `write gender = "feminine" or another gender beside the name`)
		case slices.Contains(Genders, stated.Other) && !slices.Contains(needed, stated.Other):
			needed = append(needed, stated.Other)
		}
	}
	return needed
}
