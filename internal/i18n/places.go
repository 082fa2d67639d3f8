package i18n

import (
	"slices"

	"homebuild/internal/problem"
)

// Places by what fills them. A person may be left out of a story sentence,
// where the verb says who it is; a quantity may not.
var (
	storyPeople    = []string{"A", "B"} // in the steps of a strategy they are numbers
	characterPlace = "Who"
	gapPlace       = "Gap" // a line to write on, as often as in English
	askPlace       = "Ask"
	extraPlace     = "Extra" // a measure may stand here too
	quantityPlaces = []string{
		string(problem.RoleStart), string(problem.RoleChange), string(problem.RoleResult),
		string(problem.RoleFirst), string(problem.RoleSecond), string(problem.RoleThird),
		string(problem.RoleTotal), string(problem.RoleBigger), string(problem.RoleSmaller),
		string(problem.RoleDifference), string(problem.RoleLater),
	}
)

// PlaceKind is what fills a place.
type PlaceKind uint8

// The kinds of places. What is none of the others holds a number, an equation or
// words.
const (
	PlaceOther    PlaceKind = iota
	PlacePerson             // a name
	PlaceQuantity           // a number with its thing
	PlaceAsk                // the asking phrase of a thing
	PlaceExtra              // a number with its thing or measure
	PlaceGap                // a line to write on
)

// KindOf tells what fills a place of a message of a family.
func KindOf(family, place string) PlaceKind {
	story := family == "story"
	switch {
	case place == characterPlace || story && slices.Contains(storyPeople, place):
		return PlacePerson
	case place == gapPlace:
		return PlaceGap
	case !story:
		return PlaceOther
	case place == askPlace:
		return PlaceAsk
	case place == extraPlace:
		return PlaceExtra
	case slices.Contains(quantityPlaces, place):
		return PlaceQuantity
	}
	return PlaceOther
}
