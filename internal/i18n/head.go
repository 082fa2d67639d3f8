package i18n

import (
	"io/fs"

	"homebuild/internal/pattern"
	"homebuild/internal/textfile"
	"homebuild/internal/tomlfile"
)

// Head is what the head of a language file says, read without the rest.
type Head struct {
	Tag         string
	Name        string // its own: "Español"
	RightToLeft bool
}

// head is a file up to the first table behind [language].
var head = pattern.Of(`(?s)^.*?\n\[language\]\n[^\[]*`)

// headSize is more bytes than any head has.
const headSize = 16 << 10

// Heads lists the languages that a folder has files for. A file without a head is
// passed over: loading tells of it.
func Heads(folder fs.FS) []Head {
	var out []Head
	for _, tag := range Tags(folder) {
		text, ok := textfile.Begin(folder, tag+".toml", headSize)
		if !ok {
			continue
		}
		s := tomlfile.Parse(shownPath(tag), head().FindString("\n"+text), 1).Section().Section("language", "the language")
		if name := s.Word("name"); name != "" {
			out = append(out, Head{tag, name, s.Word("direction") == Direction(true)})
		}
	}
	return out
}
