package site

import (
	"cmp"
	"strings"

	"homebuild/internal/page"
)

// casts are who lives where. A place's first two are drawn where the whole week
// is shown; its stories meet them one by one.
var casts = map[string][]string{
	"harbour":      {"captain", "heron", "otter"},
	"market":       {"baker", "fox", "gardener"},
	"forest":       {"hedgehog", "fox", "beetle"},
	"garden":       {"gardener", "beetle", "grandfather"},
	"library":      {"tortoise", "inventor", "grandfather"},
	"night-train":  {"fox", "tortoise", "kite-flyer"},
	"kitchen":      {"baker", "otter", "grandfather"},
	"playground":   {"kite-flyer", "inventor", "otter"},
	"mountain-hut": {"kite-flyer", "hedgehog", "grandfather"},
	"desert-well":  {"tortoise", "gardener"},
	"rainy-street": {"grandfather", "baker", "inventor"},
	"reef":         {"otter", "captain"},
}

// scene is where the week's worked story happens, with two of those who live
// there.
func (l *lesson) scene() page.Scene {
	s := page.Scene{Place: l.worked.Story.Setting}
	if cast := castOf(s.Place); len(cast) > 0 {
		s.Cast = cast[:2]
	}
	return s
}

// sceneOf is the place of a story to try. Where it is the week's, each story meets
// another one who lives there; a place that is met once stands empty, so that a
// page has few drawings to bring along. A teacher's own story happens where the
// week does.
func (l *lesson) sceneOf(i int, e exercise) page.Scene {
	week := l.worked.Story.Setting
	s := page.Scene{Place: cmp.Or(e.Story.Setting, week)}
	if cast := castOf(s.Place); s.Place == week && len(cast) > 0 {
		s.Cast = cast[i%len(cast):][:1]
	}
	return s
}

func castOf(setting string) (ids []string) {
	for _, who := range casts[strings.TrimPrefix(setting, "setting.")] {
		ids = append(ids, "character."+who)
	}
	return ids
}
