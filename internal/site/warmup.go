package site

import (
	_ "embed"
	"slices"

	"homebuild/internal/page"
	"homebuild/internal/phrase"
	"homebuild/internal/tomlfile"
)

//go:embed warmups.toml
var warmUpFile string

// WarmUp is a minute of moving before the maths.
type WarmUp struct {
	ID    string
	Least int // the smallest number worth counting to
	Most  int // the largest that a tired child still likes
}

// WarmUps reads the warm-ups that come with the program.
func WarmUps() ([]WarmUp, error) {
	file := tomlfile.Parse("warmups.toml", warmUpFile, 1)
	var out []WarmUp
	for _, s := range file.Section().Sections("warm-up", "a warm-up") {
		out = append(out, WarmUp{ID: s.Word("id"), Least: s.Number("least", 1, 100, 0), Most: s.Number("most", 1, 100, 0)})
	}
	if problems := file.Problems(); len(problems) > 0 {
		return nil, problems
	}
	return out, nil
}

// warmUp is the one with the id, counted to the first of the worked story's
// numbers that suits it; nil when there is none.
func warmUp(all []WarmUp, id string, l *lesson) *page.WarmUp {
	i := slices.IndexFunc(all, func(w WarmUp) bool { return w.ID == id })
	if i < 0 {
		return nil
	}
	w := all[i]
	count := w.Most
	for _, q := range l.worked.Problem.Given() {
		if q.Value >= w.Least && q.Value <= w.Most {
			count = q.Value
			break
		}
	}
	id = "warm-up." + id
	return &page.WarmUp{
		Symbol: id, Name: phrase.Say(id + ".name"),
		Steps:  []phrase.Line{phrase.Say(id+".first", phrase.Number("Number", count)), phrase.Say(id + ".second")},
		Seated: phrase.Say(id + ".seated"),
	}
}
