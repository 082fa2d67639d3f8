package main

import (
	"bytes"
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/pelletier/go-toml/v2"
	"golang.org/x/net/html"

	"homebuild/internal/week"
	"homebuild/locales"
	"homebuild/themes"
)

var (
	attacksOut = flag.String("attacks", "", "keep the pages of attacks that end in inert text in this `folder`")
	oneIn      = flag.Int("one-in", 1, "of the attacks whose pages are kept, build one in this `number`")
)

// attack is one attempt to do harm through a school's files.
type attack struct {
	Name  string
	Text  string
	Old   string   // what the text stands in place of, in a language file
	Allow []string // addresses that the week allows
	Want  string   // "inert", or a part of the error
	kind  string
}

// patience is what a build of a hostile file may take. A good one takes a tenth
// of a second; a busy computer makes it longer.
const patience = 20 * time.Second

// Every attack ends in an error that names the place, or in inert text.
func TestAttacks(t *testing.T) {
	count, inert := 0, 0
	for _, kind := range []string{"site", "weeks", "notes", notesInSpanish, "stories", "languages", "themes"} {
		for _, a := range readAttacks(t, kind) {
			count++
			looked := a.Want == "inert" && kind != notesInSpanish // which leave such pages as others do
			if looked {
				inert++
			}
			if *attacksOut != "" && (!looked || inert%*oneIn != 0) {
				continue
			}
			t.Run(kind+": "+a.Name, func(t *testing.T) {
				t.Parallel()
				dir := filepath.Join(t.TempDir(), "school")
				a.prepare(t, dir)
				checkAttack(t, a, dir)
			})
		}
	}
	t.Logf("%d attacks through the text of files", count)
	if count < 100 {
		t.Errorf("want at least 100 attacks, got %d", count)
	}
}

// notesInSpanish are the attacks of notes, each in a note that the teacher wrote in
// another language than English.
const notesInSpanish = "notes in Spanish"

func readAttacks(t *testing.T, kind string) []attack {
	t.Helper()
	var file struct{ Attack []attack }
	name, _, _ := strings.Cut(kind, " ")
	if err := toml.Unmarshal([]byte(readFile(t, os.DirFS("testdata/attacks"), name+".toml")), &file); err != nil {
		t.Fatal(err)
	}
	for i := range file.Attack {
		a := &file.Attack[i]
		a.kind, a.Text = kind, many(a.Text)
	}
	return file.Attack
}

var manyTimes = regexp.MustCompile(`(?s)\{(.+?)\*(\d+)\}`)

// many writes out "{word *1000}".
func many(text string) string {
	return manyTimes.ReplaceAllStringFunc(text, func(s string) string {
		m := manyTimes.FindStringSubmatch(s)
		n, _ := strconv.Atoi(m[2])
		return strings.Repeat(m[1], n)
	})
}

const (
	plainSite   = "name = \"Pebble\"\nlanguages = [\"en\", \"es\"]\n"
	oneLanguage = "name = \"Pebble\"\nlanguages = [\"en\"]\n" // where languages are not the point
	plainWeek   = "target = \"add-within-20\"\n"
)

// goodStories are kept, and stories that are easier than the week's.
const goodStories = `[[story]]
event = "harbour.gulls"
kind = "together-total"
numbers = [5, 6]
[[story]]
event = "harbour.board"
kind = "together-total"
numbers = [4, 8]
`

