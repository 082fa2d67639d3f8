package week

import (
	"cmp"
	"fmt"
	"strings"

	"golang.org/x/text/language"
	"golang.org/x/text/language/display"

	"homebuild/internal/diag"
)

// LanguageName is what a language is called in English, the language that this
// program speaks to teachers in: "Arabic" for ar. A tag that nobody has named
// is its own name.
func LanguageName(tag string) string {
	known, err := language.Parse(tag)
	if base, sure := known.Base(); err != nil || sure == language.No || base.String() == "und" {
		return tag
	}
	if name := display.English.Tags().Name(known); name != "" {
		return name
	}
	return tag
}

// LanguageList names languages with their tags: "ar (Arabic), en (English)".
func LanguageList(tags []string) string {
	named := make([]string, len(tags))
	for i, tag := range tags {
		named[i] = fmt.Sprintf("%s (%s)", tag, LanguageName(tag))
	}
	return strings.Join(named, ", ")
}

// manyLanguages is the number from which a list of names is too long to read.
const manyLanguages = 12

// languageHint says which of the languages was meant by a word, or which there
// are.
func languageHint(typed string, tags []string) string {
	there := ""
	if len(tags) > 0 && len(tags) <= manyLanguages {
		there = "there are: " + LanguageList(tags)
	}
	meant := languageMeant(typed, tags)
	if name := LanguageName(typed); meant == "" && name != typed {
		return strings.TrimSpace(fmt.Sprintf("there is no %s yet: homebuild language new %s begins its file; %s", name, typed, there))
	}
	if meant != "" {
		return strings.TrimSpace(fmt.Sprintf("did you mean %q for %s? %s", meant, LanguageName(meant), there))
	}
	return cmp.Or(there, diag.Choice(typed, tags))
}

// languageMeant finds the tag that was meant by a language's name, by another
// tag of the same language, or by the code of a country; empty when none was.
func languageMeant(typed string, tags []string) string {
	typed = strings.ToLower(strings.TrimSpace(typed))
	if typed == "" {
		return ""
	}
	names, byName := languageNames(tags)
	if tag := byName[typed]; tag != "" {
		return tag
	}
	if tag := sameBase(typed, tags); tag != "" {
		return tag
	}
	if LanguageName(typed) != typed { // another language, which is not there
		return ""
	}
	if len(typed) > len("xx") {
		if near := diag.Nearest(typed, tags); near != "" {
			return near
		}
		if near := diag.Nearest(typed, names); near != "" && near[0] == typed[0] {
			return byName[near]
		}
	}
	return byBeginning(typed, byName)
}

// languageNames are the names of languages, in English and in themselves and in small
// letters, and the first tag that each name is for.
func languageNames(tags []string) (names []string, byName map[string]string) {
	byName = map[string]string{}
	for _, tag := range tags {
		known := language.Make(tag)
		base, _ := known.Base()
		for _, name := range []string{LanguageName(tag), display.Self.Name(known), LanguageName(base.String()), display.Self.Name(language.Make(base.String()))} {
			name = strings.ToLower(name)
			if byName[name] == "" {
				byName[name] = tag
				names = append(names, name)
			}
		}
	}
	return names, byName
}

// sameBase is the first tag of the language that was typed as a tag or as a country;
// empty where there is none.
func sameBase(typed string, tags []string) string {
	base := baseOf(typed)
	if base == "" {
		return ""
	}
	for _, tag := range tags {
		if baseOf(tag) == base {
			return tag
		}
	}
	return ""
}

// byBeginning is the tag of the one language with a word of its name that begins as
// typed: "sp" is Spanish; empty where there is none, or several.
func byBeginning(typed string, byName map[string]string) string {
	meant := ""
	for name, tag := range byName {
		if strings.Contains(" "+name, " "+typed) {
			if meant != "" && meant != tag {
				return ""
			}
			meant = tag
		}
	}
	return meant
}

// baseOf is the language of a tag; for the code of a country, the language that
// most people there speak.
func baseOf(typed string) string {
	tag, err := language.Parse(typed)
	if err != nil {
		country, err := language.ParseRegion(typed)
		if err != nil || !country.IsCountry() {
			return ""
		}
		tag = language.Make("und-" + country.String())
	}
	if base, sure := tag.Base(); sure != language.No {
		return base.String()
	}
	return ""
}
