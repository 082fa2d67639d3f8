package story

import (
	_ "embed"
	"fmt"
	"slices"
	"strings"

	"github.com/pelletier/go-toml/v2"

	"homebuild/internal/problem"
)

//go:embed stock.toml
var stockFile []byte

// Stock is what stories are made from: ids only. See stock.toml.
type Stock struct {
	People []string `toml:"people"`
	Frames []Frame  `toml:"frame"`
	Things []Thing  `toml:"thing"`
	Extras []ExtraSentence
}

// Frame is one wording of a kind.
type Frame struct {
	ID            string          `toml:"id"`     // "add-to-result.1"
	About         string          `toml:"about"`  // "people" or "containers"
	People        int             `toml:"people"` // how many persons it names
	AnswerSubject string          `toml:"answer-subject"`
	Sentences     []FrameSentence `toml:"sentences"`
}

// FrameSentence is one sentence of a frame.
type FrameSentence struct {
	ID      string       `toml:"id"`
	Tells   problem.Role `toml:"tells"`
	Asks    problem.Role `toml:"asks"`
	Subject string       `toml:"subject"` // "A", "B" or ""
}

// Thing is something to count.
type Thing struct {
	ID       string   `toml:"id"`
	Most     int      `toml:"most"`     // more of them would be silly in a story
	Small    bool     `toml:"small"`    // goes into a jar
	Settings []string `toml:"settings"` // where one meets them
}

// ExtraSentence gives a number that nobody needs.
type ExtraSentence struct {
	ID     string `toml:"id"`
	About  string `toml:"about"`
	Small  bool   `toml:"small"`  // counts small things only
	Counts string `toml:"counts"` // a measure, or "" for another thing
	Least  int    `toml:"least"`
	Most   int    `toml:"most"`
}

// LoadStock reads the stock that comes with the program.
func LoadStock() (Stock, error) {
	var file struct {
		Stock
		Extras []ExtraSentence `toml:"extra"`
	}
	dec := toml.NewDecoder(strings.NewReader(string(stockFile))).DisallowUnknownFields()
	if err := dec.Decode(&file); err != nil {
		return Stock{}, fmt.Errorf("stock.toml: %w", err)
	}
	file.Stock.Extras = file.Extras
	return file.Stock, nil
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
