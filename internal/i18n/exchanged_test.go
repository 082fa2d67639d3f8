package i18n

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// sentenceOf takes a sentence apart.
func sentenceOf(t *testing.T, text string) template {
	t.Helper()
	out, wrong := parseTemplate(nil, text)
	if wrong != nil {
		t.Fatal(wrong)
	}
	return out
}

// eventWith is an event of sentences, each a key and its text, ready to be told.
func eventWith(t *testing.T, sentences [][2]string) (*Event, tale) {
	t.Helper()
	e, told := &Event{ID: "event.library.shelf"}, tale{}
	for i, s := range sentences {
		e.Sentences = append(e.Sentences, Sentence{Key: s[0], Text: s[1], Line: i + 1})
		told = append(told, said{key: s[0], template: sentenceOf(t, s[1])})
	}
	return e, told
}

// Two questions that ask for each other's answers are told, in whatever order the
// sentences of the event stand; questions in their places are not.
func TestQuestionsInAnyOrder(t *testing.T) {
	const (
		askIn, askOut       = "How many books did the school give back?", "How many books did the school borrow?"
		answerIn, answerOut = "The school gave back {{.Change}}; give back.", "The school borrowed {{.Change}}; borrow them."
	)
	orders := [][]int{{0, 1, 2, 3}, {3, 2, 1, 0}, {2, 0, 3, 1}, {1, 3, 0, 2}}
	for _, exchanged := range []bool{false, true} {
		sentences := [][2]string{{"ask-in", askIn}, {"ask-out", askOut}, {"answer-in", answerIn}, {"answer-out", answerOut}}
		if exchanged {
			sentences[0][1], sentences[1][1] = askOut, askIn
		}
		for _, order := range orders {
			var inOrder [][2]string
			for _, i := range order {
				inOrder = append(inOrder, sentences[i])
			}
			e, told := eventWith(t, inOrder)
			b := &builder{file: &File{}}
			p := eventProof{builder: b, event: e, tale: told}
			p.checkAsked()
			if got := strings.Contains(b.proof.Wrong.Error(), "each asks for the other's answer"); got != exchanged {
				t.Errorf("in the order %v, exchanged %v: told %v: %v", order, exchanged, got, b.proof.Wrong)
			}
		}
	}
}

// Two questions are exchanged that are nearer to each other's answers by two words, and
// not by one.
func TestNearerByFar(t *testing.T) {
	for askOut, want := range map[string]bool{"How many books came?": true, "How many books were there?": false} {
		e, told := eventWith(t, [][2]string{
			{"ask-in", "How many books went?"}, {"ask-out", askOut}, {"answer-in", "{{.Change}} came."}, {"answer-out", "{{.Change}} went."},
		})
		b := &builder{file: &File{}}
		p := eventProof{builder: b, event: e, tale: told}
		p.checkAsked()
		if got := len(b.proof.Wrong) > 0; got != want {
			t.Errorf("beside %q: told %v, want %v", askOut, got, want)
		}
	}
}

// Sentences about who has more are found in whatever order they stand, and one that is
// still to be written is passed over.
func TestComparisonsInAnyOrder(t *testing.T) {
	more, fewer := [2]string{"bigger-more", "We have more."}, [2]string{"smaller-fewer", "You have fewer."}
	for _, row := range []struct {
		sentences [][2]string
		want      int
	}{
		{[][2]string{more, fewer}, 1},
		{[][2]string{fewer, more}, 1},
		{[][2]string{more}, 0},
		{[][2]string{fewer}, 0},
		{[][2]string{more, {"smaller-fewer", ""}}, 0},
		{[][2]string{fewer, {"bigger-more", ""}}, 0},
	} {
		e, told := eventWith(t, row.sentences)
		b := &builder{file: &File{Events: []*Event{e}}, lang: &Language{tales: map[string]tale{e.ID: told}}}
		if got := b.comparisons(comparing[0]); len(got) != row.want {
			t.Errorf("%v: %d comparisons, want %d", row.sentences, len(got), row.want)
		}
	}
}

