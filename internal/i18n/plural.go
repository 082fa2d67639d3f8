package i18n

import (
	"fmt"
	"slices"

	goi18n "github.com/nicksnyder/go-i18n/v2/i18n"
	"golang.org/x/text/language"

	"homebuild/internal/problem"
)

// most is the largest number that a file is proved for; bigger numbers are
// asked from go-i18n one by one.
const most = problem.Largest

// alwaysOther lists the languages whose noun never changes after a number and
// for which go-i18n 2.7 has another rule, or none.
var alwaysOther = map[string]string{
	"vi": "CLDR 48.2 has other alone; go-i18n has one for 0 and 1",
	"ht": "CLDR 48.2 has no rule; the noun does not change after a number (from memory)",
}

// Plurals is the plural rule of a language.
type Plurals struct {
	localizer *goi18n.Localizer // nil where every number is other
	table     [most + 1]Category
	met       [Other + 1]int // how many of 0 to 1000 fall into each category
	million   Category       // Spanish and French have "many" for 1,000,000
}

// named is a message that says in each plural form which form that is: go-i18n
// tells a rule by no other way than the form it chooses.
var named = goi18n.Message{ID: "category", Zero: "zero", One: "one", Two: "two", Few: "few", Many: "many", Other: "other"}

// NewPlurals finds the rule of a language. The error says that there is none.
func NewPlurals(tag language.Tag) (*Plurals, error) {
	p := &Plurals{}
	if base, _ := tag.Base(); alwaysOther[base.String()] == "" {
		bundle := goi18n.NewBundle(tag)
		if err := bundle.AddMessages(tag, new(named)); err != nil {
			return nil, err
		}
		p.localizer = goi18n.NewLocalizer(bundle, tag.String())
	}
	p.learn()
	return p, nil
}

// OnlyOther is the rule of a language whose nouns never change.
func OnlyOther() *Plurals {
	p := &Plurals{}
	p.learn()
	return p
}

// learn fills the table. CLDR's rules look at a number up to 1000 as a whole
// only where it is small or 1000 itself, and else at its last two digits.
func (p *Plurals) learn() {
	for n := range p.table {
		if n < 200 || n == most {
			p.table[n] = p.ask(n)
		} else {
			p.table[n] = p.table[100+n%100]
		}
		p.met[p.table[n]]++
	}
	p.million = p.ask(1_000_000)
}

func (p *Plurals) ask(n int) Category {
	if p.localizer == nil {
		return Other
	}
	name, err := p.localizer.Localize(&goi18n.LocalizeConfig{MessageID: named.ID, PluralCount: n, TemplateData: n})
	c := slices.Index(messageKeys, name)
	if err != nil || c < 0 {
		panic(fmt.Sprintf("i18n: go-i18n gives no category for %d: %q, %v", n, name, err))
	}
	return Category(c)
}

// Of is the category of a number.
func (p *Plurals) Of(n int) Category {
	if n >= 0 && n <= most {
		return p.table[n]
	}
	return p.ask(n)
}

// Needs reports whether some number from 0 to 1000 is of the category.
func (p *Plurals) Needs(c Category) bool { return p.met[c] > 0 }

// knows reports whether the language has the category at all. "other" is
// known everywhere: fractions need it, and translation platforms ask for it.
func (p *Plurals) knows(c Category) bool { return p.Needs(c) || c == Other || c == p.million }

// single reports whether the category stands for exactly one number, so that
// its form may leave the number out: the Arabic dual says "two" by itself.
func (p *Plurals) single(c Category) bool { return p.met[c] == 1 }

// Examples are the smallest numbers of a category, as many as there are up to n.
func (p *Plurals) Examples(c Category, n int) []int {
	var out []int
	for i := 0; i < len(p.table) && len(out) < n; i++ {
		if p.table[i] == c {
			out = append(out, i)
		}
	}
	return out
}
