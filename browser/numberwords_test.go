//go:build browser

package browser_test

import (
	"encoding/json"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/pelletier/go-toml/v2"

	"homebuild/internal/i18n"
	"homebuild/locales"
)

// numberRules names the rule set of CLDR for each table of number words.
// Source: Unicode CLDR 48.2 by npm cldr-rbnf.
var numberRules = map[string]map[string]string{
	"en": {"": "spellout-cardinal"},
	"es": {"": "spellout-numbering", "masculine": "spellout-cardinal-masculine", "feminine": "spellout-cardinal-feminine"},
	"fr": {"": "spellout-cardinal-masculine", "feminine": "spellout-cardinal-feminine"},
	"pt": {"": "spellout-cardinal-masculine", "feminine": "spellout-cardinal-feminine"},
	"ru": {
		"": "spellout-cardinal-masculine", "feminine": "spellout-cardinal-feminine", "neuter": "spellout-cardinal-neuter",
		"feminine-accusative": "spellout-cardinal-feminine-accusative", "animate-accusative": "spellout-cardinal-masculine-genitive",
	},
	"uk":      {"": "spellout-cardinal-masculine", "feminine": "spellout-cardinal-feminine", "neuter": "spellout-cardinal-neuter"},
	"ko":      {"": "spellout-cardinal-native-attributive"},
	"zh-Hans": {"": "spellout-cardinal-alternate2"},
	"vi":      {"": "spellout-cardinal"},
}

// withoutWords are the languages without number words, with the reason.
var withoutWords = map[string]string{
	"ar": "the words agree with the thing in gender, case and number, which tables cannot say; CLDR's rules do not either",
	"ht": "a number word can change before its noun, and CLDR has no rules",
	"so": "the word and its noun take endings together, and CLDR has no rules",
}

// wordsApart are our words that are not CLDR's, with the reason.
var wordsApart = map[string]string{
	"uk feminine-accusative": "CLDR has no cases for Ukrainian; одну is the accusative of одна (from memory)",
	"uk animate-accusative":  "CLDR has no cases for Ukrainian; одного is the accusative of living beings (from memory)",
}

// withoutCases are the languages of which CLDR has no cases, so that words in a case
// cannot be held against it; these are from memory.
var withoutCases = []string{"uk"}

// writtenAlike takes away what two good spellings of a word differ in.
var writtenAlike = map[string]*strings.Replacer{
	"ru": strings.NewReplacer("ё", "е"), // schoolbooks write ё, CLDR now and then does not
	"uk": strings.NewReplacer("’", "ʼ"), // the apostrophe: U+2019 on keyboards, U+02BC in CLDR
}

// Number words are spelled as CLDR spells them.
func TestNumberWords(t *testing.T) {
	t.Parallel()
	for _, tag := range i18n.Tags(locales.Files) {
		tables := wordTables(t, tag)
		if withoutWords[tag] != "" {
			if len(tables) > 0 {
				t.Errorf("%s has number words by now: take the exception out", tag)
			}
			continue
		}
		if len(tables) == 0 {
			t.Errorf("%s has no number words, and no reason is told", tag)
		}
		rules := readRules(t, tag)
		for name, words := range tables {
			key := strings.TrimSpace(tag + " " + name)
			set := numberRules[tag][name]
			switch {
			case set == "" && wordsApart[key] != "":
				continue
			case set == "": // of one thing or one form, in a gender or a case of its own
				for n, word := range words {
					if word != strconv.Itoa(n) && !slices.Contains(withoutCases, tag) && !rules.know(t, word, n, writtenAlike[tag]) {
						t.Errorf("%s, table %q: %d: no rule set spells %q", tag, name, n, word)
					}
				}
				continue
			}
			for n, word := range words {
				want, got := rules.spell(t, "%"+set, n), strings.TrimSpace(word) // Korean has its space before a counter in the word
				if alike := writtenAlike[tag]; alike != nil {
					want, got = alike.Replace(want), alike.Replace(got)
				}
				if got != want {
					t.Errorf("%s, table %q: %d: want %q (%s), got %q", tag, name, n, want, set, word)
				}
			}
		}
	}
}

// know reports whether any rule set of the language spells a number so.
func (sets ruleSets) know(t *testing.T, word string, n int, alike *strings.Replacer) bool {
	if alike == nil {
		alike = strings.NewReplacer()
	}
	for name := range sets {
		if strings.HasPrefix(name, "%spellout-") && alike.Replace(sets.spell(t, name, n)) == alike.Replace(strings.TrimSpace(word)) {
			return true
		}
	}
	return false
}

