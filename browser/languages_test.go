//go:build browser

package browser_test

import (
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/language"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/locales"
)

// What is known of a language outside the project. Sources: Unicode CLDR 48.2
// by npm cldr-core, and the CLDR 48 of the ICU inside Node.js (Intl). Node's ICU
// has no Haitian Creole, and CLDR 48.2 no plural rule for it: the noun does not
// change after a number (from memory).
const withoutData = "ht"

// node runs a script that prints JSON.
func node(t *testing.T, script string, out any, args ...string) {
	t.Helper()
	data, err := exec.Command("node", append([]string{"-e", script, "--"}, args...)...).Output()
	if err != nil {
		t.Fatalf("node: %v", err)
	}
	if err := json.Unmarshal(data, out); err != nil {
		t.Fatal(err)
	}
}

// intl asks the ICU inside Node.js something about each language, at once: a script
// with the tag in t.
func intl[T any](t *testing.T, script string) map[string]T {
	t.Helper()
	var tags []string
	for _, l := range ours(t) {
		tags = append(tags, l.Tag())
	}
	out := map[string]T{}
	node(t, `console.log(JSON.stringify(Object.fromEntries(process.argv.slice(1).map(t => [t, `+script+`]))))`, &out, tags...)
	return out
}

// cldr reads a file of npm cldr-core.
func cldr(t *testing.T, name string, out any) {
	t.Helper()
	data, err := os.ReadFile("node_modules/cldr-core/" + name)
	if err != nil {
		t.Fatalf("%v; sh browser/setup.sh installs it", err)
	}
	if err := json.Unmarshal(data, out); err != nil {
		t.Fatal(err)
	}
}

// ours are the languages that come with the program.
func ours(t *testing.T) []*i18n.Language {
	t.Helper()
	catalog, problems := i18n.Load(nil, locales.Files)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return catalog.Languages()
}

// Every number from 0 to 1000 is said in the form of its plural category, and a
// file needs the categories that these numbers have, no fewer and no others.
// Source: Intl.PluralRules.
func TestPluralCategories(t *testing.T) {
	t.Parallel()
	rules := intl[[]string](t, `(rules => Intl.PluralRules.supportedLocalesOf(t).map(() => Array.from({length: 1001}, (_, n) => rules.select(n))).flat())(new Intl.PluralRules(t))`)
	rules[withoutData] = slices.Repeat([]string{"other"}, 1001)
	for _, l := range ours(t) {
		want := rules[l.Tag()] // by number
		if len(want) != 1001 {
			t.Fatalf("%s: no data", l.Tag())
		}
		probe := probing(t, l.Tag(), want)
		for n, category := range want {
			if got := probe.Plain(phrase.Say("probe.n", phrase.Number("N", n))); got != sign(category)+" "+probe.Number(n) {
				t.Errorf("%s: %d: want the category %s, got %q", l.Tag(), n, category, got)
			}
		}
	}
}

// sign stands for a category in every script.
func sign(category string) string {
	return map[string]string{"zero": "0", "one": "1", "two": "2", "few": "3", "many": "6", "other": "9"}[category] + ":"
}

// probing is a language whose one message tells its plural category.
func probing(t *testing.T, tag string, categories []string) *i18n.Language {
	t.Helper()
	const head = "[language]\nname = \"x\"\ndirection = %q\ndigits = \"latn\"\nequations = \"ltr\"\nreview = %q\n[probe.n]\n"
	direction := "ltr"
	if rightToLeft(t, tag) {
		direction = "rtl"
	}
	own := fmt.Sprintf(head, direction, "draft")
	seen := map[string]bool{}
	for _, c := range categories {
		if !seen[c] {
			own += fmt.Sprintf("%s = %q\n", c, sign(c)+" {{.N}}")
		}
		seen[c] = true
	}
	en := fmt.Sprintf(head, "ltr", "source") + fmt.Sprintf("one = %q\nother = %q\n", sign("one")+" {{.N}}", sign("other")+" {{.N}}")
	folder := fstest.MapFS{"en.toml": {Data: []byte(en)}}
	if tag != "en" {
		folder[tag+".toml"] = &fstest.MapFile{Data: []byte(own)}
	}
	catalog, problems := i18n.Load([]string{tag}, folder)
	if len(problems) > 0 {
		t.Fatalf("%s: a file with the categories of CLDR is refused: %v", tag, problems)
	}
	l, _ := catalog.Language(tag)
	return l
}

