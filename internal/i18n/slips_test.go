package i18n

import (
	"strings"
	"testing"
)

// Slips of the pen and errors of meaning, each planted into a small file: what a careful
// reader marks, and what another text of the file says otherwise.
func TestSlips(t *testing.T) {
	tests := []struct{ name, tag, old, new, want string }{ // want is empty for what may stand
		{"two spaces", "es", `Aquí puede`, `Aquí  puede`, `help.way has two spaces side by side`},
		{"space at the start", "es", `"Idioma"`, `" Idioma"`, `page.language begins or ends with a space`},
		{"space at the end", "es", `"Idioma"`, `"Idioma "`, `page.language begins or ends with a space`},
		{"space that no line breaks at", "es", `"Idioma"`, `"Idioma\u00A0"`, `page.language begins or ends with a space`},
		{"two spaces in a story", "es", `gritaba el`, `gritaba  el`, `event.kitchen.soup.open has two spaces side by side`},
		{"a letter as markup writes it", "es", `"Idioma"`, `"Idi&oacute;ma"`, `page.language: &oacute; would stand on the page as it is`},
		{"and", "es", `"Idioma"`, `"Idioma & todo"`, ``},

		{"as long as a message may be", "es", `"Idioma"`, `"` + strings.Repeat("ñ", 600) + `"`, ``},
		{"one letter too long", "es", `"Idioma"`, `"` + strings.Repeat("ñ", 601) + `"`, `page.language has 601 characters; a message has at most 600`},

		{"mark of another script", "ar", `الأعلى؟`, `الأعلى?`, `event.kitchen.soup.ask-out has the mark "?" of another script`},
		{"letters of another script", "ar", `"في الميناء"`, `"في port الميناء"`, `setting.harbour.at: "port" has letters of another script`},
		{"one letter of another script", "ru", `"гавань"`, `"гaвань"`, `setting.harbour.name: "гaвань" has letters of another script`},
		{"a word of the English", "ru", `Здесь можно`, `Here можно`, `help.way: "Here" has letters of another script`},
		{"a name that was left in English", "ru", `"Язык"`, `"Language"`, `page.language: "Language" has letters of another script`},
		{"a name of the English among other words", "ru", `"Язык"`, `"Язык Language"`, ``},
		{"a letter of a script that few know", "ru", `"Язык"`, `"Язык 𐀀"`, ``}, // U+10000, the first beyond the first plane
		{"letters of another script in a story", "ru", `варит суп, и`, `варит soup, и`, `event.kitchen.soup.idea: "soup" has letters of another script`},
		{"digit of another script", "ar", `"اللغة"`, `"اللغة ٣"`, `page.language has the digit ٣, and the pages write 0123456789`},

		{"no full stop", "es", `puede ayudar {{.Way}}.`, `puede ayudar {{.Way}}`, `help.way ends without '.', where the English ends with '.'`},
		{"three points", "es", `puede ayudar {{.Way}}.`, `puede ayudar {{.Way}}…`, ``},
		{"a statement for a question", "es", `¿Cuántos platos de sopa se comieron los vecinos de arriba?`, `Los vecinos comieron.`, `event.kitchen.soup.ask-out ends without '?', where the English ends with '?'`},
		{"a question for a statement of a story", "es", `gritaba el abuelo de piso en piso.`, `¿gritaba el abuelo?`, ``},
		{"a question that is not opened", "es", `¿Cuántos platos de sopa se`, `Cuántos platos de sopa se`, `event.kitchen.soup.ask-out: a question or exclamation is not opened or not closed`},
		{"an exclamation that is not closed", "es", `¡Sopa para todos!`, `¡Sopa para todos`, `event.kitchen.soup.open: a question or exclamation is not opened or not closed`},

		{"a quotation that is not closed", "ru", `хватит!»`, `хватит!`, `event.kitchen.soup.open: a quotation is not opened or not closed`},
		{"a quotation in plain marks", "ru", `«Суп готов, всем хватит!»`, `\"Суп готов, всем хватит!\"`, ``},
		{"a plain mark that is alone", "ru", `«Суп готов, всем хватит!»`, `\"Суп готов, всем хватит!`, `event.kitchen.soup.open: a quotation is not opened or not closed`},
		{"a mark of other languages", "es", `“¡Sopa para todos!”`, `„¡Sopa para todos!”`, `event.kitchen.soup.open has the quotation mark „, which es does not use`},

		{"still English", "es", `"En casa, semana del {{.Week}}"`, `"At home, week of {{.Week}}"`, `page.title is still English`},
		{"a name that is English too", "es", `"Idioma"`, `"Language"`, ``},
		{"English but for a letter", "es", `"Es de mañana en el puerto."`, `"It is morning at the harbor."`, `setting.harbour.scene is the English but for a letter or two`},
		{"still English in a story", "es", `Después de eso, en la olla había sopa para {{.Result.bowl}}.`, `After that, there was soup for {{.Result}} in the pot.`, ``},
		{"the English of a story", "es", `“¡Sopa para todos!”, gritaba el abuelo de piso en piso.`, `\"Soup for everyone!\" called grandfather, floor by floor.`, `event.kitchen.soup.open is still English`},
		{"the English of a story but for a letter", "es", `“¡Sopa para todos!”, gritaba el abuelo de piso en piso.`, `\"Soup for everyone!\" called grandfathers, floor by floor.`, `event.kitchen.soup.open is the English but for a letter or two`},

		// Words of numbers: Unicode CLDR 48.2 RBNF, spellout-cardinal-masculine.
		{"the word of another number", "es", `2 = "dos"`, `2 = "tres"`, `words.2 is "tres", the word of 3`},
		{"one word for two numbers", "es", `31 = "treinta y un"`, `31 = "veintiún"`, `words.31 is "veintiún", and so is words.21`},
		{"a table of number words that nothing asks for", "es", `[words.feminine]`, `[words.femenine]`, `number words for "femenine": no sentence asks for that form`},
		{"while a text is missing, nobody knows", "es", "31 = \"treinta y una\"\n\n[page]\ntitle = \"En casa, semana del {{.Week}}\"\n", "\n[words.femenine]\n1 = \"una\"\n\n[page]\n", `page.title is missing`},
		{"a table of a form", "es", `[words.feminine]`, `[words.bowl]`, ``},
		{"a table of a gender and a form", "es", `[words.feminine]`, `[words.feminine-bowl]`, ``},
		{"a table of a gender and no form", "es", `[words.feminine]`, `[words.feminine-bow]`, `number words for "feminine-bow": no sentence asks for that form`},
		{"a table in a table", "es", `[words.feminine]`, `[words.feminine.bowl]`, `words.feminine.bowl.1 is nested too deeply`},
		{"a table where no event is told", "vi", `[page]`, "[words.tall]\n1 = \"một\"\n[page]", ``},
		{"few and many exchanged", "ru", `few = "{{.N}} этажа", many = "{{.N}} этажей"`, `few = "{{.N}} этажей", many = "{{.N}} этажа"`, `thing.floor.count: the forms few and many look exchanged`},
		{"few and many of a case exchanged", "ru", `few = "{{.N}} тарелки", many = "{{.N}} тарелок"`, `few = "{{.N}} тарелок", many = "{{.N}} тарелки"`, `thing.soup-bowl.count-plate: the forms few and many look exchanged`},
		{"few and many alike", "ru", `few = "{{.N}} этажа", many = "{{.N}} этажей"`, `few = "{{.N}} этажей", many = "{{.N}} этажей"`, ``},
		{"one and other exchanged", "es", `one = "{{.N}} piso", other = "{{.N}} pisos"`, `one = "{{.N}} pisos", other = "{{.N}} piso"`, `thing.floor.count: the forms one and other look exchanged`},
		{"one and other alike", "es", `one = "{{.N}} piso", other = "{{.N}} pisos"`, `one = "{{.N}} pisos", other = "{{.N}} pisos"`, ``},
		{"the sentence of the opposite", "es", `Los vecinos de abajo se comieron {{.Later.more-bowl}}.`, `Entonces el abuelo picó zanahorias y preparó {{.Later.more-bowl}}.`, `event.kitchen.soup.later-out reads like later-in, which says the opposite`},
	}
	for _, test := range tests {
		got, _, _ := strings.Cut(problemsOf(t, test.tag, test.old, test.new), "\n")
		if _, text, told := strings.Cut(got, ": "); test.want == "" && told || test.want != "" && !strings.HasPrefix(text, test.want) {
			t.Errorf("%s: want %q, got %q", test.name, test.want, got)
		}
	}
}

// A mark that few languages have may stand in one of them, and in a file that has it
// again and again: five times.
func TestStrangeQuotes(t *testing.T) {
	for _, row := range []struct {
		tag   string
		times int // that the file has it
		want  bool
	}{{"es", 0, true}, {"es", 4, true}, {"es", 5, false}, {"de", 0, false}, {"de-CH", 0, false}} {
		f := &File{Tag: row.tag, Text: strings.Repeat("„a“ ", row.times)}
		if got := strings.Contains(strangeQuotes(f), "„"); got != row.want {
			t.Errorf("%s with „ %d times: strange %v, want %v", row.tag, row.times, got, row.want)
		}
	}
}