// prepare makes a school with the attack in it.
func (a attack) prepare(t *testing.T, dir string) {
	t.Helper()
	site, text := oneLanguage, plainWeek
	own, whole := strings.CutPrefix(a.Text, "=")
	more, adds := strings.CutPrefix(a.Text, "+")
	switch a.kind {
	case "site":
		if site = a.Text; adds {
			site = plainSite + more
		}
	case "weeks":
		if text = a.Text; adds {
			text = "# ours\n" + plainWeek + more + "\n"
		}
	case "stories":
		text = "# ours\n" + plainWeek + "ladder = true\n"
		stories := a.Text
		if adds {
			stories = goodStories + more
		}
		putFile(t, filepath.Join(dir, "weeks/2026-09-14.stories.toml"), stories)
	case "notes", notesInSpanish:
		allow, tag := "", "en"
		if a.kind == notesInSpanish {
			site, tag = plainSite, "es"
		}
		if len(a.Allow) > 0 {
			allow = fmt.Sprintf("allow = [%q]\n", a.Allow[0])
		}
		text = plainWeek + allow + "[note]\n" + tag + " = \"\"\"\n" + week.Quotable(a.Text) + "\n\"\"\"\n"
	case "languages":
		site = plainSite
		es := readFile(t, locales.Files, "es.toml")
		switch {
		case whole:
			es = strings.ReplaceAll(own, "{RAW}", "\xff")
		case a.Old != "":
			if !strings.Contains(es, a.Old) {
				t.Fatalf("es.toml has no %q", a.Old)
			}
			es = strings.Replace(es, a.Old, a.Text, 1)
		case adds:
			es += "\n" + more
		default:
			es = strings.Replace(es, "Cuentos con números para la familia", toTOML(a.Text), 1)
		}
		putFile(t, filepath.Join(dir, "locales", "es.toml"), es)
	case "themes":
		site += "theme = \"own\"\n"
		colors, css := readFile(t, themes.Files, "paper/colours.toml"), a.Text
		switch {
		case whole:
			colors, css = own, ""
		case strings.HasPrefix(a.Text, "#"):
			colors, css = strings.Replace(colors, "#f4ecdd", a.Text, 1), ""
		}
		putFile(t, filepath.Join(dir, "themes/own/colours.toml"), colors)
		putFile(t, filepath.Join(dir, "themes/own/theme.css"), css)
	}
	putFile(t, filepath.Join(dir, "site.toml"), site)
	putFile(t, filepath.Join(dir, "weeks/2026-09-14.toml"), text)
}

