package i18n

import (
	"fmt"

	goi18n "github.com/nicksnyder/go-i18n/v2/i18n"
	"golang.org/x/text/language"

	"homebuild/internal/problem"
)

// category is a plural category of CLDR (Unicode LDML, part 3, "Language
// Plural Rules").
type category uint8

const (
	zero category = iota
	one
	two
	few
	many
	other
)

var categoryNames = [...]string{"zero", "one", "two", "few", "many", "other"}

// String is CLDR's name of the category.
func (c category) String() string { return categoryNames[c] }

// most is the largest number that a file is proved for; bigger numbers are
// asked from go-i18n one by one.
const most = problem.Largest

// alwaysOther lists the languages whose noun never changes after a number and
// for which go-i18n 2.7 has another rule, or none.
var alwaysOther = map[string]string{
	"vi": "CLDR 48.2 has other alone; go-i18n has one for 0 and 1",
	"ht": "CLDR 48.2 has no rule; the noun does not change after a number (from memory)",
}

// plurals is the plural rule of a language.
type plurals struct {
	table     [most + 1]category
	localizer *goi18n.Localizer // nil where every number is other
	met       [other + 1]int    // how many of 0 to 1000 fall into each category
	million   category          // Spanish and French have "many" for 1,000,000
}

// probe is a message whose text is its own category, so that saying it tells
// which category go-i18n's rule gives.
var probe = goi18n.Message{ID: "probe", Zero: "zero", One: "one", Two: "two", Few: "few", Many: "many", Other: "other"}

// newPlurals asks go-i18n's rule for every number from 0 to 1000. The error
// says that there is no rule.
func newPlurals(tag language.Tag) (*plurals, error) {
	p := &plurals{million: other}
	if base, _ := tag.Base(); alwaysOther[base.String()] == "" {
		bundle := goi18n.NewBundle(tag)
		m := probe
		if err := bundle.AddMessages(tag, &m); err != nil {
			return nil, err
		}
		p.localizer = goi18n.NewLocalizer(bundle, tag.String())
		p.million = p.ask(1_000_000)
	}
	for n := range p.table {
		p.table[n] = p.ask(n)
		p.met[p.table[n]]++
	}
	return p, nil
}

func (p *plurals) ask(n int) category {
	if p.localizer == nil {
		return other
	}
	name, err := p.localizer.Localize(&goi18n.LocalizeConfig{MessageID: "probe", PluralCount: n, TemplateData: probe.ID})
	for c, known := range categoryNames {
		if err == nil && name == known {
			return category(c)
		}
	}
	panic(fmt.Sprintf("i18n: go-i18n gives no category for %d: %q, %v", n, name, err))
}

// of is the category of a number.
func (p *plurals) of(n int) category {
	if n >= 0 && n <= most {
		return p.table[n]
	}
	return p.ask(n)
}

// needs reports whether some number from 0 to 1000 is of the category.
func (p *plurals) needs(c category) bool { return p.met[c] > 0 }

// knows reports whether the language has the category at all. "other" is
// known everywhere: fractions need it, and translation platforms ask for it.
func (p *plurals) knows(c category) bool { return p.needs(c) || c == other || c == p.million }

// single reports whether the category stands for exactly one number, so that
// its form may leave the number out: the Arabic dual says "two" by itself.
func (p *plurals) single(c category) bool { return p.met[c] == 1 }

// example is the smallest number of the category.
func (p *plurals) example(c category) int {
	for n, got := range p.table {
		if got == c {
			return n
		}
	}
	return 0
}

// onlyOther is the rule of a language whose nouns never change.
func onlyOther() *plurals {
	p := &plurals{million: other}
	for n := range p.table {
		p.table[n] = other
	}
	p.met[other] = len(p.table)
	return p
}
