package i18n

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
)

// checkForms proves that every form that a sentence asks for is there,
// whichever thing or person will stand in its place, and that every form that
// is there is asked for.
func (b *builder) checkForms() {
	known := map[string]bool{}
	for _, a := range b.asked {
		switch {
		case hasPeople(a.id) && slices.Contains(personPlaces, a.place):
			b.askPeople(a, known)
		case a.place == askPlace:
			b.askThings(a, "ask", known)
		case slices.Contains(quantityPlaces, a.place):
			b.askThings(a, "count", known)
			if lastKey(a.id) == "answer" {
				b.askThings(a, "blank", known)
			}
		default:
			b.askMessages(a, known)
		}
	}
	b.unasked(known)
	b.checkGenders()
}

func (b *builder) askPeople(a askedForm, known map[string]bool) {
	b.ask(a, known, func(id string) bool {
		return slices.Contains(peopleFamilies, family(id)) && lastKey(id) == "name"
	}, "", a.form)
}

func (b *builder) askThings(a askedForm, kind string, known map[string]bool) {
	b.ask(a, known, func(id string) bool {
		return slices.Contains(countedFamilies, family(id)) && lastKey(id) == kind
	}, kind, kind+"-"+a.form)
}

// askMessages holds a form against the messages that may stand in the place:
// those of a family in which some have the form, under "<id>.<form>" or
// "<id>-<form>".
func (b *builder) askMessages(a askedForm, known map[string]bool) {
	families := map[[2]string]bool{} // family and last key of the plain message
	for _, id := range b.file.order {
		key := lastKey(id)
		if key == a.form && !slices.Contains(peopleFamilies, family(id)) {
			known[id] = true
			families[[2]string{family(id), ""}] = true
		}
		if plain, ok := strings.CutSuffix(key, "-"+a.form); ok && plain != "" {
			known[id] = true
			families[[2]string{family(id), plain}] = true
		}
	}
	if len(families) == 0 {
		b.problem(a.line, fmt.Sprintf("%s asks for {{.%s.%s}}, and no message has the form %s", a.id, a.place, a.form, a.form), "write {{."+a.place+"}}, or add the form to every message that may stand there")
		return
	}
	for of := range families {
		if plain := of[1]; plain != "" {
			b.ask(a, known, func(id string) bool { return family(id) == of[0] && lastKey(id) == plain }, plain, plain+"-"+a.form)
		}
	}
}

// ask requires the key beside every message that is chosen.
func (b *builder) ask(a askedForm, known map[string]bool, chosen func(id string) bool, plain, key string) {
	var lacking []string
	found := false
	for _, id := range b.file.order {
		if !chosen(id) {
			continue
		}
		with := strings.TrimSuffix(id, lastKey(id)) + key
		if b.file.messages[with] != nil {
			known[with] = true
			found = true
		} else {
			lacking = append(lacking, id)
		}
	}
	if !found && len(lacking) > 0 {
		b.problem(a.line, fmt.Sprintf("%s asks for {{.%s.%s}}, and nothing has %q", a.id, a.place, a.form, key), nearForm(a.form, b.formsBeside(chosen, plain)))
		return
	}
	for _, id := range lacking {
		b.problem(b.file.messages[id].line, fmt.Sprintf("%s has no %q, which %s asks for in line %d", block(id), key, a.id, a.line), fmt.Sprintf("add %s.%s", block(id), key))
	}
}

// formsBeside lists the forms that stand beside the chosen messages.
func (b *builder) formsBeside(chosen func(id string) bool, plain string) []string {
	var forms []string
	for _, id := range b.file.order {
		key := lastKey(id)
		stem := strings.TrimSuffix(id, key)
		form, isForm := strings.CutPrefix(key, plain+"-")
		if plain == "" {
			stem, form, isForm = stem+"name", key, key != "name" && key != "gender"
		} else {
			stem += plain
		}
		if isForm && b.file.messages[stem] != nil && chosen(stem) && !slices.Contains(forms, form) {
			forms = append(forms, form)
		}
	}
	return forms
}

// unasked finds forms that no sentence asks for: most often a slip in a name.
func (b *builder) unasked(known map[string]bool) {
	var asked []string
	for _, a := range b.asked {
		asked = append(asked, a.form)
	}
	for _, id := range b.file.order {
		_, gender := cutGender(id)
		if known[id] || gender != "" || b.source.file.messages[id] != nil || lastKey(id) == "gender" || !b.source.formID(id) {
			continue
		}
		_, form := formOf(lastKey(id))
		if form == "" {
			form = lastKey(id)
		}
		hint := "take it out until a sentence asks for it"
		if near := diag.Nearest(form, asked); near != "" {
			hint = "write " + strings.TrimSuffix(id, form) + near
		}
		b.problem(b.file.messages[id].line, fmt.Sprintf("no sentence asks for the form %s", id), hint)
	}
}

// checkGenders proves that a sentence with gender forms has one for every
// person of the file.
func (b *builder) checkGenders() {
	var needed []string
	for _, id := range b.file.order {
		base, gender := cutGender(id)
		m := b.lang.messages[base]
		if gender == "" || m == nil || m.byGender == nil {
			continue
		}
		if needed == nil {
			needed = b.gendersOfPeople(id)
		}
		if firstGender(b.file, base) != id {
			continue
		}
		for _, g := range needed {
			if m.byGender[g] == nil {
				b.problem(b.file.messages[id].line, fmt.Sprintf("%s has no %s form", base, g), fmt.Sprintf("write %s.%s", base, g))
			}
		}
	}
}

// firstGender is the gender form of a message that stands first in the file.
func firstGender(f *file, base string) string {
	first, line := "", 0
	for _, g := range genders {
		if m := f.messages[base+"."+g]; m != nil && (first == "" || m.line < line) {
			first, line = base+"."+g, m.line
		}
	}
	return first
}

// gendersOfPeople lists the genders of all people, and asks for those that
// are missing now that a sentence needs them.
func (b *builder) gendersOfPeople(asking string) []string {
	needed := []string{}
	for _, id := range b.file.order {
		if !slices.Contains(peopleFamilies, family(id)) || lastKey(id) != "name" {
			continue
		}
		g := b.lang.people[block(id)].gender
		if g == "" {
			b.problem(b.file.messages[id].line, fmt.Sprintf("%s has no gender, and %s needs one", block(id), asking), `write gender = "feminine" or another gender beside the name`)
		} else if !slices.Contains(needed, g) {
			needed = append(needed, g)
		}
	}
	return needed
}
