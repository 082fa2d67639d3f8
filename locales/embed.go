// Package locales holds the language files that come with the program, one
// TOML file a language; internal/i18n reads them.
package locales

import "embed"

// Files holds xx.toml for each language tag.
//
//go:embed *.toml
var Files embed.FS
