package week

import (
	"fmt"
	"slices"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/problem"
	"homebuild/internal/story"
	"homebuild/internal/tomlfile"
)

// KeptStory is a story that stays as it was chosen.
type KeptStory struct {
	story.Choice
	Rung activity.Rung
	Of   string // the id of its target where that is not the week's: an earlier week's, which it brings back; on a rung, a neighbor's
	// Proposed says that nobody chose it: on the desk it follows the week's settings.
	Proposed bool
}

// kept reads the stories of a week as families had them, into its week.
func (r *reader) kept(name fileName, weeks []Week) {
	i := slices.IndexFunc(weeks, func(w Week) bool { return w.Date == name.date })
	if i < 0 {
		if !r.misnamed && !slices.ContainsFunc(r.problems, func(p diag.Diagnostic) bool { return p.File == Path(name.date) }) {
			r.add(name.path, 0, fmt.Sprintf("the stories of this week are kept, and its file, %q, is gone", Path(name.date)),
				"put it back; or take this file away as well. What families had stays published, until homebuild build --remove "+name.date)
		}
		return
	}
	text, ok := r.text(name.path)
	if !ok {
		return
	}
	file := tomlfile.Parse(name.path, text, 1)
	file.Example = `a story looks like event = "harbour.board", below a line [[story]]`
	w := &weeks[i]
	w.kept = file.Section()
	w.keptText = text
	tables := w.kept.Sections(activity.WeeksOwn.String(), "a story")
	r.keptStories(w, activity.WeeksOwn, tables)
	for _, rung := range activity.Rungs() {
		r.keptStories(w, rung, w.kept.Sections(rung.String(), "a story beside the week's own"))
	}
	switch n := len(tables); {
	case n < 2 && len(w.OwnStories) == 0:
		r.add(name.path, 0, fmt.Sprintf("the file has %d stories", n), "a week has two at least, the first one worked step by step; take the file away, and they are chosen anew")
	case n == 0:
		r.add(name.path, 0, "the file has no story", "take it away, and they are chosen anew")
	case n > MaxStories+1:
		tables[MaxStories+1].Add("", fmt.Sprintf("the file has %d stories", n), fmt.Sprintf("keep %d: the worked one, and %d to try", MaxStories+1, MaxStories))
	}
	r.problems = append(r.problems, file.Problems()...)
}

// keptStories reads the stories of a rung.
func (r *reader) keptStories(w *Week, rung activity.Rung, tables []*tomlfile.Section) {
	for i, s := range tables {
		c, ok := r.keptStory(rung, s)
		if ok {
			w.Kept = append(w.Kept, c)
		}
		if rung != activity.WeeksOwn && i == activity.OnRung {
			s.Add("", fmt.Sprintf("the file has %d stories [[%s]]", len(tables), rung), fmt.Sprintf("keep %d", activity.OnRung))
		}
	}
}

// KeptOn are the kept stories of a rung.
func (w Week) KeptOn(rung activity.Rung) []KeptStory {
	return slices.DeleteFunc(slices.Clone(w.Kept), func(c KeptStory) bool { return c.Rung != rung })
}

// keptStory reads a story; false when something in it is wrong.
func (r *reader) keptStory(rung activity.Rung, s *tomlfile.Section) (c KeptStory, ok bool) {
	before := s.Found()
	c.Event = s.Word("event")
	kind, _ := problem.ParseKind(s.OneOf("kind", "a kind of story", r.allowed.Kinds))
	numbers := s.Numbers("numbers", 0, problem.Largest)
	c.Extra = s.Number("extra", 0, problem.Largest, 0)
	c.Rung = rung
	c.Of = s.OneOf(c.ofKey(), "a target", r.allowed.Targets)
	c.Proposed = s.Switch("proposed")
	for _, key := range []string{"event", "kind", "numbers"} {
		if !s.Has(key) {
			s.Add(key, "a story has no "+key, "write it; or take the file away, and the stories are chosen anew")
		}
	}
	if s.Found() > before {
		return c, false
	}
	var err error
	if c.Problem, err = problem.New(kind, numbers...); err != nil {
		s.Add("numbers", strings.TrimPrefix(err.Error(), problem.ErrNumbers.Error()+": "), "homebuild swap gives a story other numbers that fit")
	}
	return c, err == nil
}

// StoriesText is the file that keeps the stories of a week, the worked one first.
func (w Week) StoriesText(stories []KeptStory) string {
	var b strings.Builder
	fmt.Fprintf(&b, `# The stories of the week of %s. They stay as they stand here,
# whatever else changes. The first one is worked step by step, the others are
# numbered as on the page to try. Change them as you like, or ask for others:
# "homebuild swap %s 2" gives story 2 other numbers.
# Without this file the stories are chosen anew.
`, DayName(w.Date), w.Date)
	if !w.Ladder { // what stood on it waits
		for _, rung := range activity.Rungs() {
			stories = append(stories, w.KeptOn(rung)...)
		}
	}
	for i, c := range stories {
		w.keptTable(&b, i, c)
	}
	return b.String()
}

// WithLadder is the file that keeps the week's stories as it stands, with those of
// the stories that are on a rung of which it keeps none; empty when there are none.
func (w Week) WithLadder(stories []KeptStory) string {
	var b strings.Builder
	for i, c := range stories {
		if c.Rung != activity.WeeksOwn && len(w.KeptOn(c.Rung)) == 0 {
			w.keptTable(&b, i, c)
		}
	}
	if b.Len() == 0 {
		return ""
	}
	return strings.TrimRight(w.keptText, "\n") + "\n" + b.String()
}

// keptTable writes a story, the i-th of those that the teacher did not write.
func (w Week) keptTable(b *strings.Builder, i int, c KeptStory) {
	head := fmt.Sprintf("Story %d", len(w.OwnStories)+i)
	switch {
	case i == 0:
		head = "The worked story"
	case c.Rung != activity.WeeksOwn:
		head += ", " + c.Rung.String() + " than the week's"
	}
	numbers := strings.Trim(strings.Join(strings.Fields(fmt.Sprint(c.Problem.Numbers())), ", "), "[]")
	fmt.Fprintf(b, "\n# %s: %s\n[[%s]]\nevent = %q\nkind = %q\nnumbers = [%s]\n", head, c.Problem.Equation(), c.Rung, c.Event, c.Problem.Kind(), numbers)
	if c.Extra > 0 {
		fmt.Fprintf(b, "extra = %d # a number that nobody needs\n", c.Extra)
	}
	if c.Of != "" {
		fmt.Fprintf(b, "%s = %q", c.ofKey(), c.Of)
		if c.Rung == activity.WeeksOwn {
			b.WriteString(" # from an earlier week")
		}
		b.WriteString("\n")
	}
	if c.Proposed {
		b.WriteString("proposed = true # it may follow the week's settings\n")
	}
}

// ofKey is the key that says of which target the story is.
func (c KeptStory) ofKey() string {
	if c.Rung == activity.WeeksOwn {
		return "returns"
	}
	return "target"
}
