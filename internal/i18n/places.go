package i18n

// Places by what fills them.
const (
	characterPlace = "Who"
	gapPlace       = "Gap" // a line to write on, as often as in English
)

// PlaceKind is what fills a place of a message that is no sentence of an event.
type PlaceKind uint8

// The kinds of places. What is none of the others holds a number, an equation or
// words.
const (
	PlaceOther  PlaceKind = iota
	PlacePerson           // a name
	PlaceGap              // a line to write on
)

// KindOf tells what fills a place.
func KindOf(place string) PlaceKind {
	switch place {
	case characterPlace:
		return PlacePerson
	case gapPlace:
		return PlaceGap
	}
	return PlaceOther
}