// toTOML writes a text as it stands between the quotes of a TOML string.
func toTOML(text string) string {
	var b strings.Builder
	for _, c := range text {
		switch {
		case c == '"' || c == '\\':
			b.WriteString(`\` + string(c))
		case c < 0x20 || c == 0x7f || c >= 0x200b && c <= 0x206f:
			fmt.Fprintf(&b, `\u%04X`, c)
		default:
			b.WriteRune(c)
		}
	}
	return b.String()
}

// checkAttack builds a school and looks at what comes of it.
func checkAttack(t *testing.T, a attack, dir string) {
	t.Helper()
	out := filepath.Join(filepath.Dir(dir), "out")
	if *attacksOut != "" {
		out = filepath.Join(*attacksOut, strings.NewReplacer(" ", "-", ",", "").Replace(a.kind+"-"+a.Name))
	}
	var said, errs bytes.Buffer
	start := time.Now()
	build := []string{"build", dir, "--out", out}
	if a.Want == "inert" && *attacksOut == "" { // in its place: with what is on the desk, the files to send among it
		out, build = dir, []string{"build", dir}
	}
	code := testStreams(&said, &errs).run(build)
	if took := time.Since(start); took > patience {
		t.Errorf("it took %v", took)
	}
	if strings.ContainsFunc(errs.String(), func(c rune) bool { return c < ' ' && c != '\n' || c >= 0x202a && c <= 0x202e }) {
		t.Errorf("the error speaks to the terminal: %q", errs.String())
	}
	if errs.Len() > 40_000 {
		t.Errorf("the error has %d letters", errs.Len())
	}
	if a.Want == "inert" {
		if code != exitFine {
			t.Fatalf("want pages, got exit code %d:\n%s", code, errs.String())
		}
		checkInert(t, a, filepath.Join(out, publicFolder), 25)
		if out == dir {
			checkInert(t, a, filepath.Join(out, deskFolder), 3)
		}
		return
	}
	if _, err := os.Stat(filepath.Join(out, publicFolder)); err == nil {
		t.Errorf("pages were written all the same")
	}
	first, _, _ := strings.Cut(strings.TrimPrefix(errs.String(), filepath.ToSlash(dir)+"/"), "\n")
	if !placed.MatchString(first) {
		t.Errorf("the error names no place: %.300q", first)
	}
	if code != exitProblems || a.Want == "" || !strings.Contains(first, a.Want) {
		t.Errorf("want exit code %d and %q, got %d and %.300q", exitProblems, a.Want, code, first)
	}
}

var placed = regexp.MustCompile(`^(site\.toml|weeks/2026-09-14(\.stories)?\.toml|locales/es\.toml|themes/own(/(colours\.toml|theme\.css))?)(:\d+)?: `)

// alikeCheck are check pages of which another is read: they show what a school wrote at
// the same places.
var alikeCheck = regexp.MustCompile(`/check/\d*[^37]\.html$`)

// checkInert reads every page as a browser would, and finds nothing in it that
// acts or asks for anything.
func checkInert(t *testing.T, a attack, public string, least int) {
	t.Helper()
	pages := 0
	err := fs.WalkDir(os.DirFS(public), ".", func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() || filepath.Ext(name) != ".html" {
			return err
		}
		pages++
		if alikeCheck.MatchString(filepath.ToSlash(name)) {
			return nil
		}
		for _, fault := range faultsIn(readFile(t, os.DirFS(public), name), a.Allow) {
			t.Errorf("%s: %s", name, fault)
		}
		return nil
	})
	if err != nil || pages < least {
		t.Errorf("%d pages, %v", pages, err)
	}
}

// elementsOfPages are all that our pages are made of, but for drawings.
var elementsOfPages = strings.Fields(`html head meta title style link body main header nav footer section article aside div p h1 h2 h3
 a ul ol li span b i em strong br hr bdi details summary table thead tbody tr th td caption dl dt dd input label fieldset legend
 time blockquote code pre small figure figcaption svg g defs symbol use path rect circle ellipse line polyline polygon text tspan pattern desc`)

// faultsIn lists what a page may not have, whatever its text says.
func faultsIn(page string, allowed []string) []string {
	var faults []string
	add := func(format string, args ...any) { faults = append(faults, fmt.Sprintf(format, args...)) }
	if n := strings.Count(page, "<!DOCTYPE html>") + strings.Count(page, "<!doctype html>"); n != 1 {
		add("%d document types", n)
	}
	if !strings.Contains(page, `http-equiv="Content-Security-Policy"`) {
		add("no security policy")
	}
	doc, err := html.Parse(strings.NewReader(page))
	if err != nil {
		add("%v", err)
		return faults
	}
	for n := range doc.Descendants() {
		if n.Type == html.CommentNode {
			add("a comment: %.60q", n.Data)
		}
		if n.Type != html.ElementNode {
			continue
		}
		if !slices.Contains(elementsOfPages, n.Data) {
			add("an element <%s>", n.Data)
		}
		for _, at := range n.Attr {
			value := strings.ToLower(strings.TrimSpace(at.Val))
			switch {
			case strings.HasPrefix(at.Key, "on"), at.Key == "srcdoc", at.Key == "style", at.Key == "src", at.Key == "formaction", at.Key == "action":
				add("<%s %s=%.60q>", n.Data, at.Key, at.Val)
			case at.Key == "http-equiv" && value != "content-security-policy":
				add("<meta http-equiv=%q>", at.Val)
			case at.Key == "href" && !quietLink(value, allowed):
				add("<%s href=%.100q>", n.Data, at.Val)
			}
		}
	}
	return faults
}

var relative = regexp.MustCompile(`^(\.\./)*[a-z0-9#-][a-z0-9/._#-]*$`)

// quietLink reports whether a link stays in the site or was allowed.
func quietLink(href string, allowed []string) bool {
	return relative.MatchString(href) || strings.HasPrefix(href, "https://x.example/") || slices.Contains(allowed, href)
}
