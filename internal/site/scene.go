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

// scene is where the week's worked story happens, with those who live there.
func (l *lesson) scene() page.Scene { return l.sceneOf(l.worked, 0, 2) }

// sceneOf is where a story happens, with so many of those who live there, from
// one of them on. A teacher's own story happens where the week does.
func (l *lesson) sceneOf(e exercise, from, count int) page.Scene {
	setting := cmp.Or(e.Story.Setting, l.worked.Story.Setting)
	cast := casts[strings.TrimPrefix(setting, "setting.")]
	if len(cast) == 0 {
		return page.Scene{}
	}
	s := page.Scene{Place: setting}
	for i := range min(count, len(cast)) {
		s.Cast = append(s.Cast, "character."+cast[(from+i)%len(cast)])
	}
	return s
}