// wordTables are the tables of number words of a file; "" is the plain one.
func wordTables(t *testing.T, tag string) map[string]map[int]string {
	t.Helper()
	data, err := locales.Files.ReadFile(tag + ".toml")
	if err != nil {
		t.Fatal(err)
	}
	var file struct{ Words map[string]any }
	if err := toml.Unmarshal(data, &file); err != nil {
		t.Fatal(err)
	}
	tables := map[string]map[int]string{}
	add := func(table, number string, word any) {
		n, err := strconv.Atoi(number)
		if err != nil {
			t.Fatalf("%s: %q is not a number", tag, number)
		}
		if tables[table] == nil {
			tables[table] = map[int]string{}
		}
		tables[table][n] = word.(string)
	}
	for key, value := range file.Words {
		if inner, ok := value.(map[string]any); ok {
			for number, word := range inner {
				add(key, number, word)
			}
			continue
		}
		add("", key, value)
	}
	return tables
}

// ruleSets are the spelling rules of a language, as Unicode LDML part 3,
// "Rule-Based Number Formatting", reads them.
type ruleSets map[string][]rule

// rule spells the numbers from its base to that of the next rule.
type rule struct {
	base, radix int
	text        string
}

func readRules(t *testing.T, tag string) ruleSets {
	t.Helper()
	base, _, _ := strings.Cut(tag, "-")
	data, err := os.ReadFile("node_modules/cldr-rbnf/rbnf/" + base + ".json")
	if err != nil {
		t.Fatal(err)
	}
	var file struct {
		RBNF struct {
			RBNF map[string]map[string]json.RawMessage
		}
	}
	if err := json.Unmarshal(data, &file); err != nil {
		t.Fatal(err)
	}
	sets := ruleSets{}
	for name, raw := range file.RBNF.RBNF["SpelloutRules"] {
		var rules [][2]string
		if json.Unmarshal(raw, &rules) != nil {
			continue // rules for reading, not for writing
		}
		for _, r := range rules {
			number, radix, _ := strings.Cut(r[0], "/")
			n, err := strconv.Atoi(number)
			if err != nil {
				continue // negative numbers and fractions
			}
			by := 10
			if radix != "" {
				by, _ = strconv.Atoi(radix)
			}
			sets[name] = append(sets[name], rule{n, by, strings.TrimPrefix(strings.TrimSuffix(r[1], ";"), "'")})
		}
		slices.SortFunc(sets[name], func(a, b rule) int { return a.base - b.base })
	}
	return sets
}

// divisor is the largest power of the radix that is not above the base.
func (r rule) divisor() int {
	d := 1
	for r.base > 0 && d*r.radix <= r.base {
		d *= r.radix
	}
	return d
}

// spell writes a number by a set of rules.
func (s ruleSets) spell(t *testing.T, set string, n int) string {
	t.Helper()
	rules := s[set]
	i := len(rules) - 1
	for i >= 0 && rules[i].base > n {
		i--
	}
	if i < 0 {
		t.Fatalf("no rule of %s spells %d", set, n)
	}
	r := rules[i]
	text := r.text
	if open := strings.Index(text, "["); open >= 0 { // left out when nothing remains
		shut := strings.Index(text, "]")
		inside := text[open+1 : shut]
		if n%r.divisor() == 0 {
			inside = ""
		}
		text = text[:open] + inside + text[shut+1:]
	}
	text = s.put(t, text, "→", set, n%r.divisor())
	text = s.put(t, text, "←", set, n/r.divisor())
	return s.put(t, text, "=", set, n)
}

// put fills the places between two marks: →→ by the same rules, →%set→ by others.
func (s ruleSets) put(t *testing.T, text, mark, set string, n int) string {
	t.Helper()
	before, rest, found := strings.Cut(text, mark)
	if !found {
		return text
	}
	name, after, found := strings.Cut(rest, mark)
	if !found {
		t.Fatalf("%q is not a rule", text)
	}
	if name == "" {
		name = set
	}
	return before + s.spell(t, name, n) + s.put(t, after, mark, set, n)
}

// The small reader of rules reads them as ICU does. Source: ICU 72, RuleBased-
// NumberFormat, set spellout-cardinal or the one named (from memory).
func TestReaderOfRules(t *testing.T) {
	t.Parallel()
	tests := []struct {
		tag, set string
		n        int
		want     string
	}{
		{"en", "%spellout-cardinal", 342, "three hundred forty-two"},
		{"fr", "%spellout-cardinal-feminine", 71, "soixante-et-onze"},
		{"fr", "%spellout-cardinal-masculine", 99, "quatre-vingt-dix-neuf"},
		{"es", "%spellout-cardinal-feminine", 21, "veintiuna"},
		{"vi", "%spellout-cardinal", 21, "hai mươi mốt"},
		{"ko", "%spellout-cardinal-native-attributive", 21, "스물한"},
		{"ru", "%spellout-cardinal-feminine", 42, "сорок две"},
	}
	for _, test := range tests {
		if got := readRules(t, test.tag).spell(t, test.set, test.n); got != test.want {
			t.Errorf("%s: %s of %d: want %q, got %q", test.tag, test.set, test.n, test.want, got)
		}
	}
}
