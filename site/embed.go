// Package example holds the example school: the folder that a teacher copies,
// and that is built when no folder is given.
package example

import "embed"

// Files is the folder: site.toml and weeks/.
//
//go:embed site.toml weeks
var Files embed.FS
