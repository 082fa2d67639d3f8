package site

import (
	"cmp"

	"homebuild/internal/page"
)

// scene is where the week's worked story happens, with those whom it is about.
func (l *lesson) scene() page.Scene {
	if l.worked.Story.Place == "" {
		return page.Scene{}
	}
	return page.Scene{Place: "setting." + l.worked.Story.Place, Cast: l.worked.Story.Cast}
}

// sceneOf is where a story to try happens, with those whom it is about where that is
// the week's place; another place stands empty, so that a page has few drawings to
// bring along. A teacher's own story happens where the week does.
func (l *lesson) sceneOf(e exercise) page.Scene {
	s := l.scene()
	if here := cmp.Or(e.Story.Place, l.worked.Story.Place); here != l.worked.Story.Place {
		return page.Scene{Place: "setting." + here}
	}
	if len(e.Story.Cast) > 0 {
		s.Cast = e.Story.Cast[:1]
	}
	return s
}
