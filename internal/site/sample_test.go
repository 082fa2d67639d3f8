package site

import (
	"bytes"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/page"
	"homebuild/internal/translate"
	"homebuild/locales"
)

// sampleOf is the input of the sample of a language.
func sampleOf(t *testing.T, tag string, own fstest.MapFS) SampleInput {
	t.Helper()
	in := exampleInput(t, "en")
	draft, problems := translate.Open(tag, locales.Files, own)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return SampleInput{Draft: draft, English: in.Catalog.Source(), Theme: in.Theme, Targets: in.Targets, Places: in.Places}
}

// The sample of a language says all there is, whole, with the sample's numbers, and
// every tale that the language tells. Two languages stand for all: what each file lacks
// its check finds.
func TestSampleSaysEverything(t *testing.T) {
	for _, tag := range []string{"en", "ar"} {
		t.Run(tag, func(t *testing.T) {
			t.Parallel()
			in := sampleOf(t, tag, nil)
			v := in.view(samplePath(tag))
			rows := map[string]page.SampleRow{}
			for _, part := range v.Parts {
				for _, row := range part.Rows {
					rows[row.ID] = row
					if row.Fault != "" || len(row.Said) == 0 {
						t.Errorf("%s: not said: %s", row.ID, row.Fault)
					}
				}
			}
			for _, s := range translate.Samples(in.Draft.Language) {
				if _, ok := rows[s.ID]; !ok {
					t.Errorf("%s is not in the sample", s.ID)
				}
			}
			for _, e := range in.Places.Only(in.Draft.Language.Has).Events() {
				for _, k := range e.Kinds {
					if row := rows[e.Message(k.String())]; len(row.Said) < 2 || row.English == "" || row.Note == "" {
						t.Errorf("%v of %s is told %d times, for %q, with the note %q", k, e.ID, len(row.Said), row.English, row.Note)
					}
				}
				if row := rows[e.Thing+".count"]; len(row.Said) != len(translate.SampleNumbers) {
					t.Errorf("%s is counted %d times, want once for each of %v", e.Thing, len(row.Said), translate.SampleNumbers)
				}
			}
			var html bytes.Buffer
			if err := page.Render(&html, v); err != nil {
				t.Fatal(err)
			}
			if !strings.Contains(html.String(), "homebuild language sign "+tag+" --by") {
				t.Error("the page does not say how to sign")
			}
		})
	}
}

// A file that was just made has a sample, too, and says what is to do.
func TestSampleOfNothing(t *testing.T) {
	empty, err := translate.NewFile("uk", locales.Files)
	if err != nil {
		t.Fatal(err)
	}
	in := sampleOf(t, "uk", fstest.MapFS{"uk.toml": {Data: empty}})
	html, err := Sample(in).Render()
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"0 of ", "nobody has signed it", "it is not written yet", "Skip to the main part"} {
		if !strings.Contains(string(html), want) {
			t.Errorf("the sample of an empty file does not say %q", want)
		}
	}
}
