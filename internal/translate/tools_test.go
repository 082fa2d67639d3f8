package translate

import (
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/i18n"
)

// fixtures are small languages; all of them are sound.
var fixtures = os.DirFS("../i18n/testdata/locales")

// fixture reads a file of the fixtures with some text in it replaced.
func fixture(t testing.TB, tag, old, new string) []byte {
	t.Helper()
	data, err := os.ReadFile("../i18n/testdata/locales/" + tag + ".toml")
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(data), old) {
		t.Fatalf("%s.toml has no %q to replace", tag, old)
	}
	return []byte(strings.Replace(string(data), old, new, 1))
}

// An empty file for a translator is a language file whose every fault is a
// text that is still to be written; filled, it loads.
func TestNewFile(t *testing.T) {
	folder := fixtures
	tests := []struct {
		tag, letter string
		want        []string
	}{
		{"uk", "ж", []string{"# Ukrainian: the words", `name = "українська" # please confirm`, `direction = "ltr" # please confirm`, `few = "" # 2, 3, 4, 22, 23, 24 ...`, `many = "" # 0, 5, 6, 7, 8, 9 ...`,
			"# Top of the page; Week is the date of the week.\n# English: At home, week of {{.Week}}\n[page.title]\nhash = "}},
		{"fa", "ب", []string{`direction = "rtl" # please confirm`, `digits = "arabext" # please confirm`}},
		{"ar", "ب", []string{`digits = "latn" # please confirm`, `two = "" # 2` + "\n", `other = "" # 100, 101, 102, 200, 201, 202 ...`}},
		{"ne", "क", []string{`digits = "deva" # please confirm`}},
		{"vi", "ê", []string{"[thing.floor.count]\nhash = \"6640e25536\"\nother = \"\" # 0, 1, 2",
			"# Grandfather cooks soup and calls the neighbors floor by floor to eat.\n[event.kitchen.soup]\nsource = \"", "# English: How many bowls of soup could he still fill?\nask-end = \"\"\n"}},
		{"qu", "a", []string{`plurals = "other" # please confirm`}},
	}
	for _, test := range tests {
		t.Run(test.tag, func(t *testing.T) {
			data, err := NewFile(test.tag, folder)
			if err != nil {
				t.Fatal(err)
			}
			for _, want := range test.want {
				if !strings.Contains(string(data), want) {
					t.Errorf("want %q in\n%s", want, data)
				}
			}
			load := func(data string) string {
				return toDo(t, test.tag, folder, fstest.MapFS{test.tag + ".toml": {Data: []byte(data)}}).Error()
			}
			for _, line := range strings.Split(load(string(data)), "\n") {
				if !strings.HasSuffix(line, "has no text") && !strings.Contains(line, "has no form for the plural category") && !strings.HasPrefix(line, "  hint: ") {
					t.Errorf("the empty file: %s", line)
				}
			}
			if got := load(fill(test.letter, string(data))); got != "" {
				t.Errorf("the filled file: want no problems, got %s", got)
			}
		})
	}
	if _, err := NewFile("xx", folder); err == nil {
		t.Error("NewFile(xx): want an error")
	}
}

// anyForm is a place that asks for a form, or a word.
var (
	anyForm = regexp.MustCompile(`(\{\{\.\w+)\.[a-z-]+\}\}`)
	anyWord = regexp.MustCompile(`\{\{[^}]*\}\}|[a-zA-Z]+`)
)

// fill writes something into every empty text, in a letter of the script and with the
// places of the English.
func fill(letter, file string) string {
	filler := func(english string) string {
		text := anyWord.ReplaceAllStringFunc(anyForm.ReplaceAllString(english, "$1}}"), func(word string) string {
			if word[0] == '{' {
				return word
			}
			return strings.Repeat(letter, len(word)) // two texts stay two
		})
		if letter == "ب" {
			text = strings.NewReplacer("?", "؟", ",", "،").Replace(text)
		}
		return text
	}
	var english, out []string
	for _, line := range strings.Split(file, "\n") {
		if text, ok := strings.CutPrefix(line, "# English"); ok {
			_, text, _ = strings.Cut(text, ": ")
			english = append(english, text)
		}
		if head, comment, ok := strings.Cut(line, ` = ""`); ok && !strings.HasPrefix(line, "#") {
			line = head + " = " + strconv.Quote(filler(english[len(english)-1])) + comment
		}
		out = append(out, line)
	}
	return strings.Join(out, "\n")
}

