package strategy

import (
	"fmt"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// method is what the package knows about a strategy. fits is asked only about
// calculations that are sound, work only about those that fit.
type method struct {
	id   string
	fits func(problem.Calculation) bool
	work func(problem.Calculation, *working)
}

var methods = [lastName + 1]method{
	CountOn:       {"count-on", countOnFits, countOn},
	Doubles:       {"doubles", doublesFit, doubles},
	NearDoubles:   {"near-doubles", nearDoublesFit, nearDoubles},
	MakeTen:       {"make-ten", makeTenFits, makeTen},
	TenAndMore:    {"ten-and-more", tenAndMoreFits, tenAndMore},
	FriendlyPair:  {"friendly-pair", friendlyPairFits, friendlyPair},
	CountBack:     {"count-back", countBackFits, countBack},
	BridgeBack:    {"bridge-back", bridgeBackFits, bridgeBack},
	ThinkAddition: {"think-addition", thinkAdditionFits, thinkAddition},
	FriendlyJump:  {"friendly-jump", friendlyJumpFits, friendlyJump},
	SplitTens:     {"split-tens", splitTensFits, splitTens},
	JumpOnLine:    {"jump-on-line", jumpOnLineFits, jumpOnLine},
	JumpToTen:     {"jump-to-ten", jumpToTenFits, jumpToTen},
	JumpUp:        {"jump-up", jumpUpFits, jumpUp},
	GiveAndTake:   {"give-and-take", giveAndTakeFits, giveAndTake},
	Expanded:      {"expanded", expandedFits, expanded},
	TwoParts:      {"two-parts", twoPartsFits, twoParts},
}

// Names lists every strategy.
func Names() []Name {
	all := make([]Name, 0, lastName)
	for n := CountOn; n <= lastName; n++ {
		all = append(all, n)
	}
	return all
}

// ParseName finds a strategy by its id, as written in week files.
func ParseName(id string) (Name, bool) {
	for _, n := range Names() {
		if methods[n].id == id {
			return n, true
		}
	}
	return 0, false
}

// Valid reports whether n is one of the strategies.
func (n Name) Valid() bool { return n >= CountOn && n <= lastName }

// String gives the id used in files and message ids: "make-ten".
func (n Name) String() string {
	if !n.Valid() {
		return "no-strategy"
	}
	return methods[n].id
}

// Title is the strategy's name for families.
func (n Name) Title() phrase.Line { return phrase.Say(n.message("name")) }

// About says in one sentence what the strategy is.
func (n Name) About() phrase.Line { return phrase.Say(n.message("about")) }

func (n Name) message(end string) string { return "strategy." + n.String() + "." + end }

// Line is the sentence of the i-th step.
func (w Way) Line(i int) phrase.Line {
	return phrase.Say(w.Name.message(w.Steps[i].ID), w.Steps[i].Values...)
}

// Fits reports whether a good teacher would let n be used for c. It is false
// for a calculation that is not sound: a number or an answer below zero, or
// other than two or three numbers.
func Fits(n Name, c problem.Calculation) bool {
	return n.Valid() && sound(c) && methods[n].fits(c)
}

// Work works c out by n. The error says that n does not fit.
func Work(n Name, c problem.Calculation) (Way, error) {
	if !Fits(n, c) {
		return Way{}, fmt.Errorf("%v does not fit %v", n, c)
	}
	return work(n, c), nil
}

func work(n Name, c problem.Calculation) Way {
	w := working{way: Way{Name: n, Calculation: c}}
	methods[n].work(c, &w)
	return w.way
}

func sound(c problem.Calculation) bool {
	if len(c.Numbers) < 2 || len(c.Numbers) > 3 || (c.Op != problem.Plus && c.Op != problem.Minus) {
		return false
	}
	for _, n := range c.Numbers {
		if n < 0 {
			return false
		}
	}
	return c.Value() >= 0
}
