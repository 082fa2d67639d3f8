package pofile

import (
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/translate"
	"homebuild/locales"
)

// Whatever comes back as a PO file, reading it ends, what is wrong is told with a line
// of that file, and what is taken leaves a language file that a build reads.
func FuzzImport(f *testing.F) {
	data := read(f, "es")
	d := open(f, "es", data)
	const head = "msgid \"\"\nmsgstr \"\"\n\"Plural-Forms: nplurals=2; plural=n!=1;\\n\"\n\n"
	for _, seed := range []string{
		"", "PK\x03\x04", head, strings.Replace(head, "n!=1", "n%10==1 ? 0 : n>=2 && n<=4 ? 1 : 2", 1),
		head + "msgctxt \"page.skip\"\nmsgid \"a\"\nmsgstr \"\\\"\\\"\\\"\\n'''\"\n",
		head + "msgctxt \"page.skip\"\nmsgid \"a\"\nmsgid_plural \"b\"\nmsgstr[0] \"{{.N}\"\nmsgstr[1] \"\"\n",
		head + "#, fuzzy\nmsgctxt \"page.week\"\nmsgid \"a\"\nmsgstr \"x\"\n\n#~ msgid \"a\"\n",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		in, problems := Import(d, "xx.po", text)
		if in != nil {
			problems = in.Refused
		}
		for _, p := range problems {
			if p.File != "xx.po" || p.Text == "" || p.Line < 0 || p.Line > 1+strings.Count(text, "\n")+strings.Count(text, "\r") {
				t.Errorf("a problem without a true place: %+v", p)
			}
		}
		if in == nil || string(in.Text) == data {
			return
		}
		if _, problems := translate.Open("es", locales.Files, fstest.MapFS{"es.toml": {Data: in.Text}}); len(problems) > 0 {
			t.Errorf("what was taken cannot be read again: %v", problems)
		}
	})
}