// compare has sentences about who has more, each with the one about who has fewer.
func compare(t *testing.T, more, fewer string) compared {
	t.Helper()
	return compared{words: [2]stems{wordsOf(sentenceOf(t, more)), wordsOf(sentenceOf(t, fewer))}}
}

// A word tells the two sides apart when at least 15 of 100 sentences of the one side
// have it and at most 3 of the other.
func TestMarksOf(t *testing.T) {
	for _, row := range []struct {
		often, hardly int // sentences of each side that have the word, of 100
		want          bool
	}{
		{100, 0, true}, {15, 0, true}, {14, 0, false}, {100, 3, true}, {100, 4, false}, {15, 3, true}, {50, 50, false},
	} {
		var all []compared
		for i := range 100 {
			more, fewer := "we", "you"
			if i < row.often {
				more = "sooner"
			}
			if i < row.hardly {
				fewer = "sooner"
			}
			all = append(all, compare(t, more, fewer))
		}
		word := compare(t, "sooner", "").words[moreSide][0]
		if got := slices.Contains(marksOf(all)[moreSide], word); got != row.want {
			t.Errorf("a word of %d and %d sentences marks a side: %v, want %v", row.often, row.hardly, got, row.want)
		}
	}
}

// Sentences are exchanged when each speaks with the words of the other side and none of
// its own; where one side has no words of its own, the other's are enough.
func TestExchangedComparisons(t *testing.T) {
	words := compare(t, "more", "fewer").words
	both, moreAlone, fewerAlone := words, [2]stems{words[0], nil}, [2]stems{nil, words[1]}
	for _, row := range []struct {
		more, fewer string // the sentences of the two sides
		marks       [2]stems
		want        bool
	}{
		{"We have more.", "You have fewer.", both, false},
		{"We have fewer.", "You have more.", both, true},
		{"We have fewer.", "You have some.", both, false},
		{"We have some.", "You have more.", both, false},
		{"We have more, you have fewer.", "We have more.", both, false},
		{"We have some.", "You have more.", moreAlone, true},
		{"We have more.", "You have some.", moreAlone, false},
		{"We have fewer.", "You have some.", fewerAlone, true},
		{"We have some.", "You have fewer.", fewerAlone, false},
		{"We have some.", "You have some.", both, false},
	} {
		if got := compare(t, row.more, row.fewer).exchanged(row.marks); got != row.want {
			t.Errorf("%q and %q are exchanged: %v, want %v", row.more, row.fewer, got, row.want)
		}
	}
}

// Of 34 sentences one that is exchanged leaves the words of the others their marks: it
// is once in 34 on the other side, less than three of a hundred. Of 33 it is more.
func TestFewestComparisons(t *testing.T) {
	for of, want := range map[int]bool{8: false, 33: false, 34: true, 100: true} {
		all := []compared{compare(t, "We have fewer.", "We have more.")}
		for len(all) < of {
			all = append(all, compare(t, "We have more.", "We have fewer."))
		}
		if got := all[0].exchanged(marksOf(all)); got != want {
			t.Errorf("one of %d is found: %v, want %v", of, got, want)
		}
	}
}

// The form that a sentence asks for is a word of it, as a language may say "more" in the
// form of a thing; the bare number is no form.
func TestFormsAreWords(t *testing.T) {
	count := func(text string) int { return len(wordsOf(sentenceOf(t, text))) }
	for text, want := range map[string]int{
		"We have {{.Difference}}.":        2,
		"We have {{.Difference.more}}.":   3,
		"We have {{.Difference.number}}.": 2,
	} {
		if got := count(text); got != want {
			t.Errorf("%s has %d words, want %d", text, got, want)
		}
	}
	if same := fmt.Sprint(wordsOf(sentenceOf(t, "{{.A.more}}"))) == fmt.Sprint(wordsOf(sentenceOf(t, "{{.A.fewer}}"))); same {
		t.Error("two forms are one word")
	}
}
