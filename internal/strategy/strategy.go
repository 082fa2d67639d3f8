// Package strategy works calculations out the way a good teacher would. Each
// strategy is one file and one value, which says when it helps and works a
// calculation out in steps: every step is a true equation, easier than the
// last, with its sentence and, beside the last ones, its picture. A strategy
// also knows how a child goes wrong who works that way, and what to say first
// to one who is stuck. It knows no words: a sentence is the id of a message and
// the numbers in it.
package strategy

import (
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// Name is a strategy.
type Name uint8

const (
	CountOn       Name = iota + 1 // 9 + 2: start at the bigger, count on 1 to 3
	Doubles                       // 7 + 7
	NearDoubles                   // 6 + 7 = 6 + 6 + 1
	MakeTen                       // 8 + 6 = 8 + 2 + 4 = 10 + 4
	TenAndMore                    // 6 + 12 = 6 + 2 + 10: split the teen number
	FriendlyPair                  // 8 + 4 + 2 = 10 + 4: three addends
	CountBack                     // 11 - 2: take away 1 to 3
	BridgeBack                    // 13 - 4 = 13 - 3 - 1 = 10 - 1
	ThinkAddition                 // 12 - 8: 8 + ? = 12
	FriendlyJump                  // 45 + 39 = 45 + 40 - 1: compensation
	SplitTens                     // 56 + 37: 50 + 30, 6 + 7, 80 + 13
	JumpOnLine                    // 46 + 23 = 46 + 20 + 3
	JumpToTen                     // 58 + 26 = 58 + 2 + 24: to the next ten first
	JumpUp                        // 65 - 49: 49 to 50, to 60, to 65
	GiveAndTake                   // 29 + 36 = 30 + 35: move a bit over
	Expanded                      // tens and ones side by side, columns on paper
	TwoParts                      // three addends worked as 9 + 9: join two, then the third
	CountAll                      // 3 + 4: show both, count from one
	PartnersOfTen                 // 6 + 4, 10 - 6: seen on a ten frame
	CountInTens                   // 80 - 50: eight tens less five tens
	Pairs                         // 24 + 17 + 36 + 13 = 60 + 30: four addends, two and two
	lastName      = Pairs
)

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
func (n Name) Title() phrase.Line { return phrase.Say(message(n.String(), "name")) }

// About says in one sentence what the strategy is.
func (n Name) About() phrase.Line { return phrase.Say(message(n.String(), "about")) }

// FirstGrade is the first grade that learns n (CCSS-M 2010: K.OA.A.1 and A.4,
// 1.OA.B.3 to C.6, 1.NBT.C.4 to C.6, 2.NBT.B.7). Counting on is taught in grade 1
// (1.OA.C.5), and children find it in kindergarten (Progressions for the CCSS-M,
// K-5 Operations and Algebraic Thinking; secondary).
func (n Name) FirstGrade() problem.Grade { return methods[n].grade }

func message(strategy, end string) string { return "strategy." + strategy + "." + end }

// Step is one line of the working.
type Step struct {
	Say      phrase.Line
	Equation problem.Equation // what is written down, always true; zero where nothing is
	Picture  picture.Picture  // what stands beside it; nil for none
}

// Way is a calculation worked out by a strategy.
type Way struct {
	Name        Name
	Calculation problem.Calculation
	Steps       []Step           // one has a picture at least
	Chain       problem.Equation // the whole working in one line: 8 + 6 = 8 + 2 + 4 = 10 + 4 = 14
	Slips       []Slip           // the wrong numbers that this way typically gives
	Hint        phrase.Line      // what to say first to a child who is stuck; zero where it would tell the answer
}

// Title is the way's name for families. It can say more than its strategy's: with
// hundreds, splitting is not called "tens and ones".
func (w Way) Title() phrase.Line {
	return phrase.Say(message(methods[w.Name].said(w.Calculation), "name"))
}

// About says in one sentence what the way is.
func (w Way) About() phrase.Line {
	return phrase.Say(message(methods[w.Name].said(w.Calculation), "about"))
}

// Fits reports whether a good teacher would let n be used for c. It is false
// for a calculation that is not sound: a number or an answer below zero, or
// other than two to four numbers.
func Fits(n Name, c problem.Calculation) bool {
	return n.Valid() && sound(c) && methods[n].fits(c)
}

func sound(c problem.Calculation) bool {
	if len(c.Numbers) < 2 || len(c.Numbers) > 4 || c.Op == problem.Minus && len(c.Numbers) > 3 || (c.Op != problem.Plus && c.Op != problem.Minus) {
		return false
	}
	for _, n := range c.Numbers {
		if n < 0 {
			return false
		}
	}
	return c.Value() >= 0
}
