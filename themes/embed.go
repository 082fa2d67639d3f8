// Package themes holds the looks of the pages: base/ is the layout that every
// theme shares, each other folder is a theme. A theme is CSS and a small
// colours.toml that names its colors; it is never code.
package themes

import "embed"

// Files is the folder, with base/ and the themes in it.
//
//go:embed base chalk linen paper
var Files embed.FS
