package site

import (
	"bytes"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/i18n"
	"homebuild/internal/page"
	"homebuild/internal/story"
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
	return SampleInput{Draft: draft, English: in.Catalog.Source(), Theme: in.Theme, Targets: in.Targets, Stock: in.Stock}
}

// The sample of each language says all there is, whole, with the sample's
// numbers, with people of each gender, and with several things.
func TestSampleSaysEverything(t *testing.T) {
	for _, tag := range i18n.Tags(locales.Files) {
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
				if _, ok := rows[s.ID]; !ok && !in.inFrame(s.ID) {
					t.Errorf("%s is not in the sample", s.ID)
				}
			}
			for _, f := range in.Stock.Frames {
				if in.Draft.Language.Has("story." + f.ID) {
					checkTellings(t, in, f, rows["story."+f.ID])
				}
			}
			if n := len(rows["thing.shell.count"].Said); n != len(translate.SampleNumbers) {
				t.Errorf("shells are counted %d times, want once for each of %v", n, translate.SampleNumbers)
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

func checkTellings(t *testing.T, in SampleInput, f story.Frame, row page.SampleRow) {
	t.Helper()
	if len(row.Said) != len(sampleNumbers) {
		t.Errorf("%s is told %d times, want %d", f.ID, len(row.Said), len(sampleNumbers))
	}
	genders, things := map[string]bool{}, map[string]bool{}
	for _, s := range in.tellings(f) {
		genders[in.Draft.Language.Gender(s.A)] = true
		things[s.Thing] = true
	}
	if want := len(in.genders(in.Stock.Only(in.Draft.Language.Has).People)); len(genders) != want || len(things) < 2 {
		t.Errorf("%s is told of %d genders and %d things, want %d and several", f.ID, len(genders), len(things), want)
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
	for _, want := range []string{"0 of ", "nobody has signed it", "it is not written yet", "Skip to the page itself"} {
		if !strings.Contains(string(html), want) {
			t.Errorf("the sample of an empty file does not say %q", want)
		}
	}
}
