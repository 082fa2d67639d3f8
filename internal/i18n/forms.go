package i18n

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/diag"
)

// stem is a family with the last key of its plain messages: the counts of
// things are {"thing", "count"}.
type stem struct{ family, key string }

// formIndex finds messages by what they are forms of.
type formIndex struct {
	plain map[stem][]string // ids by stem, in the order of the file
	forms map[string][]stem // which stems have a form; key "" for "<id>.<form>"
	asked map[string]bool   // ids that some sentence asks for
}

func (b *builder) newFormIndex() *formIndex {
	x := &formIndex{plain: map[stem][]string{}, forms: map[string][]stem{}, asked: map[string]bool{}}
	for _, id := range b.file.order {
		in, key := family(id), lastKey(id)
		x.plain[stem{in, key}] = append(x.plain[stem{in, key}], id)
		x.addForm(key, stem{in, ""})
		for i := range key {
			if key[i] == '-' {
				x.addForm(key[i+1:], stem{in, key[:i]})
			}
		}
	}
	return x
}

func (x *formIndex) addForm(form string, of stem) {
	if !slices.Contains(x.forms[form], of) {
		x.forms[form] = append(x.forms[form], of)
	}
}

// checkForms proves that every form that a sentence asks for is there,
// whichever thing or person will stand in its place, and that every form that
// is there is asked for.
func (b *builder) checkForms() {
	x := b.newFormIndex()
	for _, a := range b.asked {
		if b.full() {
			return
		}
		switch {
		case isPerson(a.id, a.place):
			b.ask(a, x, a.form, stem{b.source.about(a.id), "name"})
		case a.place == askPlace:
			b.ask(a, x, "ask-"+a.form, stem{"thing", "ask"})
		case a.place == extraPlace:
			b.ask(a, x, "count-"+a.form, stem{"thing", "count"}, stem{"measure", "count"})
		case slices.Contains(quantityPlaces, a.place):
			b.ask(a, x, "count-"+a.form, stem{"thing", "count"})
			if lastKey(a.id) == "answer" { // also said with a line to write on
				b.ask(a, x, "blank-"+a.form, stem{"thing", "blank"})
			}
		default:
			b.askMessages(a, x)
		}
	}
	b.unasked(x)
	b.checkGenders()
}

// ask requires the key beside every message of the stems.
func (b *builder) ask(a askedForm, x *formIndex, key string, of ...stem) {
	var lacking []string
	found := false
	for _, s := range of {
		for _, id := range x.plain[s] {
			with := strings.TrimSuffix(id, s.key) + key
			if b.file.messages[with] != nil {
				x.asked[with], found = true, true
			} else {
				lacking = append(lacking, id)
			}
		}
	}
	if !found && len(lacking) > 0 {
		b.problem(a.line, fmt.Sprintf("%s asks for {{.%s.%s}}, and nothing has %q", a.id, a.place, a.form, key), nearForm(a.form, strings.TrimSuffix(lacking[0], lastKey(lacking[0]))+key, len(lacking), b.formsBeside(x, of)))
		return
	}
	for _, id := range lacking {
		b.lacks(a, x, id, strings.TrimSuffix(id, lastKey(id))+key)
	}
}

// lacks reports a missing form once, however many sentences ask for it.
func (b *builder) lacks(a askedForm, x *formIndex, beside, form string) {
	if !x.asked[form] {
		b.problem(b.file.messages[beside].line, fmt.Sprintf("%s is missing; %s asks for it in line %d", form, a.id, a.line), "add it here, or say the sentence without the form")
	}
	x.asked[form] = true
}

// askMessages holds a form against the messages that may stand in the place:
// those of a family in which some have the form, as "<id>.<form>" or
// "<id>-<form>".
func (b *builder) askMessages(a askedForm, x *formIndex) {
	found := false
	for _, of := range x.forms[a.form] {
		switch {
		case slices.Contains(peopleFamilies, of.family):
		case of.key != "":
			found = true
			b.ask(a, x, of.key+"-"+a.form, of)
		default:
			found = true
			b.askBlocks(a, x, of.family)
		}
	}
	if !found {
		b.problem(a.line, fmt.Sprintf("%s asks for {{.%s.%s}}, and no message has the form %s", a.id, a.place, a.form, a.form), "write {{."+a.place+"}}, or add the form to every message that may stand there")
	}
}

// askBlocks requires "<block>.<form>" in every optional block of a family.
func (b *builder) askBlocks(a askedForm, x *formIndex, in string) {
	for _, id := range x.plain[stem{in, a.form}] {
		x.asked[id] = true
	}
	seen := map[string]bool{}
	for _, id := range b.file.order {
		of := block(id)
		if family(id) != in || of == "" || seen[of] {
			continue
		}
		seen[of] = true
		if b.file.messages[of+"."+a.form] == nil {
			b.lacks(a, x, id, of+"."+a.form)
		}
	}
}

// formsBeside lists the forms that stand beside the plain messages.
func (b *builder) formsBeside(x *formIndex, of []stem) []string {
	var forms []string
	for form, stems := range x.forms {
		for _, s := range of {
			own := stem{s.family, s.key}
			if s.key == "name" {
				own.key = ""
			}
			if slices.Contains(stems, own) && form != "name" && form != "gender" {
				forms = append(forms, form)
			}
		}
	}
	slices.Sort(forms)
	return slices.Compact(forms)
}

// unasked finds forms that no sentence asks for: most often a slip in a name.
func (b *builder) unasked(x *formIndex) {
	var asked []string
	for _, a := range b.asked {
		asked = append(asked, a.form)
	}
	for _, id := range b.file.order {
		if b.full() {
			return
		}
		_, gender := cutGender(id)
		if x.asked[id] || gender != "" || b.source.file.messages[id] != nil || lastKey(id) == "gender" || !b.source.formID(id) {
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

// checkGenders proves that a sentence with gender forms has one for everybody
// it may be about.
func (b *builder) checkGenders() {
	needed := map[string][]string{} // by family of people
	for _, id := range b.file.order {
		base, gender := cutGender(id)
		about := b.source.about(base)
		if gender == "" || about == "" || b.full() {
			continue
		}
		if needed[about] == nil {
			needed[about] = b.gendersOf(about, id)
		}
		if firstGender(b.file, base) != id {
			continue
		}
		for _, g := range needed[about] {
			if b.lang.messages[base].byGender[g] == nil {
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

// gendersOf lists the genders of a family of people, and asks for those that
// are missing now that a sentence needs them.
func (b *builder) gendersOf(about, asking string) []string {
	needed := []string{}
	for _, id := range b.file.order {
		if family(id) != about || lastKey(id) != "name" {
			continue
		}
		stated := b.file.messages[block(id)+".gender"]
		switch {
		case stated == nil || stated.Other == "":
			b.problem(b.file.messages[id].line, fmt.Sprintf("%s has no gender, and %s needs one", block(id), asking), `write gender = "feminine" or another gender beside the name`)
		case slices.Contains(genders, stated.Other) && !slices.Contains(needed, stated.Other):
			needed = append(needed, stated.Other)
		}
	}
	return needed
}
