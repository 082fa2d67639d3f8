package i18n

import (
	"slices"
	"strings"

	"homebuild/internal/problem"
)

// optional lists the families of messages that a language may leave out block
// by block, with the number of parts in a block's id: the frame
// "story.add-to-result.1", the thing "thing.shell". All other messages are
// required.
var optional = map[string]int{
	"story": 3, "thing": 2, "measure": 2, "person": 2, "character": 2, "setting": 2,
}

// countedFamilies have counted forms; peopleFamilies have names and genders.
var (
	countedFamilies = []string{"thing", "measure"}
	peopleFamilies  = []string{"person", "character"}
)

// genders are CLDR's grammatical genders (grammaticalFeatures). A message that
// agrees with the person it is about has one form for each.
var genders = []string{"animate", "common", "feminine", "inanimate", "masculine", "neuter", "personal"}

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

// family is the first part of an id.
func family(id string) string {
	first, _, _ := strings.Cut(id, ".")
	return first
}

// block is the id of the optional block that a message belongs to; empty for
// a required message.
func block(id string) string {
	parts := optional[family(id)]
	if parts == 0 {
		return ""
	}
	end := 0
	for range parts {
		dot := strings.IndexByte(id[end:], '.')
		if dot < 0 {
			return id
		}
		end += dot + 1
	}
	return id[:end-1]
}

// lastKey is the last part of an id: "count-accusative".
func lastKey(id string) string { return id[strings.LastIndexByte(id, '.')+1:] }

// cutGender takes a gender form off an id: "….change.feminine".
func cutGender(id string) (base, gender string) {
	if key := lastKey(id); slices.Contains(genders, key) && key != id {
		return strings.TrimSuffix(id, "."+key), key
	}
	return id, ""
}

// formOf splits a key of a counted block: "count-accusative" is the
// accusative of count.
func formOf(key string) (kind, form string) {
	kind, form, _ = strings.Cut(key, "-")
	return kind, form
}

// about is the family of the people that a message speaks of: "person" for a
// story sentence, "character" for one with {{.Who}}; empty for none. Only such
// a message can agree with somebody's gender.
func (s *source) about(id string) string {
	switch {
	case family(id) == "story":
		return "person"
	case slices.Contains(s.places(id), characterPlace):
		return "character"
	}
	return ""
}

// isPerson reports whether a person stands in a place of a message.
func isPerson(id, place string) bool {
	return place == characterPlace || family(id) == "story" && slices.Contains(storyPeople, place)
}
