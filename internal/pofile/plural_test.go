package pofile

import (
	"testing"

	"golang.org/x/text/language"

	"homebuild/internal/i18n"
)

// Expressions of languages as the GNU gettext manual has them ("Plural forms", checked
// in version 0.21), where ours must say the same of each number.
func TestPluralForms(t *testing.T) {
	all := func(rule *i18n.Plurals) []i18n.Category {
		var out []i18n.Category
		for _, c := range i18n.Categories() {
			if rule.Needs(c) {
				out = append(out, c)
			}
		}
		return out
	}
	tests := []struct{ tag, gnu string }{
		{"es", "nplurals=2; plural=n != 1;"},
		{"pt-BR", "nplurals=2; plural=n > 1;"},
		{"ko", "nplurals=1; plural=0;"},
		{"vi", "nplurals=1; plural=0;"},
		{"ru", "nplurals=3; plural=n%10==1 && n%100!=11 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? 1 : 2;"},
		{"uk", "nplurals=3; plural=n%10==1 && n%100!=11 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? 1 : 2;"},
		{"pl", "nplurals=3; plural=n==1 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? 1 : 2;"},
		{"cs", "nplurals=3; plural=(n==1) ? 0 : (n>=2 && n<=4) ? 1 : 2;"},
		{"sl", "nplurals=4; plural=n%100==1 ? 0 : n%100==2 ? 1 : n%100==3 || n%100==4 ? 2 : 3;"},
		{"ar", "nplurals=6; plural=n==0 ? 0 : n==1 ? 1 : n==2 ? 2 : n%100>=3 && n%100<=10 ? 3 : n%100>=11 ? 4 : 5;"},
	}
	for _, test := range tests {
		rule, err := i18n.NewPlurals(language.MustParse(test.tag))
		if err != nil {
			t.Fatal(err)
		}
		categories := all(rule)
		ours := pluralForms(rule, categories)
		for name, head := range map[string]string{"ours": ours, "the manual's": test.gnu} {
			got, err := categoriesOf(head, rule, categories)
			if err != nil || len(got) != len(categories) {
				t.Errorf("%s, %s %q: want %v, got %v, %v", test.tag, name, head, categories, got, err)
			}
		}
		t.Log(test.tag, ours)
	}
	// Languages whose rules are known to be hard: what is written is read as it was meant.
	for _, tag := range []string{"lt", "lv", "br", "ga", "gd", "cy", "mt", "shi", "gv", "is", "mk", "da", "fil", "he", "hr", "ro", "dsb", "tzm", "si", "ak", "se"} {
		rule, err := i18n.NewPlurals(language.MustParse(tag))
		if err != nil {
			continue // go-i18n has no rule
		}
		categories := all(rule)
		got, err := categoriesOf(pluralForms(rule, categories), rule, categories)
		if err != nil {
			t.Errorf("%s: %q: %v, %v", tag, pluralForms(rule, categories), got, err)
		}
	}
	for _, bad := range []string{"", "nplurals=2;", "nplurals=9; plural=0;", "nplurals=2; plural=n;", "nplurals=2; plural=n>5;", "nplurals=2; plural=((((;", "nplurals=2; plural=n ? : 1;"} {
		rule, _ := i18n.NewPlurals(language.MustParse("es"))
		if got, err := categoriesOf(bad, rule, all(rule)); err == nil {
			t.Errorf("%q: want an error, got %v", bad, got)
		}
	}
}
