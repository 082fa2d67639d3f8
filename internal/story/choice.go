package story

import (
	"fmt"
	"slices"

	"homebuild/internal/diag"
	"homebuild/internal/problem"
)

// Choice is a story without its words: all that it takes to tell the same one
// again, whatever becomes of the site's key, of the weeks before it or of the
// rules of choosing.
type Choice struct {
	Event   string          // "harbour.board": the place and what happens there
	Problem problem.Problem // the kind and the numbers
	Extra   int             // a number that nobody needs; 0 for none
}

// Misfit says why a choice cannot be told.
type Misfit struct {
	Setting string // what is wrong: "event", "kind", "numbers" or "extra"
	Text    string // lower case, without a full stop
	Hint    string // what to write instead
}

// Error is the text alone.
func (m *Misfit) Error() string { return m.Text }

// Check says whether a choice can be told in one of the places: nil, or a
// *Misfit.
func (all Places) Check(c Choice) error {
	e := all.Event(c.Event)
	if e == nil {
		var ids []string
		for _, x := range all.Events() {
			ids = append(ids, x.ID)
		}
		return &Misfit{"event", fmt.Sprintf("%q is not an event that every language of the site tells", c.Event),
			diag.Suggest(c.Event, ids, "take one of: "+list(all.Telling(c.Problem)))}
	}
	kind := c.Problem.Kind()
	if !slices.Contains(e.Kinds, kind) {
		return &Misfit{"kind", fmt.Sprintf("%s tells no story of the kind %s", e.ID, kind), "take one of its kinds, or another event: " + list(all.Telling(c.Problem))}
	}
	span := e.Span(kind)
	if !span.holds(c.Problem) {
		return &Misfit{"numbers", fmt.Sprintf("%s is told with amounts from %d to %d, the largest at least %d, and an answer of at least %d", e.ID, span.Part, span.Most, span.Least, leastAsked),
			"take other numbers, or another event: " + list(all.Telling(c.Problem))}
	}
	if c.Extra != 0 && (c.Extra < e.Extra.Least || c.Extra > e.Extra.Most) {
		return &Misfit{"extra", fmt.Sprintf("the number that nobody needs is %d, and %s has one from %d to %d", c.Extra, e.ID, e.Extra.Least, e.Extra.Most), "take one of these, or leave it out"}
	}
	return nil
}

// Tell tells a choice as it stands. The error is a *Misfit.
func (all Places) Tell(c Choice, inWords bool) (Story, error) {
	if err := all.Check(c); err != nil {
		return Story{}, err
	}
	return write(all.Event(c.Event), c, inWords), nil
}

// list names the first few events.
func list(events []*Event) string {
	ids := make([]string, len(events))
	for i, e := range events {
		ids[i] = e.ID
	}
	return diag.Some(ids, 6)
}
