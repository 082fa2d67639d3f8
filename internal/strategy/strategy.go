// Package strategy works calculations out the way a good teacher would: each
// strategy says when it helps, and gives steps, every one a true equation that
// is easier than the last. It knows no words: a step carries the id of its
// sentence and the numbers in it.
package strategy

import (
	"homebuild/internal/phrase"
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
	lastName      = TwoParts
)

// Step is one line of the working.
type Step struct {
	// ID ends the message id: step "fill" of MakeTen is said by
	// "strategy.make-ten.fill".
	ID       string
	Values   []phrase.Value
	Equation problem.Equation // what is written down; always true
}

// Hop is a jump along the number line.
type Hop struct{ From, To int }

// Way is a calculation worked out by a strategy.
type Way struct {
	Name        Name
	Calculation problem.Calculation
	Steps       []Step
	Chain       problem.Equation // the whole working in one line: 8 + 6 = 8 + 2 + 4 = 10 + 4 = 14
	Hops        []Hop            // the same on a number line, in order; empty where a line does not show it
}
