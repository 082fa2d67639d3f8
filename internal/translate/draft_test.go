package translate

import (
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
)

// A long text is pointed out, and keeps nobody from signing: some languages
// need the room.
func TestAdvice(t *testing.T) {
	folder := fstest.MapFS{"en.toml": {Data: fixture(t, "en", "", "")},
		"es.toml": {Data: fixture(t, "es", `"Di el doble: {{.Equation}}."`, `"Ahora di en voz alta cuánto es el doble de este número: {{.Equation}}."`)}}
	draft, problems := Open("es", folder)
	if len(problems) > 0 || !draft.Whole() {
		t.Fatalf("want no problems, got %v %v", problems, draft.Problems)
	}
	want := "locales/es.toml:33: strategy.doubles.fill has 57 letters, the English 17\n  hint: say it as briefly as the English, if the language can"
	if got := draft.Advice.Error(); got != want {
		t.Errorf("want\n%s\ngot\n%s", want, got)
	}
}

// From the first line on, a translator sees what is written so far.
func TestOpenShowsWhatIsWritten(t *testing.T) {
	english := fstest.MapFS{"en.toml": {Data: fixture(t, "en", "", "")}}
	empty, err := NewFile("uk", english)
	if err != nil {
		t.Fatal(err)
	}
	file := write(t, string(empty), "character.fox.name", "лисиця")
	file = strings.Replace(file, `so-end = ""`, `so-end = "«Наступний поверх!»"`, 1)
	english["uk.toml"] = &fstest.MapFile{Data: []byte(file)}
	draft, problems := Open("uk", english)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	got := map[string]Sample{}
	for _, s := range Samples(draft.Language) {
		got[s.ID] = s
	}
	if s := got["character.fox.name"]; s.Text.String() != "лисиця" || s.Fault != "" {
		t.Errorf("want лисиця, got %q, %s", s.Text, s.Fault)
	}
	if text, err := draft.Language.Try(phrase.Say("event.kitchen.soup.so-end")); err != nil || text.String() != "«Наступний поверх!»" {
		t.Errorf("want the sentence that is written, got %q, %v", text, err)
	}
	if _, err := draft.Language.Try(phrase.Say("event.kitchen.soup.so-out")); err == nil || err.Error() != "it is not written yet" {
		t.Errorf("want a sentence that is not written yet, got %v", err)
	}
	if note := draft.EventNote("event.kitchen.soup"); !strings.HasPrefix(note, "Grandfather cooks soup") {
		t.Errorf("the note of the event is %q", note)
	}
	if s := got["page.title"]; s.Fault != "it is not written yet" {
		t.Errorf("want a message that is not written yet, got %q, %q", s.Text, s.Fault)
	}
	if draft.Status.Done != 2 || len(draft.Problems) > 0 || len(draft.Missing) < 20 {
		t.Errorf("want 2 messages done, many to write and none to mend, got %d, %d and %v", draft.Status.Done, len(draft.Missing), draft.Problems)
	}
	if draft.Note("page.title") != "Top of the page; Week is the date of the week." {
		t.Errorf("the note is %q", draft.Note("page.title"))
	}
	if _, err := draft.Language.Try(phrase.Say("no.such.message")); err == nil {
		t.Error("want an error for a message that is not there")
	}
	if c, problems := i18n.Load([]string{"uk"}, english); len(problems) > 0 || c.Languages()[0].Whole() {
		t.Errorf("Load: want a language that is not whole, got %v", problems)
	}
}

// write fills one empty message of a new file.
func write(t *testing.T, file, id, text string) string {
	t.Helper()
	head, rest, _ := strings.Cut(file, "["+id+"]")
	hash, rest, ok := strings.Cut(rest, `other = ""`)
	if !ok {
		t.Fatalf("the new file has no empty %s", id)
	}
	return head + "[" + id + "]" + hash + `other = "` + text + `"` + rest
}

// Only a whole file that was held against today's English can be signed, and
// only by what a person typed. Later changes make it a draft again.
func TestSign(t *testing.T) {
	stamped := string(stamp(t, "es"))
	tests := []struct {
		name, es, by, date, want string
	}{
		{"sound", stamped, "M. G.", "2026-10-01", ""},
		{"signed before", strings.Replace(stamped, `review = "draft"`, `reviewed = "M. G., 2026-10-01"`, 1), "M. G.", "2026-10-01", ""},
		{"signed by hand on no day", strings.Replace(stamped, `review = "draft"`, `reviewed = "M. G., 2026-13-01"`, 1), "M. G.", "2026-10-01", "it needs a name or initials, a comma and a date"},
		{"something to mend", strings.Replace(stamped, `other = "Idioma"`, `other = "Idioma "`, 1), "M. G.", "2026-10-01", "begins or ends with a space"},
		{"no hashes", string(fixture(t, "es", "", "")), "M. G.", "2026-10-01", "keeps no hash of its English text"},
		{"stale", strings.Replace(stamped, `hash = "802e6425d4"`, `hash = "0000000000"`, 1), "M. G.", "2026-10-01", "the English has changed"},
		{"a text is missing", strings.Replace(stamped, `other = "Idioma"`, `other = ""`, 1), "M. G.", "2026-10-01", "page.language has no text"},
		{"nobody", stamped, "", "2026-10-01", "is not a name and a day"},
		{"no day", stamped, "M. G.", "tomorrow", "is not a name and a day"},
		{"leaves its quotes", stamped, `M" # `, "2026-10-01", "has signs that no name has"},
		{"on one line with others", strings.Replace(stamped, "[language]\nname = \"español\"\ndirection = \"ltr\"\ndigits = \"latn\"\nequations = \"ltr\"\nreview = \"draft\"",
			`language = { name = "español", direction = "ltr", digits = "latn", equations = "ltr", review = "draft" }`, 1), "M. G.", "2026-10-01", "cannot be written where it stands"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			english := fixture(t, "en", "", "")
			folder := fstest.MapFS{"en.toml": {Data: english}, "es.toml": {Data: []byte(test.es)}}
			signed, err := Sign("es", test.by, test.date, folder)
			if test.want != "" {
				if err == nil || !strings.Contains(err.Error(), test.want) {
					t.Errorf("want %q, got %v", test.want, err)
				}
				return
			}
			if err != nil {
				t.Fatal(err)
			}
			folder["es.toml"] = &fstest.MapFile{Data: signed}
			if es := loaded(t, folder); es.Draft() || es.Reviewed() != "M. G., 2026-10-01" {
				t.Errorf("want it signed, got draft %v, %q", es.Draft(), es.Reviewed())
			}
			folder["en.toml"] = &fstest.MapFile{Data: []byte(strings.Replace(string(english), "with big spoons", "with spoons", 1))}
			if es := loaded(t, folder); !es.PartlyRead() {
				t.Error("a message has changed since: want it open again")
			}
		})
	}
}

func loaded(t *testing.T, folder fstest.MapFS) *i18n.Language {
	t.Helper()
	c, problems := i18n.Load([]string{"es"}, folder)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	es, _ := c.Language("es")
	return es
}
