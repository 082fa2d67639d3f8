package i18n

import (
	"fmt"
	"strings"
)

// What is exchanged in the stories of a file: questions with each other's answers,
// "more" and "fewer", who gives and who takes. Each check holds sentences of the file
// against others of it, and tells nothing where they do not say enough.

// nearerByFar is by how many words two questions must be nearer to each other's
// answers than to their own. In the twelve languages of the program no two questions
// are nearer by one; of all pairs, exchanged, more than 80 in a hundred are by two.
const nearerByFar = 2

const askPrefix, answerPrefix = "ask-", "answer-"

// checkAsked finds two questions of an event that ask for each other's answers.
func (p *eventProof) checkAsked() {
	type asked struct {
		i            int // the question's place in the event
		key          string
		question, as stems
	}
	var all []asked
	for i, s := range p.event.Sentences {
		key, isAsk := strings.CutPrefix(s.Key, askPrefix)
		answer := p.tale.find(nil, answerPrefix+key)
		if isAsk && s.Group == "" && answer >= 0 && p.tale[i].template != nil && p.tale[answer].template != nil {
			all = append(all, asked{i, key, stemsOf(p.tale[i].template, stemLetters), stemsOf(p.tale[answer].template, stemLetters)})
		}
	}
	var worst [2]asked
	most := nearerByFar - 1
	for i, x := range all {
		for _, y := range all[i+1:] {
			nearer := x.question.nearer(y.question, x.as, y.as) + y.question.nearer(x.question, y.as, x.as)
			if nearer > most {
				most, worst = nearer, [2]asked{x, y}
			}
		}
	}
	if x, y := worst[0], worst[1]; most >= nearerByFar {
		p.problem(p.event.Sentences[x.i].Line, fmt.Sprintf("%s and %s look exchanged: each asks for the other's answer", p.name(x.i), p.event.Sentences[y.i].Name()),
			fmt.Sprintf("read each with its answer, answer-%s and answer-%s", x.key, y.key))
	}
}

// comparing are the sentences of an event that say who has more, each with the one that
// says who has fewer; questions stand apart, as "how many" may have words of both.
var comparing = [2][][2]string{
	{{"bigger-more", "smaller-fewer"}, {"smaller-more", "bigger-fewer"}, {"answer-more", "answer-fewer"}},
	{{"ask-more", "ask-fewer"}},
}

// Words are those of "more" when of 100 sentences that tell who has more at least 15
// have them, and of those that tell who has fewer at most 3. Fewer than 34 sentences of
// each kind say nothing: one that is exchanged takes from a word what makes it a mark.
const (
	oftenOfHundred   = 15
	hardlyOfHundred  = 3
	moreSide, fewers = 0, 1
)

// compared is a sentence and the one that says the opposite.
type compared struct {
	event *Event
	keys  [2]string
	words [2]stems
}

// checkComparisons finds sentences about who has more that speak with the words of
// those about who has fewer, and the other way round.
func (b *builder) checkComparisons() {
	for _, pairs := range comparing {
		all := b.comparisons(pairs)
		marks := marksOf(all)
		for _, c := range all {
			if c.exchanged(marks) {
				s := c.event.Sentence("", c.keys[moreSide])
				b.problem(s.Line, fmt.Sprintf("%s.%s and %s look exchanged: other stories say it the other way round", c.event.ID, s.Key, c.keys[fewers]), "write who has more in the one, who has fewer in the other")
			}
		}
	}
}

// comparisons are those of all events.
func (b *builder) comparisons(pairs [][2]string) []compared {
	var all []compared
	for _, e := range b.file.Events {
		t := b.lang.tales[e.ID]
		for _, keys := range pairs {
			more, fewer := t.find(nil, keys[moreSide]), t.find(nil, keys[fewers])
			if more >= 0 && fewer >= 0 && t[more].template != nil && t[fewer].template != nil {
				all = append(all, compared{e, keys, [2]stems{wordsOf(t[more].template), wordsOf(t[fewer].template)}})
			}
		}
	}
	return all
}

// wordsOf are the whole words of a sentence, and the forms that it asks for: a language
// may say "more" in the form of a thing.
func wordsOf(t template) stems {
	words := stemsOf(t, 0)
	for _, s := range t {
		if s.form != "" && s.form != numberForm {
			words = words.with([]rune("." + s.form))
		}
	}
	return words
}

// marksOf are the words that tell the two sides apart.
func marksOf(all []compared) [2]stems {
	count := map[uint64][2]int{}
	for _, c := range all {
		for side, words := range c.words {
			for _, w := range words {
				n := count[w]
				n[side]++
				count[w] = n
			}
		}
	}
	var marks [2]stems
	for w, n := range count {
		for side := range marks {
			if n[side]*100 >= oftenOfHundred*len(all) && n[1-side]*100 <= hardlyOfHundred*len(all) {
				marks[side] = append(marks[side], w)
			}
		}
	}
	return marks
}

// exchanged reports whether both sentences speak with the words of the other side and
// none of their own.
func (c compared) exchanged(marks [2]stems) bool {
	against := 0
	for side, words := range c.words {
		switch {
		case words.shared(marks[side]) > 0:
			return false
		case words.shared(marks[1-side]) > 0:
			against++
		}
	}
	return against == 2 || against == 1 && (len(marks[moreSide]) == 0 || len(marks[fewers]) == 0)
}
