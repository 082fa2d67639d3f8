// Package docs holds the pages for people that the program itself can show, so
// that a teacher who has the program alone can read them.
package docs

import _ "embed"

// OwnStories tells how a teacher writes stories of her own.
//
//go:embed own-stories.md
var OwnStories string
