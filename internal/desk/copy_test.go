package desk

import (
	"archive/zip"
	"bytes"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func zipped(t testing.TB, files map[string]string) Zip {
	t.Helper()
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for name, text := range files {
		to, err := w.Create(name)
		if err == nil {
			_, err = to.Write([]byte(text))
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return Zip{b.Bytes()}
}

// TestCopyComesBack takes a copy and opens it: the same files.
func TestCopyComesBack(t *testing.T) {
	d := newDesk(t, "en", "es")
	set(t, d, "note.es", "Hola.\nMás.")
	file := ask[File](t, d, "copy", None{})
	back := ask[Copied](t, New(nil), "openCopy", Zip{file.Bytes})
	if diff := cmp.Diff(d.all(), back.Files); diff != "" || back.Refused != "" || len(back.LeftOut) > 0 || back.Older {
		t.Errorf("refused %q, left out %v\n%s", back.Refused, back.LeftOut, diff)
	}
	if file.Name != "TEACHER-ONLY-copy-2026-09-10.zip" || len(back.Weeks) != 1 {
		t.Errorf("%s, weeks %v", file.Name, back.Weeks)
	}
}

func TestOpenCopy(t *testing.T) {
	const site = "name = \"x\"\nlanguages = [\"en\"]\n"
	for _, c := range []struct {
		name  string
		files map[string]string
		want  Copied
	}{
		{"a folder of the command line's", map[string]string{"my-class/site.toml": site, "my-class/weeks/2026-09-14.toml": "target = \"x\"\n", "my-class/public/index.html": "<p>", "run.exe": "x"},
			Copied{Files: Files{"site.toml": site, "weeks/2026-09-14.toml": "target = \"x\"\n"}, Weeks: []string{"2026-09-14"}, LeftOut: []string{"my-class/public/index.html", "run.exe"}}},
		{"an older form", map[string]string{"site.toml": site, "weeks/2026-09-14.md": "+++\ntarget = \"x\"\n+++\nHello.\n"},
			Copied{Weeks: []string{"2026-09-14"}, Older: true}},
		{"pages", map[string]string{"public/index.html": "<p>"}, Copied{Refused: "strange"}},
		{"a newer form", map[string]string{"site.toml": site, "copy.toml": "form = 2\n"}, Copied{Refused: "newer"}},
		{"a form that is no number", map[string]string{"site.toml": site, "copy.toml": "form = \"x\"\n"}, Copied{Refused: "newer"}},
	} {
		got := ask[Copied](t, New(nil), "openCopy", zipped(t, c.files))
		if c.want.Older { // what its week becomes, week.Renew's tests hold
			c.want.Files = got.Files
		}
		for _, list := range []*[]string{&got.LeftOut, &got.Weeks, &c.want.LeftOut, &c.want.Weeks} {
			if *list == nil {
				*list = []string{}
			}
		}
		if c.want.Files == nil {
			c.want.Files = Files{}
		}
		if diff := cmp.Diff(c.want, got); diff != "" {
			t.Errorf("%s (- wanted, + got):\n%s", c.name, diff)
		}
	}
	if got := ask[Copied](t, New(nil), "openCopy", Zip{[]byte("hello")}); got.Refused != "broken" {
		t.Errorf("no zip: %+v", got)
	}
}

// TestHostileCopy opens copies whose files are meant to do harm, and asks all that
// a page asks: there is always an answer, and never a fault.
func TestHostileCopy(t *testing.T) {
	const site = "name = \"<script>alert(1)</script>\"\nlanguages = [\"en\"]\n"
	for name, files := range map[string]Files{
		"markup":       {"site.toml": site, "weeks/2026-09-14.toml": "target = \"add-within-20\"\n[note]\nen = \"<img src=x onerror=alert(1)> [a](javascript:x)\"\n"},
		"no site":      {"weeks/2026-09-14.toml": "target = \"add-within-20\"\n"},
		"no week":      {"site.toml": site},
		"no TOML":      {"site.toml": "[[[[", "weeks/2026-09-14.toml": "= = ="},
		"deep":         {"site.toml": site, "weeks/2026-09-14.toml": "a.b.c.d.e.f.g.h.i.j.k = 1"},
		"another date": {"site.toml": site, "weeks/9999-99-99.toml": "target = \"add-within-20\"\n"},
		"bad stories":  {"site.toml": site, "weeks/2026-09-14.toml": "target = \"add-within-20\"\n", "weeks/2026-09-14.stories.toml": "[[story]]\nevent = \"x.y\"\nkind = \"add-to-result\"\nnumbers = [1, 999999]\n"},
		"a language":   {"site.toml": site, "weeks/2026-09-14.toml": "target = \"add-within-20\"\n", "locales/en.toml": "[language]\nname = \"{{.X}}\"\n"},
		"a look":       {"site.toml": site + "theme = \"mine\"\n", "weeks/2026-09-14.toml": "target = \"add-within-20\"\n", "themes/mine/theme.css": "</style><script>", "themes/mine/colours.toml": "x"},
		"own story":    {"site.toml": site, "weeks/2026-09-14.toml": "target = \"add-within-20\"\n[[own-story]]\ntext = \"[[[\"\nkind = \"x\"\n"},
	} {
		d := New(nil)
		for _, c := range []struct {
			call string
			args any
		}{
			{"open", Open{Files: files, Today: "2026-09-10", Words: "xx"}}, {"year", None{}}, {"week", Monday{first}}, {"week", Monday{"nonsense"}}, {"targets", Search{Words: "\x00"}},
			{"choices", LineOf{first, LineTarget}}, {"choices", LineOf{first, LinePlace}}, {"set", Set{first, "note.en", "\"\"\"\n[x]\\"}}, {"set", Set{first, "stories", "many"}},
			{"set", Set{first, "x\ny", "z"}}, {"story", StoryWish{first, 99, "numbers", ""}}, {"kinds", StoryOf{first, 1}}, {"own", OwnStory{Date: first}}, {"calendar", CalendarWish{first, "off", ""}},
			{"calendar", CalendarWish{first, "move", "../x"}}, {"settings", Setting{"name", "\"\nkey = \"x"}}, {"page", PageOf{first, "en", "learn", ""}}, {"page", PageOf{first, "xx", "learn", "../x"}},
			{"send", SendWish{first, []string{"en", "xx"}}}, {"site", None{}}, {"copy", None{}}, {"check", Monday{}},
		} {
			reply := send(t, d, c.call, c.args)
			if panicked(reply.Fault) {
				t.Errorf("%s: %s %+v: %s", name, c.call, c.args, reply.Fault)
			}
			if c.call == "page" && bytes.Contains(reply.Value, []byte("<script>")) {
				t.Errorf("%s: a script stands in the page", name)
			}
		}
	}
}