// rightToLeft is the direction of a language's usual script. Source: cldr-core,
// likelySubtags.json and scriptMetadata.json.
func rightToLeft(t *testing.T, tag string) bool {
	t.Helper()
	var likely struct {
		Supplemental struct{ LikelySubtags map[string]string }
	}
	var scripts struct {
		ScriptMetadata map[string]struct{ RTL string }
	}
	cldr(t, "supplemental/likelySubtags.json", &likely)
	cldr(t, "scriptMetadata.json", &scripts)
	full := tag
	if !strings.Contains(tag, "-") {
		full = likely.Supplemental.LikelySubtags[tag]
	}
	for _, part := range strings.Split(full, "-") {
		if s, ok := scripts.ScriptMetadata[part]; ok {
			return s.RTL == "YES"
		}
	}
	t.Fatalf("CLDR knows no script of %q (%q)", tag, full)
	return false
}

func TestDirections(t *testing.T) {
	t.Parallel()
	for _, l := range ours(t) {
		if want := rightToLeft(t, l.Tag()); l.RightToLeft() != want {
			t.Errorf("%s: from right to left: want %v, got %v", l.Tag(), want, l.RightToLeft())
		}
	}
}

// Digits are those of CLDR. Source: Intl.NumberFormat.
func TestDigits(t *testing.T) {
	t.Parallel()
	digits := intl[string](t, `new Intl.NumberFormat(t, {useGrouping: false}).format(1234567890)`)
	for _, l := range ours(t) {
		if l.Tag() == withoutData {
			continue
		}
		if got, want := l.Number(1234567890), digits[l.Tag()]; got != want {
			t.Errorf("%s: want the digits %s, got %s", l.Tag(), want, got)
		}
	}
}

// ownNames are the names that say more than CLDR's, with the reason.
var ownNames = map[string]struct{ name, why string }{
	"pt": {"Português (Brasil)", "CLDR calls it português; the words are those of Brazil's schools"},
	"ht": {"Kreyòl ayisyen", "Node has no name for it; the name in the law of 1979, from memory"},
}

// Languages bear their own names, with a capital where the script has them:
// they stand alone on buttons. Source: Intl.DisplayNames.
func TestOwnNames(t *testing.T) {
	t.Parallel()
	names := intl[string](t, `new Intl.DisplayNames([t], {type: "language"}).of(t)`)
	for _, l := range ours(t) {
		want := names[l.Tag()]
		first, size := utf8.DecodeRuneInString(want)
		want = string(unicode.ToTitle(first)) + want[size:]
		if known, ok := ownNames[l.Tag()]; ok {
			if known.name == want {
				t.Errorf("%s: CLDR has the name %s by now: take the exception out", l.Tag(), want)
			}
			want = known.name
		}
		if l.Name() != want {
			t.Errorf("%s: want the name %s, got %s", l.Tag(), want, l.Name())
		}
	}
}

// The tags are those of BCP 47 in their usual form. Source:
// golang.org/x/text/language and Intl.getCanonicalLocales.
func TestTags(t *testing.T) {
	t.Parallel()
	tags := intl[string](t, `Intl.getCanonicalLocales(t)[0]`)
	for _, l := range ours(t) {
		if tags[l.Tag()] != l.Tag() || language.MustParse(l.Tag()).String() != l.Tag() {
			t.Errorf("%s: the usual tag is %s", l.Tag(), tags[l.Tag()])
		}
	}
}