func TestStatus(t *testing.T) {
	folder := fstest.MapFS{
		"en.toml": {Data: fixture(t, "en", "", "")}, "ar.toml": {Data: fixture(t, "ar", "", "")},
		"es.toml": {Data: fixture(t, "es", `language = "Idioma"`, `language = { hash = "0000000000", other = "" }`)},
		"ru.toml": {Data: fixture(t, "ru", "[event.kitchen.soup]", "[event.kitchen.soup]\nsource = \"0000000000\"")},
		"ht.toml": {Data: fixture(t, "ht", "", "")},
		"vi.toml": {Data: []byte("not TOML")},
	}
	status, problems := StatusOf(folder)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	want := []struct {
		tag                             string
		total, missing, stale, problems int
		left                            string
	}{
		{"ar", 38, 0, 0, 0, ""},
		{"en", 38, 0, 0, 0, ""},
		{"es", 38, 1, 1, 0, ""},
		{"ht", 14, 0, 0, 0, "setting.harbour character.fox character.heron event.kitchen.soup"},
		{"ru", 38, 0, 19, 0, ""},
		{"vi", 0, 0, 0, 1, ""},
	}
	for i, w := range want {
		s := status[i]
		if s.Tag != w.tag || s.Total != w.total || s.Missing() != w.missing || s.Stale != w.stale || s.Problems != w.problems || strings.Join(s.LeftOut, " ") != w.left {
			t.Errorf("want %+v, got %+v", w, s)
		}
	}
}

// Status and check agree: a message is done when none of its texts is missing.
func TestStatusCountsWholeMessages(t *testing.T) {
	for _, test := range []struct{ name, tag, old, new, want string }{
		{"all written", "ru", "", "", "38 of 38"},
		{"a plural form", "ru", `few = "{{.N}} недели", `, ``, "37 of 38"},
		{"two plural forms of a message", "ru", `one = "{{.N}} неделя", few = "{{.N}} недели", `, ``, "37 of 38"},
		{"a form for a gender", "ru", `masculine = "Однажды {{.Who}} пошёл гулять."`, ``, "37 of 38"},
		{"a form of a name", "ru", `genitive = "журавля"`, ``, "38 of 39"},
		{"a gender", "ru", "gender = \"masculine\"\n", "", "38 of 39"},
		{"a sentence of an event", "es", `so-out = "`, `so-out = "" # `, "37 of 38"},
	} {
		folder := fstest.MapFS{"en.toml": {Data: fixture(t, "en", "", "")}, test.tag + ".toml": {Data: fixture(t, test.tag, test.old, test.new)}}
		draft, problems := Open(test.tag, folder)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		if got := draft.Summary(); !strings.Contains(got, test.want+" messages") || (len(draft.Missing) > 0) != (draft.Status.Missing() > 0) {
			t.Errorf("%s: want %s messages, got %q with %v", test.name, test.want, got, draft.Missing)
		}
	}
}

func TestSamples(t *testing.T) {
	c, problems := i18n.Load(nil, fixtures)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	find := func(tag, id, gender string, n int) string {
		l, _ := c.Language(tag)
		for _, s := range Samples(l) {
			if s.ID == id && s.Gender == gender && s.N == n {
				return s.Text.String()
			}
		}
		return "not in the sample"
	}
	tests := []struct {
		tag, id, gender string
		n               int
		want            string
	}{
		{"ru", "own.starter", "masculine", -1, "Однажды журавль пошёл гулять."},
		{"ru", "own.starter", "feminine", -1, "Однажды лиса пошла гулять."},
		{"ar", "thing.floor.count", "", 2, "طابقان"},
		{"ar", "thing.floor.count", "", 100, "100\u00a0طابق"},
		{"es", "thing.floor.blank", "", -1, "____\u00a0pisos"},
		{"en", "page.title", "", -1, "At home, week of (Week)"},
		{"en", "strategy.doubles.fill", "", -1, "Say the double: 8 + ? = 14."},
		{"vi", "own.has", "", -1, "Con cáo có ____."},
	}
	for _, test := range tests {
		if got := find(test.tag, test.id, test.gender, test.n); got != test.want {
			t.Errorf("%s: sample of %s: want %s, got %s", test.tag, test.id, test.want, got)
		}
	}
	for _, l := range c.Languages() {
		shown := map[string]bool{}
		for _, s := range Samples(l) {
			shown[s.ID] = true
		}
		for _, f := range l.Forms() {
			if !strings.HasPrefix(f.ID, "words.") && !strings.HasSuffix(f.ID, ".gender") && !shown[f.ID] {
				t.Errorf("%s: the sample leaves out %s", l.Tag(), f.ID)
			}
		}
	}
}
