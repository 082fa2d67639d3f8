package site

import (
	_ "embed"
	"fmt"
	"slices"

	"github.com/pelletier/go-toml/v2"

	"homebuild/internal/page"
	"homebuild/internal/phrase"
)

//go:embed warmups.toml
var warmUpFile []byte

// WarmUp is a minute of moving before the maths.
type WarmUp struct {
	ID    string `toml:"id"`
	Least int    `toml:"least"` // the smallest number worth counting to
	Most  int    `toml:"most"`  // the largest that a tired child still likes
}

// WarmUps reads the warm-ups that come with the program.
func WarmUps() ([]WarmUp, error) {
	var file struct {
		WarmUps []WarmUp `toml:"warm-up"`
	}
	if err := toml.Unmarshal(warmUpFile, &file); err != nil {
		return nil, fmt.Errorf("warmups.toml: %w", err)
	}
	return file.WarmUps, nil
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
	for _, q := range l.worked.Problem.Told() {
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
