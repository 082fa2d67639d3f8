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

var warmUpSchema = &tomlfile.Schema{Keys: []tomlfile.Key{{Name: "warm-up", Takes: tomlfile.Tables, Of: &tomlfile.Schema{
	What: "a warm-up",
	Keys: []tomlfile.Key{
		{Name: "id", Takes: tomlfile.Word},
		{Name: "least", Takes: tomlfile.Number, Low: 1, High: 100},
		{Name: "most", Takes: tomlfile.Number, Low: 1, High: 100},
	},
}}}}

// WarmUps reads the warm-ups that come with the program.
func WarmUps() ([]WarmUp, error) {
	file := tomlfile.Parse("warmups.toml", warmUpFile, 1, warmUpSchema)
	var out []WarmUp
	for _, s := range file.Section().Sections("warm-up") {
		out = append(out, WarmUp{ID: s.Text("id"), Least: s.Number("least"), Most: s.Number("most")})
	}
	if len(file.Problems) > 0 {
		return nil, file.Problems
	}
	return out, nil
}

// warmUp is the week's, counted to the first of the worked story's numbers that
// suits it; nil when the week has none.
func (b *builder) warmUp(l *lesson) *page.WarmUp {
	i := slices.IndexFunc(b.WarmUps, func(w WarmUp) bool { return w.ID == l.week.WarmUp })
	if i < 0 {
		return nil
	}
	w, id := b.WarmUps[i], "warm-up."+l.week.WarmUp
	count := w.Most
	for _, q := range l.worked.Problem.Told() {
		if q.Value >= w.Least && q.Value <= w.Most {
			count = q.Value
			break
		}
	}
	return &page.WarmUp{
		Symbol: id, Name: phrase.Say(id + ".name"),
		Steps:  []phrase.Line{phrase.Say(id+".first", phrase.Number("Number", count)), phrase.Say(id + ".second")},
		Seated: phrase.Say(id + ".seated"),
	}
}
