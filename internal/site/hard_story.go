package site

import (
	"slices"
	"strings"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/translate"
)

// tellings are stories of the language's events until each sentence with an amount was
// told: the first of each event, then the second of those that have more to tell.
func (h *hardReading) tellings() []story.Story {
	kinds := map[problem.Kind]int{}
	var turns [][]story.Story
	for _, e := range h.in.Places.Only(h.lang.Has).Events() {
		told := map[string]bool{}
		trials := h.trials(e)
		for turn := 0; ; turn++ {
			s, ok := h.next(trials, told, kinds)
			if !ok {
				break
			}
			if turn == len(turns) {
				turns = append(turns, nil)
			}
			turns[turn] = append(turns[turn], s)
			kinds[s.Problem.Kind()]++
			for _, n := range h.hardIn(s.Problem.Numbers()...) {
				h.met[n]++
			}
			for _, line := range h.heard(s) {
				told[line.ID] = true
			}
		}
	}
	return slices.Concat(turns...)
}

// hours are the sentences of stories in parts: the first has room for so many, the
// others for those of an hour.
func (h *hardReading) hours(tellings []story.Story, room int) [][]translate.Sentence {
	parts := make([][]translate.Sentence, 1)
	for _, s := range tellings {
		told := h.told(s)
		if room < len(told) {
			room = mostSentences
			parts = append(parts, nil)
		}
		room -= len(told)
		parts[len(parts)-1] = append(parts[len(parts)-1], told...)
	}
	return parts
}

// trials are an event's stories with amounts that try the language hardest.
func (h *hardReading) trials(e *story.Event) (out []story.Story) {
	for _, k := range e.Kinds {
		for i, c := range e.Trials(k, mostTellings) {
			if s, err := h.in.Places.Tell(c, i == 1); err == nil {
				out = append(out, s)
			}
		}
	}
	return out
}

// next is the story that tells most of what was not told, in few sentences, of a kind
// and with hard numbers that few others have; false where all was told.
func (h *hardReading) next(trials []story.Story, told map[string]bool, kinds map[problem.Kind]int) (best story.Story, ok bool) {
	const share, long, hard = 120, 20, 60
	most := 0
	for _, s := range trials {
		lines, news := h.heard(s), 0
		for _, line := range lines {
			if !told[line.ID] && len(line.Values) > 0 {
				news++
			}
		}
		worth := 10000 + news*share/len(lines) - long*len(lines) - kinds[s.Problem.Kind()]
		for _, n := range h.hardIn(s.Problem.Numbers()...) {
			worth += hard / (1 + h.met[n])
		}
		if news > 0 && worth > most {
			most, best, ok = worth, s, true
		}
	}
	return best, ok
}

// frames are answers with a line to write on, as the sheet has them: one of each sort of
// answer, each of another event.
func (h *hardReading) frames(tellings []story.Story) []translate.Sentence {
	var out []translate.Sentence
	keys, events := map[string]bool{}, map[string]bool{}
	for _, s := range slices.Backward(tellings) {
		id := s.AnswerFrame.ID
		key := id[strings.LastIndexByte(id, '.'):]
		if text := h.text(s.AnswerFrame); text != "" && !keys[key] && !events[s.Event] {
			keys[key], events[s.Event] = true, true
			out = append(out, translate.Sentence{IDs: []string{id}, Said: text})
		}
	}
	return out
}

// heard are the sentences of a story and its answer.
func (h *hardReading) heard(s story.Story) []phrase.Line {
	var lines []phrase.Line
	for _, x := range s.Sentences {
		lines = append(lines, x.Line)
	}
	return append(lines, s.Answer)
}

func (h *hardReading) told(s story.Story) []translate.Sentence {
	var out []translate.Sentence
	for _, line := range h.heard(s) {
		if text := h.text(line); text != "" {
			out = append(out, translate.Sentence{IDs: []string{line.ID}, Said: text})
		}
	}
	if len(out) > 0 {
		out[len(out)-1].Ends = true
	}
	return out
}
