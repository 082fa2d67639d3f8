package translate

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/tomlfile"
)

// Change is what somebody wrote for an entry in another program.
type Change struct {
	ID         string
	English    string // that she saw; for 1, where the entry has forms
	Others     string // for other numbers; empty where it has one text
	Categories []i18n.Category
	Texts      []string // beside them; an empty one leaves what the file has
}

// Refusal is a change that the file does not take.
type Refusal struct {
	ID string
	diag.Diagnostic
}

// mostRounds is how often what a check says of new texts is looked at: a text that is
// refused may leave another one alone with its opposite.
const mostRounds = 6

// Apply is the text of the file with the changes, every other byte as it was. A change
// of which a check would say something new is refused, and the others are made. What was
// made from the English of today is marked so. The number is of entries that say
// something else now.
func (d *Draft) Apply(changes []Change) (text []byte, changed int, refused []Refusal, err error) {
	var taken []Change
	for _, c := range changes {
		if why := d.cannotTake(c); why != nil {
			refused = append(refused, Refusal{c.ID, *why})
		} else if d.changes(c) {
			taken = append(taken, c)
		}
	}
	for range mostRounds {
		if len(taken) == 0 {
			break
		}
		text, stuck := d.with(taken)
		wrong, err := d.answersTo(text, taken)
		if err != nil {
			return nil, 0, refused, err
		}
		wrong = append(wrong, stuck...)
		if len(wrong) == 0 {
			return []byte(text), len(taken), refused, nil
		}
		refused = append(refused, wrong...)
		taken = slices.DeleteFunc(taken, func(c Change) bool {
			return slices.ContainsFunc(wrong, func(r Refusal) bool { return r.ID == c.ID })
		})
	}
	return []byte(d.file.Text), 0, refused, nil
}

// cannotTake says why the file has no place for a change; nil when it has.
func (d *Draft) cannotTake(c Change) *diag.Diagnostic {
	e, known := d.byID(c.ID)
	switch {
	case d.Status.Source && d.changes(c):
		return &diag.Diagnostic{Text: c.ID + ": English is what the others are made from", Hint: "write it in its file, where its note stands beside it"}
	case !known:
		return &diag.Diagnostic{Text: c.ID + " is no text of the file", Hint: "export the file again: the program may be newer, or older"}
	case len(c.Categories) == 1 && e.Forms() && len(e.Categories) > 1:
		return &diag.Diagnostic{Text: c.ID + " has one text, and the file a form for each kind of number", Hint: "export the file again, and write each form"}
	case len(c.Categories) > 1 && !e.Forms():
		return &diag.Diagnostic{Text: c.ID + " has forms, and the file one text", Hint: "export the file again, and write one text"}
	}
	return nil
}

// byID is the entry with an id.
func (d *Draft) byID(id string) (Entry, bool) {
	if d.entries == nil {
		d.entries = map[string]Entry{}
		for _, e := range d.Entries() {
			d.entries[e.ID] = e
		}
	}
	e, known := d.entries[id]
	return e, known
}

// changes reports whether a change says something new, or is newly made from the
// English of today.
func (d *Draft) changes(c Change) bool {
	e, _ := d.byID(c.ID)
	for i, category := range c.Categories {
		at := slices.Index(e.Categories, category)
		if c.Texts[i] != "" && (at < 0 || e.Texts[at] != c.Texts[i]) {
			return true
		}
	}
	return e.Stale && c.English == e.English && c.Others == e.Others
}

// with is the text of the file with changes, and those that cannot be written where
// they stand.
func (d *Draft) with(changes []Change) (text string, stuck []Refusal) {
	values := map[string]string{}
	for _, c := range changes {
		d.values(c, values)
	}
	d.sources(changes, values)
	text, left := tomlfile.Replace(d.file.Text, values)
	for _, c := range changes {
		var ok bool
		if text, ok = d.add(text, c, left); !ok {
			stuck = append(stuck, Refusal{c.ID, diag.Diagnostic{Text: c.ID + " cannot be written where it stands", Hint: "write it in an editor"}})
		}
	}
	return text, stuck
}

// values are the texts of a change by their names in the file, and the hash of the
// English that they were made from.
func (d *Draft) values(c Change, values map[string]string) {
	m := d.file.Message(c.ID)
	for i, category := range c.Categories {
		if c.Texts[i] != "" {
			values[nameOf(m, c.ID, category)] = quoted(c.Texts[i])
		}
	}
	if m != nil && m.Hash != "" {
		if hash := i18n.HashOfEnglish(c.English, c.Others); !strings.HasPrefix(m.Hash, hash) {
			values[c.ID+".hash"] = tomlfile.Quote(hash)
		}
	}
}

// quoted is a text as the files write it, on one line in double quotes.
func quoted(text string) string {
	if strings.ContainsFunc(text, func(c rune) bool { return c < ' ' || c == 0x7f }) {
		return tomlfile.Quote(text) // a check refuses it
	}
	return `"` + strings.NewReplacer("\\", `\\`, `"`, `\"`).Replace(text) + `"`
}

// nameOf is the whole name of a text in the file.
func nameOf(m *i18n.Message, id string, c i18n.Category) string {
	if _, _, _, sentence := cutSentence(id); sentence || m != nil && m.Alone {
		return id
	}
	return id + "." + c.String()
}

// sources marks events that were told from other English sentences as told from those
// of today, when each of their sentences was held against them.
func (d *Draft) sources(changes []Change, values map[string]string) {
	held := map[string]bool{}
	for _, c := range changes {
		if e, _ := d.byID(c.ID); c.English == e.English {
			held[c.ID] = true
		}
	}
	for _, e := range d.file.Events {
		if e.Stale() && !slices.ContainsFunc(e.Sentences, func(s i18n.Sentence) bool { return !held[e.ID+"."+s.Name()] }) {
			values[e.ID+".source"] = tomlfile.Quote(e.SourceHash())
		}
	}
}

// add writes what the file did not have: a form of a message, or all of it.
func (d *Draft) add(text string, c Change, left []string) (string, bool) {
	texts := map[string]string{}
	for i, category := range c.Categories {
		if name := nameOf(d.file.Message(c.ID), c.ID, category); c.Texts[i] != "" && slices.Contains(left, name) {
			texts[name] = c.Texts[i]
		}
	}
	if len(texts) == 0 {
		return text, true
	}
	q, ok := d.Ask(c.ID)
	if !ok {
		return text, false
	}
	return d.put(text, q, texts)
}

// answersTo are the changes of which a check says something that it did not say of the
// file before.
func (d *Draft) answersTo(text string, changes []Change) ([]Refusal, error) {
	after, problems := i18n.Parse(d.file.Tag, text)
	if len(problems) > 0 {
		return nil, problems
	}
	said := map[string]bool{}
	for _, p := range d.Problems {
		said[p.Text] = true
	}
	var out []Refusal
	for _, p := range d.source.Prove(after, math.MaxInt).Wrong {
		if said[p.Text] {
			continue
		}
		i := slices.IndexFunc(changes, func(c Change) bool { return isAbout(p.Text, c.ID) })
		if i < 0 {
			i = slices.IndexFunc(changes, func(c Change) bool { return strings.Contains(p.Text, c.ID) })
		}
		if i < 0 {
			return nil, fmt.Errorf("%w", diag.Diagnostics{p})
		}
		out = append(out, Refusal{changes[i].ID, p})
	}
	return out, nil
}

// isAbout reports whether what was told begins with the id of a text.
func isAbout(told, id string) bool {
	rest, ok := strings.CutPrefix(told, id)
	return ok && (rest == "" || rest[0] == ':' || rest[0] == ' ')
}
