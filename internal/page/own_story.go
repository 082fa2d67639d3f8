package page

import (
	"github.com/a-h/templ"

	"homebuild/internal/phrase"
	"homebuild/internal/story"
)

// A story in a teacher's own words stands on the page as she wrote it, in the
// page's language where she has it, else in the class's.

// otherLanguage marks the text of a teacher's story that stands in another
// language than the page; nil for every other story.
func (s *state) otherLanguage(t story.Story) templ.Attributes {
	if t.Own == nil {
		return nil
	}
	text := t.Own.In(s.Language.Tag())
	if text.Tag == s.Language.Tag() {
		return nil
	}
	return templ.Attributes{"lang": text.Tag, "dir": dir(text.RightToLeft)}
}

// fullAnswer is the answer to a story as a sentence, the teacher's own where the
// page is in her language, else ours, and behind it what the answer settles.
func (s *state) fullAnswer(t story.Story) templ.Component {
	return templ.Join(s.answerOr(t, t.Answer, false), s.settled(t))
}

// settled is the sentence that tells what the answer to a story settles, behind
// another one.
func (s *state) settled(t story.Story) templ.Component {
	return raw(func(m *markup) {
		if !isZero(t.So) {
			m.write(s.between(), "<span class=so>")
			m.say(s, t.So)
			m.write("</span>")
		}
	})
}

// answerFrame is the answer with a line to write on.
func (s *state) answerFrame(t story.Story) templ.Component {
	return s.answerOr(t, t.AnswerFrame, true)
}

func (s *state) answerOr(t story.Story, ours phrase.Line, blank bool) templ.Component {
	if t.Own == nil || len(t.Own.Answer.Runs) == 0 || t.Own.Answer.Tag != s.Language.Tag() {
		return s.say(ours)
	}
	if blank {
		return ownWords(t.Own.Answer, s.word("page.blank"))
	}
	return ownWords(t.Own.Answer, "")
}

// ownWords writes a teacher's text as it stands, with its numbers marked up like
// ours. The number that is asked for is a line to write on, heard as blank, unless
// that is empty.
func ownWords(t story.OwnText, blank string) templ.Component {
	return raw(func(m *markup) {
		for _, r := range t.Runs {
			switch {
			case blank != "" && r.Asked:
				m.blank(blank)
			case r.Number:
				m.element("<b class=n>", r.Text, "</b>")
			default:
				m.escape(r.Text)
			}
		}
	})
}
