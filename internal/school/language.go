package school

import (
	"cmp"
	"fmt"
	"io/fs"
	"slices"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/site"
	"homebuild/internal/story"
	"homebuild/internal/translate"
	"homebuild/internal/week"
	"homebuild/locales"
)

// Languages are the folders of language files, the school's own last.
func (s *School) Languages() []fs.FS {
	all := append(s.folders(LocalesFolder), locales.Files)
	slices.Reverse(all)
	return all
}

// OwnLanguages lists the languages that the school has files of its own for.
func (s *School) OwnLanguages() []string {
	own, ok := s.folder(LocalesFolder)
	if !ok {
		return nil
	}
	return i18n.Tags(own)
}

// catalog reads languages.
func (s *School) catalog(tags ...string) (*i18n.Catalog, diag.Diagnostics) {
	loader, _ := s.memory.languages.get("locales "+s.sum(LocalesFolder), func() (*i18n.Loader, diag.Diagnostics) {
		return i18n.NewLoader(s.Languages()...), nil
	})
	return loader.Load(tags...)
}

// Words are a language's, as the school has them; false where it cannot be used.
func (s *School) Words(tag string) (*i18n.Language, bool) {
	catalog, _ := s.catalog(tag)
	if catalog == nil {
		return nil, false
	}
	return catalog.Language(tag)
}

// mostMissing is how many texts that the class's own language lacks are told one by
// one.
const mostMissing = 8

// classIsWhole tells what the class's own language lacks: the others may have some pages
// and not others, but what is in no other language is in this one.
func classIsWhole(in site.Input) diag.Diagnostics {
	class, _ := in.Catalog.Language(in.Site.School)
	if class.Whole() {
		return nil
	}
	missing := class.Missing()
	problems := slices.Clone(missing[:min(mostMissing, len(missing))])
	return append(problems, diag.Diagnostic{
		File: week.SiteFile, Text: fmt.Sprintf("%s is the class's own language, and it still lacks %s", class.Tag(), diag.Amount(len(missing), "text", "texts")),
		Hint: "until then write a language that is whole first in languages",
	})
}

// English are the words of the program's own language.
func English() *i18n.Language {
	catalog, problems := i18n.Load([]string{i18n.SourceTag}, locales.Files)
	if len(problems) > 0 {
		panic(problems) // it comes with the program
	}
	return catalog.Source()
}

// Language is a language that pages can be made in.
type Language struct{ Tag, Name string } // Name is its own: "español"

// String names the language in English and in itself, with its tag.
func (l Language) String() string {
	return week.LanguageName(l.Tag) + ", " + l.Name + " (" + l.Tag + ")"
}

// Ready lists the languages that come with the program and are whole, by tag.
func Ready() []Language {
	all, problems := translate.StatusOf(locales.Files)
	if len(problems) > 0 {
		panic(problems)
	}
	var out []Language
	for _, l := range all {
		if l.Problems == 0 && l.Missing() == 0 {
			out = append(out, Language{l.Tag, l.Name})
		}
	}
	return out
}

// A method of School is in the desk's file, where templates keep all methods of what
// it uses; what a translator alone asks for are functions.

// Sample is the page on which a fluent reader reads all that a language says,
// with what its file holds so far. Problems mean that it cannot be understood
// at all.
func Sample(s *School, tag string) (site.File, *translate.Draft, diag.Diagnostics) {
	in, problems := s.sampleInput(tag)
	if len(problems) > 0 {
		return site.File{}, nil, problems
	}
	begun := in.Draft
	for _, told := range []*diag.Diagnostics{&begun.Problems, &begun.Unread, &begun.Stale, &begun.Advice, &begun.Missing, &begun.Unused} {
		*told = s.Locate(*told)
	}
	return site.Sample(in), begun, nil
}

// HardSample are the sentences that numbers break most easily, in parts of about an hour.
func HardSample(s *School, tag string) ([]translate.Reading, diag.Diagnostics) {
	in, problems := s.sampleInput(tag)
	if len(problems) > 0 {
		return nil, problems
	}
	return in.Hard(), nil
}

func (s *School) sampleInput(tag string) (site.SampleInput, diag.Diagnostics) {
	begun, problems := translate.Open(tag, s.Languages()...)
	if len(problems) > 0 {
		return site.SampleInput{}, s.Locate(problems)
	}
	catalog, problems := s.catalog(i18n.SourceTag)
	theme, more := s.Theme("")
	if problems = append(problems, more...); len(problems) > 0 {
		return site.SampleInput{}, s.Locate(problems)
	}
	return site.SampleInput{
		Draft: begun, English: catalog.Source(), Theme: theme, Targets: must(activity.Targets()), Places: must(story.LoadPlaces()),
	}, nil
}

// Remarked is what a reader wrote about a message, with where it stands now; in line 0
// where the language has it no longer.
type Remarked struct {
	translate.Remark
	At translate.Place
}

// Remarks reads a hard sample that came back, by message in the order of the file.
// Problems point into the text, which is called by the name.
func Remarks(s *School, tag, name, text string) ([]Remarked, diag.Diagnostics) {
	draft, problems := translate.Open(tag, s.Languages()...)
	if len(problems) > 0 {
		return nil, s.Locate(problems)
	}
	remarks, problems := translate.Remarks(tag, name, text)
	var all []Remarked
	for _, r := range remarks {
		all = append(all, Remarked{r, draft.Place(r.ID)})
	}
	slices.SortStableFunc(all, func(a, b Remarked) int { return cmp.Compare(a.At.Line, b.At.Line) })
	return all, problems
}

// PagesIn are the families' pages in the class's language and in the given one,
// those of the example where the folder holds language files alone.
func PagesIn(s *School, tag string) ([]site.File, diag.Diagnostics) {
	in, problems := s.inputFor(tag)
	if len(problems) > 0 {
		return nil, problems
	}
	files, _, problems := site.Assemble(in)
	return files, s.Locate(problems)
}
