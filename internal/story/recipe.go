package story

import (
	"slices"
	"strings"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// RoleExtra is the place of the number that nobody needs: "{{.Extra}}".
const RoleExtra problem.Role = "Extra"

// recipes say which sentences follow the opening, by the kind of the story; the
// last one asks. The words stay, the gap moves: kinds share their sentences.
var recipes = map[problem.Kind][]string{
	problem.AddToResult:        {"start", "in", "ask-end"},
	problem.AddToChange:        {"start", "in-unknown", "end", "ask-in"},
	problem.AddToStart:         {"start-unknown", "in", "end", "ask-start"},
	problem.TakeFromResult:     {"start", "out", "ask-end"},
	problem.TakeFromChange:     {"start", "out-unknown", "end", "ask-out"},
	problem.TakeFromStart:      {"start-unknown", "out", "end", "ask-start"},
	problem.TogetherTotal:      {"first", "second", "ask-total"},
	problem.TogetherAddend:     {"total", "first", "ask-second"},
	problem.TogetherBoth:       {"total", "parts", "ask-both"},
	problem.DifferenceMore:     {"bigger", "smaller", "ask-more"},
	problem.DifferenceFewer:    {"smaller", "bigger", "ask-fewer"},
	problem.BiggerMore:         {"smaller", "bigger-more", "ask-bigger"},
	problem.BiggerFewer:        {"smaller", "bigger-fewer", "ask-bigger"},
	problem.SmallerMore:        {"bigger", "smaller-more", "ask-smaller"},
	problem.SmallerFewer:       {"bigger", "smaller-fewer", "ask-smaller"},
	problem.TogetherThree:      {"first", "second", "third", "ask-total"},
	problem.TogetherFour:       {"first", "second", "third", "fourth", "ask-total"},
	problem.AddThenAdd:         {"start", "in", "later-in", "ask-end"},
	problem.AddThenTake:        {"start", "in", "later-out", "ask-end"},
	problem.TakeThenAdd:        {"start", "out", "later-in", "ask-end"},
	problem.TakeThenTake:       {"start", "out", "later-out", "ask-end"},
	problem.TogetherThenTake:   {"first", "second", "gone", "ask-left"},
	problem.BiggerThenTogether: {"smaller", "bigger-more", "ask-sum"},
}

// The other keys of an event.
const (
	keyOpen    = "open"  // what causes all that follows
	keyExtra   = "extra" // stands after the opening
	keyIdea    = "idea"  // what can happen here, for a child who invents a story
	keyBigger  = "label-bigger"
	keySmaller = "label-smaller"
)

// givenBy is what a sentence tells the amount of; sentences that are not here tell
// what happens, and no amount.
var givenBy = map[string]problem.Role{
	"start": problem.RoleStart, "in": problem.RoleChange, "out": problem.RoleChange,
	"later-in": problem.RoleLater, "later-out": problem.RoleLater, "gone": problem.RoleLater,
	"end": problem.RoleResult, "total": problem.RoleTotal,
	"first": problem.RoleFirst, "second": problem.RoleSecond, "third": problem.RoleThird, "fourth": problem.RoleFourth,
	"bigger": problem.RoleBigger, "smaller": problem.RoleSmaller,
	"bigger-more": problem.RoleDifference, "bigger-fewer": problem.RoleDifference,
	"smaller-more": problem.RoleDifference, "smaller-fewer": problem.RoleDifference,
	keyExtra: RoleExtra,
}

// answered is what the answer to a question tells.
var answered = map[string][]problem.Role{
	"ask-end": {problem.RoleResult}, "ask-left": {problem.RoleResult},
	"ask-in": {problem.RoleChange}, "ask-out": {problem.RoleChange}, "ask-start": {problem.RoleStart},
	"ask-total": {problem.RoleTotal}, "ask-sum": {problem.RoleTotal}, "ask-second": {problem.RoleSecond},
	"ask-both": {problem.RoleFirst, problem.RoleSecond},
	"ask-more": {problem.RoleDifference}, "ask-fewer": {problem.RoleDifference},
	"ask-bigger": {problem.RoleBigger}, "ask-smaller": {problem.RoleSmaller},
}

// answerTo is the key of the answer to a question.
func answerTo(ask string) string { return "answer-" + strings.TrimPrefix(ask, "ask-") }

// settles is the key of the sentence that tells what the answer to a question
// settles.
func settles(ask string) string {
	if ask == "ask-more" || ask == "ask-fewer" {
		return "so-difference"
	}
	return "so-" + strings.TrimPrefix(ask, "ask-")
}

// Groups are the groups of sentences of an event that are for stories of a kind
// alone or for its like, the most special first: "compare-bigger-more",
// "compare-bigger", "compare". What none of them has stands in the event itself.
func Groups(k problem.Kind) []string {
	id := k.String()
	switch {
	case k.Steps() != nil:
		return []string{id, "chain"}
	case k == problem.TogetherThree || k == problem.TogetherFour:
		return []string{id}
	}
	switch k.Situation() {
	case problem.AddTo:
		return []string{id, "add-to"}
	case problem.TakeFrom:
		return []string{id, "take-from"}
	case problem.PutTogether:
		return []string{id, "together"}
	}
	return []string{id, id[:strings.LastIndexByte(id, '-')], "compare"}
}

// EventText is a text that the words of an event must have.
type EventText struct {
	Key     string
	Roles   []problem.Role // its places, each once; none for words alone
	Answers bool           // it is also said with a line to write on
}

// texts gives all that a story of a kind says, the number that nobody needs
// included.
func texts(k problem.Kind) []EventText {
	keys := append([]string{keyOpen, keyExtra}, recipes[k]...)
	out := make([]EventText, 0, len(keys)+2)
	for _, key := range keys {
		t := EventText{Key: key}
		if role := givenBy[key]; role != "" {
			t.Roles = []problem.Role{role}
		}
		out = append(out, t)
	}
	ask := keys[len(keys)-1]
	return append(out, EventText{answerTo(ask), answered[ask], true}, EventText{Key: settles(ask)})
}

// Telling is a kind of story that an event tells.
type Telling struct {
	Kind   problem.Kind
	Groups []string    // see Groups
	Texts  []EventText // each is in one of the groups, or in the event itself
}

// Tellings lists what the words of an event are for, kind by kind.
func (e *Event) Tellings() []Telling {
	out := make([]Telling, len(e.Kinds))
	for i, k := range e.Kinds {
		out[i] = Telling{k, Groups(k), texts(k)}
	}
	return out
}

// Always lists the texts that an event has beside those of its stories.
func (e *Event) Always() []EventText {
	always := []EventText{{Key: keyIdea}}
	if e.Compares() {
		always = append(always, EventText{Key: keyBigger}, EventText{Key: keySmaller})
	}
	return always
}

// Idea says in the present what can happen here.
func (e *Event) Idea() phrase.Line { return phrase.Say(e.Message(keyIdea)) }

// Keys lists every key that a text of an event can have.
func Keys() []string {
	keys := []string{keyIdea, keyBigger, keySmaller}
	for _, k := range problem.Kinds() {
		for _, t := range texts(k) {
			if !slices.Contains(keys, t.Key) {
				keys = append(keys, t.Key)
			}
		}
	}
	return keys
}
