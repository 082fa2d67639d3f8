package page

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"
	"sync"

	"github.com/a-h/templ"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/story"
)

// outline is a part of a page that differs between languages in their words alone.
// It is written once for all languages of one notation, in no language: where
// something is said, there is a place. Each page then fills the places.
type outline struct {
	said   []said       // each once
	met    map[name]int // the place of each among them, while it is written
	places []int        // which of them stands where
	markup []string     // what comes before each place, and behind the last
	counted
}

// said is what a page says in its own language.
type said struct {
	as   manner
	line phrase.Line // of a word its ID alone
}

// manner is how something is said.
type manner uint8

const (
	asWord      manner = iota // a message without places
	asLine                    // marked up
	asPlain                   // plain text
	asBetween                 // what stands between two sentences
	asComma                   // what stands between two numbers
	asDirection               // the direction of the language
)

// A place is a number between two letters that no text has (Unicode: private use), so
// that it goes through the writing of a page unchanged.
const placeBegin, placeEnd = "\uE010", "\uE011"

// place makes a place.
func (o *outline) place(x said) string {
	i, met := o.met[x.name()]
	if !met {
		if o.met == nil {
			o.met = map[name]int{}
		}
		i = len(o.said)
		o.met[x.name()], o.said = i, append(o.said, x)
	}
	return placeBegin + strconv.Itoa(i) + placeEnd
}

// name is the same for what is said in the same manner of the very same values.
type name struct {
	as          manner
	id, subject string
	values      *phrase.Value // where they begin
	groups      *string
	n           [2]int
}

func (x said) name() name {
	l := x.line
	return name{x.as, l.ID, l.Subject, beginning(l.Values), beginning(l.Groups), [2]int{len(l.Values), len(l.Groups)}}
}

func beginning[T any](of []T) *T {
	if len(of) == 0 {
		return nil
	}
	return &of[0]
}

// cut takes what was written apart at its places, which need not be in the order in
// which they were made.
func (o *outline) cut(written string) error {
	for {
		before, rest, found := strings.Cut(written, placeBegin)
		o.markup = append(o.markup, before)
		if !found {
			return nil
		}
		number, rest, _ := strings.Cut(rest, placeEnd)
		i, err := strconv.Atoi(number)
		if err != nil || i >= len(o.said) {
			return fmt.Errorf("a letter that no text may have: %q", placeBegin)
		}
		o.places = append(o.places, i)
		written = rest
	}
}

// write fills the places. What was said before is copied.
func (o *outline) write(m *markup, l *i18n.Language) {
	m.spans = slices.Grow(m.spans[:0], len(o.said))[:len(o.said)]
	clear(m.spans)
	for i, place := range o.places {
		m.write(o.markup[i])
		before := m.spans[place]
		if before.end > 0 {
			m.text = append(m.text, m.text[before.begin:before.end]...)
			continue
		}
		begin := len(m.text)
		o.said[place].write(m, l)
		m.spans[place] = span{begin, len(m.text)}
	}
	m.write(o.markup[len(o.places)])
}

// span is where something stands in a text.
type span struct{ begin, end int }

// write says it in a language.
func (x said) write(m *markup, l *i18n.Language) {
	switch x.as {
	case asWord:
		m.escape(l.Word(x.line.ID))
	case asLine:
		m.line(l, x.line)
	case asPlain:
		m.plain(l, x.line)
	case asBetween:
		m.write(l.Between())
	case asComma:
		m.write(l.Comma())
	case asDirection:
		m.write(dir(l.RightToLeft()))
	}
}

// outlines are those of one part of the pages of a lesson. The zero value has none.
type outlines struct {
	mu   sync.Mutex
	kept map[outlined]*outline
}

// outlined is what an outline depends on, beside what it shows.
type outlined struct {
	notation i18n.Notation
	counted
	theme  *Theme
	number int // of the story, or of the group of cards; 0 for what has none
}

// get gives an outline, which is written when it is asked for first.
func (all *outlines) get(of outlined, write func(*state) templ.Component) (*outline, error) {
	all.mu.Lock()
	defer all.mu.Unlock()
	if o := all.kept[of]; o != nil {
		return o, nil
	}
	o := new(outline)
	s := &state{Layout: &Layout{Theme: of.theme}, notation: of.notation, outline: o, counted: of.counted}
	var b bytes.Buffer
	if err := write(s).Render(context.Background(), &b); err != nil {
		return nil, err
	}
	o.counted, o.met = s.counted, nil
	if err := o.cut(b.String()); err != nil {
		return nil, err
	}
	if all.kept == nil {
		all.kept = map[outlined]*outline{}
	}
	all.kept[of] = o
	return o, nil
}

// shared writes a part that differs between languages in their words alone: of its
// state it may use nothing that belongs to one page or one language. number is that of
// the story, where it stands in the part.
func (s *state) shared(all *outlines, number int, write func(*state) templ.Component) templ.Component {
	return templ.ComponentFunc(func(_ context.Context, w io.Writer) error {
		o, err := all.get(outlined{s.notation, s.counted, s.Theme, number}, write)
		if err != nil {
			return err
		}
		s.counted = o.counted
		return raw(func(m *markup) { o.write(m, s.Language) }).Render(context.Background(), w)
	})
}

// ofStory is shared, but for a story in a teacher's words: it says other things in
// other languages.
func (s *state) ofStory(t story.Story, all *outlines, number int, write func(*state) templ.Component) templ.Component {
	if t.Own != nil {
		return write(s)
	}
	return s.shared(all, number, write)
}
