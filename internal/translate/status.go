package translate

import (
	"io/fs"
	"math"
	"slices"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/story"
)

// Status is how far a language file has come.
type Status struct {
	Tag      string       `json:"tag"`
	Name     string       `json:"name"`     // own name; empty when the file cannot be read
	Total    int          `json:"total"`    // messages that the file needs with the blocks it has, and forms that its sentences ask for
	Done     int          `json:"done"`     // of Total, with all their texts
	Stale    int          `json:"stale"`    // of Done, made from an English text that has changed
	Unread   int          `json:"unread"`   // in a signed file: messages that are not what was read
	LeftOut  []string     `json:"leftOut"`  // events, things, characters and settings that the language leaves out
	Lost     []story.Loss `json:"-"`        // what weeks lose by the events that are not whole
	Problems int          `json:"problems"` // slips to mend; texts that are missing are not among them
	Reviewed string       `json:"-"`        // who signed it and when; empty for a draft
	Source   bool         `json:"-"`        // English, which the others are made from
}

// Missing is how many messages have no text yet.
func (s Status) Missing() int { return s.Total - s.Done }

// StatusOf tells how far every language file of the folders has come. Problems
// are those of English itself, without which nothing can be told.
func StatusOf(folders ...fs.FS) ([]Status, diag.Diagnostics) {
	source, problems := i18n.LoadSource(folders...)
	if len(problems) > 0 {
		return nil, problems
	}
	places, err := story.LoadPlaces()
	if err != nil {
		panic(err) // they come with the program
	}
	var out []Status
	for _, tag := range i18n.Tags(folders...) {
		file, problems := fileOf(tag, source, folders)
		if file == nil {
			out = append(out, Status{Tag: tag, Problems: len(problems)})
			continue
		}
		s := statusOf(file, source, source.Prove(file, math.MaxInt))
		s.Lost = places.Lost(places.Only(func(id string) bool { return tells(file, id) }))
		out = append(out, s)
	}
	return out, nil
}

func statusOf(file *i18n.File, source *i18n.Source, proof *i18n.Proof) Status {
	s := Status{Tag: file.Tag, Problems: len(proof.Wrong), Source: file == source.File}
	if m := file.Message("language.name"); m != nil {
		s.Name = m.Other
	}
	if proof.Language != nil {
		s.Reviewed = proof.Language.Reviewed()
		s.Unread = len(proof.Unread)
	}
	lacks := lacking(proof)
	for _, m := range source.File.Messages {
		switch {
		case !m.Needed():
		case m.Block != "" && !file.HasBlock(m.Block):
			if !slices.Contains(s.LeftOut, m.Block) {
				s.LeftOut = append(s.LeftOut, m.Block)
			}
		default:
			s.need(m.ID, lacks)
		}
	}
	for _, m := range file.Messages {
		if m.Stale() {
			s.Stale++
		}
	}
	s.events(file, source, lacks)
	s.Total += len(lacks) // the forms that are left
	return s
}

// lacking are the messages of which something is missing, by their ids: a form for a
// gender is part of its sentence, and what only some stories say is part of what all do.
func lacking(proof *i18n.Proof) map[string]bool {
	out := map[string]bool{}
	for _, id := range proof.Lacks {
		head, key := cutLast(id)
		switch {
		case slices.Contains(i18n.Genders, key):
			id = head
		case strings.HasPrefix(id, "event.") && strings.Count(id, ".") > 3:
			group, _ := cutLast(head)
			id = group + "." + key
		}
		out[id] = true
	}
	return out
}

// need counts a message that the file needs, and reports whether it is done. It is no
// longer among those that are lacking then.
func (s *Status) need(id string, lacks map[string]bool) bool {
	s.Total++
	if lacks[id] {
		delete(lacks, id)
		return false
	}
	s.Done++
	return true
}

// tells reports whether a file has an event, and a text for each of its sentences.
func tells(file *i18n.File, id string) bool {
	e := file.Event(id)
	return e != nil && !slices.ContainsFunc(e.Sentences, func(s i18n.Sentence) bool { return s.Text == "" })
}

// events counts what the events of a file tell: each of their sentences once, be
// it said in one way or in several.
func (s *Status) events(file *i18n.File, source *i18n.Source, lacks map[string]bool) {
	for _, english := range source.File.Events {
		e := file.Event(english.ID)
		if e == nil {
			s.LeftOut = append(s.LeftOut, english.ID)
			continue
		}
		for _, key := range english.Keys() {
			if s.need(e.ID+"."+key, lacks) && e.Stale() {
				s.Stale++
			}
		}
	}
}
