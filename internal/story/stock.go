package story

import (
	_ "embed"
	"slices"
	"strings"

	"homebuild/internal/problem"
	"homebuild/internal/tomlfile"
)

//go:embed stock.toml
var stockFile string

// Stock is what stories are made from: ids only. See stock.toml.
type Stock struct {
	People []string
	Frames []Frame
	Things []Thing
	Extras []ExtraSentence
}

// Frame is one wording of a kind.
type Frame struct {
	ID            string // "add-to-result.1"
	About         string // "people" or "containers"
	People        int    // how many persons it names
	AnswerSubject string
	Sentences     []FrameSentence
}

// FrameSentence is one sentence of a frame.
type FrameSentence struct {
	ID      string
	Tells   problem.Role
	Asks    problem.Role
	Subject string // "A", "B" or ""
}

// Thing is something to count.
type Thing struct {
	ID       string
	Most     int      // more of them would be silly in a story
	Small    bool     // goes into a jar
	Settings []string // where one meets them
}

// ExtraSentence gives a number that nobody needs.
type ExtraSentence struct {
	ID     string
	About  string
	Small  bool   // counts small things only
	Counts string // a measure, or "" for another thing
	Least  int
	Most   int
}

// LoadStock reads the stock that comes with the program.
func LoadStock() (Stock, error) {
	file := tomlfile.Parse("stock.toml", stockFile, 1)
	s := file.Section()
	stock := Stock{People: s.List("people")}
	for _, f := range s.Sections("frame", "a frame") {
		stock.Frames = append(stock.Frames, frame(f))
	}
	for _, t := range s.Sections("thing", "a thing") {
		stock.Things = append(stock.Things, Thing{ID: t.Word("id"), Most: t.Number("most", 1, 1000, 0), Small: t.Switch("small"), Settings: t.List("settings")})
	}
	for _, e := range s.Sections("extra", "an extra sentence") {
		stock.Extras = append(stock.Extras, ExtraSentence{
			ID: e.Word("id"), About: e.Word("about"), Small: e.Switch("small"), Counts: e.Word("counts"),
			Least: e.Number("least", 1, 1000, 0), Most: e.Number("most", 1, 1000, 0),
		})
	}
	if problems := file.Problems(); len(problems) > 0 {
		return Stock{}, problems
	}
	return stock, nil
}

func frame(s *tomlfile.Section) Frame {
	f := Frame{ID: s.Word("id"), About: s.Word("about"), People: s.Number("people", 0, 2, 0), AnswerSubject: s.Word("answer-subject")}
	for _, x := range s.Sections("sentences", "a sentence") {
		f.Sentences = append(f.Sentences, FrameSentence{
			ID: x.Word("id"), Tells: problem.Role(x.Word("tells")), Asks: problem.Role(x.Word("asks")), Subject: x.Word("subject"),
		})
	}
	return f
}

// Kind is the kind that the frame tells.
func (f Frame) Kind() (problem.Kind, bool) {
	name, _, _ := strings.Cut(f.ID, ".")
	return problem.ParseKind(name)
}

// Settings lists every setting in which something can be counted, in order of
// first mention.
func (s Stock) Settings() []string {
	var out []string
	for _, t := range s.Things {
		for _, id := range t.Settings {
			if !slices.Contains(out, id) {
				out = append(out, id)
			}
		}
	}
	return out
}

// Only keeps what has reports as told by every language of a site: frames by
// "story.<id>", things and people by their ids.
func (s Stock) Only(has func(id string) bool) Stock {
	var kept Stock
	for _, f := range s.Frames {
		if has("story." + f.ID) {
			kept.Frames = append(kept.Frames, f)
		}
	}
	for _, t := range s.Things {
		if has(t.ID) {
			kept.Things = append(kept.Things, t)
		}
	}
	for _, p := range s.People {
		if has(p) {
			kept.People = append(kept.People, p)
		}
	}
	for _, e := range s.Extras {
		if has("story.extra."+e.ID) && (e.Counts == "" || has(e.Counts)) {
			kept.Extras = append(kept.Extras, e)
		}
	}
	return kept
}
