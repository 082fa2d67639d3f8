package site

import (
	"fmt"

	"homebuild/internal/i18n"
)

// Saying is a message as a page says it.
type Saying struct {
	ID   string // of the message: "learn.next", "event.harbour.board.start"
	Text string
	Path string // of the first page that says it
}

// Sayings are all that the pages of a language say, each once: where words on a page
// come from. Only pages whose paths are asked for are looked at, each in its order.
func (p *Planned) Sayings(tag string, on func(path string) bool) []Saying {
	var out []Saying
	path, known := "", map[Saying]bool{}
	in := p.in
	in.Catalog = in.Catalog.With(in.language(tag).Heard(func(id string, t i18n.Text) {
		s := Saying{ID: id, Text: t.String()}
		if !known[s] {
			known[s] = true
			out = append(out, Saying{id, s.Text, path})
		}
	}))
	heard := newPlanned(in, p.lessons, p.requests)
	for _, f := range heard.Pages() {
		if !isOf(f.Path, tag) || !on(f.Path) {
			continue
		}
		path = f.Path
		if _, err := f.Render(); err != nil {
			panic(fmt.Sprintf("site: %s: %v", path, err))
		}
	}
	return out
}
