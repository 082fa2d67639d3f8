package wordserver

import (
	"slices"
	"strings"

	"homebuild/internal/school"
	"homebuild/internal/translate"
)

// wanted are the texts to write, in order: the guesses of a new file, then what
// families see first.
func (h *handler) wanted(b *school.Bench) []string {
	var out []string
	if b.Draft.Guesses() {
		out = append(out, translate.Head)
	}
	for _, l := range b.Layers {
		begin := len(out)
		for _, w := range l.Wanted {
			out = append(out, w.ID)
		}
		h.inOrder(out[begin:])
	}
	return out
}

// learnOrder finds out in which order a page says its texts.
func (h *handler) learnOrder(path string) {
	p := h.preview(path, "")
	if p == nil {
		return
	}
	h.order = map[string]int{}
	for i, id := range p.order {
		if _, earlier := h.order[id]; !earlier {
			h.order[id] = i
		}
	}
}

// inOrder sorts texts as the page has them; one that it does not say stays behind the
// one before it.
func (h *handler) inOrder(ids []string) {
	at, last := map[string]int{}, 0
	for _, id := range ids {
		if i, says := h.order[id]; says {
			last = i
		}
		at[id] = last
	}
	slices.SortStableFunc(ids, func(a, b string) int { return at[a] - at[b] })
}

// next is the text to write after one was saved: first what was asked for just now,
// then what follows on the page.
func (h *handler) next(before, after []string, id string) string {
	isNew := func(id string) bool { return !slices.Contains(before, id) }
	i := slices.Index(before, id)
	if i < 0 { // a text that was mended may ask for a form, too
		if i = slices.IndexFunc(after, isNew); i >= 0 {
			return after[i]
		}
		return id
	}
	// A form of a thing is asked for here or there, as sentences come and go.
	if h.queue == nil || !strings.HasPrefix(id, "thing.") {
		h.queue = slices.Concat(before[i+1:], before[:i])
	}
	if i := slices.IndexFunc(after, isNew); i >= 0 {
		return after[i]
	}
	for _, w := range slices.Concat(h.queue, after) {
		if slices.Contains(after, w) {
			return w
		}
	}
	return id
}
