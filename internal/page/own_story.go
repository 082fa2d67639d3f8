package page

import (
	"strings"

	"github.com/a-h/templ"

	"homebuild/internal/phrase"
	"homebuild/internal/story"
)

// speaks marks the text of a teacher's story that stands in another language
// than the page.
func (s *sheet) speaks(t story.Story) templ.Attributes {
	if t.Own == nil {
		return nil
	}
	text := t.Own.In(s.Language.Tag())
	if text.Tag == s.Language.Tag() {
		return nil
	}
	return templ.Attributes{"lang": text.Tag, "dir": dir(text.RightToLeft)}
}

// foreign reports whether a teacher's story stands in another language than the
// page.
func (s *sheet) foreign(t story.Story) bool { return len(s.speaks(t)) > 0 }

// fullAnswer is the answer to a story as a sentence: the teacher's own where the
// page is in her language, else ours.
func (s *sheet) fullAnswer(t story.Story) templ.Component {
	return s.answerOr(t, t.Answer, false)
}

// answerFrame is the answer with a line to write on.
func (s *sheet) answerFrame(t story.Story) templ.Component {
	return s.answerOr(t, t.AnswerFrame, true)
}

func (s *sheet) answerOr(t story.Story, ours phrase.Line, blank bool) templ.Component {
	if t.Own == nil || len(t.Own.Answer.Runs) == 0 || t.Own.Answer.Tag != s.Language.Tag() {
		return s.say(ours)
	}
	return ownWords(t.Own.Answer, blank)
}

// ownWords writes a teacher's text as it stands, with its numbers marked up like
// ours.
func ownWords(t story.OwnText, blank bool) templ.Component {
	return raw(func(b *strings.Builder) {
		for _, r := range t.Runs {
			text := templ.EscapeString(r.Text)
			switch {
			case blank && r.Asked:
				b.WriteString("<span class=gap><span class=hide>____</span></span>")
			case r.Number:
				b.WriteString("<b class=n>" + text + "</b>")
			default:
				b.WriteString(text)
			}
		}
	})
}
