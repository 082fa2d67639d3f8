package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// What "language check" rejects, a build rejects in the same words, and it writes
// nothing: each slip that a translator's evening met.
func TestOneGate(t *testing.T) {
	slips := []struct{ name, tag, old, new, want string }{
		{"left in English", "es", `"Ir al contenido"`, `"Skip to the main part"`, `page.skip is still English`},
		{"a story left in English", "es", `"Hacía muchísimo frío, y la capitana preparaba chocolate caliente para cada pasajero."`, `"It was a cold day, so the captain made hot cocoa for every passenger."`, `event.harbour.board.open is still English`},
		{"another script", "ru", `other = "Что дальше?"`, `other = "Чтo дальше?"`, `"Чтo" has letters of another script`},
		{"a space at the end", "es", `al contenido"`, `al contenido "`, `page.skip begins or ends with a space`},
		{"two spaces", "es", `al contenido"`, `al  contenido"`, `page.skip has two spaces side by side`},
		{"no end mark", "es", `escuela. Gracias."`, `escuela. Gracias"`, `page.draft ends without '.'`},
		{"a letter as markup", "es", `al contenido"`, `al&nbsp;contenido"`, `page.skip: &nbsp; would stand on the page as it is`},
		{"forms of a message without a number", "ru", `other = "Что дальше?"`, `one = "Что?", few = "Что?", many = "Что?"`, `page.more.title has no number, so it has one text and no form "one"`},
		{"a place left out", "es", `other = "Semana del {{.Day}} de {{.Month}} de {{.Year}}"`, `other = "Semana del {{.Day}} de {{.Month}}"`, `page.week: the place {{.Year}} is missing`},
		{"a place misspelled", "es", `{{.Day}} de {{.Month}} de`, `{{.Day}} de {{.Mont}} de`, `page.week has no place {{.Mont}}`},
		{"few and many exchanged", "ru", `few = "{{.N}} письма", many = "{{.N}} писем"`, `few = "{{.N}} писем", many = "{{.N}} письма"`, `thing.letter.count: the forms few and many look exchanged`},
		{"a question mark of another script", "ar", `هل وجدتم خطأ؟`, `هل وجدتم خطأ?`, `page.draft has the mark "?" of another script`},
		{"English but for a letter", "es", `"Ir al contenido"`, `"Skip to the máin part"`, `page.skip is the English but for a letter or two`},
		{"copied from the opposite", "es", `"Buscamos un número mayor."`, `"Buscamos un número menor."`, `reply.too-big reads like reply.too-small, which says the opposite`},
		{"a number word twice", "es", `2 = "dos"`, `2 = "uno"`, `words.2 is "uno", the word of 1`},
		{"giver and taker exchanged", "es", `Después, {{.Who}} le da {{.Gap}} a {{.With}}.`, `Después, {{.With}} le da {{.Gap}} a {{.Who}}.`, `own.frame.then-gives: {{.Who}} and {{.With}} stand the other way round`},
		{"digits of another script", "ar", `دون إنترنت أيضًا.`, `دون إنترنت ٣ أيضًا.`, `page.private has the digit ٣`},
		{"a quotation that is not closed", "es", `“¡Sopa para todos!”, gritaba`, `“¡Sopa para todos!, gritaba`, `: a quotation is not opened or not closed`},
		{"one word left in English", "ru", `other = "Языки"`, `other = "Languages"`, `page.languages: "Languages" has letters of another script`},
		{"curly quotes", "es", `"La gente sube al ferry y baja de él."`, `“La gente sube al ferry y baja de él.”`, `"“" is a curly quote`},
	}
	for _, slip := range slips {
		t.Run(slip.name, func(t *testing.T) {
			folder := schoolWith(t, slip.tag)
			edit(t, folder, slip.tag, slip.old, slip.new)
			addToSite(t, folder, slip.tag)
			toldByBoth(t, folder, slip.tag, slip.want)
		})
	}
	t.Run("a file of another name", func(t *testing.T) {
		folder := schoolWith(t, "es")
		locale := func(tag string) string { return filepath.Join(folder, "locales", tag+".toml") }
		if err := os.Rename(locale("es"), locale("spa")); err != nil {
			t.Fatal(err)
		}
		addToSite(t, folder, "spa")
		toldByBoth(t, folder, "spa", `the usual tag for "spa" is "es"`)
	})
	t.Run("a byte order mark", func(t *testing.T) {
		folder := schoolWith(t, "es")
		edit(t, folder, "es", "#", "\ufeff#")
		addToSite(t, folder, "es")
		said(t, exitFine, "language", "check", "es", folder)
		said(t, exitFine, "build", folder)
	})
}

// addToSite makes pages of a language.
func addToSite(t *testing.T, folder, tag string) {
	t.Helper()
	path := filepath.Join(folder, "site.toml")
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(strings.Replace(string(data), `["en"]`, `["en", "`+tag+`"]`, 1)), 0o644); err != nil {
		t.Fatal(err)
	}
}

// toldByBoth wants the same first words of check and of build, and no pages.
func toldByBoth(t *testing.T, folder, tag, want string) {
	t.Helper()
	var told []string
	for _, args := range [][]string{{"language", "check", tag, folder}, {"build", folder}, {"check", folder}} {
		got := said(t, exitProblems, args...)
		line := regexp.MustCompile(`(?m)^.*` + regexp.QuoteMeta(want) + `.*\n  hint: .*`).FindString(got)
		if line == "" {
			t.Fatalf("%v: want %q, got %s", args, want, got)
		}
		told = append(told, line)
	}
	if told[0] != told[1] || told[0] != told[2] {
		t.Errorf("not in the same words:\n%s", strings.Join(told, "\n"))
	}
	if _, err := os.Stat(filepath.Join(folder, "public")); err == nil {
		t.Error("pages were written")
	}
}
