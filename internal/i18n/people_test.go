package i18n

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"homebuild/internal/phrase"
	"homebuild/locales"
)

// The date of a week wants its month in one form, and the table of months has it: the
// genitive in Russian and Ukrainian, small letters elsewhere. Source of the names:
// Unicode CLDR 48.2, months, format wide (npm cldr-dates-full); Chinese has there 一月
// beside the digits that it writes in dates, Haitian Creole those of French.
func TestMonthsAsTheDateWantsThem(t *testing.T) {
	tests := []struct{ tag, months string }{
		{"ar", "يناير فبراير مارس أبريل مايو يونيو يوليو أغسطس سبتمبر أكتوبر نوفمبر ديسمبر"},
		{"es", "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre"},
		{"fr", "janvier février mars avril mai juin juillet août septembre octobre novembre décembre"},
		{"ko", "1월 2월 3월 4월 5월 6월 7월 8월 9월 10월 11월 12월"},
		{"pt", "janeiro fevereiro março abril maio junho julho agosto setembro outubro novembro dezembro"},
		{"ru", "января февраля марта апреля мая июня июля августа сентября октября ноября декабря"},
		{"uk", "січня лютого березня квітня травня червня липня серпня вересня жовтня листопада грудня"},
	}
	c := loaded(t)
	for _, test := range tests {
		if !slices.Contains(tags(), test.tag) {
			continue
		}
		for i, want := range strings.Fields(test.months) {
			date := phrase.Say("page.week", phrase.Message("Month", fmt.Sprint("month.", i+1)), phrase.Number("Day", 14), phrase.Number("Year", 2026))
			if got := in(t, c, test.tag).Plain(date); !strings.Contains(got, want) {
				t.Errorf("%s: month %d: want %q in the date, got %q", test.tag, i+1, want, got)
			}
		}
	}
}

// A language in which a date bends its month otherwise asks for a form of it.
func TestMonthsInAFormOfTheirOwn(t *testing.T) {
	text := read(t, "es")
	text = strings.Replace(text, "de {{.Month}} de", "{{.Month.of}} de", 1)
	for i := range 12 {
		text += fmt.Sprintf("\n[month.%d-of]\nother = \"d'%d\"\n", i+1, i+1)
	}
	source, file := proved(t, "es", text)
	p := source.Prove(file, math.MaxInt)
	if len(p.Problems()) > 0 {
		t.Fatal(p.Problems())
	}
	date := phrase.Say("page.week", phrase.Message("Month", "month.10"), phrase.Number("Day", 14), phrase.Number("Year", 2026))
	if got, want := p.Language.Plain(date), "Semana del 14 d'10 de 2026"; got != want {
		t.Errorf("want %q, got %q", want, got)
	}
}

// In blank stories two people are lines to write on, so no text can follow their
// gender, and one for a gender is told. (A sentence about one character that was picked
// may have them: TestFormProblems.)
func TestGendersOfTwoPeople(t *testing.T) {
	gives := regexp.MustCompile(`(?m)^gives = .*"(.*)" }$`)
	all := []string{"es", "ar", "fr", "pt", "ru", "uk"}
	if testing.Short() {
		all = all[:1]
	}
	for _, tag := range all {
		text := read(t, tag)
		sentence := gives.FindStringSubmatch(text)
		if sentence == nil {
			t.Fatalf("%s has no own.frame.gives on a line", tag)
		}
		source, file := proved(t, tag, gives.ReplaceAllString(text, "")+fmt.Sprintf("\n[own.frame.gives]\nfeminine = %q\nmasculine = %q\n", sentence[1], sentence[1]))
		want := "own.frame.gives is not about a person that is known, so it has no feminine form"
		if got := source.Prove(file, math.MaxInt).Wrong.Error(); !strings.Contains(got, want) {
			t.Errorf("%s: want %q, got %s", tag, want, got)
		}
	}
}

// read is the text of a file that comes with the program.
func read(t *testing.T, tag string) string {
	t.Helper()
	f, problems := ReadFile(tag, locales.Files)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return f.Text
}

// proved is a text as a file, and the English to hold it against.
func proved(t *testing.T, tag, text string) (*Source, *File) {
	t.Helper()
	f, problems := Parse(tag, text)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return english(t), f
}
