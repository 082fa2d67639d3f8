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

// stockSchema is what stock.toml may hold.
var stockSchema = &tomlfile.Schema{Keys: []tomlfile.Key{
	{Name: "people", Takes: tomlfile.List},
	{Name: "frame", Takes: tomlfile.Tables, Of: &tomlfile.Schema{What: "a frame", Keys: []tomlfile.Key{
		{Name: "id", Takes: tomlfile.Word},
		{Name: "about", Takes: tomlfile.Word},
		{Name: "people", Takes: tomlfile.Number, High: 2},
		{Name: "answer-subject", Takes: tomlfile.Word},
		{Name: "sentences", Takes: tomlfile.Tables, Of: &tomlfile.Schema{What: "a sentence", Keys: []tomlfile.Key{
			{Name: "id", Takes: tomlfile.Word},
			{Name: "tells", Takes: tomlfile.Word},
			{Name: "asks", Takes: tomlfile.Word},
			{Name: "subject", Takes: tomlfile.Word},
		}}},
	}}},
	{Name: "thing", Takes: tomlfile.Tables, Of: &tomlfile.Schema{What: "a thing", Keys: []tomlfile.Key{
		{Name: "id", Takes: tomlfile.Word},
		{Name: "most", Takes: tomlfile.Number, Low: 1, High: 1000},
		{Name: "small", Takes: tomlfile.Switch},
		{Name: "settings", Takes: tomlfile.List},
	}}},
	{Name: "extra", Takes: tomlfile.Tables, Of: &tomlfile.Schema{What: "an extra sentence", Keys: []tomlfile.Key{
		{Name: "id", Takes: tomlfile.Word},
		{Name: "about", Takes: tomlfile.Word},
		{Name: "small", Takes: tomlfile.Switch},
		{Name: "counts", Takes: tomlfile.Word},
		{Name: "least", Takes: tomlfile.Number, Low: 1, High: 1000},
		{Name: "most", Takes: tomlfile.Number, Low: 1, High: 1000},
	}}},
}}

// LoadStock reads the stock that comes with the program.
func LoadStock() (Stock, error) {
	file := tomlfile.Parse("stock.toml", stockFile, 1, stockSchema)
	s := file.Section()
	stock := Stock{People: s.List("people")}
	for _, f := range s.Sections("frame") {
		stock.Frames = append(stock.Frames, frame(f))
	}
	for _, t := range s.Sections("thing") {
		stock.Things = append(stock.Things, Thing{ID: t.Text("id"), Most: t.Number("most"), Small: t.Switch("small"), Settings: t.List("settings")})
	}
	for _, e := range s.Sections("extra") {
		stock.Extras = append(stock.Extras, ExtraSentence{
			ID: e.Text("id"), About: e.Text("about"), Small: e.Switch("small"), Counts: e.Text("counts"), Least: e.Number("least"), Most: e.Number("most"),
		})
	}
	if len(file.Problems) > 0 {
		return Stock{}, file.Problems
	}
	return stock, nil
}

func frame(s *tomlfile.Section) Frame {
	f := Frame{ID: s.Text("id"), About: s.Text("about"), People: s.Number("people"), AnswerSubject: s.Text("answer-subject")}
	for _, each := range s.Sections("sentences") {
		f.Sentences = append(f.Sentences, FrameSentence{
			ID: each.Text("id"), Tells: problem.Role(each.Text("tells")), Asks: problem.Role(each.Text("asks")), Subject: each.Text("subject"),
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
