package page

import (
	"testing"

	"homebuild/internal/i18n"
	"homebuild/locales"
)

// The first of a month has a word of its own in some languages. French and
// Portuguese: "1er" and "1º" in dates, from memory of their printers' usage;
// the others: the order of day, month and year in CLDR's long dates.
func TestFirstOfAMonth(t *testing.T) {
	tests := []struct {
		tag           string
		first, second string
	}{
		{"en", "Week of February 1, 2027", "Week of February 2, 2027"},
		{"fr", "Semaine du 1er février 2027", "Semaine du 2 février 2027"},
		{"pt", "Semana de 1º de fevereiro de 2027", "Semana de 2 de fevereiro de 2027"},
		{"es", "Semana del 1 de febrero de 2027", "Semana del 2 de febrero de 2027"},
		{"ru", "Неделя с 1 февраля 2027\u00a0года", "Неделя с 2 февраля 2027\u00a0года"},
		{"uk", "Тиждень з 1 лютого 2027\u00a0року", "Тиждень з 2 лютого 2027\u00a0року"},
		{"ko", "2027년 2월 1일 주간", "2027년 2월 2일 주간"},
		{"zh-Hans", "2027年2月1日这一周", "2027年2月2日这一周"},
	}
	all, problems := i18n.Load(nil, locales.Files)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, test := range tests {
		l, _ := all.Language(test.tag)
		for date, want := range map[string]string{"2027-02-01": test.first, "2027-02-02": test.second} {
			if got := l.Plain(WeekOf(date)); got != want {
				t.Errorf("%s: want %q, got %q", test.tag, want, got)
			}
		}
	}
}
