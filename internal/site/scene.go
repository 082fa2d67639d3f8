package site

import (
	"cmp"

	"homebuild/internal/page"
)

// scene is where the week's worked story happens, with those whom it is about.
func (l *lesson) scene() page.Scene { return l.sceneOf(l.worked) }

// sceneOf is where a story happens, with those whom it is about. A teacher's own
// story happens where the week does.
func (l *lesson) sceneOf(e exercise) page.Scene {
	place := cmp.Or(e.Story.Place, l.worked.Story.Place)
	if place == "" {
		return page.Scene{}
	}
	return page.Scene{Place: "setting." + place, Cast: e.Story.Cast}
}
